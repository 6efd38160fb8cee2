/** What the parent orders the line's process to do, and what it reports. */
import { z } from 'zod';
import { checkpoints } from '#src/line/checkpoint.ts';
import type { CaseReport, ThreadEntry } from '#src/line/line.ts';

export const publicUrl = 'https://line.example';

/** At the carrier's side of a send: it is asked, or it has made the message and its answer is not back. */
export const carrierPlaces = ['carrier asked', 'carrier made it'] as const;
/** A place to die: at this pass of it. */
export const graveShape = z.object({ name: z.enum([...checkpoints, ...carrierPlaces]), pass: z.number().min(1) });
export type Grave = z.infer<typeof graveShape>;

const id = z.number();
export const orderShape = z.discriminatedUnion('order', [
  /** Sets the line's clock, and real time as the outbox sees it. */
  z.object({ id, order: z.literal('time'), nowMs: z.number(), wallMs: z.number() }),
  /** Dies there, counted from now; null lives on. */
  z.object({ id, order: z.literal('die'), grave: graveShape.nullable() }),
  /** Lets every step of a machine throw, or no more. */
  z.object({ id, order: z.literal('fail'), failing: z.boolean() }),
  /** Fires and carries all that can be now. */
  z.object({ id, order: z.literal('settle') }),
  z.object({ id, order: z.literal('look'), phone: z.string() }),
]);
type WithId = z.infer<typeof orderShape>;
/** An order without the number that tells its answer apart. */
export type Order = WithId extends infer O ? (O extends WithId ? Omit<O, 'id'> : never) : never;

export interface Report {
  /** How many messages, pictures and timers are not settled yet. */
  readonly open?: number;
  readonly theCase?: CaseReport | null;
  readonly thread?: readonly ThreadEntry[];
}
