/** Gates that once stood open: each was found by attacking the machines, and stays here so that it is never open again. */
import { describe, expect, it } from 'vitest';
import type { FamilyFile, QuestionKey } from '#machines/facts.ts';
import { daysBefore, Night, oldTract, startMs, toContents, toInsertion } from './night.ts';

const file: FamilyFile = {
  child: 'Robin',
  born: '2024-02-02',
  tubeKind: 'g',
  firstPlaced: '2025-03-01',
  weightKg: 9,
  weighedOn: '2027-02-20',
};
const g = () => new Night().tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs }).answer('unwell', 'no');
const inUse = () => toContents().answer('contents', 'yes').answer('ph', { low: 5, high: 5 }).answer('secured', 'yes');
const wrong = (night: Night, key: QuestionKey | null) =>
  night.text({ type: 'correct', key, told: {}, person: false, corrects: true });

describe('signs', () => {
  it('yes to "new pain, blood or a tighter belly" goes in at emergency level', () => {
    const night = toInsertion().answer('tube-in', 'easy').answer('after-in', 'yes');
    expect(night.view.disposition).toBe('go-in');
    expect(night.calls).toMatchObject([{ level: 'emergency', reasons: ['warning-sign'] }]);
  });

  it('a warning that was clarified pages at once, also before the file is confirmed', () => {
    const night = new Night(file).tell({}).near('fever').answer('unwell', 'yes');
    expect(night.calls).toMatchObject([{ level: 'emergency', reasons: ['warning-sign'] }]);
  });

  it('one doubtful sign denied does not answer a list that was never read', () => {
    const night = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract }).unclear().unclear();
    night.near('bleeding').answer('unwell', 'no');
    expect(night.asking).not.toBe('own-tube');
  });

  it('a doubtful sign is cleared up also where the case rests', () => {
    const night = inUse().near('breathing');
    expect(night.said).toEqual(['clarifySign']);
    expect(night.answer('unwell', 'no').said).toEqual(['useStill']);
    expect(inUse().near('breathing').answer('unwell', 'yes').view.disposition).toBe('emergency');
  });

  it('the younger age counts for a fever', () => {
    expect(new Night(file).tell({ born: daysBefore(60) }).signs('fever').view.disposition).toBe('emergency');
  });
});

describe('kinds', () => {
  it.each(['half-out', 'j', 'nose'] as const)('%s told before the file is confirmed pages', (tubeKind) => {
    const night = new Night(file).tell({ tubeKind }).answer('unwell', 'no');
    expect(night.view.disposition).toBe(tubeKind === 'nose' ? 'nurse' : 'go-in');
    expect(night.calls).toMatchObject([{ level: 'urgent' }]);
  });

  it('half out stays half out whatever kind is told, until it is all the way out', () => {
    const night = new Night().tell({ tubeKind: 'half-out' }).answer('unwell', 'no').tell({ tubeKind: 'gj' });
    expect(night.view.facts.tubeKind).toBe('half-out');
    night.hear('outAgain');
    expect(night.asking).toBe('tube-kind');
    expect(night.wait(5).calls[0]?.reasons).toEqual(['half-out', 'came-out-again']);
  });
});

describe('the own tube', () => {
  it('with a long inside part does not undo a tube that is half out', () => {
    const night = new Night().tell({ tubeKind: 'half-out' }).answer('unwell', 'no').tell({ ownTube: 'long-inside' });
    expect(night.view.disposition).toBe('go-in');
  });

  it('that is in use and was not whole after all is asked about before it is used on', () => {
    const night = g().answer('own-tube', 'yes').answer('own-tube-in', 'easy').answer('after-in', 'no');
    night.answer('strips', 'yes').answer('contents', 'yes').answer('ph', { low: 4, high: 4 }).answer('secured', 'yes');
    expect(wrong(night, 'own-tube').asking).toBe('own-tube');
    expect(night.answer('own-tube', 'burst').view.disposition).toBe('go-in');
  });

  it('found burst while it is tried gets the steps of a holder and is never used', () => {
    const night = g().answer('own-tube', 'yes').tell({ ownTube: 'burst' }).answer('kit', 'no');
    expect(night.said).toEqual(['ownTubeAsHolderSteps']);
    expect(night.answer('own-tube-in', 'easy').view.disposition).toBe('go-in');
  });

  it('found burst once it is in is no longer allowed', () => {
    const night = g().answer('own-tube', 'yes').answer('own-tube-in', 'easy').answer('after-in', 'no');
    night.answer('strips', 'yes').answer('contents', 'yes').answer('ph', { low: 4, high: 4 }).answer('secured', 'yes');
    expect(night.view.disposition).toBe('own-tube');
    expect(night.tell({ ownTube: 'burst' }, true).view.disposition).toBe('go-in');
  });

  it('is not put back, burst, where its kind or tract forbids it', () => {
    const told = { firstPlaced: oldTract, ownTube: 'burst', kit: 'no' } as const;
    expect(new Night().tell({ ...told, tubeKind: 'gj' }).answer('unwell', 'no').view.disposition).toBe('go-in');
    const young = { ...told, tubeKind: 'g', firstPlaced: daysBefore(20) } as const;
    expect(new Night().tell(young).answer('unwell', 'no').view.disposition).toBe('go-in');
  });
});

