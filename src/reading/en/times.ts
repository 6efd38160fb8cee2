/** English for how firmly a length of time was said, and for what a moment or a date belongs to. */
import { monthName } from './calendar.ts';

/** Between the counts of one span: "2 or 3 weeks", and after its unit: "an hour or 2". */
export const spanJoin = '-|to|or|and|\\bmaybe\\b';
export const spanTail = 'or|to|-';
/** Between the parts of one span: "2 years and 3 months". */
export const spanAnd = /^,? ?(?:and )?$/;
/** What "a couple", "a few" and "several" can mean, low to high (common practice, no source). */
export const vague: Readonly<Record<string, readonly [number, number]>> = {
  couple: [2, 2],
  few: [2, 4],
  several: [3, 8],
};
/** After a span: it lies in the past. */
export const ago = /^ ago/;

/** A little more than is named. */
export const justOverBefore =
  /\b(?:a )?(?:(?:wee |little |tiny )?bit|little|tad|touch|smidge|fraction|shade|hair|just|slightly|barely|only just) (?:over|more than|past|longer than)(?: (?:a|about|the))?\s*$/;
export const atLeastBefore =
  /(?:>|\b(?:over|more than|at least|longer than|greater than|well over|past|upwards? of|north of|in excess of|no less than|not less than))(?: (?:a|about|the))?\s*$/;
export const atLeastAfter =
  /^ ?(?:\+|plus\b|or more\b|or so more\b|or longer\b|and (?:a bit|change|some)\b|at least\b)/;
export const lessBefore =
  /(?:<|\b(?:under|less than|within|not even|no more than|within the last))(?: (?:a|the|about))?\s*$/;
export const roughBefore =
  /\b(?:about|around|roughly|approx\w*|like|maybe|probably|almost|nearly|close to|somewhere|i think|think|guess|just under|not quite|say|abt|ish|bout|perhaps|or so|going on|goin on|nigh on|coming up (?:on|to)|getting on for|it was|circa)(?: (?:its|it was|been|just|like|a|about|around|maybe|it|has))*\s*$/;
export const roughAfter =
  /^ ?(?:ish\b|or so\b|give or take|roughly|maybe|i think|i guess|approx|or thereabouts|probably|more or less|about\b|on (?:mon|tues|wednes|thurs|fri|satur|sun)day)/;
export const roughAnywhere = /\b(?:not sure|dont know|not exactly|cant remember|roughly|approximately|guess|i think)\b/;

/** A child's age, not a time ago. */
export const age =
  /\b(?:(?:shes|hes|is|my|a|our|the|aged?|baby|turned|turning|almost|nearly|about|only|just) )*(\d+(?:\.\d+)?|couple|few)(?: ?(?:-|to|or) ?(\d+))?[ -]?(years?|yrs?|yr|y|months?|mos?|mths?|m|weeks?|wks?|w|days?|d)?(?: |-)?(?:old|yo|y\/o|(?<!m)o(?! ?clock))\b/g;

export const outWords =
  /\b(?:out(?<!\b(?:ma[dk]e|making|work|worked|working|figured?|figuring|find|found|finding|sort|sorted|sorting|check|checked|run|ran|running|read|sussed|rule|ruled|freaking|freaked|stressed|worn|tired|knocked|conked|eat|eating|pigged|zoned|spaced|sold|pointed|watch|look|help|helped|helping) out)|fell|fallen|falling|popped|pulled|pulling|yanked|ripped|tore|dislodged|lost (?:it|her|his|the|its)|last saw|last seen|saw it|was in|came off|slipped|expelled|missing|happened)\b/;
