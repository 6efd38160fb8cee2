/** Reads a yes or a no. A yes must be said plainly: a hedge, a mix of both or a slip of "not" beside it is no yes. */
import type { YesNo, YesNoUnknown } from '#machines/facts.ts';
import { type Lexicon, onceEach } from './lexicon.ts';
import { denialIn } from './negation.ts';
import { clausesOf, type Found, type Said } from './said.ts';
import { isSlip, wordsOf } from './spell.ts';

/** What else means yes or no at one question; `yes` must match a whole statement, `no` may stand anywhere. */
export interface Statements {
  readonly yes?: RegExp;
  readonly no?: RegExp;
  readonly neutral?: RegExp;
  /** Where no is the answer that goes on: only a no of its own counts, not every "cannot" or "is not". */
  readonly strictNo?: true;
  /** The words that a "not" must stand beside to answer this question; any will do where none are told. */
  readonly matter?: RegExp;
  /** No is the safe side: one of its own words after a yes outweighs it, "yes, but they are out of date". */
  readonly noOutweighs?: true;
  /** What makes a yes doubtful. */
  readonly unless?: RegExp;
}

const gap = ' | ';
const anything = /./;
/** "yes?", "no??": a question is no answer. */
const asksBack = /^[a-z ]{1,12}\?+$/;
/** "The bag with the tube?": one short question and nothing else. */
const asksOnly = /^[^.,!?;]{1,40}\?+$/;

function blank(text: string, pattern: RegExp | undefined): string {
  return pattern ? text.replace(pattern, gap) : text;
}

function has(text: string, pattern: RegExp): boolean {
  return text.search(pattern) !== -1;
}

/** A slip of "don't", "think" and the like beside a yes makes the answer doubtful. */
export function isDoubtful(word: string, { yesNo: { doubtWords, noSlips } }: Lexicon): boolean {
  return isSlip(word, doubtWords, noSlips);
}

function statement(clause: string, filler: RegExp): string {
  return clause
    .replace(filler, ' ')
    .replace(/ {2,}/g, ' ')
    .replace(/^[| ]+|[| ]+$/g, '');
}

const takenBack = onceEach(({ yesNo: { bareNo } }) => new RegExp(`\\d,? (?:${bareNo}),?$`));

/** The text after the last word of correction, or null where nothing was taken back. */
export function afterCorrection(
  plain: string,
  lexicon: Lexicon,
): { readonly before: string; readonly after: string; readonly soft: boolean } | null {
  const words = lexicon.yesNo;
  const last = [...plain.matchAll(words.correction)].at(-1);
  if (!last) return null;
  const before = plain.slice(0, last.index).trim();
  return {
    before,
    after: plain.slice(last.index + last[0].length).trim(),
    // "1:05 no sorry 1:50": a no after something said takes it back.
    soft: words.softCorrection.test(last[0]) && !takenBack(lexicon).test(before),
  };
}

const takingBack = onceEach(
  ({ yesNo: { bareNo, correction } }) =>
    new RegExp(`(?:\\b(?:${bareNo})\\b,? ?)?(${correction.source})(?:,? ?(?:${bareNo})\\b)?`, 'g'),
);

/** The text without what takes something back: "no wait", "not 17", "I answered wrong". A no beside such words is theirs. */
export function withoutCorrection({ plain, words }: Said): string {
  const { contrast, softCorrection } = words.yesNo;
  const rest = blank(plain, contrast);
  const firm = rest !== plain || words.wishes.correct.test(plain);
  return rest
    .replace(takingBack(words), (all, word: string) => (firm || !softCorrection.test(word) ? gap : all))
    .replace(words.wishes.correct, gap);
}

