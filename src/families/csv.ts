/** Reads comma-separated values as RFC 4180 has them: quoted fields, doubled quotes, breaks inside quotes; each record with its line. */

/** One record, or the rule of RFC 4180 it breaks. `line` counts from 1, where the record begins. */
export type CsvRecord =
  | { readonly line: number; readonly fields: readonly string[] }
  | { readonly line: number; readonly rule: string };

/** One field with what ends it; quoted or plain. A text that none of the forms fits breaks a rule. */
const field = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|\n|\r|$)/y;

/** Every record in order; lines with nothing on them are left out. A record that breaks a rule ends the reading: what follows it is unsure. */
export function readCsv(text: string): readonly CsvRecord[] {
  const plain = text.replace(/^\uFEFF/, ''); // spreadsheets mark UTF-8 so
  const records: CsvRecord[] = [];
  let line = 1;
  let at = 0;
  while (at < plain.length) {
    const fields: string[] = [];
    const began = at;
    for (let end = ','; end === ','; ) {
      field.lastIndex = at;
      const match = field.exec(plain);
      if (match === null)
        return [...records, { line: line + breaksIn(plain.slice(began, at)), rule: ruleAt(plain, at) }];
      fields.push(match[1] === undefined ? (match[2] ?? '') : match[1].replaceAll('""', '"'));
      at = field.lastIndex;
      end = match[3] ?? '';
    }
    if (fields.length > 1 || fields[0] !== '') records.push({ line, fields });
    line += breaksIn(plain.slice(began, at));
  }
  return records;
}

function ruleAt(plain: string, at: number): string {
  if (plain[at] !== '"') return 'a field with a quote in it stands in quotes';
  return /^"(?:[^"]|"")*$/.test(plain.slice(at))
    ? 'a quote is opened and never closed'
    : 'after a closing quote comes a comma or the end';
}

function breaksIn(text: string): number {
  return text.match(/\r\n|\n|\r/g)?.length ?? 0;
}
