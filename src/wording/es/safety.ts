/** Spanish: danger first, and the question whether there is any. */
import type { Sign } from '#machines/facts.ts';
import type { CaregiverCatalogue, Scene } from '../catalogue.ts';
import type { SafetyKey } from '../keys.ts';
import { childIn } from './facts.ts';

const signNames: Readonly<Record<Sign, string>> = {
  breathing: 'respira mal',
  colour: 'color azul o gris',
  limp: 'débil o cuesta despertar',
  bleeding: 'sangrado',
  'hard-belly': 'barriga dura e hinchada',
  'severe-pain': 'dolor muy fuerte',
  vomit: 'vómito verde o repetido',
  fever: 'fiebre',
  pain: 'dolor',
  'fresh-blood': 'sangre fresca',
  'tight-belly': 'barriga tensa',
  leak: 'fuga',
};

const muchBlood = '¿Sale sangre sin parar, o mucha sangre?';
const hardBelly = '¿Tiene la barriga dura e hinchada?';

/** With no tube in, a small sign is asked about as the danger it could be. */
const clarifications: Readonly<Record<Sign, (tubeIn: boolean) => string>> = {
  breathing: () => '¿Le cuesta respirar?',
  colour: () => '¿Tiene un color azul, gris o muy pálido?',
  limp: () => '¿Está sin fuerza, o cuesta que despierte?',
  bleeding: () => muchBlood,
  'hard-belly': () => hardBelly,
  'severe-pain': () => '¿Tiene un dolor muy fuerte, o llora y nada le calma?',
  vomit: () => '¿El vómito fue verde, o más de una vez?',
  fever: () => '¿Tiene fiebre ahora?',
  pain: (tubeIn) => (tubeIn ? '¿Tiene dolor nuevo desde que la sonda está adentro?' : '¿Tiene un dolor muy fuerte?'),
  'fresh-blood': (tubeIn) => (tubeIn ? '¿Ve sangre fresca?' : muchBlood),
  'tight-belly': (tubeIn) => (tubeIn ? '¿La barriga está más tensa o más grande que antes?' : hardBelly),
  leak: () => '¿Sale leche o líquido junto a la sonda?',
};

const dangerList =
  '¿Respira mal? ¿Azul o gris? ¿Débil, cuesta despertar? ¿Sangra sin parar? ¿Barriga dura, hinchada? ' +
  '¿Mucho dolor? ¿Vómito verde o repetido? ¿Fiebre, menos de 3 meses?';

/** Of many signs told, the first few say enough to the person who takes the emergency call. */
const mostSigns = 3;

function openingWith(care: string, { site }: Scene): string {
  return (
    `¿Peligro? Llame al ${site.emergencyNumber}. La línea no manda ayuda. Pare la comida. ${care} ${dangerList} ¿Algo?` +
    '\nResponda SI o NO.'
  );
}

export const safety: Pick<CaregiverCatalogue, SafetyKey> = {
  opening: (_params, scene) => openingWith('Cubra el hoyo con tela limpia. Guarde la sonda.', scene),
  openingTubeIn: (_params, scene) => openingWith('No jale la sonda ni le pase nada.', scene),
  askUnwell: (_params, { site }) =>
    `En peligro, llame al ${site.emergencyNumber}. ${dangerList} ¿Algo?\nResponda SI o NO.`,
  clarifySign: ({ sign, tubeIn }) => `${clarifications[sign](tubeIn)}\nResponda SI o NO. En caso de duda, responda SI.`,
  askTrouble: (_params, scene) =>
    `No pude leer eso. ¿Algo anda mal con ${childIn(scene)} o con la sonda? En peligro, llame al ` +
    `${scene.site.emergencyNumber}.\nResponda SI o NO.`,
  emergency: ({ signs }, { site }) => {
    const told = signs.slice(0, mostSigns).map((sign) => signNames[sign]);
    const why = told.length === 0 ? '' : ` Usted dijo: ${told.join(', ')}.`;
    const mistake = told.length === 0 ? ', o ME EQUIVOQUE si puso SI por error' : '';
    return (
      `Llame ya al ${site.emergencyNumber}.${why} Yo no mando ayuda. Pare la comida. No dé nada por sonda ni por boca. ` +
      `Yo llamo a una enfermera.\nResponda OK cuando haya llamado${mistake}.`
    );
  },
  emergencyCalled: (_params, scene) =>
    `Bien. Quédese con ${childIn(scene)} hasta que llegue la ayuda. No dé nada por sonda ni por boca. ¿No ha llamado o ` +
    `empeora? Llame ya al ${scene.site.emergencyNumber}.\nResponda si algo cambia.`,
  emergencyStill: (_params, { site }) =>
    `Llame ya al ${site.emergencyNumber} si no ha llamado. Yo no mando ayuda. No dé nada por sonda ni por boca.\n` +
    'Responda si algo cambia.',
};
