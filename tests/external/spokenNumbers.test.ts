/**
 * Numbers in words against the test cases of two general-purpose libraries, read from their packages on the registry:
 * `human-interval` 2.0.1 (MIT, `test.js`) and `words-to-numbers` 1.5.1 (MIT, `src/__tests__/index.js`). [seen]
 */
import { describe, expect, it } from 'vitest';
import { answerTo, open } from '#tests/reading/open.ts';

const second = 1;
const minute = 60 * second;
const unitSeconds = { second, minute, hour: 60 * minute, day: 1_440 * minute, week: 10_080 * minute };

/** The library also has months and years; a tube that came out so long ago is no case of this line. */
const ofUnits = Object.entries(unitSeconds).flatMap(([unit, seconds]): [string, number][] => [
  [`1 ${unit}`, seconds],
  [`2 ${unit}s`, 2 * seconds],
  [`1.5 ${unit}s`, 1.5 * seconds],
]);
const ofWords = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'].map(
  (word, place): [string, number] => [`${word} seconds`, place + 1],
);

describe('a length of time of human-interval, as the answer to when it came out', () => {
  it.each([
    ...ofUnits,
    ...ofWords,
    ['3 minutes and 30 seconds', 210],
    ['three minutes and 30 seconds', 210],
    ['three minutes 30 seconds', 210],
    ['one minute and 1 second', 61],
    ['one minute 1 second', 61],
    ['thirty three seconds', 33],
    ['hundred and three seconds and twelve minutes', 823],
    ['three hundred and twenty-five seconds', 325],
  ])('%s is %f seconds', (text, seconds) => {
    expect(answerTo('came-out', text)).toBe(open.nowMs - seconds * 1_000);
    expect(answerTo('came-out', `${text} ago`)).toBe(open.nowMs - seconds * 1_000);
  });

  it.each(['', 'foobar'])('"%s" is none', (text) => {
    expect(answerTo('came-out', text)).toBe('unclear: unreadable');
  });
});

describe('a number of words-to-numbers, as a weight', () => {
  it.each([
    ['one hundred', 100],
    ['one hundred two', 102],
    ['one hundred and five', 105],
    ['one hundred and twenty five', 125],
    ['one-hundred', 100],
    ['one-hundred and five', 105],
    ['one-hundred and twenty-five', 125],
    ['sixty nine', 69],
    ['forty two point five', 42.5],
    ['ten point five', 10.5],
    ['eleven dot one', 11.1],
  ])('%s kg is read exactly', (text, kg) => {
    expect(answerTo('weight', `${text} kg`)).toEqual({ kg });
    expect(answerTo('weight', text)).toEqual({ bare: kg });
  });

  it.each([
    ['four thousand and thirty', 4_030],
    ['a thousand one hundred and eleven', 1_111],
    ['a thousand, one-hundred and eleven', 1_111],
    ['twenty thousand five hundred and sixty nine', 20_569],
  ])('%s grams is read exactly', (text, grams) => {
    expect(answerTo('weight', `${text} grams`)).toEqual({ kg: grams / 1_000 });
  });

  // No child weighs that, the library itself needs a guess for it, or it is several numbers.
  it.each([
    'four thousand and thirty',
    'six million five thousand and two',
    'five quintillion',
    'twenty-thousand, five-hundred and sixty-nine',
    'three point one four one five nine two six',
    'one two three',
    'won huntred',
    'tu thousant and faav',
  ])('%s kg is asked again', (text) => {
    expect(answerTo('weight', `${text} kg`)).toMatch(/^unclear: /);
  });
});

describe('a year of words-to-numbers, as the year of the first tube', () => {
  it.each([
    ['twenty ten', 2010],
    ['twenty seventeen', 2017],
    ['twenty twenty', 2020],
    ['twenty twenty one', 2021],
  ])('%s', (text, year) => {
    expect(answerTo('first-placed', text)).toEqual({ earliest: `${year}-01-01`, latest: `${year}-12-31` });
  });
});
