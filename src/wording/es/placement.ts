/** Spanish: finding out whether the tube is in the stomach, the hour's wait, and making it fast. */
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { PlacementKey } from '../keys.ts';
import { ifWorse, number, time } from './facts.ts';
import { replyIfCannotWait, replyOkOrCannotWait } from './outcome.ts';

/** What goes into the balloon, and how much. */
const fill = (most: number) => `por su válvula de lado, solo agua: lo que diga la sonda, máximo ${number(most)} mL`;
const trouble = '¿Dolor, fuga, duro, tapado? Pare, saque el agua, escríbame.';

export const placement: Pick<CaregiverCatalogue, PlacementKey> = {
  askAfterIn: () =>
    'No pase nada por la sonda aún. Desde que está adentro, ¿hay dolor nuevo, sangre fresca o la barriga más tensa?\n' +
    'Responda SI o NO. En caso de duda, responda SI.',
  askStrips: () => 'No pase nada por la sonda aún. ¿Tiene ahí tiras de pH?\nResponda SI o NO.',
  askContents: ({ attempt, newStrip }) => {
    const fresh = newStrip ? 'Pruebe otra vez con contenido nuevo y una tira nueva. ' : '';
    const turn =
      attempt === 1 ? '' : 'Ayude a que se voltee de lado a lado y luego se siente. Puede salir aire primero. ';
    return `${fresh}${turn}Aspire despacio con la jeringa. No meta nada. ¿Salió algo del estómago?\nResponda SI o NO.`;
  },
  askPh: () =>
    'Ponga una gota de lo que salió en la tira de pH. Espere lo que dice el paquete. Compare el color. ¿Entre dos ' +
    'colores? Mande los dos números.\nResponda con el número, o NO SE.',
  askFedLately: () =>
    'No pase nada por la sonda aún. ¿Le dieron comida o medicina en la última hora?\nResponda SI, NO o NO SE.',
  askLooks: () =>
    'Mire lo que salió. SI: blanco turbio, leche cortada, beige, verde pasto, puntos café. ' +
    'NO: amarillo, dorado, rojo, transparente.\nResponda SI, NO o NO SE.',
  recheckWait: ({ dueAtMs }, scene) =>
    'No pase nada por la sonda ni dé nada por boca. Aún no sé si está en el estómago. Le escribo a ' +
    `${time(dueAtMs, scene)} para probar otra vez. ${ifWorse(scene)}, llame al ` +
    `${scene.site.emergencyNumber}.${replyOkOrCannotWait}`,
  recheckStill: ({ dueAtMs }, scene) =>
    `No pase nada por la sonda ni dé nada por boca. Le escribo a ${time(dueAtMs, scene)} para probar otra vez.` +
    replyIfCannotWait,
  secureSteps: ({ flushMl, balloonMostMl, tube }) =>
    `Bien. Aún sin comida. Pase despacio ${number(flushMl)} mL de agua. Llene el globo ${fill(balloonMostMl)}. ` +
    `Jale suave hasta topar, marque en la piel${tube === 'own' ? ' si puede' : ''}, ponga cinta. ${trouble}\n` +
    'Responda SI (listo) o NO.',
  secureAgain: ({ balloonMostMl }) =>
    `Aún sin comida. Revise el globo: lleno ${fill(balloonMostMl)}. Vea que la sonda haga tope y tenga cinta. ` +
    `${trouble}\nResponda SI (listo) o NO.`,
};
