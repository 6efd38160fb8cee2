/** A rehearsal never hides a danger: whatever may be real is seen at every place, and nothing but that calls anybody. */
import { describe, expect, it } from 'vitest';
import { type CaseSignal, type CaseSnapshots, type CaseStep, openCase, stepCase, viewCase } from '#machines/case.ts';
import type { TextEvent, Unstamped } from '#machines/events.ts';
import { questionKeys, signs } from '#machines/facts.ts';
import { asReal, mayBeReal, rehearsed } from '#machines/rehearsal.ts';
import { values } from '#tests/dislodgement/attack/alphabet.ts';
import { protocolWith, startMs } from '#tests/dislodgement/night.ts';
import { type Move, type Place, places, signalOf } from '#tests/golden/places.ts';

const protocol = protocolWith();
const beside = { told: {}, person: false, corrects: false } as const;
const atOnce = { at: startMs, clinicOpen: false };
const afresh: Unstamped<TextEvent> = { type: 'smallTalk', ...beside };

const cameTo = ({ raised, view: { disposition } }: CaseStep) => ({ raised, disposition });

function heard(snapshots: CaseSnapshots, event: Unstamped<TextEvent>): CaseStep {
  const signal = { machine: 'conversation', event: { ...event, ...atOnce } } as CaseSignal;
  return stepCase(protocol, snapshots, signal);
}

/** The way to a place, practised; null where a rehearsal does not come so far, as it rests, waits or became real before. */
function practised({ file, moves }: Place): CaseSnapshots | null {
  let snapshots = openCase(protocol, file, startMs);
  for (const move of moves) {
    if (isNoText(move) || mayJoin(move)) return null;
    const step = stepCase(protocol, snapshots, signalOf(move, startMs));
    if (mayBeReal(move, cameTo(step)) || step.view.disposition !== null) return null;
    snapshots = rehearsed(snapshots, step).snapshots;
  }
  return snapshots;
}

/** Nobody who practises is asked whether another family's case is about the same child: only a real case is told that it may be. */
const mayJoin = (move: Move) => 'told' in move && move.told.mayJoin === true;

const isNoText = (move: Move): move is Exclude<Move, Unstamped<TextEvent>> =>
  'waitMinutes' in move || move.type === 'take' || move.type === 'nurse.clear' || move.type === 'nurse.close';

const reached = places.flatMap((place) => {
  const snapshots = practised(place);
  return snapshots === null ? [] : [{ name: place.name, file: place.file, snapshots }];
});

/** Every answer of the open question, and every word of the line. */
function textsAt(snapshots: CaseSnapshots): Unstamped<TextEvent>[] {
  const { asking } = viewCase(protocol, snapshots);
  const own = asking === null ? [] : values[asking].map((value) => ({ ...beside, type: `answer.${asking}`, value }));
  const words = (['told', 'unknownDevice', 'tubeProblem', 'media', 'smallTalk', 'stop', 'help'] as const).map(
    (type) => ({
      ...beside,
      type,
    }),
  );
  return [
    ...own,
    ...words,
    { ...beside, type: 'unclear', why: 'unreadable' },
    { ...beside, type: 'repeat', step: null },
    { ...beside, type: 'correct', key: asking },
    { ...beside, type: 'cannotWait', what: 'the night medicine' },
  ] as Unstamped<TextEvent>[];
}

it('the places reached ask every question of the way', () => {
  const asked = reached.map(({ snapshots }) => viewCase(protocol, snapshots).asking);
  const later = ['first-feed', 'next-day', 'arrived', 'clinic', 'which-child', 'who', 'language'];
  expect(questionKeys.filter((key) => !asked.includes(key) && !later.includes(key))).toEqual([]);
});

