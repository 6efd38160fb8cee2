/** A yes at a gate has to be said plainly; everything hedged, mixed or asked back is no yes. */
import { describe, expect, it } from 'vitest';
import type { QuestionKey } from '#machines/facts.ts';
import { answerTo } from './open.ts';

const gates: readonly QuestionKey[] = ['confirm', 'strips', 'secured', 'kit'];

describe('yes and no', () => {
  it.each(gates)('%s: plain yes', (gate) => {
    for (const text of ['yes', 'Y', 'YEP!', 'yeah', 'yes.', 'yesss', '👍🏽', 'ok yes', 'yes we do', '  yes  please ']) {
      expect(answerTo(gate, text), text).toBe('yes');
    }
  });

  it.each(gates)('%s: plain no', (gate) => {
    for (const text of ['no', 'N', 'nope', 'nah', 'No.', 'nooo', '👎', 'no sorry', 'not yet']) {
      expect(answerTo(gate, text), text).toBe('no');
    }
  });

  it.each(gates)('%s: not sure is never yes', (gate) => {
    for (const text of [
      'not sure',
      'not really sure',
      'im not 100% sure',
      'i think so',
      'probably',
      'maybe',
      'i guess yes',
      'yes i think',
      'kinda',
      'dont know',
      'idk',
      '🤷',
      'should be',
      'i hope so',
      'yes?',
    ]) {
      expect(answerTo(gate, text), text).toBe('unclear: unsure');
    }
  });

  it.each(gates)('%s: both is neither', (gate) => {
    for (const text of ['yeah no', 'no yes', 'yes no']) expect(answerTo(gate, text), text).toBe('unclear: two-answers');
  });

  it.each(gates)('%s: what was corrected counts as corrected', (gate) => {
    expect(answerTo(gate, 'yes no wait no')).toBe('no');
    expect(answerTo(gate, 'no, actually yes')).toBe('yes');
    expect(answerTo(gate, 'yes wait')).toBe('unclear: unsure');
  });

  it.each(gates)('%s: a slip of "not" does not turn a no into a yes', (gate) => {
    for (const text of ['nto sure', 'n ot sure', 'dnot have it', 'yes i thnik', 'yes i dotn know']) {
      expect(answerTo(gate, text), text).not.toBe('yes');
    }
  });

  it('takes a short reply for what it is', () => {
    expect(answerTo('strips', 'ok')).toBe('smallTalk');
    expect(answerTo('strips', 'where are they?')).toBe('unclear: unreadable');
  });
});

describe('the plainer questions', () => {
  it.each([
    ['kit', 'yes but nobody showed me', 'not-shown'],
    ['kit', 'we have it but i was never trained', 'not-shown'],
    ['kit', 'yes but never used it', 'yes'],
    ['kit', 'the nurse showed us', 'yes'],
    ['kit', 'no kit', 'no'],
    ['kit', 'left it at school', 'no'],
    ['strips', 'i have some', 'yes'],
    ['strips', 'we ran out', 'no'],
    ['secured', 'done', 'yes'],
    ['secured', 'all taped and snug', 'part'],
    ['secured', 'balloon filled, all taped and snug', 'yes'],
    ['secured', 'its not snug', 'no'],
    ['secured', 'yes but not the tape', 'unclear: two-answers'],
    ['contents', 'got some milky stuff', 'yes'],
    ['contents', 'just air', 'no'],
    ['contents', 'nothing comes', 'no'],
    ['contents', 'air first, then some milk', 'yes'],
    ['fed-lately', 'not sure', 'unknown'],
    ['fed-lately', '20 minutes ago', 'yes'],
    ['fed-lately', 'last feed was at 9', 'no'],
    ['fed-lately', 'about an hour ago', 'unknown'],
    ['fed-lately', 'more than an hour ago', 'no'],
    ['confirm', 'all correct', 'yes'],
    ['confirm', 'no changes', 'yes'],
    ['confirm', 'the weight is wrong', 'no'],
    ['confirm', 'yes except the thing we said', 'unclear: two-answers'],
    ['arrived', 'we are here', 'yes'],
    ['arrived', 'on our way', 'no'],
    ['clinic', 'left a message', 'yes'],
    ['clinic', 'not yet', 'no'],
    ['first-feed', 'went well', 'yes'],
    ['next-day', 'she is good', 'yes'],
  ] as const)('%s: %s is %s', (asking, text, value) => {
    expect(answerTo(asking, text)).toBe(value);
  });

  // The table of what stomach contents look like (common practice, no source).
  it.each([
    ['cloudy white', 'yes'],
    ['curdled milk', 'yes'],
    ['tan', 'yes'],
    ['grass green', 'yes'],
    ['brown flecks', 'yes'],
    ['yellow', 'no'],
    ['gold', 'no'],
    ['red', 'no'],
    ['clear', 'no'],
    ['white and a bit yellow', 'no'],
    ['not clear, its cloudy', 'yes'],
    ['green', 'unknown'],
    ['i cant tell', 'unknown'],
  ])('looks: %s is %s', (text, value) => {
    expect(answerTo('looks', text)).toBe(value);
  });
});

describe('an n', () => {
  it.each([
    ['unwell', 'n', 'no'],
    ['unwell', 'n thank god', 'no'],
    ['unwell', 'no fever n no blood', 'no'],
    ['unwell', 'hes jerkin all over n foamin at the mouth', 'signs'],
    ['after-in', 'the skins red n puffy', 'unclear: unreadable'],
  ] as const)('at %s is a no only where no word stands before it: %s', (asking, text, read) => {
    expect(answerTo(asking, text)).toBe(read);
  });
});
