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
])('%s is %s', (text, word) => {
  expect(readNurse(text).word).toBe(word);
});
