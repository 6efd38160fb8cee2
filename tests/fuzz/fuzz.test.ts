/** A short attack on both faces on every database; `npm run fuzz -- --requests 100000` is the long one. */
import { describe, expect, it } from 'vitest';
import { databases } from '#tests/store/databases.ts';
import { attack } from './attack.ts';

const requests = 400;

describe.each(databases())('on the $name database', (test) => {
  it.each(['practice', 'live'] as const)('the %s line keeps its countenance and its rows', async (face) => {
    const { faults, statuses, standing } = await attack({ face, requests, seed: 20_270_306, lanes: 4 }, test);
    expect(faults).toEqual([]);
    // The attack went deep, and was refused in every way.
    expect(statuses['200']).toBeGreaterThan(requests / 2);
    expect(standing.events).toBeGreaterThan(0);
    expect(Object.keys(statuses)).toEqual(expect.arrayContaining(['200', '400', '404', '413', '415']));
  });
});
