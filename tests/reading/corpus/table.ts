/** Runs a whole corpus through the reader and counts, a row a file. */

import { read } from '#src/reading/read.ts';
import { type CorpusFile, corpusFiles, type Entry } from './entries.ts';
import { type Outcome, openOf, score } from './score.ts';

export interface Miss {
  readonly file: string;
  readonly text: string;
  readonly label: Entry['label'];
  readonly outcome: Outcome;
  readonly expected: string;
  readonly read: string;
}

export interface Row {
  readonly file: string;
  readonly texts: number;
  readonly exact: number;
  readonly reasked: number;
  readonly wrong: readonly Miss[];
  /** Labelled exact, but asked again. */
  readonly notExact: readonly Miss[];
  /** How many texts of the file are labelled exact. */
  readonly labelledExact: number;
}

/** One row a file of the corpus. */
export function runCorpus(corpus: string): Row[] {
  return corpusFiles(corpus).map(runFile);
}

function runFile(file: CorpusFile): Row {
  const results = file.texts.map((entry) => {
    const open = openOf(file, entry);
    const reading = read(entry.text, open);
    return { entry, reading, outcome: score(entry, open, reading) };
  });
  const misses = results.map(
    ({ entry, reading, outcome }): Miss => ({
      file: file.name,
      text: entry.text,
      label: entry.label,
      outcome,
      expected: JSON.stringify(entry.expect ?? 'no answer'),
      read: JSON.stringify(reading),
    }),
  );
  return {
    file: file.name,
    texts: results.length,
    exact: results.filter(({ outcome }) => outcome === 'exact').length,
    reasked: results.filter(({ outcome }) => outcome === 're-asked').length,
    wrong: misses.filter(({ outcome }) => outcome === 'wrong'),
    notExact: misses.filter(({ label, outcome }) => label === 'exact' && outcome === 're-asked'),
    labelledExact: misses.filter(({ label }) => label === 'exact').length,
  };
}

/** The rows as a table to print, totals last. */
export function tableOf(rows: readonly Row[]): string {
  const sum = (count: (row: Row) => number) => rows.reduce((total, row) => total + count(row), 0);
  const line = (name: string, counts: readonly (number | string)[]) =>
    name.padEnd(32) + counts.map((count) => String(count).padStart(10)).join('');
  const counts: ((row: Row) => number)[] = [
    (row) => row.texts,
    (row) => row.exact,
    (row) => row.reasked,
    (row) => row.wrong.length,
    (row) => row.notExact.length,
  ];
  return [
    line('file', ['texts', 'exact', 're-asked', 'wrong', 'not exact']),
    ...rows.map((row) =>
      line(
        row.file,
        counts.map((count) => count(row)),
      ),
    ),
    line('all', counts.map(sum)),
  ].join('\n');
}

/** One miss on two lines: what was sent and expected, and what was read. */
export function missLine(miss: Miss): string {
  return `${miss.outcome} [${miss.file}, ${miss.label}] "${miss.text}"\n  expected ${miss.expected}\n  read     ${miss.read}`;
}
