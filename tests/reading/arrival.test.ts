/** "We're at the ER now", said before it is asked: only the plain arrival of the family, in each language. Texts invented. */
import { describe, expect, it } from 'vitest';
import type { LanguageCode } from '#machines/facts.ts';
import { eventOf } from './open.ts';

const arrived: readonly (readonly [LanguageCode, string])[] = [
  ['en', 'At the ER now'],
  ['en', "we're here"],
  ['en', 'just got to the emergency room'],
  ['en', 'they are seeing him now'],
  ['es', 'ya llegamos'],
  ['es', 'estamos en el hospital'],
  ['fr', 'on est aux urgences'],
  ['fr', 'on y est'],
];
const notArrived: readonly (readonly [LanguageCode, string])[] = [
  ['en', 'yes'],
  ['en', 'ok going now'],
  ['en', 'here'],
  ['en', 'are we at the right hospital?'],
  ['en', 'were in the car, nearly at the hospital'],
  ['en', 'im here with him at home'],
  ['en', 'the ambulance is here'],
  ['es', 'vamos en camino'],
  ['es', 'estamos en casa'],
  ['fr', 'on arrive'],
  ['fr', 'on est a la maison'],
];

describe('on the way to the hospital, nothing asked', () => {
  it.each(arrived)('%s: "%s" says that they are there', (language, text) => {
    expect(eventOf(text, { language, onTheWay: true })).toMatchObject({ type: 'answer.arrived', value: 'yes' });
  });

  it.each(notArrived)('%s: "%s" does not', (language, text) => {
    expect(eventOf(text, { language, onTheWay: true }).type).not.toBe('answer.arrived');
  });

  it.each(arrived)('%s: "%s" says nothing where nobody was sent', (language, text) => {
    expect(eventOf(text, { language }).type).not.toBe('answer.arrived');
  });

  it('hears a danger before anything else', () => {
    expect(eventOf('we are at the hospital and she cant breathe', { onTheWay: true })).toMatchObject({
      type: 'signs',
      sure: ['breathing'],
    });
  });
});
