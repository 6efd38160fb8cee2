/**
 * Telephone numbers in the repository ring nobody: all of them are kept free for fiction. Sources: the North American Numbering
 * Plan keeps 555-0100 to 555-0199 of every area for it; Ofcom keeps 07700 900000 to 900999 (both from memory).
 */
import { describe, expect, it } from 'vitest';
import { files, found } from './tree.ts';

/** The carrier's published examples for signatures have numbers of their own. */
const published = 'tests/carrier/signature.test.ts';
const paths = files()
  .filter((path) => !/^(?:src|machines)\/|\.png$/.test(path))
  .filter((path) => path !== published && path !== 'package-lock.json');

describe('telephone numbers', () => {
  it('of the E.164 shape, whole or begun, are kept free for fiction; or no number, digits in counting order', () => {
    const numbers = found(paths, /\+[1-9]\d{6,14}(?!\d)/);
    expect(numbers.length).toBeGreaterThan(0);
    const fiction = /\+1\d{3}555(?:0(?:1\d{0,2})?)?$|\+447700900(?:\d{3})?$/;
    const counting = (number: string) => '1234567890123456'.startsWith(number.slice(number.indexOf('+') + 1));
    expect(numbers.filter((number) => !fiction.test(number) && !counting(number))).toEqual([]);
  });

  it('as people write them are kept free for fiction', () => {
    const written = found(paths, /(?<![\d-])\(?\d{3}\)?[-. ]\d{3}[-. ]\d{4}(?![\d-])/);
    expect(written.filter((number) => !/555[-. ]01\d{2}$/.test(number))).toEqual([]);
  });
});
