/** The judge of the corpus is itself judged: a dangerous misreading must never pass as exact or asked again. */
import { describe, expect, it } from 'vitest';
import type { Open, Reading } from '#src/reading/read.ts';
import type { Entry } from './entries.ts';
import { type Outcome, score } from './score.ts';

const asked: Open = {
  asking: 'unwell',
  clarifying: null,
  bareWeight: null,
  answered: null,
  caseOpen: true,
  tubeIn: false,
  nowMs: Date.parse('2027-03-06T02:10:00-05:00'),
  timeZone: 'America/New_York',
  language: 'en',
};
const heard = { told: {}, person: false, corrects: false };
const exactly = (expected: Entry['expect']): Entry => ({
  text: '',
  label: 'exact',
  ...(expected && { expect: expected }),
});
const reask: Entry = { text: '', label: 'must-reask' };

function outcome(entry: Entry, event: Reading['event'], open: Partial<Open> = {}): Outcome {
  return score(
    entry,
    { ...asked, ...open },
    { event, about: 'tube', wantsLanguage: null, writtenIn: null, saysWho: false, rehearsal: null },
  );
}

describe('score', () => {
  it('takes any answer to a hedge as wrong, and asking again as right', () => {
    expect(outcome(reask, { ...heard, type: 'answer.unwell', value: 'no' })).toBe('wrong');
    expect(outcome(reask, { ...heard, type: 'unclear', why: 'unsure' })).toBe('re-asked');
    expect(outcome(reask, { ...heard, type: 'signs', sure: [], near: ['fever'] })).toBe('re-asked');
    expect(outcome(reask, { ...heard, type: 'signs', sure: ['fever'], near: [] })).toBe('wrong');
  });

  it('takes a danger sign read as an answer as wrong', () => {
    const danger = exactly({ signs: { sure: ['breathing'], near: [] } });
    expect(outcome(danger, { ...heard, type: 'signs', sure: ['breathing'], near: [] })).toBe('exact');
    expect(outcome(danger, { ...heard, type: 'signs', sure: [], near: ['breathing'] })).toBe('re-asked');
    expect(outcome(danger, { ...heard, type: 'answer.unwell', value: 'no' })).toBe('wrong');
    expect(outcome(danger, { ...heard, type: 'unclear', why: 'unreadable' }, { asking: 'kit' })).toBe('wrong');
  });

  it('takes a false alarm as wrong', () => {
    const event: Reading['event'] = { ...heard, type: 'signs', sure: ['bleeding'], near: [] };
    expect(outcome(exactly({ noSure: true }), event)).toBe('wrong');
    expect(outcome(exactly({ value: ['no'] }), event)).toBe('wrong');
    expect(outcome(exactly({ signs: { sure: [], near: ['bleeding'] } }), event)).toBe('wrong');
  });

  it('takes a small sign read as none as wrong', () => {
    const small = exactly({ signs: { sure: [], near: ['bleeding'] } });
    expect(outcome(small, { ...heard, type: 'answer.unwell', value: 'no' })).toBe('wrong');
  });

  it('judges ranges by the end that matters', () => {
    const ph = (low: number, high: number): Reading['event'] => ({ ...heard, type: 'answer.ph', value: { low, high } });
    expect(outcome(exactly({ value: [{ low: 5, high: 6 }] }), ph(5, 5), { asking: 'ph' })).toBe('wrong');
    expect(outcome(exactly({ value: [{ highAtLeast: 6 }] }), ph(5.5, 6), { asking: 'ph' })).toBe('exact');
    const placed = exactly({ value: [{ atLeastLatest: '2027-01-12', latestAtMost: '2027-02-06' }] });
    const range = (latest: string): Reading['event'] => ({
      ...heard,
      type: 'answer.first-placed',
      value: { earliest: null, latest },
    });
    expect(outcome(placed, range('2027-01-09'), { asking: 'first-placed' })).toBe('wrong');
    expect(outcome(placed, range('2027-01-20'), { asking: 'first-placed' })).toBe('exact');
  });

  it('judges facts told beside: misread or made up is wrong, missed is asked again', () => {
    const withWeight = exactly({ value: ['yes'], told: { weight: { kg: 8 } } });
    const yes = (kg: number | null): Reading['event'] => ({
      type: 'answer.confirm',
      value: 'yes',
      told: kg === null ? {} : { weight: { kg } },
      person: false,
      corrects: false,
    });
    expect(outcome(withWeight, yes(8), { asking: 'confirm' })).toBe('exact');
    expect(outcome(withWeight, yes(7), { asking: 'confirm' })).toBe('wrong');
    expect(outcome(withWeight, yes(null), { asking: 'confirm' })).toBe('re-asked');
    expect(outcome(exactly({ value: ['yes'] }), yes(8), { asking: 'confirm' })).toBe('wrong');
  });

  it('takes what cannot wait in whatever words, where the text tells of it', () => {
    const urgent = (label: Entry['expect']): Entry => exactly({ value: ['no'], ...label });
    const told: Reading['event'] = {
      type: 'answer.unwell',
      value: 'no',
      told: { cannotWait: 'seizure medicine at three' },
      person: false,
      corrects: false,
    };
    expect(outcome(urgent({ told: { cannotWait: true } }), told)).toBe('exact');
    expect(outcome(urgent({}), told)).toBe('wrong');
  });
});
