/** Each message says what its clinical rule says. The rules are the issue's: common practice, no source, where none is named. */
import { describe, expect, it } from 'vitest';
import { questionKeys, signs } from '#machines/facts.ts';
import type { SayKey, Says } from '#machines/says.ts';
import { type Scene, word } from '#src/wording/word.ts';
import type { Phrases, Several } from './phrases/phrases.ts';
import { spoken } from './phrases/spoken.ts';
import { fullCard, longScene, sayParams, scene } from './samples.ts';

/** The catalogue of one language, before accents are taken from its texts. */
function catalogueOf({ code, language }: Phrases) {
  const plain = { ...scene, language: code };
  const long = { ...longScene, language: code };
  function said<K extends SayKey>(key: K, params: Says[K], told: Scene = plain): string {
    return language.caregiver[key](params, told);
  }
  const all = (key: SayKey): string[] => sayParams[key].map((params) => said(key, params));
  return { plain, long, said, all };
}

const languages = spoken.map((phrases) => ({ code: phrases.code, phrases, ...catalogueOf(phrases) }));

/** Asserts that a text holds each of the phrases. */
function expectSays(text: string, phrases: Several): void {
  for (const phrase of phrases) expect(text).toMatch(phrase);
}

describe.each(languages)('danger: $code', ({ phrases, plain, long, said, all }) => {
  it('is answered first of all, in two segments of 306 characters at most', () => {
    for (const told of [plain, long]) {
      const text = said('opening', {}, told);
      expect(text.length).toBeLessThanOrEqual(306);
      expect(text.indexOf(told.site.emergencyNumber)).toBeLessThan(20);
      expectSays(text, phrases.opening);
    }
  });

  it.each([['opening'], ['askUnwell']] as const)('is asked for by every sign of it: %s', (key) => {
    expectSays(said(key, {}), phrases.dangers);
  });

  it('brings the emergency number in the first words, and nothing by tube or mouth', () => {
    for (const text of [...all('emergency'), ...all('emergencyStill')]) {
      expect(text).toMatch(phrases.callNow);
      expectSays(text, phrases.nothingAtAll);
    }
    for (const text of all('emergency')) expectSays(text, phrases.emergency);
  });

  it('stands before anything else that the same text has to say', () => {
    const preface = [{ key: 'noted' as const, facts: { weight: { kg: 7 } } }];
    for (const key of ['opening', 'emergencyStill'] as const) {
      const text = word({ key, params: {}, preface }, plain);
      expect(text.indexOf('911')).toBeLessThan(text.indexOf(phrases.notedSevenKg));
    }
    expect(word({ key: 'emergency', params: { signs: [] }, preface }, plain)).toMatch(phrases.callNow);
  });

  it('names back what was told, the first three signs at most', () => {
    expect(said('emergency', { signs: ['limp'] })).toContain(phrases.toldLimp);
    expect(said('emergency', { signs: [] })).not.toContain(phrases.toldMe);
    expect(said('emergency', { signs: [] })).toContain(phrases.byMistake);
    expect(said('emergency', { signs: ['limp'] })).not.toContain(phrases.mistake);
    expect(said('emergency', { signs: [...signs] })).toContain(phrases.toldThree);
  });

  it('is the safe side of a doubtful sign', () => {
    for (const text of all('clarifySign')) expect(text).toMatch(phrases.ifUnsure);
    expect(said('clarifySign', { sign: 'pain', tubeIn: false })).toContain(phrases.severePain);
    expect(said('clarifySign', { sign: 'pain', tubeIn: true })).toContain(phrases.newPain);
    expect(new Set(all('clarifySign')).size).toBeGreaterThanOrEqual(signs.length - 1);
  });

  it('is nowhere out of reach while a child waits', () => {
    const waits = ['recheckWait', 'hold', 'holdStill', 'nurse', 'nurseStill', 'goIn', 'goInStill'] as const;
    for (const text of waits.flatMap(all)) expect(text).toMatch(phrases.worse);
  });
});

