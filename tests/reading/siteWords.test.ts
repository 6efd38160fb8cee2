/** A site's own words for tubes and places are read as what they stand for; one that means something else is refused. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type LanguageCode, languageCodes } from '#machines/facts.ts';
import { parseProtocol } from '#machines/protocol/load.ts';
import type { SiteWords } from '#machines/protocol/siteWords.ts';
import { contentOf } from '#src/protocol/content.ts';
import { siteWordRefusals } from '#src/reading/siteWordsCheck.ts';
import { loadProtocol } from '#src/seeds.ts';
import { answerTo, eventOf } from './open.ts';

/** Invented. */
const siteWords: SiteWords = {
  tubes: { g: ['zorbel', 'Pérol mini'], gj: ['twinzorbel', 'zorbel two'], nose: ['snoozle'] },
  places: { hospital: ['Owlet Hill'] },
};
const protocolYaml = readFileSync(new URL('../../seeds/protocol.yaml', import.meta.url), 'utf8');
const withWords = (words: string) => protocolYaml.replace('  # Monday (1)', `  words: ${words}\n  # Monday (1)`);

describe("a site's words", () => {
  it.each(languageCodes)('%s: name the tube at the question and unasked', (language) => {
    const kind = (text: string) => answerTo('tube-kind', text, { language, siteWords });
    expect(kind('zorbel')).toBe('g');
    expect(kind('ZORBEL!')).toBe('g');
    expect(kind('perol mini')).toBe('g');
    expect(kind('twinzorbel')).toBe('gj');
    expect(kind('zorbel two')).toBe('gj');
    expect(kind('snoozle')).toBe('nose');
    expect(eventOf('zorbel, 7 kg', { language, siteWords, caseOpen: false }).told).toMatchObject({ tubeKind: 'g' });
  });

  it.each<readonly [LanguageCode, string]>([
    ['en', 'we are at owlet hill'],
    ['es', 'estamos en owlet hill'],
    ['fr', 'on est a owlet hill'],
  ])('%s: name the hospital: %s', (language, text) => {
    expect(answerTo('arrived', text, { language, siteWords })).toBe('yes');
  });

  it('are nothing to another site, and no part of a longer word', () => {
    expect(answerTo('tube-kind', 'zorbel')).not.toBe('g');
    expect(answerTo('tube-kind', 'zorbeline', { siteWords })).not.toBe('g');
  });

  it('hide no danger beside them', () => {
    expect(eventOf('zorbel out and she is blue', { siteWords, asking: 'tube-kind' })).toMatchObject({
      type: 'signs',
      sure: ['colour'],
    });
  });
});

describe('a word that means something already', () => {
  it.each([
    'button', // either kind
    'gj tube',
    'stop', // a carrier keyword
    'help',
    'blue', // danger
    'sangre',
    'no respira',
    'limp one',
    'yes',
    'maybe',
    'the tube',
    'feeding tube',
    'seven',
    'yesterday',
    'thanks',
    'nurse',
    'her meds',
  ])('is refused: %s', (word) => {
    expect(siteWordRefusals({ tubes: { g: [word] } })).toEqual([
      { field: 'site.words.tubes.g.0', value: word, bound: expect.stringContaining('nothing else') },
    ]);
  });

  it('is refused in the file with its field and reason', () => {
    expect(() => loadProtocol(withWords('{ tubes: { gj: [zorbel, stop] } }'))).toThrow(
      /site\.words\.tubes\.gj\.1 is "stop"/,
    );
    expect(() => loadProtocol(withWords('{ tubes: { g: [zorbel], gj: [Zorbel] } }'))).toThrow(/gj\.0 .*one meaning/);
    expect(() => loadProtocol(withWords('{ tubes: { g: [zo] } }'))).toThrow(/site\.words\.tubes\.g\.0 .*3 to 40/);
    expect(() => loadProtocol(withWords('{ tubes: { peg: [zorbel] } }'))).toThrow(/site\.words\.tubes\.peg/);
    expect(() => loadProtocol(withWords('{ tubes: { g: ["(.*)+"] } }'))).toThrow(/3 to 40/);
  });
});

describe('the practice site', () => {
  it('has none of its own; adding one changes what a signature covers', () => {
    const protocol = loadProtocol(protocolYaml);
    expect(protocol.site.words).toBeUndefined();
    const added = loadProtocol(withWords('{ tubes: { g: [zorbel] } }'));
    expect(contentOf(added).hash).not.toBe(contentOf(protocol).hash);
    expect(parseProtocol(JSON.parse(JSON.stringify(added)))).toEqual(added);
  });
});
