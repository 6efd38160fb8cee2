/** What of a rehearsal may be real, what it opens then, and what is left of a step that is only played. */
import { describe, expect, it } from 'vitest';
import type { CaseStep } from '#machines/case.ts';
import { openCase } from '#machines/case.ts';
import type { Effect } from '#machines/effects.ts';
import type { TextEvent, Unstamped } from '#machines/events.ts';
import { pageReasons } from '#machines/facts.ts';
import { asReal, mayBeReal, rehearsalQuietMs, rehearsed } from '#machines/rehearsal.ts';
import { Running } from '#machines/running.ts';
import { viewOf } from '#machines/view.ts';
import { protocolWith, startMs } from '#tests/dislodgement/night.ts';

const beside = { told: {}, person: false, corrects: false } as const;
const thanks: Unstamped<TextEvent> = { type: 'smallTalk', ...beside };
const afresh: Unstamped<TextEvent> = { type: 'help', told: { kit: 'yes' }, person: true, corrects: true };
const heardAfresh = { told: { kit: 'yes' }, person: true, corrects: true } as const;

describe('a text may be real', () => {
  it('by what it is: a sign, a tube that is out again, a person wanted', () => {
    const plain = { raised: [], disposition: null } as const;
    expect(mayBeReal({ type: 'signs', sure: [], near: [], ...beside }, plain)).toBe(true);
    expect(mayBeReal({ type: 'outAgain', ...beside }, plain)).toBe(true);
    expect(mayBeReal({ ...thanks, person: true }, plain)).toBe(true);
    expect(mayBeReal(thanks, plain)).toBe(false);
  });

  it('by what it came to: an emergency, or a page that nobody plays', () => {
    expect(mayBeReal(thanks, { raised: [], disposition: 'emergency' })).toBe(true);
    expect(mayBeReal(thanks, { raised: [], disposition: 'go-in' })).toBe(false);
    const real = pageReasons.filter((reason) => mayBeReal(thanks, { raised: ['silence', reason], disposition: null }));
    expect(new Set(real)).toEqual(
      new Set(['danger-sign', 'warning-sign', 'unwell-unread', 'not-well-after', 'came-out-again', 'person-wanted']),
    );
  });
});

describe('the real case is opened', () => {
  it('with the sign as it was heard, and what a first text would tell', () => {
    const event = { type: 'signs', sure: ['limp'], near: [], ...beside, told: { strips: 'no' } } as const;
    expect(asReal(event, { raised: [] }, afresh)).toEqual({ ...event, told: { kit: 'yes' } });
  });

  it('with a danger where an answer came to a page for a sign', () => {
    const danger = { type: 'answer.unwell', value: 'yes', ...heardAfresh };
    const event = { type: 'answer.first-feed', value: 'no', ...beside } as const;
    const opening = pageReasons.filter((reason) => {
      const opened = asReal(event, { raised: ['silence', reason] }, afresh);
      if (opened.type === 'answer.unwell') expect(opened).toEqual(danger);
      return opened.type === 'answer.unwell';
    });
    expect(new Set(opening)).toEqual(new Set(['danger-sign', 'warning-sign', 'not-well-after']));
  });

  it('else as a first text is heard: a sign or a wish for a person stands, anything else only tells', () => {
    const raised = { raised: ['danger-sign'] } as const;
    expect(asReal(thanks, raised, afresh)).toEqual({ type: 'told', ...heardAfresh });
    const sign = { ...beside, type: 'signs', sure: [], near: ['pain'] } as const;
    const person = { ...beside, type: 'person' } as const;
    expect(asReal(thanks, raised, sign)).toEqual(sign);
    expect(asReal(thanks, raised, person)).toEqual(person);
  });
});

describe('a step that is played', () => {
  const protocol = protocolWith();
  const before = openCase(protocol, null, startMs);
  const played = (...effects: readonly Effect[]) => {
    const after = { conversation: 'after', paging: 'after', aftercare: 'after' };
    const step: CaseStep = { snapshots: after, effects, view: viewOf(new Running(protocol, before)), raised: [] };
    return rehearsed(before, step);
  };
  const timer = (machine: 'conversation' | 'paging' | 'aftercare') =>
    [
      { type: 'startTimer', machine, id: 'a', what: 'silence', delayMs: 5, event: 'xstate.after.quiet.a' },
      { type: 'cancelTimer', machine, id: 'a' },
    ] as const;

  it('moves the conversation alone', () => {
    expect(played().snapshots).toEqual({ ...before, conversation: 'after' });
    expect(played(...timer('conversation'), ...timer('paging'), ...timer('aftercare')).effects).toEqual([
      ...timer('conversation'),
    ]);
  });

  it('calls and tells nobody, and closes nothing', () => {
    const effects = played(
      { type: 'callNurse', place: 0, level: 'urgent', reasons: ['silence'], by: ['text'] },
      { type: 'tellNurse', level: 'urgent', reason: 'silence' },
      { type: 'tellStands', disposition: 'use' },
      { type: 'closeCase' },
    ).effects;
    expect(effects).toEqual([]);
  });

  it('says what it says, but for that a nurse is called', () => {
    const preface = [{ key: 'mediaKept' }, { key: 'goesToNurse' }, { key: 'nurseCalled' }] as const;
    const says = played(
      { type: 'say', by: 'text', say: { key: 'askStrips', params: {}, preface } },
      { type: 'say', by: 'call', say: { key: 'pageBegan', params: { mostMinutes: 20 }, preface } },
    ).effects;
    expect(says).toEqual([
      { type: 'say', by: 'text', say: { key: 'askStrips', params: {}, preface: [{ key: 'mediaKept' }] } },
      { type: 'say', by: 'call', say: { key: 'rehearsalPage', params: {}, preface: [{ key: 'mediaKept' }] } },
    ]);
  });

  it('is over after twenty minutes without a text', () => {
    expect(rehearsalQuietMs / 60_000).toBe(20);
  });
});
