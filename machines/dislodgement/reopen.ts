/** What re-opens a case: a corrected fact, an answer taken back, the tube coming out again, an answer given up on. */
import type { QuestionKey } from '../facts.ts';
import { type Context, nothingToClarify, tubeIn } from './context.ts';
import { type At, inPlace, mayBeUsed, readingPassed } from './gates.ts';
import { noteFailedTry, noteOwnTube, withFacts, withPlaced } from './note.ts';
import { noChildYet, noneOfThem } from './whichChild.ts';

/**
 * Clears an outcome that a changed fact may no longer support, so that every gate is decided again.
 * A tube in use stays so unless the change closes a gate; what a nurse, or the silence of all of them, decided stays too.
 */
export function reopen(before: Context, after: Context, at: At): Context {
  const { outcome } = after;
  if (outcome === null || gateFacts(before) === gateFacts(after)) return after;
  if (outcome.to === 'go-in' && (outcome.reason === 'nobody-answered' || outcome.reason === 'nurse')) return after;
  const inUse = outcome.to === 'use' || outcome.to === 'own-tube';
  if (inUse && stillAllowed(after, at)) return after;
  return { ...after, outcome: null, disposition: null };
}

function stillAllowed(context: Context, at: At): boolean {
  const { placed } = context;
  if (placed === null || placed.stopped !== null || !placed.secured) return false;
  return mayBeUsed(context, at) && readingPassed(context) && (placed.how === 'easy' || placed.cleared);
}

function gateFacts({ facts, placed, warning, unwell }: Context): string {
  const { cameOutAtMs: _, born: __, bareWeight: ___, ...gates } = facts;
  return JSON.stringify([gates, placed, warning, unwell]);
}

/** The tube is out: what was read, cleared and allowed is void, and there is one try. */
export function tubeOutAgain(context: Context): Context {
  const own = tubeIn(context).tube === 'own';
  const wasInUse = context.outcome?.to === 'use' || context.outcome?.to === 'own-tube';
  const facts = {
    cameOutAtMs: null,
    ownTube: own ? null : context.facts.ownTube,
    kit: wasInUse ? null : context.facts.kit,
  };
  return {
    ...withFacts(context, facts),
    ...outAnew,
    sentIn: heldOpen(context),
    failedTries: 0,
    ownTried: own ? false : context.ownTried,
    // Days may have passed since the danger signs were asked.
    unwell: wasInUse ? 'unasked' : context.unwell,
    preface: [...context.preface, { key: 'startOver' }],
  };
}

/** A tube that was half out, or in its place, is all the way out: now its kind decides whether something may hold the stoma open. */
export function fullyOut(context: Context): Context {
  const { facts } = context;
  // A case that began before this was kept knows of none.
  const tubeKind = facts.tubeKind === 'half-out' ? (facts.halfOutOf ?? null) : facts.tubeKind;
  // Nobody could see it whole before it was out.
  const ownTube = inPlace(context) !== null && facts.ownTube === 'yes' ? null : facts.ownTube;
  return {
    ...withFacts(context, { tubeKind, halfOutOf: null, inPlace: null, cameOutAtMs: null, ownTube }),
    ...outAnew,
    sentIn: heldOpen(context),
  };
}

/** Sent in, a tube that comes out is still put back to hold the stoma open; it is never used. */
function heldOpen({ sentIn }: Context): Context['sentIn'] {
  return sentIn === 'now' ? 'held-open' : sentIn;
}

const outAnew = {
  placed: null,
  outcome: null,
  disposition: null,
  said: null,
  cameOutAgain: true,
  askedLastSeen: false,
  stepsSent: null,
  pagedOnce: [],
} as const satisfies Partial<Context>;

/** Takes one answer back so that its question is asked again; the caregiver named it but not the new value. */
export function takeBack(context: Context, key: QuestionKey | null): Context {
  // Tries at whose child it is are counted for good: nobody guesses on and on.
  const unclear = context.unclear?.key === 'who' ? context.unclear : null;
  const open: Context = { ...context, outcome: null, disposition: null, unclear };
  switch (key) {
    case 'unwell':
      return { ...open, unwell: 'unasked', danger: null, ...nothingToClarify };
    case 'which-child':
      return noChildYet(context, open);
    case 'confirm':
      return withFacts({ ...open, file: settledFile(open) }, { tubeKind: null, firstPlaced: null, weight: null });
    case 'tube-kind':
      return withFacts(open, { tubeKind: null });
    case 'first-placed':
      return withFacts(open, { firstPlaced: null });
    case 'came-out':
      return withFacts({ ...open, askedLastSeen: false }, { cameOutAtMs: null });
    case 'weight':
      // With a tube in it changes nothing now, but no length is told again before it is known.
      return open.placed === null
        ? withFacts({ ...open, stepsSent: null }, { weight: null, bareWeight: null })
        : withFacts(context, { weight: null, bareWeight: null });
    case 'kit':
      // With a tube in it is asked again only once nothing is in.
      return open.placed === null
        ? withFacts({ ...open, stepsSent: null }, { kit: null })
        : withFacts(context, { kit: null });
    case 'own-tube':
      return takeBackOwnTube(context, open);
    case 'strips':
      return withFacts(open, { strips: null });
    default:
      return open.placed === null ? context : takeBackAboutTube(context, open, key);
  }
}