/** A yes first, and then words that are a no of this very question; a yes at the end takes it up again. */
function isOutweighed(
  clauses: readonly string[],
  { yes, no, noOutweighs }: Statements,
  words: Lexicon['yesNo'],
): boolean {
  if (noOutweighs !== true || no === undefined) return false;
  const isYes = (clause: string | undefined) =>
    clause !== undefined && (has(clause, words.yes) || words.yesStatement.test(clause) || yes?.test(clause) === true);
  const [first, ...later] = clauses;
  return isYes(first) && later.some((clause) => has(clause, no)) && !isYes(later.at(-1));
}

function simpleYesNo(plain: string, statements: Statements, lexicon: Lexicon): Found<YesNo> {
  const words = lexicon.yesNo;
  const answering = blank(plain, words.aside);
  const saysMore = answering !== plain;
  const kept = blank(blank(blank(answering, statements.neutral), words.neutral), words.contrast);
  const unsure = has(kept, words.unsure);
  const settled = blank(kept, words.unsure);
  const clauses = clausesOf(settled, lexicon);
  const said = clauses.map((clause) => statement(clause, words.filler));
  const noWords = statements.strictNo ? words.plainNo : words.no;
  const denial = denialIn(clauses, noWords, statements.matter ?? anything, lexicon);
  const no =
    denial === 'question' || (statements.no !== undefined && has(blank(answering, statements.neutral), statements.no));
  const plainYes = has(blank(settled, words.no), words.yes);
  // With its filler too: "c'est tout bon".
  const whole = clauses.map((clause) => clause.replace(/^[| ]+|[| ]+$/g, ''));
  const asWritten = clausesOf(plain, lexicon);
  const stated = [...said, ...whole, ...asWritten, ...asWritten.map((clause) => statement(clause, words.filler))];
  const yes = plainYes || stated.some((clause) => words.yesStatement.test(clause) || statements.yes?.test(clause));
  if (unsure) return { unclear: 'unsure' };
  if (
    yes &&
    isOutweighed(clausesOf(blank(blank(answering, statements.neutral), words.neutral), lexicon), statements, words)
  )
    return { value: 'no' };
  // "Yes, but it won't turn": what is not understood beside a yes may take it back.
  if (yes && (no || denial === 'other')) return { unclear: 'two-answers' };
  if (!yes && !no) return null;
  if (asksBack.test(plain) || (!plainYes && asksOnly.test(plain))) return { unclear: 'unsure' };
  if (no) return { value: 'no' };
  // "Yes, but the plunger won't move."
  if (saysMore || statements.unless?.test(kept)) return { unclear: 'unsure' };
  return wordsOf(plain).some((word) => isDoubtful(word, lexicon)) ? { unclear: 'unsure' } : { value: 'yes' };
}

/** "On hold for ages but they ring back, so yes": what somebody concludes is the answer; null where nothing is. */
function concluded(plain: string, statements: Statements, words: Lexicon): Found<YesNo> {
  const [last] = [...plain.matchAll(words.yesNo.conclusion)].slice(-1);
  if (last === undefined || has(plain.slice(0, last.index), words.yesNo.unsure)) return null;
  const found = simpleYesNo(plain.slice(last.index + last[0].length), statements, words);
  return found !== null && 'value' in found ? found : null;
}

/** A yes or no; what was corrected counts as corrected. Null where neither is said. */
export function yesNo({ plain, words }: Said, statements: Statements = {}): Found<YesNo> {
  const conclusion = concluded(plain, statements, words);
  if (conclusion) return conclusion;
  const corrected = afterCorrection(plain, words);
  if (corrected === null) return simpleYesNo(plain, statements, words);
  const after = simpleYesNo(corrected.after, statements, words);
  if (after) return after;
  const before = simpleYesNo(corrected.before, statements, words);
  return before && !corrected.soft ? { unclear: 'unsure' } : before;
}

/** The same where not knowing is an answer of its own. */
export function yesNoUnknown(said: Said, statements: Statements = {}): Found<YesNoUnknown> {
  const found = yesNo(said, statements);
  return found && 'unclear' in found && found.unclear === 'unsure' ? { value: 'unknown' } : found;
}
