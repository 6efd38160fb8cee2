/** An answer taken back, two that could not be read, and the tube coming out again: what each re-opens, and nothing else. */
import { describe, expect, it } from 'vitest';
import type { Context } from '#machines/dislodgement/context.ts';
import { fullyOut, giveUp, reopen, takeBack, tubeOutAgain } from '#machines/dislodgement/reopen.ts';
import type { QuestionKey } from '#machines/facts.ts';
import { but, type Changes, heldHard, inUse, nothingIn, ownInUse, rechecking } from './known.ts';
import { oldTract, startMs } from './night.ts';

const noFile = { tubeKind: null, firstPlaced: null, weight: null } as const;
/** Every gate is decided again. */
const again = { outcome: null, disposition: null, unclear: null } as const;

describe('taken back with a tube in use', () => {
  const newStrip = {
    reading: null,
    contents: false,
    contentsTried: 0,
    fedLately: null,
    looks: null,
    secured: false,
    cleared: false,
    retested: true,
  } as const;
  const rows: readonly (readonly [QuestionKey | null, Changes])[] = [
    ['unwell', { ...again, unwell: 'unasked' }],
    ['confirm', { ...again, facts: noFile }],
    ['tube-kind', { ...again, facts: { tubeKind: null } }],
    ['first-placed', { ...again, facts: { firstPlaced: null } }],
    ['came-out', { ...again, facts: { cameOutAtMs: null }, askedLastSeen: false }],
    ['strips', { ...again, facts: { strips: null } }],
    ['tube-in', { ...again, placed: { how: null, cleared: false } }],
    ['own-tube-in', { ...again, placed: { how: null, cleared: false } }],
    ['after-in', { ...again, placed: { afterIn: 'unasked' } }],
    ['contents', { ...again, placed: newStrip }],
    ['ph', { ...again, placed: newStrip }],
    ['fed-lately', { ...again, placed: { fedLately: null } }],
    ['looks', { ...again, placed: { looks: null } }],
    ['secured', { ...again, placed: { secured: false } }],
    // Asked again only once nothing is in.
    ['weight', { facts: { weight: null, bareWeight: null } }],
    ['kit', { facts: { kit: null } }],
    ['own-tube', {}],
    // Not the conversation's, or nothing that was answered.
    ['who', {}],
    ['which-child', {}],
    ['first-feed', {}],
    ['clinic', {}],
    [null, {}],
  ];
  it.each(rows)('%s', (key, changes) => {
    expect(takeBack(inUse, key)).toEqual(but(inUse, changes));
  });

  it('whether the own tube is whole, while it is in', () => {
    expect(takeBack(ownInUse, 'own-tube')).toEqual(but(ownInUse, { ...again, facts: { ownTube: null } }));
  });

  it('a reading for which it is held: whoever holds it hears so, and is called again on another one', () => {
    expect(takeBack(heldHard, 'ph')).toEqual(
      but(heldHard, { ...again, placed: { ...newStrip, readingCorrected: true }, pagedOnce: ['unread'] }),
    );
  });

  it('contents before they were read are drawn again, and what is decided stays', () => {
    const unread = but(inUse, { placed: { reading: null } });
    expect(takeBack(unread, 'contents')).toEqual(but(unread, { placed: { contents: false } }));
  });
});

describe('taken back in the wait for the recheck', () => {
  it.each(['contents', 'ph', 'fed-lately', 'looks'] as const)('%s: the high reading stands', (key) => {
    expect(takeBack(rechecking, key)).toEqual(rechecking);
  });
});

