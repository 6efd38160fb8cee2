/** Which child it is, told anew: whose file counts then, what is forgotten with the wrong one, and what stands whoever it is. */
import { describe, expect, it } from 'vitest';
import type { Context, Filed } from '#machines/dislodgement/context.ts';
import { foldMayJoin, toldSoFar } from '#machines/dislodgement/sameChild.ts';
import { noteTold } from '#machines/dislodgement/told.ts';
import {
  noChildYet,
  noneOfThem,
  otherChildAfterAll,
  toldBefore,
  withChild,
} from '#machines/dislodgement/whichChild.ts';
import { but, inUse, nothingIn, ownInUse } from './known.ts';
import { daysBefore, oldTract, startMs } from './night.ts';

const wren: Filed = {
  file: 'unconfirmed',
  facts: { tubeKind: 'g', firstPlaced: oldTract, weight: { kg: 9 }, born: null, latexAllergy: false, cannotWait: null },
};
const leo: Filed = {
  file: 'settled',
  facts: {
    tubeKind: 'gj',
    firstPlaced: null,
    weight: null,
    born: daysBefore(900),
    latexAllergy: true,
    cannotWait: 'a drip',
  },
};
const ofFamily = (context: Context, is: number | 'none' | null): Context => ({
  ...context,
  children: { files: [wren, leo], is },
});

describe('named', () => {
  it('its file takes the place of what was known, and all is decided anew', () => {
    const before = ofFamily(inUse, null);
    expect(withChild(before, 1)).toEqual({
      ...ofFamily(but(before, { outcome: null, disposition: null, file: 'settled', facts: leo.facts }), 1),
    });
  });

  it('what the silence of every nurse decided stands', () => {
    const going = ofFamily(
      but(inUse, { outcome: { to: 'go-in', reason: 'nobody-answered' }, disposition: 'go-in' }),
      0,
    );
    expect(withChild(going, 1)).toMatchObject({ outcome: going.outcome, disposition: 'go-in' });
    const kind = ofFamily(but(inUse, { outcome: { to: 'go-in', reason: 'kind' }, disposition: 'go-in' }), 0);
    expect(withChild(kind, 1)).toMatchObject({ outcome: null, disposition: null });
  });

  it('a number that no child has is a defect', () => {
    expect(() => withChild(ofFamily(inUse, null), 2)).toThrow('a family has no child 2');
    expect(() => withChild(inUse, 0)).toThrow('there is only one child');
  });
});

describe('named in a text', () => {
  const hear = (before: Context, children: readonly number[], corrects: boolean) =>
    noteTold(before, { told: { children }, corrects, at: startMs });
  const goesOn = { otherChild: true, preface: [{ key: 'oneChild' }] } as const;

  it('what its file holds is there to be confirmed, not repeated back as if it had been told', () => {
    const unknown = but(nothingIn, { facts: { tubeKind: null, firstPlaced: null, weight: null } });
    const { facts, unrepeated } = hear(ofFamily(unknown, null), [0], false);
    expect(facts).toMatchObject({ tubeKind: 'g', firstPlaced: oldTract, weight: { kg: 9 } });
    expect(unrepeated).toEqual({});
  });

  it('what was told before stands beside its file as a fact told unasked, also where words of correction name it', () => {
    const before = ofFamily(but(nothingIn, { facts: { tubeKind: 'gj' } }), null);
    expect(hear(before, [0], true).facts.tubeKind).toBe('gj');
    const less = ofFamily(nothingIn, null);
    expect(hear(less, [1], true).facts.tubeKind).toBe('gj');
  });

  it('is the child it is about already: nothing is new', () => {
    for (const corrects of [false, true]) {
      expect(hear(ofFamily(nothingIn, 1), [1], corrects)).toEqual(ofFamily(nothingIn, 1));
      expect(hear(ofFamily(nothingIn, 1), [], corrects)).toEqual(ofFamily(nothingIn, 1));
    }
  });

  it('beside it another child, or two others as a correction: the line goes on for the one, and a nurse is called', () => {
    const before = ofFamily(nothingIn, 1);
    expect(hear(before, [0, 1], false)).toEqual(but(before, goesOn));
    expect(hear(before, [0, 2], true)).toEqual(but(before, goesOn));
  });
});

