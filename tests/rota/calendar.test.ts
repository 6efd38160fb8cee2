/** Calendars read as RFC 5545 (iCalendar) has them. Its own examples are named beside each check; people are invented. */
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { CalendarRefused } from '#src/errors.ts';
import { readCalendar } from '#src/rota/calendar.ts';
import { calendar, imke, people, solveig, tariq } from './ics.ts';

const zone = 'America/New_York';
const at = (iso: string) => Date.parse(iso);

/** The starts of all shifts between two days, as local time with the offset. */
function starts(event: readonly string[], from: string, to: string, components: readonly string[] = []): string[] {
  const { shifts } = readCalendar(calendar([[...event, 'SUMMARY:Imke']], components), people, zone);
  return shifts(at(from), at(to)).map(({ startMs }) => local(startMs));
}
const local = (ms: number, name = zone) => DateTime.fromMillis(ms, { zone: name }).toFormat("yyyy-MM-dd'T'HH:mmZZ");

/** RFC 5545, 3.6.5: the zone of its own example, under a name that is on no list. */
const newYorkByHand = [
  'BEGIN:VTIMEZONE',
  'TZID:Our town',
  'BEGIN:DAYLIGHT',
  'DTSTART:20070311T020000',
  'RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=2SU',
  'TZOFFSETFROM:-0500',
  'TZOFFSETTO:-0400',
  'TZNAME:EDT',
  'END:DAYLIGHT',
  'BEGIN:STANDARD',
  'DTSTART:20071104T020000',
  'RRULE:FREQ=YEARLY;BYMONTH=11;BYDAY=1SU',
  'TZOFFSETFROM:-0400',
  'TZOFFSETTO:-0500',
  'TZNAME:EST',
  'END:STANDARD',
  'END:VTIMEZONE',
];

describe.each([
  ['a zone of the IANA list', zone, []],
  ['a zone the calendar describes itself', 'Our town', newYorkByHand],
])('%s', (_what, tzid, components) => {
  // RFC 5545, 3.3.5: both are its examples, with the answer it gives.
  it.each([
    ['a local time that comes twice is the first', '20071104T013000', '2007-11-04T01:30:00-04:00'],
    ['a local time that is missing counts by the offset before', '20070311T023000', '2007-03-11T03:30:00-04:00'],
  ])('%s', (_rule, written, instant) => {
    const event = [`DTSTART;TZID="${tzid}":${written}`, 'DURATION:PT1H'];
    const { shifts } = readCalendar(calendar([[...event, 'SUMMARY:Imke']], components), people, zone);
    expect(shifts(at('2007-01-01Z'), at('2008-01-01Z')).map(({ startMs }) => startMs)).toEqual([at(instant)]);
  });

  it('agrees with luxon on every quarter of an hour around both changes but the doubled hour, which luxon leaves open', () => {
    for (const day of ['2027-03-14', '2027-11-07']) {
      for (let quarter = 0; quarter < 96; quarter += 1) {
        const wall = DateTime.fromISO(`${day}T00:00`, { zone: 'utc' }).plus({ minutes: 15 * quarter });
        const expected = DateTime.fromISO(wall.toFormat("yyyy-MM-dd'T'HH:mm"), { zone });
        const both = expected.getPossibleOffsets();
        const event = [`DTSTART;TZID="${tzid}":${wall.toFormat("yyyyMMdd'T'HHmm'00'")}`, 'DURATION:PT1H'];
        const { shifts } = readCalendar(calendar([[...event, 'SUMMARY:Imke']], components), people, zone);
        const found = shifts(at('2027-01-01Z'), at('2028-01-01Z'));
        expect(found.map(({ startMs }) => local(startMs))).toEqual([local((both[0] ?? expected).toMillis())]);
      }
    }
  });
});

