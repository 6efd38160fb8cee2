/** English: how it ends for now: in use, held, on to a nurse, or on to the hospital. */
import { isInPlace, type TubeKind } from '#machines/facts.ts';
import type { Card, GoInReason, HoldReason, Says } from '#machines/says.ts';
import type { CaregiverCatalogue, Scene } from '../catalogue.ts';
import type { OutcomeKey } from '../keys.ts';
import { clip } from '../plain.ts';
import { childIn, days, reading, time } from './facts.ts';

const holdReasons: Readonly<Record<HoldReason, string>> = {
  hard: 'It was hard to get in.',
  'no-strips': "Without a strip I can't tell where the tube is.",
  'no-contents': "Without stomach contents I can't tell where the tube is.",
  unread: "Without a clear answer I can't tell if the tube is safe.",
  'second-high': 'The second reading is too high as well.',
  'not-secured': 'It is not held fast yet.',
  'tube-problem': 'Something is wrong with the tube.',
  'in-place': "Leave it in, don't pull it.",
  'in-blocked': "Don't try to unblock it. Leave it in, don't pull it.",
  'in-sore': "The hole may be infected. Leave the tube in, don't pull it.",
  'in-leaking': "It leaks. Leave it in, don't pull it.",
};

const goInReasons: Readonly<Record<GoInReason, string>> = {
  'tract-too-young': 'The hole is too new for a tube.',
  kind: 'They must replace this tube.',
  tract: 'The hole may be too new to be safe.',
  'half-out': "Don't push it in or pull it out.",
  latex: 'The tube may not be latex-free.',
  'no-kit': 'The hole can close in hours.',
  'not-shown': 'Let trained hands put the tube in.',
  'will-not-go-in': "Don't try again.",
  warning: 'Give nothing by tube or mouth.',
  'second-high': 'The second reading is high too.',
  'cannot-wait': "They can give safely what can't wait.",
  'nobody-answered': 'No nurse has answered yet.',
  'unwell-unread': "I can't tell if all is well.",
  'burst-own': 'It only keeps the hole open.',
  nurse: 'The nurse asks you to go.',
};

const goInCare: Readonly<Record<Card['inside'], string>> = {
  own: 'Leave the tube taped. Put nothing through it.',
  temporary: 'Leave the tube taped. Put nothing through it.',
  'half-out': 'Tape the tube as it is. Put nothing through it.',
  'in-place': 'Leave the tube in. Put nothing through it.',
  nose: 'Put nothing through the nose tube.',
  nothing: 'Keep the hole covered. Put nothing in it.',
};

const cardOut: Readonly<Record<TubeKind, string>> = {
  g: 'G tube came out',
  gj: 'GJ tube came out',
  j: 'J tube came out',
  'half-out': 'Feeding tube half out',
  unknown: 'Feeding tube (kind not known) came out',
  nose: 'Nose tube came out',
};

const cardInside: Readonly<Record<Card['inside'], string>> = {
  own: 'Own tube is back in',
  temporary: 'Temporary tube is in',
  'half-out': 'Tube left as it is',
  'in-place': 'Tube in place',
  nose: 'Nothing was put in',
  nothing: 'No tube in the hole',
};

/** A feed or medicine that must not be missed is named in at most this many characters. */
const mostCannotWait = 60;

const goNow = ({ site }: Scene) =>
  `Go now to the emergency department at ${site.hospital} (if over an hour away, the nearest).`;
function goInWhy(why: string | null, { reason, inside }: Says['goIn'], scene: Scene): string {
  const ask = reason === 'cannot-wait' ? '\nNo reply needed.' : replyIfCannotWait;
  const care = why === null ? goInCare[inside] : `${why} ${goInCare[inside]}`;
  return `${goNow(scene)} ${care} Worse? Call ${scene.site.emergencyNumber}.${ask}`;
}

/** Worded so that the reader hears it: the bare name of a medicine would be no word it knows. */
const cannotWait = "FEED NOW or MEDICINE NOW and its name if one can't wait.";
export const replyIfCannotWait = `\nReply ${cannotWait}`;
const replyOutOrCannotWait = `\nReply OUT if it comes out, or ${cannotWait}`;
export const replyOkOrCannotWait = `\nReply OK, or ${cannotWait}`;