/** The same told beside something else, where "out" says much besides: it must be the tube that is out. */
export const toldOutWords =
  /\b(?:(?:came|come|coming|fell|fallen|falling|popped|pulled|pulling|yanked|ripped|tore|slipped|slid|knocked|tugged|wriggled|worked|coughed|spat)(?<!(?:\b|\d)(?:milk|milky|stuff|air|water|fluid|mls?|cc|some|formula|feed|teeth|tooth|tape|contents|blood|liquid|juice|more|drops?|vomit|sick|hair|dummy|pacifier|sock|drain|iv|cannula|(?<!\bwhen )(?:he|she|we|i|they)) (?:just |all |\w+ )?(?:came|come|coming|worked|slipped|coughed|spat))(?: (?:it|its|her|his|the|that|this|tube|button|peg|whole|thing|right|straight|just|itself|way|all|one|clean|completely|back)){0,4} (?:out|off)(?! of (?:the )?(?:box|bag|bin|cupboard|drawer|packet|hospital|nicu|surgery|school|bed|shower|theatre|room|car|kit))|(?:it|its|tubes?|button|peg|gj|g ?-?tube|gtube|j ?-?tube|catheter|foley|thing|one|1|this|thats|that|been)(?: (?:is|was|has|been|s|just|now|all|the|way|completely|had|still|right|fully|about|already)){0,4} out(?! (?:of|like|playing)\b)|^(?:(?:and|so|been|ok|well|just|now|yes|no|all the way) )*out(?! (?:of|like|playing|with)\b)|had it out|(?:pulled|yanked|ripped|tugged|tore|lost) (?:it|(?:the|her|his) (?:\w+ )?(?:tube|button|peg))|dislodged|expelled|came off|(?:tube|button|peg|catheter|it)(?: (?:has|had|is|was|just|got))? (?:fallen|fell|popped)\b|(?:it|this|all) (?:just |only |all )?happened)\b/;
export const toldSeenWords =
  /\b(?:last (?:saw|seen|checked)|saw it|seen it|(?:it|tube|button) was (?:(?:still|definitely|fine|ok|there|there and|fine and) )*(?:in|there|fine|ok|okay)|was still (?:in|there)|still in (?:at|when|for|during)|had it in|it in (?:at|when)|was in(?: \w+)? (?:at|when|for|during|until|till))\b/;
export const seenWords =
  /\b(?:saw|(?<!\bever )seen|it was (?:still )?(?:fine|ok|okay|there|good)|was (?:still )?in|still in|checked|there at|had it|noticed it in|looked at it)\b/;
export const foundWords =
  /\b(?:found|(?<!\bago when (?:he|she|they) )woke|wake up|noticed (?:it )?(?:was |its )?(?:out|gone|missing)|discovered|realized|realised|came home|walked in|(?:rang|called|phoned|texted|messaged|told) (?:me|us))\b/;
const illness =
  '(?:fevers?|feverish|temp|temperature|vomit\\w*|throwing up|sick|ill|unwell|poorly|cough\\w*|colds?|flu|bug|snot\\w*|runny nose|diarrh\\w*|the runs|rash|infect\\w*|antibiotics|crying|pain|constipat\\w*|teeth\\w*|ache\\w*|awake|slept|asleep|up all night|off (?:her|his) (?:food|feeds?)|hospital|discharged)';
/** How long the child has been ill is no time of the tube. */
export const illSince = new RegExp(
  `\\b${illness}(?: (?!out\\b|tube\\b|button\\b)\\w+){0,3} (?:since|for|from|all)\\b[^,.;!?]*|\\b(?:since|for) (?:\\w+ ){1,3}${illness}\\b[^,.;!?]*|(?:\\b|^)(?:[\\d.]+|an?|couple|few) ?(?:hours?|hrs?|minutes?|mins?|miles)(?: or so)? (?:from (?:home|here|there|town|the (?:hospital|house|er))|away|drive)\\b|\\b(?:nothing|anything|fed|eaten|food|bottle|milk|formula|meds?|medicine|drank|drink)(?: (?!out\\b|tube\\b|button\\b|when\\b)\\w+){0,3} (?:since|from|at|around|about)\\b[^,.;!?]*`,
  'g',
);
/** A time at which something is due, and where what is said of it ends. */
export const dueEnd = /[;!?]|[.,](?!\d)|\bbut\b|\bso\b|\band\b(?= (?:he|she|hes|shes|his|her|needs?)\b)/;
export const dueTime = /\b(?:due|meds?|medicines?|medication|dose|doses|pills?|insulin)\b/;
export const quarterMonths = '3 months';
export const quarterYear = /\b(?:a )?quarter of (?:a|the|1) year\b/;
/** The child was placed with a family, not the tube. */
export const childPlaced =
  /\bplaced (?:with|in) (?:us|me|our|my|foster|care)\b.*$|^.*\b(?:hole|stoma|tract|opening) was (?:already |still |all )?(?:there|made|done|in) (?:before|already|earlier|long before|way before|since before)\b|\b(?:we|i) (?:got|adopted|fostered|took|had) (?:her|him|them)\b[^.;!?]{0,40}\b(?:(?:she|he) )?(?:already had|had it already|with it|it was (?:already )?(?:there|in)|had (?:it|one) (?:then|already|by then))\b/;
