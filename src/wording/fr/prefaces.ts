/** French: the short sentences put before a message. */
import type { Unclear } from '#machines/events.ts';
import type { NotedFacts } from '#machines/says.ts';
import type { PrefaceCatalogue, Scene } from '../catalogue.ts';
import { dates, reading, time, tubeKindNames, weight } from './facts.ts';

const unclear: Readonly<Record<Unclear, string>> = {
  unreadable: "Je n'ai pas compris.",
  unsure: 'Il me faut une réponse claire.',
  future: "Cette heure n'est pas encore venue.",
  impossible: 'Ce chiffre ne peut pas être juste.',
  'two-answers': 'Cela peut dire deux choses.',
  'no-number': 'Il me faut un chiffre.',
  'no-match': "Je n'ai rien trouvé avec ça.",
};

function notedFacts(facts: NotedFacts, scene: Scene): string {
  return [
    facts.tubeKind === undefined ? [] : [tubeKindNames[facts.tubeKind]],
    facts.firstPlaced === undefined ? [] : [`première pose: ${dates(facts.firstPlaced)}`],
    facts.weight === undefined ? [] : [weight(facts.weight)],
    facts.cameOutAtMs === undefined ? [] : [`sortie à ${time(facts.cameOutAtMs, scene)}`],
    facts.backIn === undefined ? [] : ["sonde remise, n'y mettez rien"],
    facts.ph === undefined ? [] : [`pH ${reading(facts.ph)}`],
    facts.latexAllergy === undefined ? [] : ['allergie au latex'],
  ]
    .flat()
    .join(', ');
}

export const prefaces: PrefaceCatalogue = {
  noted: ({ facts }, scene) => `Je note: ${notedFacts(facts, scene)}.`,
  notUnderstood: ({ why }) => unclear[why],
  goesToNurse: () => "J'appelle une infirmière pour cela.",
  nurseCalled: () => "J'appelle une infirmière.",
  mediaKept: () => "J'ai gardé cela pour l'infirmière, mais je ne peux pas le lire.",
  passedOn: ({ nurse }) => `C'est passé à ${nurse}.`,
  earlyReading: () => "C'est noté, mais c'est trop tôt pour compter.",
  hourOver: () => "L'attente est finie.",
  oneChild: (_preface, scene) =>
    `Je parle d'un seul enfant${scene.child === null ? '' : `, ${scene.child}`}: répondez pour lui. J'appelle une infirmière pour l'autre.`,
  cleared: () => "L'infirmière dit oui.",
  startOver: () => "Sonde ressortie: ce que j'ai dit avant ne compte plus.",
  feverOrWarning: () => "Arrêtez le repas. C'est un signe d'alerte.",
  longInside: () => 'Une longue partie dedans veut dire une sonde GJ.',
};
