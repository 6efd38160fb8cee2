/** A taken case that waits for its nurse: she is reminded, then the next person is called. */
import { describe, expect, it } from 'vitest';
import { Night, oldTract } from '#tests/dislodgement/night.ts';
import { clinicalWith } from '#tests/machines/simulated.ts';
import { lines, page, raise } from './calls.ts';

const stands = (waitsForNurse: boolean, touched = false) => ({ type: 'case.stands', waitsForNurse, touched }) as const;

const takenAndWaiting = (clinical = clinicalWith()) => {
  const line = page(clinical);
  line.send(raise('no-strips'));
  line.send({ type: 'take', nurse: 'Wren' });
  line.send(stands(true, true));
  return line;
};

describe('a taken case that waits for its nurse', () => {
  it('reminds her after half an hour, then calls the next person, and says so to the family', () => {
    const line = takenAndWaiting();
    expect(lines(line.advance(29))).toEqual([]);
    expect(lines(line.advance(1))).toEqual(['30 tellNurse urgent untouched']);
    expect(line.snapshot.context.takenBy).toBe('Wren');
    expect(lines(line.advance(10))).toEqual(['40 began 20', '40 urgent 1 text no-strips,untouched']);
    expect(line.snapshot.context.takenBy).toBeNull();
    expect(lines(line.advance(5))).toEqual(['45 urgent 2 text no-strips,untouched']);
    expect(lines(line.advance(5))).toEqual(['50 unanswered']);
  });

  it('waits as long as the site has set', () => {
    const line = takenAndWaiting(
      clinicalWith({ untouchedMinutes: 10, urgentSecondMinutes: 4, urgentRepeatMinutes: 2 }),
    );
    expect(lines(line.advance(14)).map((words) => words.split(' ').slice(0, 3).join(' '))).toEqual([
      '10 tellNurse urgent',
      '14 began 17',
      '14 urgent 1',
    ]);
  });

  it.each([
    [0, 1],
    [1, 2],
    [2, 0],
  ] as const)('goes on from the place of whoever took it, %i, to %i', (from, next) => {
    const line = page();
    line.send(raise('no-strips'));
    line.send({ type: 'take', nurse: 'Wren', from });
    line.send(stands(true, true));
    expect(lines(line.advance(40))[2]).toBe(`40 urgent ${next} text no-strips,untouched`);
  });

  it('goes on from whoever was called last, where the taker has no place on the rota', () => {
    const line = page();
    line.send(raise('no-strips'));
    line.advance(12);
    line.send({ type: 'take', nurse: 'Wren' });
    line.send(stands(true, true));
    expect(lines(line.advance(40))[2]).toBe('52 urgent 2 text no-strips,untouched');
  });

  it.each([
    ['before', 29],
    ['after', 35],
  ])('a word of hers %s the reminder starts the wait again', (_, minutes) => {
    const line = takenAndWaiting();
    line.advance(minutes);
    line.send(stands(true, true));
    expect(lines(line.advance(30))).toEqual([`${minutes + 30} tellNurse urgent untouched`]);
  });

  it('a text of the family does not: it is the family that waits', () => {
    const line = takenAndWaiting();
    line.advance(20);
    expect(line.send(stands(true))).toEqual([]);
    expect(lines(line.advance(10))).toEqual(['30 tellNurse urgent untouched']);
    line.send(stands(true));
    expect(lines(line.advance(10))[1]).toBe('40 urgent 1 text no-strips,untouched');
  });

  it('that no longer waits for her reminds nobody, until it does again', () => {
    const line = takenAndWaiting();
    line.advance(35);
    line.send(stands(false));
    expect(line.advance(120)).toEqual([]);
    line.send(stands(true));
    expect(lines(line.advance(30))).toEqual(['185 tellNurse urgent untouched']);
  });

  it('taken once more is watched once more', () => {
    const line = takenAndWaiting();
    line.advance(40);
    line.send({ type: 'take', nurse: 'Imke' });
    expect(line.advance(120)).toEqual([]);
    line.send(stands(true, true));
    expect(lines(line.advance(30))).toEqual(['190 tellNurse urgent untouched']);
  });

  it('that is closed reminds nobody', () => {
    const line = takenAndWaiting();
    line.send({ type: 'page.close' });
    expect(line.advance(120)).toEqual([]);
  });
});

describe('a case waits for its nurse', () => {
  const held = () => {
    const night = new Night().tell({ tubeKind: 'g', cameOutAtMs: Date.parse('2027-03-06T01:50:00-05:00') });
    night.answer('unwell', 'no').answer('first-placed', oldTract).answer('own-tube', 'no').answer('kit', 'yes');
    night.answer('weight', { kg: 7 }).answer('tube-in', 'easy').answer('after-in', 'no').answer('strips', 'no');
    expect(night.view.disposition).toBe('hold');
    return night.take();
  };
  const reminders = (night: Night) =>
    night.all.flatMap((effect) => (effect.type === 'tellNurse' && effect.reason === 'untouched' ? [effect] : []));

  it('while the tube is held: reminded after half an hour, though the family texts', () => {
    const night = held().wait(20).hear('smallTalk').wait(9);
    expect(reminders(night)).toEqual([]);
    expect(reminders(night.wait(1))).toHaveLength(1);
    expect(night.wait(10).calls.map(({ place }) => place)).toEqual([1]);
  });

  it('and is touched by what she does beside the machines', () => {
    const night = held().wait(20);
    night.touch().wait(29);
    expect(reminders(night)).toEqual([]);
    expect(reminders(night.wait(1))).toHaveLength(1);
  });

  it('while the family is silent', () => {
    const night = new Night().tell({ tubeKind: 'g' }).wait(10).take().wait(30);
    expect(reminders(night)).toHaveLength(1);
    night.answer('unwell', 'no').take().wait(60);
    expect(reminders(night)).toHaveLength(1);
  });

  it('not while it is asked and answers', () => {
    const night = new Night().tell({ tubeKind: 'g' }).hear('person').take().wait(4);
    night.answer('unwell', 'no').wait(4).answer('first-placed', oldTract).wait(4);
    expect(reminders(night)).toEqual([]);
    expect(night.view.states.paging).toContain('paging.taken.quiet');
  });
});
