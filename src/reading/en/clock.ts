/** English for clock times and for parts of the day. */
import type { ClockForm, DayPart } from '../clock.ts';

const half =
  '(?: ?([ap])\\.? ?m?\\.?(?![a-z])| in the (morning|afternoon|evening)| at (night)| (tonight|this morning|this afternoon|this evening))?';

function halfOf(match: RegExpMatchArray, from: number): string | undefined {
  const [short, part, night, now] = [match[from], match[from + 1], match[from + 2], match[from + 3]];
  if (short) return short;
  const named = part ?? now;
  if (named) return named.includes('morning') ? 'a' : 'p';
  if (!night) return undefined;
  const hour = Number(match[1]);
  return hour === 12 || hour < 5 ? 'a' : 'p';
}

/** Longest forms first; what one has read the next no longer sees. */
export const clockForms: readonly ClockForm[] = [
  {
    pattern:
      /\b(half|quarter|5|10|20|25)(?: mins?| minutes?)? (past|after|to|till|til|before) (?:12 ?)?mid ?nig?h?te?\b/g,
    read: (m) => {
      const minutes = m[1] === 'half' ? 30 : m[1] === 'quarter' ? 15 : Number(m[1]);
      return m[2] === 'past' || m[2] === 'after' ? { hour: 0, minute: minutes } : { hour: 23, minute: 60 - minutes };
    },
  },
  { pattern: /\b(?:12 ?)?mid ?nig?h?te?\b/g, read: () => ({ hour: 0, minute: 0 }) },
  { pattern: /\b(?:noon|midday|12 ?noon)\b/g, read: () => ({ hour: 12, minute: 0, half: 'p' }) },
  {
    // "Ten forty five".
    pattern: new RegExp(
      `(?:^|\\b(?=(?:so|maybe|around|about|like|at) (?:maybe |about |around |like )?\\d))(?:(?:its|it was|at|around|about|bout|like|maybe|probably|say|i think|so) )*(\\d{1,2}) ([0-5]\\d)(?! ?(?:[-/.:\\d]|min|hour|hr|sec|day|week|wk|month|mo\\b|kg|lb))${half}`,
      'g',
    ),
    read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]), half: halfOf(['', m[1] ?? '', ...m.slice(3)], 2) }),
  },
  {
    pattern: new RegExp(
      `(?<![\\d.] ?(?:and )?(?:a )?)\\bhalf (?:past )?(\\d{1,2})(?! ?(?:an?|min|hour|hr|sec|day|week|month|year|kg|lb|[./:\\d]))${half}`,
      'g',
    ),
    read: (m) => ({ hour: Number(m[1]), minute: 30, half: halfOf(m, 2) }),
  },
  {
    // British: half ten is half past ten.
    pattern: new RegExp(`\\bhalf (\\d{1,2})(?![\\d.:]| ?(?:hour|hr|min|kg|kilo|lb|pound|st))${half}`, 'g'),
    read: (m) => ({ hour: Number(m[1]), minute: 30, half: halfOf(m, 2) }),
  },
  {
    pattern: new RegExp(`\\b(?:a )?quarter (?:past|after) (\\d{1,2})${half}`, 'g'),
    read: (m) => ({ hour: Number(m[1]), minute: 15, half: halfOf(m, 2) }),
  },
  {
    pattern: new RegExp(`\\b(?:a )?quarter (?:to|till|til|of) (\\d{1,2})${half}`, 'g'),
    read: (m) => ({ hour: Number(m[1]) === 1 ? 12 : Number(m[1]) - 1, minute: 45, half: halfOf(m, 2) }),
  },
  {
    pattern: new RegExp(
      `\\b(5|10|20|25) (?:mins? |minutes? )?(?:past|after) (\\d{1,2})(?! ?(?:min|hour|hr))${half}`,
      'g',
    ),
    read: (m) => ({ hour: Number(m[2]), minute: Number(m[1]), half: halfOf(m, 3) }),
  },
  {
    pattern: new RegExp(
      `\\b(5|10|20|25) (?:mins? |minutes? )?(?:to|till|til) (\\d{1,2})(?! ?(?:min|hour|hr|or|-))${half}`,
      'g',
    ),
    read: (m) => ({ hour: Number(m[2]) === 1 ? 12 : Number(m[2]) - 1, minute: 60 - Number(m[1]), half: halfOf(m, 3) }),
  },
  {
    pattern: new RegExp(`\\b(\\d{1,2})[:.]([0-5]\\d)(?!\\d)(?! ?(?:kg|kilos?|lbs?|ph|hours?|hrs?|min))${half}`, 'g'),
    read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]), half: halfOf(m, 3) }),
  },
  {
    pattern: /\b(\d{1,2}) ?([ap])\.? ?m\b\.?|\b(\d{1,2})([ap])\b/g,
    read: (m) => ({ hour: Number(m[1] ?? m[3]), minute: 0, half: m[2] ?? m[4] }),
  },
  {
    pattern: new RegExp(`\\b(\\d{1,2}) ?(?:oclock|o clock)${half}`, 'g'),
    read: (m) => ({ hour: Number(m[1]), minute: 0, half: halfOf(m, 2) }),
  },
  {
    pattern:
      /\b(\d{1,2})(?: in the (morning|afternoon|evening)| at (night)| (tonight|this (?:morning|afternoon|evening)))/g,
    read: (m) => ({ hour: Number(m[1]), minute: 0, half: halfOf(['', m[1] ?? '', '', ...m.slice(2)], 2) }),
  },
  { pattern: /\b(\d{1,2})(?= last night\b)/g, read: (m) => ({ hour: Number(m[1]), minute: 0 }) },
  {
    pattern: /\b(\d{1,2})([0-5]\d) ?([ap])\.? ?m\b/g,
    read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]), half: m[3] }),
  },
  {
    pattern: /^([01]?\d|2[0-3])([0-5]\d)$/g,
    read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]) }),
  },
  {
    pattern:
      /\b(?:at|around|round|about|bout|approx\w*|circa|by|since|till|until|said|maybe|probably|like|or|was|think|after|before) ?([01]?\d|2[0-3])([0-5]\d)\b(?! ?(?:g|grams?|mls?|cc|kg|lbs?|of)\b)(?<!\b(?:in|of|since|or|by|about|around|before|after|was|until|till|maybe|like|think|said|circa|probably) ?20[0-5]\d)/g,
    read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]) }),
  },
  {
    pattern: new RegExp(
      `\\b(?:at|gone|around|round|about|bout|more like|nearer|closer to|by|since|till|until|between|and|or|to|before|after|night|evening|morning|afternoon)(?: (?:at|about|around|like|maybe))? (\\d{1,2})(?![\\d.:/])(?! ?(?:-?(?:min|hour|hr|day|week|wk|month|mo|year|yr|sec|kg|lb|kilo|pound|ml|cc|cm|mm|times?|tries|x|%|inch|\\"|strips?|of|drops?|st|nd|rd|th|old|or \\d+ (?:min|hour))))${half}`,
      'g',
    ),
    read: (m) => ({ hour: Number(m[1]), minute: 0, half: halfOf(m, 2) }),
  },
];

