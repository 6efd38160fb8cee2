/** Spanish numbers in words, halves and quarters, decimal commas, and clock times in words. */
import type { Rewrite } from '../numbers.ts';
import { timeUnits } from './grammar.ts';

const small: Readonly<Record<string, number>> = {
  cero: 0,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
  seis: 6,
  siete: 7,
  ocho: 8,
  nueve: 9,
  diez: 10,
  once: 11,
  doce: 12,
  trece: 13,
  catorce: 14,
  quince: 15,
  dieciseis: 16,
  diecisiete: 17,
  dieciocho: 18,
  diecinueve: 19,
  veinte: 20,
  veintiuno: 21,
  veintiun: 21,
  veintiuna: 21,
  veintidos: 22,
  veintitres: 23,
  veinticuatro: 24,
  veinticinco: 25,
  veintiseis: 26,
  veintisiete: 27,
  veintiocho: 28,
  veintinueve: 29,
};

const tens: Readonly<Record<string, number>> = {
  diez: 10,
  veinte: 20,
  treinta: 30,
  cuarenta: 40,
  cincuenta: 50,
  sesenta: 60,
  setenta: 70,
  ochenta: 80,
  noventa: 90,
};

/** Hundreds by what they begin with. */
const hundreds: Readonly<Record<string, number>> = {
  do: 200,
  tre: 300,
  cuatro: 400,
  quini: 500,
  sei: 600,
  sete: 700,
  ocho: 800,
  nove: 900,
};

/** Any unit that turns "un" or "una" into a number: "una hora", "un kilo". */
const units = `${Object.values(timeUnits).join('|')}|kilos?|kg|kilogramos?|libras?|lbs?|onzas?`;
const smallWords = Object.keys(small).join('|');
const tensWords = Object.keys(tens).join('|');

/** "Las 2 menos 10" is 1:50. */
function beforeHour(hour: string | undefined, minutes: number): string {
  return `las ${(Number(hour) + 11) % 12 || 12}:${60 - minutes}`;
}

function smallNumber(word: string | undefined): number {
  if (word === undefined) return 0;
  return /^un/.test(word) ? 1 : (small[word] ?? 0);
}

