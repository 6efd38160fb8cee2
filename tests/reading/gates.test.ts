/** 100,000 random readings in three languages, in short a tenth, at every question: none crashes the reader, none opens a gate by chance. */
import '#tests/seed.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LanguageCode, languageCodes, type QuestionKey, questionKeys } from '#machines/facts.ts';
import { inFull } from '#tests/needs.ts';
import { answerTo, eventOf } from './open.ts';

/** Each gate with the answer that opens it. */
const opens: readonly (readonly [QuestionKey, string])[] = [
  ['unwell', 'no'],
  ['after-in', 'no'],
  ['confirm', 'yes'],
  ['kit', 'yes'],
  ['strips', 'yes'],
  ['secured', 'yes'],
  ['contents', 'yes'],
  ['looks', 'yes'],
  ['fed-lately', 'no'],
  ['tube-in', 'easy'],
  ['own-tube-in', 'easy'],
  ['own-tube', 'yes'],
  ['tube-kind', 'g'],
  ['first-feed', 'yes'],
  ['next-day', 'yes'],
];

/** Words that say nothing of any question, in the three languages, and noise. */
const idle: Readonly<Record<LanguageCode, readonly string[]>> = {
  en: ['the', 'her', 'window', 'phone', 'and', 'my', 'sister', 'said', 'please', 'where', 'because', 'who', 'picture'],
  es: ['la', 'ventana', 'mi', 'hermana', 'dice', 'por favor', 'porque', 'foto', 'que', 'de', 'donde', 'puerta'],
  fr: ['la', 'fenetre', 'ma', 'soeur', 'dit', 'svp', 'parce que', 'photo', 'que', 'de', 'porte', 'quelle'],
};
const noise = fc.oneof(
  fc.string({ maxLength: 12, unit: 'grapheme' }),
  fc.constantFrom('😭', '🙏', '🥺', '​', '́', '…', '¿', '«', '\n', '\t', '\u{1F1FA}\u{1F1F8}', '٣', '你好', 'привет'),
);

/** What people say at any question: fragments with meaning, so that every reader has something to read. */
const meant: Readonly<Record<LanguageCode, readonly string[]>> = {
  en: 'no|yes|not|sure|maybe|g|gj|button|in|out|easy|hard|push|7 kg|5|or|6.5|20 min ago|blood|breathing|fine|done|milk|air|here|called|wait|sorry|2 weeks|march|i think|dont|kit|good'.split(
    '|',
  ),
  es: 'no|si|nunca|segura|quiza|g|gj|boton|entro|salio|facil|dificil|empuje|7 kilos|5|o|6.5|hace 20 min|sangre|respira|bien|listo|leche|aire|aqui|llame|espere|perdon|2 semanas|marzo|creo|tengo|kit'.split(
    '|',
  ),
  fr: 'non|oui|pas|sure|peut etre|g|gj|bouton|rentree|sortie|facile|dur|pousse|7 kilos|5|ou|6,5|y a 20 min|sang|respire|bien|fait|lait|air|la|appele|attends|pardon|2 semaines|mars|je crois|jai|trousse'.split(
    '|',
  ),
};

const phrase = (code: LanguageCode) =>
  fc
    .array(
      fc.oneof(
        { weight: 3, arbitrary: fc.constantFrom(...meant[code]) },
        { weight: 1, arbitrary: fc.constantFrom(...idle[code]) },
        { weight: 1, arbitrary: noise },
      ),
      {
        maxLength: 14,
      },
    )
    .map((some) => some.join(' '));

const readings = inFull ? 34_000 : 3_400;

