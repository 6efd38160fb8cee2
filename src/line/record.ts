/** The record of a case: each event carries a hash over the one before it, so that nothing can be changed or left out unseen. */
import { hash } from 'node:crypto';

/** One more event of a case. */
export interface Link {
  readonly number: number;
  /** Canonical JSON of what happened and what was decided. */
  readonly body: string;
  readonly hash: Buffer;
}

export interface Chained {
  readonly lastNumber: number;
  readonly lastHash: Buffer | null;
}

/** The next link: SHA-256 over the hash before it (nothing for the first) and the canonical JSON. */
export function chain(before: Chained, happened: object): Link {
  const body = canonicalJson(happened);
  const linked = Buffer.concat([before.lastHash ?? Buffer.alloc(0), Buffer.from(body)]);
  return { number: before.lastNumber + 1, body, hash: hash('sha256', linked, 'buffer') };
}

/** JSON with the keys of every object in order: the same value is always the same text. */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(inOrder(value));
}

function inOrder(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(inOrder);
  const parts = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(parts.map(([key, part]) => [key, inOrder(part)]));
}

/** SHA-256 of a text, hexadecimal: binds what is kept elsewhere to the event that brought it about. */
export function digest(text: string): string {
  return hash('sha256', text, 'hex');
}
