/** Spanish: how it ends for now: in use, held, on to a nurse, or on to the hospital. */
import { isInPlace } from '#machines/facts.ts';
import type { Card, GoInReason, HoldReason, Says } from '#machines/says.ts';
import type { CaregiverCatalogue, Scene } from '../catalogue.ts';
import { deskFacts } from '../en/outcome.ts';
import type { OutcomeKey } from '../keys.ts';
import { days, ifWorse } from './facts.ts';

const holdReasons: Readonly<Record<HoldReason, string>> = {
  hard: 'Fue difícil meterla.',
  'no-strips': 'Sin una tira no sé dónde está la sonda.',
  'no-contents': 'Sin algo del estómago no sé dónde está la sonda.',
  unread: 'Sin una respuesta clara no sé si la sonda es segura.',
  'second-high': 'La segunda lectura también es alta.',
  'not-secured': 'Aún no está bien sujeta.',
  'tube-problem': 'Algo anda mal con la sonda.',
  'in-place': 'Déjela adentro, no la jale.',
  'in-blocked': 'No intente destaparla. Déjela adentro, no la jale.',
  'in-sore': 'El hoyo puede tener infección. Deje la sonda adentro, no la jale.',
  'in-leaking': 'Tiene fuga. Déjela adentro, no la jale.',
};

const goInReasons: Readonly<Record<GoInReason, string>> = {
  'tract-too-young': 'El hoyo es muy nuevo.',
  kind: 'Ahí deben cambiar esta sonda.',
  tract: 'El hoyo quizás es muy nuevo.',
  'half-out': 'No la empuje ni la saque.',
  latex: 'La sonda puede tener látex.',
  'no-kit': 'El hoyo se puede cerrar en horas.',
  'not-shown': 'Que la ponga gente que sabe.',
  'will-not-go-in': 'No lo intente otra vez.',
  warning: 'No dé nada por sonda ni por boca.',
  'second-high': 'La segunda lectura es alta.',
  'cannot-wait': 'Ahí le pueden dar lo que no puede esperar.',
  'nobody-answered': 'Ninguna enfermera responde aún.',
  'unwell-unread': 'No sé si todo está bien.',
  'burst-own': 'Esa sonda no es para comida.',
  nurse: 'La enfermera pide que vaya.',
};

const goInCare: Readonly<Record<Card['inside'], string>> = {
  own: 'Deje la cinta puesta. No pase nada por la sonda.',
  temporary: 'Deje la cinta puesta. No pase nada por la sonda.',
  'half-out': 'Fije con cinta como está. No pase nada por la sonda.',
  'in-place': 'No la jale. No pase nada por la sonda.',
  nose: 'No pase nada por la sonda de la nariz.',
  nothing: 'Deje cubierto el hoyo. No le meta nada.',
};

const goNow = ({ site }: Scene) =>
  `Vaya ya a emergencias de ${site.hospital} (si está a más de 1 hora, al más cercano).`;
function goInWhy(why: string | null, { reason, inside }: Says['goIn'], scene: Scene): string {
  const ask = reason === 'cannot-wait' ? '\nNo hay que responder.' : replyIfCannotWait;
  const care = why === null ? goInCare[inside] : `${why} ${goInCare[inside]}`;
  return `${goNow(scene)} ${care} ¿Peor? Llame al ${scene.site.emergencyNumber}.${ask}`;
}

/** Worded so that the reader hears it: the bare name of a medicine would be no word it knows. */
const cannotWait = 'COMIDA YA o MEDICINA YA y su nombre si no puede esperar.';
export const replyIfCannotWait = `\nResponda ${cannotWait}`;
const replyOutOrCannotWait = `\nResponda SE SALIO si se sale, o ${cannotWait}`;
export const replyOkOrCannotWait = `\nResponda OK, o ${cannotWait}`;

export const outcome: Pick<CaregiverCatalogue, OutcomeKey> = {
  use: ({ tube, stayDays }, { site }) => {
    const which = tube === 'temporary' ? 'sonda temporal' : 'sonda';
    const stay = tube === 'temporary' ? `Máximo ${days(stayDays)}. ` : '';
    return (
      `Ya puede usar la ${which}. Empiece despacio y vigile. Sin bomba de noche hasta que una toma vigilada vaya bien. ` +
      'Vea la marca antes de cada toma. ¿Dolor, fuga, sangre fresca o vómito? Pare y escríbame. ' +
      `${stay}Llame a la clínica el próximo día hábil: ${site.clinicNumber}.\nResponda OK.`
    );
  },
  useStill: ({ tube }, { site }) =>
    `Ya puede usar la ${tube === 'temporary' ? 'sonda temporal' : 'sonda'}. Vea la marca, vaya despacio y vigile. ` +
    `¿Dolor, fuga o sangre fresca? Pare la toma. En peligro, llame al ${site.emergencyNumber}.\nResponda si algo anda mal.`,
  hold: ({ reason, clinicArranges }, scene) => {
    const next = clinicArranges
      ? `La clínica hará el cambio de sonda: ${scene.site.clinicNumber}.`
      : 'Una enfermera le dirá qué sigue.';
    return (
      `No pase nada por la sonda. ${holdReasons[reason]}${isInPlace(reason) ? '' : ' Deje la cinta puesta.'} ${next} ` +
      `${ifWorse(scene)}, llame al ${scene.site.emergencyNumber}.` +
      `${isInPlace(reason) ? replyOutOrCannotWait : replyOkOrCannotWait}`
    );
  },
  holdStill: (_params, scene) =>
    `No pase nada por la sonda. Una enfermera le dirá qué sigue. ${ifWorse(scene)}, llame al ` +
    `${scene.site.emergencyNumber}.${replyIfCannotWait}`,
  leaveInStill: (_params, scene) =>
    `No pase nada por la sonda. ${holdReasons['in-place']} Una enfermera le dirá qué sigue. ` +
    `${ifWorse(scene)}, llame al ${scene.site.emergencyNumber}.${replyOutOrCannotWait}`,
  nurse: (_params, scene) =>
    'No pase nada por la sonda de la nariz ni la empuje. Esta línea es para sondas de la barriga. Yo llamo a una ' +
    `enfermera. ${ifWorse(scene)}, llame al ${scene.site.emergencyNumber}.${replyOkOrCannotWait}`,
  nurseStill: (_params, scene) =>
    `No pase nada por la sonda de la nariz ni la empuje. Una enfermera le va a llamar. ${ifWorse(scene)}, llame al ` +
    `${scene.site.emergencyNumber}.${replyIfCannotWait}`,
  goIn: ({ reason, inside }, scene) => goInWhy(goInReasons[reason], { reason, inside }, scene),
  /** The desk reads the language of the hospital, so what it has to know stays in it. */
  goInCard: (card, scene) =>
    `Muestre esto: ${deskFacts(card, scene)} Lleve la sonda, el kit y el cargador. Que maneje otra persona.` +
    '\nNo hay que responder.',
  goInStill: ({ told }, scene) => {
    if (told === null)
      return `${goNow(scene)} No pase nada por la sonda. ${ifWorse(scene)}, llame al ${scene.site.emergencyNumber}.${replyIfCannotWait}`;
    // Somebody may have answered since.
    return goInWhy(told.reason === 'nobody-answered' ? null : goInReasons[told.reason], told, scene);
  },
};
