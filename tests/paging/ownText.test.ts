/** A nurse who has the case: what her own text brings about calls nobody, unless it is graver than what she took it for. */
import { describe, expect, it } from 'vitest';
import { Night, toContents } from '#tests/dislodgement/night.ts';
import { lines, page, raise } from './calls.ts';

const own = (reason: Parameters<typeof raise>[0]) => ({ ...raise(reason), byTaker: true }) as const;

const taken = (from: 0 | 1 | 2 = 0) => {
  const line = page();
  line.send(raise('no-strips'));
  line.send({ type: 'take', nurse: 'Wren', from });
  return line;
};

describe('what the taker brings about', () => {
  it.each(['restricted-kind', 'no-strips', 'weight-unknown'] as const)('by %s calls nobody, and is kept', (reason) => {
    const line = taken();
    expect(line.send(own(reason))).toEqual([]);
    expect(line.snapshot.context).toMatchObject({ takenBy: 'Wren', unheard: [] });
    expect(lines(line.send({ type: 'pass', nurse: 'Wren', from: 0 }))[1]).toContain(reason);
    // Whoever has it next read it in her page.
    expect(lines(line.send({ type: 'take', nurse: 'Bo', from: 1 }))).toEqual(['0 taken Bo']);
  });

  it('and is graver climbs again', () => {
    const line = taken();
    expect(lines(line.send(own('tract-too-young')))).toEqual(['0 began 13', '0 emergency 0 text+call tract-too-young']);
    expect(line.snapshot.context.takenBy).toBeNull();
  });
});

describe('what the family brings about', () => {
  it.each([1, 2] as const)('calls the one at place %i who has it, and nobody else', (place) => {
    const line = taken(place);
    expect(lines(line.send(raise('silence')))).toEqual([`0 urgent ${place} text silence`]);
    expect(line.snapshot.context).toMatchObject({ takenBy: 'Wren', place });
  });

  it.each([1, 2] as const)('and is an emergency calls the one at place %i beside the first on call', (place) => {
    const line = taken(place);
    expect(lines(line.send(raise('danger-sign')))).toEqual([
      `0 emergency ${place} text+call danger-sign`,
      '0 began 13',
      '0 emergency 0 text+call danger-sign',
    ]);
    expect(line.snapshot.context).toMatchObject({ takenBy: null, place: 0 });
  });

  it('is answered by any word of hers, and by none of the family', () => {
    const line = taken();
    line.send(raise('person-wanted'));
    expect(line.send({ type: 'case.stands', waitsForNurse: true, touched: false })).toEqual([]);
    expect(lines(line.send(raise('unread')))).toEqual(['0 tellNurse urgent unread']);
    line.send({ type: 'case.stands', waitsForNurse: false, touched: true });
    expect(line.advance(120)).toEqual([]);
  });

  it('goes with its case to whoever was called at her place and takes it', () => {
    const line = taken();
    line.send(raise('person-wanted'));
    expect(line.send({ type: 'take', nurse: 'Wren', from: 0 })).toEqual([]);
    expect(lines(line.send({ type: 'take', nurse: 'Bo', from: 0 }))).toEqual(['0 taken Bo']);
    expect(line.snapshot.context.takenBy).toBe('Bo');
    expect(line.advance(120)).toEqual([]);
  });
});

describe('what the family hears of it', () => {
  const prefaces = (night: Night) =>
    night.effects.flatMap((effect) => (effect.type === 'say' ? effect.say.preface : []));
  const says = (night: Night) => night.effects.flatMap((effect) => (effect.type === 'say' ? [effect.say.key] : []));
  const goesIn = () => new Night().tell({ tubeKind: 'j' }).answer('unwell', 'no');
  const again = { type: 'repeat', step: null, told: {}, person: false, corrects: false } as const;

  it('is who has it, and no new call', () => {
    const night = goesIn().take().unclear();
    expect(prefaces(night)).toEqual([{ key: 'passedOn', nurse: 'Ana' }]);
    expect(says(night)).toEqual(['goInStill']);
    expect(night.calls).toMatchObject([{ place: 0, reasons: ['unread'] }]);
    night.wait(4);
    expect(prefaces(night.hear('person'))).toEqual([{ key: 'passedOn', nurse: 'Ana' }]);
    expect(night.view.takenBy).toBe('Ana');
  });

  it('goes on asking her while the family rings her itself: that is no word of hers', () => {
    const night = goesIn().take().hear('person');
    expect(night.rung(0).view.states.paging).toContain('paging.taken.asked');
    expect(night.wait(30).calls.length).toBeGreaterThan(0);
  });

  it('is that a nurse is called, where none has it', () => {
    expect(prefaces(goesIn().hear('person'))).toEqual([{ key: 'nurseCalled' }]);
  });

  it('is not that nobody answered, once somebody has', () => {
    const night = toContents().answer('contents', 'no').answer('contents', 'no').answer('contents', 'no').wait(25);
    expect(night.view.disposition).toBe('go-in');
    expect(says(night.text(again))).toContain('goIn');
    expect(says(night.take().text(again))).toEqual(['goInStill', 'goInCard']);
  });
});

describe('in a case', () => {
  const facts = () => {
    const night = toContents().answer('contents', 'no').answer('contents', 'no').answer('contents', 'no');
    return night.take();
  };

  it('a fact she corrects is decided anew, and stays hers', () => {
    const night = facts().corrects({ tubeKind: 'gj' }, true);
    expect(night.calls).toEqual([]);
    expect(night.view).toMatchObject({ disposition: 'go-in', takenBy: 'Ana' });
  });

  it('a fact somebody else corrects calls for it', () => {
    expect(facts().corrects({ tubeKind: 'gj' }).calls).toMatchObject([{ place: 0, reasons: ['restricted-kind'] }]);
  });

  it('a fact that makes it an emergency calls everybody afresh', () => {
    const night = facts().corrects({ firstPlaced: { earliest: '2027-03-01', latest: '2027-03-01' } }, true);
    expect(night.calls).toMatchObject([{ level: 'emergency', reasons: ['tract-too-young'] }]);
    expect(night.view.takenBy).toBeNull();
  });
});
