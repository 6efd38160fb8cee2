/** French: what is said beside the way: nudges, calls, pages that wait, corrections, and texts outside a case. */
import type { Site } from '#machines/protocol/settings.ts';
import type { Left } from '#machines/says.ts';
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { BesideKey } from '../keys.ts';
import { plainText, spoken } from '../plain.ts';
import { childIn, ofChild } from './facts.ts';
import { nudge } from './nudges.ts';

/** Nobody is coming to help with a step, so a family that cannot do it goes in. */
const unanswered = {
  'carry-on': (hospital: string) =>
    `Vous n'y arrivez pas? Allez aux urgences maintenant: ${hospital}. Ne mettez rien dans une sonde.`,
  stay: () => "Ce que j'ai dit en dernier reste vrai.",
} as const;

const leftAs: Readonly<Record<Left, (site: Site) => string>> = {
  'go-in': ({ hospital }) => `Pas encore vu à ${hospital}? Allez-y. Ne mettez rien dans une sonde avant leur accord. `,
  held: ({ clinicNumber }) => `Ne mettez rien dans une sonde sans l'accord de la clinique: ${clinicNumber}. `,
  'in-use': () => '',
};

const hospitalToo = ({ hospitalNumber }: Site) =>
  hospitalNumber === undefined ? '' : `Ou appelez l'hôpital: ${hospitalNumber}. `;

export const beside: Pick<CaregiverCatalogue, BesideKey> = {
  nudge: ({ asking }, scene) => nudge(asking, scene),
  recheckCall: (_params, scene) =>
    `Bonjour. Ici la ligne des sondes. C'est le moment de tester encore la sonde ${ofChild(scene)}. ` +
    'Ne mettez rien dans la sonde. Lisez vos messages maintenant et répondez. ' +
    `Si vous voyez un danger, raccrochez et appelez le ${spoken(scene.site.emergencyNumber)}.`,
  pageUnanswered: ({ advice }, { site }) =>
    `Pas encore de réponse d'une infirmière. J'appelle toujours. ${unanswered[advice](site.hospital)} ${hospitalToo(site)}` +
    `Danger? Appelez le ${site.emergencyNumber}.\nRépondez ${advice === 'carry-on' ? 'à ma dernière question' : 'OK'}.`,
  pageBegan: ({ mostMinutes }, { site }) =>
    `J'appelle une infirmière pour vous. On doit vous dire qui vient d'ici ${mostMinutes} min. Faites ce que j'ai dit. ` +
    `En cas de danger, appelez le ${site.emergencyNumber}.\nRépondez à ce que j'ai demandé avant.`,
  pagePassed: ({ nurse }, { site }) =>
    `${nurse} passe votre cas à quelqu'un d'autre. J'appelle cette personne. Faites ce que j'ai dit. ` +
    `Danger? Appelez le ${site.emergencyNumber}.\nRépondez à ce que j'ai demandé avant.`,
  relay: ({ nurse, words }) => `Un mot de ${nurse}, de l'équipe: ${plainText(words)}\nRépondez ici et ${nurse} le lit.`,
  ringSoon: ({ nurse, number }, { site }) =>
    `Tout de suite, un appel de ${nurse} va vous venir de cette ligne: ${number}. Prenez-le dès que ça sonne. Si le cas est ` +
    `grave, faites le ${site.emergencyNumber}.\nPas besoin de répondre.`,
  pageTaken: ({ nurse }, scene) =>
    `${nurse}, de l'équipe soignante, vous suit maintenant. Faites ce que j'ai dit. Si ${childIn(scene)} ` +
    `va plus mal, appelez le ${scene.site.emergencyNumber}.\nRépondez OK.`,
  askCorrection: () =>
    'Que faut-il changer? Dites ce qui est juste. Exemples: LA SONDE EST UNE GJ. Ou: LE POIDS EST 7 KG.' +
    '\nRépondez avec cela.',
  stopped: (_params, { site }) =>
    `Je ne vous écris plus, sauf si vous m'écrivez. Danger? Appelez le ${site.emergencyNumber}. Si le dossier est encore ` +
    'ouvert, une infirmière va vous téléphoner.\nPas besoin de répondre.',
  help: (_params, { site }) =>
    `Danger? Appelez le ${site.emergencyNumber}. Cette ligne n'envoie pas de secours. Elle est automatique. Elle sert ` +
    `quand la sonde du ventre d'un enfant est sortie. Clinique: ${site.clinicNumber}.` +
    '\nRépondez INFIRMIERE pour lui parler, ou dites ce qui ne va pas.',
  phoneJoined: ({ lastFour }, { site }) =>
    `Danger? Appelez le ${site.emergencyNumber}. Un autre téléphone, fin ${lastFour}, voit aussi ces textes. Vous savez qui c'est? ` +
    "Alors c'est bon.\nRépondez INFIRMIERE si vous ne savez pas.",
  closedByNurse: ({ left, asks }, { site }) =>
    `L'infirmière a clos le dossier. ${leftAs[left](site)}Danger? Appelez le ${site.emergencyNumber}. ` +
    (asks
      ? 'La sonde est-elle sortie?\nRépondez OUI ou NON.'
      : 'Écrivez-moi si la sonde sort encore.\nPas besoin de répondre.'),
  callAnswer: ({ next }, { site }) =>
    `Danger? Raccrochez et appelez le ${spoken(site.emergencyNumber)} maintenant. Cette ligne n'envoie pas de secours. Ne mettez rien ` +
    'dans la sonde. ' +
    (next === 'ring'
      ? "J'appelle une infirmière. Ne raccrochez pas."
      : 'Raccrochez et écrivez-moi ce qui ne va pas. Je réponds tout de suite.'),
  callUnanswered: (_params, { site }) =>
    `Danger? Raccrochez et appelez le ${spoken(site.emergencyNumber)} maintenant. Pas encore de réponse d'une infirmière. J'appelle ` +
    'toujours. Ne mettez rien dans la sonde. Raccrochez et écrivez-moi ce qui ne va pas. Je réponds tout de suite. ' +
    `Vous n'y arrivez pas? Allez aux urgences: ${site.hospital}.`,
  paused: (_params, { site }) =>
    `Danger? Appelez le ${site.emergencyNumber} maintenant. Cette ligne est en pause: elle ne peut pas vous guider. ` +
    'Ne mettez rien dans une sonde, ne donnez rien par la bouche. Couvrez le trou avec un linge propre. Une infirmière va ' +
    'vous appeler. Si personne ne le fait en 10 minutes, allez aux urgences.\nPas besoin de répondre.',
  askAboutTube: (_params, { site }) =>
    `Danger? Appelez le ${site.emergencyNumber}. Cette ligne n'envoie pas de secours. Une sonde est sortie du ventre ` +
    "d'un enfant?\nRépondez OUI ou NON.",
  notAboutTube: (_params, { site }) =>
    `Cette ligne est juste pour les sondes. Pour le reste, appelez la clinique: ${site.clinicNumber}. Danger? Appelez ` +
    `le ${site.emergencyNumber}.\nPas besoin de répondre.`,
  thanks: (_params, { site }) =>
    `De rien. Danger? Appelez le ${site.emergencyNumber}. Écrivez-moi si la sonde sort encore.\nPas besoin de répondre.`,
};