/** In this order; each sees what the one before has made. */
export const rewrites: readonly Rewrite[] = [
  // "Una y cuarto" alone is a time.
  [/^una y (?=(?:cuarto|media|cinco|diez|veinte|veinticinco)$)/, 'la una y '],
  // A comma is a decimal point, but before three digits that are grams; so is a point but there.
  [/(\d)[.,](\d{3})(?= ?(?:g|gr|grs|gramos)\b)/g, '$1$2'],
  [/(\d),(\d{1,3})(?!\d)/g, '$1.$2'],
  [/\b(?:a )?la una\b(?! ?(?:vez|sonda|parte))/g, 'a las 1'],
  // "Las diez y veinte" is an hour and its minutes; "diez y seis" a number.
  [new RegExp(`\\blas (diez|veinte) y (?=(?:uno|${smallWords})\\b)`, 'g'), (_, ten = '') => `las ${tens[ten]} y `],
  [/\bdiez y (?!(?:seis|siete|ocho|nueve)\b)/g, '10 y '],
  [
    new RegExp(`\\b(${tensWords})(?: y (uno|un|una|dos|tres|cuatro|cinco|seis|siete|ocho|nueve))?\\b`, 'g'),
    (_, ten = '', rest) => String((tens[ten] ?? 0) + smallNumber(rest)),
  ],
  // "Trecienta gramo", "docientas": hundreds as they are heard.
  [
    /\b(do|tre|cuatro|quini|sei|sete|ocho|nove)[sc]*(?:cient|sient|ent|ient)[oa]s?\b/g,
    (_, start = '') => String(hundreds[start]),
  ],
  [new RegExp(`\\b(${smallWords})\\b`, 'g'), (word) => String(smallNumber(word))],
  [/\blas? (\d{1,2}) y medi[ao]\b/g, 'las $1:30'],
  [/\blas? (\d{1,2}) y cuarto\b/g, 'las $1:15'],
  [/\blas? (\d{1,2}) menos (?:un )?cuarto\b/g, (_, hour) => beforeHour(hour, 15)],
  [/\b(?:un )?cuarto para (?:a )?las? (\d{1,2})\b/g, (_, hour) => beforeHour(hour, 15)],
  [/\blas? (\d{1,2}) menos (5|10|20|25)\b/g, (_, hour, minutes) => beforeHour(hour, Number(minutes))],
  [
    /\b(5|10|20|25) (?:minutos )?para (?:a )?las? (\d{1,2})\b/g,
    (_, minutes, hour) => beforeHour(hour, Number(minutes)),
  ],
  [
    /(?<!\bentre )\blas (\d{1,2}) (?:y|con) (0?5|[1-5]\d)\b(?! ?(?:minutos|mins?|horas?|kilos?|libras?|dias?|semanas?|mes))/g,
    'las $1:$2',
  ],
  [
    /\b(?:a |eran )las? (\d{1,2}) (?:y |con )?(0?5|[1-5]\d)\b(?! ?(?:minutos|mins?|horas?|kilos?|libras?|dias?|semanas?|mes))/g,
    (_, h, m = '') => `a las ${h}:${m.padStart(2, '0')}`,
  ],
  [/\b([1-9]00) (?:y )?(\d{1,2})(?![\d.:])/g, (_, hundreds, rest) => String(Number(hundreds) + Number(rest))],
  [
    /\b(?:(\d{1,2}) )?mil(?: ([1-9]\d{2}))?\b/g,
    (_, count, rest) => String(Number(count ?? 1) * 1000 + Number(rest ?? 0)),
  ],
  [/\b(\d+) (kilos?|kg|libras?|horas?) y (?:un )?cuarto\b/g, '$1.25 $2'],
  [/\b(?:una |1 )?(horas?|kilo|libra) y (?:un )?cuarto\b/g, '1.25 $1'],
  [/\b(\d+)(?: y)? (?:1\/2|y medi[ao])\b/g, '$1.5'],
  [new RegExp(`\\b(\\d+) (${units}) y medi[ao]\\b`, 'g'), '$1.5 $2'],
  [/\b(\d+) y (?:medi[ao]|1\/2)\b/g, '$1.5'],
  [/\b(\d+) y (?:un )?cuarto\b/g, '$1.25'],
  [new RegExp(`\\b(?:un |una )?(${units}) y medi[ao]\\b`, 'g'), '1.5 $1'],
  [new RegExp(`\\b(?:una? )?(?:medi[ao]|1\\/2|mitad de una?) (?=(?:${units})\\b)`, 'g'), '0.5 '],
  [/\b3 cuartos de hora\b/g, '0.75 hora'],
  [/\b(?:un )?cuarto de hora\b/g, '0.25 hora'],
  [/\b(?:(?:un|una) )?par de\b/g, 'par'],
  // "Hora y pico", "mes y medio": one of them.
  [
    /(?<![\d.] ?|\bun |\buna |\bla |\bal )\b(hora|mes|ano) y (?=(?:pico|algo|medi[ao]|tanto|fraccion|cacho)\b)/g,
    '1 $1 y ',
  ],
  [new RegExp(`\\b(?:un|una|uno) (?=(?:${units})\\b)`, 'g'), '1 '],
  [/\b(\d{1,2}) ?h ?(\d{1,2})\b/g, '$1 horas $2 min'],
  [/\bcien(?:to)?(?: (?:y )?(\d{1,2}))?\b/g, (_, rest) => String(100 + Number(rest ?? 0))],
  [/(\d) ?(?:punto|coma|point) ?(\d)/g, '$1.$2'],
  [/(\d+) \.(\d)/g, '$1.$2'],
  [/(^|[ (])\.(\d)/g, '$10.$2'],
  // "No hace 2 meses, hace 4": only the second counts, in the unit of the first.
  [
    /\bno (?:hace|son|es|fue|fueron|eran?) (?:como )?\d+(?:\.\d+)? (dias?|semanas?|mes(?:es)?|anos?|horas?|minutos?|mins?)(?: no)?,? (?:sino |mas bien |ya )?((?:hace|son|es|fue|fueron)(?: (?:como|casi|unos|unas|ya))*) (\d+(?:\.\d+)?)(?=$|[,.;!])/g,
    '$2 $3 $1',
  ],
  [
    /\bno (?:hace|son|es|fue|fueron|eran?) (?:como )?\d+(?:\.\d+)? (?:dias?|semanas?|mes(?:es)?|anos?|horas?|minutos?|mins?)(?: no)?,? (?=(?:sino|mas bien|hace|son|fue|fueron)\b[a-z ]{0,16}\d)/g,
    '',
  ],
  // "Hace anos, como 6".
  [
    /\bhace (?:ya )?(?:un monton de |much(?:isim)?os |varios |bastantes )?(a)?(?:nisimos|nos),? (?:ya )?(?:(como|unos|casi|mas o menos|por ahi de) )?(\d+)(?= ?$|[.,;!])/g,
    (_, __, how, count) => `hace ${how ?? 'como'} ${count} anos`,
  ],
  // "Ni 5 ni 6, queda en medio".
  [
    /\b(?:no (?:es|esta|llega|son|da)(?: a)? )?ni (?:el |un |al |en )?(\d[\d.]*),? ni (?:el |un |al |en )?(\d[\d.]*)(?=.{0,30}\b(?:mitad|medio|entre|intermedi[oa])\b)/g,
    'entre $1 y $2',
  ],
  // "2 horas 20" and "una hora y pico" are longer than the hours they name.
  [/\b(\d+) ?(?:horas?|hrs?|h) (?:y |con )?(\d{1,2})(?![\d.:]| ?[a-z%])/g, '$1 horas $2 minutos'],
  [/\b(\d+) ?(?:horas?|hrs?|h) y (?:un )?(?:cachito|piquito)\b/g, '$1 horas 20 minutos'],
  [
    /\b(\d+) ?(?:horas?|hrs?|h) y (?:pico|picos|algo|tantito|un poco|un poquito|fraccion|cacho|feria|un cacho)\b/g,
    '$1 horas 30 minutos',
  ],
];
