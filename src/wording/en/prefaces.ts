/** English: the short sentences put before a message. */
import type { Unclear } from '#machines/events.ts';
import type { NotedFacts } from '#machines/says.ts';
import type { PrefaceCatalogue, Scene } from '../catalogue.ts';
import { dates, reading, time, tubeKindNames, weight } from './facts.ts';

const unclear: Readonly<Record<Unclear, string>> = {
  unreadable: 'I could not read that.',
  unsure: 'I need a clear answer.',
  future: 'That time has not come yet.',
  impossible: "That number can't be right.",
  'two-answers': 'That could mean two things.',
  'no-number': 'I need a number.',
  'no-match': 'I could not match that.',
};

function notedFacts(facts: NotedFacts, scene: Scene): string {
  return [
    facts.tubeKind === undefined ? [] : [tubeKindNames[facts.tubeKind]],
    facts.firstPlaced === undefined ? [] : [`first placed ${dates(facts.firstPlaced)}`],
    facts.weight === undefined ? [] : [weight(facts.weight)],
    facts.cameOutAtMs === undefined ? [] : [`out since ${time(facts.cameOutAtMs, scene)}`],
    facts.backIn === undefined ? [] : ['own tube back in, nothing through it yet'],
    facts.ph === undefined ? [] : [`pH ${reading(facts.ph)}`],
    facts.latexAllergy === undefined ? [] : ['latex allergy'],
  ]
    .flat()
    .join(', ');
}

export const prefaces: PrefaceCatalogue = {
  noted: ({ facts }, scene) => `I have: ${notedFacts(facts, scene)}.`,
  notUnderstood: ({ why }) => unclear[why],
  goesToNurse: () => 'I am calling a nurse about that.',
  nurseCalled: () => 'I am calling a nurse.',
  mediaKept: () => "I kept that for the nurse, but I can't read it.",
  passedOn: ({ nurse }) => `I passed that on to nurse ${nurse}.`,
  earlyReading: () => 'I noted that, but it is too early to count.',
  hourOver: () => 'The wait is over.',
  oneChild: (_preface, scene) =>
    `I text about one child only${scene.child === null ? '' : `, ${scene.child}`}: answer for that one. I am calling a nurse for the other.`,
  cleared: () => 'The nurse says go on.',
  startOver: () => 'It came out again, so what I said before no longer counts.',
  feverOrWarning: () => 'Stop any feed. That is a warning sign.',
  longInside: () => 'A long inside part means it is a GJ tube.',
};
