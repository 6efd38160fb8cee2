/** French: rehearsals. */
import type { RehearsalEnd } from '#machines/says.ts';
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { RehearsalSayKey } from '../keys.ts';

export const rehearsalMark = 'EXERCICE.';

const ends: Readonly<Record<RehearsalEnd, string>> = {
  done: "C'est la fin de l'exercice.",
  quiet: "20 minutes sans message: l'exercice est fini.",
  asked: "L'exercice est fini.",
  elsewhere: "Il y a un vrai cas sur un autre téléphone de chez vous: l'exercice est fini.",
  paused: "Cette ligne est en pause: l'exercice est fini.",
};

export const rehearsal: Pick<CaregiverCatalogue, RehearsalSayKey> = {
  rehearsalBegan: ({ nurse }, { site }) =>
    `${nurse === null ? '' : `${nurse}, de l'équipe, vous propose ceci. `}Rien n'est vrai et je n'appelle personne. Danger? ` +
    `Appelez le ${site.emergencyNumber}. Si c'est vrai, écrivez C'EST REEL. Fini après 20 minutes sans message, ou écrivez ` +
    'EXERCICE TERMINE. Écrivez comme si la sonde venait de sortir.\nRépondez comme vous le feriez.',
  rehearsalPage: (_params, { site }) =>
    `En vrai, j'appelle ici une infirmière. Là, je n'appelle pas. Danger? Faites le ${site.emergencyNumber}.\n` +
    "Répondez à ce que j'ai demandé avant.",
  rehearsalOver: ({ how }, { site }) =>
    `${ends[how]} Ce que j'ai dit ne compte pas. À partir de maintenant, une sonde qui sort est un vrai cas. Danger? Appelez ` +
    `le ${site.emergencyNumber}.\nPas besoin de répondre.`,
  rehearsalReal: (_params, { site }) =>
    `Ce n'est plus un exercice: pour moi, votre dernier message est vrai. Danger? Appelez le ${site.emergencyNumber}.\n` +
    "Répondez à ce que j'ai demandé avant.",
};
