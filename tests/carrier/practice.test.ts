/** The practice carrier: everything arrives at once, and sending again harms nobody. */
import { expect, it } from 'vitest';
import { practiceCarrier } from '#src/carrier/practice.ts';

it('accepts at once, has nothing to look up, and no log of its own', async () => {
  const message = { id: '1', to: '+12025550123', body: 'Hello', kind: 'text', saidAtMs: 0 } as const;
  expect(await practiceCarrier.send(message)).toEqual({ fate: 'accepted', carrierId: null });
  expect(await practiceCarrier.find(message)).toEqual({ fate: 'found', made: [] });
  expect(await practiceCarrier.heardSince(0)).toEqual([]);
});
