/** Whole nights in words: what the machines really say, short sentences put before it included, still fits two segments. */
import { describe, expect, it } from 'vitest';
import { word } from '#src/wording/word.ts';
import { Night, oldTract, startMs, toContents, toInsertion } from '#tests/dislodgement/night.ts';
import { nights as costed, costOf, textsOf } from './cost.ts';
import { spoken } from './phrases/spoken.ts';
import { segmentsOf } from './segments.ts';

const hourMs = 3_600_000;
const everything = { tubeKind: 'g', firstPlaced: oldTract, weight: { kg: 7 }, cameOutAtMs: startMs - hourMs } as const;

const nights: readonly (readonly [string, () => Night])[] = [
  [
    'a recheck, then use',
    () =>
      toContents()
        .answer('contents', 'no')
        .answer('contents', 'yes')
        .answer('ph', { low: 6.5, high: 6.5 })
        .answer('fed-lately', 'no')
        .hear('smallTalk')
        .wait(60)
        .answer('after-in', 'no')
        .answer('contents', 'yes')
        .answer('ph', { low: 5, high: 5 })
        .answer('secured', 'no')
        .answer('secured', 'yes')
        .hear('smallTalk'),
  ],
  [
    'a hard insertion, cleared, then out again',
    () =>
      toContents('hard')
        .answer('contents', 'yes')
        .answer('ph', { low: 4, high: 4 })
        .take()
        .clear()
        .hear('outAgain')
        .hear('person'),
  ],
  [
    'everything told at once, then silence',
    () =>
      new Night()
        .tell({ ...everything, latexAllergy: true })
        .answer('unwell', 'no')
        .hear('media')
        .wait(40),
  ],
  ['nothing readable', () => new Night().tell({ tubeKind: 'g' }).unclear().unclear().unclear().unclear().hear('stop')],
  ['a warning sign', () => toContents().signs('fever').hear('smallTalk').wait(30)],
  ['danger', () => new Night().signs('limp', 'colour', 'breathing').hear('smallTalk').wait(70)],
  ['silence with the tube not in', () => toInsertion().wait(50)],
];

describe.each(nights)('%s', (_name, lead) => {
  const night = lead();
  const heard = night.all.flatMap((effect) => (effect.type === 'say' && effect.by === 'text' ? [effect.say] : []));
  const scene = { site: night.protocol.site, nowMs: night.nowMs, child: null };

  it.each(spoken)('fits every text in two segments: $code', ({ code }) => {
    expect(heard.length).toBeGreaterThan(2);
    const texts = heard.map((say) => word(say, { ...scene, language: code }));
    expect(texts.filter((text) => segmentsOf(text).count > 2)).toEqual([]);
  });
});

describe('the nights whose cost is counted', () => {
  it.each([
    [0, 'use'],
    [1, 'use'],
    [2, 'pageBegan'],
  ] as const)('number %d ends with %s', (index, last) => {
    const [, lead] = costed[index] ?? [];
    expect(lead && textsOf(lead()).at(-1)?.key).toBe(last);
  });

  it.each(spoken)('are counted in full: $code', ({ code }) => {
    for (const [, lead] of costed) {
      const { texts, segments } = costOf(lead(), code);
      expect(segments).toBeGreaterThan(texts);
      expect(segments).toBeLessThanOrEqual(2 * texts);
    }
  });
});
