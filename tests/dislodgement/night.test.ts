/** Whole nights on the machines alone, one for each way a case can go. */
import { describe, expect, it } from 'vitest';
import { daysBefore, Night, oldTract, startMs, toContents, toInsertion } from './night.ts';

describe('a stranger with a G tube in an old tract', () => {
  it('reaches the length in seven texts and is asked nothing before it that changes nothing', () => {
    const night = new Night();
    const asked = [];
    night.tell({});
    asked.push(night.asking);
    night.answer('unwell', 'no');
    asked.push(night.asking);
    night.answer('tube-kind', 'g');
    asked.push(night.asking);
    night.answer('first-placed', oldTract);
    asked.push(night.asking);
    night.answer('own-tube', 'no');
    asked.push(night.asking);
    night.answer('kit', 'yes');
    asked.push(night.asking);
    night.answer('weight', { kg: 7 });
    expect(asked).toEqual(['unwell', 'tube-kind', 'first-placed', 'own-tube', 'kit', 'weight']);
    expect(night.said).toEqual(['insertLayOut', 'insertMeasure', 'insertPutIn']);
    expect(night.asking).toBe('tube-in');
    expect(night.effects).toContainEqual(
      expect.objectContaining({
        say: expect.objectContaining({ key: 'insertMeasure', params: { lowCm: 4, highCm: 6 } }),
      }),
    );
    expect(night.callsEver).toEqual([]);
  });

  it('waits an hour on 6.5 without a feed, and may use the tube on 5.0', () => {
    const night = toContents();
    night.answer('contents', 'yes').answer('ph', { low: 6.5, high: 6.5 }).answer('fed-lately', 'no');
    expect(night.said).toEqual(['recheckWait']);
    expect(night.view).toMatchObject({ asking: null, disposition: 'recheck' });
    expect(night.timers.map(({ dueMs }) => dueMs)).toEqual([startMs + 60 * 60_000]);
    night.wait(60);
    expect(night.said).toEqual(['askAfterIn']);
    night.answer('after-in', 'no').answer('contents', 'yes').answer('ph', { low: 5, high: 5 });
    expect(night.asking).toBe('secured');
    night.answer('secured', 'yes');
    expect(night.view).toMatchObject({ asking: null, disposition: 'use' });
    expect(night.callsEver).toEqual([]);
  });

  it('pages and rests on a second high reading: the clinic by day, going in by night', () => {
    for (const clinicOpen of [true, false]) {
      const night = toContents();
      night.answer('contents', 'yes').answer('ph', { low: 8, high: 8 }).wait(60);
      night.answer('after-in', 'no').answer('contents', 'yes');
      night.clinicOpen = clinicOpen;
      night.answer('ph', { low: 6, high: 6 });
      expect(night.view.disposition).toBe(clinicOpen ? 'hold' : 'go-in');
      expect(night.calls).toMatchObject([{ place: 0, level: 'urgent', reasons: ['second-high'] }]);
    }
  });

  it('lets a first reading after a feed pass only with the right looks, an easy insertion and a page', () => {
    const night = toContents();
    night.answer('contents', 'yes').answer('ph', { low: 6.5, high: 6.5 }).answer('fed-lately', 'yes');
    night.answer('looks', 'yes');
    expect(night.asking).toBe('secured');
    expect(night.callsEver).toMatchObject([{ level: 'routine', reasons: ['after-feed-reading'] }]);
    const hard = toContents('hard').answer('contents', 'yes').answer('ph', { low: 6.5, high: 6.5 });
    expect(hard.view.disposition).toBe('recheck');
  });

  it('holds a hard insertion for the nurse, whose clearance leads to securing it', () => {
    const night = toContents('hard').answer('contents', 'yes').answer('ph', { low: 4, high: 4 });
    expect(night.view).toMatchObject({ disposition: 'hold', clearable: true });
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['hard-insertion'] }]);
    night.take().clear();
    expect(night.asking).toBe('secured');
    night.answer('secured', 'yes');
    expect(night.view.disposition).toBe('use');
  });

  it('gives a second try, then goes in', () => {
    const night = toInsertion().answer('tube-in', 'no');
    expect(night.said).toEqual(['secondTry']);
    night.answer('tube-in', 'no');
    expect(night.said).toEqual(['goIn', 'goInCard', 'pageBegan']);
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['will-not-go-in'] }]);
  });

  it('asks when it came out once a try failed, and gives one try only if that was too long ago', () => {
    const night = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract, weight: { kg: 7 } });
    night.answer('unwell', 'no').answer('own-tube', 'no').answer('kit', 'yes').answer('tube-in', 'no');
    expect(night.asking).toBe('came-out');
    night.answer('came-out', 'unknown');
    expect(night.said).toEqual(['askLastSeenIn']);
    night.answer('came-out', 'unknown');
    expect(night.view.disposition).toBe('go-in');
    expect(night.callsEver[0]).toMatchObject({ level: 'urgent', reasons: ['out-too-long'] });
  });
});

