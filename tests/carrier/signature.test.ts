/**
 * Webhook signatures through the carrier's own library. The two vectors are the worked examples of the carrier's public
 * documentation and of its libraries' own tests (seen).
 */
import { describe, expect, it } from 'vitest';
import { signedByCarrier } from '#src/carrier/signature.ts';

const url = 'https://mycompany.com/myapp.php?foo=1&bar=2';
const form = {
  CallSid: 'CA1234567890ABCDE',
  Caller: '+14158675309',
  Digits: '1234',
  From: '+14158675309',
  To: '+18005551212',
};
const signature = 'RSOYDt4T1cUTdK1PDd93/VVr8B8=';

describe('a signature', () => {
  it('of the published example is good', () => {
    expect(signedByCarrier(['12345'], signature, url, form)).toBe(true);
  });

  it('of the published example with repeated values is good: they are sorted and counted once', () => {
    const repeated = { Sid: 'CA123', SidAccount: 'AC123', Digits: ['5678', '1234', '1234'] };
    expect(signedByCarrier(['12345'], 'IK+Dwps556ElfBT0I3Rgjkr1wJU=', url, repeated)).toBe(true);
  });

  it('may be made over the address with its port spelled out', () => {
    expect(signedByCarrier(['12345'], signature, url.replace('.com/', '.com:443/'), form)).toBe(true);
  });

  it('is good under either of two tokens, while one replaces the other', () => {
    expect(signedByCarrier(['new', '12345'], signature, url, form)).toBe(true);
    expect(signedByCarrier(['new', 'newer'], signature, url, form)).toBe(false);
  });

  it.each([
    ['is missing', undefined, url, form],
    ['is empty', '', url, form],
    ['is another', 'IK+Dwps556ElfBT0I3Rgjkr1wJU=', url, form],
    ['is for another address', signature, 'https://mycompany.com/myapp.php?foo=1&bar=3', form],
    ['is for other digits', signature, url, { ...form, Digits: '1235' }],
    ['leaves a new parameter out', signature, url, { ...form, Added: 'x' }],
    ['was made over a trimmed value', signature, url, { ...form, Digits: '1234 ' }],
  ])('that %s is refused', (_name, given, at, parameters) => {
    expect(signedByCarrier(['12345'], given, at, parameters)).toBe(false);
  });
});
