/** The reader's work is bounded: none of its patterns can be catastrophic, whatever is sent. */
import { describe, expect, it } from 'vitest';
import { languageCodes, questionKeys } from '#machines/facts.ts';
import { lexicons } from '#src/reading/lexicon.ts';
import { read } from '#src/reading/read.ts';
import { isCatastrophic } from './ambiguity.ts';
import { open } from './open.ts';

/** Every pattern of a lexicon, however deep, with its path; the calendar library's own are not ours. */
function patternsIn(value: unknown, path: string): [string, string][] {
  if (value instanceof RegExp) return [[path, value.source]];
  if (typeof value !== 'object' || value === null || value instanceof Set) return [];
  return Object.entries(value)
    .filter(([name]) => name !== 'monthFirst' && name !== 'dayFirst')
    .flatMap(([name, inner]) => patternsIn(inner, `${path}.${name}`));
}

/** The patterns the readers use while they read one text at every question: those put together from words too. */
function patternsUsed(text: string): Set<string> {
  const used = new Set<string>();
  const { exec } = RegExp.prototype;
  RegExp.prototype.exec = function (this: RegExp, ...args) {
    used.add(this.source);
    return exec.apply(this, args);
  };
  try {
    for (const language of languageCodes)
      for (const asking of [null, ...questionKeys]) read(text, { ...open, language, asking, tubeIn: true });
  } finally {
    RegExp.prototype.exec = exec;
  }
  return used;
}

describe('the check of a pattern', () => {
  // The first two are the standard examples of such patterns (OWASP, "Regular expression Denial of Service").
  it.each(['(a+)+$', '(a|aa)+$', '(?:any|anymore|more)*$', '(?:\\w+ |so )*x', '(?:it |was |it was )*$'])(
    'finds the catastrophe in %s',
    (source) => {
      expect(isCatastrophic(source)).toBe(true);
    },
  );

  it.each(['a+b+$', '(?:the |a )*tube', '(?:\\w+ )*x', '(?:\\w+ ){0,3}in', '(?=(?:a|b)*c)d', '\\b(?:kg|kilos?)\\b'])(
    'finds none in %s',
    (source) => {
      expect(isCatastrophic(source)).toBe(false);
    },
  );
});

describe('the patterns of the reader', () => {
  it.each(languageCodes)('%s: none of the lexicon is catastrophic', (code) => {
    const all = patternsIn(lexicons[code], code);
    expect(all.length).toBeGreaterThan(300);
    expect(all.filter(([, source]) => isCatastrophic(source)).map(([path]) => path)).toEqual([]);
  });

  it('nor is one put together while reading', () => {
    // No word of the calendar, so that its library stays out of it.
    const used = patternsUsed('no wait 7 kilos not 17, in 2 hours or 3, yes it went in easy, 8 lb 2 oz, no blood');
    const ofLexicons = new Set(languageCodes.flatMap((code) => patternsIn(lexicons[code], code)).map(([, of]) => of));
    expect([...used].filter((source) => !ofLexicons.has(source)).length).toBeGreaterThan(40);
    expect([...used].filter(isCatastrophic)).toEqual([]);
  });
});
