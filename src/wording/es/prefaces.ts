/** Spanish: the short sentences put before a message. */
import type { Unclear } from '#machines/events.ts';
import type { NotedFacts } from '#machines/says.ts';
import type { PrefaceCatalogue, Scene } from '../catalogue.ts';
import { dates, reading, time, tubeKindNames, weight } from './facts.ts';

const unclear: Readonly<Record<Unclear, string>> = {
  unreadable: 'No entendí eso.',
  unsure: 'Hace falta una respuesta clara.',
  future: 'Esa hora aún no llega.',
  impossible: 'Ese número no puede ser.',
  'two-answers': 'Eso puede ser dos cosas.',
  'no-number': 'Hace falta un número.',
  'no-match': 'No encontré nada con eso.',
};

function notedFacts(facts: NotedFacts, scene: Scene): string {
  return [
    facts.tubeKind === undefined ? [] : [tubeKindNames[facts.tubeKind]],
    facts.firstPlaced === undefined ? [] : [`primera sonda puesta ${dates(facts.firstPlaced)}`],
    facts.weight === undefined ? [] : [weight(facts.weight)],
    facts.cameOutAtMs === undefined ? [] : [`fuera desde ${time(facts.cameOutAtMs, scene)}`],
    facts.backIn === undefined ? [] : ['la sonda ya está adentro, no le pase nada aún'],
    facts.ph === undefined ? [] : [`pH ${reading(facts.ph)}`],
    facts.latexAllergy === undefined ? [] : ['alergia al látex'],
  ]
    .flat()
    .join(', ');
}

export const prefaces: PrefaceCatalogue = {
  noted: ({ facts }, scene) => `Tengo: ${notedFacts(facts, scene)}.`,
  notUnderstood: ({ why }) => unclear[why],
  goesToNurse: () => 'Llamo a una enfermera por eso.',
  nurseCalled: () => 'Llamo a una enfermera.',
  mediaKept: () => 'Lo guardo para la enfermera, pero yo no lo puedo leer.',
  passedOn: ({ nurse }) => `Le pasé eso a ${nurse}, de enfermería.`,
  earlyReading: () => 'Lo anoto, pero aún es pronto para contarlo.',
  hourOver: () => 'Ya es hora.',
  oneChild: (_preface, scene) =>
    `Mis mensajes son para uno solo${scene.child === null ? '' : `, ${scene.child}`}: responda por ese. Llamo a una enfermera por el otro.`,
  cleared: () => 'Enfermera: siga.',
  startOver: () => 'Se salió otra vez: lo que dije antes ya no vale.',
  feverOrWarning: () => 'Pare la comida. Eso es señal de alarma.',
  longInside: () => 'Una parte larga adentro indica que es una sonda GJ.',
};
