/** English yes, no, and the many ways of being unsure. Tried in the order: neutral, unsure, no, yes. */
import { trouble } from './trouble.ts';

/** Sounds like yes or no and is neither. */
export const neutral = new RegExp(
  `\\b(?:(?:didnt|never|hardly|barely|doesnt) even|didnt) (?:wake|flinch|cry|notice|stir|complain|blink)(?: up)?\\b|\\b(?:i |we )?(?:dont|didnt|do not|cant|cannot) (?:really |quite )?(?:understand|follow|get it(?= ?(?:$|[.,!?])))\\b|\\b(?:that|it|this|my answer) (?:was|is) (?:wrong|a mistake)\\b|\\bwithout (?:a |any |much |too much )?(?:\\w+ )?(?:symptoms?|distress|forc\\w+|push\\w*|${trouble})\\b|\\b(?:no|0|zero|nil) (?:real |big |major )?(?:cap|lie|kidding|joke|doubt|matter|complaints?|${trouble})(?: at all| whatsoever)?\\b|\\b(?:pressed|hit|sent|typed|picked|chose|tapped|put) (?:the |a )?wrong(?: \\w+)?\\b|\\bthe wrong (?:end|side|way|hand|bit|part)\\b|\\bnot (?:a problem|bad|a drop (?:spill\\w*|spilt|leak\\w*|wasted|lost|out)|a peep|a whimper|a bother|a hitch|a sound|a squeak|a thing wrong)\\b|\\bnothing (?:leak\\w*|spill\\w*|spilt|came (?:back|out|up)|c(?:a|o)ming (?:back|out|up)|out of the ordinary|to report|wrong|bad|strange|unusual)\\b|\\bnever (?:flinched|moved|noticed|made a (?:sound|peep)|batted an eye\\w*|stirred|complained)\\b|\\blike nothing (?:had |has )?(?:ever )?happened\\b|\\bcant wait\\b|\\bnot my first (?:rodeo|time)\\b|\\bno need to (?:panic|worry|rush|be scared|shout|call|come|stress|fret)\\b|\\b(?:dont|do not) (?:panic|worry|fret|stress)\\b|\\byes maam\\b(?=.*\\byes\\b)`,
  'g',
);

/** Beside an answer, and none: a wish not to, a child who will not lie still, a thing that will not open. */
export const aside =
  /(?:^|[.,;!?] ?)dont (?:really )?(?:want|wanna|like)\b|\bif (?:i|we) dont (?:need|have|want)\b|\b(?:(?:i|we)(?: really| just| still)* (?:dont|didnt|wouldnt) (?:really |even )?(?:want|wanna|wish|like|dare|feel|fancy|mean|trust)|(?:i|we) (?:cant|couldnt) (?:bear|bring|face|stand)|(?:im|were|i am|we are|me) (?:\w+ )?not (?:\w+ )?(?:comfortable|confident|happy|keen|brave|a nurse|ready|good at)|(?:shes|hes|she|he|baby) (?:wont|isnt|doesnt|cant|not|didnt) (?:\w+ )?(?:lie|lying|stay|staying|sit|sitting|hold|holding|keep|keeping|let|letting|settle|settling|cooperat\w*|happy|impressed|like|still|sleep\w*)|(?:syringes?|pack(?:et|age|aging)?s?|wrapper|cap|lid|lube|jelly|gel|gloves?|bottle|torch|phone|light|lights|clamp|plunger|connector|adaptor|adapter|clip|zip(?! ?-?(?:bags?|lo[ck]\w*|ups?|pouch|ties?|tied|case|top|baggie)\b)|bag|cupboard|door) (?:\w+ )?(?:wont|doesnt|isnt|not|didnt|cant|wasnt)(?: be)?|(?:wont|cant|couldnt) (?:open|undo|unscrew|find|work|get) (?:\w+ )?(?:the |this |my )?(?:syringes?|pack(?:et|age|aging)?|wrapper|cap|lid|lube|jelly|gel|gloves?|bottle|torch|light|clamp|plunger|connector|adaptor|adapter|clip|glasses|phone)(?: open)?)\b/g;

