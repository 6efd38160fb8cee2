/** What the paging machine asks for: whom to call, and what the family and the one who has it hear. */
import { assertEvent } from 'xstate';
import { type CallParams, type PagingContext, type PagingEvent, type Place, raisedBy } from './kit.ts';
import { waitsOf, waysOf } from './levels.ts';

interface Now {
  readonly context: PagingContext;
}

/** Calls one person: the first page to them, or a repeat. */
export function call(place: Place, isRepeat: boolean) {
  const params = ({ context: { level, reasons } }: Now): CallParams => ({
    place,
    level,
    reasons,
    by: waysOf(level, isRepeat),
  });
  return { type: 'callNurse' as const, params };
}

/** The family hears that a nurse is called, and by when one should have answered; what can wait is no news to it. */
export const tellBegan = {
  type: 'began' as const,
  params: ({ context: { level, clinical } }: Now) => {
    const { thirdMinutes, repeatMinutes } = waitsOf(level, clinical);
    return { mostMinutes: thirdMinutes + repeatMinutes };
  },
};

/** The family hears who has it. */
export const tellTaken = {
  type: 'taken' as const,
  params: ({ event }: { readonly event: PagingEvent }) => {
    assertEvent(event, 'take');
    return { nurse: event.nurse };
  },
};

/** The family hears that she gave the case on. */
export const tellPassed = {
  type: 'passed' as const,
  params: ({ event }: { readonly event: PagingEvent }) => {
    assertEvent(event, 'pass');
    return { nurse: event.nurse };
  },
};

/** The one who has it hears what came up. */
export const tellNews = {
  type: 'tellNurse' as const,
  params: ({ event }: { readonly event: PagingEvent }) => {
    const { level, reason } = raisedBy(event);
    return { level, reason };
  },
};

/** The one who has it hears that the family still waits. */
export const remind = {
  type: 'tellNurse' as const,
  params: ({ context }: Now) => ({ level: context.level, reason: 'untouched' as const }),
};

/** Calls the person the climb stands at again. */
export const callAgain = {
  type: 'callNurse' as const,
  params: ({ context }: Now): CallParams => call(context.place, true).params({ context }),
};

/** Calls whoever had the case about what comes up in it, beside the first on call. */
export const callHolder = {
  type: 'callNurse' as const,
  params: ({ context: { place }, event }: Now & { readonly event: PagingEvent }): CallParams => {
    const { level, reason } = raisedBy(event);
    return { place, level, reasons: [reason], by: waysOf(level, false) };
  },
};

/** She was rung by the family's own call, or takes the case over: it counts as a page to her, and nothing more has to reach her. */
export const noteCalled = {
  type: 'callNurse' as const,
  params: ({ context: { level, reasons }, event }: Now & { readonly event: PagingEvent }): CallParams => {
    assertEvent(event, ['rung', 'stepsIn']);
    return { place: event.place, level, reasons, by: [] };
  },
};

/** Calls everybody on call again. */
export const callAll = [call(0, true), call(1, true), call(2, true)];
