/** A fact told unasked: to the careful side it counts at once, to the other only where nothing was known, or it is asked again. */
import { describe, expect, it } from 'vitest';
import { noteTold, tellsNothing } from '#machines/dislodgement/told.ts';
import type { Told } from '#machines/facts.ts';
import { but, type Changes, heldHard, inUse, nothingIn, ownInUse, rechecking } from './known.ts';
import { daysBefore, oldTract, startMs } from './night.ts';

const heard = (told: Told, corrects = false) => ({ told, corrects, at: startMs });
type Row = readonly [string, Changes, Told, Changes];

/** The case knows these, this is told, and that changes; `repeats` is what is repeated back. */
function changesOf(corrects: boolean) {
  return (_name: string, known: Changes, told: Told, changes: Changes) => {
    const before = but(nothingIn, known);
    const after = noteTold(before, heard(told, corrects));
    expect(after).toEqual({ ...but(before, changes), unrepeated: after.unrepeated });
  };
}

const olderTract = { earliest: '2024-03-01', latest: '2024-03-01' } as const;
const later = startMs + 60_000;

describe('told in passing', () => {
  const rows: readonly Row[] = [
    [
      'a kind not known',
      { facts: { tubeKind: null } },
      { tubeKind: 'g' },
      { facts: { tubeKind: 'g' }, stepsSent: null },
    ],
    ['a kind that asks for more care', {}, { tubeKind: 'gj' }, { facts: { tubeKind: 'gj' }, stepsSent: null }],
    ['a kind that asks for less', { facts: { tubeKind: 'gj' } }, { tubeKind: 'g' }, {}],
    [
      'a kind that asks for less than the file',
      { file: 'unconfirmed', facts: { tubeKind: 'gj' } },
      { tubeKind: 'g' },
      {},
    ],
    ['the same kind', {}, { tubeKind: 'g' }, {}],
    ['which tube is half out, of one that is all out', {}, { halfOutOf: 'g' }, {}],
    ['a doubt about a GJ', { facts: { tubeKind: 'gj' } }, { tubeKind: 'unknown' }, {}],
    ['a nose tube after another', {}, { tubeKind: 'nose' }, {}],
    ['another after a nose tube', { facts: { tubeKind: 'nose' } }, { tubeKind: 'j' }, { facts: { tubeKind: null } }],
    [
      'a nose tube before the file was confirmed',
      { file: 'unconfirmed' },
      { tubeKind: 'nose' },
      { facts: { tubeKind: 'nose' }, stepsSent: null },
    ],
    ['a younger tract', {}, { firstPlaced: daysBefore(40) }, { facts: { firstPlaced: daysBefore(40) } }],
    ['an older tract', {}, { firstPlaced: olderTract }, {}],
    ['a tract perhaps older', {}, { firstPlaced: { ...oldTract, earliest: olderTract.earliest } }, {}],
    ['a tract not known any more', {}, { firstPlaced: 'unknown' }, {}],
    [
      'a tract where none was known',
      { facts: { firstPlaced: 'unknown' } },
      { firstPlaced: oldTract },
      { facts: { firstPlaced: oldTract } },
    ],
    ['another weight', {}, { weight: { kg: 9 } }, { facts: { weight: { kg: 9 }, bareWeight: null }, stepsSent: null }],
    ['the same weight', {}, { weight: { kg: 7 } }, { facts: { bareWeight: null } }],
    ['a weight not known any more', {}, { weight: 'unknown' }, {}],
    ['an earlier time', {}, { cameOutAtMs: startMs - 1 }, { facts: { cameOutAtMs: startMs - 1 } }],
    ['a later time', {}, { cameOutAtMs: later }, {}],
    [
      'a time where none was known',
      { facts: { cameOutAtMs: 'unknown' } },
      { cameOutAtMs: later },
      { facts: { cameOutAtMs: later } },
    ],
    ['the own tube whole after all', {}, { ownTube: 'yes' }, {}],
    ['no own tube', { facts: { ownTube: 'yes' } }, { ownTube: 'no' }, { facts: { ownTube: 'no' } }],
    ['a burst own tube', { facts: { ownTube: 'yes' } }, { ownTube: 'burst' }, { facts: { ownTube: 'burst' } }],
    [
      'an own tube where none was asked about',
      { facts: { ownTube: null } },
      { ownTube: 'yes' },
      { facts: { ownTube: 'yes' } },
    ],
    ['no kit', {}, { kit: 'no' }, { facts: { kit: 'no' } }],
    ['a kit where there was none', { facts: { kit: 'no' } }, { kit: 'yes' }, { facts: { kit: null } }],
    ['a kit to one who was not shown', { facts: { kit: 'not-shown' } }, { kit: 'yes' }, {}],
    ['a kit before it was asked for', { facts: { kit: null } }, { kit: 'yes' }, { facts: { kit: 'yes' } }],
    ['a kit to a child with a latex allergy', { facts: { kit: null, latexAllergy: true } }, { kit: 'yes' }, {}],
    ['no strips', {}, { strips: 'no' }, { facts: { strips: 'no' } }],
    ['no strips, once more', { facts: { strips: 'no' } }, { strips: 'no' }, {}],
    ['strips after all', { facts: { strips: 'no' } }, { strips: 'yes' }, { facts: { strips: null } }],
    ['strips before they were asked for', { facts: { strips: null } }, { strips: 'yes' }, { facts: { strips: 'yes' } }],
    ['an allergy, with a kit', {}, { latexAllergy: true }, { facts: { latexAllergy: true, kit: null } }],
    ['an allergy, without one', { facts: { kit: 'no' } }, { latexAllergy: true }, { facts: { latexAllergy: true } }],
    ['an allergy once more', { facts: { latexAllergy: true } }, { latexAllergy: true }, { facts: { kit: null } }],
    ['an age', {}, { born: daysBefore(60) }, { facts: { born: daysBefore(60) } }],
    [
      'a younger age',
      { facts: { born: daysBefore(90) } },
      { born: daysBefore(60) },
      { facts: { born: daysBefore(60) } },
    ],
    ['an older age', { facts: { born: daysBefore(60) } }, { born: daysBefore(90) }, {}],
    [
      'an age perhaps older',
      { facts: { born: daysBefore(60) } },
      { born: { ...daysBefore(60), earliest: daysBefore(90).earliest } },
      {},
    ],
    ['how it went in, while it is out', {}, { insertedHow: 'hard' }, {}],
    ['a reading, while it is out', {}, { ph: { low: 8, high: 8 } }, {}],
    [
      'what cannot wait',
      {},
      { cannotWait: 'seizure medicine' },
      { facts: { cannotWait: 'seizure medicine' }, cannotWaitTold: true },
    ],
    ['who is writing, once something was begun', {}, { mayJoin: true }, {}],
    ['who is writing', { stepsSent: null, failedTries: 0 }, { mayJoin: true }, { sameChild: 'ask' }],
    ['who is writing, once steps were sent', { failedTries: 0 }, { mayJoin: true }, {}],
    ['who is writing, once a try failed', { stepsSent: null }, { mayJoin: true }, {}],
    [
      'who is writing, once it was asked',
      { stepsSent: null, failedTries: 0, sameChild: 'none' },
      { mayJoin: true },
      {},
    ],
    ['a child to a family of one', {}, { children: [0] }, {}],
  ];
  it.each(rows)('%s', changesOf(false));
});

