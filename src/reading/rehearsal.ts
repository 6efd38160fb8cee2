/** Hears what a text says of a rehearsal: the wish for one, that it is over, or that this is no rehearsal. In every language. */
import { languageCodes } from '#machines/facts.ts';
import { plainOf } from './language.ts';
import { lexicons } from './lexicon.ts';

/** `wish` and `over` only where they are the whole of the text; `real` wherever it may be, because the safe side is real. */
export type RehearsalSaid = 'wish' | 'over' | 'real';

/** `out`: the text also says that a tube is out or in trouble. */
export function rehearsalSaid(raw: string, out: boolean): RehearsalSaid | null {
  const plain = plainOf(raw)
    .replace(/[.,;:!?-]+/g, ' ')
    .replace(/ {2,}/g, ' ')
    .trim();
  const ours = languageCodes.reduce((rest, code) => rest.replace(lexicons[code].rehearsal.otherPractice, ' '), plain);
  const says = (which: 'wish' | 'over' | 'real' | 'named') =>
    languageCodes.some((code) => lexicons[code].rehearsal[which].test(ours));
  if (says('wish')) return 'wish';
  if (says('over')) return 'over';
  return says('real') || (out && says('named')) ? 'real' : null;
}
