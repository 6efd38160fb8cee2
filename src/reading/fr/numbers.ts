/** French numbers in words, decimals with a comma, and hours: a time of the clock, or a length of time after "il y a". */
import type { Rewrite } from '../numbers.ts';
import { timeUnits } from './grammar.ts';

const smallNumbers: Readonly<Record<string, number>> = {
  zero: 0,
  deux: 2,
  trois: 3,
  quatre: 4,
  cinq: 5,
  six: 6,
  sept: 7,
  huit: 8,
  neuf: 9,
  dix: 10,
  onze: 11,
  unze: 11,
  douze: 12,
  treize: 13,
  quatorze: 14,
  quinze: 15,
  seize: 16,
  'dix-sept': 17,
  'dix-huit': 18,
  'dix-neuf': 19,
};

/** "Septante" and its kin are said in Belgium and Switzerland. */
const tens: Readonly<Record<string, number>> = {
  vingt: 20,
  trente: 30,
  quarante: 40,
  cinquante: 50,
  'soixante-dix': 70,
  soixante: 60,
  septante: 70,
  'quatre-vingt-dix': 90,
  'quatre-vingts?': 80,
  huitante: 80,
  octante: 80,
  nonante: 90,
};

const tensWords = Object.keys(tens).join('|').replace(/-/g, '[ -]');
const smallWords = Object.keys(smallNumbers).reverse().join('|').replace(/-/g, '[ -]');
const countedUnits = `${Object.values(timeUnits).join('|')}|kilos?|kg|livres?|lbs?|onces?|oz|grammes?|virgule|point|cent|quart`;

function numberOf(word: string | undefined, of: Readonly<Record<string, number>>): number {
  const plain = (word ?? '').replace(/ /g, '-');
  return of[plain] ?? of[`${plain}s?`] ?? of[plain.replace(/s$/, 's?')] ?? 0;
}

/** "2h", "2 heures": a time of the clock, unless a word of length stands before it. */
const hour = '([01]?\\d|2[0-3]) ?(?:h|heures?|heurs?|hrs?|hres)';
const afterLength =
  '(?<!\\b(?:y a|fait|depuis|pendant|durant|dans|moins de|plus de|bout de|apres|toutes? les|dernieres?|passees?|pour|de moins|a peine)(?: (?!a |vers |jusque|avant |etait |entre |et |ou )[a-z]+){0,4} (?:\\d{1,2}(?:\\.\\d)? ?(?:h|heures?)? ?(?:-|a|ou|et|ou meme) ?)?)';
const beforeLength = '(?! ?(?:plus tard|de retard|de route|max\\b|et des|et quelques|de la))';

function clock(tail: string): RegExp {
  return new RegExp(`(?<![\\d.:,])\\b(?=\\d)${afterLength}${hour}${tail}`, 'g');
}

/** Hours alone are a length of time: "deux heures", "1h et demie". */
function bareHours(form: string): RegExp {
  return new RegExp(
    `^((?:(?:ca doit (?:bien )?faire|environ|presque|oui|euh|ben|bah|genre|peut etre|je (?:crois|pense|dirais)|dans les) )*)(\\d|1[0-2])${form}(?= ?(?:$|[,.!?]|environ|je (?:crois|pense|dirais)|max|peut etre))`,
    'g',
  );
}

function minutesOf(lead: string | undefined, hours: readonly (string | undefined)[]): string {
  const minutes = hours.flatMap((count) => (count === undefined ? [] : [Number(count) * 60]));
  return `${lead ?? ''}${minutes.join(' ou ')} minutes`;
}

function minutesBefore(hours: string | undefined, minutes: number): string {
  const before = Number(hours) === 0 ? 23 : Number(hours) - 1;
  return `${before === 0 && Number(hours) === 1 ? 12 : before}:${60 - minutes}`;
}

