/** What holds for every text to a caregiver: one thing to do, then what to reply, and the words that never appear. */
import { describe, expect, it } from 'vitest';
import type { SayKey } from '#machines/says.ts';
import { word } from '#src/wording/word.ts';
import type { Phrases } from './phrases/phrases.ts';
import { spoken } from './phrases/spoken.ts';
import { longScene, prefaces, says, scene } from './samples.ts';

interface Text {
  readonly key: SayKey;
  readonly text: string;
}

/** Every text in one language, for an ordinary site, a known child, and the longest of both. */
function textsIn({ code }: Phrases) {
  const plain = { ...scene, language: code };
  const named = { ...plain, child: 'Robin' };
  const long = { ...longScene, language: code };
  const all: Text[] = [plain, named, long].flatMap((told) =>
    says.map((say) => ({ key: say.key, text: word(say, told) })),
  );
  const except = (...keys: SayKey[]) => all.filter(({ key }) => !keys.includes(key));
  const only = (...keys: SayKey[]) => all.filter(({ key }) => keys.includes(key));
  return { plain, named, all, except, only };
}

const languages = spoken.map((phrases) => ({ code: phrases.code, phrases, texts: textsIn(phrases) }));

/**
 * Default opt-out, opt-in and help words of a carrier (evidence: the carrier's pages on advanced opt-out, seen), and
 * those that carriers may take in Spanish and French (from memory).
 */
const carrierWords = [
  'STOP',
  'STOPALL',
  'UNSUBSCRIBE',
  'CANCEL',
  'END',
  'QUIT',
  'REVOKE',
  'OPTOUT',
  'START',
  'UNSTOP',
  'HELP',
  'INFO',
  'ALTO',
  'PARAR',
  'CANCELAR',
  'FIN',
  'AYUDA',
  'ARRET',
  'ARRÊT',
  'AIDE',
];

