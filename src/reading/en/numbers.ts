/** English numbers in words, and how hours are joined with minutes. */
import type { Rewrite } from '../numbers.ts';
import { monthName } from './calendar.ts';
import { timeUnits } from './grammar.ts';

const smallNumbers: Readonly<Record<string, number>> = {
  zero: 0,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
};

const tens: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};

/** Any unit that turns "a" or "one" into a number: "an hour", "one kilo". */
const countedUnits = `${Object.values(timeUnits).join('|')}|kilos?|kg|pounds?|lbs?|stone|ounces?|oz|hundred|thousand|point`;

const tensWords = Object.keys(tens).join('|');
const smallWords = Object.keys(smallNumbers).join('|');

function smallNumber(word: string | undefined): number {
  if (word === undefined) return 0;
  return word === 'one' ? 1 : (smallNumbers[word] ?? 0);
}

/** What follows a hundred or a thousand; nothing is 0. */
function oneOrDigits(rest: string | undefined): number {
  if (rest === undefined) return 0;
  return rest === 'one' ? 1 : Number(rest);
}

/** "Twenty twenty five", "two thousand and four": a year, where no unit makes it a count. */
const spokenYear = new RegExp(
  `\\b(?:twenty|two thousand(?: and)?)[ -](?:(ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)|twenty(?:[ -](one|${smallWords}))?)\\b(?! ?(?:${countedUnits})\\b)`,
  'g',
);

const tillMonth = `,? ?(?:or|to|and|-|/|maybe|possibly|perhaps) ?(?:maybe |possibly )?`;

