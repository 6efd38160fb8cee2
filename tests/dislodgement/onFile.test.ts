/** What a family's file says of its child before anybody confirmed it, and what a case knows that has no file. */
import { describe, expect, it } from 'vitest';
import { freshContext, justPlaced, noFacts } from '#machines/dislodgement/context.ts';
import type { FamilyFile } from '#machines/facts.ts';
import { protocolWith } from './night.ts';

const nothing: FamilyFile = {
  child: null,
  born: null,
  tubeKind: 'unknown',
  firstPlaced: null,
  weightKg: null,
  weighedOn: null,
};
const opened = (file: FamilyFile | null) => freshContext({ protocol: protocolWith(), file, openedOn: '2027-03-06' });
const facts = (file: Partial<FamilyFile>) => opened({ ...nothing, ...file }).facts;

describe('a filed weight', () => {
  // A child under 3 kg gains fast: its weight is asked again after a week. Common practice, no source.
  it.each([
    [2.9, '2027-02-27', { kg: 2.9 }],
    [2.9, '2027-02-26', null],
    [2.9, null, null],
    [3, '2026-03-06', { kg: 3 }],
    [9, null, { kg: 9 }],
    [null, '2027-03-06', null],
  ] as const)('of %s kg, weighed on %s, counts as %j', (weightKg, weighedOn, weight) => {
    expect(facts({ weightKg, weighedOn }).weight).toEqual(weight);
  });
});

describe('a file', () => {
  it('that knows nothing leaves every fact to be asked, and asks nothing to be confirmed', () => {
    expect(opened(nothing)).toMatchObject({ facts: noFacts, file: 'settled' });
  });

  it.each([{ tubeKind: 'gj' }, { firstPlaced: '2026-03-01' }, { weightKg: 9 }] as const)(
    'that knows %j has it confirmed',
    (file) => {
      expect(opened({ ...nothing, ...file }).file).toBe('unconfirmed');
    },
  );

  it('gives its dates and what else it knows as facts', () => {
    const known = { born: '2024-02-02', firstPlaced: '2025-03-01', latexAllergy: true, cannotWait: 'seizure medicine' };
    expect(facts({ ...known, tubeKind: 'g' })).toEqual({
      ...noFacts,
      tubeKind: 'g',
      born: { earliest: '2024-02-02', latest: '2024-02-02' },
      firstPlaced: { earliest: '2025-03-01', latest: '2025-03-01' },
      latexAllergy: true,
      cannotWait: 'seizure medicine',
    });
  });
});

describe('nothing is known', () => {
  it('of a case just opened, and nobody was called', () => {
    expect(opened(null)).toMatchObject({
      facts: noFacts,
      file: 'none',
      children: null,
      unwell: 'unasked',
      placed: null,
      outcome: null,
      disposition: null,
      pagedFacts: [],
      pagedOnce: [],
      preface: [],
      unrepeated: {},
    });
  });

  it('of a tube that has just gone in but that it is in: nothing of it was read, cleared or allowed', () => {
    const inserted = { tube: 'own', how: 'easy', holderOnly: false, atMs: 1, lengthBand: null } as const;
    expect(justPlaced(inserted)).toEqual({
      ...inserted,
      maybeLatex: false,
      stopped: null,
      allowedAtMs: null,
      afterIn: 'unasked',
      contentsTried: 0,
      contents: false,
      reading: null,
      fedLately: null,
      looks: null,
      recheck: 'none',
      recheckDueAtMs: null,
      heldHard: false,
      cleared: false,
      readingCorrected: false,
      retested: false,
      securedTried: 0,
      secured: false,
    });
  });
});
