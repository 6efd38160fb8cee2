/** English: finding out whether the tube is in the stomach, the hour's wait, and making it fast. */
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { PlacementKey } from '../keys.ts';
import { childIn, number, time } from './facts.ts';
import { replyIfCannotWait, replyOkOrCannotWait } from './outcome.ts';

/** What goes into the balloon, and how much. */
const fill = (most: number) => `by its small side valve, water only: what the tube says, never over ${number(most)} mL`;
const trouble = 'Pain, leak, stiff, no flow? Stop, draw it out, text me.';

export const placement: Pick<CaregiverCatalogue, PlacementKey> = {
  askAfterIn: () =>
    'Put nothing through the tube yet. Since it went in, is there new pain, fresh blood or a tighter belly?\n' +
    'Reply YES or NO. If you are not sure, reply YES.',
  askStrips: () => 'Put nothing through the tube yet. Do you have pH test strips there?\nReply YES or NO.',
  askContents: ({ attempt, newStrip }, scene) => {
    const fresh = newStrip ? 'Test again with new stomach contents and a new strip. ' : '';
    const turn =
      attempt === 1
        ? ''
        : `Turn ${childIn(scene)} from side to side, then sit ${childIn(scene)} up. Air may come first. `;
    return `${fresh}${turn}Pull back slowly with the syringe. Put nothing in. Did stomach contents come out?\nReply YES or NO.`;
  },
  askPh: () =>
    'Put a drop of the contents on the pH strip. Wait as the pack says. Match the color. Between two colors? Send both ' +
    "numbers.\nReply with the number, or CAN'T TELL.",
  askFedLately: (_params, scene) =>
    `Put nothing through the tube yet. Did ${childIn(scene)} have a feed or medicine in the last hour?\n` +
    'Reply YES, NO or NOT SURE.',
  askLooks: () =>
    'Look at what came out. YES: cloudy white, curdled milk, tan, grass green, brown flecks. ' +
    'NO: yellow, gold, red, clear.\nReply YES, NO or NOT SURE.',
  recheckWait: ({ dueAtMs }, scene) =>
    "Put nothing through the tube and give nothing by mouth. I can't be sure yet that it is in the stomach. " +
    `I will text you at ${time(dueAtMs, scene)} to test again. If ${childIn(scene)} gets worse, call ` +
    `${scene.site.emergencyNumber}.${replyOkOrCannotWait}`,
  recheckStill: ({ dueAtMs }, scene) =>
    `Put nothing through the tube and give nothing by mouth. I will text you at ${time(dueAtMs, scene)} to test again.` +
    replyIfCannotWait,
  secureSteps: ({ flushMl, balloonMostMl, tube }) =>
    `Good reading. No feed yet. Slowly flush ${number(flushMl)} mL water. Fill the balloon ${fill(balloonMostMl)}. ` +
    `Pull gently till snug, mark it at the skin${tube === 'own' ? ' if you can' : ''}, tape it. ${trouble}\n` +
    'Reply YES when done, or NO.',
  secureAgain: ({ balloonMostMl }) =>
    `No feed yet. Check the balloon: filled ${fill(balloonMostMl)}. Check that the tube is snug and taped. ` +
    `${trouble}\nReply YES when done, or NO.`,
};
