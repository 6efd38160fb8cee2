/** When the morning handover is given. */
import { DateTime } from 'luxon';
import type { Site } from '#machines/protocol/settings.ts';
import { atClock } from '#src/rota/wallClock.ts';

/** How long the day team has to say that it has the handover, before somebody else is told; common practice, no source. */
export const acknowledgeMs = 30 * 60_000;

/** The site's hour, `HH:MM`. */
export function handoverAt(site: Site): string {
  return site.handoverAt ?? '07:30';
}

/** The next handover strictly after `afterMs` (epoch ms), or null where the site gives none. */
export function nextHandoverMs(site: Site, afterMs: number): number | null {
  if (site.handoverNumber === undefined) return null;
  const local = DateTime.fromMillis(afterMs, { zone: site.timeZone });
  if (!local.isValid) throw new RangeError(`no local time in ${site.timeZone}`);
  const todayMs = atClock(local, handoverAt(site));
  return todayMs > afterMs ? todayMs : atClock(local.plus({ days: 1 }), handoverAt(site));
}