/** Firm enough to take a date from where no date was asked for. */
export const placedFirmly =
  /\b(?:(?:surgeons?|doctors?|dr|hospital) (?:\w+ )?put (?:\w+ ){1,3}in|placed|placement|put in|inserted|surgery|operation|(?:got|gotten) (?:it|her|his|the|a) (?:first )?(?:g|gj|tube|button|peg|feeding)\w*|(?:had|has had|shes had|hes had|have had|weve had) (?:it|this|that|(?:the|her|his|an?|this|one|1) (?:g|gj|j|tube|button|peg|feeding|gtube|g-tube)\w*(?: ?-?(?:tube|button))?) (?:for|since)|first (?:tube|1|one|button|placed|got)|original|originally|installed)\b/;
export const placedWords =
  /\b(?:placed|place|placement|put in|inserted|surgery|operation|got (?:it|her|his|the|a)|gotten|had (?:it|the|her|his|a|one|this)|has had|shes had|hes had|have had|weve had|since|first|original|originally|procedure|peg|installed|done|tract|stoma|op|for|(?:tummy|belly|stomach) (?:one|1|tube|button))\b/;
export const firstWords =
  /\b(?:first|original|originally|initial|initially|surgery|operation|very|started|tract|stoma|surgically)\b/;
export const changeWords = new RegExp(
  `\\b(?:chang(?:e|ed|ing)\\b(?! (?:(?:her|him|them)(?= (?:at|around|about)\\b| ?$)|(?:her|his|the|a) (?:nappy|diaper|clothes|bed|sheets|pad|vest|pjs)))|replac(?:e|ed|ement|ing)|new (?:one|tube|button)|swap(?:ped)?|switched|(?:2nd|3rd|third)(?= (?:one|tube|button|time|change|replacement|peg|1)\\b| ?(?:$|[,.!]))(?<!${monthName} ?(?:the )?\\w{3,5})|this (?:one|tube|button)|current|latest|last (?:one|tube|button)|(?<!\\b(?:\\d+|this|a|every|last|each|very) )second|newest|upsized|exchang\\w+)\\b`,
);
/** A feed that only tells which time is meant. */
export const besideFeed =
  /\b(?:for|at|during|before|after|around|about|by) (?:the |his |her |a |that |this )?(?:(?!midnight|noon|midday|\d)\w+ )?(?:feeds?|feeding|bottle|meds?|medicine|meal|formula|dose)\b|(?<=\b(?:midnight|noon|midday|\d{1,2}(?:[:.]\d\d)? ?(?:am|pm|a|p|o ?clock)?) )(?:feeds?|feeding|bottle|meds?|medicine|meal|formula|dose)\b/g;
