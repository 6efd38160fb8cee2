/** Ways to come to rest, as the tail of a transition. */
import type { GoInReason, HoldReason } from '../says.ts';
import type { Outcome } from './context.ts';

/** Rests on any outcome. */
export function settle(outcome: Outcome) {
  return { target: '#dislodgement.close', actions: { type: 'settle' as const, params: outcome } };
}

export function goIn(reason: GoInReason) {
  return settle({ to: 'go-in', reason });
}

/** A hold is decided once more before it is said: what cannot wait, and nurses who do not answer, turn it into going in. */
export function hold(reason: HoldReason, clinicArranges = false) {
  return {
    target: '#dislodgement.deciding',
    actions: { type: 'settle' as const, params: { to: 'hold', reason, clinicArranges } as const },
  };
}
