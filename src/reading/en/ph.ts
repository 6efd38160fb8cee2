/** English around the number on a pH strip. */
/** Between the two ends of a range, and what may stand before and after. */
export const beforeJoin =
  '(?:ish ?)?(?:,? ?(?:to me|for me|i think|i reckon|i guess|id say|i would say|(?:he|she) (?:says|said|reckons|thinks)|(?:husband|wife|hubby|partner) (?:says|reckons|thinks)) ?)?';
export const join =
  ',? ?\\b(?:(?:but|or|though|although) (?:it )?(?:could|might|may) (?:(?:well|also|even|easily|just) )*be|(?:but|and|though|or) (?:my |the )?(?:husband|wife|hubby|partner|mum|mom|dad|mother|sister|nurse|he|she|other half) (?:says?|said|thinks?|reckons?|sees?)|possibly|could be|might be|may be|but (?:could|might|may) be|or even|or maybe)\\b|,? ?\\bor\\b|\\bto\\b|\\band\\b|,? ?\\bmaybe\\b(?: even| its| it is)?|-|/|~|(?<=\\d )(?=\\d\\.\\d)|\\bthrough\\b|,? ?\\b(?:and |but )?(?:the |my )?(?:other|one|1)(?: (?:one|1|square|box|bit|side|half|patch))? (?:says|is|reads|looks(?: like)?|shows|at)\\b';
export const afterJoin =
  '(?:maybe |a |like |about |the |number )?(?:(?:a )?(?:lil|little|bit|tad|just|touch|hair|smidge|slightly) )?(?:under |below |shy of |near |close to )?(?:the |a |number )?';
export const above =
  '>=?|\\+|(?<!\\b(?:not|no|isnt|doesnt|wasnt|never)(?: \\w+)? )\\b(?:over|above|higher than|more than|greater than|at least|past)\\b';
export const orAbove =
  '\\+|(?:or|and) (?:over|above|higher|more|up|greater|something|some|change|(?:a )?(?:bit|little|tad|touch|fraction))\\b|plus\\b|(?:point )?(?:something|odd)\\b';
export const below =
  '<=?|\\b(?:under|below|less than|lower than|at most|no more than|no higher than|(?:not|isnt|wasnt)(?: any)? (?:more than|higher than|over|above|greater than)|up to|almost|nearly|not quite|just under)\\b';
export const orBelow = '(?:or|and) (?:under|below|lower|less|down)\\b';
export const slightlyAbove =
  '\\b(?:just|slightly|a (?:little|bit|tad|hair)(?: bit)?|little|bit) (?:over|above|more than|higher than|past)\\b';

/** Numbers that belong to something else: amounts, times, counts, lengths, "out of 14", "not 5". */
export const otherNumbers: readonly RegExp[] = [
  /\b(?:\w+er|more|less) than (?:the |a )?\d+(?:\.\d+)?(?=,? (?:but |its |it is |so )*(?:more like|closer to|nearer))/g,
  /\b\d+(?:\.\d+)? ?(?:ml|mls|cc|ccs|oz|ounces?|kg|kgs|lbs?|pounds?|cm|inch\w*|minutes?|mins?|hours?|hrs?|seconds|secs|days?|weeks?|strips?|nurses?|people|of us|adults|carers?|staff|doctors?|grown ?ups|of them|different|separate|checks?|squares|boxes|tries|try|times|am|pm|percent|%|fr|drops?|x)\b/g,
  /\b\d+(?:\.\d+)? ?(?:square|box)\b(?<!\b(?:number|no|nr|the|ph) ?\d{1,2}(?:\.\d)? ?\w{3,6})/g,
  /\b\d{1,2}:\d{2}(?: ?[ap]m)?\b/g,
  /\b\d{1,2} ?(?:o ?clock|st|nd|rd|th)\b/g,
  /\b(?:temp|temperature|fever) (?:is |of |was )?\d+(?:\.\d+)?\b/g,
  /\b[01] ?(?:-|to) ?14\b/g,
  /\b(?:step|option|question|try|attempt) \d+\b/g,
  /\b(?:out of|of|at) 14\b/g,
  /\bat \d{1,2}(?= ?(?:$|[,.!]))/g,
  /\b(?:not|isnt|wasnt|nto|cant be|couldnt be|doesnt (?:say|read|look like|match)|didnt (?:say|read)|dont think its) (?:a )?\d+(?:\.\d+)?\b/g,
];

