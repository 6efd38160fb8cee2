/** English: danger first, and the question whether there is any. */
import type { Sign } from '#machines/facts.ts';
import type { CaregiverCatalogue, Scene } from '../catalogue.ts';
import type { SafetyKey } from '../keys.ts';
import { childIn } from './facts.ts';

export const signNames: Readonly<Record<Sign, string>> = {
  breathing: 'trouble breathing',
  colour: 'blue or gray',
  limp: 'limp or hard to wake',
  bleeding: 'bleeding',
  'hard-belly': 'hard swollen belly',
  'severe-pain': 'very bad pain',
  vomit: 'green or repeated vomit',
  fever: 'fever',
  pain: 'pain',
  'fresh-blood': 'fresh blood',
  'tight-belly': 'tight belly',
  leak: 'leak',
};

/** With no tube in, a small sign is asked about as the danger it could be. */
const clarifications: Readonly<Record<Sign, (child: string, tubeIn: boolean) => string>> = {
  breathing: (child) => `Is it hard for ${child} to breathe?`,
  colour: (child) => `Does ${child} look blue, gray or very pale?`,
  limp: (child) => `Is ${child} limp, or hard to wake?`,
  bleeding: () => 'Is there blood that keeps coming, or a lot of it?',
  'hard-belly': (child) => `Does ${child} have a hard swollen belly?`,
  'severe-pain': (child) => `Is ${child} in very bad pain, or crying and you can't calm it?`,
  vomit: (child) => `Has ${child} thrown up green, or more than once?`,
  fever: (child) => `Does ${child} have a fever now?`,
  pain: (child, tubeIn) =>
    tubeIn ? `Does ${child} have new pain since the tube went in?` : `Is ${child} in very bad pain?`,
  'fresh-blood': (_child, tubeIn) =>
    tubeIn ? 'Do you see any fresh blood?' : 'Is there blood that keeps coming, or a lot of it?',
  'tight-belly': (child, tubeIn) =>
    tubeIn ? 'Is the belly tighter or bigger than before?' : `Does ${child} have a hard swollen belly?`,
  leak: () => 'Is milk or fluid leaking around the tube?',
};

const dangerList =
  'Trouble breathing? Blue or gray? Limp or hard to wake? Bleeding that goes on? Hard swollen belly? Very bad pain? ' +
  'Green or repeated vomit? Fever in a baby under 3 months?';

/** Of many signs told, the first few say enough to the person who takes the emergency call. */
const mostSigns = 3;

function openingWith(care: string, { site }: Scene): string {
  return (
    `Danger? Call ${site.emergencyNumber}. This line can't send help. Stop any feed. ${care} ${dangerList} Any?` +
    '\nReply YES or NO.'
  );
}

export const safety: Pick<CaregiverCatalogue, SafetyKey> = {
  opening: (_params, scene) => openingWith('Cover the hole with a clean cloth. Keep the tube.', scene),
  openingTubeIn: (_params, scene) => openingWith("Don't pull the tube. Put nothing through it.", scene),
  askUnwell: (_params, { site }) => `In danger, call ${site.emergencyNumber}. ${dangerList} Any?\nReply YES or NO.`,
  clarifySign: ({ sign, tubeIn }, scene) =>
    `${clarifications[sign](childIn(scene), tubeIn)}\nReply YES or NO. If you are not sure, reply YES.`,
  askTrouble: (_params, scene) =>
    `I could not read that. Is something wrong with ${childIn(scene)} or the tube? In danger, call ` +
    `${scene.site.emergencyNumber}.\nReply YES or NO.`,
  emergency: ({ signs }, { site }) => {
    const told = signs.slice(0, mostSigns).map((sign) => signNames[sign]);
    const why = told.length === 0 ? '' : ` You told me: ${told.join(', ')}.`;
    const mistake = told.length === 0 ? ', or WRONG if you sent YES by mistake' : '';
    return (
      `Call ${site.emergencyNumber} now.${why} I can't send help. Stop any feed. Give nothing by tube or mouth. ` +
      `I am calling a nurse.\nReply OK once you have called${mistake}.`
    );
  },
  emergencyCalled: (_params, scene) =>
    `Good. Stay with ${childIn(scene)} till help comes, and show them my texts. Give nothing by tube or mouth. Not called yet, or ` +
    `worse? Call ${scene.site.emergencyNumber} now.\nReply if anything changes.`,
  emergencyStill: (_params, { site }) =>
    `Call ${site.emergencyNumber} now if you have not. I can't send help. Give nothing by tube or mouth.\n` +
    'Reply if anything changes.',
};
