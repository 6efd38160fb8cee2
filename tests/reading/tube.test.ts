/** The kind of tube, its state, and how it went in: a doubt is never the freer kind, and any force is hard. */
import { describe, expect, it } from 'vitest';
import { answerTo, eventOf } from './open.ts';

describe('the kind of tube', () => {
  it.each([
    ['g', 'g'],
    ['G tube', 'g'],
    ['gtube', 'g'],
    ['a button', 'unknownDevice'],
    ['balloon button', 'unknownDevice'],
    ['g button', 'g'],
    ['gj button', 'gj'],
    ['peg', 'g'],
    ['not a gj, just a g', 'g'],
    ['gj', 'gj'],
    ['G-J', 'gj'],
    ['one side says G other side says J', 'gj'],
    ['2 ports and a long tube inside', 'gj'],
    ['j tube', 'j'],
    ['half out', 'half-out'],
    ['its still in a little', 'half-out'],
    ['still partly in', 'half-out'],
    ['ng', 'nose'],
    ['nose tube', 'nose'],
    ['dont know', 'unknown'],
    ['i think g', 'unknown'],
    ['g or gj not sure', 'unknown'],
    ['g tube?', 'unknown'],
    ['g and its gj', 'unclear: two-answers'],
    ['the feeding tube', 'unclear: unreadable'],
    ['the normal one', 'unclear: unreadable'],
    ['its a malecot', 'unknownDevice'],
    ['is it a g if it has a button?', 'unclear: unreadable'],
  ])('%s is %s', (text, value) => {
    expect(answerTo('tube-kind', text)).toBe(value);
  });

  it.each([
    ['one port, short', 'g'],
    ['short', 'g'],
    ['long', 'gj'],
    ['two ports', 'unknown'],
    ['several, long one inside', 'gj'],
    ['yes', 'unclear: unreadable'],
  ])('by its looks, %s is %s', (text, value) => {
    expect(answerTo('tube-kind', text, { clarifying: 'look' })).toBe(value);
  });
});

describe('the own tube', () => {
  it.each([
    ['yes', 'yes'],
    ['its whole and the balloon is good', 'yes'],
    ['no leaks, looks good', 'yes'],
    ['yes no holes', 'yes'],
    ['i have it', 'yes'],
    ['balloon popped', 'burst'],
    ['yes but the balloon is broken', 'burst'],
    ['there is a hole in the balloon', 'burst'],
    ['the balloon wont inflate', 'burst'],
    ['it has a long part inside', 'long-inside'],
    ['threw it away', 'no'],
    ['the dog chewed it', 'no'],
    ['no', 'no'],
    ['i dont have it', 'no'],
    ['the tube is cracked', 'no'],
    ['not sure', 'unknown'],
    ['i think its ok', 'unknown'],
    ['how do i know if the balloon is good', 'unclear: unreadable'],
  ])('%s is %s', (text, value) => {
    expect(answerTo('own-tube', text)).toBe(value);
  });
});

describe.each(['tube-in', 'own-tube-in'] as const)('%s', (asking) => {
  it.each([
    ['easy', 'easy'],
    ['slid right in', 'easy'],
    ['no resistance', 'easy'],
    ['wasnt hard at all', 'easy'],
    ['went in fine', 'easy'],
    ['had to push', 'hard'],
    ['it was tight', 'hard'],
    ['pushed a little', 'hard'],
    ['not easy', 'hard'],
    ['in but not easy', 'hard'],
    ['took some force', 'hard'],
    ['easy at first then had to push', 'hard'],
    ['nto easy', 'hard'],
    ['its in', 'in'],
    ['yes', 'in'],
    ['in!', 'in'],
    ['wont go', 'no'],
    ['couldnt get it in', 'no'],
    ['no', 'no'],
    ['i think so', 'unclear: unsure'],
    ['not sure if its in', 'unclear: unsure'],
    ['easy or hard i cant say', 'unclear: two-answers'],
    ['not yet im washing my hands', 'smallTalk'],
    ['should i push', 'unclear: unreadable'],
  ])('%s is %s', (text, value) => {
    expect(answerTo(asking, text)).toBe(value);
  });

  it('wants easily or pushed where that was the question', () => {
    expect(answerTo(asking, 'yes', { clarifying: 'how' })).toBe('unclear: unreadable');
    expect(answerTo(asking, 'easily', { clarifying: 'how' })).toBe('easy');
    expect(answerTo(asking, 'a bit of a push', { clarifying: 'how' })).toBe('hard');
  });
});

describe('a tube that was in', () => {
  it.each(['it came out again', 'the tube fell out', 'she pulled it out', 'its back out', 'fell out again!'])(
    '%s: out again',
    (text) => {
      expect(eventOf(text, { tubeIn: true, asking: 'secured' }).type).toBe('outAgain');
    },
  );

  it('is not out because something came through it, or because the first time is told', () => {
    expect(answerTo('contents', 'milk came out', { tubeIn: true })).toBe('yes');
    expect(answerTo('came-out', 'it fell out 20 min ago', { tubeIn: true })).toBeTypeOf('number');
    expect(answerTo('came-out', 'it fell out again', { tubeIn: true })).toBe('outAgain');
  });

  it('may not flow or fill', () => {
    expect(eventOf('water wont go in', { tubeIn: true, asking: 'secured' }).type).toBe('tubeProblem');
    expect(eventOf('the balloon feels stiff', { tubeIn: true, asking: 'secured' }).type).toBe('tubeProblem');
    expect(answerTo('own-tube', 'balloon wont inflate')).toBe('burst');
  });
});

describe('a tube half out', () => {
  it.each([
    ["it's a gj and it is half out", 'gj'],
    ['his g tube is half out', 'g'],
    ['the tube is half out', undefined],
    ['half out, i think its a gj', undefined],
  ])('says which it is only where that is named firmly: %s', (text, halfOutOf) => {
    expect(eventOf(text, { caseOpen: false }).told).toMatchObject({ tubeKind: 'half-out' });
    expect(eventOf(text, { caseOpen: false }).told.halfOutOf).toBe(halfOutOf);
  });
});
