/** One child as columns of text, from a line of a file or from the words of a command; each refusal names its column and its rule. */
import { z } from 'zod';
import { phoneNumber } from '#machines/protocol/siteSchema.ts';
import type { Family } from '#src/line/line.ts';
import { contradictions, fieldNames, fileFields } from './file.ts';

/** One child, the phone its family is enrolled by, and the family's other phones. */
export interface Row {
  readonly number: string;
  readonly phones: readonly string[];
  readonly child: Family;
}

export interface Fault {
  readonly column: string;
  readonly rule: string;
}

/** `phones` holds several, set apart by semicolons. */
export const columns = ['phone', 'phones', ...fieldNames] as const;

const rowShape = z.strictObject({
  phone: phoneNumber,
  phones: z.array(phoneNumber).max(9, 'at most 9'),
  ...fileFields,
});

/** A child from its columns; one that is missing or empty is not known. `today` is the site's, as `yyyy-mm-dd`. */
export function readRow(cells: Readonly<Record<string, string>>, today: string): Row | readonly Fault[] {
  const known = new Set<string>(columns);
  const unknown = Object.keys(cells).filter((column) => !known.has(column));
  if (unknown.length > 0) return unknown.map((column) => ({ column, rule: `no column: ${columns.join(', ')}` }));
  const values = Object.fromEntries(columns.map((column) => [column, meaning(column, cells[column]?.trim() ?? '')]));
  const parsed = rowShape.safeParse(values);
  if (!parsed.success) {
    return parsed.error.issues.map(({ path, message }) => ({ column: String(path[0]), rule: message }));
  }
  const { phone, phones, ...child } = parsed.data;
  const faults = contradictions(child, today).map(({ field, rule }) => ({ column: field, rule }));
  return faults.length > 0 ? faults : { number: phone, phones, child };
}

/** A child's columns as text, the way `readRow` reads them. */
export function cellsOf({ number, phones, child }: Row): Record<string, string> {
  const file = Object.entries(child).map(([name, value]) => [name, textOf(value)]);
  return { phone: number, phones: phones.join(';'), ...Object.fromEntries(file) };
}

function textOf(value: unknown): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value === null || value === undefined ? '' : String(value);
}

const flags: Readonly<Record<string, boolean>> = { yes: true, true: true, no: false, false: false };

/** What a cell's text stands for; a text that stands for nothing is left for the rule to refuse. */
function meaning(column: (typeof columns)[number], text: string): unknown {
  switch (column) {
    case 'phone':
      return dialled(text);
    case 'phones':
      return text.split(';').flatMap((each) => (each.trim() === '' ? [] : [dialled(each)]));
    case 'language':
    case 'tubeKind':
      return text.toLowerCase();
    case 'latexAllergy':
      return text === '' ? false : (flags[text.toLowerCase()] ?? text);
    case 'acidReducer':
      return text === '' ? null : (flags[text.toLowerCase()] ?? text);
    case 'tubeSize':
      return text === '' ? null : text.replace(/^([0-9.]+) ?(?:fr)?$/i, '$1 Fr');
    case 'weightKg':
    case 'stemLengthCm':
    case 'fillVolumeMl':
    case 'hospitalMinutes':
      return text === '' ? null : numberOf(text);
    default:
      return text === '' ? null : text;
  }
}

/** A decimal comma is one too. */
function numberOf(text: string): number | string {
  return /^[0-9]+(?:[.,][0-9]+)?$/.test(text) ? Number(text.replace(',', '.')) : text;
}

/** People write numbers with spaces, dots, dashes and brackets. */
function dialled(text: string): string {
  return text.replace(/[ ().-]/g, '');
}
