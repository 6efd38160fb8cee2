/**
 * The reader against the blind corpus of every language it is written for: never wrong, and exact where a person would
 * be. The unseen corpora are measured and printed.
 */
import { afterAll, describe, expect, it } from 'vitest';
import { languageCodes, questionKeys } from '#machines/facts.ts';
import { lexicons } from '#src/reading/lexicon.ts';
import { unseenCorpora } from './corpus/entries.ts';
import { missLine, runCorpus, tableOf } from './corpus/table.ts';

/** How much of a file's texts labelled exact may be asked again. */
const mayMissShare = 0.02;

/** A language whose signs are still the English ones has no reader yet. */
const written = languageCodes.filter((code) => code === 'en' || lexicons[code].signs !== lexicons.en.signs);
const rows = written.flatMap(runCorpus);
const measured = unseenCorpora.map((name) => ({ name, rows: runCorpus(name) }));

afterAll(() => console.info([rows, ...measured.map((corpus) => corpus.rows)].map(tableOf).join('\n\n')));

describe('the blind corpus', () => {
  it.each(rows)('$file: nothing is read wrongly', ({ wrong }) => {
    expect(wrong.map(missLine)).toEqual([]);
  });

  it.each(rows)('$file: what is plain is read exactly', ({ notExact, labelledExact }) => {
    const mayMiss = Math.floor(labelledExact * mayMissShare);
    expect(notExact.length <= mayMiss ? [] : notExact.map(missLine)).toEqual([]);
  });
});

describe('the unseen corpora', () => {
  const open = ['first-placed', 'came-out', 'weight', 'ph', 'tube-kind', 'first-text'];
  const unseen = measured.find(({ name }) => name === 'en-unseen')?.rows ?? [];

  it.each(open)('have at least 60 English texts of %s', (file) => {
    expect(unseen.find((row) => row.file === `en-unseen/${file}`)?.texts).toBeGreaterThanOrEqual(60);
  });

  it('have at least 30 English texts of every closed question', () => {
    const closed = questionKeys.filter((key) => !open.includes(key));
    const texts = (key: string) => unseen.find((row) => row.file === `en-unseen/${key}`)?.texts ?? 0;
    expect(closed.filter((key) => texts(key) < 30)).toEqual([]);
  });

  it.each(measured)('$name has texts of every question', ({ name, rows }) => {
    const files = rows.map(({ file }) => file);
    expect(questionKeys.filter((key) => !files.includes(`${name}/${key}`))).toEqual([]);
  });

  it.each(measured)('$name: every text is exact, asked again or wrong', ({ rows }) => {
    const uncounted = rows.filter(({ texts, exact, reasked, wrong }) => exact + reasked + wrong.length !== texts);
    expect(uncounted).toEqual([]);
  });
});
