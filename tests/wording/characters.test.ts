/** Every text keeps to the GSM 7-bit alphabet, whatever a name or a family's own words bring in. */
import '#tests/seed.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clip, plainName, plainText } from '#src/wording/plain.ts';
import { word, wordForNurse } from '#src/wording/word.ts';
import { nurseSays, shortPage } from './nurseSamples.ts';
import { spoken } from './phrases/spoken.ts';
import { fullCard, longScene, prefaces, says, scene } from './samples.ts';
import { segmentsOf } from './segments.ts';

/**
 * 3GPP TS 23.038, default alphabet by code (0x00-0x7F but for ESC), then the extension table. Written out here a second
 * time, row by row as the standard prints it, not taken from the source under test.
 */
const standard = [
  '@£$¥èéùìòÇ\nØø\rÅå',
  'Δ_ΦΓΛΩΠΨΣΘΞÆæßÉ',
  ' !"#¤%&\'()*+,-./',
  '0123456789:;<=>?',
  '¡ABCDEFGHIJKLMNO',
  'PQRSTUVWXYZÄÖÑÜ§',
  '¿abcdefghijklmno',
  'pqrstuvwxyzäöñüà',
];
const extension = '\f^{}\\[~]|€';
const alphabet = new Set([...standard.join(''), ...extension]);

function strangers(text: string): string[] {
  return [...text].filter((character) => !alphabet.has(character));
}

describe('the GSM 7-bit alphabet', () => {
  it('has 127 characters and 10 of the extension, as the standard counts them', () => {
    expect(standard.join('')).toHaveLength(127);
    expect(alphabet.size).toBe(137);
  });

  it.each(spoken)('holds every character of every text to a caregiver: $code', ({ code }) => {
    for (const told of [scene, longScene]) {
      for (const say of [...says, { key: 'thanks' as const, params: {}, preface: prefaces }]) {
        const text = word(say, { ...told, language: code });
        expect(strangers(text), text).toEqual([]);
        expect(segmentsOf(text).encoding, text).toBe('GSM-7');
      }
    }
  });

  it('holds every character of every text to a nurse', () => {
    for (const message of nurseSays) expect(strangers(wordForNurse(message, scene))).toEqual([]);
  });

  it('holds whatever a name, a site or a family writes', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (odd) => {
        const site = { ...scene.site, hospital: odd };
        const card = word(
          { key: 'goInCard', params: { ...fullCard, cannotWait: odd }, preface: [] },
          { ...scene, child: odd },
        );
        const goIn = word({ key: 'goInStill', params: { told: null }, preface: [] }, { ...scene, site, child: odd });
        const page = wordForNurse({ key: 'page', params: { ...shortPage, child: odd } }, scene);
        expect([card, goIn, page].flatMap(strangers)).toEqual([]);
      }),
    );
  });
});

describe('a character the alphabet lacks', () => {
  it('becomes its look-alike or its letter without the accent', () => {
    expect(plainText('\u201cdon\u2019t\u201d \u2013 Zo\u00eb, Micha\u0142, Ren\u00e9e')).toBe(
      '"don\'t" - Zoe, Michal, Renée',
    );
    expect(plainText('10\u00a0mL\u2026')).toBe('10 mL...');
  });

  it('is left out where it has no equal', () => {
    expect(plainText('feed \u{1f37c}now')).toBe('feed now');
  });

  it('in a name that cannot be written whole makes it "your child"', () => {
    expect(plainName('\u5c0f\u660e')).toBeNull();
    expect(plainName(' ')).toBeNull();
    expect(word({ key: 'recheckCall', params: {}, preface: [] }, { ...scene, child: '\u5c0f\u660e' })).toContain(
      'your child',
    );
  });
});

describe('a long name', () => {
  it('is cut and the cut shown', () => {
    expect(clip('exactly ten', 11)).toBe('exactly ten');
    expect(clip('exactly eleven', 11)).toBe('exactly...');
    expect(plainName('Maximiliana-Rosalind Tennant')).toHaveLength(20);
  });
});
