/** French: questions about the facts, the child's own tube and the kit. */
import { type CaregiverCatalogue, namesIn } from '../catalogue.ts';
import type { QuestionSayKey } from '../keys.ts';
import { childFirst, childIn, dates, number, tubeKindNames, weight } from './facts.ts';

/** A weight as it was told, with its unit or without. */
const again = (told: { readonly kg: number } | { readonly bare: number }) =>
  'kg' in told ? weight(told) : number(told.bare);

export const questions: Pick<CaregiverCatalogue, QuestionSayKey> = {
  askWho: () =>
    "Un autre a écrit pour cet enfant? Si oui: son prénom et les 4 derniers chiffres du téléphone d'un parent.\nRépondez comme SAM 1234, ou NON, ou JE NE SAIS PAS.",
  askWhichChild: (_params, scene) =>
    `C'est pour quel enfant?\nRépondez son nom: ${namesIn(scene).join(', ')} ou AUCUN.`,
  confirmFile: (file, scene) => {
    const facts = [
      file.tubeKind === null ? [] : [tubeKindNames[file.tubeKind]],
      file.firstPlaced === null ? [] : [`première sonde: ${dates(file.firstPlaced)}`],
      file.weight === null ? [] : [weight(file.weight)],
    ].flat();
    const onFile = facts.length === 0 ? 'rien encore' : facts.join(', ');
    return `Au dossier pour ${file.child ?? childIn(scene)}: ${onFile}. C'est encore juste?\nRépondez OUI ou NON.`;
  },
  askTubeKind: () =>
    "Quelle sonde est sortie? G va à l'estomac. GJ a une longue partie qui va plus loin, à l'intestin. J va juste à " +
    "l'intestin. MOITIE: encore un peu dedans.\nRépondez G, GJ, J, MOITIE, NEZ ou JE NE SAIS PAS.",
  askTubeKindByLook: () =>
    "Regardez la sonde. Combien d'entrées pour le repas? Sans compter la petite valve du ballon. La partie du dedans " +
    'est courte comme un doigt, ou bien plus longue?\nRépondez UNE ENTREE COURT, DEUX ENTREES LONG ou JE NE SAIS PAS.',
  askFirstPlaced: (_params, scene) =>
    `Quand ${childIn(scene)} a eu sa toute première sonde dans ce trou? Pas le dernier changement. Le mois et l'année ` +
    'suffisent.\nRépondez une date ou depuis quand, ou JE NE SAIS PAS.',
  askOwnTube: () =>
    'Avez-vous la sonde qui est sortie? OUI: entière, ballon bon. CREVE: ballon crevé. LONG: longue partie ' +
    'dedans.\nRépondez OUI, CREVE, LONG, NON ou JE NE SAIS PAS.',
  askOwnTubeIn: () =>
    'Ne mettez encore rien dans la sonde. Était-elle entière avant de la remettre? OUI: entière, ballon bon. CREVE: ' +
    'ballon crevé. LONG: longue partie dedans.\nRépondez OUI, CREVE, LONG, NON ou JE NE SAIS PAS.',
  askKit: ({ stranger, latexAllergy }) => {
    const shown = stranger ? " Vous, ou quelqu'un sur place, avez appris à la mettre?" : '';
    const latex = latexAllergy ? " Si elle n'est pas garantie sans latex, la réponse est NON." : '';
    const replies = stranger ? 'Répondez OUI, NON ou PAS APPRIS.' : 'Répondez OUI ou NON.';
    return `Avez-vous sous la main la trousse d'urgence et sa sonde provisoire?${shown}${latex}\n${replies}`;
  },
  askWeight: (_params, scene) =>
    `${childFirst(scene)} pèse combien? Mettez KG ou LIVRES après le chiffre.\nRépondez le poids, ou JE NE SAIS PAS.`,
  askWeightUnit: ({ bare }) => `C'est ${number(bare)} kg, ou ${number(bare)} livres (lb)?\nRépondez KG ou LIVRES.`,
  askWeightAgain: ({ told }, scene) =>
    `J'ai noté ${again(told)}. C'est rare à cet âge. ${childFirst(scene)} pèse combien?\nRépondez OUI si c'est juste, ou le poids avec KG ou LIVRES.`,
  askCameOut: () =>
    'Quand la sonde est-elle sortie?\nRépondez une heure, ou depuis combien de temps, ou JE NE SAIS PAS.',
  askLastSeenIn: () =>
    'Quand avez-vous vu la sonde en place pour la dernière fois?\nRépondez une heure, ou depuis combien de temps, ou ' +
    'JE NE SAIS PAS.',
};
