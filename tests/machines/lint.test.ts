/** The lint itself, against one planted fault of each kind; and the machines, which have none. */

import { describe, expect, it } from 'vitest';
import { type AnyStateMachine, and, createMachine, raise, setup } from 'xstate';
import { aftercare } from '#machines/aftercare/machine.ts';
import { dislodgement } from '#machines/dislodgement/machine.ts';
import { paging } from '#machines/paging/machine.ts';
import { lintMachine } from './lint.ts';

const named = {
  actions: { tell: () => {} },
  guards: { isOpen: () => true },
  delays: { quiet: 1000 },
};

const raiseWhenQuite = setup({ types: { events: {} as { type: 'GO' } }, delays: { quite: 1 } }).raise(
  { type: 'GO' },
  { delay: 'quite' },
);

/** Two states that are sound but for what is planted: into the first state, or beside it at the root. */
function planted(first: object, root: object = {}): AnyStateMachine {
  // The configuration type would refuse some of the plants; others pass it, which is why there is a lint.
  const config: object = { id: 'm', initial: 'a', states: { a: { always: 'b', ...first }, b: {} }, ...root };
  return createMachine(config).provide(named);
}

describe('a planted fault', () => {
  it.each([
    ['a delay that does not exist', { after: { quite: 'b' } }, 'm.a: unknown delay quite'],
    ['an inline delay', { after: { 1000: 'b' } }, 'm.a: inline delay 1000'],
    ['an inline delay of a raised event', { entry: raise({ type: 'GO' }, { delay: 5 }) }, 'm.a: inline delay 5'],
    ['a computed inline delay', { entry: raise({ type: 'GO' }, { delay: () => 5 }) }, 'm.a: inline delay'],
    ['a raised event with an unknown delay', { entry: raiseWhenQuite }, 'm.a: unknown delay quite'],
    ['a guard that does not exist', { on: { GO: { guard: 'isOpne', target: 'b' } } }, 'm.a: unknown guard isOpne'],
    ['the same on an eventless transition', { always: [{ guard: 'isOpne' }, 'b'] }, 'm.a: unknown guard isOpne'],
    ['the same on a delayed transition', { after: { quiet: { guard: 'isOpne' } } }, 'm.a: unknown guard isOpne'],
    ['the same within and()', { on: { X: { guard: and(['isOpen', 'isOpne']) } } }, 'm.a: unknown guard isOpne'],
    ['an entry action that does not exist', { entry: 'tel' }, 'm.a: unknown action tel'],
    ['an exit action that does not exist', { exit: ['tell', { type: 'tel' }] }, 'm.a: unknown action tel'],
    ['a transition action that does not exist', { on: { X: [{ actions: 'tel' }] } }, 'm.a: unknown action tel'],
    ['an action without a name', { entry: () => {} }, 'm.a: inline action'],
    ['a misspelt key of an action', { entry: { type: 'tell', param: {} } }, 'm.a: unknown key param'],
    ['a misspelt key of a state', { entyr: 'tell' }, 'm.a: unknown key entyr'],
    ['a misspelt key of a transition', { on: { X: { targt: 'b' } } }, 'm.a: unknown key targt'],
    ['an invoked actor', { invoke: { src: 'other' } }, 'm.a: unknown key invoke'],
    ['a transition on every event', { on: { '*': 'b' } }, 'm.a: catches *'],
    ['a transition on a family of events', { on: { 'answer.*': 'b' } }, 'm.a: catches answer.*'],
    ['a misspelt type', { type: 'paralel' }, 'm.a: unknown type paralel'],
    ['an initial state that does not exist', { initial: 'y', states: { x: {} } }, 'm.a: unknown initial y'],
    ['a state nothing leads to', { initial: 'x', states: { x: {}, y: {} } }, 'm.a.y: is never reached'],
  ])('%s', (_, first, fault) => {
    expect(lintMachine(planted(first))).toEqual([fault]);
  });

  it('at the root is found too', () => {
    expect(lintMachine(planted({}, { on: { '*': '.b' } }))).toEqual(['m: catches *']);
    expect(lintMachine(planted({}, { initial: 'y' }))).toEqual(['m: unknown initial y']);
  });

  it('is looked for past the initial state: a target inside a state does not enter its initial state', () => {
    const states = { a: { on: { GO: 'b.y' } }, b: { initial: 'x', states: { x: {}, y: {} } } };
    expect(lintMachine(planted({}, { states }))).toEqual(['m.b.x: is never reached']);
  });

  it.each(['c', '#m.c', '.c', 'b.c'])('a target that does not exist, %s, is refused by XState itself', (target) => {
    expect(() => planted({ on: { GO: target } })).toThrow(/does not exist/);
  });
});

describe('no fault', () => {
  it('in a sound machine that uses all there is', () => {
    const sound = setup({ types: { context: {} as { count: number } }, ...named });
    const machine = sound.createMachine({
      id: 'm',
      context: { count: 0 },
      type: 'parallel',
      states: {
        one: {
          initial: 'x',
          states: {
            x: {
              entry: ['tell', sound.assign({ count: 1 })],
              after: { quiet: { guard: 'isOpen', target: 'y', reenter: true } },
              always: { guard: and(['isOpen', ({ context }) => context.count > 1]), target: 'y' },
            },
            y: { on: { BACK: '#m.one.past' } },
            past: { type: 'history' },
          },
        },
        two: { initial: 'x', states: { x: { meta: { asking: 'ph' } } } },
      },
    });
    expect(lintMachine(machine)).toEqual([]);
  });

  it.each([dislodgement, paging, aftercare])('in $id', (machine) => {
    expect(lintMachine(machine)).toEqual([]);
  });
});
