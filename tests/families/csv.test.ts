/** Comma-separated values: every numbered example of RFC 4180, section 2 (https://www.rfc-editor.org/rfc/rfc4180), then what breaks them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCsv } from '#src/families/csv.ts';

const fieldsOf = (text: string) => readCsv(text).map((record) => ('fields' in record ? record.fields : record.rule));

describe('the examples of RFC 4180', () => {
  it.each([
    [
      '1: each record on a line of its own',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '2: the last may have no break',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '3: a header is a record like any',
      'field_name,field_name,field_name\r\naaa,bbb,ccc\r\n',
      [
        ['field_name', 'field_name', 'field_name'],
        ['aaa', 'bbb', 'ccc'],
      ],
    ],
    ['4: spaces are part of a field', 'aaa, bbb ,ccc', [['aaa', ' bbb ', 'ccc']]],
    [
      '5: fields may stand in quotes',
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '6: a break inside quotes',
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['7: a quote inside is doubled', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('%s', (_name, text, fields) => {
    expect(fieldsOf(text)).toEqual(fields);
  });
});

describe('beside the examples', () => {
  it('lines end as other systems end them, a byte order mark is dropped, empty lines are left out, empty fields stay', () => {
    expect(fieldsOf('\uFEFFa,b\n\nc,\r,d\r\n\r\n')).toEqual([
      ['a', 'b'],
      ['c', ''],
      ['', 'd'],
    ]);
  });

  it('a record is named by the line it begins on', () => {
    expect(readCsv('a\n"b\nb",c\n\nd\n').map(({ line }) => line)).toEqual([1, 2, 5]);
  });

  it.each([
    ['a\nb "c"\n', 2, 'a field with a quote in it stands in quotes'],
    ['a\n"b\nc,d\n', 2, 'a quote is opened and never closed'],
    ['a\n"b" c\nd', 2, 'after a closing quote comes a comma or the end'],
    ['a\n"x\ny","b" c\nd', 3, 'after a closing quote comes a comma or the end'],
  ])('%j breaks a rule on line %i', (text, line, rule) => {
    expect(readCsv(text).at(-1)).toEqual({ line, rule });
  });

  it('reads back what was written by the rules, whatever is in it', () => {
    const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
    const table = fc.array(fc.array(fc.string(), { minLength: 2, maxLength: 5 }), { minLength: 1 });
    fc.assert(
      fc.property(table, (rows) => {
        expect(fieldsOf(rows.map((row) => row.map(quoted).join(',')).join('\r\n'))).toEqual(rows);
      }),
    );
  });

  it('reads a million characters, however hostile, in one pass', () => {
    expect(readCsv(`${'"'.repeat(999_999)}`)).toEqual([{ line: 1, rule: 'a quote is opened and never closed' }]);
    expect(readCsv(','.repeat(1_000_000))[0]).toMatchObject({ line: 1 });
  });
});
