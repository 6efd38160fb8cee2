/** Where a case can come to rest: what is said there, and whom it calls. */
import type { PageReason } from '../facts.ts';
import type { Card, GoInReason, HoldReason, Left, SayKey, Says } from '../says.ts';
import type { Context, Outcome } from './context.ts';
import { inside, readingPassed } from './gates.ts';

/** A message without its preface, which the context adds as it is sent. */
export type Line = { [K in SayKey]: { readonly key: K; readonly params: Says[K] } }[SayKey];

/** Reasons that the facts have paged for already, or that come from the pages themselves, call nobody again. */
const goInPages: Record<GoInReason, PageReason | null> = {
  'tract-too-young': null,
  kind: null,
  tract: null,
  'half-out': null,
  warning: null,
  'unwell-unread': null,
  'nobody-answered': null,
  nurse: null,
  latex: 'latex',
  'no-kit': 'no-kit',
  'burst-own': 'no-kit',
  'not-shown': 'not-shown',
  'will-not-go-in': 'will-not-go-in',
  'second-high': 'second-high',
  'cannot-wait': 'cannot-wait',
};

const holdPages: Record<HoldReason, PageReason | null> = {
  hard: 'hard-insertion',
  'no-strips': 'no-strips',
  'no-contents': 'no-contents',
  unread: null,
  'second-high': 'second-high',
  'not-secured': 'not-secured',
  'tube-problem': 'tube-problem',
  'in-place': 'in-place',
  'in-blocked': 'in-blocked',
  'in-sore': 'in-sore',
  'in-leaking': 'in-leaking',
};

/** The page that coming to rest here calls for, beyond those the facts have called for. */
export function pageForOutcome(outcome: Outcome): PageReason | null {
  if (outcome.to === 'go-in') return goInPages[outcome.reason];
  return outcome.to === 'hold' ? holdPages[outcome.reason] : null;
}

/** What is said on coming to rest, in full; one entry a text. */
export function outcomeLines(context: Context, outcome: Outcome): Line[] {
  const { stayDays } = context.protocol.clinical;
  switch (outcome.to) {
    case 'go-in': {
      const told = { reason: outcome.reason, inside: inside(context) };
      // Said afresh, somebody may have answered since.
      const answered = outcome.reason === 'nobody-answered' && !context.unanswered;
      const goIn: Line = answered ? { key: 'goInStill', params: { told } } : { key: 'goIn', params: told };
      return [goIn, { key: 'goInCard', params: card(context) }];
    }
    case 'hold':
      return [{ key: 'hold', params: { reason: outcome.reason, clinicArranges: outcome.clinicArranges } }];
    case 'nurse':
      return [{ key: 'nurse', params: { reason: 'nose-tube' } }];
    case 'use':
      return [{ key: 'use', params: { tube: 'temporary', stayDays } }];
    case 'own-tube':
      return [{ key: 'use', params: { tube: 'own', stayDays } }];
  }
}

/** The answer to a further text while the case rests: one line that says it still stands. */
export function stillLine(context: Context, outcome: Outcome): Line {
  switch (outcome.to) {
    case 'go-in':
      return { key: 'goInStill', params: { told: { reason: outcome.reason, inside: inside(context) } } };
    case 'hold':
      return { key: inside(context) === 'in-place' ? 'leaveInStill' : 'holdStill', params: {} };
    case 'nurse':
      return { key: 'nurseStill', params: {} };
    case 'use':
      return { key: 'useStill', params: { tube: 'temporary' } };
    case 'own-tube':
      return { key: 'useStill', params: { tube: 'own' } };
  }
}

/** What the family has to go on doing once nobody follows its case any more. */
export function leftAs({ disposition }: Pick<Context, 'disposition'>): Left {
  if (disposition === 'go-in' || disposition === 'emergency') return 'go-in';
  return disposition === 'use' || disposition === 'own-tube' ? 'in-use' : 'held';
}

/** What the desk of the emergency department needs to see. */
export function card(context: Context): Card {
  const { tubeKind, cameOutAtMs, latexAllergy, cannotWait } = context.facts;
  return {
    tubeKind,
    cameOutAtMs: typeof cameOutAtMs === 'number' ? cameOutAtMs : null,
    inside: inside(context),
    checked: readingPassed(context),
    lastReading: context.placed?.reading ?? null,
    latexAllergy,
    cannotWait,
  };
}
