/** French: danger first, and the question whether there is any. */
import type { Sign } from '#machines/facts.ts';
import type { CaregiverCatalogue, Scene } from '../catalogue.ts';
import type { SafetyKey } from '../keys.ts';
import { childFirst, childIn } from './facts.ts';

const signNames: Readonly<Record<Sign, string>> = {
  breathing: 'mal à respirer',
  colour: 'peau bleue ou grise',
  limp: 'corps mou ou dur à réveiller',
  bleeding: 'saignement',
  'hard-belly': 'ventre dur et gonflé',
  'severe-pain': 'très forte douleur',
  vomit: 'vomi vert ou répété',
  fever: 'fièvre',
  pain: 'douleur',
  'fresh-blood': 'sang frais',
  'tight-belly': 'ventre tendu',
  leak: 'fuite',
};

/** With no tube in, a small sign is asked about as the danger it could be. */
const clarifications: Readonly<Record<Sign, (child: string, tubeIn: boolean) => string>> = {
  breathing: (child) => `${child} a du mal à respirer?`,
  colour: (child) => `${child} a la peau bleue, grise ou très pâle?`,
  limp: (child) => `${child} a le corps mou, ou du mal à se réveiller?`,
  bleeding: () => 'Le sang coule encore, ou il y en a beaucoup?',
  'hard-belly': (child) => `${child} a le ventre dur et gonflé?`,
  'severe-pain': (child) => `${child} a très mal, ou pleure sans pouvoir se calmer?`,
  vomit: (child) => `${child} a vomi vert, ou plus d'une fois?`,
  fever: (child) => `${child} a de la fièvre maintenant?`,
  pain: (child, tubeIn) => (tubeIn ? `${child} a mal depuis que la sonde est dedans?` : `${child} a très mal?`),
  'fresh-blood': (_child, tubeIn) =>
    tubeIn ? 'Voyez-vous du sang frais?' : 'Le sang coule encore, ou il y en a beaucoup?',
  'tight-belly': (child, tubeIn) =>
    tubeIn ? "Le ventre est plus tendu ou plus gros qu'avant?" : `${child} a le ventre dur et gonflé?`,
  leak: () => 'Du lait ou du liquide coule autour de la sonde?',
};

/** Nouns and verbs only, so that no adjective has to know a boy from a girl. */
const dangerList =
  'Respire mal? Peau bleue, grise? Corps mou, dur à réveiller? Saigne sans cesse? Ventre dur, gonflé? Forte douleur? ' +
  'Vomi vert ou répété? Fièvre et moins de 3 mois?';

/** Of many signs told, the first few say enough to the person who takes the emergency call. */
const mostSigns = 3;

function openingWith(care: string, { site }: Scene): string {
  return (
    `Danger? Appelez le ${site.emergencyNumber}. Je n'envoie pas de secours. Arrêtez tout repas. ${care} ${dangerList}` +
    '\nRépondez OUI ou NON.'
  );
}

export const safety: Pick<CaregiverCatalogue, SafetyKey> = {
  opening: (_params, scene) => openingWith('Couvrez le trou: linge propre. Gardez la sonde.', scene),
  openingTubeIn: (_params, scene) => openingWith("Ne tirez pas la sonde, n'y mettez rien.", scene),
  askUnwell: (_params, { site }) =>
    `Danger? Appelez le ${site.emergencyNumber}. ${dangerList} Un de ces signes?\nRépondez OUI ou NON.`,
  clarifySign: ({ sign, tubeIn }, scene) =>
    `${clarifications[sign](childFirst(scene), tubeIn)}\nRépondez OUI ou NON. Dans le doute, répondez OUI.`,
  askTrouble: (_params, scene) =>
    `Je n'ai pas pu lire. Est-ce que ${childIn(scene)} ou la sonde a un problème? Danger? Appelez le ` +
    `${scene.site.emergencyNumber}.\nRépondez OUI ou NON.`,
  emergency: ({ signs }, { site }) => {
    const told = signs.slice(0, mostSigns).map((sign) => signNames[sign]);
    const why = told.length === 0 ? '' : ` Vous m'avez dit: ${told.join(', ')}.`;
    const mistake = told.length === 0 ? ', ou ERREUR si le OUI est une erreur' : '';
    return (
      `Appelez le ${site.emergencyNumber} maintenant.${why} Je n'envoie pas de secours. Arrêtez tout repas. Ne donnez rien ` +
      `par la sonde ni par la bouche. J'appelle une infirmière.\nRépondez OK une fois l'appel fait${mistake}.`
    );
  },
  emergencyCalled: (_params, scene) =>
    `Bien. Restez avec ${childIn(scene)} jusqu'aux secours. Ne donnez rien par la sonde ni par la bouche. Pas encore appelé, ` +
    `ou c'est pire? Appelez le ${scene.site.emergencyNumber}.\nRépondez si quelque chose change.`,
  emergencyStill: (_params, { site }) =>
    `Appelez le ${site.emergencyNumber} maintenant si ce n'est pas fait. Je n'envoie pas de secours. Ne donnez rien par ` +
    'la sonde ni par la bouche.\nRépondez si quelque chose change.',
};