/** Minutes after midnight, in two digits. */
function midnightMinutes(words: string): string {
  const spoken: Readonly<Record<string, number>> = { cinq: 5, dix: 10, vingt: 20, 'vingt cinq': 25 };
  return String(spoken[words.replace('-', ' ')] ?? Number(words)).padStart(2, '0');
}

/** In this order; each sees what the one before has made. "Un" and "une" are articles except before a unit. */
export const rewrites: readonly Rewrite[] = [
  // "Depuis 22h", "depuis 1h du matin": since that time, as nobody says of so many hours.
  [
    /\bdepuis (1[3-9]|2[0-3]) ?(?:h|heures?|heurs?|hrs?) ?([0-5]\d)?(?! ?(?:de temps|environ que|\d))\b/g,
    (_, hours, minutes) => `a ${hours}:${minutes ?? '00'}`,
  ],
  [
    /\bdepuis (\d{1,2}) ?(?:h|heures?|heurs?|hrs?) ?([0-5]\d)?(?= (?:du mat\w*|de le apres|du soir|cette nuit|hier soir|ce matin|pile|tapant\w*)\b)/g,
    (_, hours, minutes) => `a ${hours}:${minutes ?? '00'}`,
  ],
  // "22h et quelques": the clock, where nobody says of so many hours that they are gone.
  [
    /(?<!\b(?:y a|fait|dure|bien|deja|pendant|bout de|apres|dans|plus de) )\b(1[3-9]|2[0-3]) ?(?:h|heures?) et (?:des poussieres|quelques?|un peu)\b/g,
    '$1:00',
  ],
  // "Hier soir 23h" is the clock.
  [
    /(?<=\b(?:hier soir|ce soir|hier|ce matin|cette nuit),? )(\d{1,2}) ?(?:h|heures?)(?: ?([0-5]\d))?(?= ?(?:$|[,.!?]))/g,
    (_, hours, minutes) => `${hours}:${minutes ?? '00'}`,
  ],
  [/^((?:ca fait |depuis |y a )?)(?:une|1) heure pile/g, (_, lead) => `${lead ?? ''}60 minutes`],
  // "2h" alone may be a time or a length of time: both are read, and the earlier counts.
  [/^([1-9]) ?h\.?$/g, 'y a $1h. $1:00'],
  [/\bmidi moins (?:le |un )?quart\b/g, '11:45'],
  [
    /\bmidi moins (5|10|20|25|cinq|dix|vingt|vingt[ -]cinq)\b/g,
    (_, minutes = '') => `11:${60 - Number(midnightMinutes(minutes))}`,
  ],
  [/\bminuit moins (?:le |un )?quart\b/g, '23:45'],
  [
    /\bminuit moins (5|10|20|25|cinq|dix|vingt|vingt[ -]cinq)\b/g,
    (_, minutes = '') => `23:${60 - Number(midnightMinutes(minutes))}`,
  ],
  // "Pas 2 mois, 4": only the second counts, in the unit of the first.
  [
    /\b(?:(?:ca |cela )?(?:fait|faisait) |y a |cest )?pas (?:une? |\d+ |deux |trois |quatre |cinq |six |sept |huit |neuf |dix )(minutes?|heures?|jours?|semaines?|mois|ans?),? (?:mais |plutot )?((?:ca fait|y a|cest|plutot|fait)(?: (?:bien|deja|plutot|environ))*) (\d+|deux|trois|quatre|cinq|six|sept|huit|neuf|dix)(?= ?(?:$|[,.;!]))/g,
    '$2 $3 $1',
  ],
  [
    /\b(?:(?:ca |cela )?(?:fait|faisait) |y a |cest )?pas (?:une? |\d+ |deux |trois |quatre |cinq |six |sept |huit |neuf |dix )(?:demi[ -])?(?:minutes?|heures?|jours?|semaines?|mois|ans?),? (?=(?:mais |plutot |ca fait |y a |cest |bien |deja )*(?:une? |\d+ |deux |trois |quatre |cinq |six |sept |huit |neuf |dix )(?:minutes?|heures?|jours?|semaines?|mois|ans?)\b)/g,
    '',
  ],
  [/(\d)(?:,| , )(\d)/g, '$1.$2'],
  [/\bminuit (?:et )?(?:demie?)\b/g, '0:30'],
  [/\bminuit (?:et )?quart\b/g, '0:15'],
  [
    /\bminuit (?:et )?(5|10|20|25|cinq|dix|vingt|vingt[ -]cinq)\b/g,
    (_, minutes = '') => `0:${midnightMinutes(minutes)}`,
  ],
  [/\bminuit\b/g, '0:00'],
  [/\bmidi (?:et )?demie?\b/g, '12:30 p'],
  [/\bmidi (?:et )?quart\b/g, '12:15 p'],
  [/(\d)(kg|kilos?|lbs?|livres?|h|m)(\d)/g, '$1 $2 $3'],
  [/\b(\d{1,3}) (\d{3}) ?(?=g\b|gr\b|grammes?\b)/g, '$1$2 '],
  [
    new RegExp(`\\b(${tensWords})[ -](?:et[ -])?(une?|${smallWords})\\b`, 'g'),
    (_, ten, small) => String(numberOf(ten, tens) + (small?.startsWith('un') ? 1 : numberOf(small, smallNumbers))),
  ],
  [new RegExp(`\\b(${tensWords})\\b`, 'g'), (word) => String(numberOf(word, tens))],
  [
    new RegExp(
      `(?<!\\b(?:tout|toute|tube|bouton|sonde|ballon|kit) )\\b(${smallWords})\\b(?!\\.? (?:19|20)\\d\\d)`,
      'g',
    ),
    (word) => String(numberOf(word, smallNumbers)),
  ],
  // "Huit kilos deux cent cinquante", "sept cents grammes".
  [
    /\b([2-9]) cents?(?: (\d{1,2}))?\b(?! ?%)/g,
    (_, hundreds, rest) => String(Number(hundreds) * 100 + Number(rest ?? 0)),
  ],
  [/(?<=\b(?:kgs?|kilos?|kilo) )cent(?: (\d{1,2}))?\b/g, (_, rest) => String(100 + Number(rest ?? 0))],
  [
    /\b(\d{1,2}) mille(?: (\d{1,3}))?(?= ?(?:g|gr|grammes?)\b)/g,
    (_, thousands, rest) => String(Number(thousands) * 1000 + Number(rest ?? 0)),
  ],
  [/\b2 mille (\d{1,2})\b/g, (_, year) => String(2000 + Number(year))],
  [/(\d) ?(?:virgule|point) ?(?:un|1)\b/g, '$1.1'],
  [/(\d) ?(?:virgule|point|vir) ?(\d)/g, '$1.$2'],
  [/(\d+) \.(\d)/g, '$1.$2'],
  [/\b(?:un |1 )?quart[ -]de[ -](?:heures?|h)\b|\b1\/4 ?(?:d ?e? )?(?:heure|h)\b/g, '15 minutes'],
  [/\b(?:3|les 3) ?quarts?[ -]de[ -](?:heures?|h)\b|\b3\/4 ?(?:d ?e? )?(?:heure|h)\b/g, '45 minutes'],
  [/\b(?:une |1 |la )?(?:petite |bonne |grosse )?(?:demi[es]?|1\/2)[ -]?(?:heures?|h|hre)\b/g, '30 minutes'],
  [/\b(?:une |1 )?(?:demi[es]?|1\/2)[ -]?(?:journee|jour)\b/g, '12 heures'],
  // A good hour is a little over one.
  [/\b(?:une |1 )bonne heure\b/g, 'un peu plus de une heure'],
  [/\b(?:bonne|petite|grosse) (heure|semaine|annee)\b/g, '$1'],
  [new RegExp(`\\b(?:une?|1)[ -](?=(?:${countedUnits})\\b)`, 'g'), '1 '],
  [/\b(couple|dizaine|quinzaine|douzaine|vingtaine|trentaine|quarantaine) de\b/g, '$1'],
  [
    bareHours(' ?(?:heures?|heurs?|hrs)(?: ou (\\d)(?! ?[h:]))?'),
    (_, lead, hours, others) => minutesOf(lead, [hours, others]),
  ],
  [bareHours(' ?(?:h|heures?|heurs?) ?et (?:demie?|1/2)'), (_, lead, hours) => minutesOf(lead, [`${hours}.5`])],
  [clock(' ?(?:et )?(?:quart|1\\/4)\\b'), (_, hours) => `${hours}:15`],
  [clock(' ?(?:et )?(?:demi[es]?|1\\/2)\\b'), (_, hours) => `${hours}:30`],
  [clock(' ?moins (?:le |un |1 )?quart\\b'), (_, hours) => minutesBefore(hours, 15)],
  [clock(' ?moins (5|10|20|25)\\b'), (_, hours, minutes) => minutesBefore(hours, Number(minutes))],
  [clock(' ?([0-5]\\d)(?: ?mi?ns?| ?minutes?)?\\b'), (_, hours, minutes) => `${hours}:${minutes}`],
  [clock(`\\b${beforeLength}`), (_, hours) => `${hours}:00`],
  [/\b(\d{1,2}) ?(ou|a|et|-) ?(\d{1,2}:\d\d)\b/g, '$1:00 $2 $3'],
  [/\b(\d+)[ -](?:et[ -])?quart\b/g, '$1.25'],
  [/\b(\d+) ?(?:h|heures?) (?:et )?(?:quart|1\/4)\b/g, '$1 heures 15 minutes'],
  [
    /\b(\d+) ?h(?:rs?|eures?|eurs?)? ?(?:et )?([0-5]?\d)(?: ?mi?ns?| ?minutes?)?\b(?! ?(?:h|heures?)\b)/g,
    '$1 heures $2 minutes',
  ],
  [new RegExp(`\\b(\\d+) ?(${countedUnits}) (?:et )?(?:demi[es]?|1/2)\\b`, 'g'), '$1.5 $2'],
  [/\b(\d+)(?: et|-et| puis)?[ -](?:demi[es]?|1\/2)\b/g, '$1.5'],
  // "4 virgule quelque chose": as much as the next whole number.
  [
    /\b(\d{1,2}) (?:virgule|point) (?:quelque chose|quelques?|des poussieres|je sais pas quoi|sais pas|un truc|machin)\b/g,
    (_, whole) => `${whole} a ${Number(whole) + 1}`,
  ],
  // "Deux heures, deux heures et demie."
  [
    /\b(\d+(?:\.\d+)?) ?(minutes?|heures?|jours?|semaines?|mois|ans?), (?:ou |meme |peut etre |disons |allez )?(\d+(?:\.\d+)?) \2\b(?! et)/g,
    '$1 ou $3 $2',
  ],
  [/\b(\d+) ?(?:h|heures?) et (?:des poussieres|quelques?|un peu)\b/g, '$1 heures 30 minutes'],
  [
    /\b(\d+) ?(?:kgs?|kilos?|k) (?:et )?(\d)\b(?![\d.]| ?(?:h|mois|ans?|g|grammes?|semaines?|jours?|livres?|lbs?|ou)\b)/g,
    '$1.$2 kg',
  ],
  // "37 kilos 70" is 37.70.
  [
    /\b(\d+) ?(?:kgs?|kilos?) (\d0)\b(?![\d.:/]| ?(?:h|mois|ans?|g|gr|grammes?|semaines?|jours?|livres?|lbs?|ou|a)\b)/g,
    '$1.$2 kg',
  ],
  [/(?<=\b(?:fievre|temperature|temp)\D{0,20})\b(3[5-9]|4[0-2]) (\d)\b/g, '$1.$2'],
  [/\b(3[5-9]|4[0-2]) (\d) (?=de (?:fievre|temp)|degres?)/g, '$1.$2 '],
];
