/** What a nurse's words do to a conversation: never to the less safe side, whatever she texts. */
import { describe, expect, it } from 'vitest';
import { daysBefore, Night, oldTract, startMs, toContents, toInsertion } from './night.ts';

const ph = (high: number) => ({ low: high, high });
const held = () => toContents('hard').answer('contents', 'yes').answer('ph', ph(5));
const inUse = () => toContents().answer('contents', 'yes').answer('ph', ph(5)).answer('secured', 'yes');
const reasons = (night: Night) => night.callsEver.flatMap((call) => call.reasons);

describe('a clearance is refused', () => {
  const refused: [string, () => Night][] = [
    ['without strips', () => toInsertion().answer('tube-in', 'hard').answer('after-in', 'no').answer('strips', 'no')],
    [
      'without contents',
      () => toContents('hard').answer('contents', 'no').answer('contents', 'no').answer('contents', 'no'),
    ],
    ['without a reading', () => toContents('hard').answer('contents', 'yes').unclear().unclear()],
    [
      'after a second high reading',
      () => {
        const night = toContents('hard').answer('contents', 'yes').answer('ph', ph(6.5));
        night.clinicOpen = true;
        return night.wait(60).answer('after-in', 'no').answer('contents', 'yes').answer('ph', ph(6.5));
      },
    ],
    [
      'for a combination tube',
      () =>
        new Night()
          .tell({ tubeKind: 'gj', cameOutAtMs: startMs, firstPlaced: oldTract })
          .answer('unwell', 'no')
          .answer('kit', 'yes')
          .answer('weight', { kg: 7 })
          .answer('tube-in', 'hard'),
    ],
    [
      'for a young tract',
      () =>
        new Night()
          .tell({ tubeKind: 'g', cameOutAtMs: startMs, firstPlaced: daysBefore(40) })
          .answer('unwell', 'no')
          .answer('kit', 'yes')
          .answer('weight', { kg: 7 })
          .answer('tube-in', 'hard'),
    ],
    ['once she sent the child in', () => held().sendIn()],
    ['once a fact she corrected forbids it', () => held().corrects({ tubeKind: 'gj' })],
    ['while a question is open', () => toContents('hard')],
  ];
  it.each(refused)('%s', (_name, make) => {
    const night = make();
    expect(night.view.clearable).toBe(false);
    const before = night.view.disposition;
    night.clear();
    expect(night.effects).toEqual([]);
    expect(night.view.disposition).toBe(before);
  });

  it('and given only for a hard insertion whose reading passed', () => {
    expect(held().view.clearable).toBe(true);
    expect(held().clear().asking).toBe('secured');
  });
});

describe('sent in by a nurse', () => {
  it.each([
    ['a hold', held],
    ['use', inUse],
    ['a question', toContents],
    ['the danger signs', () => new Night().tell({ tubeKind: 'g' })],
    ['a doubtful sign', () => held().near('colour')],
  ] as const)('from %s goes in with its card, and is asked whether it arrived', (_name, make) => {
    const night = make().sendIn();
    expect(night.said).toEqual(['goIn', 'goInCard']);
    expect(night.view.disposition).toBe('go-in');
    expect(night.wait(60).said).toContain('askArrived');
  });

  it('stays in, whatever is corrected, taken back or cleared', () => {
    const night = held().sendIn();
    night.tell({ insertedHow: 'easy' }, true);
    night.text({ type: 'correct', key: 'tube-in', told: {}, person: false, corrects: true });
    night.clear();
    night.corrects({ tubeKind: 'g', firstPlaced: oldTract });
    expect(night.view.disposition).toBe('go-in');
    expect(night.saidEver).not.toContain('secureSteps');
  });

  it('may hold the stoma open again on the way, and is not used then', () => {
    const night = held().sendIn().hear('outAgain');
    expect(night.asking).toBe('tube-in');
    night.answer('tube-in', 'easy').answer('came-out', startMs);
    expect(night.view.disposition).toBe('go-in');
    expect(night.saidEver).not.toContain('secureSteps');
  });

  it('says nothing more where the child goes in already or is in danger', () => {
    expect(toContents().signs('breathing').sendIn().effects).toEqual([]);
    const going = new Night().tell({ tubeKind: 'j' }).answer('unwell', 'no').sendIn();
    expect(going.said).toEqual(['goInStill']);
  });

  it('outlives a danger that is taken back', () => {
    const night = new Night().tell({ tubeKind: 'g' }).answer('unwell', 'yes').sendIn();
    night.text({ type: 'correct', key: 'unwell', told: {}, person: false, corrects: true });
    expect(night.view.disposition).toBe('go-in');
  });
});