export const unsure =
  /\b(?:(?:im |am )?(?:not|nt|nto) (?:really |so |too |very |completely |100 ?% ?|totally |entirely |exactly )?(?:sure|certain|positive)|n\w{0,3} (?:\w+ )?sure|o[nt]{1,2} sure|unsure|uncertain|(?:do ?nt|dont|doesnt|didnt) (?:really |even )?(?:know|remember|recall|think so|have a clue)|not that (?:i|we|im|i am|were) (?:know|aware|can think)|that (?:i|we) know of|not (?:to my|as far as)|(?:as )?far as (?:i know|im aware|i am aware|i can see|we know)|afaik|(?:may|might|could|mite|mightve|might of) (?:have|of|know|be)|no (?:idea|clue)|not a (?:clue|scooby|notion)|ask (?:her|his|my|our|the) (?:mum|mom|dad|mother|father|wife|husband|nan|gran|sister|nurse|partner)|(?:havent|hasnt) (?:got )?(?:an?|the|any) (?:clue|notion|foggiest|scooby|idea)|beats me|search me|(?:god|lord|goodness) knows|who knows|maybe|mabye|perhaps|possibly|probably|prolly|prob|might|may be|i (?:dont )?(?:think|thin|thing|hink|tink|thik)|thinks? so|think|thought so|i guess|guess so|guess|guessing|suppose(?! to\b)|supposedly|i hope|hope so|hopefully|hoping|i believe|pretty sure|fairly sure|almost sure|(?<!\b(?:as|how|what|where|way) (?:it|they|that) )should be|kind of|kinda|sort of|sorta|sometimes|cant (?:really )?(?:tell|say|remember)|hard to (?:tell|say|know)|couldnt (?:tell|say)|seems?(?! (?:(?:totally|completely|perfectly|pretty|quite|very|really|absolutely|all|just|so|absolutely) ){0,2}(?:himself|herself|calm|fine|ok|okay|good|well|happy|normal|alright|comfortable|content|calm)\b)|not exactly|not really|hard to see|cant see(?! any)|(?<!\w-)ish|half and half|so so|yes and no|more or less|depends|as far as i (?:know|can tell)|could be|wondering(?! what (?:all )?(?:the|this|all the) (?:fuss|big deal|drama|bother|commotion))|yes or no|(?:no|without a|(?:dont|didnt) (?:have|own)(?: (?:a|any|our))?|havent (?:got )?a|cant find (?:the|a|our)) (?:working )?thermometer|(?:mum|mom|dad|wife|husband|daughter|son|nurse|carer|sister|gran|nan|sitter|partner|she|he) (?:feeds|fed|does|did|gives|gave|handles|had)\b[^.!?]{0,24}\b(?:(?:not|isnt|aint|wont) (?:answer\w*|pick\w* up|reply\w*|here)|asleep|at work|gone home|cant (?:reach|get hold of) (?:him|her))|yeah right|if you say so)\b/g;

export const no =
  /\b(?:(?:definitely|defo|deffo|def|absolutely|certainly|of course|for sure|yeah) ?not|not (?:yet|at all|now|correct|right|true)|no|noo|nope|nup|nupe|nopes|nopey|nawp|naa|neg|noe|nop|nah|naw|nay|nae|nuh(?: uh)?|uh uh|negative|none|nothing|nothin|nuthin|nuffin|nowt|zilch|zippo|diddly|squat|sod all|bugger all|nada|nil|zip(?! ?-?(?:bags?|lo[ck]\w*|ups?|pouch|ties?|tied|case|top|baggie)\b)|never|neither|nor|nobody|not|n|dont|doesnt|didnt|havent|hasnt|hadnt|isnt|arent|wasnt|werent|wont|cant|couldnt|wouldnt|aint|without|nto|ont|nott|incorrect|wrong|false)\b|^(?:mo|nno|bo|ni|n0|noope|nobe|nopw|nole|nopee|nonw|nonr|noen)$/g;

