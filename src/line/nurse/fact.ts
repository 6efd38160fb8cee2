/** The one fact a nurse corrects: kind, first placement or weight, read by the reader that reads a family's. */
import { z } from 'zod';
import type { NurseFacts } from '#machines/events.ts';
import { readFresh } from '../caregiver.ts';
import type { Parts } from '../parts.ts';
import type { Turn } from '../turn.ts';

/** What may be corrected; a half-out or nose tube, a bare weight and an unknown date are no corrections. */
export const factShape = z.union([
  z.strictObject({ tubeKind: z.enum(['g', 'gj', 'j']) }),
  z.strictObject({ firstPlaced: z.strictObject({ earliest: z.string().nullable(), latest: z.string() }) }),
  z.strictObject({ weight: z.strictObject({ kg: z.number() }) }),
]);

/** The fact, or null where it is not plainly one of the three. */
export function factIn(parts: Parts, turn: Turn, words: string): NurseFacts | null {
  const plain = words.replace(/^(?:the )?tube(?: is)?(?: an?)? (g|gj|j)\b/i, '$1 tube');
  const { event } = readFresh(parts, turn, { language: null }, null, plain, null);
  const fact = factShape.safeParse('told' in event ? event.told : null);
  return fact.success ? fact.data : null;
}