describe('told as a correction', () => {
  const rows: readonly Row[] = [
    ['a kind that asks for less', { facts: { tubeKind: 'gj' } }, { tubeKind: 'g' }, { facts: { tubeKind: null } }],
    ['an older tract', {}, { firstPlaced: olderTract }, { facts: { firstPlaced: null } }],
    ['the same tract', {}, { firstPlaced: oldTract }, {}],
    ['a tract not known any more', {}, { firstPlaced: 'unknown' }, { facts: { firstPlaced: null } }],
    ['a later time', {}, { cameOutAtMs: later }, { facts: { cameOutAtMs: later } }],
    ['the own tube whole after all', {}, { ownTube: 'yes' }, { facts: { ownTube: 'yes' } }],
    ['a kit to one who was not shown', { facts: { kit: 'not-shown' } }, { kit: 'yes' }, { facts: { kit: null } }],
    ['the same kit', {}, { kit: 'yes' }, {}],
  ];
  it.each(rows)('%s', changesOf(true));
});

describe('told of the tube that is in', () => {
  it.each([
    ['hard', inUse, 'hard', false, { placed: { how: 'hard', cleared: false } }],
    ['hard, which a nurse has cleared', but(inUse, { placed: { how: 'hard' } }), 'hard', false, {}],
    ['easy, as a correction at rest', but(inUse, { placed: { how: 'hard' } }), 'easy', true, {}],
    ['easy, in passing', but(inUse, { outcome: null, placed: { how: 'hard' } }), 'easy', false, {}],
    [
      'easy, as a correction while nothing is decided',
      but(inUse, { outcome: null, placed: { how: 'hard' } }),
      'easy',
      true,
      { placed: { how: 'easy' } },
    ],
    ['easy, once it was held as hard', but(heldHard, { outcome: null }), 'easy', true, {}],
    [
      'easy, where only "it is in" was told',
      but(inUse, { placed: { how: null } }),
      'easy',
      false,
      { placed: { how: 'easy' } },
    ],
  ] as const)('%s', (_name, before, insertedHow, corrects, changes) => {
    expect(noteTold(before, heard({ insertedHow }, corrects))).toEqual(but(before, changes));
  });

  const void_ = { fedLately: null, looks: null, secured: false, cleared: false } as const;
  it.each([
    [
      'higher',
      inUse,
      7,
      { placed: { ...void_, reading: { low: 7, high: 7 } }, unrepeated: { ph: { low: 7, high: 7 } } },
    ],
    [
      'higher, in a hold: news to the nurse',
      heldHard,
      7,
      {
        placed: { ...void_, reading: { low: 7, high: 7 }, readingCorrected: true },
        unrepeated: { ph: { low: 7, high: 7 } },
      },
    ],
    ['the same', inUse, 5, {}],
    ['lower', inUse, 4, {}],
    ['before the recheck asks', rechecking, 5, { preface: [{ key: 'earlyReading' }] }],
    ['where none was asked for', but(inUse, { placed: { reading: null } }), 7, {}],
  ] as const)('a reading %s', (_name, before, high, changes) => {
    expect(noteTold(before, heard({ ph: { low: high, high } }))).toEqual(but(before, changes));
  });

  it('a weight for another length stops it, where it went in too far', () => {
    expect(noteTold(inUse, heard({ weight: { kg: 2.5 } })).placed?.stopped).toBe('tube-problem');
    expect(noteTold(inUse, heard({ weight: { kg: 9 } })).placed?.stopped).toBeNull();
    const shallow = but(inUse, { placed: { lengthBand: 'under-3' } });
    expect(noteTold(shallow, heard({ weight: { kg: 9 } })).placed?.stopped).toBeNull();
    const own = but(ownInUse, { placed: { lengthBand: null } });
    expect(noteTold(own, heard({ weight: { kg: 2.5 } })).placed?.stopped).toBeNull();
  });

  it('an allergy may make a temporary tube one of latex, never the own', () => {
    expect(noteTold(inUse, heard({ latexAllergy: true })).placed?.maybeLatex).toBe(true);
    expect(noteTold(ownInUse, heard({ latexAllergy: true })).placed?.maybeLatex).toBe(false);
    const known = but(inUse, { facts: { latexAllergy: true } });
    expect(noteTold(known, heard({ latexAllergy: true }))).toEqual(known);
  });

  it('a kit is of no use any more', () => {
    expect(noteTold(inUse, heard({ kit: 'no' }))).toEqual(inUse);
  });
});

