/** A file of families: read whole, checked line by line, then enrolled in one transaction or not at all. */
import type { Enrolment, Family } from '#src/line/line.ts';
import { columns, type Row, readRow } from './columns.ts';
import { readCsv } from './csv.ts';

/** A line that cannot stand; `column` is null where the line itself is at fault. */
export interface LineFault {
  readonly line: number;
  readonly column: string | null;
  readonly rule: string;
}

/** One family of the file, with the line each child stands on. */
export interface FileFamily {
  readonly number: string;
  readonly enrolment: Enrolment;
  readonly lines: readonly number[];
}

interface NumberedRow extends Row {
  readonly line: number;
}

/** The families of a text, in its order; the children of one follow each other under the same phone. `today` is the site's. */
export function readFamilies(
  text: string,
  today: string,
): { readonly families: readonly FileFamily[]; readonly faults: readonly LineFault[] } {
  const [head, ...records] = readCsv(text);
  if (head === undefined || !('fields' in head))
    return {
      families: [],
      faults: [{ line: 1, column: null, rule: `the first line names the columns: ${columns.join(', ')}` }],
    };
  const names = head.fields.map((name) => name.trim());
  const faults = [...headFaults(head.line, names)];
  if (faults.length > 0) return { families: [], faults };
  const rows: NumberedRow[] = [];
  for (const record of records) {
    const { line } = record;
    if ('rule' in record) faults.push({ line, column: null, rule: record.rule });
    else if (record.fields.length !== names.length) {
      const rule = `has ${record.fields.length} fields where the first line has ${names.length}`;
      faults.push({ line, column: null, rule });
    } else {
      const row = readRow(Object.fromEntries(names.map((name, place) => [name, record.fields[place] ?? ''])), today);
      if ('child' in row) rows.push({ ...row, line });
      else faults.push(...row.map((fault) => ({ line, ...fault })));
    }
  }
  const together = [...Map.groupBy(rows, ({ number }) => number).values()];
  faults.push(...together.flatMap(familyFaults), ...phoneFaults(rows));
  return { families: together.map(familyOf), faults: faults.sort((a, b) => a.line - b.line) };
}

function headFaults(line: number, names: readonly string[]): LineFault[] {
  const known = new Set<string>(columns);
  const rule = (name: string) => (known.has(name) ? 'stands twice' : `no column: ${columns.join(', ')}`);
  return names
    .filter((name, place) => !known.has(name) || names.indexOf(name) !== place)
    .map((name) => ({ line, column: name, rule: rule(name) }));
}

/** Children of one family have names that tell them apart, and one language. */
function familyFaults([first, ...others]: readonly NumberedRow[]): LineFault[] {
  if (first === undefined || others.length === 0) return [];
  const rows = [first, ...others];
  const names = rows.map(({ child }) => child.child?.toLowerCase());
  const unnamed = rows.filter((_, place) => names[place] === undefined || names.indexOf(names[place]) !== place);
  const foreign = others.filter(({ child }) => child.language !== first.child.language);
  return [
    ...unnamed.map(({ line }) => ({ line, column: 'child', rule: 'children of one phone have names of their own' })),
    ...foreign.map(({ line }) => ({ line, column: 'language', rule: 'one language a family' })),
  ];
}

/** A phone belongs to one family. */
function phoneFaults(rows: readonly NumberedRow[]): LineFault[] {
  const owner = new Map(rows.map(({ number }) => [number, number]));
  const faults: LineFault[] = [];
  for (const { line, number, phones } of rows) {
    for (const phone of phones) {
      const other = owner.get(phone);
      if (other === undefined) owner.set(phone, number);
      else if (other !== number)
        faults.push({ line, column: 'phones', rule: 'a phone of another family of this file' });
    }
  }
  return faults;
}

function familyOf(rows: readonly NumberedRow[]): FileFamily {
  const [first, ...others] = rows;
  if (first === undefined) throw new RangeError('a family without a line');
  const phones = [...new Set(rows.flatMap((row) => row.phones))].filter((phone) => phone !== first.number);
  const siblings = others.map(({ child: { language: _, ...file } }) => file);
  return { number: first.number, enrolment: { ...first.child, siblings, phones }, lines: rows.map(({ line }) => line) };
}

/** The fields in which two files of a child differ. */
export function changedFields(before: Family, after: Family): string[] {
  const names = new Set([...Object.keys(before), ...Object.keys(after)]);
  const text = (file: object, name: string) => JSON.stringify(Object.entries(file).find(([key]) => key === name)?.[1]);
  return [...names].filter((name) => text(before, name) !== text(after, name)).sort();
}
