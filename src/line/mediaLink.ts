/**
 * The link a nurse opens a picture by: one picture, one hour, no login, and nobody can guess it. A link rather than the picture
 * itself by the carrier: that would leave it on her telephone and at the carrier for ever.
 */
import { timingSafeEqual } from 'node:crypto';
import type { Seal } from '#src/store/seal.ts';

/** Common practice, no source; MORE gives a fresh one. */
const opensMs = 60 * 60_000;
const macBytes = 16;
const shape = /^([0-9a-z]{1,10})\.([0-9a-z]{1,10})\.([A-Za-z0-9_-]{22})$/;

const signed = (id: number, untilS: number) => `media ${id} until ${untilS}`;

export function mediaLink(seal: Seal, publicUrl: string, id: number, nowMs: number): string {
  const untilS = Math.ceil((nowMs + opensMs) / 1000);
  const mac = seal.finder(signed(id, untilS)).subarray(0, macBytes).toString('base64url');
  return `${publicUrl}/media/${id.toString(36)}.${untilS.toString(36)}.${mac}`;
}

/** The picture a link's last part names, or null where it is forged or its hour is over. */
export function mediaOf(seal: Seal, token: string, nowMs: number): number | null {
  const [, idText = '', untilText = '', mac = ''] = shape.exec(token) ?? [];
  const [id, untilS] = [Number.parseInt(idText, 36), Number.parseInt(untilText, 36)];
  if (!(untilS * 1000 >= nowMs)) return null;
  const given = Buffer.from(mac, 'base64url');
  const genuine = seal
    .finders(signed(id, untilS))
    .some((wanted) => given.length === macBytes && timingSafeEqual(given, wanted.subarray(0, macBytes)));
  return genuine ? id : null;
}
