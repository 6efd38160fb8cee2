/** The shape of a telephone number against the example numbers of `libphonenumber-js`, and ITU-T E.164. */

import { getCountries, getExampleNumber } from 'libphonenumber-js';
import examples from 'libphonenumber-js/mobile/examples';
import { describe, expect, it } from 'vitest';
import { phoneNumber } from '#machines/protocol/siteSchema.ts';

describe('the shape of a telephone number', () => {
  const numbers = getCountries().flatMap((country) => getExampleNumber(country, examples)?.number ?? []);

  it("takes every country's example mobile number", () => {
    expect(numbers.length).toBeGreaterThan(200);
    for (const number of numbers) expect(phoneNumber.safeParse(number).success, number).toBe(true);
  });

  // Kept for fiction by the regulators: NANP 555-0100 to 0199 and Ofcom's 07700 900000 to 900999. [seen]
  it.each(['+12025550123', '+447700900123'])('takes %s, kept for fiction', (number) => {
    expect(phoneNumber.safeParse(number).success).toBe(true);
  });

  // ITU-T E.164: at most 15 digits, no country code begins with 0. [memory]
  it.each(['+1234567890123456', '+0123456789', '12025550123', '+1 202 555 0123', '+1202555o123', ''])(
    'refuses %j',
    (wrong) => {
      expect(phoneNumber.safeParse(wrong).success).toBe(false);
    },
  );
});
