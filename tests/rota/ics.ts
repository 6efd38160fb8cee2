/** Calendars for tests, written as a calendar program writes them. People and numbers are invented. */
import type { Nurse } from '#src/rota/rota.ts';

export const imke: Nurse = { name: 'Imke', number: '+12125550151' };
export const tariq: Nurse = { name: 'Tariq', number: '+12125550152' };
export const solveig: Nurse = { name: 'Solveig', number: '+12125550153' };
export const people = [imke, tariq, solveig];

/** A calendar of these events, each as its lines; other components stand before them. */
export function calendar(events: readonly string[][], components: readonly string[] = []): string {
  const lines = events.flatMap((event, index) => {
    const uid = event.some((line) => line.startsWith('UID:')) ? [] : [`UID:${index}@example.org`];
    return ['BEGIN:VEVENT', ...uid, 'DTSTAMP:20270101T000000Z', ...event, 'END:VEVENT'];
  });
  const head = ['BEGIN:VCALENDAR', 'VERSION:2.0', 'PRODID:-//Example//Tests//EN'];
  return [...head, ...components, ...lines, 'END:VCALENDAR', ''].join('\r\n');
}

/** Every night from 19:00 to 07:00 and every day from 07:00 to 19:00, in New York, without end. */
export function dayAndNight(night: Nurse, day: Nurse, from = '20270101'): string {
  return calendar([
    [
      `DTSTART;TZID=America/New_York:${from}T070000`,
      `DTEND;TZID=America/New_York:${from}T190000`,
      'RRULE:FREQ=DAILY',
      `SUMMARY:${day.name}`,
    ],
    [
      `DTSTART;TZID=America/New_York:${from}T190000`,
      `DTEND;TZID=America/New_York:${nextDay(from)}T070000`,
      'RRULE:FREQ=DAILY',
      `SUMMARY:${night.name}`,
    ],
  ]);
}

function nextDay(day: string): string {
  const [, year, month, date] = /^(\d{4})(\d\d)(\d\d)$/.exec(day) ?? [];
  return new Date(Date.UTC(Number(year), Number(month) - 1, Number(date) + 1))
    .toISOString()
    .slice(0, 10)
    .replaceAll('-', '');
}