describe.each(languages)('questions: $code', ({ phrases, said, all }) => {
  it('about the file repeat every fact', () => {
    const [full, , empty] = all('confirmFile');
    expectSays(full ?? '', phrases.fileFull);
    expect(empty).toContain(phrases.fileEmpty);
  });

  it('about the tract ask for the first tube, not the last change', () => {
    expectSays(said('askFirstPlaced', {}), phrases.firstPlaced);
  });

  it('about the kit ask a stranger in the same breath whether someone was shown how', () => {
    expectSays(said('askKit', { stranger: true, latexAllergy: false }), phrases.kitStranger);
    expect(said('askKit', { stranger: false, latexAllergy: false })).not.toMatch(phrases.kitShown);
    expect(said('askKit', { stranger: false, latexAllergy: true })).toContain(phrases.kitLatex);
  });

  it('ask a bare weight back in both units', () => {
    expectSays(said('askWeightUnit', { bare: 5 }), phrases.bothUnits);
  });

  it('have one nudge each', () => {
    const nudges = all('nudge');
    expect(new Set(nudges).size).toBe(questionKeys.length);
    for (const text of nudges) expect(text).toMatch(phrases.nudge);
  });

  it('about the reading show no number that could be copied as an answer', () => {
    expect(said('askPh', {})).not.toMatch(/\d/);
    expectSays(said('askPh', {}), phrases.strip);
  });

  it('about the looks name what looks right and what does not', () => {
    const [right = '', wrong = ''] = said('askLooks', {}).split(/NON?: /);
    expectSays(right, phrases.looksRight);
    expectSays(wrong, phrases.looksWrong);
  });

  it('about the contents say to turn and sit up, and that air may come first, from the second try on', () => {
    const first = said('askContents', { attempt: 1, newStrip: false });
    const second = said('askContents', { attempt: 2, newStrip: false });
    expect(first).not.toMatch(phrases.turn);
    expectSays(second, phrases.secondTryForContents);
    expect(said('askContents', { attempt: 1, newStrip: true })).toContain(phrases.newContents);
  });
});

describe.each(languages)('insertion: $code', ({ phrases, said, all }) => {
  const texts = [...all('insertPutIn'), ...all('secondTry'), ...all('ownTubeSteps'), ...all('ownTubeAsHolderSteps')];

  it('is never forced, taped, and asked about as easy, hard or not in', () => {
    for (const text of texts) expectSays(text, phrases.everyInsertion);
  });

  it('numbers the three texts to be read before the hands are washed', () => {
    expectSays(said('insertLayOut', {}), phrases.layOut);
    expect(said('insertMeasure', { lowCm: 4, highCm: 6 })).toMatch(phrases.measure);
    expectSays(said('insertPutIn', { oneTry: false, stopAtAnyResistance: false }), phrases.putIn);
  });

  it('is cautious where the tract is', () => {
    expectSays(said('insertPutIn', { oneTry: true, stopAtAnyResistance: true }), phrases.cautious);
    expect(said('insertPutIn', { oneTry: false, stopAtAnyResistance: false })).not.toMatch(phrases.cautiousAny);
    expect(said('ownTubeSteps', { oneTry: true })).toContain(phrases.once);
  });

  it("tries the own tube's balloon outside the body and empties it", () => {
    expect(said('ownTubeSteps', { oneTry: false })).toContain(phrases.balloonOutside);
  });

  it('a second time takes a smaller tube if there is one', () => {
    expect(said('secondTry', { lowCm: 4, highCm: 6 })).toContain(phrases.smaller);
  });
});

