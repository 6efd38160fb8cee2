/** Paging: who is called when a nurse is needed, one person after the other, until somebody takes it. One climb a case. */
import { and, not } from 'xstate';
import { placeholderProtocol } from '#machines/protocol/placeholder.ts';
import type { Clinical } from '#machines/protocol/settings.ts';
import {
  call,
  callAgain,
  callAll,
  callHolder,
  noteCalled,
  remind,
  tellBegan,
  tellNews,
  tellPassed,
  tellTaken,
} from './asks.ts';
import { kit, nothingRaised, type Place } from './kit.ts';

/** Where it goes on from whoever passed it: to the next person; after the third it begins again with the first. */
const passing = [
  { from: 0, target: '#paging.climbing.second' },
  { from: 1, target: '#paging.climbing.third' },
  { from: 2, target: '#paging.climbing.first' },
] as const;
const standsAt = (place: Place) => ({ type: 'standsAt' as const, params: { place } });
const nextFrom = passing.map(({ from, target }) => ({
  guard: standsAt(from),
  target,
  actions: ['goOn' as const, tellBegan],
}));
const passedFrom = (place: Place) => ({ type: 'passedFrom' as const, params: { place } });

/** Everybody was called and nobody took it: round after round, however long it lasts. */
const nobody = kit.createStateConfig({
  initial: 'told',
  states: {
    told: {
      entry: { type: 'unanswered', params: {} },
      after: { untilFirstRound: 'round' },
    },
    round: {
      entry: ['countRound', ...callAll],
      after: { untilNextRound: { target: 'round', reenter: true } },
    },
  },
  on: {
    // No one person is left to wait for, so a further danger sign goes to everybody.
    'page.raise': { guard: 'isFurtherDangerSign', actions: ['addReason', ...callAll] },
  },
});

/** The way up. A higher level starts it again from the first person; anything else is added to what it says. */
const climbing = kit.createStateConfig({
  initial: 'first',
  tags: 'calls',
  states: {
    first: {
      entry: [{ type: 'standAt', params: { place: 0 } }, call(0, false)],
      after: { untilRepeat: 'firstAgain' },
    },
    firstAgain: {
      entry: callAgain,
      after: { untilSecond: 'second' },
    },
    second: {
      entry: [{ type: 'standAt', params: { place: 1 } }, call(1, false)],
      after: { untilThird: 'third' },
    },
    third: {
      entry: [{ type: 'standAt', params: { place: 2 } }, call(2, false)],
      after: { thirdsTurn: 'nobody' },
    },
    nobody,
  },
  on: {
    'page.raise': [
      { guard: and(['isHigher', 'wasRoutine']), target: '.first', actions: ['restartHigher', tellBegan] },
      { guard: 'isHigher', target: '.first', actions: 'restartHigher' },
      { guard: 'isFurtherDangerSign', actions: ['addReason', callAgain] },
      { actions: 'addReason' },
    ],
    rung: { actions: noteCalled },
    // She was called and cannot take it: the next person is called at once.
    pass: passing.map(({ from, target }) => ({
      guard: and([passedFrom(from), standsAt(from)]),
      target,
      actions: 'passOn' as const,
    })),
    take: { target: 'taken', actions: ['noteTaker', tellTaken, 'tellUnheard'] },
  },
});

/**
 * Something came up in a case that somebody has, and she was called about it: any word of hers answers it, and what comes up
 * meanwhile she is told as well. Silent, she is rung, and then the next person is called.
 */
const asked = kit.createStateConfig({
  tags: 'calls',
  initial: 'once',
  states: {
    once: { after: { untilRepeat: 'again' } },
    again: { entry: callAgain, after: { untilSecond: nextFrom } },
  },
  on: {
    'case.stands': [
      { guard: and(['touched', 'waitsForNurse']), target: '#paging.taken.waits' },
      { guard: 'touched', target: '#paging.taken.quiet' },
      {}, // The family's own texts answer nothing for her.
    ],
    'page.raise': { guard: 'isForHer', actions: ['noteReason', tellNews] },
    rung: { actions: noteCalled },
    // Called at her place after a shift has changed, another has it now.
    take: { guard: 'isAnother', target: '#paging.taken.quiet', actions: ['noteTaker', tellTaken] },
  },
});

/**
 * Somebody has it. What can wait, and what her own text brought about, calls nobody. What else comes up is hers: she is called
 * about it, rung if she stays silent, and the next person after her is called as in any climb. Only an emergency must reach a
 * person who is awake now: the first on call, and whoever had it, who is up. While the case waits for
 * its nurse and she lets it lie, she is reminded, then the next person is called; only a word of hers starts that wait again.
 */
const taken = kit.createStateConfig({
  initial: 'quiet',
  states: {
    /** Nothing waits for her. */
    quiet: { on: { 'case.stands': { guard: 'waitsForNurse', target: 'waits' } } },
    waits: { after: { untouched: 'reminded' } },
    reminded: { entry: remind, after: { remindersTurn: nextFrom } },
    asked,
  },
  on: {
    'case.stands': [
      { guard: not('waitsForNurse'), target: '.quiet' },
      { guard: 'touched', target: '.waits' },
    ],
    'page.raise': [
      { guard: 'isTakersOwn', actions: 'noteReason' },
      { guard: 'isRoutine', actions: ['noteReason', tellNews] },
      { guard: 'isForHer', target: '.asked', actions: ['noteAsked', callHolder] },
      { guard: { type: 'standsAt', params: { place: 0 } }, target: 'climbing', actions: ['beginClimb', tellBegan] },
      { target: 'climbing', actions: [callHolder, 'beginClimb', tellBegan] },
    ],
    // Another takes it over.
    stepsIn: { actions: noteCalled },
    take: { guard: 'takesOver', actions: ['noteTaker', tellTaken] },
    // She had it and gives it on: the family hears so.
    pass: [
      { guard: 'hasMoved', target: 'climbing', actions: ['giveBack', tellPassed] },
      ...passing.map(({ from, target }) => ({
        guard: passedFrom(from),
        target,
        actions: ['passOn' as const, tellPassed],
      })),
    ],
  },
});

export const paging = kit.createMachine({
  id: 'paging',
  context: ({ input }: { input: { readonly clinical: Clinical } | undefined }) => ({
    clinical: (input ?? placeholderProtocol).clinical,
    ...nothingRaised,
  }),
  initial: 'idle',
  states: {
    idle: {
      on: {
        'page.raise': [
          { guard: 'isRoutine', target: 'climbing', actions: 'beginClimb' },
          { target: 'climbing', actions: ['beginClimb', tellBegan] },
        ],
      },
    },
    climbing,
    taken,
  },
  on: {
    'page.close': { target: '.idle', actions: 'forget' },
  },
});
