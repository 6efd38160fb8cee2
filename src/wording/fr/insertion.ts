/** French: putting a tube in, the child's own or the temporary one. Length in centimetres is named here and nowhere else. */
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { InsertionKey } from '../keys.ts';
import { length } from './facts.ts';

const howDidItGo = "\nRépondez FACILE, DUR (j'ai poussé) ou NON (pas dedans).";

/**
 * The gauge for a family without a ruler: the short side of a bank card, 53.98 mm (ISO/IEC 7810, ID-1). Whole it lies
 * in 4-6 cm; two thirds, 36 mm, in 3-4 cm; just under three quarters, 40 mm, is 4 cm.
 */
function cardGauge(lowCm: number, highCm: number): string {
  if (highCm > 4) return "le petit bord d'une carte de banque";
  return lowCm < 4
    ? "les deux tiers du petit bord d'une carte de banque"
    : "un peu moins des 3/4 du petit bord d'une carte de banque";
}

export const insertion: Pick<CaregiverCatalogue, InsertionKey> = {
  ownTubeSteps: ({ oneTry }) =>
    'Lavez vos mains. Testez le ballon hors du corps, puis videz-le. Mouillez la sonde. Glissez-la doucement, comme ' +
    `avant.${oneTry ? ' Un seul essai.' : ''} Ne forcez jamais. Fixez-la au sparadrap. Gardez le ballon vide. Ne mettez encore rien ` +
    `dedans.${howDidItGo}`,
  ownTubeAsHolderSteps: () =>
    'Lavez vos mains. Mouillez la vieille sonde. Un seul essai: glissez-la doucement, comme avant. Ne forcez jamais. ' +
    `Fixez-la au sparadrap. Laissez le ballon vide. Ne mettez rien dedans: elle garde juste le trou ouvert.${howDidItGo}`,
  askHowIn: () =>
    "La sonde a glissé sans peine, ou vous avez poussé?\nRépondez FACILE ou DUR. Si elle n'est pas dedans, répondez NON.",
  insertLayOut: () =>
    "1 sur 3. Lisez d'abord les 3 messages. Préparez: sonde provisoire, gel ou eau, sparadrap, stylo, " +
    'règle ou carte de banque. Seule la sonde est obligatoire. Allergie au latex et sonde non garantie sans latex? ' +
    'Ne la mettez pas. Écrivez ALLERGIE LATEX.',
  insertMeasure: ({ lowCm, highCm }) =>
    `2 sur 3. Lavez vos mains. Lavez la peau à l'eau. Faites une marque à ${length(lowCm, highCm)} du bout de la sonde. ` +
    `Pas de règle? Prenez ${cardGauge(lowCm, highCm)}. Mouillez le bout.`,
  insertPutIn: ({ oneTry, stopAtAnyResistance }) => {
    const caution = stopAtAnyResistance ? ' Si elle ne glisse pas, cessez.' : '';
    return (
      "3 sur 3. Glissez la sonde, un peu penchée, quand l'enfant inspire, jusqu'à la marque. Ne forcez jamais." +
      `${caution}${oneTry ? ' Un seul essai.' : ''} Mettez le sparadrap. Laissez le ballon vide. Ne mettez rien dedans. ` +
      `Pour revoir: ETAPE 1, 2 ou 3.${howDidItGo}`
    );
  },
  secondTry: ({ lowCm, highCm }) =>
    `Encore un essai. Si vous avez une sonde plus fine, prenez-la. Marque à ${length(lowCm, highCm)} du bout. Mouillez-la. ` +
    "Glissez-la, un peu penchée, quand l'enfant inspire. Ne forcez jamais. Fixez-la au sparadrap. Laissez le ballon vide. " +
    `Ne mettez rien dedans.${howDidItGo}`,
  askTubeIn: () => `La sonde provisoire est dedans? Ne mettez encore rien dans la sonde.${howDidItGo}`,
};
