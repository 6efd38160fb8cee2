/** English answers whose first reading was wrong in texts the reader had never seen: each is the mark of a family (invented, common sense). */
import { describe, expect, it } from 'vitest';
import type { QuestionKey } from '#machines/facts.ts';
import { answerTo } from './open.ts';

const answers: readonly (readonly [QuestionKey, string, unknown])[] = [
  ['own-tube', 'have it but there is a tear by the balloon', 'burst'],
  ['own-tube', 'Yeah I got it but theres a big ole rip in the balloon', 'burst'],
  ['own-tube', 'got it. balloon aint busted', 'yes'],
  ['own-tube', 'have it but it looks a bit off', 'unknown'],
  ['own-tube', 'you want me to throw it out?', 'unclear: unreadable'],
  ['kit', 'yeah but the wife did the training and shes on nights', 'not-shown'],
  ['kit', 'I wouldnt know how to use it', 'not-shown'],
  ['kit', 'the kit expired and we binned it', 'no'],
  ['strips', 'what we have is only glucose strips, no pH', 'no'],
  ['tube-in', 'went in about an inch then wouldnt go so we stopped and its out again', 'no'],
  ['tube-in', 'had to lean into it some but its in', 'hard'],
  ['tube-in', 'it did not want to go but i made it', 'hard'],
  ['tube-in', 'went in easy comma taped it period', 'easy'],
  ['contents', 'I pushed 5ml water and got 5ml back', 'unclear: unsure'],
  ['ph', "can't be 7", 'unclear: unreadable'],
  ['fed-lately', 'he eats every 3 hrs', 'unclear: unreadable'],
  ['fed-lately', 'nothin since this mornin', 'no'],
  ['tube-kind', 'the one taped on his nose? no wait thats his brother', 'unclear: unsure'],
  ['tube-kind', 'GJ i think... yeah gj', 'gj'],
  ['tube-kind', 'G i think... yeah G', 'unknown'],
];

describe('an English answer in words of the day', () => {
  it.each(answers)('%s: "%s" is %s', (asking, text, value) => {
    expect(answerTo(asking, text, { tubeIn: asking === 'contents' || asking === 'ph' })).toBe(value);
  });

  it('a bound above a reading is no reading above the bound', () => {
    expect(answerTo('ph', 'not more than 5', { tubeIn: true })).toEqual({ low: 0, high: 5 });
  });
});
