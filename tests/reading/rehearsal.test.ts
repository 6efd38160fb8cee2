/** What a text says of a rehearsal: a wish only as the whole text, real wherever it may be, and neither by accident. */
import { describe, expect, it } from 'vitest';
import { languageCodes } from '#machines/facts.ts';
import { readNurse } from '#src/reading/nurse.ts';
import { read } from '#src/reading/read.ts';
import { rehearsalSaid } from '#src/reading/rehearsal.ts';
import { corpusFiles, unseenCorpora } from './corpus/entries.ts';
import { openOf } from './corpus/score.ts';

const files = [...languageCodes, ...unseenCorpora]
  .flatMap((name) => corpusFiles(name))
  .filter(({ name }) => !name.endsWith('/rehearsal'));
/** Those that their corpus itself does not call a rehearsal. */
const texts = files
  .flatMap((file) => file.texts.map((entry) => ({ file, entry })))
  .filter(({ entry }) => entry.expect?.rehearsal === undefined);

describe('texts written without a thought of practice', () => {
  it('are never a wish to practise, nor the end of it', () => {
    expect(texts.length).toBeGreaterThan(5_000);
    const said = texts.map(({ entry: { text } }) => ({ text, said: rehearsalSaid(text, true) }));
    expect(said.filter(({ said }) => said === 'wish' || said === 'over')).toEqual([]);
  });

  it('are hardly ever taken for a denial of practice: fewer than one in 200', () => {
    const real = texts.filter(({ file, entry }) => read(entry.text, openOf(file, entry)).rehearsal === 'real');
    expect(real.length).toBeLessThan(texts.length / 200);
  });
});

/** Every way to ask that the corpora name, with something behind it that has happened. */
const wishes = languageCodes.flatMap((code) =>
  corpusFiles(code)
    .filter(({ name }) => name.endsWith('/rehearsal'))
    .flatMap((file) => file.texts.filter(({ expect: wanted }) => wanted?.rehearsal === 'wish').map(({ text }) => text)),
);
const happened = [
  'it came out',
  'her g tube is out',
  'se le salio la sonda',
  'la sonde est sortie',
  'shes not breathing',
];

describe('a wish', () => {
  it.each(happened)('is none with "%s" behind it or before it', (words) => {
    expect(wishes.length).toBeGreaterThan(20);
    for (const wish of wishes)
      for (const text of [`${wish} ${words}`, `${wish}. ${words}`, `${words} ${wish}`, `${words}, ${wish}`])
        expect(rehearsalSaid(text, true), text).not.toBe('wish');
  });
});

describe('the words the line offers', () => {
  it.each([
    ['REAL', 'real'],
    ['ES REAL', 'real'],
    ["C'EST REEL", 'real'],
    ['PRACTICE OVER', 'over'],
    ['PRACTICA TERMINADA', 'over'],
    ['EXERCICE TERMINE', 'over'],
  ])('%s is read', (text, said) => {
    expect(rehearsalSaid(text, false)).toBe(said);
    expect(rehearsalSaid(text.toLowerCase(), false)).toBe(said);
  });
});

describe("a nurse's word", () => {
  it.each([
    ['practice Wren', 'Wren'],
    ['Practise with Wren', 'Wren'],
    ['send a practice to +1 212 555 0101', '+1 212 555 0101'],
    ['PRACTICE: wren', 'wren'],
    ['practice', ''],
  ])('%s', (text, words) => {
    expect(readNurse(text)).toEqual({ word: 'practice', words });
  });

  it('is none inside other words', () => {
    for (const text of ['they practiced yesterday', 'practices are fine', 'tell them to practice'])
      expect(readNurse(text).word).not.toBe('practice');
  });
});
