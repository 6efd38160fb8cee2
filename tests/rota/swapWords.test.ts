/** What is read as a swap, and what is not. A Saturday night on the seeds' clinic hours; people are invented. */
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { readSwap } from '#src/rota/swapWords.ts';
import { loadSeeds } from '#src/seeds.ts';
import { people } from './ics.ts';

const { site } = loadSeeds('seeds').protocol;
const zone = site.timeZone;
const bo = { name: 'Bo', number: '+12125550154' };
const all = [...people, bo];

function read(text: string, now = '2027-03-06T16:00:00-05:00') {
  return readSwap(text, all, site, Date.parse(now));
}
const local = (ms: number) => DateTime.fromMillis(ms, { zone }).toFormat("yyyy-MM-dd'T'HH:mmZZ");

/** With whom, from when, to when; or the word alone. */
function said(text: string, now?: string): string | undefined {
  const word = read(text, now);
  return word?.word === 'ask' ? `${word.other.name} ${local(word.fromMs)} ${local(word.toMs)}` : word?.word;
}

describe('a swap asked for', () => {
  it.each([
    ['swap tonight with Bo', 'Bo 2027-03-06T17:00-05:00 2027-03-07T08:00-05:00'],
    ['Swap tonight with tariq please.', 'Tariq 2027-03-06T17:00-05:00 2027-03-07T08:00-05:00'],
    ['SWAP MY SUNDAY NIGHT WITH SOLVEIG', 'Solveig 2027-03-07T17:00-05:00 2027-03-08T08:00-05:00'],
    ['swap tomorrow day with imke', 'Imke 2027-03-07T08:00-05:00 2027-03-07T17:00-05:00'],
    ['swap saturday night with bo', 'Bo 2027-03-06T17:00-05:00 2027-03-07T08:00-05:00'],
    ['swap friday day with bo', 'Bo 2027-03-12T08:00-05:00 2027-03-12T17:00-05:00'],
    // The night of 13 March 2027 has an hour less.
    ['swap my saturday night with bo', 'Bo 2027-03-13T17:00-05:00 2027-03-14T08:00-04:00', '2027-03-10T12:00:00-05:00'],
    ['swap today with bo', 'Bo 2027-03-06T16:00-05:00 2027-03-06T17:00-05:00'],
    ['swap tonight with bo', 'Bo 2027-03-06T02:10-05:00 2027-03-06T08:00-05:00', '2027-03-06T02:10:00-05:00'],
    ['swap tonight with bo', 'Bo 2027-03-06T23:10-05:00 2027-03-07T08:00-05:00', '2027-03-06T23:10:00-05:00'],
  ])('%s', (text, expected, now?: string) => {
    expect(said(text, now)).toBe(expected);
  });

  it.each([
    'swap',
    'swap with bo',
    'swap friday with bo',
    'swap tonight with nobody',
    'swap tonight with bo and tariq',
    'can we swap tonight with bo?',
    'swap next friday night with bo',
  ])('is not guessed from: %s', (text) => {
    expect(said(text)).toBe('unclear');
  });

  it('is over where its day is', () => {
    expect(said('swap today with bo', '2027-03-06T17:00:00-05:00')).toBe('unclear');
  });
});

describe('the other’s word', () => {
  it.each([
    ['yes swap', 'yes'],
    ['Swap yes!', 'yes'],
    ['no swap', 'no'],
    ['swap no', 'no'],
  ])('%s', (text, word) => {
    expect(said(text)).toBe(word);
  });

  it.each([
    'yes',
    'no',
    'take',
    'the tube came out',
    'ok',
    '',
    'do not swap tonight with bo',
    'tell them to swap the extension set',
  ])('is not in: %s', (text) => {
    expect(read(text)).toBeNull();
  });
});
