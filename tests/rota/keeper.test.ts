/** The rota kept as it is now: from files, and from a real server that answers by HTTP. */
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { CalendarUnreachable } from '#src/errors.ts';
import { type KeeperParts, keepRota } from '#src/rota/keeper.ts';
import { onCall } from '#src/rota/rota.ts';
import { shelfIn } from '#src/rota/shelf.ts';
import { fetchCalendar, type Text } from '#src/rota/source.ts';
import { migrate } from '#src/store/migrate.ts';
import { createSeal, practiceKey } from '#src/store/seal.ts';
import { fakeLog } from '#tests/line/fakes.ts';
import { databases } from '#tests/store/databases.ts';
import { dayAndNight, imke, people, solveig, tariq } from './ics.ts';

const night = Date.parse('2027-03-06T02:10:00-05:00');

describe('a rota of calendar files', () => {
  let folder: string;
  let log: ReturnType<typeof fakeLog>;
  const shelf = new Map<string, Text>();
  const parts = (): KeeperParts => ({
    file: { nurses: people, calendars: ['first.ics', 'second.ics', 'third.ics'] },
    folder,
    timeZone: 'America/New_York',
    shelf: {
      find: async (calendar) => shelf.get(calendar) ?? null,
      keep: async (calendar, text) => void shelf.set(calendar, text),
    },
    log,
    now: async () => night,
  });
  const write = (name: string, text: string) => writeFileSync(join(folder, name), text);

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'rota-'));
    log = fakeLog();
    shelf.clear();
    write('first.ics', dayAndNight(imke, tariq));
    write('second.ics', dayAndNight(tariq, solveig));
    write('third.ics', dayAndNight(solveig, imke));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('knows who is on call, line by line', async () => {
    const keeper = await keepRota(parts());
    expect(onCall(keeper.rota(), night)).toEqual([imke, tariq, solveig]);
    expect(onCall(keeper.rota(), Date.parse('2027-03-06T12:00:00-05:00'))).toEqual([tariq, solveig, imke]);
    expect(log.lines.some((line) => JSON.stringify(line).includes('gap'))).toBe(false);
  });

  it('sees a change at the next poll, and not before', async () => {
    const keeper = await keepRota(parts());
    write('first.ics', dayAndNight(solveig, tariq));
    expect(onCall(keeper.rota(), night)[0]).toEqual(imke);
    await keeper.poll();
    expect(onCall(keeper.rota(), night)[0]).toEqual(solveig);
  });

  it.each([
    ['is gone', () => rmSync(join(folder, 'first.ics'))],
    ['is no calendar any more', () => write('first.ics', '<html>Sign in</html>')],
  ])(
    'keeps the last good calendar when the new one %s, says so, and still has it after a restart',
    async (_what, harm) => {
      const keeper = await keepRota(parts());
      harm();
      await keeper.poll();
      expect(onCall(keeper.rota(), night)[0]).toEqual(imke);
      expect(JSON.stringify(log.lines)).toContain('the last good one stays in use');
      expect(onCall((await keepRota(parts())).rota(), night)[0]).toEqual(imke);
    },
  );

  it('starts with a gap rather than not at all where a calendar was never read, and says so', async () => {
    rmSync(join(folder, 'second.ics'));
    const keeper = await keepRota(parts());
    expect(onCall(keeper.rota(), night)).toEqual([imke, null, solveig]);
    expect(JSON.stringify(log.lines)).toContain('the rota has a gap within a day');
  });

  it('says so where a shift names nobody', async () => {
    write('third.ics', dayAndNight({ name: 'Nobody', number: '+12125550199' }, imke));
    const keeper = await keepRota(parts());
    expect(onCall(keeper.rota(), night)).toEqual([imke, tariq, null]);
    expect(JSON.stringify(log.lines)).toContain('shifts of the rota name nobody on it');
  });
});

describe('a calendar fetched', () => {
  let server: Server;
  let address: string;
  let answer: { status: number; body: string; etag?: string; location?: string };
  const asked: (string | undefined)[] = [];

  beforeEach(async () => {
    asked.length = 0;
    server = createServer((request, response) => {
      asked.push(request.headers['if-none-match']);
      const same = answer.etag !== undefined && request.headers['if-none-match'] === answer.etag;
      response.writeHead(same ? 304 : answer.status, {
        ...(answer.etag !== undefined && { etag: answer.etag }),
        ...(answer.location !== undefined && { location: answer.location }),
      });
      response.end(same ? '' : answer.body);
    }).listen(0, '127.0.0.1');
    await once(server, 'listening');
    const bound = server.address();
    if (typeof bound !== 'object' || bound === null) throw new TypeError('the server has a port');
    address = `http://127.0.0.1:${bound.port}/rota.ics`;
  });
  afterEach(() => {
    server.closeAllConnections();
    server.close();
  });

  // RFC 9110, 13.1.2: If-None-Match; 304 where the tag still holds.
  it('asks by its tag whether it has changed', async () => {
    answer = { status: 200, body: 'one', etag: '"a"' };
    expect(await fetchCalendar(address, null)).toEqual({ text: 'one', etag: '"a"' });
    expect(await fetchCalendar(address, '"a"')).toBeNull();
    answer = { status: 200, body: 'two', etag: '"b"' };
    expect(await fetchCalendar(address, '"a"')).toEqual({ text: 'two', etag: '"b"' });
    expect(asked).toEqual([undefined, '"a"', '"a"']);
  });

  it.each([401, 404, 500, 503])('is refused by status %d', async (status) => {
    answer = { status, body: 'no' };
    await expect(fetchCalendar(address, null)).rejects.toThrow(CalendarUnreachable);
  });

  it('is refused when it is far too long, when nobody answers, and never by its address', async () => {
    answer = { status: 200, body: 'x'.repeat(5_000_000) };
    await expect(fetchCalendar(address, null)).rejects.toThrow('too long');
    server.closeAllConnections();
    server.close();
    await once(server, 'close');
    const refused = fetchCalendar(`${address}?key=secret`, null);
    await expect(refused).rejects.toThrow('ECONNREFUSED');
    await expect(refused).rejects.not.toThrow('secret');
  });
});

describe.each(databases())('the shelf, $name', ({ open }) => {
  it('gives back what was kept last, sealed in the database', async () => {
    const database = await open();
    try {
      await migrate(database, 'practice');
      const shelf = shelfIn(database, createSeal(practiceKey));
      expect(await shelf.find('first.ics')).toBeNull();
      await shelf.keep('first.ics', { text: 'one', etag: null });
      await shelf.keep('first.ics', { text: 'Imke', etag: '"a"' });
      expect(await shelf.find('first.ics')).toEqual({ text: 'Imke', etag: '"a"' });
      const [row] = await database.query<{ text: Buffer }>('SELECT text FROM rota_calendar');
      expect(row?.text.includes('Imke')).toBe(false);
    } finally {
      await database.close();
    }
  });
});
