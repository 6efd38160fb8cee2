/** How aftercare begins: with nothing to follow, on the settings of its site. */
import { expect, it } from 'vitest';
import { getInitialSnapshot } from 'xstate';
import { aftercare } from '#machines/aftercare/machine.ts';
import { site } from '#tests/dislodgement/night.ts';
import { clinicalWith } from '#tests/machines/simulated.ts';

it('waits for a tube in use or a way in', () => {
  const clinical = clinicalWith({ stayDays: 20 });
  const { value, context } = getInitialSnapshot(aftercare, { clinical, site });
  expect(value).toBe('idle');
  expect(context).toEqual({
    clinical,
    site,
    tube: null,
    beganAtMs: 0,
    unclear: 0,
    open: null,
    askedAtMs: 0,
    settled: [],
  });
});
