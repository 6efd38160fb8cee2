/** Gathers everything a text tells unasked: only what its words say firmly. */
import type { PhReading, QuestionKey, Told } from '#machines/facts.ts';
import { bornTold } from './birth.ts';
import { cameOutTold } from './cameOut.ts';
import { firstPlacedTold } from './firstPlaced.ts';
import { cameBackOut, howInTold } from './howIn.ts';
import { backInTold, inPlaceTold } from './inPlace.ts';
import { mayHoldLatex, toldLatexAllergy } from './latex.ts';
import { ownTubeTold } from './ownTube.ts';
import { phCorrected, ph as readPh } from './ph.ts';
import type { Said } from './said.ts';
import { halfOutOfTold, tubeKindTold } from './tubeKind.ts';
import { weightTold } from './weight.ts';
import { corrects } from './wishes.ts';

/** A kit that nobody knows how to use is asked about. */
function kitTold({ plain, clauses, words: { told, answers } }: Said): 'yes' | 'no' | null {
  if (told.noKit.test(plain)) return 'no';
  if (answers.notShown.test(plain) || answers.otherShown.test(plain)) return null;
  return clauses.some((clause) => told.haveKit.test(clause)) ? 'yes' : null;
}

/** A reading sent before the recheck asks for it. */
function earlyReading(said: Said): PhReading | null {
  const found = said.open.rechecking ? readPh(said) : null;
  return found && 'value' in found ? found.value : null;
}

const asksHowIn: ReadonlySet<QuestionKey | null> = new Set<QuestionKey | null>(['tube-in', 'own-tube-in']);

/** Every fact of the text; a field is absent where the text says nothing of it. */
export function gatherTold(said: Said): Told {
  const { asking, tubeIn } = said.open;
  const tubeKind = tubeKindTold(said);
  const halfOutOf = halfOutOfTold(said);
  const inPlace = inPlaceTold(said);
  const backIn = backInTold(said);
  const firstPlaced = firstPlacedTold(said);
  const weight = weightTold(said);
  // "Twenty minutes out" is on the way; a new tube that would not stay in is not the first one that came out.
  const isOther = asking === 'arrived' || (asksHowIn.has(asking) && cameBackOut(said.plain, said.words));
  const cameOutAtMs = isOther ? null : cameOutTold(said);
  const ownTube = ownTubeTold(said);
  const kit = kitTold(said);
  const howIn = tubeIn ? howInTold(said) : null;
  // At the first feed it is the feed that went in; at the securing, the water that went in easily.
  const ofElse = asking === 'first-feed' || (asking === 'secured' && howIn === 'easy' && !corrects(said));
  const insertedHow = ofElse ? null : howIn;
  const { noStrips, otherStrips } = said.words.told;
  const strips = noStrips.test(said.plain) || otherStrips.test(said.plain) ? 'no' : null;
  const born = bornTold(said);
  const ph = asking === 'ph' ? null : (phCorrected(said) ?? earlyReading(said));
  return {
    ...(tubeKind && { tubeKind }),
    ...(halfOutOf && { halfOutOf }),
    ...(inPlace && { inPlace }),
    ...(backIn && { backIn }),
    ...(firstPlaced && { firstPlaced }),
    ...(weight && { weight }),
    ...(cameOutAtMs !== null && { cameOutAtMs }),
    ...(ownTube && !tubeIn && { ownTube }),
    ...(kit && { kit }),
    ...(insertedHow && { insertedHow }),
    ...(strips && { strips }),
    ...((toldLatexAllergy(said) || mayHoldLatex(said)) && { latexAllergy: true as const }),
    ...(born && { born }),
    ...(ph && { ph }),
  };
}
