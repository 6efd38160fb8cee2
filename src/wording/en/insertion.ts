/** English: putting a tube in, the child's own or the temporary one. Length in centimetres is named here and nowhere else. */
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { InsertionKey } from '../keys.ts';
import { length } from './facts.ts';

const howDidItGo = '\nReply EASY, HARD (had to push) or NO (not in).';

/**
 * The gauge for a family without a ruler: the short side of a bank card, 53.98 mm (ISO/IEC 7810, ID-1). Whole it lies
 * in 4-6 cm; two thirds, 36 mm, in 3-4 cm; just under three quarters, 40 mm, is 4 cm.
 */
function cardGauge(lowCm: number, highCm: number): string {
  if (highCm > 4) return 'The short side of a bank card';
  return lowCm < 4 ? 'Two thirds of the short side of a bank card' : 'Just under 3/4 of the short side of a bank card';
}

export const insertion: Pick<CaregiverCatalogue, InsertionKey> = {
  ownTubeSteps: ({ oneTry }) =>
    "Wash your hands. Test the tube's balloon outside the body, then empty it. Wet the tube. Ease it in gently as far " +
    `as it was before.${oneTry ? ' Try only once.' : ''} Never force it. Hold it with tape. Keep the balloon empty. ` +
    `Put nothing through it yet.${howDidItGo}`,
  ownTubeAsHolderSteps: () =>
    'Wash your hands. Wet the old tube. Try once, gently, to ease it in as far as it was before. Never force it. Tape ' +
    `it. Leave the balloon flat. Put nothing through it: it only keeps the hole open.${howDidItGo}`,
  askHowIn: () =>
    'Did the tube slide in easily, or did you have to push?\nReply EASY or HARD. If it is not in, reply NO.',
  insertLayOut: () =>
    '1 of 3. Read all 3 texts first. Lay out the temporary tube, jelly or water to wet it, tape, a pen, a ruler or bank ' +
    'card. Only the tube is a must. Latex allergy, and it is not marked latex-free? Stop and text LATEX ALLERGY.',
  insertMeasure: ({ lowCm, highCm }) =>
    `2 of 3. Wash your hands. Clean the skin with water. Mark the tube ${length(lowCm, highCm)} from the ` +
    `tip. No ruler? ${cardGauge(lowCm, highCm)} will do. Wet the tip.`,
  insertPutIn: ({ oneTry, stopAtAnyResistance }) => {
    const caution = stopAtAnyResistance ? ' If it does not slide, stop.' : '';
    return (
      `3 of 3. Ease the tube in, at a slight slant, on a breath in, up to the mark. Never force it.${caution}` +
      `${oneTry ? ' Try only once.' : ''} Tape it. Leave the balloon flat. Put nothing through it. ` +
      `To see one again, text STEP 1, STEP 2 or STEP 3.${howDidItGo}`
    );
  },
  secondTry: ({ lowCm, highCm }) =>
    `Try once more. If you have a smaller tube, take that one. Mark it ${length(lowCm, highCm)} from the tip and wet it. ` +
    'Ease it in, at a slight slant, on a breath in. Never force it. Tape it. Leave the balloon flat. ' +
    `Put nothing through it.${howDidItGo}`,
  askTubeIn: () => `Is the temporary tube in? Put nothing through it yet.${howDidItGo}`,
};
