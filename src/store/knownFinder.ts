/** By what a phone's row is found while the key changes: one number never has two rows, whoever writes or re-seals at the same time. */
import { type Queryable, statement } from './database.ts';
import type { Seal } from './seal.ts';

/** Any number, the same in every process: turns share it, who re-seals the phones has it alone. */
export const phonesLock = 6_271_804;

/** The number's own lock is the same whichever of the two keys a process writes with. */
const lock = statement('finder.lock', 'SELECT pg_advisory_xact_lock_shared($1), pg_advisory_xact_lock($2)');
const known = statement('finder.known', 'SELECT finder FROM phone WHERE finder = ANY ($1)');

/** The finder of the number's row, or the one it is to be made with. With one key alone it asks nothing. Call it before any lock. */
export async function knownFinder(client: Queryable, seal: Seal, number: string): Promise<Buffer> {
  const finders = seal.finders(number);
  const [current, ...older] = finders;
  if (current !== undefined && older.length === 0) return current;
  const [least] = [...finders].sort(Buffer.compare);
  await client.query(lock, [phonesLock, least?.readBigInt64BE().toString()]);
  const [row] = await client.query<{ finder: Buffer }>(known, [finders]);
  return row?.finder ?? seal.finder(number);
}