/** With the own tube in, whether it is whole is asked before it is used on; with another in, it no longer matters. */
function takeBackOwnTube(context: Context, open: Context): Context {
  if (open.placed === null) return withFacts({ ...open, stepsSent: null }, { ownTube: null });
  return open.placed.tube === 'own' ? withFacts(open, { ownTube: null }) : context;
}

/** Answers about the tube that is in. What the line has held or sent in for is not taken back by the caregiver. */
function takeBackAboutTube(context: Context, open: Context, key: QuestionKey | null): Context {
  switch (key) {
    case 'tube-in':
    case 'own-tube-in':
      return withPlaced(open, { how: null, cleared: false });
    case 'after-in':
      return withPlaced(open, { afterIn: 'unasked' });
    case 'contents':
    case 'ph':
      return takeBackReading(context, open);
    case 'fed-lately':
    case 'looks':
      return actedOn(context) ? context : withPlaced(open, { [key === 'looks' ? 'looks' : 'fedLately']: null });
    case 'secured':
      return withPlaced(open, { secured: false });
    default:
      return context;
  }
}

/** Contents or a reading in doubt are drawn and read again; a high reading that the line has acted on stands. */
function takeBackReading(context: Context, open: Context): Context {
  if (tubeIn(context).reading === null) return withPlaced(context, { contents: false });
  if (actedOn(context)) return context;
  const held = context.outcome?.to === 'hold';
  const taken = withPlaced(open, { ...noReading, readingCorrected: held });
  // Held again on another reading, it is for a nurse again.
  return held ? { ...taken, pagedOnce: taken.pagedOnce.filter((reason) => reason !== 'hard-insertion') } : taken;
}

/** The line waits for the recheck, or has had it. */
function actedOn(context: Context): boolean {
  return tubeIn(context).recheck !== 'none' && !readingPassed(context);
}

/** A reading that passed and is doubted takes new contents and a new strip, and a new clearance. */
const noReading = {
  reading: null,
  contents: false,
  contentsTried: 0,
  fedLately: null,
  looks: null,
  secured: false,
  cleared: false,
  retested: true,
} as const;

function settledFile({ file }: Context): Context['file'] {
  return file === 'unconfirmed' ? 'settled' : file;
}

/** Danger signs that nobody could read leave no permission standing; who was sent in stays sent in. */
function voided(context: Context): Context {
  return context.outcome?.to === 'go-in' ? context : { ...context, outcome: null, disposition: null };
}

/** Two unreadable answers: go on as "unknown" where the question has that value, else as its careful answer. */
export function giveUp(context: Context, key: QuestionKey): Context {
  const next: Context = { ...context, unclear: null, preface: [...context.preface, { key: 'goesToNurse' }] };
  switch (key) {
    case 'unwell':
      return { ...voided(next), unwell: 'unread', ...nothingToClarify };
    case 'who':
      return { ...next, sameChild: 'maybe' };
    case 'which-child':
      return noneOfThem(next);
    case 'confirm':
      return withFacts({ ...next, file: 'settled' }, { tubeKind: null, firstPlaced: null, weight: null });
    case 'tube-kind':
      return withFacts(next, { tubeKind: 'unknown' });
    case 'first-placed':
      return withFacts(next, { firstPlaced: 'unknown' });
    case 'own-tube':
      return noteOwnTube(next, 'unknown');
    case 'kit':
      return withFacts(next, { kit: 'no' });
    case 'weight':
      return withFacts(next, { weight: 'unknown', bareWeight: null });
    case 'came-out':
      return withFacts({ ...next, askedLastSeen: true }, { cameOutAtMs: 'unknown' });
    case 'tube-in':
    case 'own-tube-in':
      return next.placed === null
        ? noteFailedTry(next, key === 'own-tube-in' ? 'own' : 'temporary')
        : withPlaced(next, { how: 'hard' });
    case 'after-in':
      return { ...next, warning: true };
    case 'strips':
      return withFacts(next, { strips: 'no' });
    case 'fed-lately':
      return withPlaced(next, { fedLately: 'unknown' });
    case 'looks':
      return withPlaced(next, { looks: 'unknown' });
    case 'contents':
    case 'ph':
    case 'secured':
      return withPlaced(next, { stopped: 'unread' });
    default:
      return next;
  }
}