/** Parts of the day with the hour they begin (common usage); the earlier end counts. `daysAgo` is by today. */
export const dayParts: readonly DayPart[] = [
  { pattern: /\b(?:night|evening) before last\b|\bevening before yesterday\b/, hour: 18, daysAgo: 2 },
  { pattern: /\bday before yesterday\b/, hour: 0, daysAgo: 2 },
  { pattern: /\b(?:tea ?time yesterday|yesterday (?:at )?tea ?time)\b/, hour: 15, daysAgo: 1 },
  {
    pattern: /\b(?:(?:dinner|supper) ?time yesterday|yesterday (?:at )?(?:dinner|supper) ?time)\b/,
    hour: 12,
    daysAgo: 1,
  },
  { pattern: /\byesterday morning\b/, hour: 6, daysAgo: 1 },
  { pattern: /\byesterday afternoon\b/, hour: 12, daysAgo: 1 },
  { pattern: /\b(?:last night|yesterday (?:evening|night))\b/, hour: 18, daysAgo: 1 },
  { pattern: /\byesterday\b/, hour: 0, daysAgo: 1 },
  { pattern: /\bthis afternoon\b/, hour: 12, daysAgo: 0 },
  { pattern: /\b(?:this evening|tonight)\b/, hour: 17, daysAgo: 0 },
  { pattern: /\b(?:this morning|today)\b/, hour: 0, daysAgo: 0 },
];

export const lastNight = /\blast night\b/;
export const yesterday = /\byesterday\b/;
export const beforeYesterday = /\b(?:night|evening|day) before (?:last|yesterday)\b/;
export const justNowFirm =
  /\b(?:just (?:now|happened|came|fell|popped|pulled|this (?:minute|second))(?! (?:(?:it|right|straight|back|the \w+|nicely|easily) )*in\b)|(?:a )?(?:few )?(?:seconds?|moments?|sec) ago|this (?:very )?(?:minute|second|moment))\b/;
export const justNow =
  /\b(?:just (?:now|happened|came|fell|popped|pulled|this (?:minute|second))|(?:out|happened|off) (?:right |just )?now|(?:a )?(?:few )?(?:seconds?|moments?|sec) ago|this (?:very )?(?:minute|second|moment)|(?<=^|\b(?:only|just|literally|like|mere|happened|out|off|it|now|yes|ok|few),? )minutes ago|(?:right |just |literally |only )before i (?:texted|messaged|wrote|contacted|called|text|msgd|started texting))\b|^(?:(?:right|just|like|literally|only|ok|um|well) )*now(?: now)?$/;
/** Some time ago, nobody knows how long. */
export const aWhile = /\ba (?:(?:little|good|short) )?(?:while|bit) (?:ago|back)\b/;
/** Minutes as likely as an hour, where that hour is long past. */
export const hourOrMinutes = /^(?:about|bout|like|around|roughly) \d{1,2}$/;
/** "Before midnight" has no earlier end. */
export const beforeTime =
  /\b(?:before|sometime before|earlier than)(?: like| about| around)? (?:midnight|noon|\d{1,2}(?!\d|\.\d| ?(?:m|hour|hr|sec|day)))/;
/** A number alone. */
export const bareTime =
  /^(?:(?:like|about|around|bout|maybe|its|it was|say|probably|roughly|approx|um|uh|ok|so|think|thinking) )*(\d{1,2})$/;
