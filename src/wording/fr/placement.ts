/** French: finding out whether the tube is in the stomach, the hour's wait, and making it fast. */
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { PlacementKey } from '../keys.ts';
import { childFirst, childIn, number, time } from './facts.ts';
import { replyIfCannotWait, replyOkOrCannotWait } from './outcome.ts';

/** What goes into the balloon, and how much. */
const fill = (most: number) => `par la valve de côté, eau seule: dose de la sonde, ${number(most)} mL au plus`;
const trouble = "Douleur, fuite, dur, bloqué? Retirez l'eau, écrivez-moi.";

export const placement: Pick<CaregiverCatalogue, PlacementKey> = {
  askAfterIn: () =>
    'Ne mettez encore rien dans la sonde. Depuis sa pose: nouvelle douleur, sang frais ou ventre plus tendu?\n' +
    'Répondez OUI ou NON. Dans le doute, répondez OUI.',
  askStrips: () => 'Ne mettez encore rien dans la sonde. Avez-vous des bandelettes de test pH?\nRépondez OUI ou NON.',
  askContents: ({ attempt, newStrip }, scene) => {
    const fresh = newStrip ? 'Refaites le test avec un nouveau liquide et une autre bandelette. ' : '';
    const turn =
      attempt === 1
        ? ''
        : `Tournez ${childIn(scene)} d'un côté, de l'autre, puis en position assise. De l'air peut venir d'abord. `;
    return (
      `${fresh}${turn}Tirez doucement avec la seringue. Ne poussez rien dedans. Il vient du liquide de l'estomac?` +
      '\nRépondez OUI ou NON.'
    );
  },
  askPh: () =>
    'Mettez une goutte de ce liquide sur la bandelette pH. Attendez comme le dit la notice. Comparez la couleur. Entre ' +
    'deux couleurs? Envoyez les deux chiffres.\nRépondez le chiffre, ou JE NE VOIS PAS.',
  askFedLately: (_params, scene) =>
    `Ne mettez encore rien dans la sonde. ${childFirst(scene)} a eu un repas ou un médicament dans la dernière heure?\n` +
    'Répondez OUI, NON ou JE NE SAIS PAS.',
  askLooks: () =>
    'Regardez ce qui est venu. OUI: blanc trouble, lait caillé, beige, vert herbe, points bruns. ' +
    'NON: jaune, doré, rouge, clair.\nRépondez OUI, NON ou JE NE SAIS PAS.',
  recheckWait: ({ dueAtMs }, scene) =>
    "Ne mettez rien dans la sonde, rien par la bouche. Je ne sais pas encore si elle est dans l'estomac. " +
    `À ${time(dueAtMs, scene)} je vous écris pour refaire le test. Si ${childIn(scene)} va plus mal, appelez le ` +
    `${scene.site.emergencyNumber}.${replyOkOrCannotWait}`,
  recheckStill: ({ dueAtMs }, scene) =>
    `Ne mettez rien dans la sonde, rien par la bouche. À ${time(dueAtMs, scene)} je vous écris pour refaire le test.` +
    replyIfCannotWait,
  secureSteps: ({ flushMl, balloonMostMl, tube }) =>
    `Bien. Pas de repas. Rincez lentement: ${number(flushMl)} mL d'eau. Gonflez le ballon ${fill(balloonMostMl)}. ` +
    `Tirez doucement pour caler, marquez à la peau${tube === 'own' ? ' si possible' : ''}, fixez. ${trouble}\n` +
    'Répondez OUI (fait) ou NON.',
  secureAgain: ({ balloonMostMl }) =>
    `Pas de repas. Vérifiez le ballon: gonflé ${fill(balloonMostMl)}. La sonde doit être calée et fixée. ` +
    `${trouble}\nRépondez OUI (fait) ou NON.`,
};
