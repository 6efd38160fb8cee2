/** The rules over where a step leaves the family: what still stands, who was paged, what is timed, what was answered. */
import { type Disposition, inPlaceTroubles } from '#machines/facts.ts';
import { missingForUse, restricted } from './mayUse.ts';
import type { Holds, Seen } from './verdict.ts';

/** The pages that answer to a disposition's reason; null where any page will do. */
const pagesFor: Record<string, readonly string[]> = {
  'tract-too-young': ['tract-too-young'],
  kind: ['restricted-kind'],
  tract: ['restricted-tract', 'tract-nearly-too-young'],
  'half-out': ['half-out'],
  ...Object.fromEntries(inPlaceTroubles.map((trouble) => [trouble, [trouble]])),
  warning: ['warning-sign', 'not-well-after'],
  'unwell-unread': ['unwell-unread'],
  latex: ['latex'],
  'no-kit': ['no-kit'],
  'burst-own': ['no-kit'],
  'not-shown': ['not-shown'],
  'will-not-go-in': ['will-not-go-in'],
  'second-high': ['second-high'],
  'cannot-wait': ['cannot-wait'],
  hard: ['hard-insertion'],
  'no-strips': ['no-strips'],
  'no-contents': ['no-contents'],
  unread: ['unread'],
  'not-secured': ['not-secured'],
  'tube-problem': ['tube-problem'],
};

export function endRules(seen: Seen, holds: Holds): void {
  answeredAndOpen(seen, holds);
  nursesWord(seen, holds);
  if (seen.after.over || !seen.after.opened) return;
  standingHolds(seen, holds);
  pagedAndFollowed(seen, holds);
  timed(seen, holds);
  unreadAndReopened(seen, holds);
}

/**
 * S1 and S2: what was allowed before still has to hold after this step; what may not be used goes in, but for a tube that never
 * came out, which a nurse decides.
 */
function standingHolds({ after, event, setting }: Seen, holds: Holds): void {
  const inUse = after.standing === 'use' || after.standing === 'own-tube';
  if (inUse) {
    const missing = missingForUse(after, setting, event.at);
    holds('S1', missing === null, `a tube stays in use though ${missing}`);
    holds('S8', missing === null, `a tube stays in use though ${missing}`);
  }
  const why = restricted(after, setting, event.at);
  const rests = after.open === null && after.standing !== null && after.standing !== 'recheck';
  if (rests && why !== null && after.standing !== 'emergency' && after.kind !== 'nose') {
    const known = why !== 'kind' || after.kind !== null;
    holds(
      'S2',
      !known || after.standing === 'go-in' || (after.inPlace !== null && after.standing === 'hold'),
      `the case rests on ${after.standing} though the ${why} forbids use`,
    );
  }
}

const final: ReadonlySet<Disposition> = new Set(['go-in', 'hold', 'nurse', 'emergency']);

/** S3, S6: whoever is not allowed to use a tube has a nurse called; whoever is, is asked how it went. */
function pagedAndFollowed({ after }: Seen, holds: Holds): void {
  const { standing, standingReason, paged, aftercare } = after;
  if (standing === null) {
    holds('S6', aftercare !== 'use' && aftercare !== 'own-tube', 'aftercare goes on for a tube no longer in use');
    return;
  }
  if (final.has(standing)) {
    holds('S6', paged.length > 0, `${standing} stands and nobody was paged`);
    const reasoned = standing === 'go-in' || standing === 'hold';
    const reasons = reasoned && standingReason !== null ? pagesFor[standingReason] : undefined;
    if (reasons !== undefined) {
      const called = reasons.some((reason) => paged.includes(reason));
      holds(standing === 'hold' ? 'S3' : 'S6', called, `${standing} for ${standingReason} and nobody was paged for it`);
    }
  }
  if (standing === 'nurse') holds('S6', paged.includes('nose-tube'), 'a nose tube and nobody was paged for it');
  if (standing === 'emergency') holds('S6', paged.includes('danger-sign'), 'an emergency and nobody was paged for it');
  // While a sign is being made clear, what follows is decided with it.
  if (after.open !== null) return;
  const follows = standing === 'emergency' ? 'go-in' : standing;
  if (follows === 'use' || follows === 'own-tube' || follows === 'go-in') {
    holds('S6', aftercare === follows, `${standing} stands and ${aftercare ?? 'nothing'} follows`);
  }
}

