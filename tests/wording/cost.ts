/** What three whole nights cost in segments, in each language: every text the caregiver gets, at the moment it is sent. */
import type { FamilyFile } from '#machines/facts.ts';
import type { Say } from '#machines/says.ts';
import type { LanguageCode } from '#src/wording/catalogue.ts';
import { word } from '#src/wording/word.ts';
import { Night, toInsertion } from '#tests/dislodgement/night.ts';
import { segmentsOf } from './segments.ts';

/** An invented family on file: the own tube goes back in. */
const enrolled: FamilyFile = {
  child: 'Robin',
  born: '2024-09-01',
  tubeKind: 'g',
  firstPlaced: '2025-03-01',
  weightKg: 7,
  weighedOn: '2027-03-01',
};

const easyNight = () =>
  new Night(enrolled)
    .tell({ tubeKind: 'g' })
    .answer('unwell', 'no')
    .answer('confirm', 'yes')
    .answer('own-tube', 'yes')
    .answer('own-tube-in', 'easy')
    .answer('after-in', 'no')
    .answer('came-out', Date.parse('2027-03-06T01:50:00-05:00'))
    .answer('strips', 'yes')
    .answer('contents', 'yes')
    .answer('ph', { low: 4, high: 4 })
    .answer('secured', 'yes');

const recheckNight = () =>
  toInsertion()
    .answer('tube-in', 'easy')
    .answer('after-in', 'no')
    .answer('strips', 'yes')
    .answer('contents', 'no')
    .answer('contents', 'yes')
    .answer('ph', { low: 6.5, high: 6.5 })
    .answer('fed-lately', 'no')
    .wait(60)
    .answer('after-in', 'no')
    .answer('contents', 'yes')
    .answer('ph', { low: 5, high: 5 })
    .answer('secured', 'yes');

const goInNight = () => new Night().tell({}).answer('unwell', 'no').answer('tube-kind', 'j');

export const nights: readonly (readonly [string, () => Night])[] = [
  ['an easy night, own tube back in', easyNight],
  ['a temporary tube, with a recheck', recheckNight],
  ['a night that goes in', goInNight],
];

/** The texts of a night, in order. */
export function textsOf(night: Night): readonly Say[] {
  return night.all.flatMap((effect) => (effect.type === 'say' && effect.by === 'text' ? [effect.say] : []));
}

/** How many texts a night takes, and how many segments they come to. */
export function costOf(night: Night, language: LanguageCode): { readonly texts: number; readonly segments: number } {
  const says = textsOf(night);
  const scene = { language, site: night.protocol.site, nowMs: night.nowMs, child: null };
  const segments = says.reduce((sum, say) => sum + segmentsOf(word(say, scene)).count, 0);
  return { texts: says.length, segments };
}