describe('another child after all', () => {
  it('the tube that is in has to be secured and cleared anew, and the kit asked for where it may hold latex', () => {
    const before = ofFamily(but(inUse, { unrepeated: { tubeKind: 'g' }, facts: { weightToldAgain: true } }), 0);
    expect(otherChildAfterAll(before, 1)).toEqual(
      ofFamily(
        but(before, {
          outcome: null,
          disposition: null,
          said: null,
          unclear: null,
          stepsSent: null,
          unrepeated: {},
          childCorrected: true,
          file: 'settled',
          placed: { cleared: false, secured: false, maybeLatex: true },
          facts: { ...leo.facts, bareWeight: null, weightToldAgain: false, kit: null },
        }),
        1,
      ),
    );
  });

  it('a kit is kept for a child without the allergy, and "no kit" for one with it', () => {
    expect(otherChildAfterAll(ofFamily(nothingIn, 1), 0).facts.kit).toBe('yes');
    expect(otherChildAfterAll(ofFamily(but(nothingIn, { facts: { kit: 'no' } }), 0), 1).facts.kit).toBe('no');
    expect(otherChildAfterAll(ofFamily(nothingIn, 1), 0).placed).toBeNull();
  });

  it('latex is a doubt about a temporary tube alone, and a doubt once had stays', () => {
    expect(otherChildAfterAll(ofFamily(ownInUse, 0), 1).placed?.maybeLatex).toBe(false);
    expect(otherChildAfterAll(ofFamily(inUse, 1), 0).placed?.maybeLatex).toBe(false);
    const doubted = but(inUse, { placed: { maybeLatex: true } });
    expect(otherChildAfterAll(ofFamily(doubted, 1), 0).placed?.maybeLatex).toBe(true);
  });

  it('what cannot wait is kept where it was told, and left with the wrong file where it was filed', () => {
    const filed = but(nothingIn, { facts: { cannotWait: 'seizure medicine' } });
    expect(otherChildAfterAll(ofFamily(filed, 0), 1).facts.cannotWait).toBe('a drip');
    const told = but(filed, { cannotWaitTold: true });
    expect(otherChildAfterAll(ofFamily(told, 0), 1).facts.cannotWait).toBe('seizure medicine');
  });
});

describe('none of them, or nobody knows which', () => {
  it('goes on without a file, with the allergy of any of them', () => {
    const before = ofFamily(but(nothingIn, { file: 'unconfirmed' }), null);
    expect(noneOfThem(before)).toEqual(ofFamily(but(before, { file: 'none', facts: { latexAllergy: true } }), 'none'));
    const neither = { ...before, children: { files: [wren, wren], is: null } };
    expect(noneOfThem(neither).facts.latexAllergy).toBe(false);
    expect(noneOfThem(but(neither, { facts: { latexAllergy: true } })).facts.latexAllergy).toBe(true);
  });

  it('means nothing to a family of one', () => {
    expect(noneOfThem(nothingIn)).toEqual(nothingIn);
    expect(noChildYet(nothingIn, but(nothingIn, { outcome: null, unclear: null }))).toEqual(nothingIn);
  });

  it('a wrong name taken back forgets its file; what was told of the tube tonight, and an allergy, are kept', () => {
    const before = ofFamily(but(inUse, { file: 'settled', facts: { latexAllergy: true, cannotWait: 'a drip' } }), 0);
    const open = but(before, { outcome: null, disposition: null });
    expect(noChildYet(before, open)).toEqual(
      ofFamily(
        but(open, {
          file: 'none',
          stepsSent: null,
          facts: { tubeKind: null, firstPlaced: null, weight: null, bareWeight: null, cannotWait: null },
        }),
        null,
      ),
    );
    expect(noChildYet({ ...before, cannotWaitTold: true }, open).facts.cannotWait).toBe('a drip');
  });
});

describe('what was told, to be heard again beside a file or in another case', () => {
  it('is all of it, and nothing that was not', () => {
    const known = { ...nothingIn.facts, born: daysBefore(900), latexAllergy: true, cannotWait: 'a drip' };
    const facts = {
      tubeKind: 'g',
      firstPlaced: oldTract,
      weight: { kg: 7 },
      born: daysBefore(900),
      latexAllergy: true,
      cannotWait: 'a drip',
    };
    expect(toldBefore(known)).toEqual(facts);
    expect(toldSoFar(known)).toEqual({ ...facts, cameOutAtMs: startMs, ownTube: 'burst', kit: 'yes', strips: 'yes' });
    const nothing = but(nothingIn, {
      facts: {
        tubeKind: null,
        firstPlaced: null,
        weight: null,
        cameOutAtMs: 'unknown',
        ownTube: null,
        kit: null,
        strips: null,
      },
    });
    expect(toldSoFar(nothing.facts)).toEqual({});
  });

  it.each([
    ['unknown', { weight: 'unknown' }],
    [{ band: 'over-3', bare: 9 }, { weight: { bare: 9 } }],
    [{ band: 'over-3' }, {}],
  ] as const)('a weight of %j as %j', (weight, told) => {
    const { facts } = but(nothingIn, { facts: { weight, tubeKind: null, firstPlaced: null } });
    expect(toldBefore(facts)).toEqual(told);
  });
});

describe('whether it may be the child of another case', () => {
  it('is asked only before anything was begun, and once', () => {
    const fresh = but(nothingIn, { failedTries: 0, stepsSent: null });
    expect(foldMayJoin(fresh)).toEqual(but(fresh, { sameChild: 'ask' }));
    for (const begun of [
      but(fresh, { stepsSent: 'own' }),
      but(fresh, { failedTries: 1 }),
      but(inUse, { failedTries: 0, stepsSent: null }),
      but(fresh, { sameChild: 'none' }),
    ]) {
      expect(foldMayJoin(begun)).toEqual(begun);
    }
  });
});