describe('taken back with nothing in', () => {
  const rows: readonly (readonly [QuestionKey, Changes])[] = [
    ['own-tube', { facts: { ownTube: null }, stepsSent: null }],
    ['kit', { facts: { kit: null }, stepsSent: null }],
    ['weight', { facts: { weight: null, bareWeight: null }, stepsSent: null }],
  ];
  it.each(rows)('%s: other steps may be sent', (key, changes) => {
    expect(takeBack(nothingIn, key)).toEqual(but(nothingIn, { ...again, ...changes }));
  });

  it.each(['tube-in', 'after-in', 'contents', 'ph', 'fed-lately', 'looks', 'secured'] as const)(
    '%s was answered of a tube that is out: nothing',
    (key) => {
      expect(takeBack(nothingIn, key)).toEqual(nothingIn);
    },
  );

  it('a plain yes to danger, and a sign in doubt', () => {
    const danger = but(nothingIn, { danger: { named: [] }, clarify: 'pain' });
    expect(takeBack(danger, 'unwell')).toEqual(but(nothingIn, { ...again, unwell: 'unasked' }));
  });

  it('a file not yet confirmed counts no more', () => {
    const filed = but(nothingIn, { file: 'unconfirmed' });
    expect(takeBack(filed, 'confirm')).toEqual(but(nothingIn, { ...again, facts: noFile }));
    const stranger = but(nothingIn, { file: 'none' });
    expect(takeBack(stranger, 'confirm').file).toBe('none');
  });

  it('never the tries at whose child it is', () => {
    const tried = but(nothingIn, { unclear: { key: 'who', count: 1 } });
    expect(takeBack(tried, 'strips').unclear).toEqual(tried.unclear);
  });
});

describe('which child it is, taken back', () => {
  it('forgets the wrong file', () => {
    const before = { ...nothingIn, children: { files: [], is: 0 } };
    expect(takeBack(before, 'which-child')).toMatchObject({ file: 'none', children: { is: null }, facts: noFile });
  });
});

describe('a fact that changed under an outcome', () => {
  const now = { at: startMs };
  const decidedAgain = (before: Context, change: Changes) => {
    const after = but(before, change);
    const reopened = reopen(before, after, now);
    expect(reopened).toEqual(reopened.outcome === null ? but(after, { outcome: null, disposition: null }) : after);
    return reopened.outcome === null;
  };
  const going = (reason: 'nobody-answered' | 'nurse' | 'kind' | 'tract') =>
    but(inUse, { outcome: { to: 'go-in', reason }, disposition: 'go-in' });

  it.each([
    ['a tube in use, by a fact that shuts no gate', inUse, { facts: { weight: { kg: 9 } } }, false],
    ['an own tube in use, by such a fact', ownInUse, { facts: { weight: { kg: 9 } } }, false],
    ['a tube in use, by its kind', inUse, { facts: { tubeKind: 'gj' } }, true],
    ['an own tube in use, by its kind', ownInUse, { facts: { tubeKind: 'gj' } }, true],
    ['a tube in use, by a problem with it', inUse, { placed: { stopped: 'tube-problem' } }, true],
    ['a tube in use, no longer secured', inUse, { placed: { secured: false } }, true],
    ['a tube in use, by a higher reading', inUse, { placed: { reading: { low: 8, high: 8 } } }, true],
    ['a tube in use, hard to get in', inUse, { placed: { how: 'hard', cleared: false } }, true],
    ['a tube in use, hard to get in and cleared', inUse, { placed: { how: 'hard', cleared: true } }, false],
    ['a tube in use that is out', inUse, { placed: null }, true],
    ['a hold, by any gate fact', heldHard, { facts: { weight: { kg: 9 } } }, true],
    ['a hold, by when it came out', heldHard, { facts: { cameOutAtMs: 5 } }, false],
    ['a hold, by an age', heldHard, { facts: { born: oldTract } }, false],
    ['a hold, by a number without its unit', heldHard, { facts: { bareWeight: 6 } }, false],
    ['a hold, by a warning sign', heldHard, { warning: true }, true],
    ['a hold, by what the danger signs came to', heldHard, { unwell: 'unread' }, true],
    [
      'going in for a tract not known, by one that allows it',
      but(going('tract'), { facts: { firstPlaced: 'unknown' } }),
      { facts: { firstPlaced: oldTract } },
      true,
    ],
    ['going in for its kind', going('kind'), { facts: { tubeKind: 'j' } }, true],
    ['going in as nobody answered', going('nobody-answered'), { facts: { tubeKind: 'j' } }, false],
    ['going in by a nurse', going('nurse'), { facts: { tubeKind: 'j' } }, false],
  ] as const)('%s', (_name, before, change, again) => {
    expect(decidedAgain(before, change)).toBe(again);
  });
});

