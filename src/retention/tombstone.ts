/** What stands in an event's place once its words are erased: the hash it had and the one before, sealed, so that the chain still holds. */
import { z } from 'zod';
import { canonicalJson } from '#src/line/record.ts';

export interface Tombstone {
  readonly before: Buffer | null;
  readonly hash: Buffer;
}

const hex = z.string().regex(/^[0-9a-f]{64}$/);
const shape = z
  .strictObject({ erased: z.literal(true), before: hex.nullable(), hash: hex })
  .transform(({ before, hash }): Tombstone => {
    return { before: before === null ? null : Buffer.from(before, 'hex'), hash: Buffer.from(hash, 'hex') };
  });

/** The body of an erased event. */
export function tombstoneBody({ before, hash }: Tombstone): string {
  return canonicalJson({ erased: true, before: before?.toString('hex') ?? null, hash: hash.toString('hex') });
}

/** The tombstone a body is, or null for an event that still has its words. */
export function tombstoneOf(body: string): Tombstone | null {
  const parsed = shape.safeParse(JSON.parse(body));
  return parsed.success ? parsed.data : null;
}

export interface StoredEvent {
  readonly number: number;
  readonly body: Buffer;
  readonly hash: Buffer;
}

/**
 * What is wrong with the record of an erased case, or null. Each tombstone was sealed with the line's key once the event had been
 * seen to follow from the one before it, so nobody without the key can change, move or leave out one.
 */
export function tombstoneFault(
  open: (sealed: Buffer) => string | null,
  theCase: { readonly last_number: number; readonly last_hash: Buffer | null },
  events: readonly StoredEvent[],
): string | null {
  let before: Buffer | null = null;
  for (const [place, event] of events.entries()) {
    const body = open(event.body);
    const tombstone = body === null ? null : tombstoneOf(body);
    const binds = tombstone?.hash.equals(event.hash) === true && same(tombstone.before, before);
    if (!binds || event.number !== place + 1) return `erased event ${place + 1} is not as it was left`;
    before = event.hash;
  }
  return events.length === theCase.last_number && same(before, theCase.last_hash)
    ? null
    : 'an erased event is missing at the end';
}

function same(one: Buffer | null, other: Buffer | null): boolean {
  return one === null || other === null ? one === other : one.equals(other);
}
