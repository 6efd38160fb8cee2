/** French: what follows: the first feed, the next day, the clinic, the stay limit, and the way to the hospital. */
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { AftercareKey } from '../keys.ts';
import { childFirst, childIn, days, ofChild } from './facts.ts';

const stopSigns = 'Douleur, fuite ou sang frais? Arrêtez le repas et écrivez-moi.';

export const aftercare: Pick<CaregiverCatalogue, AftercareKey> = {
  askFirstFeed: () =>
    'Le premier repas va bien, sans douleur, fuite, sang frais ni vomi? Sinon, arrêtez le repas.\nRépondez OUI ou NON.',
  firstFeedWell: () =>
    `C'est bien. Allez lentement. Vérifiez la marque avant chaque repas. ${stopSigns}\nPas besoin de répondre.`,
  firstFeedLater: () => `Bien. Voyez la marque avant le repas. Allez lentement. ${stopSigns}\nPas besoin de répondre.`,
  askNextDay: (_params, scene) =>
    `${childFirst(scene)} va bien, sans douleur, fièvre, fuite, sang frais ni ventre tendu?\nRépondez OUI ou NON.`,
  nextDayWell: () => `C'est bien. Vérifiez la marque avant chaque repas. ${stopSigns}\nPas besoin de répondre.`,
  askClinic: (_params, scene) =>
    `Avez-vous appelé la clinique pour la sonde ${ofChild(scene)}? Son numéro: ${scene.site.clinicNumber}.` +
    '\nRépondez OUI ou NON.',
  clinicDone: () => `C'est bien. Faites ce que la clinique vous a dit. ${stopSigns}\nPas besoin de répondre.`,
  clinicNotYet: ({ tube }, { site }) =>
    `Appelez la clinique dès qu'elle ouvre: ${site.clinicNumber}. ` +
    `${tube === 'temporary' ? "Cette sonde n'est là que pour peu de temps. " : ''}Je vais vous le redemander.` +
    '\nPas besoin de répondre.',
  clinicStillNot: (_params, { site }) =>
    `Appelez la clinique dès qu'elle ouvre: ${site.clinicNumber}. Elle doit savoir pour la sonde. Je préviens aussi une ` +
    'infirmière.\nPas besoin de répondre.',
  stayWarning: ({ daysLeft }, { site }) =>
    `La sonde provisoire peut rester encore ${days(daysLeft)}. Si son échange n'est pas prévu, appelez la clinique: ` +
    `${site.clinicNumber}.\nPas besoin de répondre.`,
  stayOver: (_params, { site }) =>
    `La sonde provisoire est là depuis trop longtemps. Appelez la clinique tout de suite: ${site.clinicNumber}. Je préviens ` +
    'aussi une infirmière.\nPas besoin de répondre.',
  askArrived: (_params, scene) => `Vous et ${childIn(scene)}, vous voilà à l'hôpital?\nRépondez OUI ou NON.`,
  arrivedYes: () => "Bien. Montrez mon message à l'accueil. Ne mettez rien dans la sonde.\nPas besoin de répondre.",
  arrivedNo: (_params, { site }) =>
    `Allez maintenant aux urgences: ${site.hospital} (si plus d'1 h: les plus proches). Ne mettez rien dans la ` +
    `sonde. Vous ne pouvez pas? Appelez le ${site.emergencyNumber}. Je préviens une infirmière.` +
    '\nRépondez INFIRMIERE pour lui parler.',
  askOutcome: (_params, scene) =>
    `${childFirst(scene)} va bien aujourd'hui, et l'hôpital a vu la sonde?\nRépondez OUI ou NON.`,
  outcomeWell: () => `C'est bien. Faites ce que l'hôpital vous a dit. ${stopSigns}\nPas besoin de répondre.`,
  outcomeNotWell: (_params, scene) =>
    `Si ${childIn(scene)} n'est pas chez un médecin, allez maintenant aux urgences: ${scene.site.hospital} (si plus d'1 h: les ` +
    `plus proches). Rien dans la sonde. En danger, appelez le ${scene.site.emergencyNumber}. ` +
    'Je préviens une infirmière.\nRépondez INFIRMIERE pour lui parler.',
};
