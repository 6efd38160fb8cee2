/** English: what is said beside the way: nudges, calls, pages that wait, corrections, and texts outside a case. */
import type { Site } from '#machines/protocol/settings.ts';
import type { Left } from '#machines/says.ts';
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { BesideKey } from '../keys.ts';
import { plainText, spoken } from '../plain.ts';
import { childIn } from './facts.ts';
import { nudge } from './nudges.ts';

/** Nobody is coming to help with a step, so a family that cannot do it goes in. */
const unanswered = {
  'carry-on': (hospital: string) =>
    `Can't do this step? Go to the emergency department at ${hospital} now. Put nothing through a tube.`,
  stay: () => 'What I told you last still holds.',
} as const;

const leftAs: Readonly<Record<Left, (site: Site) => string>> = {
  'go-in': ({ hospital }) =>
    `Not seen at ${hospital} yet? Go there now. Put nothing through a tube till they say you may. `,
  held: ({ clinicNumber }) => `Put nothing through a tube till the clinic says you may: ${clinicNumber}. `,
  'in-use': () => '',
};

const hospitalToo = ({ hospitalNumber }: Site) =>
  hospitalNumber === undefined ? '' : `Or ring the hospital: ${hospitalNumber}. `;

export const beside: Pick<CaregiverCatalogue, BesideKey> = {
  nudge: ({ asking }, scene) => nudge(asking, scene),
  recheckCall: (_params, scene) =>
    `Hello. This is the feeding tube line. It is time to test the tube of ${childIn(scene)} again. ` +
    'Put nothing through the tube. Please read your texts now and answer them. ' +
    `If you see danger, hang up and call ${spoken(scene.site.emergencyNumber)}.`,
  pageUnanswered: ({ advice }, { site }) =>
    `No nurse has answered yet. I am still calling. ${unanswered[advice](site.hospital)} ${hospitalToo(site)}` +
    `In danger, call ${site.emergencyNumber}.\nReply ${advice === 'carry-on' ? 'to my last question' : 'OK'}.`,
  pageBegan: ({ mostMinutes }, { site }) =>
    `I am calling a nurse. One should answer within ${mostMinutes} minutes; I will tell you who. Go on as I told you. ` +
    `In danger, call ${site.emergencyNumber}.\nReply as I asked before.`,
  pagePassed: ({ nurse }, { site }) =>
    `Nurse ${nurse} has passed your case to the next nurse. I am calling that nurse now. Go on as I told you. ` +
    `In danger, call ${site.emergencyNumber}.\nReply as I asked before.`,
  relay: ({ nurse, words }) =>
    `Nurse ${nurse} writes: ${plainText(words)}\nReply here and nurse ${nurse} will read it.`,
  ringSoon: ({ nurse, number }, { site }) =>
    `Nurse ${nurse} will ring you soon. The call comes from ${number}. Please pick up. In danger, call ` +
    `${site.emergencyNumber}.\nNo reply needed.`,
  pageTaken: ({ nurse }, scene) =>
    `Nurse ${nurse} has your case now. Go on as I told you. If ${childIn(scene)} gets worse, call ` +
    `${scene.site.emergencyNumber}.\nReply OK.`,
  askCorrection: () =>
    'What should I change? Say what is right, such as: THE TUBE IS A GJ. Or: THE WEIGHT IS 7 KG.\nReply with that.',
  stopped: (_params, { site }) =>
    `You will get no more texts from this line unless you text it. In danger, call ${site.emergencyNumber}. If your case is still open, a nurse ` +
    'will phone you.\nNo reply needed.',
  help: (_params, { site }) =>
    `In danger, call ${site.emergencyNumber}. This line can't send help. It is automatic and is for a child's belly ` +
    `feeding tube that came out. Clinic: ${site.clinicNumber}.\nReply NURSE for a person, or tell me what is wrong.`,
  phoneJoined: ({ lastFour }, { site }) =>
    `In danger, call ${site.emergencyNumber}. From now on a phone that ends in ${lastFour} gets these texts too. If you know it, go on.` +
    "\nReply NURSE if you don't know that phone.",
  closedByNurse: ({ left, asks }, { site }) =>
    `The nurse has closed this case. ${leftAs[left](site)}In danger, call ${site.emergencyNumber}. ` +
    (asks ? 'Is the tube out now?\nReply YES or NO.' : 'Text me if the tube comes out again.\nNo reply needed.'),
  callAnswer: ({ next }, { site }) =>
    `In danger, hang up and call ${spoken(site.emergencyNumber)} now. This line can't send help. Put nothing through the tube. ` +
    (next === 'ring'
      ? 'I am ringing a nurse now. Please stay on the line.'
      : 'Now hang up, and text me what is wrong. I will answer at once.'),
  callUnanswered: (_params, { site }) =>
    `In danger, hang up and call ${spoken(site.emergencyNumber)} now. No nurse has answered yet. I am still calling. Put nothing ` +
    `through the tube. Now hang up, and text me what is wrong. I will answer at once. Can't text? Go to the emergency department at ` +
    `${site.hospital}.`,
  paused: (_params, { site }) =>
    `In danger, call ${site.emergencyNumber} now. This line is paused and can't guide you. Put nothing through a tube and ` +
    'give nothing by mouth. Cover the hole with a clean cloth. I am calling a nurse to ring you. If no one rings in ' +
    '10 minutes, go to the emergency department.\nNo reply needed.',
  askAboutTube: (_params, { site }) =>
    `In danger, call ${site.emergencyNumber}. This line can't send help. Is this about a feeding tube that came out?` +
    '\nReply YES or NO.',
  notAboutTube: (_params, { site }) =>
    `This line is just for feeding tubes. For all else, call the clinic: ${site.clinicNumber}. In danger, call ` +
    `${site.emergencyNumber}.\nNo reply needed.`,
  thanks: (_params, { site }) =>
    `You are welcome. In danger, call ${site.emergencyNumber}. Text me if the tube comes out again.\nNo reply needed.`,
};
