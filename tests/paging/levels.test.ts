/** The level of every reason, beside the table it was agreed in. Common practice, no source. */
import { expect, it } from 'vitest';
import { pageReasons } from '#machines/facts.ts';
import { isHigher, levelOf, waitsOf } from '#machines/paging/levels.ts';
import { clinicalWith } from '#tests/machines/simulated.ts';

const emergency = [
  'danger-sign',
  'warning-sign',
  'tract-too-young',
  'tract-nearly-too-young',
  'unwell-unread',
  'not-well-after',
  'sick-line',
];
const routine = [
  'weight-unknown',
  'after-feed-reading',
  'clinic-not-called',
  'unread-in-use',
  'aftercare-silence',
  'stay-limit',
  'reading-corrected',
];

it.each(pageReasons)('%s', (reason) => {
  const level = emergency.includes(reason) ? 'emergency' : routine.includes(reason) ? 'routine' : 'urgent';
  expect(levelOf[reason]).toBe(level);
});

it('orders emergency over urgent over routine', () => {
  expect(isHigher('emergency', 'urgent')).toBe(true);
  expect(isHigher('urgent', 'routine')).toBe(true);
  expect(isHigher('routine', 'emergency')).toBe(false);
  expect(isHigher('urgent', 'urgent')).toBe(false);
});

it('waits longer the less urgent it is', () => {
  expect(waitsOf('emergency', clinicalWith())).toEqual({ repeatMinutes: 3, secondMinutes: 6, thirdMinutes: 10 });
  expect(waitsOf('urgent', clinicalWith())).toEqual({ repeatMinutes: 5, secondMinutes: 10, thirdMinutes: 15 });
  expect(waitsOf('routine', clinicalWith())).toEqual({ repeatMinutes: 10, secondMinutes: 20, thirdMinutes: 30 });
});
