/** When a temporary tube must be out, and when the family is warned of it: days counted from its permission. */
import type { Clinical } from '#machines/protocol/settings.ts';
import type { Site } from '#machines/protocol/site.ts';
import { afterQuietHoursMs } from '#machines/rules/quietHours.ts';

export const dayMs = 86_400_000;

/** The end of the stay, epoch ms. */
export function limitAtMs(beganAtMs: number, clinical: Clinical): number {
  return beganAtMs + clinical.stayDays * dayMs;
}

/**
 * The next warning strictly after `atMs`, out of the quiet hours, or else the limit itself; epoch ms. On a short stay a warning
 * that would fall on its beginning or before it is skipped, and a warning missed by a late timer is not made up for.
 */
export function nextMarkAtMs(beganAtMs: number, clinical: Clinical, site: Site, atMs: number): number {
  const limitMs = limitAtMs(beganAtMs, clinical);
  const warningsMs = [clinical.stayFirstWarningDays, clinical.staySecondWarningDays]
    .map((days) => limitMs - days * dayMs)
    .filter((warningMs) => warningMs > beganAtMs)
    .map((warningMs) => afterQuietHoursMs(warningMs, site));
  return Math.min(limitMs, ...warningsMs.filter((warningMs) => warningMs > atMs));
}

/** Days left until the limit, begun days counted as whole. */
export function daysLeft(beganAtMs: number, clinical: Clinical, atMs: number): number {
  return Math.ceil((limitAtMs(beganAtMs, clinical) - atMs) / dayMs);
}
