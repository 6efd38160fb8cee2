/** The words every file shares: what the machines say in them passes their own boundary. */
import { describe, expect, it } from 'vitest';
import { parseAction } from '#machines/action.ts';
import { dueWhats, machineNames } from '#machines/effects.ts';
import { dispositions, languageCodes, pageReasons, type TubeKind } from '#machines/facts.ts';
import { levelOf } from '#machines/paging/levels.ts';
import { Night, oldTract, startMs, toContents, toInsertion } from '#tests/dislodgement/night.ts';

describe('the languages of the line', () => {
  it('are each known by their code of ISO 639', () => {
    const names = new Intl.DisplayNames('en', { type: 'language', fallback: 'none' });
    expect(languageCodes.map((code) => names.of(code))).toEqual(['English', 'Spanish', 'French']);
  });
});

describe('the reasons for a page', () => {
  it('are those that have a level, and each can be paged for', () => {
    expect(new Set<string>(pageReasons)).toEqual(new Set(Object.keys(levelOf)));
    for (const reason of pageReasons) {
      expect(parseAction({ type: 'page', params: { reason } })).toEqual({ type: 'page', params: { reason } });
    }
  });
});

it('what a caregiver was last told to do is all that a case can come to', () => {
  const ph = (high: number) => ({ low: high, high });
  const told = (tubeKind: TubeKind) => new Night().tell({ tubeKind, firstPlaced: oldTract }).answer('unwell', 'no');
  const read = (high: number) => toContents().answer('contents', 'yes').answer('ph', ph(high));
  const own = told('g').answer('own-tube', 'yes').answer('own-tube-in', 'easy').answer('after-in', 'no');
  own.answer('came-out', startMs).answer('strips', 'yes').answer('contents', 'yes').answer('ph', ph(5));
  const nights = [
    new Night().signs('breathing'),
    told('j'),
    toInsertion().answer('tube-in', 'easy').answer('after-in', 'no').answer('strips', 'no'),
    read(8),
    read(5).answer('secured', 'yes'),
    own.answer('secured', 'yes'),
    told('nose'),
  ];
  expect(nights.map(({ view }) => view.disposition)).toEqual(dispositions);
});

describe('what waits in a case', () => {
  it('is a timer of one of its machines, for one of these', () => {
    const read = (high: number) => toContents().answer('contents', 'yes').answer('ph', { low: high, high });
    const nights = [new Night().hear('person'), read(8), read(5).answer('secured', 'yes')];
    const timers = nights.flatMap(({ all }) => all.flatMap((effect) => (effect.type === 'startTimer' ? [effect] : [])));
    expect(new Set(timers.map(({ what }) => what))).toEqual(new Set(dueWhats));
    expect(new Set(timers.map(({ machine }) => machine))).toEqual(new Set(machineNames));
    expect(Object.keys(new Night().view.states)).toEqual(machineNames);
  });
});