describe.each(languages)('every text to a caregiver: $code', ({ phrases, texts }) => {
  const { plain, named, all, except, only } = texts;

  it('ends so too with something said before it or, where the emergency number leads, after that', () => {
    const lastLine = (text: string) => text.split('\n').at(-1);
    const replying = says.filter((say) => phrases.replyLine.test(word(say, plain)));
    expect(replying.length).toBeGreaterThan(100);
    for (const say of replying) {
      for (const preface of prefaces)
        expect(lastLine(word({ ...say, preface: [preface] }, plain))).toBe(lastLine(word(say, plain)));
    }
  });

  it('ends with what to reply on a line of its own, but for the first two insertion texts and the call', () => {
    const silent = except('insertLayOut', 'insertMeasure', 'recheckCall', 'callAnswer', 'callUnanswered').filter(
      ({ text }) => !phrases.replyLine.test(text),
    );
    expect(silent).toEqual([]);
  });

  it('asks nothing in the first two of the three insertion texts', () => {
    for (const { text } of only('insertLayOut', 'insertMeasure')) expect(text).not.toMatch(phrases.asksReply);
  });

  it('never offers a carrier keyword as an answer', () => {
    const offered = all.flatMap(({ text }) => text.match(/(?<!\p{L})\p{Lu}{2,}(?!\p{L})/gu) ?? []);
    expect(offered).toContain(phrases.yes);
    expect(offered.filter((token) => carrierWords.includes(token))).toEqual([]);
    const replies = all.map(({ text }) => text.slice(text.lastIndexOf('\n')).toUpperCase());
    for (const reply of replies) {
      for (const keyword of carrierWords) expect(reply).not.toMatch(new RegExp(`\\b${keyword}\\b`));
    }
  });

  it('calls the child neither he nor she', () => {
    expect(except('goInCard').filter(({ text }) => phrases.gendered.test(text))).toEqual([]);
  });

  it('says the name where it is known', () => {
    expect(word({ key: 'askFirstPlaced', params: {}, preface: [] }, named)).toContain(phrases.whenNamed);
    expect(word({ key: 'askFirstPlaced', params: {}, preface: [] }, plain)).toContain(phrases.whenUnnamed);
    for (const say of says) {
      if (say.key !== 'confirmFile') expect(word(say, named)).not.toMatch(phrases.yourChild);
    }
  });

  it('leaves no hole where a parameter should be', () => {
    expect(all.filter(({ text }) => /undefined|null|NaN|\[object|\s\s|\s[.,?]/.test(text))).toEqual([]);
  });
});

describe.each(languages)('centimetres: $code', ({ phrases, texts }) => {
  const { plain, except, only } = texts;

  it('name the insertion length and nothing else', () => {
    expect(except('insertMeasure', 'secondTry').filter(({ text }) => phrases.lengthWords.test(text))).toEqual([]);
    for (const { text } of only('insertMeasure', 'secondTry')) expect(text.match(/\bcm\b/g)).toHaveLength(1);
  });

  it.each([
    [3, 4, '3-4 cm'],
    [4, 4, ' 4 cm'],
    [4, 6, '4-6 cm'],
  ])('are said as one length, %d to %d', (lowCm, highCm, said) => {
    for (const key of ['insertMeasure', 'secondTry'] as const) {
      expect(word({ key, params: { lowCm, highCm }, preface: [] }, plain)).toContain(phrases.fromTip(said));
    }
  });

  /** ISO/IEC 7810, ID-1: a card is 53.98 mm on its short side. The gauge has to fall inside the length it stands for. */
  it.each([
    [3, 4, phrases.gauges.from3, 2 / 3],
    [4, 6, phrases.gauges.from4, 1],
  ])('have a gauge without a ruler that fits, %d to %d', (lowCm, highCm, said, share) => {
    expect(word({ key: 'insertMeasure', params: { lowCm, highCm }, preface: [] }, plain)).toContain(said);
    expect(5.398 * share).toBeGreaterThan(lowCm);
    expect(5.398 * share).toBeLessThan(highCm);
  });

  it('have a gauge for exactly 4 that is right to half a millimetre', () => {
    const text = word({ key: 'insertMeasure', params: { lowCm: 4, highCm: 4 }, preface: [] }, plain);
    expect(text).toContain(phrases.gauges.only4);
    expect((5.398 * 3) / 4 - 4).toBeGreaterThan(0);
    expect((5.398 * 3) / 4 - 4).toBeLessThan(0.05);
  });
});

describe.each(languages)('permission: $code', ({ phrases, texts }) => {
  const { plain, except, only } = texts;

  it('is worded in the two texts that give it and never elsewhere', () => {
    for (const { text } of only('use', 'useStill')) expect(text).toMatch(phrases.permission);
    expect(except('use', 'useStill').filter(({ text }) => phrases.use.test(text))).toEqual([]);
    for (const preface of prefaces) {
      expect(word({ key: 'thanks', params: {}, preface: [preface] }, plain)).not.toMatch(phrases.use);
    }
  });

  it('is refused wherever a child waits or travels with a tube in', () => {
    const held = except('goIn', 'goInStill', 'goInCard').filter(({ key }) =>
      /^(hold|recheck|nurse|goIn|arrived)/.test(key),
    );
    expect(held.length).toBeGreaterThan(20);
    for (const { text } of held) expect(text).toMatch(phrases.nothingThrough);
    for (const say of says) {
      if (say.key !== 'goIn' && say.key !== 'goInStill') continue;
      const inside = say.key === 'goIn' ? say.params.inside : say.params.told?.inside;
      const refusal = inside === 'nothing' ? phrases.nothingInHole : phrases.nothingThroughTube;
      if (inside === 'nose') expect(word(say, plain)).toMatch(phrases.noseTube);
      else if (say.key === 'goIn' || inside !== undefined) expect(word(say, plain)).toContain(refusal);
      else expect(word(say, plain)).toMatch(phrases.nothingThrough);
    }
    for (const { text } of only('goInCard')) expect(text).toContain('DO NOT FEED');
  });
});

describe.each(languages)('balloon water: $code', ({ phrases, texts }) => {
  const { all, only } = texts;

  it('is named only where the tube is made fast, and never above the limit', () => {
    const filling = all.filter(({ text }) => phrases.fill.test(text) && phrases.water.test(text));
    expect([...new Set(filling.map(({ key }) => key))].sort()).toEqual(['secureAgain', 'secureSteps']);
    for (const { text } of filling) expect(text).toMatch(phrases.fillAtMost);
  });

  it('is kept out while the tube only goes in', () => {
    const going = only('ownTubeSteps', 'ownTubeAsHolderSteps', 'insertPutIn', 'secondTry');
    for (const { text } of going) expect(text).toMatch(phrases.keptFlat);
  });
});
