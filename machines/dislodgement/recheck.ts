/** The recheck: an hour with nothing through the tube, then the child, new contents and a new strip. */
import { tubeIn } from './context.ts';
import { kit } from './kit.ts';
import { question, reviewed, silent, tell } from './question.ts';

const waiting = kit.createStateConfig({
  entry: [
    {
      type: 'tell',
      params: ({ context }) => ({
        key: context.disposition === 'recheck' ? 'recheckStill' : 'recheckWait',
        params: { dueAtMs: tubeIn(context).recheckDueAtMs ?? 0 },
      }),
    },
    { type: 'noteDisposition', params: { to: 'recheck' } },
  ],
  after: {
    recheckAfter: {
      target: '#dislodgement.deciding',
      actions: ['recheckNow', { type: 'preface', params: { key: 'hourOver' } }],
    },
  },
});

/** Unanswered, the recheck is a text, then a telephone call, then a page. */
const afterIn = kit.createStateConfig({
  ...question('after-in', tell('askAfterIn')),
  initial: 'open',
  states: {
    open: { after: { recheckCall: 'called' } },
    called: {
      entry: { type: 'say', params: { say: { key: 'recheckCall', params: {}, preface: [] }, by: 'call' } },
      after: { recheckCall: 'silent' },
    },
    silent,
    reviewed,
  },
});

export const recheck = kit.createStateConfig({
  initial: 'waiting',
  states: { waiting, afterIn },
});