describe('a fact a nurse corrects', () => {
  it('to the careful side counts at once and the gates are decided anew', () => {
    expect(held().corrects({ tubeKind: 'gj' }).view.disposition).toBe('go-in');
    expect(inUse().corrects({ firstPlaced: daysBefore(40) }).view.disposition).toBe('go-in');
    expect(toInsertion().corrects({ firstPlaced: daysBefore(5) }).view.disposition).toBe('go-in');
  });

  it('to the other side is asked of the family again', () => {
    const gj = new Night().tell({ tubeKind: 'gj' }).answer('unwell', 'no').answer('first-placed', oldTract);
    expect(gj.corrects({ tubeKind: 'g' }).asking).toBe('tube-kind');
    const young = new Night().tell({ tubeKind: 'g', firstPlaced: daysBefore(5) }).answer('unwell', 'no');
    expect(young.corrects({ firstPlaced: oldTract }).asking).toBe('first-placed');
  });

  it('of weight means the steps with the right length', () => {
    const night = toInsertion().corrects({ weight: { kg: 2.8 } });
    expect(night.said).toEqual(['insertLayOut', 'insertMeasure', 'insertPutIn']);
    expect(night.effects).toContainEqual(
      expect.objectContaining({ say: expect.objectContaining({ params: { lowCm: 3, highCm: 4 } }) }),
    );
  });
});

describe('a fact a nurse corrects in an emergency', () => {
  it('is kept, and nothing is said', () => {
    const night = toContents().signs('breathing').corrects({ tubeKind: 'gj' });
    expect(night.view.facts.tubeKind).toBe('gj');
    expect(night.said).toEqual([]);
  });
});

describe('a case that a nurse closes', () => {
  it('calls nobody any more', () => {
    const night = held().close();
    expect(night.view).toMatchObject({ closed: true, states: { paging: ['paging', 'paging.idle'] } });
    expect(night.wait(24 * 60).effects).toEqual([]);
  });
});

describe('a reading changed in a hold', () => {
  it('is news for whoever took the case', () => {
    const night = held().take();
    night.tell({ ph: ph(5.5) }, true);
    expect(night.effects).toContainEqual({ type: 'tellNurse', level: 'routine', reason: 'reading-corrected' });
    expect(night.view.clearable).toBe(true);
    const higher = held().take();
    higher.tell({ ph: ph(7.5) }, true);
    expect(higher.effects).toContainEqual({ type: 'tellNurse', level: 'routine', reason: 'reading-corrected' });
    expect(higher.view.clearable).toBe(false);
  });

  it('taken back and read again calls for her again', () => {
    const night = held().take();
    night.text({ type: 'correct', key: 'ph', told: {}, person: false, corrects: true });
    const before = reasons(night).filter((reason) => reason === 'hard-insertion').length;
    night.answer('contents', 'yes').answer('ph', ph(5.5));
    expect(night.view.clearable).toBe(true);
    expect(reasons(night).filter((reason) => reason === 'hard-insertion')).toHaveLength(before + 1);
  });
});

describe('what the family hears of a page', () => {
  it('is that it went out and for how long, who took it, and that she passed it on', () => {
    const night = held();
    expect(night.effects).toContainEqual(
      expect.objectContaining({ say: expect.objectContaining({ key: 'pageBegan', params: { mostMinutes: 20 } }) }),
    );
    expect(night.take().said).toEqual(['pageTaken']);
    expect(night.pass().effects).toContainEqual(
      expect.objectContaining({ say: { key: 'pagePassed', params: { nurse: 'Ana' }, preface: [] } }),
    );
  });
});

describe('whoever has the case hears where it has come to rest', () => {
  const rests = (night: Night) => night.effects.filter(({ type }) => type === 'tellStands');
  const secured = () => toContents().answer('contents', 'yes').answer('ph', ph(5));

  it('in use, once, and nobody hears it of a case that nobody has', () => {
    const night = secured().hear('person').take().answer('secured', 'yes');
    expect(rests(night)).toEqual([{ type: 'tellStands', disposition: 'use' }]);
    expect(rests(night.hear('smallTalk'))).toEqual([]);
    expect(rests(secured().hear('person').answer('secured', 'yes'))).toEqual([]);
  });

  it('in the emergency department, where no page says so', () => {
    const night = toContents().answer('contents', 'yes').answer('ph', ph(7.5)).hear('person').take();
    expect(rests(night)).toEqual([]);
    night.sendIn();
    expect(rests(night)).toEqual([{ type: 'tellStands', disposition: 'go-in' }]);
  });

  it('but not of a wait for the recheck, nor what her own text brought about, nor what she is paged for', () => {
    const waiting = toContents().answer('contents', 'yes').hear('person').take().answer('ph', ph(7.5));
    expect([waiting.view.disposition, rests(waiting)]).toEqual(['recheck', []]);
    const corrected = secured().hear('person').take().corrects({ tubeKind: 'gj' }, true);
    expect([corrected.view.disposition, rests(corrected)]).toEqual(['go-in', []]);
    const paged = secured().hear('person').take().signs('breathing');
    expect([paged.view.disposition, rests(paged)]).toEqual(['emergency', []]);
  });
});
