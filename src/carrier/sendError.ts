/** What became of a message whose sending threw: refused, surely not sent, or unknown. */
import { z } from 'zod';
import type { Fate } from './port.ts';

/** The library's error for an HTTP answer; `code` is the carrier's own. */
const answered = z.object({ status: z.number().int(), code: z.number().int().optional() });
/** The library's error for no answer. */
const network = z.object({ code: z.string() });

/** No connection was made, so nothing was sent. Other network errors (a time out, a reset) say nothing about that. */
const neverConnected = ['ECONNREFUSED', 'ENOTFOUND', 'EAI_AGAIN', 'EHOSTUNREACH', 'ENETUNREACH'];

/**
 * The fate after an error of the carrier's library.
 * - 429, or the account not let in (401, 403): surely not sent, so `later`. A wrong token must not lose what was said.
 * - another 4xx with a code of the carrier: it never will be sent, `refused`.
 * - 5xx, 408, or an answer without a code (a proxy's): it may have been taken, so `unknown`.
 */
export function fateOfError(error: unknown): Fate {
  const answer = answered.safeParse(error);
  if (answer.success) return fateOfAnswer(answer.data.status, answer.data.code);
  const failure = network.safeParse(error);
  return failure.success && neverConnected.includes(failure.data.code) ? { fate: 'later' } : { fate: 'unknown' };
}

function fateOfAnswer(status: number, code: number | undefined): Fate {
  if (status === 429 || status === 401 || status === 403) return { fate: 'later' };
  const carriersOwn = code !== undefined && status >= 400 && status < 500 && status !== 408;
  return carriersOwn ? { fate: 'refused', why: String(code) } : { fate: 'unknown' };
}
