/** A correction of one fact never answers the open question about another. */
import { describe, expect, it } from 'vitest';
import type { LanguageCode } from '#machines/facts.ts';
import { eventOf } from './open.ts';

const corrections: readonly (readonly [LanguageCode, string])[] = [
  ['en', 'no wait 7 kg not 17'],
  ['en', 'wait no 7 kg'],
  ['en', 'no its not 17 its 7 kg'],
  ['en', '7 kg not 17'],
  ['es', 'no espera son 7 kilos no 17'],
  ['es', 'no, espere, pesa 7 kilos'],
  ['es', 'no no es 17 son 7 kilos'],
  ['fr', "non attends c'est 7 kg pas 17"],
  ['fr', "non c'est pas 17 c'est 7 kg"],
  ['fr', 'non attendez, elle fait 7 kilos'],
];

describe('the no of a correction', () => {
  it.each(corrections)('%s: "%s" is no answer', (language, text) => {
    for (const asking of ['kit', 'strips', 'contents', 'secured', 'own-tube'] as const) {
      expect(eventOf(text, { asking, language, tubeIn: asking !== 'kit' }), asking).toMatchObject({
        type: 'told',
        told: { weight: { kg: 7 } },
      });
    }
  });

  it.each([
    ['en', 'wrong answer', null],
    ['en', 'no sorry i put the wrong weight', 'weight'],
    ['es', 'puse mal el peso', 'weight'],
    ['fr', "j'ai mis le mauvais poids", 'weight'],
  ] as const)('%s: "%s" asks for the fact again', (language, text, key) => {
    expect(eventOf(text, { asking: 'kit', language })).toMatchObject({ type: 'correct', key });
  });

  it.each([
    ['en', 'no we dont have it, sorry she is 7 kg'],
    ['en', 'sorry no she is 7 kg'],
    ['es', 'no tenemos, perdon, pesa 7 kilos'],
    ['fr', "non j'en ai pas, pardon, elle fait 7 kilos"],
  ] as const)('%s: "%s" answers beside it', (language, text) => {
    expect(eventOf(text, { asking: 'kit', language })).toMatchObject({ type: 'answer.kit', value: 'no' });
  });
});