describe('two unreadable answers', () => {
  const told = { unclear: null, preface: [{ key: 'goesToNurse' }] } as const;
  const rows: readonly (readonly [QuestionKey, Changes])[] = [
    ['unwell', { unwell: 'unread', outcome: null, disposition: null }],
    ['who', { sameChild: 'maybe' }],
    ['confirm', { facts: noFile }],
    ['tube-kind', { facts: { tubeKind: 'unknown' } }],
    ['first-placed', { facts: { firstPlaced: 'unknown' } }],
    ['own-tube', { facts: { ownTube: 'unknown' } }],
    ['kit', { facts: { kit: 'no' } }],
    ['weight', { facts: { weight: 'unknown', bareWeight: null } }],
    ['came-out', { facts: { cameOutAtMs: 'unknown' }, askedLastSeen: true }],
    ['tube-in', { placed: { how: 'hard' } }],
    ['own-tube-in', { placed: { how: 'hard' } }],
    ['after-in', { warning: true }],
    ['strips', { facts: { strips: 'no' } }],
    ['fed-lately', { placed: { fedLately: 'unknown' } }],
    ['looks', { placed: { looks: 'unknown' } }],
    ['contents', { placed: { stopped: 'unread' } }],
    ['ph', { placed: { stopped: 'unread' } }],
    ['secured', { placed: { stopped: 'unread' } }],
    ['first-feed', {}],
  ];
  it.each(rows)('to %s go on as its careful answer', (key, changes) => {
    const before = but(inUse, { askedLastSeen: false });
    expect(giveUp(before, key)).toEqual(but(before, { ...told, ...changes }));
  });

  it.each([
    ['tube-in', {}],
    ['own-tube-in', { ownTried: true }],
  ] as const)('to %s with nothing in are a try that failed', (key, changes) => {
    expect(giveUp(nothingIn, key)).toEqual(but(nothingIn, { ...told, failedTries: 2, stepsSent: null, ...changes }));
  });

  it('to the danger signs clear no doubt and soften no going in', () => {
    const going = but(inUse, { clarify: 'pain', outcome: { to: 'go-in', reason: 'kind' }, disposition: 'go-in' });
    expect(giveUp(going, 'unwell')).toEqual(but(going, { ...told, unwell: 'unread', clarify: null, clarifyAlso: [] }));
  });

  it('to the file leave none to confirm', () => {
    expect(giveUp(but(nothingIn, { file: 'unconfirmed' }), 'confirm').file).toBe('settled');
  });

  it('to whether the own tube is whole leave it to hold the stoma open', () => {
    expect(giveUp(ownInUse, 'own-tube')).toEqual(
      but(ownInUse, { ...told, facts: { ownTube: 'unknown' }, placed: { holderOnly: true } }),
    );
  });
});

describe('the tube is out again', () => {
  const anew = {
    placed: null,
    outcome: null,
    disposition: null,
    said: null,
    cameOutAgain: true,
    askedLastSeen: false,
    stepsSent: null,
    pagedOnce: [],
  } as const;
  const startOver = { preface: [{ key: 'startOver' }], failedTries: 0 } as const;

  it('in use: days may have passed, so kit and danger signs are asked again', () => {
    expect(tubeOutAgain(inUse)).toEqual(
      but(inUse, { ...anew, ...startOver, facts: { cameOutAtMs: null, kit: null }, unwell: 'unasked' }),
    );
  });

  it('its own: whether it is whole is asked again, and it may be tried again', () => {
    expect(tubeOutAgain(ownInUse)).toEqual(
      but(ownInUse, {
        ...anew,
        ...startOver,
        facts: { cameOutAtMs: null, kit: null, ownTube: null },
        unwell: 'unasked',
        ownTried: false,
      }),
    );
  });

  it('before it was allowed: the kit is at hand and the child was asked about', () => {
    const tried = but(heldHard, { ownTried: true });
    expect(tubeOutAgain(tried)).toEqual(but(tried, { ...anew, ...startOver, facts: { cameOutAtMs: null } }));
  });

  it.each([
    ['no', 'no'],
    ['now', 'held-open'],
    ['held-open', 'held-open'],
  ] as const)('sent in by a nurse %s, it is %s', (sentIn, after) => {
    expect(tubeOutAgain(but(heldHard, { sentIn })).sentIn).toBe(after);
    expect(fullyOut(but(nothingIn, { sentIn })).sentIn).toBe(after);
  });

  it('that was half out: its kind is asked', () => {
    const halfOut = but(nothingIn, { facts: { tubeKind: 'half-out' } });
    expect(fullyOut(halfOut)).toEqual(but(halfOut, { ...anew, facts: { tubeKind: null, cameOutAtMs: null } }));
  });
});