describe('recurring shifts', () => {
  // RFC 5545, 3.8.5.3, with the dates it lists.
  it('daily for ten occurrences', () => {
    const event = ['DTSTART;TZID=America/New_York:19970902T090000', 'DURATION:PT1H', 'RRULE:FREQ=DAILY;COUNT=10'];
    const days = ['02', '03', '04', '05', '06', '07', '08', '09', '10', '11'];
    expect(starts(event, '1997-01-01Z', '1998-01-01Z')).toEqual(days.map((day) => `1997-09-${day}T09:00-04:00`));
  });

  it('daily until a day, across the change of October 1997', () => {
    const event = [
      'DTSTART;TZID=America/New_York:19970902T090000',
      'DURATION:PT1H',
      'RRULE:FREQ=DAILY;UNTIL=19971224T000000Z',
    ];
    const all = starts(event, '1997-01-01Z', '1998-01-01Z');
    // "September 2-30; October 1-25 (EDT); October 26-31; November 1-30; December 1-23 (EST)"
    expect(all).toHaveLength(29 + 31 + 30 + 23);
    expect(all.filter((start) => start.endsWith('-04:00')).at(-1)).toBe('1997-10-25T09:00-04:00');
    expect(all.filter((start) => start.endsWith('-05:00'))[0]).toBe('1997-10-26T09:00-05:00');
    expect(all.at(-1)).toBe('1997-12-23T09:00-05:00');
  });

  it('every other week on two days, for eight occurrences', () => {
    const event = [
      'DTSTART;TZID=America/New_York:19970902T090000',
      'DURATION:PT1H',
      'RRULE:FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH',
    ];
    // "September 2,4,16,18,30; October 2,14,16"
    const days = ['09-02', '09-04', '09-16', '09-18', '09-30', '10-02', '10-14', '10-16'];
    expect(starts(event, '1997-01-01Z', '1998-01-01Z')).toEqual(days.map((day) => `1997-${day}T09:00-04:00`));
  });

  it('the last weekday but one of the month', () => {
    const event = [
      'DTSTART;TZID=America/New_York:19970929T090000',
      'DURATION:PT1H',
      'RRULE:FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2',
    ];
    // "September 29 (EDT); October 30; November 27; December 30 (EST)"
    const days = ['09-29T09:00-04:00', '10-30T09:00-05:00', '11-27T09:00-05:00', '12-30T09:00-05:00'];
    expect(starts(event, '1997-01-01Z', '1998-01-01Z')).toEqual(days.map((day) => `1997-${day}`));
  });

  it('monthly on the first Friday, with every exception left out, even those that fit nothing', () => {
    const event = [
      'DTSTART;TZID=America/New_York:19970905T090000',
      'DURATION:PT1H',
      'RRULE:FREQ=MONTHLY;COUNT=4;BYDAY=1FR',
      'EXDATE;TZID=America/New_York:19970906T090000,19970907T090000',
      'EXDATE:19971003T130000Z',
      'EXDATE;VALUE=DATE:19971205',
    ];
    expect(starts(event, '1997-01-01Z', '1998-01-01Z')).toEqual(['1997-09-05T09:00-04:00', '1997-11-07T09:00-05:00']);
  });

  it('extra dates beside the first', () => {
    const event = [
      'DTSTART;TZID=America/New_York:20270301T190000',
      'DURATION:PT12H',
      'RDATE;TZID=America/New_York:20270303T190000,20270305T190000',
    ];
    const days = ['01', '03', '05'];
    expect(starts(event, '2027-01-01Z', '2028-01-01Z')).toEqual(days.map((day) => `2027-03-${day}T19:00-05:00`));
  });

  it('a last day written without its time is all of that day', () => {
    const event = ['DTSTART;VALUE=DATE:20270301', 'RRULE:FREQ=DAILY;UNTIL=20270303'];
    expect(starts(event, '2027-01-01Z', '2028-01-01Z')).toHaveLength(3);
  });
});

describe('an override', () => {
  const series = [
    'UID:nights@example.org',
    'DTSTART;TZID=America/New_York:20270301T190000',
    'DTEND;TZID=America/New_York:20270302T070000',
    'RRULE:FREQ=DAILY;COUNT=5',
    'SUMMARY:Imke',
  ];
  const override = (...lines: string[]) => ['UID:nights@example.org', ...lines];
  const shiftsOf = (...events: string[][]) =>
    readCalendar(calendar(events), people, zone)
      .shifts(at('2027-01-01Z'), at('2028-01-01Z'))
      .map(({ nurse, startMs, endMs }) => `${nurse.name} ${local(startMs)} ${local(endMs)}`);

  it('takes the place of the one it names, by another person at another time', () => {
    const moved = override(
      'RECURRENCE-ID;TZID=America/New_York:20270303T190000',
      'DTSTART;TZID=America/New_York:20270303T210000',
      'DTEND;TZID=America/New_York:20270304T070000',
      'ATTENDEE;CN=Somebody:tel:+1-212-555-0152',
      'SUMMARY:Imke is ill',
    );
    expect(shiftsOf(series, moved)).toEqual([
      'Imke 2027-03-01T19:00-05:00 2027-03-02T07:00-05:00',
      'Imke 2027-03-02T19:00-05:00 2027-03-03T07:00-05:00',
      'Tariq 2027-03-03T21:00-05:00 2027-03-04T07:00-05:00',
      'Imke 2027-03-04T19:00-05:00 2027-03-05T07:00-05:00',
      'Imke 2027-03-05T19:00-05:00 2027-03-06T07:00-05:00',
    ]);
  });

  it('that is cancelled leaves a gap, named by an instant too', () => {
    const gone = override(
      'RECURRENCE-ID:20270303T000000Z',
      'DTSTART;TZID=America/New_York:20270302T190000',
      'DTEND;TZID=America/New_York:20270303T070000',
      'STATUS:CANCELLED',
      'SUMMARY:Imke',
    );
    expect(shiftsOf(series, gone).map((shift) => shift.slice(5, 15))).toEqual([
      '2027-03-01',
      '2027-03-03',
      '2027-03-04',
      '2027-03-05',
    ]);
  });

  it('of everything that follows is refused, rather than half read', () => {
    const onward = override(
      'RECURRENCE-ID;RANGE=THISANDFUTURE;TZID=America/New_York:20270303T190000',
      'DTSTART;TZID=America/New_York:20270303T210000',
      'DTEND;TZID=America/New_York:20270304T070000',
    );
    expect(() => shiftsOf(series, onward)).toThrow(CalendarRefused);
  });
});

