/** A tube half out that comes out entirely: which tube it is is not asked again where it was told or filed. */
import { describe, expect, it } from 'vitest';
import { Night, oldTract, wren } from './night.ts';

const allOut = (night: Night) => {
  night.answer('unwell', 'no');
  expect(night.view).toMatchObject({ disposition: 'go-in', inside: 'half-out' });
  return night.hear('outAgain');
};

describe('half out, then out entirely', () => {
  it.each(['g', 'gj', 'j'] as const)('is the %s it was told to be', (kind) => {
    const night = allOut(new Night().tell({ tubeKind: 'half-out', halfOutOf: kind }));
    expect(night.view).toMatchObject({ facts: { tubeKind: kind }, asking: kind === 'j' ? null : 'first-placed' });
  });

  it('is the kind told before it was half out', () => {
    const night = new Night().tell({ tubeKind: 'gj' }).tell({ tubeKind: 'half-out' });
    expect(allOut(night).view.facts).toEqual({ tubeKind: 'gj' });
  });

  it('is the kind on file, which is still to be confirmed', () => {
    const night = allOut(new Night(wren).tell({ tubeKind: 'half-out' }));
    expect(night.view).toMatchObject({ asking: 'confirm', facts: { tubeKind: 'g' } });
    expect(night.answer('confirm', 'no').asking).toBe('tube-kind');
  });

  it('takes the kind that asks for more care of two that were told', () => {
    const night = new Night().tell({ tubeKind: 'half-out', halfOutOf: 'gj' }).tell({ halfOutOf: 'g' });
    expect(allOut(night).view.facts).toEqual({ tubeKind: 'gj' });
    const other = new Night().tell({ tubeKind: 'half-out', halfOutOf: 'g' }).tell({ halfOutOf: 'gj' });
    expect(allOut(other).view.facts).toEqual({ tubeKind: 'gj' });
  });

  it('is asked about where nobody said, and a kind beside a tube that is not half out is nothing', () => {
    expect(allOut(new Night().tell({ tubeKind: 'half-out' })).asking).toBe('tube-kind');
    const night = new Night().tell({ firstPlaced: oldTract, halfOutOf: 'g' }).answer('unwell', 'no');
    expect(night.asking).toBe('tube-kind');
  });

  it('a fact told and a person wanted beside it are heard', () => {
    const night = new Night().tell({ tubeKind: 'half-out' }).answer('unwell', 'no');
    night.hear('outAgain', { told: { latexAllergy: true }, person: true });
    expect(night.view.latexAllergy).toBe(true);
    expect(night.raised).toEqual(['came-out-again', 'person-wanted']);
  });

  it('is asked about again after the answer half out', () => {
    const night = new Night().hear('told').answer('unwell', 'no').answer('tube-kind', 'half-out');
    expect(night.hear('outAgain').asking).toBe('tube-kind');
  });
});
