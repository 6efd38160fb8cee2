/** The practice carrier: phones on a page, so every message has arrived as soon as it is written down. */
import type { Carrier, MediaFate } from './port.ts';

export const practiceCarrier: Carrier = {
  send: async () => ({ fate: 'accepted', carrierId: null }),
  find: async () => ({ fate: 'found', made: [] }),
  heardSince: async () => [],
  fetchMedia: async (address) => held(address),
};

/** Where a practice phone has its picture: in the address itself (RFC 2397). */
export function dataAddress({ type, base64 }: { readonly type: string; readonly base64: string }): string {
  return `data:${type};base64,${base64}`;
}

function held(address: string): MediaFate {
  const [, type, base64] = /^data:([^;,]+);base64,(.*)$/.exec(address) ?? [];
  if (type === undefined || base64 === undefined) return { fate: 'refused', why: 'not of a practice phone' };
  return { fate: 'fetched', type, bytes: Buffer.from(base64, 'base64') };
}
