/** Cases of which everything is known, by what is in the stoma, for tests of what one change to them changes. */
import { type Context, type Facts, freshContext, justPlaced, type Placed } from '#machines/dislodgement/context.ts';
import { oldTract, protocolWith, startMs } from './night.ts';

const fresh = freshContext({ protocol: protocolWith(), file: null, openedOn: '2027-03-06' });

/** A well child's G tube is out of an old tract, its steps were sent, and one try failed. */
export const nothingIn: Context = {
  ...fresh,
  openingSaid: true,
  unwell: 'well',
  file: 'settled',
  failedTries: 1,
  stepsSent: 'temporary',
  askedLastSeen: true,
  unclear: { key: 'weight', count: 1 },
  pagedOnce: ['hard-insertion', 'unread'],
  facts: {
    ...fresh.facts,
    tubeKind: 'g',
    firstPlaced: oldTract,
    weight: { kg: 7 },
    bareWeight: 5,
    cameOutAtMs: startMs,
    ownTube: 'burst',
    kit: 'yes',
    strips: 'yes',
  },
};

const passed: Placed = {
  ...justPlaced({ tube: 'temporary', how: 'easy', holderOnly: false, atMs: startMs, lengthBand: 'over-3' }),
  afterIn: 'well',
  contentsTried: 1,
  contents: true,
  reading: { low: 5, high: 5 },
  fedLately: 'yes',
  looks: 'yes',
  cleared: true,
  secured: true,
};

export const inUse: Context = {
  ...nothingIn,
  placed: passed,
  outcome: { to: 'use' },
  said: { to: 'use' },
  disposition: 'use',
};

export const ownInUse: Context = {
  ...inUse,
  placed: { ...passed, tube: 'own' },
  ownTried: true,
  outcome: { to: 'own-tube' },
  disposition: 'own-tube',
  facts: { ...inUse.facts, ownTube: 'yes' },
};

/** Held as hard to get in, its reading passed. */
export const heldHard: Context = {
  ...inUse,
  placed: { ...passed, how: 'hard', heldHard: true, cleared: false, secured: false },
  outcome: { to: 'hold', reason: 'hard', clinicArranges: false },
  disposition: 'hold',
};

/** A first reading was high: the recheck is waited for. */
export const rechecking: Context = {
  ...inUse,
  placed: {
    ...passed,
    reading: { low: 8, high: 8 },
    recheck: 'waiting',
    recheckDueAtMs: startMs + 3_600_000,
    cleared: false,
    secured: false,
  },
  outcome: null,
  disposition: 'recheck',
};

export interface Changes extends Partial<Omit<Context, 'facts' | 'placed'>> {
  readonly facts?: Partial<Facts>;
  readonly placed?: Partial<Placed> | null;
}

/** The same case but for this. */
export function but(context: Context, { facts, placed, ...rest }: Changes): Context {
  const tube = placed && context.placed ? { ...context.placed, ...placed } : context.placed;
  return { ...context, ...rest, facts: { ...context.facts, ...facts }, placed: placed === null ? null : tube };
}
