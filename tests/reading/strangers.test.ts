/** What strangers said on the practice line and were misheard in, each as the family it stands for; common practice, no source. */
import { describe, expect, it } from 'vitest';
import type { LanguageCode } from '#machines/facts.ts';
import { read } from '#src/reading/read.ts';
import { eventOf, open } from './open.ts';

const firstText = (text: string, language: LanguageCode = 'en') => read(text, { ...open, language, caseOpen: false });

describe('the file', () => {
  it.each([
    ['en', 'the weight is old, he was 33 pounds last week. rest is right', 14.97],
    ['es', 'el peso es viejo, pesa 14 kilos, lo demas esta bien', 14],
    ['fr', 'le poids a changé, il pèse 14 kilos, le reste est juste', 14],
  ] as const)('%s: "%s" corrects the weight, and the rest stands', (language, text, kg) => {
    const event = eventOf(text, { language, asking: 'confirm' });
    expect(event).toMatchObject({ type: 'answer.confirm', value: 'yes' });
    expect(event.told.weight).toEqual({ kg: expect.closeTo(kg, 1) });
  });

  it.each(['he is 14 kg now, rest isnt right', 'no, he is 14 kg now'])('"%s" leaves nothing standing', (text) => {
    expect(eventOf(text, { asking: 'confirm' })).toMatchObject({ value: 'no', told: { weight: { kg: 14 } } });
  });

  it('is right beside a weight told by the scales, and beside a tube that is lost', () => {
    expect(eventOf('Yes, though she was weighed yesterday: 13.6', { asking: 'confirm' })).toMatchObject({
      value: 'yes',
      told: { weight: { bare: 13.6 } },
    });
    const lost = "oui c'est juste, j'ai le kit j'ai pas la sonde elle est fichue";
    expect(eventOf(lost, { asking: 'confirm', language: 'fr' })).toMatchObject({ value: 'yes' });
    expect(eventOf('oui mais pas la date', { asking: 'confirm', language: 'fr' })).toMatchObject({ value: 'no' });
  });
});

describe('half out', () => {
  it.each([
    ['en', 'ok but its not half out its all the way in just loose'],
    ['es', 'no esta a medias, esta adentro'],
    ['fr', 'Elle est pas à moitié sortie elle est dedans'],
  ] as const)('%s: "%s" takes it back, where the line had it so', (language, text) => {
    const known = { language, halfOut: true, tubeIn: true };
    expect(eventOf(text, known)).toMatchObject({ type: 'correct', key: 'tube-kind' });
    expect(eventOf(text, { ...known, asking: 'unwell' }).type).toBe('correct');
    expect(eventOf(text, { language }).type).not.toBe('correct');
  });

  it('is not what "put back, but it was hard" says; "put back, but it hangs" is', () => {
    const back = (rest: string) =>
      firstText(`Noé a arraché sa gastro vers 2h, on a tout remis mais ${rest}`, 'fr').event;
    expect(back("c'était dur").told).toMatchObject({ backIn: 'hard' });
    expect(back("c'était dur").told.tubeKind).not.toBe('half-out');
    expect(back('ça ressort').told.tubeKind).toBe('half-out');
  });

  it.each([
    ['en', 'EASY??? i never took it out'],
    ['es', 'FACIL??? si nunca la saque'],
    ['fr', "FACILE??? je l'ai jamais sortie"],
  ] as const)('%s: "%s" is a tube in its place, however it was asked', (language, text) => {
    expect(eventOf(text, { language, asking: 'own-tube-in' }).told.inPlace).toBe('in-place');
  });

  it('a tube never taken out of its bag is in no belly', () => {
    expect(eventOf('i never took it out of the bag', { asking: 'kit' }).told.inPlace).toBeUndefined();
    expect(eventOf('nunca la saque de la bolsa', { asking: 'kit', language: 'es' }).told.inPlace).toBeUndefined();
  });

  it('quick is no tube in two pieces', () => {
    expect(eventOf('facile, en 2 secondes', { asking: 'own-tube', language: 'fr' }).type).toBe('unclear');
    expect(eventOf('elle est en 2', { asking: 'own-tube', language: 'fr' })).toMatchObject({ value: 'no' });
  });
});

describe('a wish', () => {
  it('for a person is no number that is lacking', () => {
    expect(eventOf('i dont have a mom phone number on me').person).toBe(false);
    expect(eventOf('i need a phone number').person).toBe(true);
    expect(eventOf('i dont have a phone number for the nurse').person).toBe(true);
  });

  it('to correct is what "they said J but its the GJ" says', () => {
    expect(eventOf('wait they said J but its the GJ')).toMatchObject({ told: { tubeKind: 'gj' }, corrects: true });
  });

  it.each([
    ["the tube fell out, sorry je suis la babysitter I don't speak much french", 'en'],
    ['se salió la sonda de Luz, mi esposa habla ingles pero yo no', 'es'],
    ['la sonde est sortie, ma femme parle anglais mais pas moi', 'fr'],
    ['je parle anglais', 'en'],
  ] as const)('"%s" asks for %s', (text, wanted) => {
    expect(firstText(text).wantsLanguage).toBe(wanted);
  });

  it.each([
    ['no despierta bien', 'es'],
    ['se esta ahogando', 'es'],
    ['she is choking', 'en'],
    ['limp', null],
  ] as const)('a danger said in one language is written in it: "%s"', (text, language) => {
    expect(firstText(text).writtenIn).toBe(language);
  });
});

describe('another child', () => {
  it.each([
    ['en', 'mom of twins both have tubes, Leo pulled his out, milo is fine'],
    ['en', 'twins, one tube out, the other one is fine'],
    ['es', 'mis gemelos tienen sonda, Leo se la saco, milo esta bien'],
    ['fr', 'mes jumeaux ont une sonde, Léo a arraché la sienne, milo va bien'],
  ] as const)('%s: "%s" has no second tube out', (language, text) => {
    expect(firstText(text, language).event.told.severalChildren).toBeUndefined();
  });

  it.each([
    ['en', 'my twins tubes came out, she is fine'],
    ['es', 'se salieron las sondas de mis gemelas, ella esta bien'],
    ['fr', 'les sondes de mes jumeaux sont sorties, tout va bien'],
  ] as const)('%s: "%s" may have', (language, text) => {
    expect(firstText(text, language).event.told.severalChildren).toBe(true);
  });
});

describe('who writes', () => {
  it.each([
    ['en', 'its me again, on my neighbors phone'],
    ['en', 'same case as before'],
    ['es', 'es el mismo caso de Gael ya les escribi'],
    ['es', 'le escribo del cel de mi hermana'],
    ['fr', "c'est encore moi la maman de marc, c'est le tel de ma voisine"],
  ] as const)('%s: "%s" says so', (language, text) => {
    expect(firstText(text, language).saysWho).toBe(true);
  });
});
