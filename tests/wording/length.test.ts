/** How long a text may be: two segments at most, one for most, counted by the carrier's open-source calculator. */
import { describe, expect, it } from 'vitest';
import type { Say } from '#machines/says.ts';
import { word, wordForNurse } from '#src/wording/word.ts';
import { longPage, nurseSays } from './nurseSamples.ts';
import { spoken } from './phrases/spoken.ts';
import { longScene, says, scene } from './samples.ts';
import { segmentsOf } from './segments.ts';

/** Read out by telephone, in no segments. */
const calls: ReadonlySet<string> = new Set(['recheckCall', 'callAnswer', 'callUnanswered']);
const texts = says.filter(({ key }) => !calls.has(key));

describe('counting segments', () => {
  /** 3GPP TS 23.038 and 23.040: 160 alone, then 153 each; an extension character counts twice and is never split. */
  it.each([
    ['a'.repeat(160), 1],
    ['a'.repeat(161), 2],
    ['a'.repeat(306), 2],
    ['a'.repeat(307), 3],
    ['\u20ac'.repeat(80), 1],
    ['\u20ac'.repeat(81), 2],
    [`${'a'.repeat(152)}\u20ac${'a'.repeat(10)}`, 2],
  ])('agrees with the published limits (%#)', (text, count) => {
    expect(segmentsOf(text)).toEqual({ count, encoding: 'GSM-7' });
  });

  /** The same, 16-bit: 70 alone, then 67 each. */
  it.each([
    ['\u2019'.repeat(70), 1],
    ['\u2019'.repeat(71), 2],
  ])('agrees for the 16-bit alphabet (%#)', (text, count) => {
    expect(segmentsOf(text)).toEqual({ count, encoding: 'UCS-2' });
  });
});

describe.each(spoken)('a text to a caregiver: $code', ({ code }) => {
  it.each([
    ['an ordinary site', scene],
    ['the longest site facts and a long name', longScene],
  ])('takes two segments at most: %s', (_name, told) => {
    const tooLong = texts
      .map((say) => word(say, { ...told, language: code }))
      .filter((text) => segmentsOf(text).count > 2);
    expect(tooLong).toEqual([]);
  });

  it('mostly takes one', () => {
    const keys = [...new Set(texts.map(({ key }) => key))];
    const isShort = (say: Say) => segmentsOf(word(say, { ...scene, language: code })).count === 1;
    const short = keys.filter((key) => texts.filter((say) => say.key === key).every(isShort));
    expect(short.length).toBeGreaterThan(keys.length / 2);
  });
});

describe('a text to a nurse', () => {
  it('takes two segments at most', () => {
    const sent = nurseSays.filter(({ key }) => key !== 'pageCall').map((message) => wordForNurse(message, scene));
    expect(sent.filter((text) => segmentsOf(text).count > 2)).toEqual([]);
  });

  it('does so with every part of a page at its longest', () => {
    expect(segmentsOf(wordForNurse({ key: 'page', params: longPage }, scene)).count).toBe(2);
  });
});
