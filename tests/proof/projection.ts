/**
 * Which two states of the walk are the same: each fact is projected to the classes that later guards can still tell apart,
 * the reason beside each; whatever is not named here stays as it is. What the bystander knows is part of the key, so a
 * machine that forgets something is a state of its own.
 */
import type { Context, Facts, Placed } from '#machines/dislodgement/context.ts';
import {
  type Bystander,
  bandOf,
  feverIsDanger,
  oneTryOnly,
  readingClass,
  type Setting,
  type TubeSeen,
  tooLongOut,
  tractClass,
} from './bystander.ts';
import { ageRows, hardlyFits } from './hearsWeight.ts';
import type { Snapshot } from './outputs.ts';

/** The key of a state: the machine's own state, what it remembers, what the bystander knows. */
export function keyOf(snapshot: Snapshot, b: Bystander, setting: Setting, atMs: number): string {
  if (b.over) return `over ${snapshot.status}`;
  const { context, value } = snapshot;
  // A named danger can never be taken back, so no other fact decides anything any more.
  if (context.danger !== null && context.danger.named.length > 0 && b.danger === 'named') {
    const { standing, aftercare, timers } = b;
    return JSON.stringify([value, standing, aftercare, timers, b.paged.includes('danger-sign')]);
  }
  return JSON.stringify([value, remembered(context, b, setting, atMs), known(b, setting, atMs)]);
}

function remembered(context: Context, b: Bystander, setting: Setting, atMs: number): unknown {
  const { facts, placed, outcome } = context;
  const {
    firstPlaced: tract,
    weight,
    born,
    cameOutAtMs,
    bareWeight,
    weightToldAgain,
    ownTube,
    kit,
    latexAllergy,
    inPlace,
  } = facts;
  const seen: Bystander = {
    ...b,
    tract,
    weight,
    born,
    cameOutAtMs,
    bareWeight,
    weightToldAgain,
    ownTube,
    kit,
    latex: latexAllergy,
    inPlace,
  };
  const allowed = oneTryOnly({ ...seen, outAgain: context.cameOutAgain }, setting, atMs)
    ? 1
    : setting.clinical.insertionTries;
  const inside = placed !== null;
  return {
    ...context,
    protocol: 0,
    children: context.children?.is,
    facts: { ...facts, ...factClasses(seen, context, setting, atMs) } satisfies Record<keyof Facts, unknown>,
    // An unknown phone and a settled file differ only in the words of one question.
    file: context.file === 'unconfirmed',
    // Once it was answered, or can no longer be asked, only pages hang on it.
    sameChild: context.sameChild === 'ask' && !context.warning,
    danger: context.danger === null,
    askedLastSeen: context.askedLastSeen && cameOutAtMs === null,
    // Only how many tries are left, and whether one failed; with a tube in, only while it may yet turn out not to be.
    failedTries:
      inside && placed.how !== null ? 0 : [Math.max(0, allowed - context.failedTries), context.failedTries > 0],
    // Decides only whether an own tube that is whole or burst is tried.
    ownTried: !inside && context.ownTried && (ownTube === 'yes' || ownTube === 'burst' || context.failedTries > 0),
    stepsSent: inside ? null : context.stepsSent,
    placed: placed === null ? null : placedClass(placed, setting),
    said: JSON.stringify(context.said) === JSON.stringify(outcome),
    // A reason on these lists was paged before, one off them is paged anew: the rules ask only that it was.
    pagedFacts: 0,
    pagedOnce: 0,
    // Words only.
    warningSigns: 0,
    answered: 0,
    preface: 0,
    unrepeated: 0,
  } satisfies Record<keyof Context, unknown>;
}

