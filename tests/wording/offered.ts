/** The answers that the texts of each language offer, by what each stands for. */
import type { LanguageCode } from '#machines/facts.ts';

export interface Offered {
  readonly yes: string;
  readonly no: string;
  readonly notSure: string;
  readonly halfOut: string;
  readonly nose: string;
  readonly onePortShort: string;
  readonly twoPortsLong: string;
  readonly burst: string;
  readonly long: string;
  readonly notShown: string;
  readonly easy: string;
  readonly hard: string;
  readonly steps: readonly [string, string, string];
  /** The two, as one text offers both. */
  readonly feedNow: string;
  readonly medicineNow: string;
  readonly latex: string;
  readonly nurse: string;
  readonly wrong: string;
  readonly correctKind: string;
  readonly correctWeight: string;
}

export const offered: Readonly<Record<LanguageCode, Offered>> = {
  en: {
    yes: 'YES',
    no: 'NO',
    notSure: 'NOT SURE',
    halfOut: 'HALF OUT',
    nose: 'NOSE',
    onePortShort: 'ONE PORT SHORT',
    twoPortsLong: 'TWO PORTS LONG',
    burst: 'BURST',
    long: 'LONG',
    notShown: 'NOT SHOWN',
    easy: 'EASY',
    hard: 'HARD',
    steps: ['STEP 1', 'STEP 2', 'STEP 3'],
    feedNow: 'FEED NOW',
    medicineNow: 'MEDICINE NOW',
    latex: 'LATEX ALLERGY',
    nurse: 'NURSE',
    wrong: 'WRONG',
    correctKind: 'THE TUBE IS A GJ',
    correctWeight: 'THE WEIGHT IS 7 KG',
  },
  es: {
    yes: 'SI',
    no: 'NO',
    notSure: 'NO SE',
    halfOut: 'A MEDIAS',
    nose: 'NARIZ',
    onePortShort: 'UNA ENTRADA CORTA',
    twoPortsLong: 'DOS ENTRADAS LARGA',
    burst: 'ROTO',
    long: 'LARGO',
    notShown: 'NO ME ENSEÑARON',
    easy: 'FACIL',
    hard: 'DIFICIL',
    steps: ['PASO 1', 'PASO 2', 'PASO 3'],
    feedNow: 'COMIDA YA',
    medicineNow: 'MEDICINA YA',
    latex: 'ALERGIA AL LATEX',
    nurse: 'ENFERMERA',
    wrong: 'ME EQUIVOQUE',
    correctKind: 'LA SONDA ES GJ',
    correctWeight: 'EL PESO ES 7 KG',
  },
  fr: {
    yes: 'OUI',
    no: 'NON',
    notSure: 'JE NE SAIS PAS',
    halfOut: 'MOITIE',
    nose: 'NEZ',
    onePortShort: 'UNE ENTREE COURT',
    twoPortsLong: 'DEUX ENTREES LONG',
    burst: 'CREVE',
    long: 'LONG',
    notShown: 'PAS APPRIS',
    easy: 'FACILE',
    hard: 'DUR',
    steps: ['ETAPE 1', 'ETAPE 2', 'ETAPE 3'],
    feedNow: 'REPAS URGENT',
    medicineNow: 'MEDICAMENT URGENT',
    latex: 'ALLERGIE LATEX',
    nurse: 'INFIRMIERE',
    wrong: 'ERREUR',
    correctKind: 'LA SONDE EST UNE GJ',
    correctWeight: 'LE POIDS EST 7 KG',
  },
};
