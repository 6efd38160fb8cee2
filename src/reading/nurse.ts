/** Reads the nurse's few words. Anything not plainly one of them is `other`: a page is never taken by guesswork. */
import { plainNurse } from './plainNurse.ts';

/** What she wants; `words` are what came after, as she wrote it: an outcome, a fault, a reason, something for the family, a fact, a child. */
export type NurseWord =
  | { [W in Bare | 'other']: { readonly word: W } }[Bare | 'other']
  | { [W in Leading]: { readonly word: W; readonly words: string } }[Leading];

type Leading = 'pause' | 'close' | 'wrong' | 'tell' | 'fact' | 'practice';
type Bare = 'resume' | 'take' | 'pass' | 'more' | 'call' | 'clear' | 'send-in' | 'yes' | 'no';

const forms: readonly (readonly [Bare, RegExp])[] = [
  [
    'take',
    /^(?:ok |okay |yes |yea |yeah |yep |sure )?(?:take|taken|taking|take it|taking it|ill take|ill take it|i will take it|ill take this(?: one)?|i take it|i have it|ive got it|i got it|got it|got this|mine|its mine|im on it|on it|i am on it)$/,
  ],
  ['resume', /^(?:resume|unpause) (?:the )?line$/],
  ['clear', /^(?:ok |okay )?(?:clear|cleared|clear it|i clear it|clear the hold)$/],
  ['yes', /^(?:yes|y|yep|yeah|yes clear|yes i confirm|confirm|confirmed)$/],
  ['no', /^(?:no|n|nope|dont|do not|cancel|not yet)$/],
  ['pass', /^(?:pass|pass it(?: on)?|pass on|next|next person)$/],
  ['more', /^(?:more|details|tell me more)$/],
  ['call', /^(?:call|call me|call them|call family|put me through|connect|connect me)$/],
  [
    'send-in',
    /^(?:go in|send in|send them in|send (?:her|him|them) to (?:the )?(?:ed|er|emergency)|send to (?:the )?(?:ed|er|emergency)|ed|er)$/,
  ],
];

/** Words with more behind them, which is kept as she wrote it. */
const openings: readonly (readonly [Leading, RegExp])[] = [
  ['pause', /^\s*pause (?:the )?line\b[\s:,.-]*/i],
  ['close', /^\s*(?:close(?: it| case| the case)?|closed)\b[\s:,.-]*/i],
  ['wrong', /^\s*(?:wrong|the line was wrong|line was wrong|report)\b[\s:,.-]*/i],
  ['tell', /^\s*(?:ask|tell|say)\b(?: (?:them|family|the family|mom|mum|dad|her|him))?[\s:,-]*/i],
  ['fact', /^\s*(?:fact|correct)\b[\s:,-]*/i],
  ['practice', /^\s*(?:send (?:a )?)?practi[cs]e\b(?: (?:with|for|to))?[\s:,-]*/i],
];

/** The word of a nurse's text, from the whole of it. */
export function readNurse(text: string): NurseWord {
  const plain = plainNurse(text);
  const bare = forms.find(([, form]) => form.test(plain))?.[0];
  if (bare !== undefined) return { word: bare };
  for (const [word, opening] of openings) {
    if (!opening.test(text)) continue;
    const words = text.replace(opening, '').replace(/\s+/g, ' ').trim();
    // What is asked or corrected has to be said.
    if (words === '' && (word === 'tell' || word === 'fact')) return { word: 'other' };
    return { word, words };
  }
  return inParts(text);
}

/** TELL in capitals begins a sentence; what stands before it is for the line, which cannot use it. */
const tellLater = /[.,;:!?\n]\s*TELL\b[\s:,-]*(.+)$/s;

/** Taking said twice is one; PASS counts beside her reason, as the next person is called either way. */
function inParts(text: string): NurseWord {
  const words = tellLater.exec(text)?.[1]?.replace(/\s+/g, ' ').trim() ?? '';
  if (words !== '') return { word: 'tell', words };
  const parts = text
    .split(/[.,;!\n]+/)
    .map(plainNurse)
    .filter((part) => part !== '');
  const said = parts.map((part) => forms.find(([, form]) => form.test(part))?.[0] ?? 'other');
  if (said.length > 1 && said.every((one) => one === 'take')) return { word: 'take' };
  return said.includes('pass') && said.every((one) => one === 'pass' || one === 'other')
    ? { word: 'pass' }
    : { word: 'other' };
}
