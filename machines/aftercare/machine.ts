/** Aftercare: what follows a night, whether the tube is in use or the family is on its way to the emergency department. */
import { placeholderProtocol } from '#machines/protocol/placeholder.ts';
import type { Clinical } from '#machines/protocol/settings.ts';
import type { Site } from '#machines/protocol/site.ts';
import { inUse } from './inUse.ts';
import { kit, nothingBegun } from './kit.ts';
import { onTheWay } from './onTheWay.ts';

export const aftercare = kit.createMachine({
  id: 'aftercare',
  context: ({ input }: { input: { readonly clinical: Clinical; readonly site: Site } | undefined }) => {
    const { clinical, site } = input ?? placeholderProtocol;
    return { clinical, site, ...nothingBegun };
  },
  initial: 'idle',
  states: {
    idle: {},
    inUse,
    onTheWay,
    /** Not well: whatever comes next is the conversation's. */
    ended: {},
    closed: { entry: { type: 'closeCase', params: {} } },
  },
  on: {
    'begin.use': [
      {
        guard: 'beginsOwn',
        target: '.inUse.stay.unlimited',
        actions: { type: 'begin', params: ({ event }) => ({ tube: event.tube, atMs: event.sinceMs ?? event.at }) },
      },
      {
        target: '.inUse',
        actions: { type: 'begin', params: ({ event }) => ({ tube: event.tube, atMs: event.sinceMs ?? event.at }) },
      },
    ],
    'begin.goIn': {
      target: '.onTheWay',
      actions: { type: 'begin', params: ({ event }) => ({ tube: null, atMs: event.at }) },
    },
    end: '.idle',
  },
});
