/** What a text says beside its main meaning: at every place of a case a fact told is taken, and a person asked for is called. */
import { describe, expect, it } from 'vitest';
import type { TextEvent, Unstamped } from '#machines/events.ts';
import type { PageReason, QuestionKey } from '#machines/facts.ts';
import { places } from '#tests/golden/places.ts';
import { values } from './attack/alphabet.ts';
import type { Night } from './night.ts';
import { nightAt } from './table/lines.ts';
import { plain } from './table/texts.ts';

const beside = { told: { latexAllergy: true, ownTube: 'burst' }, person: true, corrects: false } as const;

/** Key and value belong together by the table of values. */
const answers = (key: QuestionKey | null): Unstamped<TextEvent>[] =>
  key === null
    ? []
    : values[key].map((value) => ({ ...beside, type: `answer.${key}`, value }) as unknown as Unstamped<TextEvent>);

const texts: readonly Unstamped<TextEvent>[] = [
  ...(['told', 'outAgain', 'tubeProblem', 'media', 'smallTalk', 'unknownDevice', 'help'] as const).map((type) => ({
    ...beside,
    type,
  })),
  ...(['unwell', 'ph', 'arrived', null] as const).map((key) => ({ ...beside, type: 'correct', key }) as const),
  ...([1, 2, 3, null] as const).map((step) => ({ ...beside, type: 'repeat', step }) as const),
  { ...beside, type: 'unclear', why: 'unreadable' },
  { ...beside, type: 'relayed', nurse: 'Ana' },
  { ...beside, type: 'cannotWait', what: 'seizure medicine' },
  { ...beside, type: 'person' },
  { ...beside, type: 'signs', sure: ['breathing'], near: [] },
  { ...beside, type: 'signs', sure: ['leak'], near: [] },
  { ...beside, type: 'signs', sure: [], near: ['bleeding'] },
  { ...beside, type: 'signs', sure: [], near: [] },
];

/** Reasons that call a nurse for the family whether or not it asks for her. */
const calling: ReadonlySet<PageReason> = new Set(['person-wanted', 'danger-sign', 'cannot-wait']);

/** A phone that goes on in another case has its person called from there. */
const missing = (night: Night, event: Unstamped<TextEvent>) => {
  const after = night.branch().text(event);
  const called = after.raised.some((reason) => calling.has(reason));
  return [...(after.view.latexAllergy ? [] : ['fact']), ...(called || after.view.closed ? [] : ['person'])];
};

describe('what is told and wanted beside a text', () => {
  it.each(places)('is heard at $name', (place) => {
    const night = nightAt(place);
    const lost = [...answers(night.asking), ...texts].flatMap((event) => {
      const not = missing(night, event);
      const { told: _, person: __, corrects: ___, ...text } = event;
      return not.map((what) => `${what} beside ${plain(text)}`);
    });
    expect(lost).toEqual([]);
  });
});
