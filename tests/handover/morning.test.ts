/** A morning on the whole practice line: the handover comes at its hour, on the way of the clock, and is acknowledged or goes on. */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type App, openPractice } from '#src/app.ts';
import { handoverCommand } from '#src/handover/command.ts';
import { createLog } from '#src/log.ts';
import { loadSeeds } from '#src/seeds.ts';
import { copyEmpty } from '#tests/store/empty.ts';

const seeds = loadSeeds('seeds');
const { families } = seeds;
const [imke] = seeds.rota.nurses.map(({ number }) => number);
const dayTeam = seeds.protocol.site.handoverNumber;
const wren = numberOf('Wren');
const night = '2027-03-06T02:10:00-05:00';

let app: App;
const running = new Set<App>();
let folder: string;
let count = 0;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nightjar-morning-'));
  const log = createLog({ write: () => {} });
  await copyEmpty(join(folder, 'data'));
  app = await openPractice({ port: 0, dataFolder: join(folder, 'data'), databaseUrl: null, seedsFolder: 'seeds' }, log);
  running.add(app);
});
afterAll(async () => {
  await Promise.all([...running].map((one) => one.stop()));
  await rm(folder, { recursive: true, force: true });
});
beforeEach(() => app.line.reset(Date.parse(night), { families }));

function numberOf(child: string): string {
  const family = families.find((one) => one.child === child);
  if (family === undefined) throw new Error(`${child} is a family of the seeds`);
  return family.number;
}

/** What left because of a text, or of the clock going on to a time. */
async function text(from: string | undefined, body: string) {
  const cause = `text-${++count}`;
  await app.line.hear({ from: String(from), body, id: cause, cause });
  await app.line.settle(cause);
  return app.line.sentBecauseOf(cause);
}
async function clock(to: string) {
  const cause = `clock-${++count}`;
  await app.line.advance(Date.parse(to), cause);
  return app.line.sentBecauseOf(cause);
}
const toDayTeam = (sent: Awaited<ReturnType<typeof text>>) => sent.filter(({ to }) => to === dayTeam);

/** An open page that Imke took: her case is open, and nobody is called any more. */
async function oneCase() {
  await text(wren, 'wrens g tube came out 10 min ago');
  await text(wren, 'can I talk to a nurse please');
  await text(imke, 'take');
}

describe('the morning', () => {
  it('says nothing where there is nothing to hand over, for three weeks', async () => {
    expect(await clock('2027-03-27T12:00:00-04:00')).toEqual([]);
  });

  it('hands over at half past seven, once, and the day team has it', async () => {
    await oneCase();
    expect(toDayTeam(await clock('2027-03-06T07:29:59-05:00'))).toEqual([]);
    const [given, ...more] = toDayTeam(await clock('2027-03-06T07:30:00-05:00'));
    expect(more).toEqual([]);
    expect(given).toMatchObject({ at: '2027-03-06T07:30:00.000-05:00', kind: 'text' });
    expect(given?.body).toMatch(/^HANDOVER Sat 07:30: 1 open case.* Wren .*Reply GOT IT$/s);

    const [answer, ...others] = await text(dayTeam, 'Got it, thanks!');
    expect(answer).toMatchObject({ to: dayTeam, body: 'Noted: the handover is yours.' });
    expect(others).toEqual([]);
    const later = await clock('2027-03-06T09:00:00-05:00');
    expect(later.filter(({ body }) => body.includes('HANDOVER'))).toEqual([]);
    expect((await text(dayTeam, 'ok'))[0]?.body).toBe('No handover is waiting.');
  });

  it('goes to the first on call after half an hour without an answer, whose bare words do not take it', async () => {
    await oneCase();
    await clock('2027-03-06T07:59:59-05:00');
    const again = (await clock('2027-03-06T08:00:00-05:00')).filter(({ body }) => body.includes('HANDOVER'));
    expect(again).toHaveLength(1);
    expect(again[0]).toMatchObject({ to: imke, at: '2027-03-06T08:00:00.000-05:00' });
    expect(again[0]?.body).toMatch(/^HANDOVER of Sat 07:30 NOT ACKNOWLEDGED by the day team.*Reply HANDOVER OK$/s);
    expect((await text(imke, 'got it'))[0]?.body).not.toContain('Noted');
    expect((await text(imke, 'handover ok'))[0]?.body).toBe('Noted: the handover is yours.');
  });

  it('comes again the next day, on the way of one long move, each at its own time', async () => {
    await oneCase();
    const given = toDayTeam(await clock('2027-03-08T12:00:00-05:00')).filter(({ body }) => body.startsWith('HANDOVER'));
    expect(given.map(({ at }) => at)).toEqual(['06', '07', '08'].map((day) => `2027-03-${day}T07:30:00.000-05:00`));
  });

  it('leaves a text that is about a tube to the conversation, also from the day team’s phone', async () => {
    await oneCase();
    await clock('2027-03-06T07:30:00-05:00');
    await text(dayTeam, 'my sons g tube just fell out');
    expect((await app.line.newestCase(String(dayTeam)))?.asking).toBe('unwell');
    expect((await text(dayTeam, 'ok')).map(({ body }) => body)).not.toContain('Noted: the handover is yours.');
  });

  it('is written by the command as it stands, from a line that is stopped', async () => {
    await oneCase();
    running.delete(app);
    await app.stop();
    const out = join(folder, 'handover.html');
    let printed = '';
    await handoverCommand(
      ['--out', out],
      { NIGHTJAR_DATA: join(folder, 'data') },
      createLog({ write: () => {} }),
      (line) => {
        printed += line;
      },
    );
    expect(printed).toContain(out);
    expect(await readFile(out, 'utf8')).toMatch(/To be watched[\s\S]*Wren[\s\S]*Imke has it/);
  });
});
