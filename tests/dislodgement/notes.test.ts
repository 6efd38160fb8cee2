/** What each answer changes of what is known, and nothing else. */
import { describe, expect, it } from 'vitest';
import { justPlaced } from '#machines/dislodgement/context.ts';
import { noteAnswer, noteOwnTube, noteWeight } from '#machines/dislodgement/note.ts';
import type { Answers, QuestionKey } from '#machines/facts.ts';
import { but, type Changes, heldHard, inUse, nothingIn, ownInUse } from './known.ts';
import { Night, oldTract, startMs } from './night.ts';

type Noted = Parameters<typeof noteAnswer>[1];
const answer = <K extends QuestionKey>(key: K, value: Answers[K]) =>
  // The pair of key and value is checked by the signature.
  ({
    type: `answer.${key}`,
    value,
    told: {},
    person: false,
    corrects: false,
    at: startMs + 60_000,
    clinicOpen: false,
  }) as unknown as Noted;

describe('an answer with nothing in', () => {
  const placed = (tube: 'own' | 'temporary', how: 'easy' | 'hard' | null) =>
    justPlaced({
      tube,
      how,
      atMs: startMs + 60_000,
      holderOnly: tube === 'own',
      lengthBand: tube === 'own' ? null : 'over-3',
    });
  const failed = { failedTries: 2, stepsSent: null } as const;
  it.each<[QuestionKey, Noted, Changes]>([
    ['unwell', answer('unwell', 'no'), { clarify: null }],
    ['who', answer('who', 'none'), { sameChild: 'none' }],
    ['who', answer('who', 'unknown'), { sameChild: 'maybe' }],
    ['confirm', answer('confirm', 'yes'), {}],
    [
      'confirm',
      answer('confirm', 'no'),
      { facts: { tubeKind: null, firstPlaced: null, weight: null, bareWeight: null } },
    ],
    ['tube-kind', answer('tube-kind', 'gj'), { facts: { tubeKind: 'gj' } }],
    ['first-placed', answer('first-placed', 'unknown'), { facts: { firstPlaced: 'unknown' } }],
    ['own-tube', answer('own-tube', 'no'), { facts: { ownTube: 'no' } }],
    ['kit', answer('kit', 'not-shown'), { facts: { kit: 'not-shown' } }],
    ['weight', answer('weight', { kg: 9 }), { facts: { weight: { kg: 9 }, bareWeight: null } }],
    ['came-out', answer('came-out', 'unknown'), { facts: { cameOutAtMs: 'unknown' } }],
    ['strips', answer('strips', 'no'), { facts: { strips: 'no' } }],
    ['tube-in', answer('tube-in', 'no'), failed],
    ['own-tube-in', answer('own-tube-in', 'no'), { ...failed, ownTried: true }],
    ['after-in', answer('after-in', 'yes'), { warning: true }],
    ['first-feed', answer('first-feed', 'yes'), {}],
    ['next-day', answer('next-day', 'no'), {}],
    ['arrived', answer('arrived', 'yes'), {}],
    ['clinic', answer('clinic', 'no'), {}],
  ])('%s', (key, event, changes) => {
    const filed = but(nothingIn, { file: 'unconfirmed', clarify: 'pain' });
    const file = key === 'confirm' ? 'settled' : 'unconfirmed';
    expect(noteAnswer(filed, event)).toEqual(but(filed, { unclear: null, answered: key, file, ...changes }));
  });

  it.each([
    ['tube-in', 'easy', 'temporary', 'easy', {}],
    ['tube-in', 'in', 'temporary', null, {}],
    ['own-tube-in', 'hard', 'own', 'hard', { ownTried: true }],
  ] as const)('%s, %s: it is in, and nothing else is known of it', (key, value, tube, how, changes) => {
    expect(noteAnswer(nothingIn, answer(key, value))).toEqual({
      ...but(nothingIn, { unclear: null, answered: key, ...changes }),
      placed: placed(tube, how),
    });
  });

  it('an own tube tried before stays tried', () => {
    expect(noteAnswer(but(nothingIn, { ownTried: true }), answer('tube-in', 'easy')).ownTried).toBe(true);
  });

  it('the first "not known" of when it came out asks when it was last seen in', () => {
    const first = but(nothingIn, { askedLastSeen: false });
    expect(noteAnswer(first, answer('came-out', 'unknown'))).toEqual(
      but(first, { unclear: null, answered: 'came-out', askedLastSeen: true }),
    );
  });
});