describe('the temporary tube', () => {
  it('is never asked about before its lesson was sent', () => {
    const night = g()
      .answer('own-tube', 'yes')
      .tell({ ownTube: 'burst' })
      .answer('kit', 'yes')
      .answer('weight', { kg: 7 });
    expect(night.said).toEqual(['insertLayOut', 'insertMeasure', 'insertPutIn']);
  });

  it('is not opened by a stray word about the kit where latex or skill forbids it', () => {
    const latex = new Night({ ...file, latexAllergy: true }).tell({ kit: 'yes' }).answer('unwell', 'no');
    latex.answer('confirm', 'yes').answer('own-tube', 'no');
    expect(latex.asking).toBe('kit');
    const notShown = g().answer('own-tube', 'no').answer('kit', 'not-shown').tell({ kit: 'yes' });
    expect(notShown.view.disposition).toBe('go-in');
  });

  it('of a child whose latex allergy is told late goes in', () => {
    const night = inUse().tell({ latexAllergy: true });
    expect(night.view.disposition).toBe('go-in');
    expect(night.calls).toMatchObject([{ reasons: ['latex'] }]);
  });

  it('that may hold latex does not go back in once it is out', () => {
    const night = toContents().tell({ latexAllergy: true }).hear('outAgain');
    expect(night.asking).toBe('kit');
  });

  it('that only holds the stoma open goes in, also with a problem', () => {
    const night = new Night().tell({ tubeKind: 'gj', firstPlaced: oldTract, cameOutAtMs: startMs });
    night.answer('unwell', 'no').answer('kit', 'yes').answer('weight', { kg: 9 }).answer('tube-in', 'easy');
    expect(night.hear('tubeProblem').view.disposition).toBe('go-in');
  });

  it('put in to a length for another weight is held', () => {
    const night = inUse().tell({ weight: { kg: 2.5 } });
    expect(night.view.disposition).toBe('hold');
    expect(night.calls).toMatchObject([{ reasons: ['tube-problem'] }]);
  });

  it('is not used where the file says a tract older than its child', () => {
    const night = new Night({ ...file, born: '2027-03-01' }).tell({ cameOutAtMs: startMs }).answer('unwell', 'no');
    expect(night.answer('confirm', 'yes').view.disposition).toBe('go-in');
  });

  it('is not asked for while the own tube may be on its way back in', () => {
    const night = g()
      .answer('own-tube', 'yes')
      .tell({ weight: { kg: 9 } })
      .signs('fever');
    expect(night.asking).toBe('own-tube-in');
    expect(night.answer('own-tube-in', 'easy').view.disposition).toBe('go-in');
  });

  it('is not put in where the child itself is younger than a tract must be', () => {
    const night = new Night()
      .tell({ born: daysBefore(10) })
      .answer('unwell', 'no')
      .answer('tube-kind', 'g');
    expect(night.answer('first-placed', 'unknown').view.disposition).toBe('go-in');
  });
});

describe('taking back', () => {
  it('how it went in leaves the recheck, the second reading and the hold as they are', () => {
    const waiting = toContents().answer('contents', 'yes').answer('ph', { low: 8, high: 8 });
    expect(wrong(waiting, 'tube-in').answer('tube-in', 'easy').view.disposition).toBe('recheck');
    const held = toContents('hard').answer('contents', 'yes').answer('ph', { low: 4, high: 4 });
    expect(wrong(held, 'tube-in').answer('tube-in', 'easy').view.disposition).toBe('hold');
    const cleared = toContents('hard').answer('contents', 'yes').answer('ph', { low: 4, high: 4 }).take().clear();
    expect(wrong(cleared, 'tube-in').answer('tube-in', 'easy').view.disposition).toBe('hold');
  });

  it('a reading in use takes new contents and a new strip', () => {
    const night = wrong(inUse(), 'ph');
    expect(night.view.disposition).toBe(null);
    expect(night.asking).toBe('contents');
  });

  it('a clearance does not outlive its reading', () => {
    const night = toContents('hard').answer('contents', 'yes').answer('ph', { low: 5, high: 5 }).take().clear();
    night
      .tell({ ph: { low: 7.5, high: 7.5 } }, true)
      .wait(60)
      .answer('after-in', 'no')
      .answer('contents', 'yes');
    expect(night.answer('ph', { low: 5, high: 5 }).view.disposition).toBe('hold');
  });

  it('a plain yes to danger is taken back only by taking back that answer', () => {
    const night = new Night().tell({}).answer('unwell', 'yes');
    expect(wrong(night, 'weight').view.disposition).toBe('emergency');
  });

  it('the file is taken back whole', () => {
    const night = new Night(file).tell({}).answer('unwell', 'no').answer('confirm', 'yes');
    wrong(night, 'confirm').answer('tube-kind', 'g');
    expect(night.asking).toBe('first-placed');
  });
});