export const unsure =
  /\b(?:not sure|unsure|cant (?:really )?tell|dont know|no idea|hard to (?:tell|say|read)|not certain|guess(?:ing)?)\b/;
/** Doubt about the strip, the light, or what was dipped: no number counts beside it. */
export const doubtful =
  /\b(?:expired?|out of date|outdated|old (?:strips?|paper|pack|1s?)|(?:strips?|paper|pack|they|box|it) (?:is|are|s|was|were|look\w*|might be|may be|could be)? ?(?:really |very |quite |kind of |a bit )?(?:old|past|wet|damp|torn|dirty|ripped|faded|faint)|got wet|spit|saliva|drool|slobber|(?:flush|tap|rinse)\w* water|(?:light|lighting) is|bad light|(?:its |really |so |too )?dark in here|still (?:changing|turning|moving|drying|wet)|(?:keeps?|kept) changing|dropped (?:it|the strip)|(?:on|off|touched) the floor|dont trust|cant be right|seems? (?:off|wrong|weird|odd)|looks? (?:off|wrong|weird|odd)|did(?:nt| not) (?:do|dip) it right|colou?r ?blind|without (?:my )?glasses|wrong (?:side|strips?|paper|kind)|mixed with|(?:he|she|husband|wife|partner|mum|mom|dad) (?:says?|thinks?|said) (?:no|not|its wrong))\b/;
export const unreadable =
  /\b(?:cant (?:really )?(?:tell|read|see|make)|unreadable|illegible|hard to (?:tell|say|read)|not clear|unclear|not sure|dont know|no idea|blurry|didnt change|no change|doesnt (?:change|match)|between)\b/g;
export const colours =
  /\b(?:\w*(?:green|yellow|orange|red|blue|purple|brown|tan|pink|gr[ae]y)\w*|colou?r\w*|dark|light)\b/g;

export const misread =
  /\b(?:sorry|misread|mis read|read (?:it|that) wrong|lied|(?:might|could|may) have been|couldnt (?:really )?(?:see|tell|read)|wrong row|actually|mistake|wrong|meant|correction|should be|should have been|looked again|typo|oops|not \d)\b/;
/** A reading looked at again, by whoever. */
export const readAgain =
  /\b(?:more like|(?:it|strip|he|she|wife|husband|mom|mum|dad) (?:now )?says|(?:checked|check)|looked|looking|look again|scratch that|changed|darker|lighter|closer to|turned)\b/;
export const namesPh = /\bph\b/;
/** A number of something else than a strip. */
export const otherNumber =
  /\d ?(?:kgs?|kilos?|lbs?|pounds?|mls?|cc|am|pm|weeks?|days?|months?|years?|hours?|hrs?|minutes?|mins?|oz|degrees|f|%)\b|\d:\d\d|\b(?:fill\w*|balloon|water|syringe|flush\w*|step)\b/;
export const aboutStrip = /\b(?:ph|strip|strips|reading|misread|mis read|read|reads|paper)\b/;
export const notThat =
  /\b(?:not|instead of|rather than|isnt|wasnt|said|wrote|put|typed) (?:a )?(?:ph )?\d+(?:\.\d+)?\b/g;

/** Words that open a range: a slip of one of them beside a number could hide that the reading is higher. */
export const openWords: readonly string[] = [
  'over',
  'above',
  'more',
  'higher',
  'greater',
  'least',
  'past',
  'between',
  'than',
];
export const openLookalikes: ReadonlySet<string> = new Set(
  'ever very oven other mare move mode most pore core bore sore wore about abode hire higher lease last list pass paste part path pasta then thank that thin fast mast cast'.split(
    ' ',
  ),
);
/** What is left of "more than" and "at least" where their first word was not read. */
export const comparing = /\b(?:than(?! (?:me|mine|i|my|us|ours|you|him|her|his|hers)\b)|least)\b|\bat \w{3,5} \d/;
/** Words that may stand beside a number which is nothing but a reading. */
export const readingWords: ReadonlySet<string> = new Set(
  'its it is the ph strip paper says say reads read reading shows showing about around like a looks got at or to between and maybe'.split(
    ' ',
  ),
);
