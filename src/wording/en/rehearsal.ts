/** English: rehearsals, to the family and to the nurse. */
import type { PageReason } from '#machines/facts.ts';
import type { RehearsalEnd } from '#machines/says.ts';
import type { CaregiverCatalogue, NurseCatalogue } from '../catalogue.ts';
import type { RehearsalSayKey } from '../keys.ts';
import type { RehearsalKey, RehearsalRefusal, RehearsalResult } from '../nurseSays.ts';
import { clip, plainName } from '../plain.ts';
import { dispositionNames, reasonNames } from './nurseNames.ts';
import { nameChild } from './nurseReplies.ts';

export const rehearsalMark = 'PRACTICE.';

const ends: Readonly<Record<RehearsalEnd, string>> = {
  done: 'That is the end of the practice.',
  quiet: 'No text for 20 minutes, so the practice is over.',
  asked: 'The practice is over.',
  elsewhere: 'Your family has a real case on another phone, so the practice is over.',
  paused: 'This line is paused, so the practice is over.',
};

export const rehearsal: Pick<CaregiverCatalogue, RehearsalSayKey> = {
  rehearsalBegan: ({ nurse }, { site }) =>
    `${nurse === null ? '' : `Nurse ${nurse} asks you to practice. `}This is not real and no nurse is called. In danger, call ` +
    `${site.emergencyNumber}. If it is real, text REAL. It ends after 20 minutes with no text, or text PRACTICE OVER. ` +
    'Now text me as if a tube just came out.\nReply as you would then.',
  rehearsalPage: (_params, { site }) =>
    `Here I would call a nurse. In practice I call no one. In danger, call ${site.emergencyNumber}.\nReply as I asked before.`,
  rehearsalOver: ({ how }, { site }) =>
    `${ends[how]} Nothing I said in it counts. From now on a tube that comes out is real. In danger, call ` +
    `${site.emergencyNumber}.\nNo reply needed.`,
  rehearsalReal: (_params, { site }) =>
    `This is no longer practice: I take your last text as real. In danger, call ${site.emergencyNumber}.\n` +
    'Reply as I asked before.',
};

const refusals: Readonly<Record<RehearsalRefusal, string>> = {
  'nobody-named':
    'No practice sent. Text PRACTICE and the first name of an enrolled child, or the number of its family.',
  'not-found': 'No practice sent: no family is enrolled by that name or number.',
  several: 'No practice sent: that name is in more than one family. Text PRACTICE and the number of the family.',
  open: 'No practice sent: this family has an open case.',
  busy: 'No practice sent: this family is texting now. Try again in a minute.',
  'opted-out': 'No practice sent: this family texted STOP. Ring them.',
};

const endings: Readonly<Record<Exclude<RehearsalResult['how'], 'done'>, string>> = {
  quiet: 'ended by 20 minutes of silence',
  asked: 'ended by the family',
  stopped: 'ended by STOP: the family gets no texts',
  elsewhere: 'ended by a real case on another phone',
  paused: 'ended by the pause',
  real: 'ended as REAL: the family has a real case now, and pages come as always',
};

const mostReasons = 2;

function nameReasons(reasons: readonly PageReason[]): string {
  const named = reasons.slice(0, mostReasons).map((reason) => reasonNames[reason]);
  return [...named, ...(reasons.length > mostReasons ? [`${reasons.length - mostReasons} more`] : [])].join('; ');
}

export const rehearsalReplies: Pick<NurseCatalogue, RehearsalKey> = {
  rehearsalSent: ({ child, number }) =>
    `Practice sent to the family of ${nameChild(child)}, ${number}. Nobody is paged for it. You get the result.`,
  rehearsalNot: ({ why }) => refusals[why],
  rehearsalResult: ({ child, how, disposition, answered, unread, asking, raised }) =>
    [
      `PRACTICE RESULT ${clip(plainName(child) ?? 'Unnamed child', 20)}: ` +
        `${how === 'done' ? `came to its end (${disposition === null ? 'no end' : dispositionNames[disposition]})` : endings[how]}.`,
      `Answers: ${answered}, not readable: ${unread}.`,
      ...(asking === null || how === 'done' ? [] : [`Stopped at: ${asking.replaceAll('-', ' ')}.`]),
      ...(raised.length === 0 ? [] : [`A nurse would have been called: ${nameReasons(raised)}.`]),
      how === 'real' ? '' : 'Nothing to do.',
    ]
      .join(' ')
      .trim(),
};
