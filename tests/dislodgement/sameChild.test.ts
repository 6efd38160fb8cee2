/** A phone without a file that says who it is: asked once whether somebody texts already, and never kept from its own case by that. */
import { describe, expect, it } from 'vitest';
import { Night } from './night.ts';

const reasons = (night: Night) => night.callsEver.flatMap((call) => call.reasons);
const asked = () => new Night(null).tell({ mayJoin: true }).answer('unwell', 'no');

describe('whether it is the child of another open case', () => {
  it('is asked after the danger signs, before anything about the tube', () => {
    const night = new Night(null).tell({ mayJoin: true, tubeKind: 'g' });
    expect(night.said).toEqual(['opening']);
    expect(night.answer('unwell', 'no').asking).toBe('who');
    expect(reasons(night)).toEqual([]);
  });

  it('is asked where only a later text says who is writing, but not once something was begun', () => {
    const night = new Night(null).hear('told').answer('unwell', 'no');
    expect(night.asking).toBe('tube-kind');
    expect(night.tell({ mayJoin: true }).asking).toBe('who');
    const begun = new Night(null).tell({ tubeKind: 'g', kit: 'yes', weight: { kg: 7 }, ownTube: 'no' });
    begun.answer('unwell', 'no').answer('first-placed', 'unknown');
    expect(begun.asking).toBe('tube-in');
    expect(begun.tell({ mayJoin: true }).asking).toBe('tube-in');
  });

  it('comes after danger, warning, and a tube that is half out', () => {
    const danger = new Night(null).tell({ mayJoin: true }).signs('breathing');
    expect(danger.view.disposition).toBe('emergency');
    const warned = new Night(null).tell({ mayJoin: true, weight: { kg: 9 } }).signs('fever');
    expect(warned.asking).toBe('tube-kind');
    expect(reasons(warned.wait(3))).toEqual(expect.arrayContaining(['warning-sign', 'same-child']));
    const half = new Night(null).tell({ mayJoin: true, tubeKind: 'half-out' }).answer('unwell', 'no');
    expect(half.view.disposition).toBe('go-in');
    expect(reasons(half.wait(5))).toEqual(expect.arrayContaining(['half-out', 'same-child']));
  });

  it('no goes on and calls nobody; not sure goes on, and the page says so', () => {
    const no = asked().answer('who', 'none');
    expect(no.asking).toBe('tube-kind');
    expect(reasons(no)).toEqual([]);
    const unsure = asked().answer('who', 'unknown');
    expect(unsure.asking).toBe('tube-kind');
    expect(reasons(unsure)).toEqual(['same-child']);
  });

  it('what fits no case is asked once more, and then it goes on, and the page says so', () => {
    const night = asked().unclear();
    expect(night.asking).toBe('who');
    night.unclear();
    expect(night.asking).toBe('tube-kind');
    expect(reasons(night)).toEqual(['same-child']);
    expect(night.tell({ mayJoin: true }).asking).toBe('tube-kind');
  });

  it('two tries are two tries, whatever is taken back in between', () => {
    const takesBack = { type: 'correct', key: 'tube-kind', told: {}, person: false, corrects: true } as const;
    const night = asked().unclear().text(takesBack).tell({ tubeKind: 'g' }).text(takesBack);
    expect(night.asking).toBe('who');
    expect(night.unclear().asking).toBe('tube-kind');
  });

  it('what fits ends the case, and all that was told is there to be carried on', () => {
    const night = new Night(null).tell({ mayJoin: true, tubeKind: 'gj', weight: { kg: 9 } }).answer('unwell', 'no');
    night.answer('who', 'joins');
    expect(night.view).toMatchObject({ closed: true, told: { tubeKind: 'gj', weight: { kg: 9 } } });
    expect(night.said).toEqual([]);
  });

  it('and whoever is being called for it is called from the other case, not from here', () => {
    const night = asked().hear('person').answer('who', 'joins');
    expect(night.view.states.paging).toEqual(['paging', 'paging.idle']);
    expect(night.wait(24 * 60).effects).toEqual([]);
  });
});