describe.each(reached)('practised up to $name', ({ file, snapshots }) => {
  it('each sign, sure or doubtful, a person asked for, and a tube out again may be real', () => {
    const grave: Unstamped<TextEvent>[] = [
      ...signs.map((sign) => ({ ...beside, type: 'signs' as const, sure: [sign], near: [] })),
      ...signs.map((sign) => ({ ...beside, type: 'signs' as const, sure: [], near: [sign] })),
      { ...beside, type: 'person', person: true },
      { ...beside, type: 'told', person: true },
      { ...beside, type: 'outAgain' },
    ];
    for (const event of grave) expect(mayBeReal(event, cameTo(heard(snapshots, event))), event.type).toBe(true);
  });

  it('a danger sign opens the real case with the emergency message, and the nurse is called by text and telephone', () => {
    for (const sign of ['breathing', 'colour', 'limp', 'bleeding', 'hard-belly', 'severe-pain', 'vomit'] as const) {
      const event: Unstamped<TextEvent> = { ...beside, type: 'signs', sure: [sign], near: [] };
      const real = heard(openCase(protocol, file, startMs), asReal(event, heard(snapshots, event), afresh));
      expect(real.view.disposition).toBe('emergency');
      expect(real.effects[0]).toMatchObject({ type: 'say', say: { key: 'emergency', params: { signs: [sign] } } });
      expect(real.effects).toContainEqual(
        expect.objectContaining({ type: 'callNurse', level: 'emergency', place: 0, by: ['text', 'call'] }),
      );
    }
  });

  it('what is played on calls nobody, says something, and comes back or rests', () => {
    for (const event of textsAt(snapshots)) {
      const step = heard(snapshots, event);
      if (mayBeReal(event, cameTo(step))) continue;
      const { effects, view, snapshots: kept } = rehearsed(snapshots, step);
      const kinds = effects.map(({ type }) => type);
      expect(kinds).not.toContain('callNurse');
      expect(kinds).not.toContain('tellNurse');
      expect(kinds).not.toContain('closeCase');
      expect(kinds).toContain('say');
      for (const effect of effects) if ('machine' in effect) expect(effect.machine).toBe('conversation');
      expect({ paging: kept.paging, aftercare: kept.aftercare }).toEqual({
        paging: snapshots.paging,
        aftercare: snapshots.aftercare,
      });
      expect(view.asking !== null || view.disposition !== null || event.type === 'stop').toBe(true);
    }
  });

  it('no text says that a nurse is called', () => {
    for (const event of textsAt(snapshots)) {
      const says = rehearsed(snapshots, heard(snapshots, event)).effects.flatMap((effect) =>
        effect.type === 'say' ? [effect.say] : [],
      );
      const keys = says.flatMap(({ key, preface }) => [key, ...preface.map((one) => one.key)]);
      for (const key of ['pageBegan', 'nurseCalled', 'goesToNurse']) expect(keys).not.toContain(key);
    }
  });
});

describe('a yes to a question about signs', () => {
  it.each(['unwell', 'after-in'] as const)('%s: is a danger, whoever plays, and opens the real case as one', (key) => {
    const place = reached.find(({ snapshots }) => viewCase(protocol, snapshots).asking === key);
    if (place === undefined) throw new Error(`nothing asks ${key}`);
    const event = { ...beside, type: `answer.${key}`, value: 'yes' } as const;
    const step = heard(place.snapshots, event);
    expect(mayBeReal(event, cameTo(step))).toBe(true);
    const real = heard(openCase(protocol, place.file, startMs), asReal(event, step, afresh));
    expect(real.view.disposition).toBe('emergency');
    expect(real.raised).toEqual(['danger-sign']);
  });

  it('unreadable twice is real too: the danger signs are asked again, by a real case', () => {
    const place = reached.find(({ snapshots }) => viewCase(protocol, snapshots).asking === 'unwell');
    if (place === undefined) throw new Error('nothing asks unwell');
    const event: Unstamped<TextEvent> = { ...beside, type: 'unclear', why: 'unreadable' };
    const once = heard(place.snapshots, event);
    expect(mayBeReal(event, cameTo(once))).toBe(false);
    const twice = heard(rehearsed(place.snapshots, once).snapshots, event);
    expect(mayBeReal(event, cameTo(twice))).toBe(true);
    const real = heard(openCase(protocol, place.file, startMs), asReal(event, twice, afresh));
    expect(real.view.asking).toBe('unwell');
    expect(real.effects[0]).toMatchObject({ type: 'say', say: { key: 'opening' } });
  });
});

it('what was told in a rehearsal is not known to the real case', () => {
  const event: Unstamped<TextEvent> = {
    ...beside,
    type: 'signs',
    sure: ['limp'],
    near: [],
    told: { weight: { kg: 4 } },
  };
  const [place] = reached.slice(-1);
  if (place === undefined) throw new Error('no place');
  const real = asReal(event, heard(place.snapshots, event), afresh);
  expect(heard(openCase(protocol, null, startMs), real).view.facts).toEqual({});
});
