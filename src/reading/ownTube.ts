/** Reads the state of the tube that came out: whole, burst, with a long part inside, gone, or not known. */
import type { OwnTubeAnswer } from '#machines/facts.ts';
import type { Lexicon } from './lexicon.ts';
import { type Found, part, type Said } from './said.ts';
import { afterCorrection, yesNo } from './yesNo.ts';

function firmly(text: string, pattern: RegExp, notThat: RegExp): boolean {
  return [...text.matchAll(pattern)].some(({ index }) => !notThat.test(text.slice(0, index)));
}

/** A fault or a loss named in the text, the most telling first; null where none is. */
function fault(text: string, { tube: words }: Lexicon): 'long-inside' | 'burst' | 'no' | null {
  const whole = text.replace(words.tubeWhole, ` ${words.fine} `);
  const says = (pattern: RegExp) => firmly(whole, pattern, words.notThat);
  if (says(words.longInside)) return 'long-inside';
  if (says(words.tubeLost)) return 'no';
  if (says(words.burst)) return 'burst';
  return says(words.damaged) || words.notWhole.test(text) ? 'no' : null;
}

function plainOwnTube(said: Said): Found<OwnTubeAnswer> {
  const { grammar, tube, answers } = said.words;
  const named = fault(said.plain, said.words);
  if (named) return { value: named };
  // Late for the facts on file, which were asked right before.
  if (answers.onlyRight.test(said.plain)) return { unclear: 'unsure' };
  if (tube.notLookedAt.test(said.plain)) return { value: 'unknown' };
  const kept = part(said, said.plain.replace(tube.notLong, ' ').replace(tube.tubeWhole, grammar.marks.yes));
  const found = yesNo(kept, answers.ownTube);
  const isYes = found !== null && 'value' in found && found.value === 'yes';
  if (isYes && tube.tubeDoubtful.test(said.plain.replace(tube.tubeWhole, ' '))) return { value: 'unknown' };
  return found && 'unclear' in found && found.unclear === 'unsure' ? { value: 'unknown' } : found;
}

/** The answer to "do you have the tube, is it whole, is its balloon good?". */
export function ownTube(said: Said): Found<OwnTubeAnswer> {
  const corrected = afterCorrection(said.plain, said.words);
  return (corrected && plainOwnTube(part(said, corrected.after))) ?? plainOwnTube(said);
}

/** Only a fault or a loss is taken from words beside something else: that it is whole must be asked. */
export function ownTubeTold(said: Said): 'burst' | 'long-inside' | 'no' | null {
  const words = said.words.tube;
  const clauses = said.clauses.filter((clause) => words.tubeNamed.test(clause));
  const named = clauses.map((clause) => fault(clause.replace(words.halfOut, ' '), said.words));
  if (named.includes('burst') && clauses.some((clause) => words.balloonNamed.test(clause))) return 'burst';
  return clauses.some((clause) => words.toldLost.test(clause)) ? 'no' : null;
}
