/** The check of a rota over both nights the clocks change and a holiday. People are invented. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '#src/command.ts';
import { RotaGap, RotaUsage } from '#src/errors.ts';
import { readCalendar } from '#src/rota/calendar.ts';
import { checkRota } from '#src/rota/check.ts';
import { rotaCommand } from '#src/rota/command.ts';
import { alwaysOn, type Rota } from '#src/rota/rota.ts';
import { loadSeeds } from '#src/seeds.ts';
import { fakeLog } from '#tests/line/fakes.ts';
import { calendar, dayAndNight, imke, people, solveig, tariq } from './ics.ts';

const { site } = loadSeeds('seeds').protocol;
const zone = site.timeZone;
const at = (iso: string) => Date.parse(iso);

function rotaOf(...texts: readonly string[]): Rota {
  return { nurses: people, lines: texts.map((text) => readCalendar(text, people, zone).shifts) };
}
const full = rotaOf(dayAndNight(imke, tariq), dayAndNight(tariq, solveig), dayAndNight(solveig, imke));

/** The part of a check about one day. */
function day(lines: readonly string[], title: string): readonly string[] {
  const from = lines.findIndex((line) => line.startsWith(title));
  return lines.slice(from, from + 4);
}

describe('a full rota', () => {
  it('has no gap in a whole year, both nights of the clocks among them', () => {
    const { gaps, lines } = checkRota(full, site, at('2027-01-02T00:00:00-05:00'), at('2028-01-01T00:00:00-05:00'));
    expect(gaps).toBe(0);
    expect(lines.at(-1)).toBe('0 gaps, 0 overlaps, 0 times with one person on two lines');
    expect(day(lines, 'Sun 14 Mar 2027')).toEqual([
      'Sun 14 Mar 2027  clinic closed; the clocks change, this day has 23 hours',
      '  first  00:00 Imke  07:00 Tariq  19:00 Imke',
      '  second 00:00 Tariq  07:00 Solveig  19:00 Tariq',
      '  third  00:00 Solveig  07:00 Imke  19:00 Solveig',
    ]);
    expect(day(lines, 'Sun 7 Nov 2027').slice(0, 2)).toEqual([
      'Sun 7 Nov 2027  clinic closed; the clocks change, this day has 25 hours',
      '  first  00:00 Imke  07:00 Tariq  19:00 Imke',
    ]);
    // 5 U.S.C. 6103: Thanksgiving, the fourth Thursday of November.
    expect(day(lines, 'Thu 25 Nov 2027')[0]).toBe('Thu 25 Nov 2027  clinic closed, holiday');
    expect(day(lines, 'Fri 26 Nov 2027')[0]).toBe('Fri 26 Nov 2027  clinic 08:00 to 17:00');
  });
});

describe('a rota with shifts by exact hours', () => {
  const exact = calendar([
    ['DTSTART;TZID=America/New_York:20270301T070000', 'DURATION:PT12H', 'RRULE:FREQ=DAILY', 'SUMMARY:Tariq'],
    ['DTSTART;TZID=America/New_York:20270301T190000', 'DURATION:PT12H', 'RRULE:FREQ=DAILY', 'SUMMARY:Imke'],
  ]);
  const check = (from: string, to: string) => checkRota(rotaOf(exact), site, at(from), at(to)).lines;

  it('has an hour twice in spring, and an hour of nobody in autumn', () => {
    expect(check('2027-03-13T12:00:00-05:00', '2027-03-15T12:00:00-04:00')).toContain(
      'OVERLAP: first line, Sun 14 Mar 07:00 to Sun 14 Mar 08:00: Imke and Tariq; whose shift began last is called',
    );
    const autumn = check('2027-11-06T12:00:00-04:00', '2027-11-08T12:00:00-05:00');
    expect(autumn).toContain(
      'GAP: first line, Sun 7 Nov 06:00 to Sun 7 Nov 07:00: nobody; pages go to the fallback number',
    );
    expect(day(autumn, 'Sun 7 Nov 2027')[1]).toBe('  first  00:00 Imke  06:00 NOBODY  07:00 Tariq  19:00 Imke');
  });
});

describe('a rota that does not hold', () => {
  it('names one person on two lines', () => {
    const rota = rotaOf(dayAndNight(imke, tariq), dayAndNight(imke, solveig));
    const { lines, gaps } = checkRota(rota, site, at('2027-03-05T12:00:00-05:00'), at('2027-03-06T12:00:00-05:00'));
    expect(gaps).toBe(0);
    expect(lines).toContain('TWICE: second line, Fri 5 Mar 19:00 to Sat 6 Mar 07:00: Imke has an earlier line too');
  });

  it('has a gap from the first moment to the last where a calendar is empty', () => {
    const { lines, gaps } = checkRota(
      rotaOf(calendar([])),
      site,
      at('2027-03-05T12:00:00-05:00'),
      at('2027-03-06T12:00:00-05:00'),
    );
    expect(gaps).toBe(1);
    expect(lines).toContain(
      'GAP: first line, Fri 5 Mar 12:00 to Sat 6 Mar 12:00: nobody; pages go to the fallback number',
    );
  });
});

describe('the rota of the seeds', () => {
  it('has three on call, without gaps, from 2026 on', () => {
    const rota = alwaysOn(loadSeeds('seeds').rota.nurses);
    const { gaps } = checkRota(rota, site, at('2026-01-01T00:00:00-05:00'), at('2027-01-01T00:00:00-05:00'));
    expect(gaps).toBe(0);
    expect(rota.lines).toHaveLength(3);
  });
});

describe('the command', () => {
  let folder: string;
  let printed = '';
  const print = (text: string) => {
    printed += `${text}\n`;
  };
  const environment = () => ({ NIGHTJAR_ROTA: join(folder, 'rota.yaml') });
  const check = (...words: string[]) => rotaCommand(['check', ...words], environment(), fakeLog(), print);

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'rota-'));
    const list = people.map(({ name, number }) => `  - { name: ${name}, number: "${number}" }`).join('\n');
    writeFileSync(join(folder, 'rota.yaml'), `people:\n${list}\ncalendars: [first.ics, second.ics, third.ics]\n`);
    writeFileSync(join(folder, 'first.ics'), dayAndNight(imke, tariq));
    writeFileSync(join(folder, 'second.ics'), dayAndNight(tariq, solveig));
    writeFileSync(join(folder, 'third.ics'), dayAndNight(solveig, imke, '20270310'));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('prints the weeks asked for, and fails on a gap', async () => {
    await check('--from', '2027-03-10', '--weeks', '1').catch((error: unknown) =>
      expect(error).toBeInstanceOf(RotaGap),
    );
    expect(printed).toContain('GAP: third line, Wed 10 Mar 00:00 to Wed 10 Mar 07:00');
    await check('--from', '2027-03-11', '--weeks', '2');
    expect(printed).toContain('On call from Thu 11 Mar 00:00 to Thu 25 Mar 01:00');
  });

  it.each([[['check', '--weeks', 'some']], [['check', '--from', 'soon']], [['look']], [[]]])(
    'refuses what it does not know: %j',
    async (words) => {
      await expect(rotaCommand(words, environment(), fakeLog(), print)).rejects.toThrow(RotaUsage);
    },
  );

  it('ends with 1 on a gap and with 0 without one', async () => {
    const seeds = { NIGHTJAR_SEEDS: 'seeds' };
    expect(await run(['rota', 'check', '--from', '2027-03-10', '--weeks', '1'], environment())).toBe(1);
    expect(await run(['rota', 'check', '--weeks', '1'], seeds)).toBe(0);
  });
});
