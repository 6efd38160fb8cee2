/** Wording and reading agree: every answer a text offers is read as the answer it stands for. */
import { describe, expect, it } from 'vitest';
import type { QuestionKey } from '#machines/facts.ts';
import { lexicons } from '#src/reading/lexicon.ts';
import { readNurse } from '#src/reading/nurse.ts';
import { type Open, read } from '#src/reading/read.ts';
import { type NurseOffer, nurseOffers } from '#src/wording/nurseSays.ts';
import { wordForNurse } from '#src/wording/word.ts';
import { nurseParams } from './nurseSamples.ts';
import { offered } from './offered.ts';
import type { Phrases } from './phrases/phrases.ts';
import { spoken } from './phrases/spoken.ts';
import { nowMs, scene } from './samples.ts';

/** One question's text and the answers it offers, each with the value it stands for. */
type Question = readonly [QuestionKey, string, Readonly<Record<string, string>>];

/** A language whose signs are still the English ones has no reader yet. */
const hasReader = ({ code }: Phrases) => code === 'en' || lexicons[code].signs !== lexicons.en.signs;

function questionsOf({ code, language }: Phrases): readonly Question[] {
  const say = language.caregiver;
  const told = { ...scene, language: code };
  const words = offered[code];
  const yesNo = { [words.yes]: 'yes', [words.no]: 'no' };
  const notSure = { [words.notSure]: 'unknown' };
  const yesNoNotSure = { ...yesNo, ...notSure };
  const howIn = { [words.easy]: 'easy', [words.hard]: 'hard', [words.no]: 'no' };
  const kinds = { G: 'g', GJ: 'gj', J: 'j', [words.halfOut]: 'half-out', [words.nose]: 'nose', ...notSure };
  const looks = { [words.onePortShort]: 'g', [words.twoPortsLong]: 'gj', ...notSure };
  const own = { ...yesNoNotSure, [words.burst]: 'burst', [words.long]: 'long-inside' };
  return [
    ['unwell', say.opening({}, told), yesNo],
    ['unwell', say.askUnwell({}, told), yesNo],
    ['confirm', say.confirmFile({ child: null, tubeKind: 'g', firstPlaced: null, weight: null }, told), yesNo],
    ['tube-kind', say.askTubeKind({}, told), kinds],
    ['tube-kind', say.askTubeKindByLook({}, told), looks],
    ['first-placed', say.askFirstPlaced({}, told), notSure],
    ['own-tube', say.askOwnTube({}, told), own],
    ['own-tube-in', say.ownTubeSteps({ oneTry: false }, told), howIn],
    ['own-tube-in', say.ownTubeAsHolderSteps({}, told), howIn],
    ['kit', say.askKit({ stranger: true, latexAllergy: false }, told), { ...yesNo, [words.notShown]: 'not-shown' }],
    ['weight', say.askWeight({}, told), notSure],
    ['tube-in', say.insertPutIn({ oneTry: false, stopAtAnyResistance: false }, told), howIn],
    ['tube-in', say.secondTry({ lowCm: 4, highCm: 6 }, told), howIn],
    ['came-out', say.askCameOut({}, told), notSure],
    ['after-in', say.askAfterIn({}, told), yesNo],
    ['strips', say.askStrips({}, told), yesNo],
    ['contents', say.askContents({ attempt: 1, newStrip: false }, told), yesNo],
    ['fed-lately', say.askFedLately({}, told), yesNoNotSure],
    ['looks', say.askLooks({}, told), yesNoNotSure],
    ['secured', say.secureSteps({ flushMl: 5, balloonMostMl: 5, tube: 'own' }, told), yesNo],
    ['first-feed', say.askFirstFeed({}, told), yesNo],
    ['next-day', say.askNextDay({}, told), yesNo],
    ['clinic', say.askClinic({}, told), yesNo],
    ['arrived', say.askArrived({}, told), yesNo],
  ];
}

function openIn({ code }: Phrases, asking: QuestionKey | null): Open {
  return {
    asking,
    clarifying: null,
    bareWeight: null,
    answered: null,
    caseOpen: true,
    tubeIn: asking === null,
    nowMs,
    timeZone: scene.site.timeZone,
    language: code,
  };
}

