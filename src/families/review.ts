/** What of a family's file wants a look by day: facts that are missing, and facts that are no longer new. */
import type { FamilyFile } from '#machines/facts.ts';

/** A child under this grows too fast for an old weight; 3 kg is where the insertion length changes. */
const smallKg = 3;
const dayMs = 86_400_000;
/** How long facts stay new, in days; common practice, no source. */
const fresh = { smallWeight: 7, infantWeight: 31, weight: 183, facts: 365 };
const infantDays = 366;

/** What the line will have to ask at night, none where the file is complete and new. */
export function reviewOf(file: FamilyFile, nowMs: number): readonly string[] {
  return [
    ...(file.tubeKind === 'unknown' ? ['kind of tube not on file'] : []),
    ...(file.firstPlaced === null ? ['first placement not on file'] : []),
    ...(file.weightKg === null ? ['weight not on file'] : []),
    ...(isSmall(file) && isOlder(file.weighedOn, fresh.smallWeight, nowMs)
      ? ['weight under 3 kg, older than a week']
      : []),
  ];
}

/** What the clinic has to ask the family by day: consent, and facts that have aged. */
export function agedOf(file: FamilyFile, nowMs: number): readonly string[] {
  const isInfant = file.born !== null && !isOlder(file.born, infantDays, nowMs);
  const weightDays = isInfant ? fresh.infantWeight : fresh.weight;
  const weightAged = file.weightKg !== null && !isSmall(file) && isOlder(file.weighedOn, weightDays, nowMs);
  return [
    ...(file.consentOn == null ? ['consent not on file'] : []),
    ...(weightAged ? [`weight older than ${weightDays} days`] : []),
    ...(isOlder(file.reviewedOn ?? null, fresh.facts, nowMs) ? [`facts not reviewed for ${fresh.facts} days`] : []),
  ];
}

function isSmall({ weightKg }: FamilyFile): boolean {
  return weightKg !== null && weightKg < smallKg;
}

/** A day that is not on file is older than any. */
function isOlder(day: string | null, days: number, nowMs: number): boolean {
  return day === null || nowMs - Date.parse(day) > days * dayMs;
}
