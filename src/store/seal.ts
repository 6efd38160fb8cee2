/** Sealing: numbers, names and texts are never in the database as they are. AES-256-GCM; a phone is found by its HMAC. */
import {
  createCipheriv,
  createDecipheriv,
  createHash,
  createHmac,
  createSecretKey,
  hkdfSync,
  type KeyObject,
  randomFillSync,
} from 'node:crypto';
import { BadKey, SealBroken, UnknownKey } from '#src/errors.ts';

export interface Seal {
  /** Key id (4 bytes), nonce (12), tag (16), then the text sealed. */
  seal(text: string): Buffer;
  /** Throws `UnknownKey` for another key's value, `SealBroken` for a damaged one. */
  open(sealed: Buffer): string;
  /** The same for bytes. */
  sealBytes(bytes: Buffer): Buffer;
  openBytes(sealed: Buffer): Buffer;
  /** HMAC-SHA-256 of a phone number: the same number always, and no way back. */
  finder(number: string): Buffer;
  /** That, and while the key changes the one by the key before: a row may still be found by it. */
  finders(number: string): readonly Buffer[];
  /** What a value sealed now begins with. */
  readonly keyId: Buffer;
}

const keyIdBytes = 4;
const nonceBytes = 12;
const tagBytes = 16;
const headBytes = keyIdBytes + nonceBytes + tagBytes;

/** The practice line's key is no secret: its data is invented, and a restart must read it. */
export const practiceKey: Buffer = createHash('sha256').update('practice line, invented data, no secret').digest();

/** As key objects: a raw key is imported anew by every call, at three times the cost of the sealing itself. */
interface Keys {
  readonly id: Buffer;
  readonly sealing: KeyObject;
  readonly finding: KeyObject;
}

/** Makes a seal from a 32-byte key; what was sealed with `older` ones, while the key changes, opens too. */
export function createSeal(key: Buffer, ...older: readonly Buffer[]): Seal {
  const current = keysOf(key);
  const all = [current, ...older.map(keysOf)];
  const find = ({ finding }: Keys, number: string) => createHmac('sha256', finding).update(number).digest();
  const sealBytes = (bytes: Buffer): Buffer => {
    const nonce = freshNonce();
    const cipher = createCipheriv('aes-256-gcm', current.sealing, nonce);
    const body = cipher.update(bytes);
    const rest = cipher.final();
    return Buffer.concat([current.id, nonce, cipher.getAuthTag(), body, rest]);
  };
  const openBytes = (sealed: Buffer): Buffer => {
    if (sealed.length < headBytes) throw new SealBroken();
    const usedId = sealed.subarray(0, keyIdBytes);
    const used = all.find(({ id }) => id.equals(usedId));
    if (used === undefined) throw new UnknownKey(usedId.toString('hex'));
    return openWith(used.sealing, sealed);
  };
  return {
    keyId: current.id,
    seal: (text) => sealBytes(Buffer.from(text, 'utf8')),
    open: (sealed) => openBytes(sealed).toString('utf8'),
    sealBytes,
    openBytes,
    finder: (number) => find(current, number),
    finders: (number) => all.map((keys) => find(keys, number)),
  };
}

/** What seals and what finds are derived apart (HKDF, RFC 5869). */
function keysOf(key: Buffer): Keys {
  if (key.length !== 32) throw new BadKey(key.length);
  return {
    id: derive(key, 'id', keyIdBytes),
    sealing: createSecretKey(derive(key, 'seal', 32)),
    finding: createSecretKey(derive(key, 'find', 32)),
  };
}

/** Drawn for many values at a time: asking the system's generator costs more than the sealing. Each is given out once. */
const drawn = Buffer.alloc(nonceBytes * 256);
let given = drawn.length;

function freshNonce(): Buffer {
  if (given === drawn.length) {
    randomFillSync(drawn);
    given = 0;
  }
  given += nonceBytes;
  return Buffer.from(drawn.subarray(given - nonceBytes, given)); // a copy: the next draw writes over this place
}

function openWith(key: KeyObject, sealed: Buffer): Buffer {
  const nonce = sealed.subarray(keyIdBytes, keyIdBytes + nonceBytes);
  const decipher = createDecipheriv('aes-256-gcm', key, nonce, { authTagLength: tagBytes });
  decipher.setAuthTag(sealed.subarray(keyIdBytes + nonceBytes, headBytes));
  try {
    return Buffer.concat([decipher.update(sealed.subarray(headBytes)), decipher.final()]);
  } catch (error) {
    throw error instanceof Error ? new SealBroken() : error;
  }
}

function derive(key: Buffer, use: string, bytes: number): Buffer {
  return Buffer.from(hkdfSync('sha256', key, '', `nightjar ${use}`, bytes));
}