describe('a tube that only holds the stoma open', () => {
  it.each(['gj', 'unknown'] as const)('%s is put in to its length, never used, and goes in', (kind) => {
    const night = new Night().tell({}).answer('unwell', 'no').answer('tube-kind', kind);
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['restricted-kind'] }]);
    night.answer('first-placed', oldTract).answer('kit', 'yes').answer('weight', { kg: 12 }).answer('tube-in', 'easy');
    expect(night.asking).toBe('came-out');
    night.answer('came-out', startMs - 3_600_000);
    expect(night.view.disposition).toBe('go-in');
    expect(night.saidEver).not.toContain('askOwnTube');
    expect(night.saidEver).not.toContain('secureSteps');
  });

  it.each([
    [13, 'go-in', 'emergency', 'tract-too-young'],
    [27, null, 'emergency', 'tract-nearly-too-young'],
    [56, null, 'urgent', 'restricted-tract'],
  ] as const)('a tract of %i days', (days, disposition, level, reason) => {
    const night = new Night()
      .tell({})
      .answer('unwell', 'no')
      .answer('tube-kind', 'g')
      .answer('first-placed', daysBefore(days));
    expect(night.view.disposition).toBe(disposition);
    expect(night.calls).toMatchObject([{ level, reasons: [reason] }]);
    expect(night.asking).toBe(disposition === null ? 'kit' : null);
  });

  it('a tract of 57 days may be used', () => {
    const night = new Night()
      .tell({})
      .answer('unwell', 'no')
      .answer('tube-kind', 'g')
      .answer('first-placed', daysBefore(57));
    expect(night.asking).toBe('own-tube');
    expect(night.callsEver).toEqual([]);
  });

  it('an unknown tract in a child under 3 kg counts as too young', () => {
    const night = new Night()
      .tell({})
      .answer('unwell', 'no')
      .answer('tube-kind', 'g')
      .answer('first-placed', 'unknown');
    night.answer('kit', 'yes').answer('weight', { bare: 2.5 });
    expect(night.view.disposition).toBe('go-in');
    expect(night.saidEver).not.toContain('insertMeasure');
  });
});

describe('the own tube', () => {
  it('goes back, is confirmed like any tube, and may be used', () => {
    const night = new Night()
      .tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs })
      .answer('unwell', 'no');
    night.answer('own-tube', 'yes').answer('own-tube-in', 'in');
    expect(night.said).toEqual(['askHowIn']);
    night.answer('own-tube-in', 'easy').answer('after-in', 'no').answer('strips', 'yes').answer('contents', 'yes');
    night.answer('ph', { low: 4, high: 5.5 }).answer('secured', 'yes');
    expect(night.view.disposition).toBe('own-tube');
  });

  it('with a long inside part was a GJ', () => {
    const night = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract }).answer('unwell', 'no');
    night.answer('own-tube', 'long-inside');
    expect(night.view.facts.tubeKind).toBe('gj');
    expect(night.asking).toBe('kit');
  });

  it('burst, with no kit, holds the stoma open and goes in', () => {
    const night = new Night()
      .tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs })
      .answer('unwell', 'no');
    night.answer('own-tube', 'burst').answer('kit', 'no');
    expect(night.said).toEqual(['ownTubeAsHolderSteps']);
    night.answer('own-tube-in', 'easy');
    expect(night.view.disposition).toBe('go-in');
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['no-kit'] }]);
  });
});

