/** What if: past cases played on another protocol show what would change, and nothing else. Nights and values are invented. */
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pino } from 'pino';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Clinical } from '#machines/protocol/settings.ts';
import { openPractice } from '#src/app.ts';
import { NoLineDatabase, ProtocolUsage } from '#src/errors.ts';
import { protocolCommand } from '#src/protocol/command.ts';
import { type CoursePart, compareCase, type Difference, type PastCase } from '#src/protocol/compare.ts';
import { compareReport } from '#src/protocol/compareReport.ts';
import { sampled, sampleSize } from '#src/protocol/review.ts';
import { protocolWith, startMs } from '#tests/dislodgement/night.ts';
import { type Move, places, signalOf } from '#tests/golden/places.ts';
import { copyEmpty } from '#tests/store/empty.ts';

const minuteMs = 60_000;

/** A case that went as one of the golden places did, and was recorded for a while after. */
function past(name: string, minutesAfter = 0): PastCase {
  const place = places.find((other) => other.name === name);
  if (place === undefined) throw new Error(`no place ${name}`);
  const waitsBefore = (index: number) =>
    place.moves.slice(0, index).reduce((sum, move) => sum + ('waitMinutes' in move ? move.waitMinutes : 0), 0);
  const isMove = (move: Move): move is Exclude<Move, { waitMinutes: number }> => !('waitMinutes' in move);
  const signals = place.moves.flatMap((move, index) =>
    isMove(move) ? [signalOf(move, startMs + waitsBefore(index) * minuteMs)] : [],
  );
  const untilMs = startMs + (waitsBefore(place.moves.length) + minutesAfter) * minuteMs;
  return { id: 7, protocol: protocolWith(), file: place.file, openedMs: startMs, signals, untilMs };
}

const whatIf = (given: PastCase, clinical: Partial<Clinical>) => compareCase(given, protocolWith(clinical));
const minutes = (difference: Difference | null, side: 'own' | 'other', part: CoursePart) =>
  difference?.[side][part].map(({ atMs, what }) => `${(atMs - startMs) / minuteMs} ${what}`);

describe('a past case', () => {
  it.each(places.map(({ name }) => name))('%s goes as it went on a protocol that is the same', (name) => {
    expect(whatIf(past(name, 120), {})).toBeNull();
  });

  it('that used a tube on a reading of 5 would be asked on at a limit of 5, and the rest is not known', () => {
    const difference = whatIf(past('first-feed'), { phLimit: 5 });
    expect(difference?.parting).toEqual({ atMs: startMs, own: 'secured', other: 'fed-lately' });
    expect(difference?.differs).toEqual(['disposition', 'timing']);
    expect(minutes(difference, 'own', 'disposition')).toEqual(['0 use']);
    expect(minutes(difference, 'other', 'disposition')).toEqual([]);
  });

  it('that waited for its recheck would be asked sooner', () => {
    const difference = whatIf(past('recheck-due'), { recheckMinutes: 30 });
    expect(difference?.differs).toEqual(['timing']);
    expect(minutes(difference, 'own', 'timing')).toEqual(['60 askAfterIn']);
    expect(minutes(difference, 'other', 'timing')).toEqual(['30 askAfterIn']);
    // That nothing was written in the second half hour is no silence: nobody had been asked.
    expect(difference?.parting).toEqual({ atMs: startMs + 30 * minuteMs, own: null, other: 'after-in' });
  });

  it('whose page climbed would have reached the second person later', () => {
    const difference = whatIf(past('page-climbs'), { urgentSecondMinutes: 14, urgentThirdMinutes: 20 });
    expect(difference?.differs).toContain('page');
    const second = (side: 'own' | 'other') =>
      minutes(difference, side, 'page')?.find((page) => page.includes('person 2'));
    expect(second('own')).toBe('10 urgent, person 2: hard-insertion');
    expect(second('other')).toBeUndefined();
  });

  it('is not listed for words alone, or for waits that it never came to', () => {
    expect(whatIf(past('first-feed'), { flushMl: 3 })).toBeNull();
    expect(whatIf(past('secured'), { quietMinutes: 7, routineThirdMinutes: 45 })).toBeNull();
  });

  it('is played by the clinic hours of the protocol it is played on', () => {
    const given = past('recheck-due', 0);
    const night = protocolWith();
    const day = { ...night, site: { ...night.site, clinicDays: [6], clinicOpens: '00:00', clinicCloses: '23:59' } };
    const second = { ...given, signals: [...given.signals, ...laterHigh(given.untilMs)], untilMs: given.untilMs };
    const difference = compareCase(second, day);
    expect(difference?.own.disposition.at(-1)?.what).toBe('go-in');
    expect(difference?.other.disposition.at(-1)?.what).toBe('hold');
  });
});

/** A second high reading when the recheck is due. */
function laterHigh(atMs: number) {
  const told = { told: {}, person: false, corrects: false };
  return [
    signalOf({ ...told, type: 'answer.after-in', value: 'no' }, atMs),
    signalOf({ ...told, type: 'answer.contents', value: 'yes' }, atMs),
    signalOf({ ...told, type: 'answer.ph', value: { low: 7, high: 7 } }, atMs),
  ];
}

