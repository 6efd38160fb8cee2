/** How far a temporary tube goes in, by weight. */

import type { WeightBand } from '#machines/facts.ts';

const lengths = {
  'under-3': { lowCm: 3, highCm: 4 },
  '3': { lowCm: 4, highCm: 4 },
  'over-3': { lowCm: 4, highCm: 6 },
  unknown: { lowCm: 4, highCm: 4 },
} as const satisfies Record<WeightBand | 'unknown', { lowCm: number; highCm: number }>;

/**
 * The length in cm, both ends included. 4 cm lies in both bands, so it is the length at exactly 3 kg and when the weight stays unknown.
 * Common practice, no source; the upper band agrees with the 4-6 cm mark of Soscia & Friedman, Paediatr Child Health 2011;16:281, table 3.
 */
export function insertionLength(band: WeightBand | 'unknown'): { lowCm: number; highCm: number } {
  return lengths[band];
}