describe.each(languages)('waiting and going in: $code', ({ phrases, plain, said, all }) => {
  it('names the hour to come back, nothing by tube or mouth, and what cannot wait', () => {
    expectSays(said('recheckWait', { dueAtMs: plain.nowMs + 3_600_000 }), phrases.recheck);
    for (const key of ['hold', 'goIn', 'holdStill', 'goInStill', 'recheckStill'] as const) {
      const texts = sayParams[key]
        .map((params) => ({ params, text: said(key, params) }))
        .filter(({ params }) => !JSON.stringify(params).includes('"reason":"cannot-wait"'));
      for (const { text } of texts) expect(text).toMatch(phrases.cannotWait);
    }
  });

  it("sends to the emergency department of the team's own hospital, or the nearest if that is far", () => {
    for (const text of [...all('goIn'), ...all('goInStill'), ...all('arrivedNo')]) {
      expect(text).toMatch(phrases.goNow);
    }
  });

  it('neither pushes nor pulls a tube half out', () => {
    const told = { reason: 'half-out', inside: 'half-out' } as const;
    expectSays(said('goIn', told), phrases.halfOut);
    expectSays(said('goInStill', { told }), phrases.halfOut);
  });

  it('says again why, and what to do with the hole or the tube, but not that nobody has answered', () => {
    const told = { reason: 'will-not-go-in', inside: 'nothing' } as const;
    expect(said('goInStill', { told })).toBe(said('goIn', told));
    const unanswered = { reason: 'nobody-answered', inside: 'temporary' } as const;
    expect(said('goInStill', { told: unanswered }).length).toBeLessThan(said('goIn', unanswered).length);
  });

  it('speaks of no hole where the tube is one of the nose', () => {
    for (const reason of ['nobody-answered', 'nurse'] as const) {
      expect(said('goIn', { reason, inside: 'nose' })).toMatch(phrases.noseTube);
      expect(said('goInStill', { told: { reason, inside: 'nose' } })).toMatch(phrases.noseTube);
    }
    expect(said('nurseStill', {})).toMatch(phrases.noseTube);
  });

  it('gives nothing by mouth either after a warning sign', () => {
    expect(said('goIn', { reason: 'warning', inside: 'temporary' })).toContain(phrases.afterWarning);
  });

  it('says a reason of its own for each way to end', () => {
    expect(new Set(all('hold')).size).toBe(sayParams.hold.length);
    const goingIn = sayParams.goIn.filter(({ inside }) => inside === 'temporary');
    expect(new Set(goingIn.map((params) => said('goIn', params))).size).toBe(goingIn.length);
  });

  it('carries a card for the desk, its facts in the language of the hospital', () => {
    const text = said('goInCard', fullCard);
    expectSays(text, phrases.card);
    expectSays(text, [
      'GJ tube came out: 10:50 pm on Fri 5 Mar',
      'Temporary tube is in, NOT checked',
      'pH 6 to 6.5',
      'DO NOT FEED',
      '"her seizure medicine',
    ]);
    expect(said('goInCard', { ...fullCard, checked: true })).toContain('checked by pH');
    expect(said('goInCard', fullCard)).toContain('LATEX ALLERGY.');
    expect(said('goInCard', { ...fullCard, latexAllergy: false })).not.toContain('LATEX');
    expect(said('goInCard', { ...fullCard, checked: true })).not.toContain('NOT checked');
  });
});

describe.each(languages)('making it fast and permission: $code', ({ phrases, said }) => {
  it('flushes first, then fills, then pulls snug, marks and tapes; trouble draws it back', () => {
    const text = said('secureSteps', { flushMl: 5, balloonMostMl: 5, tube: 'temporary' });
    const places = phrases.secureInOrder.map((step) => text.indexOf(step));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places).not.toContain(-1);
  });

  it('comes with its cautions', () => {
    const text = said('use', { tube: 'temporary', stayDays: 30 });
    expectSays(text, phrases.useWith);
    expect(said('use', { tube: 'own', stayDays: 30 })).not.toMatch(phrases.useOwnWithout);
  });
});

describe.each(languages)('beside the way: $code', ({ phrases, said }) => {
  it('is told when nobody has answered: go in if the step cannot be done, or what was said still holds', () => {
    expectSays(said('pageUnanswered', { advice: 'carry-on' }), phrases.nobodyCarryOn);
    expectSays(said('pageUnanswered', { advice: 'stay' }), phrases.nobodyStay);
  });

  it('reads the emergency number digit by digit on the telephone', () => {
    expectSays(said('recheckCall', {}), phrases.recheckCall);
  });

  it('answers a call with the emergency number, then closes the tube', () => {
    for (const next of ['ring', 'text'] as const) {
      const text = said('callAnswer', { next });
      expectSays(text, phrases.callAnswer);
      expect(text.indexOf('9 1 1')).toBeLessThan(60);
    }
    expectSays(said('callUnanswered', {}), phrases.callUnanswered);
  });

  it('confirms the end of texts once, and says that a nurse will phone', () => {
    expectSays(said('stopped', {}), phrases.stopped);
  });

  it('counts the days left in the singular too', () => {
    expect(said('stayWarning', { daysLeft: 1 })).toContain(phrases.oneMoreDay);
    expect(said('stayWarning', { daysLeft: 7 })).toContain(phrases.sevenMoreDays);
  });
});