export const fedWords = /\b(?:fed|feed|feeding|ate|eaten|bottle|meds?|medicine|formula|dose|meal|milk|drank)\b/;
/** "When she was three months": a time only a birth date could place. */
export const byAge =
  /\b(?:she|he|they|baby) (?:was|were) (?:only |just |about |around |like |maybe |almost |barely )?\d+(?:\.\d+)? (?:and a half )?(?:months?|weeks?|days?|years?|mos?|wks?|yrs?)\b(?! (?:ago|back))(?: (?:and )?\d+ (?:months?|weeks?|days?))?(?: old| post ?op(?: last \w+day)?)?|\bwhen (?:she|he|they|the baby|my \w+|it) (?:was|were)(?: (?!,)[a-z0-9]+(?:\.\d+)?){0,6}|\b(?:at|since) (?:her |his )?birth\b|\bas a (?:newborn|baby|preemie|infant)\b|\bat (?:about |around )?\d+(?:\.\d+)? (?:months?|weeks?|days?|years?|mos?)\b(?! ago)(?: old)?|\bsince (?:she|he) was(?: [a-z0-9.]+){0,4}|\bin (?:the )?nicu\b|\b(?:not|wasnt|isnt)(?: (?:in|on|the|placed|done|put|of)){0,2} (?:(?:19|20)\d\d|(?:this|last) (?:year|month|week)|(?:january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec)(?:,? (?:19|20)\d\d)?)\b|\bi (?:said|put|wrote|typed) (?:in )?(?:19|20)\d\d\b(?=.*(?:19|20)\d\d)/g;
/** Right before a length of time: the child's age then. */
export const ageThen =
  /\b(?:was|were|at|aged?|turned)(?: (?:only|just|about|around|like|maybe|almost|barely|age|the age of))*\s*$/;
/** Right before a birth: what follows tells when the tube was placed. */
export const whenBorn = /\b(?:when|since|as soon as|after|before|the (?:day|week|month|year)) (?:\w+ ){0,2}$/;
export const unknown =
  /\b(?:no way (?:of|to) (?:\w+ )?(?:know|knowing|tell|telling|say|saying)|impossible to (?:know|tell|say)|any(?:ones|bodys) guess|your guess is as good|(?:dont|cant|couldnt|do not) recall|(?:it was |was |already )+(?:out|gone|on the floor|in the bed) when (?:i|we|he|she|they) (?:got|came|went|woke|looked|checked|found|walked)|(?:i|we) (?:wasnt|werent|was not) (?:here|around|in|with (?:her|him)|in the room|looking|watching)|(?:wasnt|werent|not|never|nobody|didnt) (?:even )?(?:told|tell|told (?:me|us)|tell (?:me|us))|before (?:i|we|he came|she came|they) (?:\w+ )?(?:adopted|got|fostered|had|met|took|came|knew)|wouldnt (?:have a clue|know)|no (?:records?|paperwork|notion)|adopted(?: (?:her|him|them))? with it|already had (?:it|one|1|the tube|a tube|that)|(?:came|arrived) (?:to us |home |here )?with it(?: in| already)?|had it (?:already|when (?:we|i) (?:got|adopted|met|took))|dont have (?:that|the|any) (?:dates?|info\w*|paperwork|records?)|not a (?:clue|scooby|notion)|search me|any ?time|(?:sister|brother|gran|nan|nana|grandma|parents|partner|nurse|doctor|clinic|hospital) (?:would|will|might|will probably) know|not sure|unsure|dont know|dont remember|cant remember|no idea|no clue|unknown|forgot|not certain|uncertain|couldnt (?:say|tell)|cant say|who knows|god knows|lord knows|beats me|havent (?:a|the) (?:clue|foggiest|idea)|(?:mum|mom|dad|wife|husband|she|he) (?:would|will|might) know|hard to say|didnt see|never saw|wasnt (?:there|home)|asleep|sleeping|overnight|during the night|in (?:the|her|his) (?:night|sleep))\b/;
/** "In ten minutes" is to come. */
export const coming = /\b(?:in|next)(?: about)?\s*$/;
/** At the facts on file, words that say that a date told is the placing's. */
export const aboutPlacing = /\b(?:date|placed|put in|tube|first|surgery|it was|operation)\b/;
/** The first hole closed and another was made: only what is said after that counts. */
export const newHole =
  /^.*\b(?:hole|stoma|tract|opening|that|it|site|one|1)(?: has| had| was)? (?:closed|healed|sealed)(?: (?:up|over|shut))?\b[^.!?]{0,40}?\b(?:new|another|fresh|second|different) (?:one|1|hole|stoma|opening|tract)\b/;
