/** Every gate alone: each single fact that shuts it, and what is said of a tube that may only hold the stoma open. */
import { describe, expect, it } from 'vitest';
import { type Context, freshContext, justPlaced } from '#machines/dislodgement/context.ts';
import { duePages } from '#machines/dislodgement/duePages.ts';
import {
  clearable,
  holderReason,
  inside,
  lastTry,
  mayBeUsed,
  ownTubeUnderWay,
  readingPassed,
  tract,
  tractTooYoung,
} from '#machines/dislodgement/gates.ts';
import { daysBefore, oldTract, protocolWith, startMs } from './night.ts';

const now = { at: startMs };
const hourMs = 3_600_000;
const tube = justPlaced({ tube: 'temporary', how: 'easy', holderOnly: false, atMs: startMs, lengthBand: 'over-3' });
const fresh = freshContext({ protocol: protocolWith(), file: null, openedOn: '2027-03-06' });
const knowing = (facts: Partial<Context['facts']>, rest: Partial<Context> = {}): Context => ({
  ...fresh,
  ...rest,
  facts: { ...fresh.facts, ...facts },
});
/** A G tube in an old tract, in, of a child that is well. */
const usable = (rest: Partial<Context> = {}, facts: Partial<Context['facts']> = {}) =>
  knowing({ tubeKind: 'g', firstPlaced: oldTract, ...facts }, { unwell: 'well', placed: tube, ...rest });

describe('no tract is older than its child', () => {
  it.each([
    ['old', oldTract, 10, 'too-young'],
    ['old', oldTract, 20, 'nearly-too-young'],
    ['old', oldTract, 40, 'young'],
    ['old', oldTract, 2000, 'usable'],
    ['of 40 days', daysBefore(40), 2000, 'young'],
    ['of 40 days', daysBefore(40), 20, 'nearly-too-young'],
    ['of 20 days', daysBefore(20), 40, 'nearly-too-young'],
    ['of 10 days', daysBefore(10), 20, 'too-young'],
    ['of unknown age', 'unknown', 40, 'young'],
    ['of unknown age', 'unknown', 2000, 'unknown'],
    ['not asked about yet', null, 10, 'unknown'],
  ] as const)('%s, %j, in a child of %i days: %s', (_name, firstPlaced, ageDays, verdict) => {
    expect(tract(knowing({ firstPlaced, born: daysBefore(ageDays) }), now)).toBe(verdict);
  });

  it('a child of at least an age proves nothing of the tract', () => {
    const born = { earliest: null, latest: daysBefore(40).latest };
    expect(tract(knowing({ firstPlaced: oldTract, born }), now)).toBe('usable');
  });
});

describe('a tract too young for anything', () => {
  it.each([
    ['unknown', { kg: 2.9 }, true],
    ['unknown', { kg: 9 }, false],
    ['unknown', null, false],
    ['unknown', 'unknown', false],
    [null, { kg: 2.9 }, false], // not asked about yet
    [daysBefore(20), { kg: 2.9 }, false],
    [daysBefore(13), { kg: 9 }, true],
  ] as const)('first placed %j, weight %j: %s', (firstPlaced, weight, tooYoung) => {
    expect(tractTooYoung(knowing({ firstPlaced, weight }), now)).toBe(tooYoung);
  });
});

describe('the last try', () => {
  it.each([
    ['of two is the second', {}, {}, [false, true]],
    ['is the first in a tract that is nearly too young', { firstPlaced: daysBefore(20) }, {}, [true, true]],
    ['is the first once it came out again', {}, { cameOutAgain: true }, [true, true]],
  ] as const)('%s', (_name, facts, rest, last) => {
    const tried = (failedTries: number) =>
      knowing({ tubeKind: 'g', firstPlaced: oldTract, ...facts, cameOutAtMs: startMs }, { ...rest, failedTries });
    expect([lastTry(tried(0), now), lastTry(tried(1), now)]).toEqual(last);
  });
});

describe('the own tube may be on its way in', () => {
  const sent = (facts: Partial<Context['facts']>, rest: Partial<Context> = {}) =>
    knowing({ tubeKind: 'g', firstPlaced: oldTract, ownTube: 'yes', ...facts }, { stepsSent: 'own', ...rest });
  it.each([
    ['once its steps were sent', sent({}), true],
    ['also with a warning sign', sent({}, { warning: true }), true],
    ['not as another kind', sent({ tubeKind: 'gj' }), false],
    ['not in a young tract', sent({ firstPlaced: daysBefore(40) }), false],
    ['not where it is burst', sent({ ownTube: 'burst' }), false],
    ['not before its steps', sent({}, { stepsSent: null }), false],
    ['not once it was tried', sent({}, { ownTried: true }), false],
  ])('%s: %s', (_name, context, underWay) => {
    expect(ownTubeUnderWay(context, now)).toBe(underWay);
  });
});

describe('what is in the stoma', () => {
  it.each([
    ['g', 'nothing'],
    ['half-out', 'half-out'],
    ['nose', 'nose'],
  ] as const)('of a tube of kind %s that nobody put in: %s', (tubeKind, what) => {
    expect(inside(knowing({ tubeKind }))).toBe(what);
  });
});