describe('what is repeated back', () => {
  const unknown = but(nothingIn, {
    facts: { tubeKind: null, firstPlaced: null, weight: null, bareWeight: null, cameOutAtMs: null },
  });
  it.each<[Told, boolean]>([
    [{ tubeKind: 'g' }, true],
    [{ firstPlaced: oldTract }, true],
    [{ weight: { kg: 9 } }, true],
    [{ cameOutAtMs: later }, true],
    [{ latexAllergy: true }, true],
    [{ firstPlaced: 'unknown' }, false],
    [{ weight: 'unknown' }, false],
    [{ kit: 'no' }, false],
  ])('of %j, where nothing was known: %s', (told, repeats) => {
    expect(noteTold(unknown, heard(told)).unrepeated).toEqual(repeats ? told : {});
  });

  it('is only what is news, and what stands', () => {
    const known = { tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs } as const;
    const asKnown = but(nothingIn, { facts: { ...known, latexAllergy: true } });
    expect(noteTold(asKnown, heard({ ...known, latexAllergy: true })).unrepeated).toEqual({});
    expect(noteTold(asKnown, heard({ firstPlaced: olderTract, cameOutAtMs: later })).unrepeated).toEqual({});
  });

  it('is kept until it can be said', () => {
    const before = but(unknown, { unrepeated: { tubeKind: 'g' } });
    expect(noteTold(before, heard({ cameOutAtMs: later })).unrepeated).toEqual({ tubeKind: 'g', cameOutAtMs: later });
  });
});

describe('a text tells nothing', () => {
  it('where all of it was known', () => {
    expect(tellsNothing(nothingIn, heard({ tubeKind: 'g', strips: 'yes' }))).toBe(true);
    expect(tellsNothing(nothingIn, heard({}))).toBe(true);
    expect(tellsNothing(nothingIn, heard({ strips: 'no' }))).toBe(false);
  });
});
