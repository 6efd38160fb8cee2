/** Weights and readings: exact conversions, whole ranges, and nothing read from what is no number. */
import { describe, expect, it } from 'vitest';
import { lexicons } from '#src/reading/lexicon.ts';
import { withDigits } from '#src/reading/numbers.ts';
import { answerTo, eventOf } from './open.ts';

describe('numbers in words', () => {
  it.each([
    ['seven and a half kilos', '7.5 kilos'],
    ['twenty five', '25'],
    ['five point five', '5.5'],
    ['5,5', '5.5'],
    ['4,200 g', '4200 g'],
    ['half an hour', '0.5 hour'],
    ['an hour and a half', '1.5 hour'],
    ['three and a half hours', '3.5 hours'],
    ['quarter of an hour', '0.25 hour'],
    ['5 1/2', '5.5'],
    ['a hundred and one', '101'],
    ['one hundred and 1', '101'],
    ['1h20', '1 hours 20 min'],
    ['half out', 'half out'],
    ['the one with two ports', 'the one with 2 ports'],
  ])('%s is %s', (text, digits) => {
    expect(withDigits(text, lexicons.en)).toBe(digits);
  });
});

describe('a weight', () => {
  // 1 lb = 0.45359237 kg exactly, 16 oz to the pound, 14 lb to the stone: NIST Special Publication 811, appendix B.
  const pound = 0.45359237;
  it.each([
    ['7 kg', 7],
    ['7kg', 7],
    ['7,2 kilos', 7.2],
    ['seven and a half kilos', 7.5],
    ['4200 grams', 4.2],
    ['4200g', 4.2],
    ['3 kilo 200', 3.2],
    ['15 lb', 15 * pound],
    ['15lbs 4oz', (15 + 4 / 16) * pound],
    ['15 pounds 4 ounces', (15 + 4 / 16) * pound],
    ['7lb8', 7.5 * pound],
    ['2 stone', 28 * pound],
    ['22 and a half pounds', 22.5 * pound],
    ['7 or 8 kg', 7],
    ['8 kg = 17.6 lb', 8],
    ['born at 3 kg now 7 kg', 7],
    ['it was 20 lb not 20 kg', 20 * pound],
  ])('%s', (text, kg) => {
    const value = answerTo('weight', text);
    expect(value).toEqual({ kg: expect.closeTo(kg, 9) });
  });

  it.each([
    ['7', { bare: 7 }],
    ['7 i think', { bare: 7 }],
    ['about 14.5', { bare: 14.5 }],
    ['5 or 6', { bare: 5 }],
    ['not sure', 'unknown'],
    ['we dont have a scale', 'unknown'],
    ['2 or 4 kg', 'unclear: two-answers'],
    ['5 to 8 pounds', 'unclear: two-answers'],
    ['6 or 7', 'unclear: two-answers'],
    ['700 kg', 'unclear: impossible'],
    ['-5 kg', 'unclear: impossible'],
    ['0', 'unclear: impossible'],
    ['32 inches', 'unclear: unreadable'],
  ])('%s', (text, value) => {
    expect(answerTo('weight', text)).toEqual(value);
  });

  it.each([
    ['kg', { unit: 'kg' }],
    ['pounds', { unit: 'lb' }],
    ['lbs', { unit: 'lb' }],
    ['7 kg', { kg: 7 }],
    ['not sure', 'unknown'],
    ['kilos i think', 'unknown'],
    ['kg or lb?', 'unclear: two-answers'],
  ])('kg or lb? %s', (text, value) => {
    expect(answerTo('weight', text, { clarifying: 'unit', bareWeight: 5 })).toEqual(value);
  });

  it.each([
    ['yes', 'as-told'],
    ['yes thats right', 'as-told'],
    ['yes 60 kg', { kg: 60 }],
    ['60', { bare: 60 }],
    ['oh sorry 6 kg', { kg: 6 }],
    ['no 6 kg', { kg: 6 }],
    ['no', 'unclear: no-number'],
    ['i think so', 'unclear: unsure'],
    ['not sure', 'unknown'],
  ])('60 kg, at this age? %s', (text, value) => {
    expect(answerTo('weight', text, { clarifying: 'doubt' })).toEqual(value);
  });
});

describe('a reading', () => {
  const one = (n: number) => ({ low: n, high: n });
  // pH runs from 0 to 14 on the common scale (any chemistry handbook); outside it is no reading.
  it.each([
    ['5.5', one(5.5)],
    ['five and a half', one(5.5)],
    ['5,5', one(5.5)],
    ['ph is 4', one(4)],
    ['ph5', one(5)],
    ['its 5.0 I think', one(5)],
    ['6ish', one(6)],
    ['about 6', one(6)],
    ['5 on the strip, 3 ml', one(5)],
    ['not 5, 6', one(6)],
    ['6.5 no wait 6', one(6)],
    ['0', one(0)],
    ['14', one(14)],
    ['5 or 5.5', { low: 5, high: 5.5 }],
    ['between 5 and 6', { low: 5, high: 6 }],
    ['5-6', { low: 5, high: 6 }],
    ['5.5/6', { low: 5.5, high: 6 }],
    ['not sure 5 or 6', { low: 5, high: 6 }],
    ['>6', { low: 6, high: 14 }],
    ['over 5', { low: 5, high: 14 }],
    ['6 or higher', { low: 6, high: 14 }],
    ['a bit over 5', { low: 5, high: 6 }],
    ['under 5', { low: 0, high: 5 }],
    ['5 or less', { low: 0, high: 5 }],
    ['almost 6', { low: 0, high: 6 }],
    ['15', 'unclear: impossible'],
    ['55', 'unclear: impossible'],
    ['-5', 'unclear: impossible'],
    ['greenish', 'unclear: no-number'],
    ['cant tell', 'unclear: unreadable'],
    ['cant tell 5', 'unclear: unsure'],
    ['ovr 5', 'unclear: unsure'],
    ['5 5', 'unclear: two-answers'],
    ['first one says 5 second one says 7', 'unclear: two-answers'],
    ['5, 7', 'unclear: two-answers'],
  ])('%s', (text, value) => {
    expect(answerTo('ph', text, { tubeIn: true })).toEqual(value);
  });

  it('is told later only with words that correct it', () => {
    const told = (text: string) => eventOf(text, { tubeIn: true, asking: 'secured' }).told;
    expect(told('sorry, I misread, it was 6.5')).toEqual({ ph: one(6.5) });
    expect(told('the ph was 6.5 not 5.5')).toEqual({ ph: one(6.5) });
    expect(told('5.5')).toEqual({});
  });
});
