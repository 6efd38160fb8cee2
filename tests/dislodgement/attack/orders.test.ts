/** Orders nobody expects: what was settled is told otherwise, goes wrong again, or is taken back, at every rest. */
import { describe, expect, it } from 'vitest';
import type { QuestionKey } from '#machines/facts.ts';
import { Night, oldTract, startMs, toContents, toInsertion } from '../night.ts';

const exact = (high: number) => ({ low: high, high });
const read = (high: number, how: 'easy' | 'hard' = 'easy') =>
  toContents(how).answer('contents', 'yes').answer('ph', exact(high));
const takeBack = (night: Night, key: QuestionKey) =>
  night.text({ type: 'correct', key, told: {}, person: false, corrects: true });
const cannotWait = (night: Night) =>
  night.text({ type: 'cannotWait', what: 'the night medicine', told: {}, person: false, corrects: false });

/** Every place a case can come to rest with a tube in. */
const rests = {
  use: () => read(4).answer('secured', 'yes'),
  recheck: () => read(8),
  'second reading high': () =>
    read(8).wait(60).answer('after-in', 'no').answer('contents', 'yes').answer('ph', exact(6)),
  'hard hold': () => read(4, 'hard'),
  'no strips': () => toInsertion().answer('tube-in', 'easy').answer('after-in', 'no').answer('strips', 'no'),
  'not secured': () => read(4).answer('secured', 'no').answer('secured', 'no'),
  'unreadable reading': () => toContents().answer('contents', 'yes').unclear().unclear(),
  'warning sign': () => toInsertion().answer('tube-in', 'easy').answer('after-in', 'yes'),
} as const;

const names = Object.keys(rests) as (keyof typeof rests)[];
const notUsed = names.filter((name) => name !== 'use');

describe.each(names)('at rest on %s', (name) => {
  const rest = rests[name];

  it('a danger sign is answered by the emergency and called at once', () => {
    const night = rest().signs('limp');
    expect(night.said.filter((key) => key !== 'pageBegan')).toEqual(['emergency']);
    expect(night.calls.some(({ reasons }) => reasons.includes('danger-sign'))).toBe(true);
    expect(night.view.disposition).toBe('emergency');
  });

  it('a warning sign goes in and is called at emergency level', () => {
    const night = rest().signs('fresh-blood');
    expect(night.view.disposition).toBe('go-in');
    expect(night.callsEver.at(-1)).toMatchObject({ level: 'emergency' });
  });

  it('a tube that comes out again is void, called, and leaves one try', () => {
    const night = rest().hear('outAgain');
    expect(night.view.tubeIn).toBeNull();
    expect(night.view.facts.ph).toBeUndefined();
    if (night.asking === 'unwell') night.answer('unwell', 'no');
    if (night.asking === 'kit') night.answer('kit', 'yes');
    expect(night.asking).toBe('tube-in');
    night.answer('tube-in', 'no');
    if (night.asking === 'came-out') night.answer('came-out', startMs);
    expect(night.view.disposition).toBe('go-in');
    night.wait(60);
    expect(night.callsEver.some(({ reasons }) => reasons.includes('came-out-again'))).toBe(true);
  });

  it.each(['gj', 'j', 'half-out'] as const)('%s told voids all permission', (tubeKind) => {
    const night = rest().tell({ tubeKind }, true);
    expect(night.view.disposition).toBe('go-in');
    expect(night.said).not.toContain('useStill');
  });

  it('a younger tract told voids all permission', () => {
    const night = rest().tell({ firstPlaced: { earliest: '2027-02-20', latest: '2027-02-20' } }, true);
    expect(night.view.disposition).toBe('go-in');
  });

  it('a person asked for is called, and the rest stands', () => {
    const before = rest().view.disposition;
    const night = rest().hear('person');
    expect(night.view.disposition).toBe(before);
    expect(night.said).not.toEqual([]);
    night.wait(6);
    expect(night.callsEver.some(({ reasons }) => reasons.includes('person-wanted'))).toBe(true);
  });

  it('stop calls a nurse', () => {
    const night = rest().hear('stop').wait(6);
    expect(night.callsEver.some(({ reasons }) => reasons.includes('stopped'))).toBe(true);
  });

  it('what cannot wait is called, and goes in unless the tube may be used', () => {
    const night = cannotWait(rest());
    expect(night.view.disposition).toBe(name === 'use' ? 'use' : 'go-in');
    night.wait(6);
    expect(night.callsEver.some(({ reasons }) => reasons.includes('cannot-wait'))).toBe(true);
  });

  it.each([{ weight: { kg: 7.1 } }, { strips: 'yes' }, { cameOutAtMs: startMs }, { kit: 'yes' }] as const)(
    'a further fact, %o, gives no permission that was not there',
    (told) => {
      const night = rest().tell(told);
      expect(night.saidEver.filter((key) => key === 'use')).toHaveLength(name === 'use' ? 1 : 0);
    },
  );

  it('a nurse who clears gives only what a hard insertion waits for', () => {
    const night = rest().take().clear();
    expect(night.asking === 'secured').toBe(name === 'hard hold');
  });
});