describe('a shift over the night the clocks change', () => {
  const hours = (event: readonly string[]) =>
    readCalendar(calendar([[...event, 'SUMMARY:Imke']]), people, zone)
      .shifts(at('2027-03-01Z'), at('2027-12-01Z'))
      .filter(({ startMs }) => ['03-13', '11-06'].includes(local(startMs).slice(5, 10)))
      .map(({ startMs, endMs }) => `${(endMs - startMs) / 3_600_000} h to ${local(endMs)}`);
  const nightly = ['DTSTART;TZID=America/New_York:20270301T190000', 'RRULE:FREQ=DAILY'];

  it('ends by the clock on the wall, so that nobody is missing and nobody is called twice', () => {
    const event = [...nightly, 'DTEND;TZID=America/New_York:20270302T070000'];
    expect(hours(event)).toEqual(['11 h to 2027-03-14T07:00-04:00', '13 h to 2027-11-07T07:00-05:00']);
  });

  it('lasts its exact hours where it is written as a duration (RFC 5545, 3.3.6: hours are exact, days are not)', () => {
    expect(hours([...nightly, 'DURATION:PT12H'])).toEqual([
      '12 h to 2027-03-14T08:00-04:00',
      '12 h to 2027-11-07T06:00-05:00',
    ]);
    expect(hours([...nightly, 'DURATION:P1D'])).toEqual([
      '23 h to 2027-03-14T19:00-04:00',
      '25 h to 2027-11-07T19:00-05:00',
    ]);
  });

  it('of a whole day has all of it', () => {
    const event = ['DTSTART;VALUE=DATE:20270301', 'RRULE:FREQ=WEEKLY;BYDAY=SA'];
    expect(hours(event)).toEqual(['24 h to 2027-03-14T00:00-05:00', '24 h to 2027-11-07T00:00-04:00']);
  });
});

describe('whose shift it is', () => {
  const one = ['DTSTART:20270301T190000Z', 'DURATION:PT12H'];
  const read = (...lines: string[]) => readCalendar(calendar([[...one, ...lines]]), people, zone);
  const names = (...lines: string[]) =>
    read(...lines)
      .shifts(at('2027-01-01Z'), at('2028-01-01Z'))
      .map(({ nurse }) => nurse);

  it.each([
    [imke, ['SUMMARY:Imke']],
    [imke, ['SUMMARY:On call: IMKE (nights)']],
    [tariq, ['ATTENDEE:tel:+12125550152', 'SUMMARY:Nights']],
    // RFC 3966, 5: visual separators and parameters.
    [tariq, ['ATTENDEE;CN=T:tel:+1(212)555-0152;ext=7', 'SUMMARY:Imke']],
    [solveig, ['ATTENDEE:mailto:lead@example.org', 'SUMMARY:Solveig']],
  ])('%o', (nurse, lines) => {
    expect(names(...lines)).toEqual([nurse]);
  });

  it.each([
    ['nobody of the rota', ['SUMMARY:Somebody']],
    ['two of them', ['SUMMARY:Imke or Tariq']],
    ['two by number', ['ATTENDEE:tel:+12125550151', 'ATTENDEE:tel:+12125550152', 'SUMMARY:Imke']],
    ['nobody at all', []],
    ['a longer name that holds one', ['SUMMARY:Imkeline']],
  ])('is nobody’s where it names %s, and says so', (_whom, lines) => {
    expect(names(...lines)).toEqual([]);
    expect(read(...lines).nameless).toHaveLength(1);
  });
});

describe('what cannot be read', () => {
  const shift = ['DTSTART:20270301T190000Z', 'DURATION:PT12H', 'SUMMARY:Imke'];
  it.each([
    ['no calendar', '<html>Sign in</html>'],
    ['nothing', ''],
    ['a bare event', 'BEGIN:VEVENT\r\nDTSTART:20270301T190000Z\r\nDURATION:PT12H\r\nEND:VEVENT\r\n'],
    ['a zone nobody knows', calendar([['DTSTART;TZID=Nowhere:20270301T190000', 'DURATION:PT1H', 'SUMMARY:Imke']])],
    ['no start', calendar([['DURATION:PT12H', 'SUMMARY:Imke']])],
    ['no end', calendar([['DTSTART:20270301T190000Z', 'SUMMARY:Imke']])],
    ['a start that is no time', calendar([['DTSTART:tomorrow', 'DURATION:PT12H', 'SUMMARY:Imke']])],
    ['a rule that never rests', calendar([[...shift, 'RRULE:FREQ=SECONDLY']])],
    ['a rule that is none', calendar([[...shift, 'RRULE:FREQ=SOMETIMES']])],
  ])('is refused: %s', (_what, text) => {
    expect(() => readCalendar(text, people, zone)).toThrow(CalendarRefused);
  });
});