describe('any text', () => {
  it.each(languageCodes)('%s: becomes one event at every question', (code) => {
    let read = 0;
    fc.assert(
      fc.property(phrase(code), (text) => {
        for (const asking of [null, ...questionKeys]) {
          const { type } = eventOf(text, { asking, language: code, tubeIn: true });
          expect(type.startsWith('answer.') ? type : `answer.${asking}`).toBe(`answer.${asking}`);
          read++;
        }
      }),
      { numRuns: Math.ceil(readings / (questionKeys.length + 1)) },
    );
    expect(read).toBeGreaterThanOrEqual(readings);
  });

  it.each(languageCodes)('%s: that says nothing opens no gate', (code) => {
    const text = fc
      .array(fc.oneof(fc.constantFrom(...idle[code]), noise), { maxLength: 20 })
      .map((some) => some.join(' '))
      // Noise may happen to be a word: a thumb, "y", "g".
      .filter(
        (said) =>
          !/[a-z0-9]/i.test(said.normalize('NFKD').replace(new RegExp(`\\b(?:${idle[code].join('|')})\\b`, 'g'), '')),
      );
    fc.assert(
      fc.property(text, fc.constantFrom(...opens), (said, [asking, opening]) => {
        expect(answerTo(asking, said, { language: code, tubeIn: true })).not.toBe(opening);
      }),
      { numRuns: 1_500 },
    );
  });
});

/** Answers that must not open their gate, whatever is around them and however they are typed. */
const unsafe: Readonly<Record<LanguageCode, Readonly<Partial<Record<QuestionKey, readonly string[]>>>>> = {
  en: {
    unwell: ['yes', 'she is limp', 'blue lips', 'not breathing', 'bleeding a lot', 'not sure'],
    'tube-in': ['had to push', 'not easy', 'it wont go in', 'with force'],
    secured: ['not yet', 'no tape', 'not sure'],
    kit: ['dont have it', 'not sure', 'nobody showed me'],
  },
  es: {
    unwell: ['si', 'esta azul', 'no puede respirar', 'sangra mucho', 'no despierta', 'no estoy segura'],
    'tube-in': ['tuve que empujar', 'no fue facil', 'no entra', 'con fuerza'],
    secured: ['todavia no', 'no tengo cinta', 'no estoy segura'],
    kit: ['no lo tengo', 'no estoy segura', 'nadie me enseno'],
  },
  fr: {
    unwell: ['oui', 'elle est bleue', 'il respire mal', 'ca saigne beaucoup', 'il se reveille pas', 'pas sure'],
    'tube-in': ['jai du pousser', 'pas facile', 'ca rentre pas', 'en forcant'],
    secured: ['pas encore', 'pas de scotch', 'pas sure'],
    kit: ['jai pas', 'pas sure', 'personne ma montre'],
  },
};
const openingOf = new Map(opens);

const wrappings: Readonly<Record<LanguageCode, readonly ((text: string) => string)[]>> = {
  en: [
    (text) => text,
    (text) => text.toUpperCase(),
    (text) => `ok so ${text} 😭`,
    (text) => ` ${text}!! sorry im shaking`,
  ],
  es: [(text) => text, (text) => text.toUpperCase(), (text) => `bueno ${text} 😭`, (text) => ` ${text}!! ay dios mio`],
  fr: [(text) => text, (text) => text.toUpperCase(), (text) => `ben ${text} 😭`, (text) => ` ${text}!! mon dieu`],
};

/** One letter of a longer word doubled, or two in it swapped; its first letter stays. */
function slipped(text: string, at: number, how: 'double' | 'swap' | 'none'): string {
  const places = [...text.matchAll(/(?<=[a-z]{2})[a-z](?=[a-z]{2})/g)].map(({ index }) => index);
  const place = places[at % Math.max(1, places.length)];
  if (how === 'none' || place === undefined) return text;
  const letter = text.charAt(place);
  if (how === 'double') return text.slice(0, place) + letter + text.slice(place);
  return text.slice(0, place) + text.charAt(place + 1) + letter + text.slice(place + 2);
}

describe('what must not open a gate', () => {
  const cases = languageCodes.flatMap((code) =>
    questionKeys.flatMap((asking) => (unsafe[code][asking] ?? []).map((text) => ({ code, asking, text }))),
  );

  it('opens none, however it is wrapped, typed or written', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...cases),
        fc.nat(3),
        fc.nat(20),
        fc.constantFrom('double', 'swap', 'none'),
        ({ code, asking, text }, wrap, at, how) => {
          const said = wrappings[code][wrap]?.(slipped(text, at, how)) ?? text;
          const value = answerTo(asking, said, { language: code, tubeIn: asking === 'secured' });
          expect(value, `${asking}: ${said}`).not.toBe(openingOf.get(asking));
        },
      ),
      { numRuns: 2_500 },
    );
  });
});
