/** Reads a nurse's text about a swap. Only one plain form is read; anything else that begins like one changes nothing. */
import { DateTime } from 'luxon';
import type { Site } from '#machines/protocol/settings.ts';
import { plainNurse } from '#src/reading/plainNurse.ts';
import type { Nurse } from './rota.ts';
import { atClock } from './wallClock.ts';

/** A time in which two people stand in each other's place, epoch ms. */
export interface SwapSpan {
  readonly fromMs: number;
  readonly toMs: number;
}

export type SwapWord =
  | ({ readonly word: 'ask'; readonly other: Nurse } & SwapSpan)
  | { readonly word: 'yes' | 'no' }
  /** It speaks of a swap, but not in a form that is read. */
  | { readonly word: 'unclear' };

const weekdays = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const asking = new RegExp(
  `^swap (?:my )?(?:(?<now>tonight|today)|(?<day>tomorrow|${weekdays.join('|')}) (?<part>day|night)) with (?<name>\\S+)$`,
);

/** A longer text may speak of swapping something else. */
const beginsLikeOne = /^(?:(?:can|could) (?:we|i|you) )?swap\b/;

/**
 * What a text says of a swap, or null where it says nothing of one. A day runs from the clinic's opening to its closing,
 * a night on to its next opening; "tonight" before the clinic opens is the night that has begun.
 */
export function readSwap(text: string, nurses: readonly Nurse[], site: Site, nowMs: number): SwapWord | null {
  const plain = plainNurse(text);
  if (/^(?:yes swap|swap yes)$/.test(plain)) return { word: 'yes' };
  if (/^(?:no swap|swap no)$/.test(plain)) return { word: 'no' };
  const { now, day, part, name } = asking.exec(plain)?.groups ?? {};
  if (name === undefined) return beginsLikeOne.test(plain) ? { word: 'unclear' } : null;
  const other = nurses.find((nurse) => plainNurse(nurse.name) === name);
  const span = spanOf(site, nowMs, now ?? `${day} ${part}`);
  return other === undefined || span === null ? { word: 'unclear' } : { word: 'ask', other, ...span };
}

/** Null where it is over already. */
function spanOf(site: Site, nowMs: number, when: string): SwapSpan | null {
  const local = DateTime.fromMillis(nowMs, { zone: site.timeZone });
  if (!local.isValid) throw new RangeError(`no local time in ${site.timeZone}`);
  const begun = when === 'tonight' && nowMs < atClock(local, site.clinicOpens);
  const day = local.plus({ days: begun ? -1 : daysAhead(local, when) });
  const isNight = when.endsWith('night');
  const fromMs = Math.max(nowMs, atClock(day, isNight ? site.clinicCloses : site.clinicOpens));
  const toMs = isNight ? atClock(day.plus({ days: 1 }), site.clinicOpens) : atClock(day, site.clinicCloses);
  return toMs > fromMs ? { fromMs, toMs } : null;
}

function daysAhead(local: DateTime, when: string): number {
  if (when.startsWith('tomorrow')) return 1;
  const weekday = weekdays.indexOf(when.split(' ')[0] ?? '') + 1;
  return weekday === 0 ? 0 : (weekday - local.weekday + 7) % 7;
}
