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

/** What only moves them on, or help that is coming: nothing to answer, and nobody to call. */
const moving: readonly (readonly [LanguageCode, string])[] = [
  ['en', 'leaving in 5'],
  ['en', 'ok putting him in the carseat'],
  ['en', 'the ambulance is here'],
  ['en', 'i called them'],
  ['es', 'ok ya vamos'],
  ['es', 'atorados en el trafico'],
  ['es', 'ya llame'],
  ['fr', 'on prend la voiture du voisin'],
  ['fr', "c'est nul on part alors"],
  ['fr', "ok c'est fait ils arrivent"],
  ['fr', 'SAMU en route'],
];
const noWay: readonly (readonly [LanguageCode, string])[] = [
  ['en', 'i have no car and its snowing'],
  ['es', 'no tengo carro'],
  ['fr', "on n'a pas de voiture"],
];

describe('sent in, and not there yet', () => {
  it.each(moving)('%s: "%s" is no more than talk', (language, text) => {
    expect(eventOf(text, { language, onTheWay: true }).type).toBe('smallTalk');
  });

  it.each(noWay)('%s: "%s" says that they cannot get there', (language, text) => {
    expect(eventOf(text, { language, onTheWay: true })).toMatchObject({ type: 'answer.arrived', value: 'no' });
    expect(eventOf(text, { language }).type).not.toBe('answer.arrived');
  });

  it.each(['the ambulance isnt coming', 'i called and no one answered', 'the ambulance is here and he is blue'])(
    '"%s" is more than talk',
    (text) => {
      expect(eventOf(text, { onTheWay: true }).type).not.toBe('smallTalk');
    },
  );
});

describe('a tube in use', () => {
  it.each([
    ['en', 'Thank you!! You guys are the best'],
    ['en', 'finally fed him. 1 oz. went ok'],
    ['es', 'muchas gracias son las mejores'],
    ['fr', 'merci vous etes les meilleurs'],
  ] as const)('%s: "%s" is thanks or good news', (language, text) => {
    expect(eventOf(text, { language, tubeIn: true, inUse: true }).type).toBe('smallTalk');
  });

  it.each(['thanks but the skin looks funny', 'thank you. he is acting weird'])('"%s" is more than thanks', (text) => {
    expect(eventOf(text, { tubeIn: true, inUse: true }).type).not.toBe('smallTalk');
  });
});