describe('busy hands', () => {
  const inserting = () =>
    new Night()
      .tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs, weight: { kg: 9 }, kit: 'yes' })
      .answer('unwell', 'no')
      .answer('own-tube', 'no');

  it('an "ok" to the steps is no answer, and never a failed try', () => {
    const night = inserting();
    for (const _ of [1, 2, 3]) {
      night.hear('smallTalk');
      expect(night.said).toEqual(['askTubeIn']);
      expect(night.effects).toContainEqual(expect.objectContaining({ say: expect.objectContaining({ preface: [] }) }));
    }
    expect(night.callsEver).toEqual([]);
    expect(night.view.failedTries).toBe(0);
    expect(night.answer('tube-in', 'easy').asking).toBe('after-in');
  });

  it('a kind in doubt is used no more', () => {
    const night = inserting().tell({ tubeKind: 'unknown' });
    expect(night.view.facts.tubeKind).toBe('unknown');
    expect(night.answer('tube-in', 'easy').view.disposition).toBe('go-in');
  });

  it('an allergy told once more, as the steps say, asks for the kit again and tries nothing', () => {
    const night = inserting().tell({ latexAllergy: true }).answer('kit', 'yes');
    expect(night.asking).toBe('tube-in');
    night.tell({ latexAllergy: true });
    expect(night.asking).toBe('kit');
    expect(night.view.failedTries).toBe(0);
    night.answer('kit', 'no');
    expect(night.calls).toMatchObject([{ reasons: ['latex'] }]);
    expect(night.view.disposition).toBe('go-in');
  });

  it('silence after it still calls a nurse', () => {
    const night = inserting().hear('smallTalk').wait(15);
    expect(night.said).toEqual(['nudge']);
    expect(night.wait(15).calls).toMatchObject([{ reasons: ['silence'] }]);
  });
});

describe('the answer before', () => {
  it('is known to the reader until the next one could not be read', () => {
    const night = new Night().tell({ tubeKind: 'g' }).answer('unwell', 'no');
    expect(night.view.answered).toBe('unwell');
    night.answer('first-placed', oldTract);
    expect(night.view.answered).toBe('first-placed');
    expect(night.unclear().view.answered).toBeNull();
    expect(night.answer('own-tube', 'no').view.answered).toBe('own-tube');
  });

  it('of a tract told too old, corrected to weeks, closes every gate', () => {
    const night = new Night()
      .tell({ tubeKind: 'g' })
      .answer('unwell', 'no')
      .answer('first-placed', daysBefore(90))
      .tell({ firstPlaced: daysBefore(21) }, true);
    expect(night.asking).toBe('kit');
    expect(night.calls).toMatchObject([{ level: 'emergency', reasons: ['tract-nearly-too-young'] }]);
  });
});

describe('danger and warning signs', () => {
  it('a danger sign at any question is the emergency message and a page', () => {
    const night = toContents().signs('breathing');
    expect(night.said).toEqual(['emergency', 'pageBegan']);
    expect(night.view.disposition).toBe('emergency');
    expect(night.calls).toMatchObject([{ level: 'emergency', reasons: ['danger-sign'], by: ['text', 'call'] }]);
    night.hear('smallTalk');
    expect(night.said).toEqual(['emergencyCalled']);
    night.signs('limp');
    expect(night.said).toEqual(['emergency']);
    expect(night.calls).toHaveLength(1);
  });

  it('a plain yes can be taken back, a named sign cannot', () => {
    const correct = { type: 'correct', key: 'unwell', told: {}, person: false, corrects: true } as const;
    const plain = new Night().tell({}).answer('unwell', 'yes');
    expect(plain.view.disposition).toBe('emergency');
    expect(plain.text(correct).said).toEqual(['askUnwell']);
    const named = new Night().tell({}).signs('colour').text(correct);
    expect(named.said).toEqual(['emergencyStill']);
  });

  it('fever of a child of unknown age is a danger, of one over 6 kg a warning that still holds the stoma open', () => {
    expect(new Night().tell({}).signs('fever').view.disposition).toBe('emergency');
    const night = new Night().tell({ weight: { kg: 9 }, tubeKind: 'g', firstPlaced: oldTract }).signs('fever');
    expect(night.calls).toMatchObject([{ level: 'emergency', reasons: ['warning-sign'] }]);
    expect(night.asking).toBe('kit');
    night.answer('kit', 'yes').answer('tube-in', 'easy');
    expect(night.view.disposition).toBe('go-in');
  });

  it('a warning sign in use voids the permission', () => {
    const night = toContents().answer('contents', 'yes').answer('ph', { low: 4, high: 4 }).answer('secured', 'yes');
    night.signs('leak');
    expect(night.view.disposition).toBe('go-in');
    expect(night.calls).toMatchObject([{ level: 'emergency', reasons: ['warning-sign'] }]);
  });

  it('a near miss is clarified once', () => {
    const night = new Night().tell({}).near('bleeding');
    expect(night.said).toEqual(['clarifySign']);
    expect(night.asking).toBe('unwell');
    night.answer('unwell', 'no');
    expect(night.said).toEqual(['askUnwell']);
    night.answer('unwell', 'no');
    expect(night.asking).toBe('tube-kind');
  });
});

