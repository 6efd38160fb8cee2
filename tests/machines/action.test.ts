/** The one boundary of the machines: an action that leaves them well formed passes as it is, and one that is not is a defect. */
import { describe, expect, it } from 'vitest';
import { parseAction } from '#machines/action.ts';

const say = { key: 'nudge', params: { asking: 'ph' }, preface: [{ key: 'notUnderstood', why: 'unreadable' }] };
const raised = { event: { type: 'xstate.after.quiet.a' }, id: 'xstate.after.quiet.a', delay: 0 };

describe('an action that leaves the machines', () => {
  it.each([
    ['say', { say, by: 'text' }],
    ['say', { say, by: 'call' }],
    ['page', { reason: 'danger-sign' }],
    ['callNurse', { place: 0, level: 'emergency', reasons: ['silence'], by: ['text', 'call'] }],
    ['callNurse', { place: 2, level: 'routine', reasons: [], by: [] }],
    ['tellNurse', { level: 'urgent', reason: 'untouched' }],
    ['taken', { nurse: 'Ana' }],
    ['began', { mostMinutes: 20 }],
    ['passed', { nurse: 'Ana' }],
    ['beginAftercare', { after: 'use', sinceMs: 5 }],
    ['beginAftercare', { after: 'own-tube', sinceMs: 5 }],
    ['beginAftercare', { after: 'go-in', sinceMs: 5 }],
    ['xstate.raise', raised],
    ['xstate.cancel', { sendId: 'xstate.after.quiet.a' }],
  ])('%s %j passes as it is', (type, params) => {
    expect(parseAction({ type, params })).toEqual({ type, params });
  });

  it.each(['unanswered', 'notWell', 'endAftercare', 'closeCase'])('%s needs nothing beside it', (type) => {
    expect(parseAction({ type, params: undefined })).toEqual({ type });
  });

  it('said by aftercare is a text', () => {
    expect(parseAction({ type: 'say', params: say })).toEqual({ type: 'say', params: { say, by: 'text' } });
  });

  it.each([
    ['say', { say }],
    ['say', { say, by: 'letter' }],
    ['say', { say: { ...say, key: undefined }, by: 'text' }],
    ['say', { say: { ...say, params: undefined }, by: 'text' }],
    ['say', { say: { ...say, preface: undefined }, by: 'text' }],
    ['say', { say: { ...say, preface: [{}] }, by: 'text' }],
    ['say', { ...say, preface: [{}] }],
    ['page', { reason: 'weather' }],
    ['page', {}],
    ['page', undefined],
    ['callNurse', { place: 3, level: 'urgent', reasons: [], by: [] }],
    ['callNurse', { place: -1, level: 'urgent', reasons: [], by: [] }],
    ['callNurse', { place: 0.5, level: 'urgent', reasons: [], by: [] }],
    ['callNurse', { place: 0, level: 'grave', reasons: [], by: [] }],
    ['callNurse', { place: 0, level: 'urgent', reasons: ['weather'], by: [] }],
    ['callNurse', { place: 0, level: 'urgent', reasons: [], by: ['letter'] }],
    ['tellNurse', { level: 'urgent' }],
    ['tellNurse', { reason: 'silence' }],
    ['taken', {}],
    ['began', {}],
    ['passed', {}],
    ['beginAftercare', { after: 'hold', sinceMs: 5 }],
    ['beginAftercare', { after: 'use' }],
    ['xstate.raise', { ...raised, delay: -1 }],
    ['xstate.raise', { ...raised, delay: Number.NaN }],
    ['xstate.raise', { ...raised, id: undefined }],
    ['xstate.raise', { ...raised, event: { type: 'tick' } }],
    ['xstate.raise', { ...raised, event: undefined }],
    ['xstate.cancel', {}],
  ])('%s %j is a defect, and throws', (type, params) => {
    expect(() => parseAction({ type, params })).toThrow();
  });
});

describe('what stays inside', () => {
  it.each([
    ['xstate.assign', undefined],
    ['note', { key: 'ph' }],
    ['xstate.raise', { event: { type: 'heard' }, id: undefined, delay: undefined }],
  ])('%s %j', (type, params) => {
    expect(parseAction({ type, params })).toEqual({ type: 'inside' });
  });
});