/** The facts both sides hold, as classes. */
function factClasses(b: Bystander, { cameOutAgain }: Pick<Context, 'cameOutAgain'>, setting: Setting, atMs: number) {
  const inside = b.tube !== null;
  return {
    tubeKind: kindClass(b.kind),
    // Matters only until it is all the way out.
    halfOutOf: b.kind === 'half-out' ? kindClass(b.halfOutOf) : 0,
    inPlace: b.inPlace,
    firstPlaced: tractClass(b, setting, atMs),
    weight: weightClass(b, setting, inside, atMs),
    bareWeight: b.bareWeight !== null,
    // Matters only to a weight that hardly fits, whose class says it.
    weightToldAgain: 0,
    // A birth decides over fever and over which weight fits, the same before and after a tube goes in, and over a tract of unknown age, which the tract's class holds already.
    born: inside ? 0 : [feverIsDanger(b, setting, atMs), ageRows(b, setting, atMs)],
    // With a tube in, only whether it was asked: what is at hand decides again once that is out.
    ownTube: inside && b.ownTube !== null && b.ownTube !== 'yes' ? 'other' : b.ownTube,
    // Once a tube is in, and after a tube came out again, only whether it is known when.
    cameOutAtMs: [b.cameOutAtMs === null, !inside && !cameOutAgain && tooLongOut(b, setting, atMs)],
    // No kit is needed while a tube is in.
    kit: inside ? 0 : b.kit,
    // A tube that may hold latex says so itself.
    latexAllergy: inside ? 0 : b.latex,
    cannotWait: b.cannotWait,
  };
}

/** A combination tube and a kind nobody knows are treated alike everywhere. */
function kindClass(kind: string | null): string | null {
  return kind === 'gj' ? 'unknown' : kind;
}

/** The band gives the length. While a tube is in it is of no use until that comes out again, where every band is met anew. */
function weightClass(b: Bystander, setting: Setting, inside: boolean, atMs: number): string | null {
  if (b.weight === null) return null;
  const band = bandOf(b.weight);
  // A child under 3 kg with a tract of unknown age may be a newborn.
  const newborn = band === 'under-3' && tractClass(b, setting, atMs) === 'unknown';
  if (inside && !newborn) return 'some';
  return hardlyFits(b, setting, atMs) ? `${band} ${b.weightToldAgain ? 'told again' : 'in doubt'}` : band;
}

/** What was found out about the tube that is in; feed and looks decide only while the reading hangs on them. */
function placedClass(placed: Placed, setting: Setting): unknown {
  const reading = readingClass(placed.reading, setting);
  return {
    ...placed,
    // The clock of the walk stands still.
    atMs: 0,
    recheckDueAtMs: 0,
    allowedAtMs: placed.allowedAtMs !== null,
    // News for the nurse only.
    readingCorrected: 0,
    lengthBand: placed.lengthBand === null,
    reading,
    fedLately: reading === 'after-feed' && placed.fedLately,
    looks: reading === 'after-feed' && placed.looks,
    // Tries for contents count only until there are some; the same for securing.
    contentsTried: placed.contents || placed.contentsTried,
    securedTried: placed.secured || placed.securedTried,
  } satisfies Record<keyof Placed, unknown>;
}

/** A reason the facts no longer call for is paged anew when they do again. */
function calledFor(reason: string, { kind, warning, unwell }: Bystander, tract: string): boolean {
  switch (reason) {
    case 'restricted-kind':
      return kind !== 'g' && kind !== null;
    case 'other-child':
    case 'child-corrected':
      return true;
    case 'half-out':
      return kind === 'half-out';
    case 'nose-tube':
      return kind === 'nose';
    case 'warning-sign':
    case 'not-well-after':
      return warning;
    case 'unwell-unread':
      return unwell === 'unread';
    case 'tract-too-young':
    case 'tract-nearly-too-young':
    case 'restricted-tract':
      return tract !== 'usable';
    default:
      return false;
  }
}

/** What the bystander knows, in the same classes, and what was said, paged and timed. */
function known(b: Bystander, setting: Setting, atMs: number): unknown {
  const { tube } = b;
  const tract = tractClass(b, setting, atMs);
  return {
    ...b,
    ...factClasses(b, { cameOutAgain: b.outAgain }, setting, atMs),
    kind: kindClass(b.kind),
    tract: 0,
    latex: 0,
    triesFailed: tube === null && b.triesFailed,
    tube: tube === null ? null : tubeClass(tube, setting),
    unread: Math.min(b.unread, 2),
    // What only one text called for was paged in its step; what the facts call for has to have been paged.
    children: 0,
    paged: [b.paged.length > 0, b.paged.filter((reason) => calledFor(reason, b, tract))],
  };
}

/** As the machine's own: feed and looks decide only while the reading hangs on them. */
function tubeClass(tube: TubeSeen, setting: Setting): unknown {
  const reading = readingClass(tube.reading, setting);
  return {
    ...tube,
    reading,
    fed: reading === 'after-feed' && tube.fed,
    looks: reading === 'after-feed' && tube.looks,
  } satisfies Record<keyof TubeSeen, unknown>;
}
