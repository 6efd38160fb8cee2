/** English: questions about the facts, the child's own tube and the kit. */
import { type CaregiverCatalogue, namesIn } from '../catalogue.ts';
import type { QuestionSayKey } from '../keys.ts';
import { childIn, dates, number, tubeKindNames, weight } from './facts.ts';

/** A weight as it was told, with its unit or without. */
const again = (told: { readonly kg: number } | { readonly bare: number }) =>
  'kg' in told ? weight(told) : number(told.bare);

export const questions: Pick<CaregiverCatalogue, QuestionSayKey> = {
  askWho: () =>
    "Has someone else texted about this child? If so: the child's first name and the last 4 digits of a parent's phone.\nReply like SAM 1234, or NO, or NOT SURE.",
  askWhichChild: (_params, scene) =>
    `Which child is this about?\nReply with the name: ${namesIn(scene).join(', ')} or NONE.`,
  confirmFile: (file, scene) => {
    const facts = [
      file.tubeKind === null ? [] : [tubeKindNames[file.tubeKind]],
      file.firstPlaced === null ? [] : [`first tube placed ${dates(file.firstPlaced)}`],
      file.weight === null ? [] : [weight(file.weight)],
    ].flat();
    const onFile = facts.length === 0 ? 'no facts yet' : facts.join(', ');
    return `On file for ${file.child ?? childIn(scene)}: ${onFile}. Is that still right?\nReply YES or NO.`;
  },
  askTubeKind: () =>
    'Which tube came out? G goes to the stomach. GJ has a long part that goes on to the gut. J goes to the gut only. ' +
    'HALF OUT is still part way in.\nReply G, GJ, J, HALF OUT, NOSE or NOT SURE.',
  askTubeKindByLook: () =>
    "Look at the tube. How many feed ports does it have? Don't count the small balloon valve. Was the part inside " +
    'short like a finger, or much longer?\nReply ONE PORT SHORT, TWO PORTS LONG or NOT SURE.',
  askFirstPlaced: (_params, scene) =>
    `When did ${childIn(scene)} get the very first tube in this hole? Not the last change. ` +
    'A month and year will do.\nReply with the date, or how long ago, or NOT SURE.',
  askOwnTube: () =>
    'Do you have the tube that came out? YES: whole, good balloon. BURST: the balloon broke. ' +
    'LONG: a long part was inside.\nReply YES, BURST, LONG, NO or NOT SURE.',
  askOwnTubeIn: () =>
    'Put nothing through the tube yet. Was it whole when it went in? YES: whole, good balloon. BURST: the balloon broke. ' +
    'LONG: a long part was inside.\nReply YES, BURST, LONG, NO or NOT SURE.',
  askKit: ({ stranger, latexAllergy }) => {
    const shown = stranger ? ' Has someone there been shown how to put it in?' : '';
    const latex = latexAllergy ? ' If it is not marked latex-free, the answer is NO.' : '';
    const replies = stranger ? 'Reply YES, NO or NOT SHOWN.' : 'Reply YES or NO.';
    return `Do you have the emergency kit with a temporary tube?${shown}${latex}\n${replies}`;
  },
  askWeight: (_params, scene) =>
    `How much does ${childIn(scene)} weigh? Put KG or LB after the number.\nReply with the weight, or NOT SURE.`,
  askWeightUnit: ({ bare }) => `Is that ${number(bare)} kg, or ${number(bare)} lb (pounds)?\nReply KG or LB.`,
  askWeightAgain: ({ told }, scene) =>
    `I have ${again(told)} as the weight. That is not what we expect at this age. How much does ${childIn(scene)} weigh?\nReply YES if it is right, or the weight with KG or LB.`,
  askCameOut: () => 'When did the tube come out?\nReply with a time, or how long ago, or NOT SURE.',
  askLastSeenIn: () => 'When did you last see the tube in its place?\nReply with a time, or how long ago, or NOT SURE.',
};
