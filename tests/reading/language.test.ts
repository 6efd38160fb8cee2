/** Which language a text is in, and which it asks for: only what is clear. */
import { describe, expect, it } from 'vitest';
import { detectLanguage, languageWish } from '#src/reading/language.ts';
import { read } from '#src/reading/read.ts';
import { corpusFiles } from './corpus/entries.ts';
import { open } from './open.ts';

describe('the language of a text', () => {
  it.each([
    ['se le salió la sonda a mi hija', 'es'],
    ['Hola, a mi niño se le salio el boton', 'es'],
    ['hola', 'es'],
    ['elle a perdu sa sonde depuis une heure', 'fr'],
    ['bonjour la sonde de mon fils est sortie', 'fr'],
    ["the tube fell out of my daughter's belly", 'en'],
  ] as const)('is clear: %s', (text, language) => {
    expect(detectLanguage(text)).toBe(language);
  });

  it.each(['no', 'si', 'ok', '7 kg', '5.5', '', '👍', 'g', 'tube', 'la la la', 'kilos'])('is not: %j', (text) => {
    expect(detectLanguage(text)).toBeNull();
  });

  it('is never taken for another where the whole corpus is English', () => {
    const texts = corpusFiles('en').flatMap((file) => file.texts.map(({ text }) => text));
    expect(texts.filter((text) => !['en', null].includes(detectLanguage(text)))).toEqual([]);
    expect(texts.filter((text) => languageWish(text) !== null)).toEqual([]);
  });
});

describe('a wish for a language', () => {
  it.each([
    ['en español por favor', 'es'],
    ['In Spanish please', 'es'],
    ['Spanish', 'es'],
    ['no hablo inglés', 'es'],
    ['puede escribirme en español?', 'es'],
    ['en français svp', 'fr'],
    ["je ne parle pas l'anglais", 'fr'],
    ['can you text me in French', 'fr'],
    ['English please', 'en'],
    ['en inglés por favor', 'en'],
  ] as const)('%s, and the last question is put once more', (text, wanted) => {
    expect(languageWish(text)).toEqual({ wanted, rest: '' });
    const { event, wantsLanguage } = read(text, { ...open, asking: 'unwell' });
    expect([event.type, wantsLanguage]).toEqual(['repeat', wanted]);
  });

  it('leaves the rest of the text to be read: "no hablo ingles" is no answer', () => {
    const { event, wantsLanguage } = read('no hablo ingles. si', { ...open, asking: 'unwell' });
    expect(event).toMatchObject({ type: 'answer.unwell', value: 'yes' });
    expect(wantsLanguage).toBe('es');
  });

  it('is no size in French', () => {
    expect(languageWish('its a 14 french please hurry')).toBeNull();
  });
});