/** S6, S7: a recheck has its one timer; every question, and every hold, comes back by itself. */
function timed({ after }: Seen, holds: Holds): void {
  const { standing, open, timers, silencePaged, paged } = after;
  const rechecks = timers.filter((id) => id.startsWith('recheckAfter.')).length;
  const waiting = standing === 'recheck' && open === null;
  holds('S6', rechecks === (waiting ? 1 : 0), `${rechecks} recheck timers run while ${standing} stands`);
  if (open !== null) {
    const back = timers.length > 0 || (silencePaged && paged.includes('silence'));
    holds('S7', back, `nothing comes back to the question ${open}`);
  }
  if (standing === 'hold' || standing === 'nurse')
    holds('S7', timers.length > 0, `nothing comes back to a ${standing}`);
}

/** What a nurse is told of answers that nobody could read. */
const unreadReasons: ReadonlySet<string> = new Set([
  'unread',
  'unread-in-use',
  'unwell-unread',
  'which-child',
  'same-child',
]);

/** S8: two unreadable answers to one question reach a nurse, and something is asked or decided. */
function unreadAndReopened({ before, after, event, outputs }: Seen, holds: Holds): void {
  if (event.type === 'unclear' && before.open !== null && before.unread >= 1) {
    const called = outputs.pages.some((reason) => unreadReasons.has(reason));
    holds('S8', called, `two unreadable answers to ${before.open} and nobody was paged`);
    const goesOn = after.standing !== null || after.open !== before.open || after.clarifying !== before.clarifying;
    holds(
      'S8',
      goesOn || before.open === 'tube-in' || before.open === 'own-tube-in',
      `${before.open} is asked for ever`,
    );
  }
  if (event.type === 'outAgain' && before.danger === null && before.tube !== null) {
    holds('S8', outputs.pages.includes('came-out-again'), 'a tube came out again and nobody was paged');
    holds('S8', outputs.says.length > 0 && after.tube === null, 'a tube came out again and still counts as in');
  }
}

/** S9: every text is answered, leaves a question or a disposition, and none ends the case but one that goes on in another; STOP calls a nurse. */
function answeredAndOpen({ before, after, event, outputs }: Seen, holds: Holds): void {
  // There it is answered.
  const goesOnThere = event.type === 'answer.who' && event.value === 'joins' && before.open === 'who';
  const isText = 'person' in event && !goesOnThere;
  if (isText) {
    holds('S9', outputs.says.length > 0, `${event.type} is answered with silence`);
    holds(
      'S9',
      after.open !== null || after.standing !== null,
      `${event.type} leaves neither a question nor a disposition`,
    );
  }
  holds('S9', outputs.closed === (event.type === 'nurse.close' || goesOnThere), `${event.type} ends the case`);
  if (event.type === 'stop') holds('S9', outputs.pages.includes('stopped'), 'STOP calls no nurse');
  if (isText && event.person) {
    holds(
      'S9',
      outputs.pages.includes('person-wanted') || after.danger !== null,
      'a person was wanted and none called',
    );
  }
}

const inUse = (standing: Disposition | null) => standing === 'use' || standing === 'own-tube';

/** S9: a clearance is heard where a hard insertion is held and nowhere else; who is sent in goes in; no fact corrected allows. */
function nursesWord({ before, after, event, outputs }: Seen, holds: Holds): void {
  switch (event.type) {
    case 'nurse.clear': {
      const clearable = before.standing === 'hold' && before.standingReason === 'hard';
      holds('S9', clearable || outputs.says.length === 0, `a clearance is heard at ${before.standing ?? before.open}`);
      return;
    }
    case 'nurse.goIn':
      holds('S9', after.standing === 'go-in' || after.danger !== null, 'a child sent in by a nurse does not go in');
      return;
    case 'nurse.corrects':
      holds('S9', inUse(before.standing) || !inUse(after.standing), 'a fact a nurse corrected allows a tube');
      return;
  }
}
