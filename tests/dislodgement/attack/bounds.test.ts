/** Both sides of every boundary, as a whole night feels it: what is told, who is called. */
import { describe, expect, it } from 'vitest';
import { daysBefore, Night, oldTract, startMs, toContents, toInsertion } from '../night.ts';

const hourMs = 3_600_000;
const reasonsOf = (night: Night) => [...new Set(night.callsEver.flatMap(({ reasons }) => reasons))];
const lengthOf = (night: Night) =>
  night.all.flatMap((effect) =>
    effect.type === 'say' && effect.say.key === 'insertMeasure' ? [effect.say.params] : [],
  );
const exact = (high: number) => ({ low: high, high });

describe('the reading', () => {
  // NPSA/2011/PSA002: pH 1 to 5.5 on strips of half steps; nothing is given at 6 or more.
  it.each([
    [exact(1), 'secured'],
    [exact(5.5), 'secured'],
    [{ low: 4, high: 5.5 }, 'secured'],
    [exact(5.6), 'fed-lately'], // between two steps the higher one counts
    [exact(6), 'fed-lately'],
    [{ low: 5, high: 6 }, 'fed-lately'], // a range counts at its upper end
    [exact(7), 'fed-lately'],
    [exact(7.1), null],
    [exact(9), null],
    [exact(14), null],
  ] as const)('%o leads to %s', (reading, asking) => {
    const night = toContents().answer('contents', 'yes').answer('ph', reading);
    expect(night.asking).toBe(asking);
    expect(night.view.disposition).toBe(asking === null ? 'recheck' : null);
  });

  it.each([exact(-1), exact(14.1), { low: 6, high: 5 }])('%o is no reading: asked again, then a nurse', (reading) => {
    const night = toContents().answer('contents', 'yes').answer('ph', reading);
    expect(night.asking).toBe('ph');
    night.answer('ph', reading);
    expect(night.view.disposition).toBe('hold');
    expect(reasonsOf(night)).toContain('unread');
  });

  it('at the top of its scale has no upper end, also where the site calls 7.0 good after a feed', () => {
    const scaleToSeven = toInsertion(new Night(null, { phStripTop: 7 }));
    const night = toContents('easy', scaleToSeven).answer('contents', 'yes').answer('ph', exact(7));
    expect(night.view.disposition).toBe('recheck');
  });

  it('passes after a feed only where the site allows it', () => {
    const strict = toInsertion(new Night(null, { phAfterFeed: 'off' }));
    const night = toContents('easy', strict).answer('contents', 'yes').answer('ph', exact(6));
    expect(night.view.disposition).toBe('recheck');
  });
});

describe('the exception after a feed', () => {
  const atSixAndAHalf = (how: 'easy' | 'hard' = 'easy') =>
    toContents(how).answer('contents', 'yes').answer('ph', exact(6.5));

  it.each(['no', 'unknown'] as const)('needs a feed within the hour, "%s" is none', (fed) => {
    expect(atSixAndAHalf().answer('fed-lately', fed).view.disposition).toBe('recheck');
  });

  it.each(['no', 'unknown'] as const)('needs contents that look right, "%s" is not', (looks) => {
    expect(atSixAndAHalf().answer('fed-lately', 'yes').answer('looks', looks).view.disposition).toBe('recheck');
  });

  it('needs an easy insertion', () => {
    expect(atSixAndAHalf('hard').view.disposition).toBe('recheck');
  });

  it('is for a first reading: at the recheck the same value is a second high one', () => {
    const night = atSixAndAHalf().answer('fed-lately', 'no').wait(60);
    night.answer('after-in', 'no').answer('contents', 'yes').answer('ph', exact(6.5));
    expect(night.view.disposition).toBe('go-in');
    expect(reasonsOf(night)).toEqual(['second-high']);
  });

  it('tells a nurse before the first feed', () => {
    const night = atSixAndAHalf().answer('fed-lately', 'yes').answer('looks', 'yes');
    expect(night.said).toEqual(['secureSteps']);
    expect(night.calls).toMatchObject([{ level: 'routine', reasons: ['after-feed-reading'] }]);
  });
});

describe('the age of the tract', () => {
  const told = (days: number) =>
    new Night().tell({ tubeKind: 'g', firstPlaced: daysBefore(days), cameOutAtMs: startMs }).answer('unwell', 'no');

  // Days and levels are the site's defaults, common practice; none under 4 weeks without advice: StatPearls 2020.
  it.each([
    [0, null, 'go-in', 'emergency'],
    [13, null, 'go-in', 'emergency'],
    [14, 'kit', null, 'emergency'],
    [27, 'kit', null, 'emergency'],
    [28, 'kit', null, 'urgent'],
    [56, 'kit', null, 'urgent'],
    [57, 'own-tube', null, undefined],
  ] as const)('%i days', (days, asking, disposition, level) => {
    const night = told(days);
    expect(night.asking).toBe(asking);
    expect(night.view.disposition).toBe(disposition);
    expect(night.callsEver[0]?.level).toBe(level);
  });

  it('of a range is its youngest', () => {
    const range = { earliest: daysBefore(400).earliest, latest: daysBefore(13).latest };
    const night = new Night().tell({ tubeKind: 'g', firstPlaced: range }).answer('unwell', 'no');
    expect(night.view.disposition).toBe('go-in');
    expect(lengthOf(night)).toEqual([]);
  });

  it('of nearly too young leaves one try that stops at any resistance', () => {
    const night = told(20).answer('kit', 'yes').answer('weight', { kg: 4 });
    expect(night.effects).toContainEqual(
      expect.objectContaining({
        say: expect.objectContaining({ key: 'insertPutIn', params: { oneTry: true, stopAtAnyResistance: true } }),
      }),
    );
    expect(night.answer('tube-in', 'no').view.disposition).toBe('go-in');
  });
});

