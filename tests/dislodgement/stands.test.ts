/** What stands although another text comes: a wait, a hold, an emergency, a doubt; and what is said when no nurse answers. */
import { describe, expect, it } from 'vitest';
import type { QuestionKey } from '#machines/facts.ts';
import { Night, oldTract, startMs, toContents } from './night.ts';

const minuteMs = 60_000;
const ph = (high: number) => ({ low: high, high });
const read = (high: number) => toContents().answer('contents', 'yes').answer('ph', ph(high));
const wrong = (night: Night, key: QuestionKey | null) =>
  night.text({ type: 'correct', key, told: {}, person: false, corrects: true });
const plainYes = (night: Night) => wrong(night, 'unwell').answer('unwell', 'yes');
const prefaces = (night: Night) => night.effects.flatMap((effect) => (effect.type === 'say' ? effect.say.preface : []));
const paramsOf = (night: Night, key: string) =>
  night.all.flatMap((effect) => (effect.type === 'say' && effect.say.key === key ? [effect.say.params] : []));
const ownTube = () => {
  const night = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs }).answer('unwell', 'no');
  night.answer('own-tube', 'yes').answer('own-tube-in', 'easy').answer('after-in', 'no').answer('strips', 'yes');
  return night.answer('contents', 'yes').answer('ph', ph(5)).answer('secured', 'yes');
};

describe('the wait for the recheck', () => {
  it('is not started again by a text in between', () => {
    const night = read(8).wait(40).hear('smallTalk');
    expect(night.timers.map(({ dueMs }) => dueMs)).toEqual([startMs + 60 * minuteMs]);
    expect(paramsOf(night, 'recheckStill')).toEqual([{ dueAtMs: startMs + 60 * minuteMs }]);
    expect(night.wait(20).asking).toBe('after-in');
  });
});

describe('a second high reading while the clinic is open', () => {
  it('is held, and the clinic arranges what comes next', () => {
    const night = read(8).wait(60);
    night.clinicOpen = true;
    night.answer('after-in', 'no').answer('contents', 'yes').answer('ph', ph(8));
    expect(paramsOf(night, 'hold')).toEqual([{ reason: 'second-high', clinicArranges: true }]);
  });
});

describe('securing', () => {
  it('"no" once is asked again in few words, twice is held and a nurse called', () => {
    const night = read(5).answer('secured', 'no');
    expect(night.said).toEqual(['secureAgain']);
    night.answer('secured', 'no');
    expect(night.view.disposition).toBe('hold');
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['not-secured'] }]);
  });

  it('a part of the securing asks for all of it, and two more parts are for a nurse', () => {
    const night = toContents().answer('contents', 'yes').answer('ph', ph(5)).answer('secured', 'part');
    expect(night.said).toEqual(['secureAgain']);
    expect(night.branch().answer('secured', 'yes').view.disposition).toBe('use');
    expect(night.answer('secured', 'part').said).toEqual(['secureAgain']);
    expect(night.answer('secured', 'part').said).toContain('hold');
    expect(night.raised).toContain('unread');
  });
});

const inUse = () => read(5).answer('secured', 'yes');

