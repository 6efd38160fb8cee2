/** Spanish: one nudge on each unanswered question, short enough for one segment. */
import type { QuestionKey } from '#machines/facts.ts';
import { namesIn, type Scene } from '../catalogue.ts';
import { childIn } from './facts.ts';

const nudges: Readonly<Record<QuestionKey, (scene: Scene) => string>> = {
  unwell: (scene) =>
    `¿Hay alguna señal de peligro? Si la hay, llame al ${scene.site.emergencyNumber}.\nResponda SI o NO.`,
  who: () =>
    '¿Ya escribió alguien más por este caso?\nResponda nombre y 4 números finales de mamá o papá, como SAM 1234, o NO, o NO SE.',
  'which-child': (scene) => `¿De quién se trata?\nResponda con el nombre: ${namesIn(scene).join(', ')} o NINGUNO.`,
  confirm: () => '¿Siguen bien los datos que le mandé?\nResponda SI o NO.',
  'tube-kind': () => '¿Qué sonda se salió?\nResponda G, GJ, J, A MEDIAS, NARIZ o NO SE.',
  'first-placed': () => '¿Cuándo le pusieron la primera sonda?\nResponda con la fecha, o hace cuánto, o NO SE.',
  'own-tube': () => '¿Tiene la sonda, entera?\nResponda SI, ROTO, LARGO (parte de adentro), NO o NO SE.',
  'own-tube-in': () => '¿Ya está adentro la sonda? Nunca la fuerce.\nResponda FACIL, DIFICIL (tuvo que empujar) o NO.',
  kit: () => '¿Tiene el kit de emergencia?\nResponda SI o NO.',
  weight: (scene) => `¿Cuánto pesa ${childIn(scene)}?\nResponda con KG o LB, o NO SE.`,
  'tube-in': () =>
    '¿Ya está adentro la sonda temporal? Nunca la fuerce.\nResponda FACIL, DIFICIL (tuvo que empujar) o NO.',
  'came-out': () => '¿Cuándo se salió la sonda, o cuándo la vio adentro?\nResponda con la hora, o NO SE.',
  'after-in': () => '¿Hay dolor nuevo, sangre fresca o la barriga más tensa?\nResponda SI o NO.',
  strips: () => '¿Tiene tiras de pH?\nResponda SI o NO.',
  contents: () => '¿Salió algo del estómago?\nResponda SI o NO.',
  ph: () => '¿Qué número da la tira?\nResponda con el número, o NO SE.',
  'fed-lately': () => '¿Le dieron comida o medicina en la última hora?\nResponda SI, NO o NO SE.',
  looks: () => '¿Es blanco turbio, leche cortada, beige, verde pasto o con puntos café?\nResponda SI, NO o NO SE.',
  secured: () => '¿Está lleno el globo, y la sonda con tope y cinta?\nResponda SI o NO.',
  'first-feed': () => '¿Fue bien la primera toma?\nResponda SI o NO.',
  'next-day': (scene) => `¿Está bien hoy ${childIn(scene)}?\nResponda SI o NO.`,
  arrived: () => '¿Ya llegaron al hospital?\nResponda SI o NO.',
  clinic: (scene) => `¿Ya ha llamado a la clínica? Su número es ${scene.site.clinicNumber}.\nResponda SI o NO.`,
};

/** The open question once more, for a phone that has gone quiet. */
export function nudge(asking: QuestionKey, scene: Scene): string {
  return `¿Sigue ahí? ${nudges[asking](scene)}`;
}
