/** The sieve spares a text only patterns that cannot be found in it. */
import { describe, expect, it } from 'vitest';
import { type LanguageCode, languageCodes } from '#machines/facts.ts';
import { lexicons } from '#src/reading/lexicon.ts';
import { hear } from '#src/reading/said.ts';
import { neededParts } from '#src/reading/sieve/needed.ts';
import { patternsIn, sieve } from '#src/reading/sieve/sieve.ts';
import { corpusFiles } from './corpus/entries.ts';
import { open } from './open.ts';

const needed = (pattern: RegExp) => {
  const parts = neededParts(pattern);
  return parts && [...parts].sort();
};

describe('what a text needs for a pattern', () => {
  it.each([
    [/bleeding/, ['bleeding']],
    [/\bno\b/, [' no ']],
    [/\b(?:no|not) (?:blood|fever)\b/, ['blood', 'fever']],
    [/\d ?kgs?\b/, ['0 kg ', '0 kgs ', '0kg ', '0kgs ']],
    [/\b\d{1,2}\b/, ['0']],
    [/(?:very )?limp/, ['limp', 'very limp']],
    [/(?:\w+ ){0,3}limp/, ['limp']],
    [/breath\w*(?= hard)/, ['breath']],
    [/(?<!no )fever(?! gone)/, ['fever']],
    [/gr[ae]y/, ['gray', 'grey']],
    [/^yes$/, [' yes ']],
    [/yes, please/, ['yes  please']],
    [/(?:blue)+ lips/, ['blue']],
  ])('%s', (pattern, parts) => {
    expect(needed(pattern)).toEqual(parts);
  });

  it.each([[/(?:limp|\w+)/], [/a?/], [/\w+ \w+/], [/no/], [/limp/i], [/Limp/], [/(?:limp)?/]])(
    'nothing can be named in %s',
    (pattern) => {
      expect(needed(pattern)).toBeNull();
    },
  );
});

/** Every seventh text of the corpora of a language, as the readers see it. */
function texts(language: LanguageCode): string[] {
  const corpora = [language, `${language}-fresh3`, `${language}-fresh7`];
  return corpora
    .flatMap(corpusFiles)
    .flatMap((file) => file.texts)
    .filter((_, place) => place % 7 === 0)
    .map(({ text }) => hear(text, open, language).plain);
}

describe.each(languageCodes)('the patterns of a lexicon, %s', (language) => {
  const patterns = patternsIn(lexicons[language]);

  it('most name what they need', () => {
    const named = patterns.filter((pattern) => neededParts(pattern) !== null);
    expect(named.length / patterns.length).toBeGreaterThan(0.75);
    for (const pattern of named)
      expect([...(neededParts(pattern) ?? [])].every((part) => part.length >= 3 || part.includes('0'))).toBe(true);
  });

  it('find in every text what they find without the sieve', () => {
    const differ = texts(language).flatMap((text) =>
      patterns
        .filter((pattern) => text.search(pattern) !== text.search(new RegExp(pattern)))
        .map(({ source }) => [text, source]),
    );
    expect(differ).toEqual([]);
  });
});

it('does with a text what the pattern does', () => {
  const words = { fever: /fever/g, comma: /, ?/ };
  sieve(words);
  for (const text of ['fever, no fever', 'no', '']) {
    expect(words.fever.test(text)).toBe(/fever/.test(text));
    expect(text.search(words.fever)).toBe(text.search(/fever/g));
    expect(text.match(words.fever)).toEqual(text.match(/fever/g));
    expect([...text.matchAll(words.fever)]).toEqual([...text.matchAll(/fever/g)]);
    expect(text.replace(words.fever, 'x')).toBe(text.replace(/fever/g, 'x'));
    expect(text.replace(words.fever, (word) => word.toUpperCase())).toBe(
      text.replace(/fever/g, (word) => word.toUpperCase()),
    );
    expect(text.split(words.comma)).toEqual(text.split(/, ?/));
    expect(text.split(words.fever, 1)).toEqual(text.split(/fever/g, 1));
  }
});