export const yes =
  /\b(?:yes|yess|yees|yh|yhh|tes|yed|ues|yws|yex|yeah|yeas|yea|yep|yepp|yup|yah|ya|yeh|ye|yas|y|aye|ayup|yessir\w*|yezzir|yes ?sirree|yess?u?m|yesm|yuppers?|yepp?ers|yessum|mmhm+|uhhuh|10 ?- ?4|roger(?: that)?|copy that|you betcha?|darn right|damn right|(?:thats|its) a yes|hundred percent|100 percent|affirmative|(?:absolutely|definitely|certainly)(?= ?(?:$|[.,!]| (?:we|i|it|he|she|they|have|got|did|do|is|are)\b))|of course|for sure|correct|uh huh|mhm|mm hm|indeed|sure thing|si)\b/g;

/** No as an answer of its own; "cannot see" and "does not look" say no to something else. */
export const plainNo =
  /\b(?:(?:definitely|defo|deffo|def|absolutely|certainly|of course) not|no|noo|nope|nup|nupe|nopes|nopey|nawp|naa|neg|noe|nop|nah|naw|nay|nae|nuh uh|negative|none|nothing|nothin|nuthin|nowt|zilch|zippo|diddly|nada|nil|zip(?! ?-?(?:bags?|lo[ck]\w*|ups?|pouch|ties?|tied|case|top|baggie)\b)|not a thing|0 of (?:those|these|them|the above)|n|neither)\b|\bnot at all(?= ?$| ?[.,!]| (?:she|he|shes|hes|baby|all|its|we|thank|thanks|nurse|sir|maam|love|doc)\b)|^(?:mo|nno|bo|ni|n0|noope|nobe|nopw|nole|nopee|nonw|nonr|noen)$/g;

/** A question of theirs, not an answer. */
export const question =
  /^(?:(?:ok|okay|so|wait|um|and|but|sorry|hi|hello) )*(?:(?:do |did )?(?:you|u|ya) (?:want|need) (?:me|us) to|(?:want|need) (?:me|us) to|(?:am i|are we|im) (?:supposed|meant) to|(?:do |did )?(?:you|u|ya) mean|what about|how about|do u|do ya|did u|is that|(?:dont|didnt|arent|isnt|wont|havent|couldnt) (?:you|u|they|it) (?!worry|fret|dare)|will it|would it|wouldnt (?:it|that)|cant (?:i|we)|shouldnt (?:i|we)|should (?:i|we|she|he|it|the|there|my|her|his|u|you)|shall|is (?:it|she|he|that|this|there|the|my|her|his|a|an)|are (?:you|we|they|there|the|these)|do (?:i|you|we|they)|is \w+ (?:bad|ok|okay|normal|good|fine|wrong|right)$|is \w+ if|does|did (?:i|you|we)|can (?:i|you|u|we|it|she|he|the)|could (?:i|you|we|it)|(?:will|would) (?!call|do|ring|phone|try|be |go )|what(?! (?:we|i|we ?ve|ive|he|she) (?:have|has|got|had|see)\b)|whats|how|hows|why|where|wheres|who|which|when (?:do|does|should|can|will|would|is|are)|am i|may i|have i)\b/;

/** Means yes only when it is a whole statement of its own, so that a slip before it cannot turn it round. */
export const yesStatement =
  /^(?:sure|right|thats right|thats correct|that is right|true|exactly|(?:i|we|it|she|he|they) (?:do|did|does|are|have|has)|(?:it|she|he|they)s? (?:is|did|does)|(?:im|were) sure|all true|sure (?:is|are|do|does|did)|ues|tes|yws)$/;

/** Words before or after a statement that change nothing. */
export const filler =
  /\b(?:ok|okay|k|so|(?<!\w )well|um+|uh+|er|hi|hello|hey|please|pls|thank (?:you|u) (?:so|very) much|thanks|thank you|thank u|thx|ty|ta|cheers|tbh|haha|ha|phew|yay|btw|mate|m8|madam|love|bro|bruv|hun|hon|honey|dear|darling|darlin|boss|doc|guys|yall|lol|omg|oh|god|ma|mah|sah|sis|po|(?<=\w )(?:na|pa|naman|nga|sha|abeg)|ji|beta|duck|hen|petal|flower|sweetie|sweetheart|sugar|oga|kuya|bud|buddy|pal|fam|man|dude|chief|matey|alhamdulillah|inshallah|mashallah|praise (?:the lord|god|jesus|be)|(?:thank|thanks be to) (?:god|jesus|the lord|goodness|heavens|christ|you jesus|you lord)|by gods grace|gods grace|god willing|bless (?:her|him|his heart|her heart|you|yall)|amen|hallelujah|yessir|just|already|now|finally|here|right now|at home|with (?:me|us)|nurse|maam|sir|sorry|all right|alright)\b/g;

