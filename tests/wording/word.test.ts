/** Putting a text together: its prefaces, and the child's name. */
import { describe, expect, it } from 'vitest';
import type { SayKey, Says } from '#machines/says.ts';
import { spanish } from '#src/wording/es/spanish.ts';
import { word, wordIn } from '#src/wording/word.ts';
import { nowMs, prefaceSamples, says, scene } from './samples.ts';

describe('prefaces', () => {
  it('stand before the message, in order', () => {
    const text = word({ key: 'askStrips', params: {}, preface: [{ key: 'nurseCalled' }, { key: 'mediaKept' }] }, scene);
    expect(text).toMatch(/^I am calling a nurse\. I kept that for the nurse, but I can't read it\. Put nothing/);
  });

  it('repeat the facts, a weight of unknown unit by its band only', () => {
    const facts = {
      tubeKind: 'g' as const,
      firstPlaced: { earliest: '2026-03-12', latest: '2026-03-12' },
      weight: { kg: 7 },
      cameOutAtMs: nowMs - 20 * 60_000,
    };
    const ask = { key: 'askStrips' as const, params: {} };
    expect(word({ ...ask, preface: [{ key: 'noted', facts }] }, scene)).toContain(
      'I have: G tube, first placed 12 Mar 2026, 7 kg, out since 1:50 am.',
    );
    const band = { weight: { band: 'over-3' as const }, latexAllergy: true as const };
    expect(word({ ...ask, preface: [{ key: 'noted', facts: band }] }, scene)).toContain(
      'I have: over 3 kg, latex allergy.',
    );
  });

  it('differ for every reason an answer was not understood', () => {
    const texts = prefaceSamples.notUnderstood.map((preface) =>
      word({ key: 'askStrips', params: {}, preface: [preface] }, scene),
    );
    expect(new Set(texts).size).toBe(texts.length);
  });

  it('void what was said when it came out again, and stop the feed on a warning sign', () => {
    const ask = { key: 'askStrips' as const, params: {} };
    expect(word({ ...ask, preface: [{ key: 'startOver' }] }, scene)).toMatch(
      /^It came out again, .* no longer counts\./,
    );
    expect(word({ ...ask, preface: [{ key: 'feverOrWarning' }] }, scene)).toMatch(/^Stop any feed\./);
  });
});

describe('Spanish', () => {
  const told = { ...scene, language: 'es' as const };

  it('repeats the facts', () => {
    const facts = {
      tubeKind: 'g' as const,
      firstPlaced: { earliest: '2026-03-12', latest: '2026-03-12' },
      weight: { kg: 7 },
      cameOutAtMs: nowMs - 20 * 60_000,
    };
    const ask = { key: 'askStrips' as const, params: {} };
    expect(word({ ...ask, preface: [{ key: 'noted', facts }] }, told)).toContain(
      'Tengo: sonda G, primera sonda puesta 12 mar 2026, 7 kg, fuera desde la 1:50 am.',
    );
  });

  /** Without its accent "llamó" (he called) is "llamo" (I call); after an i no such verb is left. */
  it('says nothing in the past tense that would lose its meaning with its accent', () => {
    const raw = says.map((say) => wordRaw(say));
    expect(raw.filter((text) => /(?<!i)ó(?!\p{L})/u.test(text))).toEqual([]);
    expect(raw.some((text) => text.includes('salió'))).toBe(true);
  });

  function wordRaw<K extends SayKey>({ key, params }: { readonly key: K; readonly params: Says[K] }): string {
    return spanish.caregiver[key](params, told);
  }
});

describe('a line that speaks only some languages', () => {
  it('answers the families of the others in English', () => {
    const say = { key: 'askStrips' as const, params: {}, preface: [] };
    expect(wordIn(['en', 'es'])(say, { ...scene, language: 'es' })).toBe(word(say, { ...scene, language: 'es' }));
    expect(wordIn(['en'])(say, { ...scene, language: 'es' })).toBe(word(say, scene));
  });
});
