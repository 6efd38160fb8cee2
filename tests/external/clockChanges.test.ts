/** Clinic hours across the clock changes of 2026. [run] instants by the IANA zone data; the law that sets each is named beside it. */

import { describe, expect, it } from 'vitest';
import type { Site } from '#machines/protocol/settings.ts';
import { clinicOpen } from '#src/rota/clinicHours.ts';

const everyDay: Site = {
  emergencyNumber: '911',
  hospital: 'Owlet Hill',
  clinicNumber: '+12125550140',
  fallbackNumber: '+12125550141',
  timeZone: 'America/New_York',
  clinicDays: [1, 2, 3, 4, 5, 6, 7],
  clinicOpens: '08:00',
  clinicCloses: '17:00',
  holidays: null,
};

/** Zone, the instant its clocks change, and the local half hour that starts there. */
const changes = [
  // US: Energy Policy Act of 2005, section 110, second Sunday of March and first of November, 02:00 local. [memory]
  ['America/New_York', '2026-03-08T07:00:00Z', '03:00', '03:30'],
  ['America/New_York', '2026-11-01T06:00:00Z', '01:00', '01:30'],
  // EU directive 2000/84/EC and UK Summer Time Order 2002: 01:00 UTC, last Sunday of March and October. [memory]
  ['Europe/London', '2026-03-29T01:00:00Z', '02:00', '02:30'],
  ['Europe/London', '2026-10-25T01:00:00Z', '01:00', '01:30'],
  // Newfoundland, three and a half hours behind UTC: 02:00 local.
  ['America/St_Johns', '2026-03-08T05:30:00Z', '03:00', '03:30'],
  ['America/St_Johns', '2026-11-01T04:30:00Z', '01:00', '01:30'],
  // New South Wales: first Sunday of April and October, 02:00 standard time. [memory]
  ['Australia/Sydney', '2026-04-04T16:00:00Z', '02:00', '02:30'],
  ['Australia/Sydney', '2026-10-03T16:00:00Z', '03:00', '03:30'],
] as const;

describe('the clock change itself', () => {
  it.each(changes)('%s at %s: a clinic that opens at %s opens then', (timeZone, instant, clinicOpens, clinicCloses) => {
    const site = { ...everyDay, timeZone, clinicOpens, clinicCloses };
    const at = Date.parse(instant);
    expect(clinicOpen(site, at - 1)).toBe(false);
    expect(clinicOpen(site, at)).toBe(true);
    expect(clinicOpen(site, at + 30 * 60_000 - 1)).toBe(true);
    expect(clinicOpen(site, at + 30 * 60_000)).toBe(false);
  });
});

describe('eight in the morning, the day before and on the day', () => {
  it.each([
    ['America/New_York', '2026-03-07T13:00:00Z'],
    ['America/New_York', '2026-03-08T12:00:00Z'],
    ['America/New_York', '2026-10-31T12:00:00Z'],
    ['America/New_York', '2026-11-01T13:00:00Z'],
    ['Europe/London', '2026-03-28T08:00:00Z'],
    ['Europe/London', '2026-03-29T07:00:00Z'],
    ['America/St_Johns', '2026-03-07T11:30:00Z'],
    ['America/St_Johns', '2026-03-08T10:30:00Z'],
    ['Australia/Sydney', '2026-04-03T21:00:00Z'],
    ['Australia/Sydney', '2026-04-04T22:00:00Z'],
    // Arizona keeps no summer time.
    ['America/Phoenix', '2026-03-07T15:00:00Z'],
    ['America/Phoenix', '2026-03-08T15:00:00Z'],
  ])('%s opens at %s', (timeZone, instant) => {
    const site = { ...everyDay, timeZone };
    expect(clinicOpen(site, Date.parse(instant) - 1)).toBe(false);
    expect(clinicOpen(site, Date.parse(instant))).toBe(true);
  });
});
