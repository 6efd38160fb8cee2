/** How urgent each reason for a page is, how each level reaches a person, and how long it waits for one. */
import { type PageLevel, type PageReason, pageLevels } from '#machines/facts.ts';
import type { Clinical } from '#machines/protocol/settings.ts';

/** One level a reason. Which reason belongs to which level is common practice, no source. */
export const levelOf: Record<PageReason, PageLevel> = {
  'danger-sign': 'emergency',
  'warning-sign': 'emergency',
  'tract-too-young': 'emergency',
  'tract-nearly-too-young': 'emergency',
  'unwell-unread': 'emergency',
  'not-well-after': 'emergency',
  'sick-line': 'emergency',
  'restricted-kind': 'urgent',
  'restricted-tract': 'urgent',
  'half-out': 'urgent',
  'in-place': 'urgent',
  'in-blocked': 'urgent',
  'in-sore': 'urgent',
  'in-leaking': 'urgent',
  'nose-tube': 'urgent',
  latex: 'urgent',
  'no-kit': 'urgent',
  'not-shown': 'urgent',
  'will-not-go-in': 'urgent',
  'out-too-long': 'urgent',
  'hard-insertion': 'urgent',
  'no-strips': 'urgent',
  'no-contents': 'urgent',
  'second-high': 'urgent',
  unread: 'urgent',
  'not-secured': 'urgent',
  'tube-problem': 'urgent',
  'came-out-again': 'urgent',
  stopped: 'urgent',
  'person-wanted': 'urgent',
  rang: 'urgent',
  'cannot-wait': 'urgent',
  silence: 'urgent',
  'not-arrived': 'urgent',
  'not-reached': 'urgent',
  untouched: 'urgent',
  'weight-doubtful': 'urgent',
  'which-child': 'urgent',
  'same-child': 'urgent',
  'child-corrected': 'urgent',
  'other-child': 'urgent',
  'weight-unknown': 'routine',
  'reading-corrected': 'routine',
  'after-feed-reading': 'routine',
  'clinic-not-called': 'routine',
  'unread-in-use': 'routine',
  'aftercare-silence': 'routine',
  'stay-limit': 'routine',
};

/** Whether `one` is a strictly more urgent level than `other`. */
export function isHigher(one: PageLevel, other: PageLevel): boolean {
  return pageLevels.indexOf(one) > pageLevels.indexOf(other);
}

/** When a climb calls whom, in minutes from its start. */
export interface Waits {
  /** The first person, again. Also how long the third person has before the family is told. */
  readonly repeatMinutes: number;
  readonly secondMinutes: number;
  readonly thirdMinutes: number;
}

/** The waits of a level, from the site's signed settings (`protocol/settings.ts` holds their sources). */
export function waitsOf(level: PageLevel, clinical: Clinical): Waits {
  return {
    repeatMinutes: clinical[`${level}RepeatMinutes`],
    secondMinutes: clinical[`${level}SecondMinutes`],
    thirdMinutes: clinical[`${level}ThirdMinutes`],
  };
}

export type Way = 'text' | 'call';

/** How a level reaches a person: the telephone rings for an emergency at once, for an urgent page from its repeat on. */
export function waysOf(level: PageLevel, isRepeat: boolean): readonly Way[] {
  const rings = level === 'emergency' || (level === 'urgent' && isRepeat);
  return rings ? ['text', 'call'] : ['text'];
}
