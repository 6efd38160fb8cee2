/** What waits for a nurse and was not closed comes back to her after half a day, and again after each half day. */
import { describe, expect, it } from 'vitest';
import { Night, toContents } from './night.ts';

const hour = 60;
const hard = () => toContents('hard').answer('contents', 'yes').answer('ph', { low: 5, high: 5 });
const waiting = () => toContents().answer('contents', 'yes').answer('ph', { low: 8, high: 8 });

/** The nurse who has it is at work on it, so that it is not passed on; what was raised meanwhile. */
const atWork = (night: Night, halfHours: number) =>
  Array.from({ length: halfHours }).flatMap(() => night.touch().wait(hour / 2 - 1).raised);

describe('comes back to the nurse who took it', () => {
  it.each([
    ['a hold', hard],
    ['a tube through the nose', () => new Night().tell({ tubeKind: 'nose' }).answer('unwell', 'no')],
    ['silence at a question', () => new Night().hear('told').wait(10)],
    ['silence while hands are busy', () => toContents().wait(30)],
    ['silence at the recheck', () => waiting().wait(hour + 10)],
  ] as const)('%s', (_name, make) => {
    const night = make().take();
    for (const _ of [1, 2, 3]) {
      expect(atWork(night, 24)).toEqual([]);
      expect(night.touch().wait(24).raised).toEqual(['silence']);
      night.take();
    }
  });
});
