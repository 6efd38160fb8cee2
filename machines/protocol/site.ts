/** The site's own facts: its numbers, zone, languages and hours. */
import type { LanguageCode } from '#machines/facts.ts';
import type { SiteWords } from './siteWords.ts';

export interface Site {
  readonly emergencyNumber: string;
  readonly hospital: string;
  /** The hospital's telephone, for a family no nurse answers; not told where it is left out. */
  readonly hospitalNumber?: string;
  readonly clinicNumber: string;
  /** Rung when the rota names nobody. */
  readonly fallbackNumber: string;
  readonly timeZone: string;
  /** The languages switched on, English always one of them; all where none is named. */
  readonly languages?: readonly LanguageCode[];
  /** Its own words for devices and places. */
  readonly words?: SiteWords;
  /** Working days of the clinic, ISO weekday numbers, and its hours as `HH:MM`. */
  readonly clinicDays: readonly number[];
  readonly clinicOpens: string;
  readonly clinicCloses: string;
  /** The family's quiet hours, a time of day as `HH:MM` each; their defaults and bounds are in `rules/quietHours.ts`. */
  readonly quietFrom?: string;
  readonly quietUntil?: string;
  /** Holiday calendar of the clinic: a country, or country and state, as `US` or `US-NY`; null for none. */
  readonly holidays: string | null;
  /** The day team's telephone, for the morning handover; none is given where it is left out. */
  readonly handoverNumber?: string;
  /** When it is given, a time of day as `HH:MM`. */
  readonly handoverAt?: string;
}