describe('a tube in use', () => {
  it.each([
    ['own', ownTube],
    ['temporary', inUse],
  ] as const)('%s: is said to be the one that may be used, and to a later text that it still may', (tube, make) => {
    const night = make();
    expect(paramsOf(night, 'use')).toEqual([{ tube, stayDays: night.protocol.clinical.stayDays }]);
    expect(paramsOf(night.hear('smallTalk'), 'useStill')).toEqual([{ tube }]);
  });

  it.each([
    ['own', ownTube],
    ['temporary', inUse],
  ] as const)(
    '%s: a text that cannot be read is asked about, and a yes asks for the danger signs again',
    (_tube, make) => {
      const night = make();
      const allowed = night.view.disposition;
      night.unclear();
      expect(night.said).toEqual(['askTrouble']);
      expect(night.view).toMatchObject({ asking: 'unwell', clarifying: 'trouble', disposition: allowed });
      expect(night.raised).toEqual([]);
      night.answer('unwell', 'yes');
      expect(night.view).toMatchObject({ asking: 'unwell', clarifying: null, disposition: null });
      expect(night.raised).toEqual(['unread']);
      expect(prefaces(night)).toContainEqual({ key: 'nurseCalled' });
    },
  );

  it.each([
    ['a no', (night: Night) => night.answer('unwell', 'no'), []],
    ['thanks', (night: Night) => night.hear('smallTalk'), []],
    ['what cannot be read either', (night: Night) => night.unclear(), ['unread-in-use']],
    ['silence all night', (night: Night) => night.wait(100), ['unread-in-use']],
  ] as const)('after it %s leaves the tube in use', (_what, then, raised) => {
    const night = then(inUse().unclear());
    expect(night.view).toMatchObject({ asking: null, disposition: 'use' });
    expect(night.raised).toEqual(raised);
    expect(night.calls.every(({ level }) => level === 'routine')).toBe(true);
    expect(night.saidEver).not.toContain('goIn');
  });

  it('a danger told there is one', () => {
    expect(inUse().unclear().signs('limp').view.disposition).toBe('emergency');
    expect(inUse().unclear().signs('leak').view.disposition).toBe('go-in');
  });

  it('what such a text tells, and the person it wants, are heard', () => {
    const beside = { told: { latexAllergy: true }, person: true, corrects: false } as const;
    const night = inUse().text({ type: 'unclear', why: 'unreadable', ...beside });
    expect(night.view.latexAllergy).toBe(true);
    expect(new Set(night.raised)).toEqual(new Set(['person-wanted']));
  });
});

describe('a tube through the nose', () => {
  it('is for the nurse, and a later text hears that it still is', () => {
    const night = new Night().tell({ tubeKind: 'nose' }).answer('unwell', 'no');
    expect(night.said).toContain('nurse');
    expect(night.hear('smallTalk').said).toEqual(['nurseStill']);
  });
});

describe('a warning sign', () => {
  it('told anew once the tube came out again calls anew', () => {
    const night = toContents().signs('fever');
    expect(night.raised).toContain('warning-sign');
    expect(night.hear('outAgain').signs('fever').raised).toContain('warning-sign');
  });
});

describe('a doubtful sign', () => {
  it('is still asked about after a sign that means nothing here', () => {
    const night = new Night().hear('told').near('bleeding').near('leak');
    expect(night.view).toMatchObject({ asking: 'unwell', clarifying: 'sign' });
    expect(paramsOf(night, 'clarifySign').at(-1)).toMatchObject({ sign: 'bleeding' });
  });
});

describe('an emergency', () => {
  it('told by a plain yes is taken back also where the text does not say which answer was wrong', () => {
    expect(wrong(plainYes(toContents()), null).asking).toBe('unwell');
    expect(wrong(toContents().signs('breathing'), null).view.disposition).toBe('emergency');
  });

  it('does not hide that something is wrong with the tube: it is held when the danger is taken back', () => {
    const night = plainYes(read(5)).hear('tubeProblem');
    expect(night.view.disposition).toBe('emergency');
    expect(night.said).toEqual(['emergencyStill']);
    expect(night.raised).toEqual(['tube-problem']);
    expect(wrong(night, 'unwell').answer('unwell', 'no').view.disposition).toBe('hold');
  });
});

describe('when no nurse answers', () => {
  it('a family that is being asked carries on, one that waits or is in danger stays as it is', () => {
    const carriesOn = toContents().hear('person').wait(5).unclear().wait(10).hear('smallTalk').wait(5);
    expect(paramsOf(carriesOn, 'pageUnanswered')).toEqual([{ advice: 'carry-on' }]);
    expect(paramsOf(read(8).hear('person').wait(20), 'pageUnanswered')).toEqual([{ advice: 'stay' }]);
    expect(paramsOf(toContents().signs('breathing').wait(20), 'pageUnanswered')).toEqual([{ advice: 'stay' }]);
  });

  it('one that waited for its recheck is sent in where it would have to wait for her again', () => {
    const night = read(8).hear('person').wait(60);
    night.clinicOpen = true;
    night.answer('after-in', 'no').answer('contents', 'yes').answer('ph', ph(8));
    expect(night.view.disposition).toBe('go-in');
    expect(paramsOf(night, 'goIn')).toMatchObject([{ reason: 'nobody-answered' }]);
  });

  it('a family that waits for her goes in: held, or with a tube through the nose', () => {
    const nose = new Night().tell({ tubeKind: 'nose' }).answer('unwell', 'no');
    expect(nose.view.disposition).toBe('nurse');
    expect(nose.wait(20).view.disposition).toBe('go-in');
  });
});