describe('the length', () => {
  const weighing = () =>
    new Night()
      .tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs })
      .answer('unwell', 'no')
      .answer('own-tube', 'no')
      .answer('kit', 'yes');

  // Common practice, no source; 3 kg are 6.61387 lb by the exact pound of 1959 (NIST SP 811, appendix B).
  it.each([
    [{ kg: 2.99 }, 3, 4],
    [{ kg: 3 }, 4, 4],
    [{ kg: 3.01 }, 4, 6],
    [{ bare: 2.99 }, 3, 4],
    [{ bare: 6.6139 }, 4, 6],
    ['unknown', 4, 4],
  ] as const)('for %o is %d to %d cm', (weight, lowCm, highCm) => {
    expect(lengthOf(weighing().answer('weight', weight))).toEqual([{ lowCm, highCm }]);
  });

  it.each([3, 5, 6.6138])('waits for the unit of a bare %d', (bare) => {
    const night = weighing().answer('weight', { bare });
    expect(night.view).toMatchObject({ asking: 'weight', clarifying: 'unit' });
    expect(lengthOf(night)).toEqual([]);
    expect(lengthOf(night.answer('weight', { unit: 'lb' }))).toEqual([{ lowCm: 3, highCm: 4 }]);
  });

  it('of an unknown weight is 4 cm and calls a nurse, routinely', () => {
    expect(weighing().answer('weight', 'unknown').callsEver).toMatchObject([
      { level: 'routine', reasons: ['weight-unknown'] },
    ]);
  });

  it.each([{ kg: 0.2 }, { kg: 300 }, { bare: 2500 }])('%o is no weight: asked again', (weight) => {
    const night = weighing().answer('weight', weight);
    expect(night.asking).toBe('weight');
    expect(lengthOf(night)).toEqual([]);
  });
});

describe('the time out', () => {
  const outFor = (ms: number, hours = 4) =>
    new Night(null, { outTooLongHours: hours })
      .tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs - ms })
      .answer('unwell', 'no');

  // The hours are the site's setting; something back within 4 h: children's-hospital guideline.
  it.each([2, 4, 8])('of exactly %i hours is not too long, a moment more is', (hours) => {
    expect(outFor(hours * hourMs, hours).callsEver).toEqual([]);
    expect(outFor(hours * hourMs + 1, hours).callsEver).toMatchObject([{ level: 'urgent', reasons: ['out-too-long'] }]);
  });

  it('too long leaves one try', () => {
    const night = outFor(5 * hourMs)
      .answer('own-tube', 'no')
      .answer('kit', 'yes')
      .answer('weight', { kg: 7 });
    expect(night.answer('tube-in', 'no').view.disposition).toBe('go-in');
  });
});

describe('the number of tries', () => {
  it.each([1, 2, 3])('%i to put a tube in', (insertionTries) => {
    const night = toInsertion(new Night(null, { insertionTries }));
    for (let failed = 1; failed < insertionTries; failed += 1)
      expect(night.answer('tube-in', 'no').asking).toBe('tube-in');
    expect(night.answer('tube-in', 'no').view.disposition).toBe('go-in');
    expect(reasonsOf(night)).toEqual(['will-not-go-in']);
  });

  it('the own tube takes one of them, and the temporary one gets its whole lesson', () => {
    const night = new Night()
      .tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs })
      .answer('unwell', 'no');
    night.answer('own-tube', 'yes').answer('own-tube-in', 'no').answer('kit', 'yes').answer('weight', { kg: 7 });
    expect(night.said).toEqual(['insertLayOut', 'insertMeasure', 'insertPutIn']);
    expect(night.answer('tube-in', 'no').view.disposition).toBe('go-in');
  });

  it.each([1, 3, 4])('%i to draw contents back', (contentsTries) => {
    const night = toContents('easy', toInsertion(new Night(null, { contentsTries })));
    for (let missed = 1; missed < contentsTries; missed += 1) {
      expect(night.answer('contents', 'no').asking).toBe('contents');
    }
    expect(night.answer('contents', 'no').view.disposition).toBe('hold');
    expect(reasonsOf(night)).toEqual(['no-contents']);
  });
});
