/** The pages that the facts alone call for, in the order of their gravity. */
import type { PageReason } from '../facts.ts';
import type { Context } from './context.ts';
import { type At, inside, tooLong, tract, tractTooYoung, weightHardlyFits } from './gates.ts';

/** All of them. Whoever is called anyway hears that it may be another case's child, even before that was asked. */
export function duePages(context: Context, at: At): PageReason[] {
  const due = factPages(context, at);
  const mayBe = context.sameChild === 'maybe' || (context.sameChild === 'ask' && due.length > 0);
  return mayBe ? [...due, 'same-child'] : due;
}

/**
 * Every reason the facts now give to call a nurse. A warning sign, what cannot wait and a reading changed in a hold are paged at once; what the file says only once it was
 * confirmed (a file never holds a tube half out, a J alone or a nose tube: those were told); the rest once the danger signs
 * were answered, and of a tube that never came out, which rests on a nurse by itself, none of that.
 */
function factPages(context: Context, at: At): PageReason[] {
  const atOnce: PageReason[] = [
    ...(context.warning ? (['warning-sign'] as const) : []),
    ...(context.placed?.readingCorrected ? (['reading-corrected'] as const) : []),
    ...(context.otherChild ? (['other-child'] as const) : []),
    ...(context.childCorrected ? (['child-corrected'] as const) : []),
    ...(context.children?.is === 'none' ? (['which-child'] as const) : []),
    ...(context.cannotWaitTold ? (['cannot-wait'] as const) : []),
  ];
  if (context.unwell === 'unasked') return atOnce;
  const told = context.file !== 'unconfirmed' || toldKinds.has(context.facts.tubeKind);
  if (!told || inside(context) === 'in-place') return atOnce;
  return [...atOnce, ...kindPages(context), ...tractPages(context, at), ...insertionPages(context, at)];
}

const toldKinds: ReadonlySet<Context['facts']['tubeKind']> = new Set(['half-out', 'j', 'nose']);

function kindPages({ facts }: Context): PageReason[] {
  switch (facts.tubeKind) {
    case 'gj':
    case 'j':
    case 'unknown':
      return ['restricted-kind'];
    case 'half-out':
      return ['half-out'];
    case 'nose':
      return ['nose-tube'];
    default:
      return [];
  }
}

function tractPages(context: Context, at: At): PageReason[] {
  if (context.facts.firstPlaced === null) return [];
  if (tractTooYoung(context, at)) return ['tract-too-young'];
  switch (tract(context, at)) {
    case 'nearly-too-young':
      return ['tract-nearly-too-young'];
    case 'young':
    case 'unknown':
      return ['restricted-tract'];
    default:
      return [];
  }
}

function insertionPages(context: Context, at: At): PageReason[] {
  const holds = context.facts.tubeKind !== 'nose' && context.facts.tubeKind !== 'half-out';
  return [
    ...(holds && tooLong(context, at) ? (['out-too-long'] as const) : []),
    ...(context.facts.weight === 'unknown' ? (['weight-unknown'] as const) : []),
    ...(context.facts.weightToldAgain && weightHardlyFits(context, at) ? (['weight-doubtful'] as const) : []),
  ];
}
