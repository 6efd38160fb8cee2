/** Spanish: questions about the facts, the child's own tube and the kit. */
import { type CaregiverCatalogue, namesIn } from '../catalogue.ts';
import type { QuestionSayKey } from '../keys.ts';
import { childIn, dates, number, tubeKindNames, weight } from './facts.ts';

/** A weight as it was told, with its unit or without. */
const again = (told: { readonly kg: number } | { readonly bare: number }) =>
  'kg' in told ? weight(told) : number(told.bare);

export const questions: Pick<CaregiverCatalogue, QuestionSayKey> = {
  askWho: () =>
    '¿Ya escribió alguien más por este caso? Si es así: el nombre y los 4 números finales del teléfono de mamá o papá.\nResponda como SAM 1234, o NO, o NO SE.',
  askWhichChild: (_params, scene) =>
    `¿De quién se trata?\nResponda con el nombre: ${namesIn(scene).join(', ')} o NINGUNO.`,
  confirmFile: (file, scene) => {
    const facts = [
      file.tubeKind === null ? [] : [tubeKindNames[file.tubeKind]],
      file.firstPlaced === null ? [] : [`primera sonda puesta ${dates(file.firstPlaced)}`],
      file.weight === null ? [] : [weight(file.weight)],
    ].flat();
    const onFile = facts.length === 0 ? 'aún sin datos' : facts.join(', ');
    return `Datos de ${file.child ?? childIn(scene)}: ${onFile}. ¿Todo sigue igual?\nResponda SI o NO.`;
  },
  askTubeKind: () =>
    '¿Qué sonda se salió? G va al estómago. GJ tiene una parte larga que sigue al intestino. J va solo al intestino. ' +
    'A MEDIAS: aún hay una parte adentro.\nResponda G, GJ, J, A MEDIAS, NARIZ o NO SE.',
  askTubeKindByLook: () =>
    'Mire la sonda. ¿Cuántas entradas de comida tiene? No cuente la válvula chica del globo. ¿La parte de adentro era ' +
    'corta como un dedo, o mucho más larga?\nResponda UNA ENTRADA CORTA, DOS ENTRADAS LARGA o NO SE.',
  askFirstPlaced: (_params, scene) =>
    `¿Cuándo le pusieron${scene.child === null ? '' : ` a ${scene.child}`} la primera sonda en este hoyo? No el último ` +
    'cambio. Basta mes y año.\nResponda con la fecha, o hace cuánto, o NO SE.',
  askOwnTube: () =>
    '¿Tiene la sonda que se salió? SI: entera y con buen globo. ROTO: se rompió el globo. LARGO: tenía una parte larga ' +
    'adentro.\nResponda SI, ROTO, LARGO, NO o NO SE.',
  askOwnTubeIn: () =>
    'No pase nada por la sonda aún. ¿Estaba entera cuando la metieron? SI: entera y con buen globo. ROTO: se rompió el ' +
    'globo. LARGO: tenía una parte larga adentro.\nResponda SI, ROTO, LARGO, NO o NO SE.',
  askKit: ({ stranger, latexAllergy }) => {
    const shown = stranger ? ' ¿A alguien ahí le enseñaron a ponerla?' : '';
    const latex = latexAllergy ? ' Si no dice "sin látex", la respuesta es NO.' : '';
    const replies = stranger ? 'Responda SI, NO o NO ME ENSEÑARON.' : 'Responda SI o NO.';
    return `¿Tiene el kit de emergencia con una sonda temporal?${shown}${latex}\n${replies}`;
  },
  askWeight: (_params, scene) =>
    `¿Cuánto pesa ${childIn(scene)}? Ponga KG o LB tras el número.\nResponda con el peso, o NO SE.`,
  askWeightUnit: ({ bare }) => `¿Son ${number(bare)} kg o ${number(bare)} lb (libras)?\nResponda KG o LB.`,
  askWeightAgain: ({ told }, scene) =>
    `Tengo ${again(told)} de peso. No es lo usual a esta edad. ¿Cuánto pesa ${childIn(scene)}?\nResponda SI si está bien, o el peso con KG o LB.`,
  askCameOut: () => '¿Cuándo se salió la sonda?\nResponda con la hora, o hace cuánto, o NO SE.',
  askLastSeenIn: () =>
    '¿Cuándo vio la sonda en su lugar por última vez?\nResponda con la hora, o hace cuánto, o NO SE.',
};
