/** A site's own words as its protocol file may list them; what each may mean is tested with the reader. */
import { describe, expect, it } from 'vitest';
import { siteWordsSchema } from '#machines/protocol/siteWords.ts';

const wordBound = 'a word of 3 to 40 letters, digits, spaces and hyphens';
const listBound = 'a list of at most 20 words';

const boundsOf = (words: unknown) => siteWordsSchema.safeParse(words).error?.issues.map(({ message }) => message) ?? [];

describe("a site's own words", () => {
  it('are taken for every device and for the hospital, each where a site has some', () => {
    for (const words of [
      {},
      { tubes: {} },
      { tubes: { g: ['peg'], gj: ['two way'], j: ['long one'], nose: ['nose line'] }, places: { hospital: ['owlet'] } },
    ]) {
      expect(siteWordsSchema.parse(words)).toEqual(words);
    }
  });

  it.each(['peg', 'botón', 'a-b', 'low line', 'type 2 low-line', '2nd peg', 'x'.repeat(40)])('take %s', (word) => {
    expect(siteWordsSchema.parse({ tubes: { g: [` ${word} `] } })).toEqual({ tubes: { g: [word] } });
  });

  it.each([
    '',
    'ab',
    ' ab ',
    'x'.repeat(41),
    '123',
    '12-34',
    'peg!',
    '!peg',
    'pe!g',
    '-peg',
    'peg-',
    'low  line',
    'a_b',
    5,
  ])('refuse %s', (word) => {
    const bounds = boundsOf({ tubes: { g: [word] } });
    expect(bounds.length).toBeGreaterThan(0);
    expect(new Set(bounds)).toEqual(new Set([wordBound]));
  });

  it('are at most 20 a list', () => {
    const words = (count: number) => ({ places: { hospital: Array.from({ length: count }, () => 'owlet') } });
    expect(boundsOf(words(20))).toEqual([]);
    expect(boundsOf(words(21))).toEqual([listBound]);
  });

  it.each([
    [5, 'tubes and places'],
    [{ tubes: 5 }, 'lists of words for g, gj, j and nose'],
    [{ places: 5 }, 'a list of words for the hospital'],
    [{ tubes: { nose: 'nose line' } }, listBound],
  ])('say what %j has to be', (words, bound) => {
    expect(boundsOf(words)).toEqual([bound]);
  });

  it.each([{ tube: {} }, { tubes: { peg: ['peg'] } }, { places: { clinic: ['owlet'] } }])(
    'of a name it does not know are refused: %j',
    (words) => {
      expect(boundsOf(words).length).toBe(1);
    },
  );
});
