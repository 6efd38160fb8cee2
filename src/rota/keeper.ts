/**
 * Keeps the rota as it is now: its calendars are read again every few minutes, never while a page waits. One that cannot be read
 * leaves the last good one in use, also after a restart, and says so loudly.
 */
import type { Log } from '#src/log.ts';
import { type Calendar, readCalendar } from './calendar.ts';
import { gapsIn } from './gaps.ts';
import { alwaysOn, type Nurse, type Rota } from './rota.ts';
import type { RotaFile } from './rotaFile.ts';
import { readSource, type Text } from './source.ts';

/** What outlives the process: the last good text of each calendar. */
export interface CalendarShelf {
  find(calendar: string): Promise<Text | null>;
  keep(calendar: string, text: Text): Promise<void>;
}

export interface KeeperParts {
  readonly file: RotaFile;
  /** Where the calendars that are files stand. */
  readonly folder: string;
  /** The site's, IANA: of local times that name no zone. */
  readonly timeZone: string;
  readonly shelf: CalendarShelf;
  readonly log: Log;
  /** Epoch ms: a practice line's own time, or real time. */
  readonly now: () => Promise<number>;
}

export interface RotaKeeper {
  /** Everybody a page may reach. */
  readonly nurses: readonly Nurse[];
  readonly rota: () => Rota;
  /** Reads every calendar again that has changed. Never rejects. */
  poll(): Promise<void>;
  /** Polls every few minutes until stopped. */
  start(): void;
  stop(): void;
}

const pollMs = 5 * 60_000;
/** How far ahead a gap is told with every poll. */
const aheadMs = 24 * 3_600_000;

interface Kept extends Text {
  readonly calendar: Calendar;
}

/** Opens the rota: with shifts, from the shelf first and then from where its calendars are. */
export async function keepRota(parts: KeeperParts): Promise<RotaKeeper> {
  const { file, folder, timeZone, shelf, log } = parts;
  const kept: (Kept | null)[] = file.calendars.map(() => null);
  const always = alwaysOn(file.nurses);
  const withShifts: Rota = {
    nurses: file.nurses,
    lines: file.calendars.map((_, place) => (fromMs, toMs) => kept[place]?.calendar.shifts(fromMs, toMs) ?? []),
  };
  const rota = file.calendars.length === 0 ? always : withShifts;
  let timer: NodeJS.Timeout | undefined;

  const take = (place: number, text: Text): void => {
    kept[place] = { ...text, calendar: readCalendar(text.text, file.nurses, timeZone) };
  };
  const readAgain = async (place: number, calendar: string): Promise<void> => {
    try {
      const before = kept[place] ?? null;
      const text = await readSource(folder, calendar, before?.etag ?? null);
      if (text === null || text.text === before?.text) return;
      take(place, text);
      await shelf.keep(calendar, text);
      log.info({ place }, 'a calendar of the rota was read');
    } catch (error) {
      log.error({ error, place }, 'a calendar of the rota could not be read; the last good one stays in use');
    }
  };
  const complain = async (): Promise<void> => {
    const nameless = kept.reduce((sum, one) => sum + (one?.calendar.nameless.length ?? 0), 0);
    if (nameless > 0) log.error({ nameless }, 'shifts of the rota name nobody on it');
    const nowMs = await parts.now();
    const gaps = gapsIn(rota, nowMs, nowMs + aheadMs).length;
    if (gaps > 0) log.error({ gaps }, 'the rota has a gap within a day: its pages go to the fallback number');
  };
  const poll = async (): Promise<void> => {
    await Promise.all(file.calendars.map((calendar, place) => readAgain(place, calendar)));
    await complain().catch((error: unknown) => log.error({ error }, 'the rota could not be looked through'));
  };
  const unshelve = async (place: number, calendar: string): Promise<void> => {
    try {
      const text = await shelf.find(calendar);
      if (text !== null) take(place, text);
    } catch (error) {
      log.error({ error, place }, 'the calendar kept from before cannot be read');
    }
  };

  await Promise.all(file.calendars.map((calendar, place) => unshelve(place, calendar)));
  await poll();
  return {
    nurses: file.nurses,
    rota: () => rota,
    poll,
    start: () => {
      if (file.calendars.length > 0) timer = setInterval(() => void poll(), pollMs).unref();
    },
    stop: () => clearInterval(timer),
  };
}
