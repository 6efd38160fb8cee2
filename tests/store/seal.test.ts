/** Sealing: what is stored says nothing, opens only with its key, and only unharmed. */
import { createDecipheriv, hkdfSync } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { createSeal, practiceKey } from '#src/store/seal.ts';

const seal = createSeal(practiceKey);
const number = '+12025550150';

describe('a seal', () => {
  it('opens what it sealed, and seals nothing the same way twice', () => {
    const text = 'Tube is out \u{1F630} at 2 am';
    expect(seal.open(seal.seal(text))).toBe(text);
    expect(seal.open(seal.seal(''))).toBe('');
    expect(seal.seal(text).equals(seal.seal(text))).toBe(false);
    expect(seal.seal(text).includes('Tube')).toBe(false);
  });

  it('is AES-256-GCM with a 12-byte nonce and a 16-byte tag (NIST SP 800-38D), as the runtime’s own cipher reads it', () => {
    const sealed = seal.seal(number);
    const key = Buffer.from(hkdfSync('sha256', practiceKey, '', 'nightjar seal', 32));
    const decipher = createDecipheriv('aes-256-gcm', key, sealed.subarray(4, 16));
    decipher.setAuthTag(sealed.subarray(16, 32));
    expect(decipher.update(sealed.subarray(32), undefined, 'utf8') + decipher.final('utf8')).toBe(number);
  });

  it('opens nothing that was changed anywhere', () => {
    const sealed = seal.seal(number);
    for (let place = 4; place < sealed.length; place += 1) {
      const changed = Buffer.from(sealed);
      changed.writeUInt8(changed.readUInt8(place) ^ 1, place);
      expect(() => seal.open(changed)).toThrow(expect.objectContaining({ code: 'seal-broken' }));
    }
    expect(() => seal.open(sealed.subarray(0, 20))).toThrow(expect.objectContaining({ code: 'seal-broken' }));
  });

  it('names the key it lacks, and takes only a whole one', () => {
    const other = createSeal(Buffer.alloc(32, 1));
    expect(() => seal.open(other.seal(number))).toThrow(expect.objectContaining({ code: 'unknown-key' }));
    expect(() => createSeal(Buffer.alloc(16))).toThrow(expect.objectContaining({ code: 'bad-key' }));
  });

  it('finds a number by the same 32 bytes always, and by none that tell the number or another key’s', () => {
    expect(seal.finder(number)).toHaveLength(32);
    expect(seal.finder(number).equals(createSeal(practiceKey).finder(number))).toBe(true);
    expect(seal.finder(number).equals(seal.finder('+12025550151'))).toBe(false);
    expect(seal.finder(number).equals(createSeal(Buffer.alloc(32, 1)).finder(number))).toBe(false);
  });
});