describe('a tube may be used', () => {
  it('where nothing speaks against it', () => {
    expect(mayBeUsed(usable(), now)).toBe(true);
    expect(mayBeUsed(usable({ placed: null }), now)).toBe(true);
  });

  it.each([
    ['of another kind', usable({}, { tubeKind: 'gj' })],
    ['of unknown kind', usable({}, { tubeKind: 'unknown' })],
    ['in a young tract', usable({}, { firstPlaced: daysBefore(56) })],
    ['in a tract of unknown age', usable({}, { firstPlaced: 'unknown' })],
    ['with a warning sign', usable({ warning: true })],
    ['once a nurse sent the child in', usable({ sentIn: 'now' })],
    ['once a nurse sent the child in and the stoma is held open', usable({ sentIn: 'held-open' })],
    ['before the danger signs were answered', usable({ unwell: 'unasked' })],
    ['while they could not be read', usable({ unwell: 'unread' })],
    ['in danger', usable({ danger: { named: [] } })],
    ['that only holds the stoma open', usable({ placed: { ...tube, holderOnly: true } })],
    ['that may be of latex', usable({ placed: { ...tube, maybeLatex: true } })],
  ])('never %s', (_name, context) => {
    expect(mayBeUsed(context, now)).toBe(false);
  });
});

describe('why a tube that only holds the stoma open is seen', () => {
  it.each([
    ['warning', usable({ warning: true, sentIn: 'now' }, { tubeKind: 'gj' })],
    ['nurse', usable({ sentIn: 'now', placed: { ...tube, maybeLatex: true } })],
    ['nurse', usable({ sentIn: 'held-open' })],
    ['latex', usable({ placed: { ...tube, maybeLatex: true } }, { tubeKind: 'gj' })],
    ['kind', usable({ placed: null }, { tubeKind: 'gj', firstPlaced: 'unknown' })],
    ['tract', usable({ unwell: 'unread' }, { firstPlaced: daysBefore(40) })],
    ['unwell-unread', usable({ unwell: 'unread' })],
    ['burst-own', usable({ placed: { ...tube, holderOnly: true } })],
  ] as const)('%s', (reason, context) => {
    expect(holderReason(context, now)).toBe(reason);
  });
});

describe('a reading has passed', () => {
  const reading = (ph: number, rest: Partial<typeof tube> = {}) =>
    usable({ placed: { ...tube, reading: { low: ph, high: ph }, ...rest } });
  const afterFeed = { fedLately: 'yes', looks: 'yes' } as const;
  it.each([
    ['under the limit', reading(5.5), true],
    ['after a feed, of the right looks', reading(6.5, afterFeed), true],
    ['after a feed, of unknown looks', reading(6.5, { fedLately: 'yes', looks: 'unknown' }), false],
    ['after a feed, but hard to get in', reading(6.5, { ...afterFeed, how: 'hard' }), false],
    ['after a feed, a reading taken back before', reading(6.5, { ...afterFeed, retested: true }), false],
    ['after a feed, in the wait for the recheck', reading(6.5, { ...afterFeed, recheck: 'waiting' }), false],
    ['after a feed, at the recheck', reading(6.5, { ...afterFeed, recheck: 'due' }), false],
    ['high', reading(8, afterFeed), false],
    ['not there', usable(), false],
  ])('%s: %s', (_name, context, passed) => {
    expect(readingPassed(context)).toBe(passed);
  });
});

describe('a nurse can clear', () => {
  const read = { ...tube, how: 'hard', reading: { low: 5, high: 5 } } as const;
  const hold = (reason: 'hard' | 'no-strips') => ({ to: 'hold', reason, clinicArranges: false }) as const;
  it.each([
    ['a hard insertion held for that, its reading passed', usable({ outcome: hold('hard'), placed: read }), true],
    ['nothing held for another reason', usable({ outcome: hold('no-strips'), placed: read }), false],
    ['nothing on its way in', usable({ outcome: { to: 'go-in', reason: 'kind' }, placed: read }), false],
    ['nothing that went in easily', usable({ outcome: hold('hard'), placed: { ...read, how: 'easy' } }), false],
    ['nothing unread', usable({ outcome: hold('hard'), placed: { ...read, reading: null } }), false],
    ['nothing forbidden', usable({ outcome: hold('hard'), placed: read }, { tubeKind: 'gj' }), false],
    ['nothing that is not in', usable({ outcome: hold('hard'), placed: null }), false],
  ])('%s: %s', (_name, context, can) => {
    expect(clearable(context, now)).toBe(can);
  });
});

describe('out too long', () => {
  const cameOutAtMs = startMs - 5 * hourMs;
  it.each([
    ['g', true],
    ['gj', true],
    ['half-out', false], // it is still in
    ['nose', false], // no stoma that could close
  ] as const)('is a reason to page for a tube of kind %s: %s', (tubeKind, pages) => {
    const context = knowing({ tubeKind, cameOutAtMs, firstPlaced: oldTract }, { unwell: 'well' });
    expect(duePages(context, now).includes('out-too-long')).toBe(pages);
  });
});
