/** Where a calendar's text comes from: a file beside the rota file, or an https address asked whether it has changed. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { CalendarUnreachable } from '#src/errors.ts';
import { isAddress } from './rotaFile.ts';

/** A calendar's text with the tag its server gave it, if any. */
export interface Text {
  readonly text: string;
  readonly etag: string | null;
}

const patienceMs = 10_000;
/** Far more than some years of shifts; a longer answer is no rota. */
const mostBytes = 4_000_000;

/** The calendar as it is now, or null where its server says that it is still the one with this tag. Throws `CalendarUnreachable`. */
export async function readSource(folder: string, calendar: string, etag: string | null): Promise<Text | null> {
  if (isAddress(calendar)) return fetchCalendar(calendar, etag);
  try {
    return { text: await readFile(join(folder, calendar), 'utf8'), etag: null };
  } catch (error) {
    throw new CalendarUnreachable(codeOf(error));
  }
}

/** Asks a server for a calendar. The address may hold a secret, so no error repeats it. */
export async function fetchCalendar(address: string, etag: string | null): Promise<Text | null> {
  const response = await ask(address, etag);
  if (response.status === 304) return null;
  if (!response.ok) throw new CalendarUnreachable(`status ${response.status}`);
  if (new URL(response.url).protocol !== new URL(address).protocol) throw new CalendarUnreachable('sent elsewhere');
  return { text: await textOf(response), etag: response.headers.get('etag') };
}

async function ask(address: string, etag: string | null): Promise<Response> {
  const headers = { accept: 'text/calendar', ...(etag !== null && { 'if-none-match': etag }) };
  try {
    return await fetch(address, { headers, signal: AbortSignal.timeout(patienceMs) });
  } catch (error) {
    throw new CalendarUnreachable(codeOf(error));
  }
}

async function textOf(response: Response): Promise<string> {
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  try {
    for await (const chunk of response.body ?? []) {
      bytes += chunk.length;
      if (bytes > mostBytes) throw new CalendarUnreachable('too long');
      chunks.push(chunk);
    }
  } catch (error) {
    throw error instanceof CalendarUnreachable ? error : new CalendarUnreachable(codeOf(error));
  }
  return Buffer.concat(chunks).toString('utf8');
}

function codeOf(error: unknown): string {
  const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
  if (cause instanceof Error && 'code' in cause) return String(cause.code);
  return cause instanceof Error ? cause.name : 'no code';
}
