/** Whether it may be the child of another open case: what has it asked, and what is carried on there. */
import type { Told } from '../facts.ts';
import type { Context, Facts } from './context.ts';
import { toldBefore } from './whichChild.ts';

/** Asked once a case, and only before anything was put in: what was begun here is finished here. */
export function foldMayJoin(context: Context): Context {
  const begun = context.placed !== null || context.stepsSent !== null || context.failedTries > 0;
  return context.sameChild === null && !begun ? { ...context, sameChild: 'ask' } : context;
}

/** The facts told here, to be heard in the case that goes on: it takes each as it takes any fact told unasked. */
export function toldSoFar(facts: Facts): Told {
  const { inPlace, cameOutAtMs, ownTube, kit, strips } = facts;
  return {
    ...toldBefore(facts),
    ...(inPlace && { inPlace }),
    ...(typeof cameOutAtMs === 'number' && { cameOutAtMs }),
    ...(ownTube !== null && { ownTube }),
    ...(kit !== null && { kit }),
    ...(strips !== null && { strips }),
  };
}
