/** What a pH reading of stomach contents allows. */

import type { PhReading } from '#machines/facts.ts';
import type { Clinical } from '#machines/protocol/settings.ts';

/** Up to where a first reading may pass after a feed; where the site says off, none does. */
const afterFeedUpTo = { off: 0, 6.5: 6.5, 7: 7 } as const satisfies Record<Clinical['phAfterFeed'], number>;

/**
 * Judges a reading by its upper end, raised to the next step of the strip (steps are counted from 0).
 * - `passes`: under the limit.
 * - `after-feed-only`: from the limit to the site's after-feed value; the other conditions of that exception are the machine's.
 * - `high`: above that, or at the top of the strip, where a reading has no upper end.
 * - `no-reading`: not a number, outside 0 to 14, or a range the wrong way round.
 *
 * Source: NPSA/2011/PSA002, pH 1 to 5.5 read on 0.5-unit strips, no feed at 6 or more.
 */
export function phVerdict(
  reading: PhReading,
  clinical: Clinical,
): 'passes' | 'after-feed-only' | 'high' | 'no-reading' {
  if (!(reading.low >= 0 && reading.low <= reading.high && reading.high <= 14)) return 'no-reading';
  const step = thousandths(clinical.phStripStep);
  const upper = Math.ceil(thousandths(reading.high) / step) * step;
  if (upper >= thousandths(clinical.phStripTop)) return 'high';
  if (upper < thousandths(clinical.phLimit)) return 'passes';
  return upper <= thousandths(afterFeedUpTo[clinical.phAfterFeed]) ? 'after-feed-only' : 'high';
}

/** Whole thousandths, since tenths are not exact in binary; a finer value goes up, the safe side. */
function thousandths(ph: number): number {
  const noise = 1e-6;
  return Math.ceil(ph * 1000 - noise);
}
