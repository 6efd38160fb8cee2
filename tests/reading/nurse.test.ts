/** The nurse's words are read from the whole text, or not at all. */
import { expect, it } from 'vitest';
import { readNurse } from '#src/reading/nurse.ts';

it.each([
  ['take', 'take'],
  ['Take.', 'take'],
  ['taking it', 'take'],
  ['got it', 'take'],
  ['mine', 'take'],
  ["I'll take", 'take'],
  ["i'll take it", 'take'],
  ['clear', 'clear'],
  ['Clear it', 'clear'],
  ['yes', 'yes'],
  ['Y', 'yes'],
  ['no', 'no'],
  ['close', 'close'],
  ["i can't take it", 'other'],
  ['do not clear', 'other'],
  ['not clear', 'other'],
  ['clear?', 'other'],
  ['take a photo', 'other'],
  ['who is this', 'other'],
  ['take clear', 'other'],
  ['yes or no', 'other'],
  ['', 'other'],
  ['got it, take', 'take'],
  ['got it, the tube is in', 'other'],
  ['take?', 'other'],
  ['cant, driving. pass', 'pass'],
  ['no, pass', 'other'],
  ['pass it to him, take', 'other'],
  ['it is blocked, tube in. tell me more about it', 'other'],
])('%s is %s', (text, word) => {
  expect(readNurse(text).word).toBe(word);
});

it('reads what she tells the family after what she noted', () => {
  const words = 'try 10 ml warm water gently back and forth';
  expect(readNurse(`it is blocked, tube in. TELL ${words}`)).toEqual({ word: 'tell', words });
});
