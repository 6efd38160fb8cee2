/** The samples of `src/protocol` with an invented site to word them for. */
import { sampleChildren, sampleNowMs } from '#src/protocol/samples.ts';
import type { Scene } from '#src/wording/word.ts';

export * from '#src/protocol/samples.ts';
export const nowMs = sampleNowMs;

/** An invented site. */
export const scene: Scene = {
  language: 'en',
  nowMs,
  child: null,
  children: sampleChildren,
  site: {
    emergencyNumber: '911',
    hospital: "Larkfield Children's Hospital",
    hospitalNumber: '+12125550143',
    clinicNumber: '+12125550140',
    fallbackNumber: '+12125550141',
    timeZone: 'America/New_York',
    clinicDays: [1, 2, 3, 4, 5],
    clinicOpens: '08:00',
    clinicCloses: '17:00',
    holidays: 'US',
  },
};

/** The same with the longest site facts a protocol may hold, and a long name. */
export const longScene: Scene = {
  ...scene,
  child: 'Maximiliana-Rosalind Tennant',
  children: ['Maximiliana-Rosalind Tennant', 'Bartholomew-Leander Tennant', 'Wilhelmina-Josephine Tennant'],
  site: {
    ...scene.site,
    emergencyNumber: '112233',
    hospital: 'The Larkfield and Upper Riverbend Regional Hospital for Kids',
    hospitalNumber: '+123456789012345',
    clinicNumber: '+123456789012345',
  },
};