describe('rest', () => {
  it('something wrong in use calls a nurse and asks for danger signs before anything else', () => {
    const night = inUse().unclear().answer('unwell', 'yes');
    expect(night.said).toEqual(['askUnwell', 'pageBegan']);
    expect(night.calls).toMatchObject([{ reasons: ['unread'] }]);
    expect(night.answer('unwell', 'no').view).toMatchObject({ disposition: 'use', asking: null });
    expect(inUse().unclear().answer('unwell', 'yes').unclear().unclear().view.disposition).toBe('go-in');
  });

  it('a tube with a problem stays held whatever else is told', () => {
    const night = inUse().hear('tubeProblem').take().tell({ strips: 'yes' });
    expect(night.view.disposition).toBe('hold');
    const unread = toContents()
      .answer('contents', 'yes')
      .unclear()
      .unclear()
      .tell({ weight: { kg: 8 } });
    expect(unread.view.disposition).toBe('hold');
  });

  it('a tube that came out during an emergency is out afterwards', () => {
    const night = wrong(toContents(), 'unwell').answer('unwell', 'yes').hear('outAgain');
    wrong(night, 'unwell').answer('unwell', 'no');
    expect(night.view.tubeIn).toBe(null);
  });

  it('thanks, hours later, wakes nobody for a tube long back in', () => {
    expect(inUse().wait(300).hear('smallTalk').calls).toEqual([]);
  });

  it('a kind corrected twice pages twice', () => {
    const night = inUse().tell({ tubeKind: 'gj' }, true).take();
    night.tell({ tubeKind: 'g' }, true).answer('tube-kind', 'g');
    expect(night.tell({ tubeKind: 'gj' }, true).calls).toMatchObject([{ reasons: ['restricted-kind'] }]);
  });

  it('what cannot wait, told in the first text, is paged and ends in going in instead of a wait', () => {
    const night = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract, cannotWait: 'seizure medicine at 3' });
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['cannot-wait'] }]);
    night.answer('unwell', 'no').answer('own-tube', 'no').answer('kit', 'yes').answer('weight', { kg: 7 });
    night.answer('tube-in', 'easy').answer('after-in', 'no').answer('came-out', startMs).answer('strips', 'no');
    expect(night.view.disposition).toBe('go-in');
  });

  it('an early reading is noted, pages nobody and changes nothing', () => {
    const night = toContents().answer('contents', 'yes').answer('ph', { low: 8, high: 8 });
    night.tell({ ph: { low: 5, high: 5 } });
    expect(night.said).toEqual(['recheckStill']);
    expect(night.callsEver).toEqual([]);
    expect(night.view.disposition).toBe('recheck');
  });

  it('whoever takes a page hears what was added to it since', () => {
    const night = new Night().tell({}).answer('unwell', 'no').answer('tube-kind', 'gj');
    night.text({ type: 'cannotWait', what: 'seizure medicine', told: {}, person: false, corrects: false });
    expect(night.take().effects).toContainEqual({ type: 'tellNurse', level: 'urgent', reason: 'cannot-wait' });
  });

  it('silence after pages nobody took means going in at once', () => {
    const night = g().hear('person').wait(4).hear('smallTalk').wait(4).answer('own-tube', 'no').wait(4);
    night.answer('kit', 'yes').wait(9);
    expect(night.saidEver).toContain('pageUnanswered');
    night.answer('weight', { kg: 7 }).wait(30);
    expect(night.view.disposition).toBe('go-in');
  });

  it('every silence keeps a timer', () => {
    expect(new Night().tell({}).wait(12).take().timers).not.toEqual([]);
  });

  it('a person asked for beside an answer of what follows is called', () => {
    const night = inUse().wait(180).answer('first-feed', 'yes', { person: true });
    expect(night.calls).toMatchObject([{ reasons: ['person-wanted'] }]);
  });
});
