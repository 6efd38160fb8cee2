/** French for clock times and for parts of the day. The numbers are written "2:30" already. */
import type { ClockForm, DayPart } from '../clock.ts';

const half =
  '(?: ?([ap])\\.? ?m?\\.?(?![a-z])| (?:du|le|ce|hier) (matin|soir)| (?:de le |cet |de la? |l )?(apres[ -]?m\\w*)| (?:de la|cette|la) (nuit))?';

function halfOf(match: RegExpMatchArray, from: number): string | undefined {
  const [short, part, afternoon, night] = [match[from], match[from + 1], match[from + 2], match[from + 3]];
  const hour = Number(match[1]);
  if (hour > 12 || hour === 0) return undefined;
  if (short) return short;
  if (part) return part === 'matin' ? 'a' : 'p';
  if (afternoon) return 'p';
  if (!night) return undefined;
  return hour === 12 || hour < 6 ? 'a' : 'p';
}

/** Minutes after midnight or noon: a quarter, a half, or a number. */
function pastHour(word: string | undefined): number {
  if (word === 'quart') return 15;
  return word?.startsWith('demi') ? 30 : Number(word);
}

/** Longest forms first; what one has read the next no longer sees. */
export const clockForms: readonly ClockForm[] = [
  {
    pattern: /\bmidi (?:et )?(quart|demie?|\d{1,2})\b(?! ?(?:h|heures?|ml|cc|fois|ou|a)\b)/g,
    read: (m) => ({ hour: 12, minute: pastHour(m[1]), half: 'p' }),
  },
  { pattern: /(?<!apres[ -])\bmidi\b/g, read: () => ({ hour: 12, minute: 0, half: 'p' }) },
  {
    pattern: new RegExp(`\\b(\\d{1,2}):([0-5]\\d)(?!\\d)${half}`, 'g'),
    read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]), half: halfOf(m, 3) }),
  },
  {
    pattern: /\b(\d{1,2}) ?([ap])\.? ?m\b\.?/g,
    read: (m) => ({ hour: Number(m[1]), minute: 0, half: m[2] }),
  },
  { pattern: /^([01]?\d|2[0-3])([0-5]\d)$/g, read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]) }) },
  {
    pattern: new RegExp(
      `\\b(?:vers|environ|autour de|jusque a|avant|apres)(?: les)? (\\d{1,2})(?![\\d.:/]| ?(?:-|min|mn|h|heure|jour|j\\b|semaine|sem\\b|mois|an|kg|kilo|livre|ml|cc|fois|%|cm|bandelettes?|ou \\d|a \\d))${half}`,
      'g',
    ),
    read: (m) => ({ hour: Number(m[1]), minute: 0, half: halfOf(m, 2) }),
  },
];

/** Parts of the day with the hour they begin (common usage); the earlier end counts. `daysAgo` is by today. */
export const dayParts: readonly DayPart[] = [
  { pattern: /\bavant[ -]hier\b/, hour: 0, daysAgo: 2 },
  { pattern: /\bhier matin\b/, hour: 6, daysAgo: 1 },
  { pattern: /\bhier (?:apres[ -]?midi|aprem|midi|apm)\b/, hour: 12, daysAgo: 1 },
  { pattern: /\bhier (?:au )?soir\b|\b(?:la )?nuit (?:derniere|passee)\b|\bveille au soir\b/, hour: 18, daysAgo: 1 },
  { pattern: /\bhier\b/, hour: 0, daysAgo: 1 },
  { pattern: /\bcet(?:te)? (?:apres[ -]?midi|aprem)\b/, hour: 12, daysAgo: 0 },
  { pattern: /\bce soir\b/, hour: 17, daysAgo: 0 },
  { pattern: /\b(?:ce matin|aujourdhui)\b/, hour: 0, daysAgo: 0 },
];

export const lastNight = /\bhier (?:au )?soir\b|\bcette nuit\b|\bnuit (?:derniere|passee)\b|\bveille au soir\b/;
export const yesterday = /(?<!avant[ -])\bhier\b/;
export const beforeYesterday = /\bavant[ -]hier\b/;
const justNowWords =
  '(?<!\\b(?:je|on) )vien(?:s|t|nent) (?:juste |tout juste )?de (?:se |le |la |me )?(?:sortir|tomber|partir|enlever|arracher|retirer|tirer|(?<!\b(?:je|on|nous) (?:viens|vient|venons) (?:juste |tout juste )?de )arriver|lacher|passer|sauter|la voir|perdre|decrocher|s)\\w*|a le instant|a linstant|al instant|y a (?:quelques )?(?:secondes?|instants?)|juste maintenant|(?<!\\b(?:finissai\\w+|terminai\\w+|venai\\w+|commencai\\w+|etai\\w+) )tout juste|tout de suite|la maintenant|a le heure meme|y a pas (?:2|une|1|5|3) (?:secondes?|minutes?)';
export const justNowFirm = new RegExp(`\\b(?:${justNowWords})\\b`);
export const justNow = new RegExp(`\\b(?:${justNowWords}|maintenant|instant|a peine)\\b`);
/** Some time ago, nobody knows how long. */
export const aWhile = /\b(?:un (?:petit |bon )?moment|tantot|tout a le? ?heure)\b/;
/** An hour is said with its unit: "vers cinq heures". */
export const hourOrMinutes = /(?!)/;
/** "Avant minuit" has no earlier end. */
export const beforeTime = /\b(?:avant|plus tot que)(?: environ)? (?:midi|\d{1,2}:\d\d)/;
/** A number alone. */
export const bareTime = /^(?:(?:vers|genre|environ|les|a|il|etait|euh|disons|dans|peut etre) )*(\d{1,2})$/;
