/** What is asked after a permission, and when: one question at a time, and out of the quiet hours all that can wait. */
import { DateTime } from 'luxon';
import type { Clinical } from '#machines/protocol/settings.ts';
import type { Site } from '#machines/protocol/site.ts';
import { clinicAskAtMs } from '#machines/rules/clinicDay.ts';
import { afterQuietHoursMs } from '#machines/rules/quietHours.ts';
import { zoneOf } from '#machines/rules/zone.ts';

export const followUps = ['first-feed', 'first-signs', 'later-signs', 'clinic', 'clinic-again'] as const;
/** One question that follows: how the first feed went, the warning signs twice, the clinic at most twice. */
export type FollowUp = (typeof followUps)[number];

/** What the schedule depends on. */
export interface Asked {
  readonly clinical: Clinical;
  readonly site: Site;
  /** Epoch ms of the permission, which every wait counts from. */
  readonly beganAtMs: number;
  /** The question that is open, asked at `askedAtMs`. */
  readonly open: FollowUp | null;
  /** Epoch ms of the last question; 0, long past, before the first. */
  readonly askedAtMs: number;
  /** Answered, given up on, or overtaken by a later one. */
  readonly settled: readonly FollowUp[];
}

const minuteMs = 60_000;
const hourMs = 60 * minuteMs;

/** So long a question has to itself: its nudge and its page come first. Common practice, no source. */
const betweenQuestionsMs = 3 * hourMs;
/** The day on which the clinic is asked about again, counted from the permission. Common practice, no source. */
const clinicAgainDays = 3;

/** Each is overtaken by those after it: whoever was not asked in time is asked once, by the latest of them. */
const overtaking: readonly (readonly FollowUp[])[] = [
  ['first-feed', 'first-signs', 'later-signs'],
  ['clinic', 'clinic-again'],
];

/** Those that this one makes needless. */
export function overtakenBy(followUp: FollowUp): readonly FollowUp[] {
  return overtaking.flatMap((line) => line.slice(0, Math.max(0, line.indexOf(followUp))));
}

/** When it is due by itself, epoch ms; a first feed is never held. */
export function dueAtMs(followUp: FollowUp, { clinical, site, beganAtMs }: Asked): number {
  switch (followUp) {
    case 'first-feed':
      return beganAtMs + clinical.firstFeedAfterMinutes * minuteMs;
    case 'first-signs':
      return afterQuietHoursMs(beganAtMs + clinical.nextDayAfterHours * hourMs, site);
    case 'later-signs':
      return afterQuietHoursMs(beganAtMs + clinical.laterSignsAfterHours * hourMs, site);
    case 'clinic':
      return clinicAskAtMs(beganAtMs, site);
    case 'clinic-again': {
      const thirdDay = DateTime.fromMillis(beganAtMs, { zone: zoneOf(site.timeZone) }).plus({ days: clinicAgainDays });
      return clinicAskAtMs(Math.max(thirdDay.startOf('day').toMillis(), clinicAskAtMs(beganAtMs, site) + 1), site);
    }
  }
}

/** The next question and when it comes, epoch ms; null where nothing more is to be asked. Never before `atMs`. */
export function nextFollowUp(
  asked: Asked,
  atMs: number,
): { readonly followUp: FollowUp; readonly atMs: number } | null {
  const waiting = followUps.filter((one) => one !== asked.open && !asked.settled.includes(one));
  const overdue = waiting.filter((one) => dueAtMs(one, asked) <= atMs);
  const needless = new Set(overdue.flatMap(overtakenBy));
  const [next] = waiting
    .filter((one) => !needless.has(one))
    .map((followUp) => ({ followUp, atMs: Math.max(atMs, comesAtMs(followUp, asked)) }))
    .sort((one, other) => one.atMs - other.atMs);
  return next ?? null;
}

/** Never on top of the question before it; what that pushes into the quiet hours is held until they end. */
function comesAtMs(followUp: FollowUp, asked: Asked): number {
  const atMs = Math.max(dueAtMs(followUp, asked), asked.askedAtMs + betweenQuestionsMs);
  return followUp === 'first-feed' ? atMs : afterQuietHoursMs(atMs, asked.site);
}
