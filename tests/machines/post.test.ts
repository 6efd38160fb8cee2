/** Where a text of one case goes: to the question it answers, and what it tells or wants beside that to whom it concerns. */
import { describe, expect, it } from 'vitest';
import { openCase } from '#machines/case.ts';
import { paging } from '#machines/paging/machine.ts';
import { type Post, step } from '#machines/post.ts';
import { Running } from '#machines/running.ts';
import { stepped } from '#machines/withoutActor.ts';
import { Night, protocolWith, startMs, toContents } from '#tests/dislodgement/night.ts';

const ph = (high: number) => ({ low: high, high });
const secured = () => toContents().answer('contents', 'yes').answer('ph', ph(5));
const inUse = () => secured().answer('secured', 'yes');
const held = () => toContents('hard').answer('contents', 'yes').answer('ph', ph(5));
const allergy = { told: { latexAllergy: true }, person: false, corrects: false } as const;
const wanted = { told: {}, person: true, corrects: false } as const;

describe('an answer to what is asked after a night', () => {
  it('tells its fact to the conversation, and calls nobody for it who was not asked for', () => {
    const night = inUse().wait(180).answer('first-feed', 'yes', allergy);
    expect(night.view.latexAllergy).toBe(true);
    expect(night.raised).not.toContain('person-wanted');
  });

  it('tells it also where nothing asks any more', () => {
    for (const key of ['first-feed', 'next-day', 'clinic', 'arrived'] as const) {
      const night = toContents().text({ type: `answer.${key}`, value: 'yes', ...allergy });
      expect(night.view.latexAllergy, key).toBe(true);
    }
  });

  it('is answered where nothing awaits it', () => {
    for (const key of ['first-feed', 'next-day', 'clinic', 'arrived'] as const) {
      const night = held().text({ type: `answer.${key}`, value: 'yes', told: {}, person: false, corrects: false });
      expect(night.said, key).toEqual(['holdStill']);
    }
  });

  it('with a person asked for begins a climb that goes on', () => {
    const night = inUse().wait(180).answer('first-feed', 'yes', wanted);
    expect(night.calls).toMatchObject([{ place: 0, level: 'urgent', reasons: ['person-wanted'] }]);
    expect(night.wait(20).calls.map(({ place }) => place)).toEqual([0, 1, 2]);
  });

  it('with a person asked for calls also where a nurse has the case: it is the family that asks', () => {
    const night = secured().hear('person').take().answer('secured', 'yes').wait(180);
    expect(night.answer('first-feed', 'yes', wanted).calls).toMatchObject([{ reasons: ['person-wanted'] }]);
  });
});

it('what cannot be read is for the question of the conversation where both ask', () => {
  const night = inUse().wait(180).near('bleeding').unclear();
  expect(night.said).toEqual(['clarifySign']);
  expect(night.asking).toBe('unwell');
});

describe('what a nurse corrects', () => {
  it('calls nobody for what her own text brought about where she has the case, and calls her where she has not', () => {
    const hers = held().take().corrects({ tubeKind: 'gj' }, true);
    expect(hers.raised).toContain('restricted-kind');
    expect(hers.effects.filter(({ type }) => type === 'callNurse' || type === 'tellNurse')).toEqual([]);
    expect(held().take().corrects({ tubeKind: 'gj' }).calls).not.toEqual([]);
  });

  it('and what a family texts at rest is answered, and nothing else', () => {
    const night = inUse().hear('person').take();
    const still = { type: 'say', by: 'text', say: { key: 'useStill', params: { tube: 'temporary' }, preface: [] } };
    expect(night.hear('smallTalk').effects).toEqual([still]);
    expect(night.corrects({ tubeKind: 'g' }, true).effects).toEqual([still]);
  });
});

describe('a machine that ends in error', () => {
  const machines = ['conversation', 'paging', 'aftercare'] as const;
  it.each(machines)('%s: the step throws', (machine) => {
    const protocol = protocolWith();
    const running = new Running(protocol, openCase(protocol, null, startMs));
    // No event of a case is one: it is what XState sends for a machine's own child that failed.
    const event = { type: 'xstate.error.actor.child', error: new Error('gone'), at: startMs, clinicOpen: false };
    expect(() => step(running, { machine, event } as unknown as Post)).toThrow('gone');
  });
});

it('a machine that has nothing to hear asks for nothing', () => {
  const protocol = protocolWith();
  const before = new Running(protocol, openCase(protocol, null, startMs)).paging;
  const [after, asked] = stepped(paging, before, { type: 'touch', at: startMs, clinicOpen: false });
  expect(asked).toEqual([]);
  expect(after.value).toBe('idle');
});

it('a tube of its own has no stay that ends', () => {
  const night = new Night().tell({ tubeKind: 'g', firstPlaced: { earliest: null, latest: '2024-03-01' } });
  night.answer('unwell', 'no').answer('own-tube', 'yes').answer('own-tube-in', 'easy').answer('after-in', 'no');
  night.answer('came-out', startMs).answer('strips', 'yes').answer('contents', 'yes').answer('ph', ph(5));
  expect(night.answer('secured', 'yes').view.states.aftercare).toContain('aftercare.inUse.stay.unlimited');
});