/** In this order; each sees what the one before has made. Ordinals and "one" as a pronoun stay words. */
export const rewrites: readonly Rewrite[] = [
  [spokenYear, (_, teen, small) => String(2000 + (teen ? smallNumber(teen) : 20 + smallNumber(small)))],
  [/(\d),(\d{3})(?!\d)/g, '$1$2'],
  [/(\d),(\d{1,2})(?!\d)/g, '$1.$2'],
  [
    new RegExp(`\\b(${tensWords})(?:[ -](one|${smallWords}))?\\b`, 'g'),
    (_, ten = '', small) => String((tens[ten] ?? 0) + smallNumber(small)),
  ],
  [new RegExp(`\\b(${smallWords})\\b`, 'g'), (word) => String(smallNumber(word))],
  // The last digits of a telephone number, spoken.
  [/(?<=\b\d \d \d )(?:oh|o)\b|(?<=\b\d \d )(?:oh|o)(?= \d\b)/g, '0'],
  [/(?<=^|[.,;!] ?|\b(?:about|around|like|maybe|bout) )hour ago\b/g, '1 hour ago'],
  [/\b5 and 20 (?=(?:past|to|till|til|after) \d)/g, '25 '],
  [new RegExp(`\\b(${monthName})\\.(?= ?\\d)`, 'g'), '$1'],
  // Months that share a year, in either order, and "April the 9th".
  [new RegExp(`\\b(${monthName})${tillMonth}(${monthName}),? (?:of )?((?:19|20)\\d{2})\\b`, 'g'), '$1 $3 or $2 $3'],
  [new RegExp(`\\byear (?:of )?((?:19|20)\\d{2}),? (?:in )?(?:the )?month (?:of )?(${monthName})\\b`, 'g'), '$2 $1'],
  [new RegExp(`\\b(${monthName}) the (?=\\d)`, 'g'), '$1 '],
  [/\b(\d{1,2})\.(\d{1,2})\.((?:20)?\d{2})\b/g, '$1/$2/$3'],
  [/\b(?:an?|1) fortnight\b/g, '2 weeks'],
  [/\blast month,? (?:it was |on |around |about )?(?:the )?(\d{1,2})(?:st|nd|rd|th)\b/g, '$1th of last month'],
  [/\b(\d{1,2}) fortnights\b/g, (_, count) => `${2 * Number(count)} weeks`],
  [/\bone (?=and a half|1\/2)/g, '1 '],
  [
    /(?<=\b(?:quarter|half|5|10|20|25) (?:to|past|till|til|after) |\b(?:gone|about|around|at|since|nearly) half |^half )one\b|\bone(?= (?:[0-5]\d(?! ?(?:ml|mls|cc|kg|lbs?|mins?|minutes?|mg))|oclock|o clock)\b)/g,
    '1',
  ],
  [/\b(\d+)(?: (?:and|n) a? ?(?:half|1\/2)| (?:half|1\/2))(?![a-jl-z\d])(?! (?:way|out|in)\b)/g, '$1.5'],
  [/\b(?:3 ?quarters?|3\/4) (?:of )?(?:an? |1 )?(?=hours?\b)/g, '0.75 '],
  [/(?<![\d.] |an )\bhour and a half\b/g, '1.5 hours'],
  // "0345 hrs", "16:30hrs" and "22h45" are times of the day.
  [/\b([01]\d|2[0-3])([0-5]\d) ?(?:hrs?|hours?|h)\b(?! ago)/g, '$1:$2'],
  [/\b((?:0\d|1[3-9]|2[0-3]):[0-5]\d) ?(?:hrs?|hours?|h)\b/g, '$1'],
  [/\b(1[3-9]|2[0-3]) ?h ?([0-5]\d)\b/g, '$1:$2'],
  [/(?<![:.\d]|half |\d )\b(\d+(?:\.\d+)?) ?-?ish\b/g, 'about $1'],
  // "9.kg" and "kg9".
  [/(\d)\.(?=[a-z])/g, '$1 '],
  [/(?<!\d ?)\b(kgs?|lbs?)(\d+(?:\.\d+)?)\b/g, '$2 $1'],
  [new RegExp(`\\b(?:an? )?half (?:of )?(?:an? |1 )?(?=(?:${countedUnits})\\b)`, 'g'), '0.5 '],
  [/\b(?:a )?quarter of (?:an|1) (?=hours?\b)/g, '0.25 '],
  [new RegExp(`\\b(?:an?|one|1)[ -](?=(?:${countedUnits})\\b)`, 'g'), '1 '],
  [/\b(\d{1,2}) ?h ?(\d{1,2})\b/g, '$1 hours $2 min'],
  [/\b(\d{1,2}) ?h(?= ago|$|[,.])/g, '$1 hours'],
  [/\b(\d{1,3}) ?m(?= ago)/g, '$1 min'],
  [new RegExp(`(\\d+) (${countedUnits}) (?:and|n) (?:a )?half\\b`, 'g'), '$1.5 $2'],
  [/(?<!\d[ -])\bhundred(?= and \d)/g, '1 hundred'],
  [
    /\b(\d{1,2})[ -]hundred(?:(?: and)? (\d{1,2}|one))?\b/g,
    (_, count, rest) => String(100 * Number(count) + oneOrDigits(rest)),
  ],
  [
    /\b(\d{1,3})[ -]thousand(?:,?(?: and)? (\d{1,3}|one))?\b/g,
    (_, count, rest) => String(1000 * Number(count) + oneOrDigits(rest)),
  ],
  // A day short of so many weeks.
  [
    /\b(\d{1,2}|an?) (?:weeks?|wks?) (?:ago )?tomorrow\b/g,
    (_, count = '1') => `${7 * (Number(count) || 1) - 1} days ago`,
  ],
  [/\b(\d{1,2}) (?:weeks?|wks?) (?:ago )?last (?:mon|tues|wednes|thurs|fri|satur|sun)day\b/g, '$1 weeks ago'],
  [
    /\b(\d{1,2}) (?:weeks?|wks?) (?:ago )?(?:this|next|come|this coming) (?:mon|tues|wednes|thurs|fri|satur|sun)day\b/g,
    (_, count) => `${7 * Number(count) - 6} days ago`,
  ],
  [new RegExp(`\\b(${monthName}) of ([12]\\d)\\b(?! ?\\d)`, 'g'), '$1 20$2'],
  // More than anything here can be.
  [/\b\d+[ -]\w+illion\b/g, '999999999999'],
  [/(\d) (?:point|dot) one\b/g, '$1.1'],
  [/(\d) ?(?:point|dot) (\d) (\d)\b/g, '$1.$2$3'],
  [/(\d) ?(?:point|dot) ?(\d)/g, '$1.$2'],
  [/(\d+) \.(\d)/g, '$1.$2'],
  [/(^|[ (])\.(\d)/g, '$10.$2'],
  [/\b(\d+)(?: and)?(?: 3 quarters?| 3\/4)\b/g, '$1.75'],
  [/\b(\d+)(?: and)?(?: a)? (?:quarter|1\/4)\b(?! (?:to|past)\b)/g, '$1.25'],
  [/\bcouple of\b/g, 'couple'],
  // "Just before 1" has an earlier end.
  [
    /\b(?:right|just|shortly|a bit|a little|bit) before (\d{1,2})(?= ?(?:$|[.,!]|[ap]m\b|oclock\b|(?:she|he|it|i|we|when|and|but|this|cos|because)\b))/g,
    'quarter to $1',
  ],
  // "I said 14 kg, it's 14 lb": what was said before is taken back.
  [
    /\b(?:i|we) (?:said|put|wrote|typed|sent|texted|told (?:you|u)|gave (?:you|u)) (?:(?:it was|its|shes|hes|was|about) )?\d[\d.]* ?(?:kgs?|kilos?|lbs?|pounds?|stones?|am|pm|weeks?|months?|years?|hours?|hrs?|minutes?|mins?)?,? (?:(?:but|and|sorry|no|wait),? )*(?=(?:its|it was|shes|hes|it should|should be|i meant|meant|actually)\b)/g,
    'i meant ',
  ],
  // "Autumn of 2024, October": the month is of that year.
  [
    new RegExp(
      `\\b(?:(?:early|late|mid) )?(?:spring|summer|autumn|fall|winter) (?:of |in )?((?:19|20)\\d{2}),? (?:(?:in|around|so) )?(${monthName})\\b(?! ?(?:\\d|or\\b))`,
      'g',
    ),
    '$2 $1',
  ],
  [
    new RegExp(
      `(\\d ?(?:${countedUnits})),? (?:maybe|perhaps|possibly|could be) (\\d+)(?! ?(?:${countedUnits}|[:/.\\d]))`,
      'g',
    ),
    '$1 or $2',
  ],
  // "4 hr 20" and "an hour and a bit" are longer than the hours they name.
  [/\b(\d+) ?(?:h|hrs?|hours?) (?:and )?(\d{1,2})(?![\d.:]| ?[a-z%])/g, '$1 hours $2 minutes'],
  [/\b(\d+) ?(?:h|hrs?|hours?) and a (?:bit|little)\b/g, '$1 hours 30 minutes'],
];
