/** What a nurse can do now, as her cases stand: only what is possible is offered to her. */
import { type NurseOffer, nurseOffers } from '#src/wording/nurseSays.ts';
import { type Desk, type Looked, look, otherTaker } from './desk.ts';

/** In the order she is likely to want them. */
export async function offersNow(desk: Desk): Promise<readonly NurseOffer[]> {
  const { cases, turn } = desk;
  const looked: (Looked['view'] & { readonly others: boolean })[] = [];
  // One after the other: a transaction's connection runs one statement at a time.
  for (const found of await look(desk, cases)) {
    looked.push({ ...found.view, others: (await otherTaker(desk, found)) !== null });
  }
  const parked = looked.length < cases.length;
  // Hers, or nobody's yet.
  const open = looked.filter(({ others }) => !others);
  const advises = !turn.paused;
  const can: Readonly<Record<NurseOffer, boolean>> = {
    TAKE: parked || looked.some(({ others, takenBy }) => others || takenBy === null),
    PASS: open.length > 0,
    MORE: cases.length > 0,
    TELL: parked || open.length > 0,
    CALL: parked || open.length > 0,
    CLEAR: advises && looked.some(({ clearable }) => clearable),
    FACT: advises && looked.length > 0,
    'GO IN': looked.some(({ disposition }) => disposition !== 'go-in' && disposition !== 'emergency'),
    CLOSE: cases.length > 0,
    WRONG: cases.length > 0,
    PRACTICE: advises,
  };
  return nurseOffers.filter((offer) => can[offer]);
}