describe('an answer about the tube that is in', () => {
  it.each<[QuestionKey, Noted, Changes['placed']]>([
    ['after-in', answer('after-in', 'no'), { afterIn: 'well' }],
    ['contents', answer('contents', 'yes'), { contents: true }],
    ['contents', answer('contents', 'no'), { contentsTried: 2 }],
    [
      'ph',
      answer('ph', { low: 6, high: 6.5 }),
      { reading: { low: 6, high: 6.5 }, fedLately: null, looks: null, cleared: false },
    ],
    ['fed-lately', answer('fed-lately', 'unknown'), { fedLately: 'unknown' }],
    ['looks', answer('looks', 'no'), { looks: 'no' }],
    ['secured', answer('secured', 'yes'), { secured: true }],
    ['secured', answer('secured', 'no'), { securedTried: 1 }],
    ['secured', answer('secured', 'part'), { securedTried: 1 }],
    ['tube-in', answer('tube-in', 'hard'), { how: 'hard' }],
  ])('%s', (key, event, placed) => {
    const before = but(inUse, { placed: { afterIn: 'unasked', contents: false, secured: false } });
    expect(noteAnswer(before, event)).toEqual(but(before, { unclear: null, answered: key, placed: { ...placed } }));
  });

  it('held as hard it stays hard: only a nurse clears it', () => {
    expect(noteAnswer(heldHard, answer('tube-in', 'easy')).placed?.how).toBe('hard');
  });

  it('"it is in" to how it went in is no answer, and twice counts as hard', () => {
    const night = new Night()
      .tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs })
      .answer('unwell', 'no');
    night.answer('own-tube', 'yes').answer('own-tube-in', 'in').answer('own-tube-in', 'in');
    expect(night.effects).toContainEqual(
      expect.objectContaining({
        say: expect.objectContaining({ preface: [{ key: 'notUnderstood', why: 'unreadable' }] }),
      }),
    );
    expect(night.answer('own-tube-in', 'in').view.facts.insertedHow).toBe('hard');
  });
});

describe('what the own tube turned out to be', () => {
  it.each([
    ['yes', false],
    ['burst', true],
    ['no', true],
    ['unknown', true],
  ] as const)('%s, while it is in: it only holds the stoma open: %s', (ownTube, holderOnly) => {
    expect(noteOwnTube(ownInUse, ownTube)).toEqual(but(ownInUse, { facts: { ownTube }, placed: { holderOnly } }));
  });

  it('says nothing of a temporary tube that is in', () => {
    expect(noteOwnTube(inUse, 'no')).toEqual(but(inUse, { facts: { ownTube: 'no' } }));
  });

  it.each([
    ['g', 'gj'],
    ['unknown', 'gj'],
    [null, 'gj'],
    ['j', 'j'],
    ['half-out', 'half-out'],
    ['nose', 'nose'],
  ] as const)('with a long inside part: of kind %s it was a %s', (tubeKind, kind) => {
    const before = but(nothingIn, { facts: { tubeKind } });
    expect(noteOwnTube(before, 'long-inside').facts.tubeKind).toBe(kind);
  });
});

describe('a weight', () => {
  const again = (weight: { kg: number }) =>
    but(nothingIn, { facts: { weight, weightToldAgain: true, bareWeight: null } });
  it('told again that was believed stays believed; another one has to be told again in its turn', () => {
    expect(noteWeight(again({ kg: 60 }), { kg: 60 }).facts).toMatchObject({
      weight: { kg: 60 },
      weightToldAgain: true,
    });
    expect(noteWeight(again({ kg: 60 }), { kg: 9 }).facts).toMatchObject({ weight: { kg: 9 }, weightToldAgain: false });
    expect(noteWeight(nothingIn, { kg: 7 }).facts.weightToldAgain).toBe(false);
  });

  it('that no child has changes nothing, and one whose unit matters waits for it', () => {
    expect(noteWeight(nothingIn, { kg: 900 })).toEqual(nothingIn);
    expect(noteWeight(nothingIn, { bare: 5.5 })).toEqual(but(nothingIn, { facts: { weight: null, bareWeight: 5.5 } }));
  });
});
