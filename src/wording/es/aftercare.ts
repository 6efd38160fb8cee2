/** Spanish: what follows: the first feed, the next day, the clinic, the stay limit, and the way to the hospital. */
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { AftercareKey } from '../keys.ts';
import { childIn, moreDays } from './facts.ts';

const stopSigns = '¿Dolor, fuga o sangre fresca? Pare la toma y escríbame.';

export const aftercare: Pick<CaregiverCatalogue, AftercareKey> = {
  askFirstFeed: () =>
    '¿Fue bien la primera toma, sin dolor, fuga, sangre fresca ni vómito? Si no, pare la toma.\nResponda SI o NO.',
  firstFeedWell: () => `Bien. Siga despacio. Vea la marca antes de cada toma. ${stopSigns}\nNo hay que responder.`,
  firstFeedLater: () => `Bien. Vea la marca antes de la toma. Vaya despacio. ${stopSigns}\nNo hay que responder.`,
  askNextDay: (_params, scene) =>
    `¿Está bien hoy ${childIn(scene)}, sin dolor, fiebre, fuga, sangre fresca ni barriga tensa?\nResponda SI o NO.`,
  nextDayWell: () => `Bien. Vea la marca antes de cada toma. ${stopSigns}\nNo hay que responder.`,
  askClinic: (_params, scene) =>
    `¿Ya ha llamado a la clínica por la sonda de ${childIn(scene)}? Su número es ${scene.site.clinicNumber}.` +
    '\nResponda SI o NO.',
  clinicDone: () => `Bien. Siga lo que le dijo la clínica. ${stopSigns}\nNo hay que responder.`,
  clinicNotYet: ({ tube }, { site }) =>
    `Por favor, llame a la clínica el próximo día hábil: ${site.clinicNumber}. ` +
    `${tube === 'temporary' ? 'La sonda es solo por poco tiempo. ' : ''}Le voy a preguntar otra vez.\nNo hay que responder.`,
  clinicStillNot: (_params, { site }) =>
    `Por favor, llame a la clínica en cuanto abra: ${site.clinicNumber}. Debe saber de la sonda. También aviso a una enfermera.` +
    '\nNo hay que responder.',
  stayWarning: ({ daysLeft }, { site }) =>
    `La sonda temporal puede estar ${moreDays(daysLeft)}. Si aún no hay cita para el cambio, llame a la clínica: ` +
    `${site.clinicNumber}.\nNo hay que responder.`,
  stayOver: (_params, { site }) =>
    `Ya se cumple el tiempo de la sonda temporal. Llame ya a la clínica: ${site.clinicNumber}. También aviso a una enfermera.` +
    '\nNo hay que responder.',
  askArrived: (_params, scene) => `¿Ya está en el hospital con ${childIn(scene)}?\nResponda SI o NO.`,
  arrivedYes: () => 'Bien. Muestre mi texto al llegar. No pase nada por la sonda.\nNo hay que responder.',
  arrivedNo: (_params, { site }) =>
    `Vaya ya a emergencias de ${site.hospital} (si está a más de 1 hora, al más cercano). No pase nada por la sonda. ` +
    `¿No puede ir? Llame al ${site.emergencyNumber}. Aviso a una enfermera.\nResponda ENFERMERA para una persona.`,
  askOutcome: (_params, scene) =>
    `¿Está bien hoy ${childIn(scene)}, y le vieron la sonda en el hospital?\nResponda SI o NO.`,
  outcomeWell: () => `Bien. Siga lo que le dijo el hospital. ${stopSigns}\nNo hay que responder.`,
  outcomeNotWell: (_params, scene) =>
    `Si ${childIn(scene)} no está con un médico, vaya ya a emergencias de ${scene.site.hospital} (si está a más de 1 hora, al ` +
    `más cercano). No pase nada por la sonda. En peligro, llame al ${scene.site.emergencyNumber}. ` +
    'Aviso a una enfermera.\nResponda ENFERMERA para una persona.',
};
