/** The protocols cases run on, kept by the hash of their content: a running case keeps the one it began with. */
import { createHash } from 'node:crypto';
import { parseProtocol } from '#machines/protocol/load.ts';
import type { Protocol } from '#machines/protocol/settings.ts';
import { MissingRow } from '#src/errors.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import { canonicalJson } from './record.ts';

const readProtocol = statement('protocol.read', 'SELECT body FROM protocol WHERE id = $1');
const keep = statement('protocol.keep', 'INSERT INTO protocol (id, body) VALUES ($1, $2) ON CONFLICT DO NOTHING');

/** Content never changes under its hash, so what was read once holds for the life of the process. */
const known = new Map<string, Protocol>();

/** SHA-256 of the canonical JSON, hexadecimal. */
export function protocolId(protocol: Protocol): string {
  return createHash('sha256').update(canonicalJson(protocol)).digest('hex');
}

/** Makes sure the protocol is in the database, for cases to point at. */
export async function keepProtocol(client: Queryable, protocol: Protocol): Promise<void> {
  const id = protocolId(protocol);
  known.set(id, protocol);
  await client.query(keep, [id, canonicalJson(protocol)]);
}

export async function protocolOf(client: Queryable, id: string): Promise<Protocol> {
  const ready = known.get(id);
  if (ready !== undefined) return ready;
  const [row] = await client.query<{ body: unknown }>(readProtocol, [id]);
  if (row === undefined) throw new MissingRow('protocol');
  const protocol = parseProtocol(row.body);
  known.set(id, protocol);
  return protocol;
}