describe('a sample of readings', () => {
  it('is the same for the same texts in any order, and no longer than it is asked to be', () => {
    const all = Array.from({ length: 100 }, (_, id) => ({ id, atMs: startMs, text: `text ${id}`, readAs: 'told' }));
    expect(sampled(all)).toHaveLength(sampleSize);
    expect(sampled(all.toReversed())).toEqual(sampled(all));
    expect(new Set(sampled(all).map(({ id }) => id)).size).toBe(sampleSize);
  });
});

describe('the report', () => {
  it('puts both courses side by side and says from where the other is not known', () => {
    const difference = whatIf(past('first-feed'), { phLimit: 5 });
    const text = compareReport({ count: 3, differences: difference ? [difference] : [], zone: 'America/New_York' });
    expect(text).toContain('3 past cases played on both protocols; 1 would go otherwise.');
    expect(text).toContain('Case A07 (number 7), opened 6 Mar 2027 02:10');
    expect(text).toMatch(/told to {4}6 Mar 02:10 {2}use {2,}-/);
    expect(text).toContain('from 6 Mar 02:10 on the family would have been asked fed-lately instead of secured');
  });
});

describe('past cases of the practice line’s database', () => {
  const silent = pino({ enabled: false });
  let folder: string;
  const compare = async (...words: string[]) => {
    const printed: string[] = [];
    await protocolCommand(['compare', ...words], {}, silent, (text) => printed.push(text));
    return printed.join('\n');
  };

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'nightjar-compare-'));
    await cp('seeds', join(folder, 'seeds'), { recursive: true });
    const dataFolder = join(folder, 'data');
    await copyEmpty(dataFolder);
    const app = await openPractice(
      { port: 0, databaseUrl: null, dataFolder, seedsFolder: join(folder, 'seeds') },
      silent,
    );
    let texts = 0;
    const night = async (from: string, ...bodies: string[]) => {
      for (const body of bodies) {
        texts += 1;
        await app.line.hear({ from, body, id: `text ${texts}`, cause: `cause ${texts}` });
        await app.line.settle(`cause ${texts}`);
      }
    };
    const upToStrip = [
      'g tube came out 10 min ago',
      'no',
      'yes',
      'it burst',
      'yes',
      'its in, easy',
      'no',
      'yes',
      'yes',
    ];
    await night('+12125550101', ...upToStrip, '5.5', 'done');
    await night('+12125550102', 'gj tube came out 20 min ago', 'no', 'yes', 'yes', 'in easy');
    const held = [
      'g tube came out 5 min ago',
      'no',
      '2 years ago',
      'no',
      'yes',
      '7 kg',
      'had to push',
      'no',
      'yes',
      'yes',
    ];
    await night('+12025550177', ...held, '5');
    await night('+12125550151', 'clear', 'yes');
    await app.line.advance((await app.line.now()) + 4 * 60 * minuteMs, 'later');
    await app.stop();
    const seeds = await readFile('seeds/protocol.yaml', 'utf8');
    await writeFile(join(folder, 'strict.yaml'), seeds.replace('phLimit: 6', 'phLimit: 5'));
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  it('lists the cases whose readings would not have passed a changed pH limit, and no other', async () => {
    const text = await compare(join(folder, 'strict.yaml'), '--data', join(folder, 'data'));
    expect(text).toContain('3 past cases played on both protocols; 2 would go otherwise.');
    expect(text.match(/Case .* \(number \d\)/g)).toEqual(['Case A01 (number 1)', 'Case A03 (number 3)']);
    expect(text).toMatch(/told to .*use/);
    expect(text).not.toMatch(/Wren|Ode|\+1212555/);
  });

  it('lists nothing on the same protocol', async () => {
    expect(await compare('seeds/protocol.yaml', '--data', join(folder, 'data'))).toBe(
      '3 past cases played on both protocols; 0 would go otherwise.',
    );
  });

  it('review lists every clearance with what was held, and texts beside what they were read as', async () => {
    const printed: string[] = [];
    await protocolCommand(['review', '--data', join(folder, 'data')], {}, silent, (text) => printed.push(text));
    const text = printed.join('\n');
    expect(text).toContain('1 clearance, every one of them:');
    expect(text).toMatch(/A03 {2}.* {2}g, pH 5, went in hard; then go-in/);
    expect(text).toMatch(/A01 {2}.* {2}"5\.5"\n {7}read as {2}answer\.ph, value \{"high":5\.5,"low":5\.5\}/);
    expect(text).toMatch(/"had to push"\n {7}read as {2}answer\.tube-in, value "hard"/);
    // The nurse's own words are no readings.
    expect(text).not.toContain('"clear"');
  });

  it('refuses a folder that is not there, and a call without a file', async () => {
    await expect(compare('seeds/protocol.yaml', '--data', join(folder, 'none'))).rejects.toThrow(NoLineDatabase);
    await expect(compare()).rejects.toThrow(ProtocolUsage);
  });
});
