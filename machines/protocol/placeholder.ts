/**
 * A protocol for contexts that are thrown away: XState also runs a machine's context factory at every transition, without
 * input, and a factory that throws there costs more than the step. No case ever sees these values.
 */
import { defaultClinical } from './load.ts';
import type { Protocol } from './settings.ts';

export const placeholderProtocol = {
  clinical: defaultClinical,
  site: {
    emergencyNumber: '',
    hospital: '',
    clinicNumber: '',
    fallbackNumber: '',
    timeZone: 'utc',
    clinicDays: [],
    clinicOpens: '',
    clinicCloses: '',
    holidays: null,
  },
} as const satisfies Protocol;
