/** Lines of a file of families that cannot stand: each is named with its column and the rule it breaks. All families are invented. */
import { describe, expect, it } from 'vitest';
import { readFamilies } from '#src/families/importing.ts';
import { head, ilan, ode, wren } from './standing.ts';

const refusals = (...lines: string[]) =>
  readFamilies([head, ...lines].join('\n'), '2027-03-06').faults.map(
    ({ line, column, rule }) => `line ${line}: ${column === null ? '' : `${column}: `}${rule}`,
  );

describe('a file', () => {
  it.each([
    [
      'a number without its plus',
      wren.replace('+12125550150', '12125550150'),
      'phone: a telephone number: "+" and 7 to 15 digits, in quotes',
    ],
    ['a day that is none', wren.replace('2024-02-06', '2024-02-30'), 'firstPlaced: a date as YYYY-MM-DD, or null'],
    ['a kind no file holds', wren.replace(',g,', ',button,'), 'tubeKind: g, gj or unknown'],
    ['a weight of no child', wren.replace('13.4', '1340'), 'weightKg: kg from 0.3 to 200, or null'],
    ['a weight in words', wren.replace('13.4', 'heavy'), 'weightKg: kg from 0.3 to 200, or null'],
    ['a weight without its day', wren.replace('2027-02-21', ''), 'weighedOn: a weight has the day it was taken'],
    ['a tube before its child', wren.replace('2023-04-18', '2024-03-01'), 'firstPlaced: not before the child was born'],
    ['a day to come', wren.replace('2027-02-21', '2027-03-07'), 'weighedOn: not in the future'],
    ['a language nobody speaks here', wren.replace(',en,', ',de,'), 'language: en, es or fr'],
    ['perhaps latex', wren.replace(',no,', ',perhaps,'), 'latexAllergy: true or false'],
    ['a stem of no tube', wren.replace(',1.7', ',17'), 'stemLengthCm: cm from 0.5 to 10, or null'],
    ['a field too many', `${wren},x`, 'has 13 fields where the first line has 12'],
    ['a quote left open', wren.replace('"feed, 9 pm"', '"feed'), 'a quote is opened and never closed'],
  ])('with %s is refused whole', (_what, wrong, fault) => {
    expect(refusals(ilan, wrong)).toEqual([`line 3: ${fault}`]);
  });

  it('refuses a column it does not know, a name twice in a family, two languages in one, and a phone of two families', () => {
    expect(readFamilies('phone,hair\n+12125550150,brown\n', '2027-03-06').faults).toEqual([
      { line: 1, column: 'hair', rule: expect.stringMatching(/^no column: phone, phones, child, /) },
    ]);
    expect(refusals(wren, wren, ode.replace(',en,', ',fr,'), ilan.replace(',,', ',+12125550151,'))).toEqual([
      'line 3: child: children of one phone have names of their own',
      'line 4: language: one language a family',
      'line 5: phones: a phone of another family of this file',
    ]);
  });
});