describe.each(notUsed)('taking an answer back at rest on %s', (name) => {
  it.each(['unwell', 'kit', 'own-tube', 'came-out', 'weight', 'looks', 'fed-lately'] as const)(
    '%s gives no permission by itself',
    (key) => {
      expect(takeBack(rests[name](), key).said).not.toContain('use');
    },
  );
});

describe('the recheck', () => {
  it('waits its hour whatever is texted meanwhile, with one timer', () => {
    const night = rests.recheck();
    for (const type of ['smallTalk', 'media', 'told', 'help', 'person'] as const) {
      night.wait(5).hear(type);
      expect(night.view.disposition).toBe('recheck');
      expect(night.timers.filter(({ event }) => event.includes('recheckAfter'))).toHaveLength(1);
    }
    expect(night.wait(34).said).not.toContain('askAfterIn');
    expect(night.wait(1).said).toContain('askAfterIn');
  });

  it('asks how the child is once more, and a yes goes in', () => {
    const night = rests.recheck().wait(60).answer('after-in', 'yes');
    expect(night.view.disposition).toBe('go-in');
    expect(night.calls).toMatchObject([{ level: 'emergency', reasons: ['warning-sign'] }]);
  });
});

describe('nurses and climbs', () => {
  it('a second nurse who takes and clears changes nothing more', () => {
    const night = rests['hard hold']().take('Ana').clear().take('Ben').clear();
    expect(night.view.takenBy).toBe('Ana');
    expect(night.asking).toBe('secured');
  });

  it('a clearance that comes after the reading was corrected upwards clears nothing', () => {
    const night = rests['hard hold']()
      .take()
      .tell({ ph: exact(8) }, true)
      .clear();
    expect(night.view.disposition).toBe('recheck');
    expect(night.said).toEqual([]);
  });

  it('a climb started again by a graver reason is taken like any other', () => {
    const night = rests['hard hold']().wait(12).signs('leak').take('Ben');
    expect(night.view.takenBy).toBe('Ben');
    expect(night.said).toEqual(['pageTaken']);
    expect(night.wait(30).calls).toEqual([]);
  });

  it('stop and then silence still reaches the nurses and ends in going in', () => {
    const night = toInsertion().hear('stop').wait(90);
    expect(night.view.disposition).toBe('go-in');
    expect(night.callsEver.at(-1)?.reasons).toEqual(['stopped', 'silence']);
  });
});

describe('the first text', () => {
  it.each(['told', 'outAgain', 'tubeProblem', 'person', 'media', 'smallTalk', 'help'] as const)(
    'as "%s" is answered with the danger signs',
    (type) => {
      const night = new Night().hear(type);
      expect(night.said).toContain('opening');
      expect(night.asking).toBe('unwell');
    },
  );

  it('with a danger sign skips every question', () => {
    const night = new Night().signs('breathing');
    expect(night.said).toEqual(['emergency', 'pageBegan']);
    expect(night.asking).toBeNull();
  });

  it('that tells a grave and a small thing hears the grave one', () => {
    const night = new Night().text({
      type: 'signs',
      sure: ['fresh-blood', 'colour'],
      near: ['fever'],
      told: { tubeKind: 'g', firstPlaced: oldTract },
      person: true,
      corrects: false,
    });
    expect(night.said).toEqual(['emergency', 'pageBegan']);
  });
});
