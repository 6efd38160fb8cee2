/** Every text to a caregiver is easy to read, by the formula published for its language. */
import { describe, expect, it } from 'vitest';
import { word } from '#src/wording/word.ts';
import { grade, sentences, words } from './grade.ts';
import { perspicuity, perspicuityOf, syllablesOfSpanish } from './perspicuity.ts';
import { spoken } from './phrases/spoken.ts';
import { ownWords, readability } from './readability.ts';
import { prefaces, says, scene } from './samples.ts';

describe('the Flesch-Kincaid grade', () => {
  /** Worked example published beside the formula in an encyclopedia: 13 words, 24 syllables, grade 11.3. */
  it('agrees with the published worked example', () => {
    const text = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.';
    expect(words(text)).toHaveLength(13);
    expect(grade(text)).toBeCloseTo(11.2646, 3);
  });

  it('counts sentences, not decimal points or numbers with units', () => {
    expect(sentences('Is it 5.5? Reply YES.\nReply NO.')).toHaveLength(3);
    expect(words('4-6 cm (not in), 5.5')).toEqual(['4-6', 'cm', 'not', 'in', '5.5']);
  });

  it('says that an official sentence is hard', () => {
    expect(grade('Immediate medical evaluation is recommended following inadvertent dislodgement.')).toBeGreaterThan(
      15,
    );
  });
});

describe('the perspicuity of Szigriszt-Pazos', () => {
  /**
   * The open-source library textstat 0.7 prints 127.08 for "Hoy es un lindo día" (seen in its users' tests); it counts six
   * syllables there, taking "día" for one.
   */
  it("agrees with another program's figure on its own counts", () => {
    expect(perspicuity({ syllables: 6, words: 5, sentences: 1 })).toBeCloseTo(127.08, 2);
    expect(perspicuityOf('Hoy es un lindo día')).toBeCloseTo(206.835 - (62.3 * 7) / 5 - 5, 3);
  });

  /** Diphthongs and hiatuses as the orthography of the Real Academia Española has them (from memory). */
  it.each([
    ['hoy', 1],
    ['y', 1],
    ['ciudad', 2],
    ['guarde', 2],
    ['leyes', 2],
    ['día', 2],
    ['país', 2],
    ['oído', 3],
    ['cuidado', 3],
    ['línea', 3],
    ['aéreo', 4],
    ['averigüe', 4],
    ['murciélago', 4],
    ['vacielo', 4],
    ['911', 3],
  ])('counts the syllables of %s', (token, count) => {
    expect(syllablesOfSpanish(token)).toBe(count);
  });

  it('says that an official sentence is hard', () => {
    const hard = 'Se recomienda una evaluación inmediata ante la descolocación accidental del dispositivo.';
    expect(perspicuityOf(hard)).toBeLessThan(40);
  });
});

describe.each(spoken)('a text to a caregiver: $code', ({ code }) => {
  const { of, easy } = readability[code];
  const plain = { ...scene, language: code };
  const hard = (texts: readonly string[]) => texts.filter((text) => !easy(of(ownWords(text, scene.site))));

  it.each([plain, { ...plain, child: 'Robin' }])('reads at grade six or below', (told) => {
    expect(hard(says.map((say) => word(say, told)))).toEqual([]);
  });

  it('is so with any short sentence put before it', () => {
    const ask = { key: 'askStrips' as const, params: {} };
    expect(hard(prefaces.map((preface) => word({ ...ask, preface: [preface] }, plain)))).toEqual([]);
  });
});
