/** English words that bind: contractions, units of time, and where a statement ends. */
import type { Marks } from '../clean.ts';
import type { TimeUnit } from '../durations.ts';
import type { Rewrite } from '../numbers.ts';

/** Apostrophes are gone already; these make "is not", "cannot" and "it is" one word each. */
export const contractions: readonly Rewrite[] = [
  [/\bc\/o\b/g, 'complaints of'],
  // Marks as a telephone takes them down.
  [/ (?:comma|semi ?colon)(?= |$)/g, ','],
  [
    /(?<=[a-z\d]) (?:period|full stop|fullstop)(?= ?[.,]? ?$| (?:i|we|she|he|it|its|hes|shes|they|the|no|yes|ok|and|so|tube|taped|im|my)\b)/g,
    '.',
  ],
  [/ (?:question mark)(?= |$)/g, '?'],
  [/ (?:exclamation (?:mark|point))(?= |$)/g, '!'],
  [/\b(thir|four|fif|six|seven|eigh|nine)t?[- ]teen\b/g, '$1teen'],
  [/\b(?:nite|nyt|nyte|nght)\b/g, 'night'],
  [/\b(?:2night|2nite|tonite|tnite|2nyt)\b/g, 'tonight'],
  [/\b(?:2day|tday)\b/g, 'today'],
  [/\b(?:yest|ystday|ystrday|yestrday|yday|yesty)\b/g, 'yesterday'],
  [
    /\b(she|he|it|baby) (?:no|not) (?=(?:breathe?|wake|move|eat|open|respond|react|look|stop|cry|drink|go|come)\b)/g,
    '$1 doesnt ',
  ],
  [/\bnon-(?=[a-z])/g, 'non '],
  // How often belongs to what was said before it.
  [
    /,(?= (?:(?:like|about|now|its|thats|at least|maybe) )*(?:(?:\d+|two|three|four|five|six|several|a few|many|loads of|lots of) times|twice|over and over|again and again)\b)/g,
    '',
  ],
  // "GJ, it was a G before": what it was is not what it is.
  [
    /\b(?:it |he |she )?(?:was|had|used to (?:be|have)) (?:just )?(?:a |an |the )?(?:g|j|gj)(?:[ -]?tube)?,? (?:before|previously|originally)(?: (?:that|this|then|now))?\b/g,
    ' ',
  ],
  // "Placed 8 days ago came out": two statements.
  [
    /\b(placed|put in|inserted|surgery|operation)((?: \w+){0,3} (?:days?|weeks?|months?|years?) ago)(?=,? (?:(?:and|but|it|the|now|tube|just|has) ){0,3}(?:came|come|fell|fallen|popped|pulled|slipped|out|is out)\b)/g,
    '$1$2.',
  ],
  // Scots: "nae bother", "cannae get it".
  [/\bnae (?=(?:bother|problem|probs?|danger|issues?|worries|trouble|pain|blood|fever|kit|strips)\b)/g, 'no '],
  [/\b(?:cannae|canna|cannot ae)\b/g, 'cant'],
  [/\b(do|did|does|has|have|is|was|would|could|wo|should)(?:nae|nnae)\b/g, '$1nt'],
  [/\bhour (?:and|n) half\b/g, 'hour and a half'],
  [/\b(?:bang|dead|smack) on (?=\d)/g, 'at '],
  [/\bment\b/g, 'meant'],
  // "Twenty odd minutes" are more than twenty.
  [/\b(\d+|ten|twenty|thirty|forty|fifty|sixty)(?: |-)(?:odd|something|some) (?=(?:min|hour|hr))/g, 'more than $1 '],
  [/\b(\d+|ten|twenty|thirty|forty|fifty|sixty)(?: |-)odd (?=(?:day|week|wk|month|year|yr))/g, 'about $1 '],
  // "No no pain": said twice, meant once.
  [/^(no|nope|nah) (?=no \w)/g, '$1, '],
  [/\btub(?:ey|ie|y)(s?)\b(?! (?:custard|toast))/g, 'tube$1'],
  [/\b(?:toob|tueb|tuube|tubbe|choob|chube|toub)(s?)\b/g, 'tube$1'],
  [/\b(?:b4|befor|befo)\b/g, 'before'],
  [/\b(?:txted|txtd|texed|txed)\b/g, 'texted'],
  // "He's find, just hungry."
  [
    /\b(hes|shes|he is|she is|its|im|were|doing|all|totally|perfectly) find(?= ?(?:$|[.,!]|(?:just|but|and|thanks|thank|though|no|now|xx?)\b))/g,
    '$1 fine',
  ],
  // "It's burst, the balloon."
  [
    /\b(burst|popped|bust|busted|ripped|torn|leaking|flat|split), (?=(?:the |its |her |his )?balloon\b ?(?:$|[.,!]))/g,
    '$1 ',
  ],
  [/\bno ting\b/g, 'nothing'],
  [/\bdat\b/g, 'that'],
  [/\bdis\b/g, 'this'],
  // Nigerian and Cameroonian Pidgin.
  [/\bno dey\b/g, 'isnt'],
  [/\b(she|he|it|we|they|pikin|baby|him|everything|body) dey\b/g, '$1 is'],
  [/\b(?:nuttin|nuffin|nuthin|nuffink|nothin|nuthing|nufin|nufing|nothng|nothign)\b/g, 'nothing'],
  [/\bnun (?=of\b)/g, 'none '],
  [/\b(?:rember|remeber|rememeber|rmember|remmeber|remeber|remembr|rembr)\b/g, 'remember'],
  [/\bmite (?=(?:of|have|be|a)\b)/g, 'might '],
  // "Keeps a-coming".
  [/\ba[ -](?=(?:com|bleed|leak|scream|puk|go|runn|pour|ooz|drip|gush|cry|spurt|throw)in)/g, ''],
  [/\bcan ?not\b/g, 'cant'],
  [/\bwill not\b/g, 'wont'],
  [/\b(is|are|was|were|do|does|did|has|have|had|would|could|should) not\b/g, '$1nt'],
  [/\b(is|are|was|were|do|does|did|has|have|had|would|could|should|ca|wo) ?n t\b/g, '$1nt'],
  [/\b(?:dnt|dosnt|doesnt|does nt)\b/g, 'doesnt'],
  [/\b(?:havnt|havent|havenot)\b/g, 'havent'],
  [/\b(it|she|he|that|there|what|who) is\b/g, '$1s'],
  [/\bi am\b/g, 'im'],
  [/\baint\b/g, 'isnt'],
  [
    /\b(\w*(?:com|stopp|bleed|puk|throw|breath|leak|push|vomit|pour|runn|keep|gett|go|cry|scream|sleep|chok|drip|twitch|jerk|shak|drool|gasp|wheez|gagg|moan|swell|ooz|gush|burn|pant|grunt|foam|shiver|convuls|seiz))in\b/g,
    '$1ing',
  ],
  [/\ban (?=(?:it|he|she|i|they|now|its|hes|shes|a|the)\b)/g, 'and '],
  [
    /\b(morn|even|noth|someth|anyth|everyth|do|be|hav|mak|look|feel|eat|drink|try|wait|leav|driv|call|ring|talk|sitt?|stand|lay|play|work|us|hold|putt|tap|stick|fall|slipp|slid|hang|wash|text|ask|tell|say|think|fill|test|check|spitt|turn|chang|act|hurt|open|clos|bring|fix|suck|pull|draw|aspirat|feed|liv|giv|show|read|teach|miss|squirt|spray|squeez|shov|forc|twist|wiggl|budg|danc|smil|laugh|giggl|settl|kick|sweat|twitch)in\b/g,
    '$1ing',
  ],
  // Said before "no" or "nah", "yeah" only takes it up.
  [
    /\b(?:yeah|yea|yeh|ya|yah),? (?=(?:no|nah|naw),? (?:nothing|none|not|nope|zip|nada|air|dry|empty|its (?:dry|empty)|(?:\w+ )?(?:dont|didnt|doesnt|hasnt|havent|wont|cant|couldnt|never))\b)/g,
    ' ',
  ],
  // Between words it is no no: "red n swollen".
  [/(?<=[a-z]{2} )n (?=[a-z]{2}|i )(?!sure)/g, 'and '],
  [/(?<=\b(?:we|they|you|u) )r\b/g, 'are'],
  [/\bon r way\b/g, 'on our way'],
  [/\brite\b/g, 'right'],
  [/\bstil\b/g, 'still'],
  [/\bem\b/g, 'them'],
  [/\ba and e\b/g, 'er'],
  [/\bw\/o\b/g, 'without'],
  [/\bw\/ ?/g, 'with '],
  [/\ba ?lot\b/g, 'a lot'],
  [/\bno(?:[- ]|(?=one\b))one\b/g, 'nobody'],
  [/\b(\w+) dont (breathe?|wake|move|have|look|feel|seem)\b/g, '$1 doesnt $2'],
  [/\bi doesnt\b/g, 'i dont'],
  [/\b(we|they|you) doesnt\b/g, '$1 dont'],
  [/\bi dunno\b|\bdunno\b|\bidk\b|\bdont no\b/g, 'dont know'],
];

/** What stands for a thumb up, a thumb down and a shrug, and for an apostrophe. */
export const marks: Marks = { yes: ' yes ', no: ' no ', unsure: ' not sure ', and: ' and ', apostrophe: '' };

/** What people type for a unit of time. "m" is left out: minutes, months and metres share it. */
export const timeUnits: Readonly<Record<TimeUnit, string>> = {
  second: 'seconds?|secs?',
  minute: 'minutes?|minuets?|minuts?|mins?',
  hour: 'hours?|hrs?|hr',
  day: 'days?',
  week: 'weeks?|wks?|wk|weaks?',
  month: 'months?|mnths?|mths?|mos?',
  year: 'years?|yrs?|yr',
};

/** Where one statement ends: at a mark, "but", "and", "then"; never inside a number or a range of numbers. */
export const clauseEnd = /[;!?]|[.,](?!\d)|\bbut\b|\bthen\b|\band\b(?! ?(?:a )?\d)/;