/** Whatever stands before the last of these was taken back. */
export const correction =
  /\b(?:(?<!\b(?:i|we|just|to|and) )wait(?! for)|hold on|hang on|i mean(?! ?[.!]*$)|i meant|(?<!\b(?:never|not|ever|\w+nt) )actually|scratch that|correction|oops|whoops|typo|sorry|my bad|make that|or rather|rather(?= (?:\d|its|it|the)\b)|my mistake|no,? (?:it |its |it was )?(?:was |is )?(?=(?:more like|nearer|closer to) (?:half |quarter )?\d))\b/g;

/** What only somebody says who corrects an answer already given. */
export const meant =
  /\b(?:(?:i|we) meant|meant to (?:say|put|type|text|write)|scratch that|make that|correction|typo)\b/;

/** A no as it stands beside words of correction: "no wait". */
export const bareNo = 'no|nope|nah';
/** What a value is set against: "7 kg, not 17", "a gj not a g". */
export const contrast =
  /(?<=\b(?:\d[\d.]*(?: ?[a-z]{1,9})?|(?:g ?-?j|g|j)(?: ?-?tube)?),? )(?:not|instead of) (?:an? |the )?(?:\d[\d.]*|g ?-?j|g|j)\b|^(?:no,? )?(?:its |it is |shes |hes |it )?(?:not|isnt|wasnt) (?:an? )?(?:\d[\d.]*|g ?-?j|g|j)\b(?=.*\b(?:\d|g|gj|j))/g;

/** Said alone these take nothing back. */
export const softCorrection = /^(?:sorry|actually|my bad)$/;

/** Short words that are no slip of "not", "think" and their kin. */
export const doubtWords: readonly string[] = [
  'dont',
  'cant',
  'wont',
  'isnt',
  'arent',
  'wasnt',
  'didnt',
  'doesnt',
  'havent',
  'hasnt',
  'never',
  'nothing',
  'none',
  'think',
  'maybe',
  'probably',
  'unsure',
  'guess',
  'hope',
  'might',
  'know',
  'idea',
];

/** Real words one letter away from them. */
export const noSlips: ReadonlySet<string> = new Set(
  'done want went cart can cat mont font wait won note nine one gone bone node nose home hole hold hop hose how rope hopes thing things thick thank thin right night tight light sight fight eight now knot known knows knew snow guest mighty has hast ever even fever area are was wash washed wants ideas ideal sure insure hint mint hang bunt aunt hunt don hope cane lope cope pope wont cant dots rent sent'.split(
    ' ',
  ),
);

/** What leads to a verdict: "so yes". */
export const conclusion = /(?<=\w,? )\bso,? (?=(?:its (?:an? )?)?(?:yes|yeah|yep|no|nope|nah)\b)/g;
/** A word of the question said again before it is answered: "kit? no". */
export const echo =
  /^(?:(?:the|a|my|any|her|his|ph|test|emergency|new) )*(?:kit|strips?|tube|balloon|button|contents|pain|blood|fever|clinic|weight|fresh blood)\?+$/;
/** A question that only asks what was meant, with or without its mark. */
export const asksMeaning =
  /^(?:(?:ok|wait|sorry|um|so|oh) )*(?:do (?:you|u|ya) mean|(?:what|wdym)(?: do(?:es)? (?:you|u|it|that))? mean|what do (?:you|u) mean)\b/;
/** Asked at the end of a statement. */
export const asksAtEnd = /,? ?\bis (?:that|this|it) (?:right|ok|okay|normal|bad|alright|safe|enough)[ ?]*$/;
