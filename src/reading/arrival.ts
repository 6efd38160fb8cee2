/** Hears that the family has arrived at the hospital before it is asked. */
import type { Said } from './said.ts';
import { wordsOf } from './spell.ts';

/** "Here" alone may be anywhere. */
const leastWords = 2;

/** Whether the text says so, and nothing that says they are still on the way. */
export function saysArrived({ plain, clauses, words: { answers } }: Said): boolean {
  const { yes, no } = answers.arrived;
  return (
    no?.test(plain) !== true &&
    clauses.some((clause) => wordsOf(clause).length >= leastWords && yes?.test(clause) === true)
  );
}

/** Whether nothing is there to get to the hospital with. */
export function saysNoWayThere({ plain, words: { wishes } }: Said): boolean {
  return wishes.noWayThere.test(plain);
}
