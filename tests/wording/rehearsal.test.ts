/** The texts of a rehearsal: each begins with the mark and takes two segments at most; what the real one says is all there. */
import { describe, expect, it } from 'vitest';
import { markedTexts } from '#src/wording/rehearsal.ts';
import { word } from '#src/wording/word.ts';
import { spoken } from './phrases/spoken.ts';
import { longScene, prefaces, says, scene } from './samples.ts';
import { segmentsOf } from './segments.ts';

const texts = says.filter(({ key }) => key !== 'recheckCall');
/** The alphabet of a text has no capital A with an accent: 3GPP TS 23.038. */
const marks = { en: 'PRACTICE.', es: 'PRACTICA.', fr: 'EXERCICE.' };

describe.each(spoken)('in a rehearsal: $code', ({ code, replyLine, callNow }) => {
  const mark = marks[code];
  const scenes = [scene, longScene].map((told) => ({ ...told, language: code }));
  const said = scenes.flatMap((told) =>
    [...texts, ...prefaces.flatMap((preface) => texts.map((say) => ({ ...say, preface: [preface] })))].map((say) => ({
      plain: word(say, told),
      parts: markedTexts(word(say, { ...told, rehearsal: true })),
    })),
  );

  it('every text begins with the mark and takes two segments at most', () => {
    const parts = said.flatMap((one) => one.parts);
    expect(parts.filter((part) => !part.startsWith(`${mark} `))).toEqual([]);
    // The calculator takes milliseconds a text: it judges the alphabet of all at once, and the longest that begin alike.
    const letters = [...new Set(parts.join(''))].join('');
    expect(segmentsOf(letters)).toMatchObject({ encoding: 'GSM-7' });
    expect(letters).not.toMatch(/[\^{}\\[~\]|€]/);
    const longest = new Map<string, string>();
    for (const part of parts) {
      const alike = part.slice(0, 40);
      if (part.length > (longest.get(alike)?.length ?? 0)) longest.set(alike, part);
    }
    expect([...longest.values()].filter((part) => segmentsOf(part).count > 2)).toEqual([]);
  });

  it('nothing of the real text is lost, and most leave as one', () => {
    const words = (text: string) => text.replaceAll(mark, ' ').replace(/\s+/g, ' ').trim();
    for (const { plain, parts } of said) expect(words(parts.join(' '))).toBe(words(plain));
    const whole = scenes.flatMap((told) => texts.map((say) => markedTexts(word(say, { ...told, rehearsal: true }))));
    expect(whole.filter(({ length }) => length === 1).length).toBeGreaterThan(whole.length * 0.9);
  });

  it('no text outside one begins so', () => {
    for (const { plain } of said) expect(plain.startsWith(mark)).toBe(false);
  });

  it('says what it is, how it ends, and the emergency number; afterwards that a tube out is real', () => {
    const own = texts.filter(({ key }) => key.startsWith('rehearsal'));
    expect(own).toHaveLength(9);
    for (const say of own) {
      const text = word(say, { ...scene, language: code });
      expect(text).toContain('911');
      expect(text).toMatch(replyLine);
      expect(text).not.toMatch(callNow);
    }
    const begins = word(
      { key: 'rehearsalBegan', params: { nurse: 'Dana' }, preface: [] },
      { ...scene, language: code },
    );
    expect(begins).toMatch(/20 minut[eo]s/);
    expect(begins).toContain('Dana');
    expect(begins).toMatch(/REAL|REEL/);
    expect(begins).toMatch(/PRACTICE OVER|PRACTICA TERMINADA|EXERCICE TERMINE/);
  });
});

describe('cutting', () => {
  it('is done before the reply line, else at the end of a sentence, and the mark is on both', () => {
    const sentence = `${'a'.repeat(148)}.`;
    expect(markedTexts(`MARK. ${sentence} ${sentence}\nReply YES.`)).toEqual([
      `MARK. ${sentence} ${sentence}`,
      'MARK. Reply YES.',
    ]);
    expect(markedTexts(`MARK. ${sentence} ${sentence} ${sentence}`)).toEqual([
      `MARK. ${sentence} ${sentence}`,
      `MARK. ${sentence}`,
    ]);
  });

  it('counts a character of the extension table twice', () => {
    const bars = '|'.repeat(140);
    expect(markedTexts(`MARK. ${bars}. ${'b'.repeat(40)}.`)).toHaveLength(2);
    expect(markedTexts(`MARK. ${bars}. b.`)).toHaveLength(1);
  });
});
