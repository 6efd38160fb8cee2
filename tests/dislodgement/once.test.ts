/** What is done once: a page for a reason that stands, what follows a permission, and what is said of it. */
import { describe, expect, it } from 'vitest';
import type { QuestionKey } from '#machines/facts.ts';
import { Night, oldTract, startMs, toContents, toInsertion } from './night.ts';

const minuteMs = 60_000;
const onFile = { child: null, born: null, tubeKind: 'g', firstPlaced: null, weightKg: null, weighedOn: null } as const;
const ph = (high: number) => ({ low: high, high });
const read = (how: 'easy' | 'hard' = 'easy') => toContents(how).answer('contents', 'yes').answer('ph', ph(5));
const inUse = () => read().answer('secured', 'yes');
const wrong = (night: Night, key: QuestionKey | null) =>
  night.text({ type: 'correct', key, told: {}, person: false, corrects: true });
const follows = (night: Night) => night.timers.filter(({ machine }) => machine === 'aftercare');
const prefaces = (night: Night) => night.effects.flatMap((effect) => (effect.type === 'say' ? effect.say.preface : []));

describe('a nurse is called once for a reason that stands', () => {
  it.each([
    ['a restricted kind', () => new Night().tell({ tubeKind: 'gj' }).answer('unwell', 'no'), 'restricted-kind'],
    ['a problem with the tube', () => inUse().hear('tubeProblem'), 'tube-problem'],
  ] as const)('%s', (_name, make, reason) => {
    const night = make();
    expect(night.raised).toContain(reason);
    expect(night.hear('media').raised).toEqual([]);
    expect(night.hear('tubeProblem').raised).toEqual([]);
  });

  it('an unreadable text in the wait for the recheck', () => {
    const night = toContents().answer('contents', 'yes').answer('ph', ph(8)).unclear();
    expect(night.calls).toHaveLength(1);
    expect(night.unclear().calls).toEqual([]);
  });

  it('a reading that passed after a feed, before it is used; one that passed by itself, never', () => {
    const fed = toContents().answer('contents', 'yes').answer('ph', ph(6.5)).answer('fed-lately', 'yes');
    expect(fed.answer('looks', 'yes').raised).toEqual(['after-feed-reading']);
    expect(fed.asking).toBe('secured');
    expect(fed.hear('media').raised).toEqual([]);
    expect(read().raised).toEqual([]);
  });

  it('a kind before the danger signs were answered calls nobody yet, whatever warning sign is told with it', () => {
    const first = new Night({ ...onFile, weightKg: 9 }).text({
      type: 'signs',
      sure: ['fever'],
      near: [],
      told: { tubeKind: 'half-out' },
      person: false,
      corrects: false,
    });
    expect(new Set(first.raised)).toEqual(new Set(['warning-sign']));
  });
});

describe('a person wanted beside a step to be heard again', () => {
  it.each([1, 2, 3] as const)('is said once, with step %d', (step) => {
    const night = toInsertion().text({ type: 'repeat', step, told: {}, person: true, corrects: false });
    expect(prefaces(night)).toEqual([{ key: 'nurseCalled' }]);
    expect(prefaces(night.text({ type: 'repeat', step, told: {}, person: false, corrects: false }))).toEqual([]);
  });
});

describe('what follows', () => {
  it('counts from the permission, not from the hold before it', () => {
    const night = read('hard').take().wait(20).clear().wait(10).answer('secured', 'yes');
    expect(night.view).toMatchObject({ disposition: 'use', temporarySinceMs: startMs + 30 * minuteMs });
  });

  it('is not begun anew where the permission stands again, whichever tube it is', () => {
    const own = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs }).answer('unwell', 'no');
    own.answer('own-tube', 'yes').answer('own-tube-in', 'easy').answer('after-in', 'no').answer('strips', 'yes');
    own.answer('contents', 'yes').answer('ph', ph(5)).answer('secured', 'yes');
    for (const night of [own, inUse()]) {
      const due = Math.min(...follows(night).map(({ dueMs }) => dueMs));
      night.wait(10).unclear().answer('unwell', 'no');
      expect(Math.min(...follows(night).map(({ dueMs }) => dueMs))).toBe(due);
    }
  });

  it('an emergency is asked about on the way whatever is texted, and not once the danger was taken back', () => {
    const danger = wrong(toContents(), 'unwell').answer('unwell', 'yes');
    expect(follows(danger.hear('smallTalk')).map(({ dueMs }) => dueMs)).toEqual([startMs + 60 * minuteMs]);
    wrong(danger, 'unwell').answer('unwell', 'no');
    expect(follows(danger)).toEqual([]);
  });
});

describe('a tube that went in easily', () => {
  it.each([
    ['in use', inUse],
    [
      'held for another reason',
      () => toInsertion().answer('tube-in', 'easy').answer('after-in', 'no').answer('strips', 'no'),
    ],
  ] as const)('%s is not hard because it came to rest', (_name, make) => {
    const night = wrong(make(), 'tube-in').answer('tube-in', 'easy');
    expect(night.view.facts.insertedHow).toBe('easy');
  });
});

describe('a sign made clear', () => {
  it('is named in the emergency', () => {
    const night = toContents().near('breathing').answer('unwell', 'yes');
    expect(night.view).toMatchObject({ disposition: 'emergency', dangerSigns: ['breathing'] });
  });
});

describe('a page that nobody took', () => {
  it('no longer counts once somebody took one', () => {
    const night = toContents().hear('person').wait(14).hear('smallTalk').wait(6);
    expect(night.saidEver).toContain('pageUnanswered');
    night.take().hear('smallTalk').wait(30);
    expect(night.raised).toContain('silence');
    expect(night.view.disposition).toBeNull();
  });
});

describe('the file to be confirmed', () => {
  it('says what is known, and nothing of a tract that is not', () => {
    const night = new Night({ ...onFile, weightKg: 9 }).tell({ firstPlaced: 'unknown' }).answer('unwell', 'no');
    expect(night.effects).toContainEqual(
      expect.objectContaining({
        say: expect.objectContaining({
          key: 'confirmFile',
          params: { child: null, tubeKind: 'g', firstPlaced: null, weight: { kg: 9 } },
        }),
      }),
    );
  });
});
