/** Spanish: rehearsals. */
import type { RehearsalEnd } from '#machines/says.ts';
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { RehearsalSayKey } from '../keys.ts';

export const rehearsalMark = 'PRÁCTICA.';

const ends: Readonly<Record<RehearsalEnd, string>> = {
  done: 'Aquí termina la práctica.',
  quiet: 'Van 20 minutos sin textos: se acaba la práctica.',
  asked: 'Se acaba la práctica.',
  elsewhere: 'Su familia tiene un caso real en otro teléfono: se acaba la práctica.',
  paused: 'Esta línea está en pausa: se acaba la práctica.',
};

export const rehearsal: Pick<CaregiverCatalogue, RehearsalSayKey> = {
  rehearsalBegan: ({ nurse }, { site }) =>
    `${nurse === null ? '' : `${nurse}, de enfermería, le pide practicar. `}No es real y no llamo a nadie. En peligro, llame al ` +
    `${site.emergencyNumber}. Si es real, escriba ES REAL. Acaba tras 20 minutos sin textos, o escriba PRACTICA TERMINADA. ` +
    'Escriba como si la sonda se saliera ya.\nResponda como lo haría.',
  rehearsalPage: (_params, { site }) =>
    `Aquí llamaría a una enfermera. En la práctica no llamo a nadie. En peligro, llame al ${site.emergencyNumber}.\n` +
    'Responda como le pedí antes.',
  rehearsalOver: ({ how }, { site }) =>
    `${ends[how]} Nada de lo que dije ahí cuenta. Desde ahora, una sonda que se sale es real. En peligro, llame al ` +
    `${site.emergencyNumber}.\nNo hay que responder.`,
  rehearsalReal: (_params, { site }) =>
    `Esto ya no es práctica: tomo su último texto como real. En peligro, llame al ${site.emergencyNumber}.\n` +
    'Responda como le pedí antes.',
};
