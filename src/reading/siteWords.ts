/** A site's own words for tubes and places: each stands in a text for the word the reader knows. */
import type { SiteWords } from '#machines/protocol/siteWords.ts';
import { clean } from './clean.ts';
import type { Lexicon } from './lexicon.ts';

const meanings = ['g', 'gj', 'j', 'nose', 'hospital'] as const;

export interface SiteWord {
  /** Where it stands in the protocol file. */
  readonly field: string;
  readonly meaning: (typeof meanings)[number];
  readonly word: string;
}

/** Every word a site added. */
export function listed({ tubes = {}, places = {} }: SiteWords): SiteWord[] {
  const all = { ...tubes, ...places };
  return meanings.flatMap((meaning) =>
    (all[meaning] ?? []).map((word, place) => ({
      field: `site.words.${meaning === 'hospital' ? 'places' : 'tubes'}.${meaning}.${place}`,
      meaning,
      word,
    })),
  );
}

interface Replacement {
  readonly pattern: RegExp;
  readonly meaning: SiteWord['meaning'];
}

/** Once a protocol: its words never change. */
const built = new WeakMap<SiteWords, readonly Replacement[]>();

/** The longest first, so that a word inside another is not read for itself. */
function replacementsOf(site: SiteWords, words: Lexicon): readonly Replacement[] {
  const known = built.get(site);
  if (known !== undefined) return known;
  const made = listed(site)
    .map(({ word, meaning }) => ({ plain: clean(word, words.grammar.marks), meaning }))
    .sort((a, b) => b.plain.length - a.plain.length)
    .map(({ plain, meaning }) => ({ pattern: new RegExp(`(?<![a-z\\d])${plain}(?![a-z\\d])`, 'g'), meaning }));
  built.set(site, made);
  return made;
}

/** The plain text with a site's words put into the reader's own. */
export function withSiteWords(plain: string, words: Lexicon, site: SiteWords | undefined): string {
  if (site === undefined) return plain;
  return replacementsOf(site, words).reduce(
    (text, { pattern, meaning }) => text.replace(pattern, words.siteWords[meaning]),
    plain,
  );
}
