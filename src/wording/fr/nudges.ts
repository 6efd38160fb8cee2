/** French: one nudge on each unanswered question, short enough for one segment. */
import type { QuestionKey } from '#machines/facts.ts';
import { namesIn, type Scene } from '../catalogue.ts';
import { childFirst, childIn } from './facts.ts';

const nudges: Readonly<Record<QuestionKey, (scene: Scene) => string>> = {
  unwell: (scene) =>
    `Un signe de danger maintenant? Si oui, appelez le ${scene.site.emergencyNumber}.\nRépondez OUI ou NON.`,
  who: () =>
    "Un autre a écrit pour cet enfant?\nRépondez prénom et 4 derniers chiffres d'un parent, comme SAM 1234, ou NON, ou JE NE SAIS PAS.",
  'which-child': (scene) => `C'est pour quel enfant?\nRépondez son nom: ${namesIn(scene).join(', ')} ou AUCUN.`,
  confirm: () => "Ce que j'ai dans le dossier est encore juste?\nRépondez OUI ou NON.",
  'tube-kind': () => 'Quelle sonde est sortie?\nRépondez G, GJ, J, MOITIE, NEZ ou JE NE SAIS PAS.',
  'first-placed': (scene) =>
    `Quand ${childIn(scene)} a eu sa toute première sonde?\nRépondez une date ou depuis quand, ou JE NE SAIS PAS.`,
  'own-tube': () => 'Avez-vous la sonde, entière?\nRépondez OUI, CREVE, LONG (partie dedans), NON ou JE NE SAIS PAS.',
  'own-tube-in': () => "La sonde est rentrée? Ne forcez jamais.\nRépondez FACILE, DUR (j'ai poussé) ou NON.",
  kit: () => "Avez-vous la trousse d'urgence?\nRépondez OUI ou NON.",
  weight: (scene) =>
    `Quel est le poids? ${childFirst(scene)} pèse combien?\nRépondez en KG ou LIVRES, ou JE NE SAIS PAS.`,
  'tube-in': () => "La sonde provisoire est dedans? Ne forcez jamais.\nRépondez FACILE, DUR (j'ai poussé) ou NON.",
  'came-out': () =>
    'Quand la sonde est-elle sortie, ou vue en place en dernier?\nRépondez une heure, ou JE NE SAIS PAS.',
  'after-in': () => 'Nouvelle douleur, sang frais ou ventre plus tendu?\nRépondez OUI ou NON.',
  strips: () => 'Avez-vous des bandelettes de test pH?\nRépondez OUI ou NON.',
  contents: () => "Il vient du liquide de l'estomac?\nRépondez OUI ou NON.",
  ph: () => 'Quel chiffre montre la bandelette?\nRépondez le chiffre, ou JE NE VOIS PAS.',
  'fed-lately': () => 'Un repas ou médicament dans la dernière heure?\nRépondez OUI, NON ou JE NE SAIS PAS.',
  looks: () =>
    "C'est blanc trouble, caillé, beige, vert herbe ou à points bruns?\nRépondez OUI, NON ou JE NE SAIS PAS.",
  secured: () => 'Le ballon est gonflé, la sonde bien calée et fixée?\nRépondez OUI ou NON.',
  'first-feed': () => 'Le premier repas va bien?\nRépondez OUI ou NON.',
  'next-day': (scene) => `${childFirst(scene)} va bien aujourd'hui?\nRépondez OUI ou NON.`,
  arrived: (scene) => `Vous et ${childIn(scene)}, vous voilà à l'hôpital?\nRépondez OUI ou NON.`,
  clinic: (scene) => `Avez-vous appelé la clinique? Son numéro: ${scene.site.clinicNumber}.\nRépondez OUI ou NON.`,
};

/** The open question once more, for a phone that has gone quiet. */
export function nudge(asking: QuestionKey, scene: Scene): string {
  return `Vous êtes là? ${nudges[asking](scene)}`;
}
