/** Short forms for the paging tests: raise a page, and read calls as one line each. */
import type { PageReason } from '#machines/facts.ts';
import type { PagingEvent } from '#machines/paging/kit.ts';
import { levelOf } from '#machines/paging/levels.ts';
import { paging } from '#machines/paging/machine.ts';
import type { Clinical } from '#machines/protocol/settings.ts';
import { type Did, Simulated } from '#tests/machines/simulated.ts';

export const page = (clinical?: Clinical) => new Simulated<PagingEvent>(paging, clinical);

export const raise = (reason: PageReason) => ({ type: 'page.raise', reason, level: levelOf[reason] }) as const;

/** As `5 urgent 0 text+call silence`: minute, level, place, ways, reasons; other effects as `20 unanswered`. */
export const lines = (did: readonly Did[]): string[] =>
  did.map(({ minute, type, params }) => {
    if (type !== 'callNurse') return `${minute} ${[type, ...Object.values(params as object)].join(' ')}`;
    const { level, place, by, reasons } = params as { level: string; place: number; by: string[]; reasons: string[] };
    return `${minute} ${level} ${place} ${by.join('+')} ${reasons.join(',')}`;
  });
