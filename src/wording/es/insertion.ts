/** Spanish: putting a tube in, the child's own or the temporary one. Length in centimetres is named here and nowhere else. */
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { InsertionKey } from '../keys.ts';
import { length } from './facts.ts';

const howDidItGo = '\nResponda FACIL, DIFICIL (tuvo que empujar) o NO (no entra).';

/**
 * The gauge for a family without a ruler: the short side of a bank card, 53.98 mm (ISO/IEC 7810, ID-1). Whole it lies
 * in 4-6 cm; two thirds, 36 mm, in 3-4 cm; just under three quarters, 40 mm, is 4 cm.
 */
function cardGauge(lowCm: number, highCm: number): string {
  if (highCm > 4) return 'Sirve el lado corto';
  return lowCm < 4 ? 'Sirven dos tercios del lado corto' : 'Sirve un poco menos de 3/4 del lado corto';
}

export const insertion: Pick<CaregiverCatalogue, InsertionKey> = {
  ownTubeSteps: ({ oneTry }) =>
    'Lávese las manos. Pruebe el globo de la sonda fuera del cuerpo y vacíelo. Moje la sonda. Métala suave hasta donde ' +
    `estaba.${oneTry ? ' Haga un solo intento.' : ''} Nunca la fuerce. Póngale cinta. Deje el globo vacío. ` +
    `No pase nada por la sonda aún.${howDidItGo}`,
  ownTubeAsHolderSteps: () =>
    'Lávese las manos. Moje la sonda vieja. Haga un solo intento, suave, hasta donde estaba. Nunca la fuerce. Póngale ' +
    `cinta. Deje el globo vacío. No pase nada por la sonda: solo guarda abierto el hoyo.${howDidItGo}`,
  askHowIn: () =>
    '¿Fue fácil meter la sonda, o tuvo que empujar?\nResponda FACIL o DIFICIL. Si no está adentro, responda NO.',
  insertLayOut: () =>
    '1 de 3. Lea antes los 3 textos. Prepare la sonda temporal, gel o agua para mojarla, cinta, bolígrafo, y regla o ' +
    'tarjeta de banco. Solo la sonda es necesaria. ¿Alergia al látex, y no dice "sin látex"? Pare y escriba ALERGIA AL LATEX.',
  insertMeasure: ({ lowCm, highCm }) =>
    `2 de 3. Lávese las manos. Limpie la piel con agua. Marque la sonda a ${length(lowCm, highCm)} de la punta. ` +
    `¿Sin regla? ${cardGauge(lowCm, highCm)} de una tarjeta de banco. Moje la punta.`,
  insertPutIn: ({ oneTry, stopAtAnyResistance }) => {
    const caution = stopAtAnyResistance ? ' Si no resbala, pare.' : '';
    return (
      `3 de 3. Meta la sonda suave, un poco inclinada, al tomar aire, hasta la marca. Nunca la fuerce.${caution}` +
      `${oneTry ? ' Haga un solo intento.' : ''} Póngale cinta. Deje el globo vacío. No pase nada por la sonda. ` +
      `Para repetir: PASO 1, PASO 2 o PASO 3.${howDidItGo}`
    );
  },
  secondTry: ({ lowCm, highCm }) =>
    `Intente una vez más. Si tiene una sonda más chica, tome esa. Márquela a ${length(lowCm, highCm)} de la punta y ` +
    'mójela. Métala suave, un poco inclinada, al tomar aire. Nunca la fuerce. Póngale cinta. Deje el globo vacío. ' +
    `No pase nada por la sonda.${howDidItGo}`,
  askTubeIn: () => `¿Ya está adentro la sonda temporal? No pase nada por la sonda aún.${howDidItGo}`,
};
