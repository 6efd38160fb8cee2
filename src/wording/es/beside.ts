/** Spanish: what is said beside the way: nudges, calls, pages that wait, corrections, and texts outside a case. */
import type { Site } from '#machines/protocol/settings.ts';
import type { Left } from '#machines/says.ts';
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { BesideKey } from '../keys.ts';
import { plainText, spoken } from '../plain.ts';
import { childIn, ifWorse } from './facts.ts';
import { nudge } from './nudges.ts';

/** Nobody is coming to help with a step, so a family that cannot do it goes in. */
const unanswered = {
  'carry-on': (hospital: string) =>
    `¿No puede con este paso? Vaya ya a emergencias de ${hospital}. No pase nada por una sonda.`,
  stay: () => 'Lo último que le dije sigue igual.',
} as const;

const leftAs: Readonly<Record<Left, (site: Site) => string>> = {
  'go-in': ({ hospital }) =>
    `¿Aún no los ven en ${hospital}? Vaya ya. No pase nada por una sonda hasta que allí le digan. `,
  held: ({ clinicNumber }) => `No pase nada por una sonda hasta que la clínica le diga: ${clinicNumber}. `,
  'in-use': () => '',
};

const hospitalToo = ({ hospitalNumber }: Site) =>
  hospitalNumber === undefined ? '' : `O llame al hospital: ${hospitalNumber}. `;

export const beside: Pick<CaregiverCatalogue, BesideKey> = {
  nudge: ({ asking }, scene) => nudge(asking, scene),
  recheckCall: (_params, scene) =>
    `Hola. Esta es la línea de sondas. Es hora de probar otra vez la sonda de ${childIn(scene)}. ` +
    'No pase nada por la sonda. Por favor, lea ya sus textos y responda. ' +
    `Si ve peligro, cuelgue y llame al ${spoken(scene.site.emergencyNumber)}.`,
  pageUnanswered: ({ advice }, { site }) =>
    `Ninguna enfermera responde aún. Sigo llamando. ${unanswered[advice](site.hospital)} ${hospitalToo(site)}` +
    `En peligro, llame al ${site.emergencyNumber}.\nResponda ${advice === 'carry-on' ? 'a mi última pregunta' : 'OK'}.`,
  pageBegan: ({ mostMinutes }, { site }) =>
    `Estoy llamando a una enfermera. Debe responder en ${mostMinutes} minutos; le diré quién. Siga como le dije. ` +
    `En peligro, llame al ${site.emergencyNumber}.\nResponda como le pedí antes.`,
  pagePassed: ({ nurse }, { site }) =>
    `${nurse}, de enfermería, ha pasado su caso a otra enfermera. La estoy llamando ya. Siga igual. En peligro, llame al ` +
    `${site.emergencyNumber}.\nResponda como le pedí antes.`,
  relay: ({ nurse, words }) =>
    `${nurse}, de enfermería, escribe: ${plainText(words)}\nResponda aquí y ${nurse} lo lee.`,
  ringSoon: ({ nurse, number }, { site }) =>
    `${nurse}, de enfermería, le va a llamar pronto. La llamada viene del ${number}. Conteste, por favor. En peligro, ` +
    `llame al ${site.emergencyNumber}.\nNo hay que responder.`,
  pageTaken: ({ nurse }, scene) =>
    `${nurse}, de enfermería, ya tiene su caso. Siga como le dije. ${ifWorse(scene)}, llame al ` +
    `${scene.site.emergencyNumber}.\nResponda OK.`,
  askCorrection: () => '¿Qué cambio? Diga lo correcto, como: LA SONDA ES GJ. O: EL PESO ES 7 KG.\nResponda con eso.',
  stopped: (_params, { site }) =>
    `Esta línea ya no le mandará textos si usted no le escribe. En peligro, llame al ${site.emergencyNumber}. Si su ` +
    'caso sigue abierto, una enfermera le va a llamar.\nNo hay que responder.',
  help: (_params, { site }) =>
    `En peligro, llame al ${site.emergencyNumber}. Esta línea no manda ayuda. Es automática, para niños con una sonda ` +
    `de la barriga que se salió. Clínica: ${site.clinicNumber}.\nResponda ENFERMERA para una persona, o diga qué pasa.`,
  phoneJoined: ({ lastFour }, { site }) =>
    `En peligro, llame al ${site.emergencyNumber}. Desde ahora un teléfono que termina en ${lastFour} también ve estos textos. Si lo ` +
    'conoce, siga igual.\nResponda ENFERMERA si no lo conoce.',
  closedByNurse: ({ left, asks }, { site }) =>
    `Este caso ya está cerrado. ${leftAs[left](site)}En peligro, llame al ${site.emergencyNumber}. ` +
    (asks
      ? '¿Está fuera la sonda ahora?\nResponda SI o NO.'
      : 'Escríbame si la sonda se sale otra vez.\nNo hay que responder.'),
  callAnswer: ({ next }, { site }) =>
    `En peligro, cuelgue y llame ya al ${spoken(site.emergencyNumber)}. Esta línea no manda ayuda. No pase nada por la sonda. ` +
    (next === 'ring'
      ? 'Estoy llamando a una enfermera. No cuelgue, por favor.'
      : 'Ahora cuelgue y escríbame un texto: diga qué pasa. Le respondo en seguida.'),
  callUnanswered: (_params, { site }) =>
    `En peligro, cuelgue y llame ya al ${spoken(site.emergencyNumber)}. Ninguna enfermera responde aún. Sigo llamando. No pase nada ` +
    `por la sonda. Ahora cuelgue y escríbame un texto: diga qué pasa. Le respondo en seguida. ¿No puede? Vaya a emergencias de ` +
    `${site.hospital}.`,
  paused: (_params, { site }) =>
    `En peligro, llame ya al ${site.emergencyNumber}. Esta línea está en pausa y no le puede guiar. No pase nada por la ` +
    'sonda ni dé nada por la boca. Tape el hueco con un paño limpio. Busco a una enfermera para que le llame. Si nadie ' +
    'llama en 10 minutos, vaya a emergencias.\nNo hay que responder.',
  askAboutTube: (_params, { site }) =>
    `En peligro, llame al ${site.emergencyNumber}. Esta línea no manda ayuda. ¿Se trata de una sonda que se salió?` +
    '\nResponda SI o NO.',
  notAboutTube: (_params, { site }) =>
    `Esta línea es solo para sondas. Para lo demás, llame a la clínica: ${site.clinicNumber}. En peligro, llame al ` +
    `${site.emergencyNumber}.\nNo hay que responder.`,
  thanks: (_params, { site }) =>
    `De nada. En peligro, llame al ${site.emergencyNumber}. Escríbame si la sonda se sale otra vez.\nNo hay que responder.`,
};