describe('what goes wrong on the way', () => {
  it('it came out again: everything is void, one try, urgent page', () => {
    const night = toContents().answer('contents', 'yes').answer('ph', { low: 4, high: 4 }).answer('secured', 'yes');
    night.hear('outAgain');
    expect(night.view).toMatchObject({ disposition: null, tubeIn: null, asking: 'unwell' });
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['came-out-again'] }]);
    night.answer('unwell', 'no').answer('kit', 'yes').answer('tube-in', 'no').answer('came-out', startMs);
    expect(night.view.disposition).toBe('go-in');
  });

  it('two unreadable answers call a nurse and go on as unknown', () => {
    const night = new Night().tell({}).answer('unwell', 'no').unclear();
    expect(night.asking).toBe('tube-kind');
    night.unclear();
    expect(night.view.facts.tubeKind).toBe('unknown');
    expect(night.calls.map(({ reasons }) => reasons)).toContainEqual(['unread']);
    expect(night.asking).toBe('first-placed');
  });

  it('an unreadable answer to the danger signs pages at once and nothing may be used until it is answered', () => {
    const night = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract }).unclear().unclear();
    expect(night.calls).toMatchObject([{ level: 'emergency', reasons: ['unwell-unread'] }]);
    expect(night.asking).toBe('kit');
  });

  it('silence is nudged once, then paged; nobody answering means going in', () => {
    const night = new Night().tell({}).wait(5);
    expect(night.said).toEqual(['nudge']);
    night.wait(5);
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['silence'] }]);
    night.wait(60);
    expect(night.view.disposition).toBe('go-in');
  });

  it('an unanswered recheck is a text, a telephone call, then a page', () => {
    const night = toContents().answer('contents', 'yes').answer('ph', { low: 8, high: 8 }).wait(60).wait(5);
    expect(night.effects).toContainEqual(expect.objectContaining({ type: 'say', by: 'call' }));
    expect(night.wait(5).calls).toMatchObject([{ level: 'urgent', reasons: ['silence'] }]);
  });

  it('a hold that no nurse takes becomes going in; a recheck stays', () => {
    const hold = toInsertion().answer('tube-in', 'easy').answer('after-in', 'no').answer('strips', 'no');
    expect(hold.view.disposition).toBe('hold');
    expect(hold.wait(20).view.disposition).toBe('go-in');
    const recheck = toContents().answer('contents', 'yes').answer('ph', { low: 8, high: 8 }).hear('person').wait(20);
    expect(recheck.view.disposition).toBe('recheck');
    expect(recheck.said).toContain('pageUnanswered');
  });

  it('what cannot wait turns a recheck into going in', () => {
    const night = toContents().answer('contents', 'yes').answer('ph', { low: 8, high: 8 });
    night.text({ type: 'cannotWait', what: 'seizure medicine', told: {}, person: false, corrects: false });
    expect(night.view.disposition).toBe('go-in');
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['cannot-wait'] }]);
  });

  it('a case that ran out keeps calling until somebody takes it, and closes then', () => {
    const night = toContents().answer('contents', 'yes').answer('ph', { low: 4, high: 4 }).answer('secured', 'yes');
    night.wait(32 * 24 * 60);
    expect(night.view.closed).toBe(false);
    night.take();
    expect(night.effects).toContainEqual({ type: 'closeCase' });
    expect(night.view.closed).toBe(true);
  });

  it('a kind corrected after the permission voids it', () => {
    const night = toContents().answer('contents', 'yes').answer('ph', { low: 4, high: 4 }).answer('secured', 'yes');
    night.tell({ tubeKind: 'gj' }, true);
    expect(night.view.disposition).toBe('go-in');
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['restricted-kind'] }]);
  });

  it('a stray "g tube" opens no gate, a correction to G asks again', () => {
    const night = new Night().tell({ tubeKind: 'gj' }).answer('unwell', 'no').tell({ tubeKind: 'g' });
    expect(night.view.facts.tubeKind).toBe('gj');
    night.tell({ tubeKind: 'g' }, true);
    expect(night.asking).toBe('tube-kind');
  });

  it('a reading corrected upwards is decided again, downwards it needs a new strip', () => {
    const up = toContents().answer('contents', 'yes').answer('ph', { low: 5, high: 5 });
    up.tell({ ph: { low: 7.5, high: 7.5 } }, true);
    expect(up.view.disposition).toBe('recheck');
    up.tell({ ph: { low: 5, high: 5 } }, true);
    expect(up.view.disposition).toBe('recheck');
  });
});
