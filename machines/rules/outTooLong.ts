/** Whether the tube has been out so long that the tract may have narrowed. */

import type { Clinical } from '#machines/protocol/settings.ts';

const hourMs = 3_600_000;

/**
 * True when the tube has been out longer than the site's hours at `atMs` (epoch ms, as `cameOutAtMs`), or when nobody knows.
 * A time still to come cannot be true, so it counts as unknown. Not asked yet (`null`) is not too long.
 * Source: the setting's own, `outTooLongHours` in `protocol/settings.ts`.
 */
export function outTooLong(cameOutAtMs: number | 'unknown' | null, atMs: number, clinical: Clinical): boolean {
  if (cameOutAtMs === null) return false;
  if (cameOutAtMs === 'unknown' || cameOutAtMs > atMs) return true;
  return atMs - cameOutAtMs > clinical.outTooLongHours * hourMs;
}
