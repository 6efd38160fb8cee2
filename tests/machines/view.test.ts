/** What may be known of a case from outside: all of it at a few places, and nothing that was not told. */
import { describe, expect, it } from 'vitest';
import type { CaseView } from '#machines/case.ts';
import { Night, oldTract, startMs, toContents, toInsertion } from '#tests/dislodgement/night.ts';

const ph = (high: number) => ({ low: high, high });
const read = (how: 'easy' | 'hard') => toContents(how).answer('contents', 'yes').answer('ph', ph(5));
const minuteMs = 60_000;

const nothing = {
  asking: null,
  child: null,
  clarifying: null,
  bareWeight: null,
  answered: null,
  disposition: null,
  facts: {},
  tubeIn: null,
  inside: 'nothing',
  cannotWait: null,
  dangerSigns: [],
  warningSigns: [],
  placedAtMs: null,
  cleared: false,
  failedTries: 0,
  fedLately: null,
  latexAllergy: false,
  clearable: false,
  closed: false,
  told: {},
  temporarySinceMs: null,
  takenBy: null,
} satisfies Partial<CaseView>;

const told = { tubeKind: 'g', firstPlaced: oldTract, weight: { kg: 7 }, kit: 'yes', ownTube: 'no' } as const;
const facts = {
  tubeKind: 'g',
  firstPlaced: oldTract,
  weightKg: 7,
  weightBand: 'over-3',
  cameOutAt: new Date(startMs - 20 * minuteMs).toISOString(),
} as const;

describe('a case as it is seen', () => {
  it.each([
    ['just opened', () => new Night(), nothing],
    [
      'with its steps sent',
      toInsertion,
      {
        ...nothing,
        asking: 'tube-in',
        answered: 'weight',
        facts,
        told: { ...told, cameOutAtMs: startMs - 20 * minuteMs },
      },
    ],
    [
      'held for a nurse who has it',
      () => read('hard').take('Ana'),
      {
        ...nothing,
        answered: 'ph',
        disposition: 'hold',
        facts: { ...facts, ph: 5, insertedHow: 'hard' },
        tubeIn: 'temporary',
        inside: 'temporary',
        placedAtMs: startMs,
        clearable: true,
        told: { ...told, cameOutAtMs: startMs - 20 * minuteMs, strips: 'yes' },
        takenBy: 'Ana',
      },
    ],
    [
      'in use, asked how the first feed went',
      () => read('easy').answer('secured', 'yes').wait(180),
      {
        ...nothing,
        asking: 'first-feed',
        disposition: 'use',
        facts: { ...facts, ph: 5, insertedHow: 'easy' },
        tubeIn: 'temporary',
        inside: 'temporary',
        placedAtMs: startMs,
        told: { ...told, cameOutAtMs: startMs - 20 * minuteMs, strips: 'yes' },
        temporarySinceMs: startMs,
      },
    ],
  ] as const)('%s', (_name, make, seen) => {
    const { states: _, ...view } = make().view;
    expect({ ...view }).toEqual(seen);
  });

  it('names the signs of a danger, the number that waits for its unit, and the tries that failed', () => {
    expect(toContents().signs('breathing', 'limp').view.dangerSigns).toEqual(['breathing', 'limp']);
    const night = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract, ownTube: 'no', kit: 'yes' });
    night.answer('unwell', 'no').answer('weight', { bare: 5 });
    expect(night.view).toMatchObject({ asking: 'weight', clarifying: 'unit', bareWeight: 5, facts: { tubeKind: 'g' } });
    expect(toInsertion().answer('tube-in', 'no').view.failedTries).toBe(1);
  });

  it('names the signs of a warning, heard or asked about, once each', () => {
    const night = toContents().signs('fever').signs('fever');
    expect(night.view).toMatchObject({ warningSigns: ['fever'], dangerSigns: [] });
  });

  it('says that a nurse cleared it while it is secured', () => {
    expect(read('hard').take().clear().view).toMatchObject({ disposition: 'hold', cleared: true });
  });

  it('keeps the medicine that was named, whatever is said of it later', () => {
    const night = new Night().tell({ cannotWait: '8 mL of her medicine' }).tell({ cannotWait: 'no he is asleep' });
    expect(night.view.cannotWait).toBe('8 mL of her medicine; no he is asleep');
  });

  it('says of a weight told without its unit the band alone, and of one not known nothing', () => {
    const weighed = (weight: 'unknown' | { bare: number }) => new Night().tell({ weight }).view.facts;
    expect(weighed({ bare: 9 })).toEqual({ weightBand: 'over-3' });
    expect(weighed('unknown')).toEqual({});
    expect(new Night().tell({ firstPlaced: 'unknown' }).view.facts).toEqual({});
  });

  it('knows of a feed, of what cannot wait, and of an allergy', () => {
    const fed = toContents().answer('contents', 'yes').answer('ph', ph(6.5)).answer('fed-lately', 'yes');
    expect(fed.view.fedLately).toBe('yes');
    expect(new Night().tell({ cannotWait: 'seizure medicine', latexAllergy: true }).view).toMatchObject({
      cannotWait: 'seizure medicine',
      latexAllergy: true,
    });
  });

  it('has no stay for an own tube, and none on the way in', () => {
    const own = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs }).answer('unwell', 'no');
    own.answer('own-tube', 'yes').answer('own-tube-in', 'easy').answer('after-in', 'no').answer('strips', 'yes');
    own.answer('contents', 'yes').answer('ph', ph(5)).answer('secured', 'yes');
    expect(own.view).toMatchObject({ disposition: 'own-tube', tubeIn: 'own', temporarySinceMs: null });
    expect(toContents().signs('breathing').view.temporarySinceMs).toBeNull();
  });

  it('has no stay any more once the tube is out', () => {
    const night = read('easy').answer('secured', 'yes').hear('outAgain');
    expect(night.view).toMatchObject({ tubeIn: null, temporarySinceMs: null });
  });

  it('what was answered last can be taken back while the conversation asks, whatever else is still to be answered', () => {
    const night = read('easy').answer('secured', 'yes').wait(180).near('bleeding');
    expect(night.view).toMatchObject({ asking: 'unwell', answered: 'secured' });
  });

  it('is in a state of each machine', () => {
    expect(read('hard').take().view.states).toEqual({
      conversation: ['dislodgement', 'dislodgement.close', 'dislodgement.close.hold'],
      paging: ['paging', 'paging.taken', 'paging.taken.waits'],
      aftercare: ['aftercare', 'aftercare.idle'],
    });
  });
});
