/** A case another nurse has: she reads who has it and since when, and takes it over only by her yes. */
import type { NurseSay } from '#src/wording/nurseSays.ts';
import type { LockedCase } from '../cases.ts';
import { caseName } from '../plan.ts';
import { takeStep } from '../turn.ts';
import { remember } from './confirmed.ts';
import { again, type Desk, hasNow, type Looked, look, otherTaker, placeOf, takeFromClimb, takeOne } from './desk.ts';

/** The answer to TAKE where no page waits for her: one that went on from her, what she has already, or who has it. */
export async function askToTakeOver(
  desk: Desk,
  named: readonly LockedCase[],
  taken: readonly LockedCase[],
): Promise<NurseSay> {
  const held: { readonly theCase: LockedCase; readonly nurse: string; readonly sinceMs: number }[] = [];
  const hers: LockedCase[] = [...taken];
  const place = await placeOf(desk);
  for (const found of await look(desk, named.length === 0 ? desk.cases : named)) {
    const other = await otherTaker(desk, found);
    if (other !== null) held.push({ theCase: found.theCase, ...other });
    else if (found.view.takenBy !== null) hers.push(found.theCase);
    else if (place !== null && isCalledFor(found)) {
      await takeFromClimb(desk, found.theCase, place);
      hers.push(found.theCase);
    }
  }
  const [only] = held;
  if (hers.length > 0) return hasNow(desk, hers);
  if (only === undefined) return { key: 'nothingToTake', params: {} };
  if (held.length > 1)
    return { key: 'which', params: { word: 'TAKE', cases: held.map((one) => caseName(one.theCase)) } };
  const { theCase, nurse, sinceMs } = only;
  const mayTake = place !== null;
  if (mayTake) await remember(desk, 'take-over', theCase);
  return { key: 'heldBy', params: { ...caseName(theCase), nurse, sinceMs, mayTake } };
}

/** A case that calls nobody has no page to take. */
const isCalledFor = ({ view }: Looked) => !view.states.paging.includes('paging.idle');

/** Whoever had it hears so, and the family who has it now. */
export async function takeOver(desk: Desk, theCase: LockedCase): Promise<NurseSay> {
  const { parts, turn } = desk;
  const [found] = await look(desk, [theCase]);
  const place = await placeOf(desk);
  if (found === undefined || place === null) return { key: 'nothingPending', params: {} };
  if ((await otherTaker(desk, found)) === null) return { key: 'nothingPending', params: {} };
  await takeStep(
    parts,
    turn,
    theCase,
    (stamp) => ({ machine: 'paging', event: { type: 'stepsIn', place, ...stamp } }),
    {
      answering: false,
    },
  );
  await takeOne(desk, await again(desk, theCase), true);
  return hasNow(desk, [theCase]);
}
