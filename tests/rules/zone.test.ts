/** The remembered offsets of a time zone, against the library's own and, for two changes, the tz database's rules. */
import { IANAZone } from 'luxon';
import { describe, expect, it } from 'vitest';
import { zoneOf } from '#machines/rules/zone.ts';

const minuteMs = 60_000;
const hour = 60;

/** How often the library works out an offset while this runs; it says nine hours each time. */
function worked(run: () => void): number {
  const { offset } = IANAZone.prototype;
  let times = 0;
  IANAZone.prototype.offset = () => {
    times += 1;
    return 9 * hour;
  };
  try {
    run();
  } finally {
    IANAZone.prototype.offset = offset;
  }
  return times;
}

describe('the offset of a zone', () => {
  it.each([
    // tz database 2025b: the second Sunday of March and the first of November, 2 a.m. of the clock.
    { name: 'America/New_York', changesAt: '2027-03-14T07:00:00Z', before: -5 * hour, after: -4 * hour },
    { name: 'America/New_York', changesAt: '2027-11-07T06:00:00Z', before: -4 * hour, after: -5 * hour },
    // Half an hour, and a change at a minute past midnight.
    { name: 'Australia/Lord_Howe', changesAt: '2027-04-03T15:00:00Z', before: 11 * hour, after: 10.5 * hour },
    { name: 'America/St_Johns', changesAt: '2010-11-07T02:31:00Z', before: -2.5 * hour, after: -3.5 * hour },
  ])('$name changes at $changesAt, to the millisecond', ({ name, changesAt, before, after }) => {
    const zone = zoneOf(name);
    const atMs = Date.parse(changesAt);
    expect([-minuteMs, -1, 0, minuteMs].map((ms) => zone.offset(atMs + ms))).toEqual([before, before, after, after]);
  });

  it.each(['Europe/London', 'Asia/Kathmandu', 'America/Sao_Paulo', 'Pacific/Chatham'])(
    'of %s is the library’s at every hour of a year, asked twice',
    (name) => {
      const library = IANAZone.create(name);
      const hours = Array.from(
        { length: 366 * 24 },
        (_, count) => Date.parse('2027-01-01T00:00:00Z') + count * hour * minuteMs,
      );
      const wrong = [...hours, ...hours].filter((atMs) => zoneOf(name).offset(atMs) !== library.offset(atMs));
      expect(wrong).toEqual([]);
    },
  );

  it('of a name that is no zone is none', () => {
    expect(zoneOf('Nowhere/At_All').isValid).toBe(false);
    expect(zoneOf('Nowhere/At_All').offset(0)).toBeNaN();
  });
});

describe('what is remembered', () => {
  it('is one zone a name', () => {
    expect(zoneOf('Europe/Madrid')).toBe(zoneOf('Europe/Madrid'));
    expect(zoneOf('Europe/Madrid')).not.toBe(zoneOf('Europe/Paris'));
  });

  it('is worked out once a minute', () => {
    const zone = zoneOf('Asia/Tokyo');
    const offsets: number[] = [];
    expect(worked(() => offsets.push(...[0, 1, minuteMs - 1].map((ms) => zone.offset(ms))))).toBe(1);
    expect(offsets).toEqual([9 * hour, 9 * hour, 9 * hour]);
    expect(worked(() => zone.offset(minuteMs))).toBe(1);
  });

  it('begins anew after ten thousand minutes', () => {
    const zone = zoneOf('Asia/Seoul');
    const ask = (minute: number) => zone.offset(minute * minuteMs);
    const most = 10_000;
    const all = () => {
      for (let minute = 0; minute < most; minute += 1) ask(minute);
    };
    expect(worked(all)).toBe(most);
    expect(worked(() => ask(0))).toBe(0);
    expect(worked(() => ask(most))).toBe(1);
    expect(worked(() => ask(0))).toBe(1);
  });
});