const languages = spoken.map((phrases) => ({ code: phrases.code, phrases, words: offered[phrases.code] }));
const readable = languages.filter(({ phrases }) => hasReader(phrases));

describe.each(languages)('an answer offered in $code', ({ phrases }) => {
  it.each(questionsOf(phrases))('stands in the text that asks for %s', (_asking, text, answers) => {
    for (const reply of Object.keys(answers)) expect(text).toContain(reply);
  });
});

describe.each(readable)('an answer offered in $code', ({ phrases, words }) => {
  const say = phrases.language.caregiver;
  const told = { ...scene, language: phrases.code };
  const open = (asking: QuestionKey | null) => openIn(phrases, asking);

  it.each(
    questionsOf(phrases).flatMap(([asking, , answers]) =>
      Object.entries(answers).map(([reply, value]) => [asking, reply, value] as const),
    ),
  )('for %s is read: %s', (asking, reply, value) => {
    expect(read(reply, open(asking)).event).toMatchObject({ type: `answer.${asking}`, value });
  });

  it('settles a weight that the line repeated in doubt', () => {
    const text = say.askWeightAgain({ told: { kg: 60 } }, told);
    expect(text).toContain('60 kg');
    expect(text).toContain(words.yes);
    const { event } = read(words.yes, { ...open('weight'), clarifying: 'doubt' });
    expect(event).toMatchObject({ type: 'answer.weight', value: 'as-told' });
  });

  it('shows a step again', () => {
    expect(say.insertPutIn({ oneTry: false, stopAtAnyResistance: false }, told)).toContain(words.steps[0]);
    for (const [index, reply] of words.steps.entries()) {
      expect(read(reply, open('tube-in')).event).toMatchObject({ type: 'repeat', step: index + 1 });
    }
  });

  it('tells what cannot wait', () => {
    for (const reply of [words.feedNow, words.medicineNow]) {
      expect(say.holdStill({}, told)).toContain(reply);
      expect(read(reply, open(null)).event).toMatchObject({ type: 'cannotWait' });
    }
    expect(read(`${words.medicineNow} phenobarbital`, open(null)).event).toMatchObject({ type: 'cannotWait' });
  });

  it('tells a latex allergy, asks for a nurse, takes a mistake back', () => {
    expect(say.insertLayOut({}, told)).toContain(words.latex);
    expect(read(words.latex, open('tube-in')).event).toMatchObject({ told: { latexAllergy: true } });
    expect(say.help({}, told)).toContain(words.nurse);
    expect(read(words.nurse, open(null)).event).toMatchObject({ type: 'person' });
    expect(say.emergency({ signs: [] }, told)).toContain(words.wrong);
    expect(read(words.wrong, open(null)).event).toMatchObject({ type: 'correct' });
  });

  it('corrects as the examples do', () => {
    const text = say.askCorrection({}, told);
    for (const [example, fact] of [
      [words.correctKind, { tubeKind: 'gj' }],
      [words.correctWeight, { weight: { kg: 7 } }],
    ] as const) {
      expect(text).toContain(example);
      expect(read(example, open(null)).event).toMatchObject({ type: 'told', told: fact });
    }
  });
});

describe('the words of a nurse', () => {
  it('are read, the few that a text offers', () => {
    const [page] = nurseParams.page;
    if (page === undefined) throw new Error('there is a sample page');
    expect(wordForNurse({ key: 'page', params: page }, scene)).toContain('Reply TAKE');
    const text = wordForNurse({ key: 'notSure', params: { can: nurseOffers } }, scene);
    const behind: Partial<Record<NurseOffer, string>> = { TELL: ' ring me', FACT: ' tube gj', PRACTICE: ' Robin' };
    for (const offer of nurseOffers) {
      expect(text).toContain(offer);
      const word = offer === 'GO IN' ? 'send-in' : offer.toLowerCase();
      expect(readNurse(`${offer}${behind[offer] ?? ''}`).word).toBe(word);
    }
  });
});
