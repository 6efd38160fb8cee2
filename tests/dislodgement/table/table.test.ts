/**
 * What each text does at each place of a case, as it was read and agreed. A change to the machines shows here as lines a nurse can
 * read: `node tests/dislodgement/table/write.ts` takes them over, once every one of them is meant.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { places } from '#tests/golden/places.ts';
import { linesOf } from './lines.ts';

const agreed = (place: string) =>
  readFileSync(new URL(`./places/${place}.txt`, import.meta.url), 'utf8')
    .trimEnd()
    .split('\n');

describe('what each text does', () => {
  it.each(places)('at $name', (place) => {
    expect(linesOf(place)).toEqual(agreed(place.name));
  });
});