/** What the desk of the emergency department has to know, in English whatever the family speaks. */
export function deskFacts(card: Card, scene: Scene): string {
  if (card.inside === 'in-place')
    return `Feeding tube in place, not out; something is wrong with it. DO NOT FEED.${allergyOf(card)}${urgentFor(card)}`;
  const since = card.cameOutAtMs === null ? 'time not known' : time(card.cameOutAtMs, scene);
  const last = card.lastReading === null ? '' : ` Last pH ${reading(card.lastReading)}.`;
  return (
    `${cardOut[card.tubeKind ?? 'unknown']}: ${since}. ${cardInside[card.inside]}${cardPlace(card)}.${last} ` +
    `DO NOT FEED.${allergyOf(card)}${urgentFor(card)}`
  );
}

const allergyOf = ({ latexAllergy }: Pick<Card, 'latexAllergy'>) => (latexAllergy ? ' LATEX ALLERGY.' : '');

function urgentFor({ cannotWait, latexAllergy }: Card): string {
  return cannotWait === null
    ? ''
    : ` Can't wait: "${clip(cannotWait, mostCannotWait - allergyOf({ latexAllergy }).length)}".`;
}

function cardPlace(card: Card): string {
  if (card.inside !== 'own' && card.inside !== 'temporary') return '';
  return card.checked ? ', checked by pH' : ', NOT checked';
}

export const outcome: Pick<CaregiverCatalogue, OutcomeKey> = {
  use: ({ tube, stayDays }, { site }) => {
    const which = tube === 'temporary' ? 'temporary tube' : 'tube';
    const stay = tube === 'temporary' ? `It may stay ${days(stayDays)} at most. ` : '';
    return (
      `You may use the ${which} now. Start slowly and watch. No night pump till a watched feed went well. Check the mark ` +
      'before each feed. Pain, leak, fresh blood or vomit? Stop and text me. ' +
      `${stay}Call the clinic by the next work day: ${site.clinicNumber}.\nReply OK.`
    );
  },
  useStill: ({ tube }, { site }) =>
    `You may use the ${tube === 'temporary' ? 'temporary tube' : 'tube'}. Check the mark, go slowly, and watch. ` +
    `Pain, leak or fresh blood? Stop the feed. In danger, call ${site.emergencyNumber}.\nReply if anything is wrong.`,
  hold: ({ reason, clinicArranges }, scene) => {
    const next = clinicArranges
      ? `The clinic will plan the tube change: ${scene.site.clinicNumber}.`
      : 'A nurse will tell you what comes next.';
    return (
      `Put nothing through the tube. ${holdReasons[reason]}${isInPlace(reason) ? '' : ' Leave it taped in.'} ${next} ` +
      `If ${childIn(scene)} gets worse, call ${scene.site.emergencyNumber}.` +
      `${isInPlace(reason) ? replyOutOrCannotWait : replyOkOrCannotWait}`
    );
  },
  holdStill: (_params, scene) =>
    `Put nothing through the tube. A nurse will tell you what comes next. If ${childIn(scene)} gets worse, call ` +
    `${scene.site.emergencyNumber}.${replyIfCannotWait}`,
  leaveInStill: (_params, scene) =>
    `Put nothing through the tube. ${holdReasons['in-place']} A nurse will tell you what comes next. ` +
    `If ${childIn(scene)} gets worse, call ${scene.site.emergencyNumber}.${replyOutOrCannotWait}`,
  nurse: (_params, scene) =>
    `Put nothing through the nose tube and don't push it in. This line is for belly tubes. I am calling a nurse for you. ` +
    `If ${childIn(scene)} gets worse, call ${scene.site.emergencyNumber}.${replyOkOrCannotWait}`,
  nurseStill: (_params, scene) =>
    `Put nothing through the nose tube and don't push it in. A nurse will call you. If ${childIn(scene)} gets worse, call ` +
    `${scene.site.emergencyNumber}.${replyIfCannotWait}`,
  goIn: ({ reason, inside }, scene) => goInWhy(goInReasons[reason], { reason, inside }, scene),
  goInCard: (card, scene) =>
    `Show this at the desk. ${deskFacts(card, scene)} Bring the tube, kit and charger. Let someone else drive.\n` +
    'No reply needed.',
  goInStill: ({ told }, scene) => {
    if (told === null)
      return `${goNow(scene)} Put nothing through the tube. If ${childIn(scene)} gets worse, call ${scene.site.emergencyNumber}.${replyIfCannotWait}`;
    // Somebody may have answered since.
    return goInWhy(told.reason === 'nobody-answered' ? null : goInReasons[told.reason], told, scene);
  },
};
