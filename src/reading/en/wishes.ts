/** English for what a caregiver wants beside answering: a person, a step again, to correct, to stop. */

/** The words a carrier acts on by itself, as the whole text: the default opt-out keywords of Twilio's messaging documentation. */
export const stopWords: ReadonlySet<string> = new Set([
  'stop',
  'stopall',
  'unsubscribe',
  'cancel',
  'end',
  'quit',
  'optout',
  'revoke',
]);
/** The carrier's own words for texts again after STOP. */
export const startWords: ReadonlySet<string> = new Set(['start', 'unstop']);
export const helpWords: ReadonlySet<string> = new Set(['help', 'info']);

export const person =
  /\b(?:(?<!\b(?:theyll|theyd|(?:they|theyve|theyre|clinic|hospital|doctor|nurse|surgery|office)(?: (?:have|are|is|will|would|going|gonna|got|said|has|to|supposed|meant|just|still|never|didnt|should|theyd|theyll)){1,4}) )(?:call|phone|ring) (?:me|us)(?: back)?|(?:put|patch|connect) me (?:through|to)|gim?me a (?:call|ring)|give (?:me|us) a (?:call|ring|bell)|(?:can|could|would|will) (?:someone|somebody|anyone|anybody|a (?:nurse|doctor|person|human)|the (?:nurse|doctor)|you|u) (?:please )?(?:call|phone|ring|talk|speak|help|come|text)|(?:talk|speak|chat) (?:to|with) (?:a |an |the |some ?|any ?|my |our |her |his )?(?:actual |real |live |human )*(?:nurse|doctor|dr|person|human|someone|somebody|one|body|people)|(?:need|want|get me|give me|send|speak to|where is|wheres|is there) (?:a |an |the |to talk to a |my |any )?(?:actual |real |live |human )*(?:nurse|doctor|dr|person|human|someone|somebody|operator)\b(?! ?(?:showed|said|to (?:show|put)))|(?:real|live|actual) (?:person|human|nurse)|human(?: please)?|(?<!\b(?:with|by|seeing|at) (?:the |a |our )?(?:triage )?)(?:nurse|person|human|operator|agent|representative) (?:please|pls|now)|is (?:any(?:one|body)|some(?:one|body)) (?:there|real)|are you (?:a )?(?:robot|bot|real|human|machine|computer|person)|is this (?:a )?(?:robot|bot|real|human|machine|computer|person|automated)|page (?:the|a|my) nurse|(?:have|get) (?:someone|somebody|a nurse|the nurse|a doctor|anyone) (?:to )?(?:call|phone|ring|talk|come)|(?:someone|somebody|anyone|anybody|nurse|doctor) (?:please |pls )?(?:call|phone|ring|help)(?: me| us)?\b|help me|i need help|talk to someone|phone number|nurse call)\b|^(?:nurse|doctor|person|human|call|call me|operator|agent)$/;
/** Said to the line itself; it asks for no other person. */
export const cryForHelp =
  /\b(?:(?:can|could|would|will) (?:someone|somebody|anyone|anybody|you|u) (?:please |pls )?help|(?:someone|somebody|anyone|anybody) (?:please |pls )?help|(?:i |we )?need (?:some |your )?help|help (?:me|us)|is any(?:one|body) there)\b/g;
export const notPerson =
  /\b(?:dont have|do not have|havent got|lost|no)(?: \w+){0,4} phone numbers?\b(?!.{0,20}\b(?:nurse|doctor|call me|talk)\b)|\b(?:dont|no need to|do not|didnt|already|not) (?:need|want|call|have|spoke|talked|ask\w*|to call)(?: \w+){0,3} (?:nurse|doctor|person|me|anyone|someone|human)\b|\b(?:nurse|doctor) (?:is|showed|said|told|taught|put|called|already)\b/;

export const repeat =
  /\b(?:(?:message|text|msg|txt|question|it)(?: (?:just|has|all|went|got|is|was|came|come|through|in|out|up)){0,4} (?:vanished|disappeared|deleted|blank|empty|garbled|cut off|cut short|scrambled|gone before)|(?:didnt|never|dont|havent|hasnt)(?: \w+)? (?:get|got|gotten|receive|received|see|load|loaded|come through)(?: (?:that|the|your|any|any of|last|whole|full|first|second|third|1st|2nd|3rd|other|of)){1,3} (?:texts?|messages?|msgs?|txts?|questions?|instructions?|steps?)|(?:resend|re send|send|text|repeat|say|type|give me|tell me|show me)(?: (?:that|it|this|the|your|me|us|to me|last|previous|whole|same)){1,4}(?: (?:message|text|msg|txt|question|one|bit|part|thing|steps?|instructions?)){0,2}(?: (?:again|over|once more|another time|back|one more time|1 more time))|(?:resend|re send|repeat)(?: (?:that|it|this|the|your|last|previous)){1,3}(?: (?:message|text|msg|txt|question|one|bit|part|thing)){0,1}|(?:what|wat|wot) (?:was|did) (?:the|your|that|you|u|it)(?: last)? (?:question|message|text|msg|ask|asking|say)(?: me)?(?: again)?)\b|^(?:i |sorry |oh )*(?:didnt|did not|couldnt) (?:get|catch|see|hear|read) that(?: (?:last|sorry|bit|part|one|again|please|pls)){0,4}$|^(?:ok |okay |sorry |please |pls |plz |kindly |abeg |wait |oops |hi |hey |hello |sir |maam |madam |dear |can you |could you |would you |can u |could u |you |just )*(?:again|repeat|repeat (?:that|it|please|last|the last one|the question|your question)|(?:say|send|tell me|type|text|give me|show me|go over|explain) (?:that|it|this|them|those|the (?:last|steps?|instructions?)(?: \w+)?|me that|me the steps?)?(?: (?:one|step|part|message))? ?(?:again|once more|1 more time|one more time|over)|resend(?: \w+){0,3}|1 more time|one more time|once more|come again|what was (?:that|step \d|the (?:last|first|second|third) (?:one|step))|again please|i (?:missed|lost|deleted|didnt get) (?:that|it|the (?:last|step|steps|message|instructions?))(?: \w+){0,3}|what did you say|what was the (?:first|second|third|last) step|(?:the )?steps? again|repeat (?:the )?(?:steps?|instructions?|last \w+)|start over|from the (?:start|beginning|top)|which step)(?: (?:please|pls|again|plz|sir|maam|madam|sorry|thanks|dear|love|abeg))*$/;
export const repeatStep =
  /\b(?:(?:step|number|part|message|text) ?#? ?([123])|(first|second|third|1st|2nd|3rd|last(?! (?:message|text))) (?:step|one|part|message|text))\b/;
export const stepAsked =
  /\b(?:again|repeat|resend|what was|whats|what is|once more|one more time|show me|tell me|send|say|missed|lost|forgot|go over|explain|back to|go back)\b/;
export const wholeStep = /^(?:step |number )#? ?[123](?: please| again| pls)*$/;

export const correct =
  /\b(?:(?:i )?(?:made|was|got|told you|said|gave you|put|typed|sent|wrote|answered|entered)(?: \w+){0,5} (?:mistake|wrong|incorrect|incorrectly)|(?:want|need|like|have) to (?:correct|change|fix|take back|redo|update)|(?:can|could|may) i (?:correct|change|fix|take back|redo|update)|wrong (?:answer|number|date|weight|tube|time|button|kind)|(?:change|correct|fix|take back) (?:my|the|that|an|what)(?: \w+){0,3} ?(?:answer|weight|date|tube|kind|time|number|reading|said)?|my mistake|i messed up|ignore (?:that|my last|what i said)|that was wrong|thats wrong|not what i meant|(?:never mind|nvm|nevermind|forget|scrap|disregard|ignore|strike)(?: (?:that|what i|what|my|the|last|just|one|i|text|message|answer|before|said|put|sent|typed|wrote)){1,6}|i was wrong|i misread|typo|wrong)\b|^(?:(?:ok|okay|oops|sorry|wait|no|please|pls|hold on|hold up|can|could|may|i|we|you|u|to|want|need|let me|lets|just|hi|um) )*(?:(?:go|take me|going|went|step|move|get) )?back(?: (?:(?:1|one|a|2|two|to|the|last|previous|step|question|steps|questions|before|please|pls|again|now|bit|place|one|up|sorry|that) ?){1,6})?$|\b(?:go|take me|step) back (?:1|one|a (?:step|question)|to the (?:last|previous|first|one before))\b|^(?:undo|redo|previous|previous question|last question|change answer)$/;
export const correctTopics: readonly (readonly [
  RegExp,
  'weight' | 'first-placed' | 'tube-kind' | 'ph' | 'came-out' | 'own-tube' | 'kit' | 'unwell' | 'first-feed',
])[] = [
  [/\b(?:weight|weighs?|pounds|kilos|lbs|kg)\b/, 'weight'],
  [/\b(?:ph|strip|reading|misread)\b/, 'ph'],
  [/\b(?:date|placed|surgery|first tube|how old the (?:tube|hole)|year|month|weeks|months)\b/, 'first-placed'],
  [/\b(?:kind|type|which tube|tube type|kind of tube|tube kind|wrong tube)\b/, 'tube-kind'],
  [/\b(?:time|when it (?:came|fell)|came out|fell out|hour)\b/, 'came-out'],
  [/\b(?:balloon|own tube|old tube)\b/, 'own-tube'],
  [/\b(?:kit)\b/, 'kit'],
  [/\b(?:signs|breathing|how she is|how he is)\b/, 'unwell'],
  [/\b(?:feed|feeding)\b/, 'first-feed'],
];

/** Words that take back something said before. */
export const corrects =
  /\b\d[\d.]* (?:\w+ )?not \d|\b(?:sorry|i mean|i meant|meant|actually|scratch that|correction|oops|whoops|typo|my bad|make that|mistake|mis ?read|was wrong|got (?:it|that) wrong|wrong|looked again|checked again|should (?:be|have been|say)|not \d[\d.]* (?:but|its|it was)|no wait|wait no|wait (?:the|it|its|she|shes|hes|he|that|i)|(?:they|i|he|she|you) (?:said|put|told (?:you|me)) (?:\w+ )?(?:g|gj|j) but (?:its|it is|thats)|not (?:a |an )?(?:g|gj|j)\b)\b/;

const medicine =
  '(?:meds?|medicines?|medications?|doses?|pills?|tablets|insulin|antibiotics?|steroids?|hydrocortisone|glucose|levetiracetam|valpro\\w+|pheno\\w+|carbamazepine|oxcarbazepine|lamotrigine|topiramate|clobazam|clonazepam|diazepam|midazolam|lorazepam|baclofen|propranolol|captopril|furosemide|digoxin|prednis\\w+|tacrolimus|warfarin|enoxaparin|levothyroxine|thyroxine|morphine|methadone|clonidine|gabapentin|anti ?-?(?:seizure|convulsant|epileptic)s?)';
const mustHave =
  '(?:meds?|medicines?|medications?|dose|doses|pills?|drug|insulin|feed|feeds|formula|antibiotics?|steroids?|hydrocortisone|sugar|glucose|fluids?)';
export const cannotWait = new RegExp(
  `\\b(?:(?:seizure|seizures|epilepsy|heart|cardiac|transplant|anti ?-?rejection|diabetes|insulin|steroid|adrenal|blood pressure|thyroid|blood thinner|pain|breathing|lung|hiv|anticonvulsant|hormone|metabolic|immune|important|critical|lifesaving|life saving|emergency) ${mustHave}|(?<!\\bnext )${mustHave} (?:for (?:her |his )?(?:seizures?|heart|epilepsy|transplant|sugar|diabetes|blood|adrenal\\w*|thyroid|lungs?|brain)|(?:that |she |he |which )*(?:cant|cannot|can not|must not|mustnt|shouldnt) (?:be )?(?:wait|miss\\w*|skip\\w*|delay\\w*|late)|(?:(?:is |are |was |were )?(?:over ?due|due|late|past due|now due)|(?:is|are) (?:supposed to be )?at \\d))|(?:cant|cannot|must not|mustnt|shouldnt|never|not supposed to|not allowed to) (?:be )?(?:miss\\w*|skip\\w*|wait for|go without|delay\\w*|be without) (?:\\w+ ){0,3}${mustHave}|(?:has to|needs to|needs|must|gotta|due for|have to) (?:have |get |take |give |be given )?(?:\\w+ ){0,3}${medicine}|${mustHave} (?:right )?now|(?:sugar|glucose) (?:drops|will drop|gets low|low|goes low)|hypoglyc\\w*|continuous feeds?|cant fast|cant (?:go|be) (?:\\w+ ){0,3}without (?:(?:her|his|the|\\w+) ){0,2}(?:${medicine}|food|feed|eating|a feed|feeds|feeding|meds)|diabetic|on insulin|takes insulin)\\b`,
);
export const canWait =
  /\b(?:no|not|none|nothing|(?<!(?:go|be|do|day|night|hour) )without|doesnt (?:have|need|take)|isnt|arent|dont (?:have|need)|already (?:had|got|gave|given)|gave|(?:was|were|been|are) (?:all )?given|was given|last saw|last seen|can wait|later|had (?:her|his)|how (?:do|can|should)|when can|can (?:i|we|she|he))\b/;

/** "She cannot miss it", "he is due something at 6": named before, or by a name the line does not know. */
export const mustNotMiss =
  /\b(?:needs?|has to have|must have|due) (?:his|her) (?!feed|food|bottle|milk|formula|nap|diaper|nappy|bath|dummy|mum|mom|dad|sleep|tea|dinner|lunch|breakfast)\w+(?: (?!feed|bottle|milk)\w+)? (?:at|by) \d|\b(?:cant|cannot|can not|must not|mustnt) (?:miss|skip|go without|wait for) (?:it|them|that|this|any|a dose|one|(?:her|his|the|a) (?:\w+ )?(?:feeds?|formula|milk|meds?|medicine|dose))\b|\b(?:shes|hes|she is|he is|is) due (?:her |his |a |some )?(?!feed|feeding|food|bottle|milk|formula|back|in\b|to\b|at\b)\w+ at \d/;
/** Questions that the last message answers while nothing is asked. */
export const answeredAlready =
  /^(?:(?:ok|okay|so|and|but) )*(?:how long|what now|whats next|what next|what (?:do|should) (?:i|we) do(?: now)?|when|(?:can|should|may) (?:i|we) (?:still )?(?:feed|give (?:her|him) (?:a )?(?:water|milk|food|feed|bottle)|use it|go|come|wait|drive))\b[^?]{0,30}\??$/;
/** Not out, but on its way. */
export const outABit =
  /\bout (?:a (?:little )?bit|a little|slightly|some|partly|partially|halfway|half way|part way)\b/;
/** The first time, told again. */
export const beforeItCameOut =
  /\b(?:til|till|until|when|while|before|since|after|as|by then|the (?:time|moment|minute|second|instant)(?: that)?) (?:it|the tube|her tube|his tube|this|this thing) (?:first |done |went and )?(?:came|come|fell|popped|pulled|slipped|was out|went)\b/;
export const outAgain =
  /\b(?:(?:came|come|comes|fell|fallen|falls|popped|pops|slipped|slid|pulled|pulls|yanked|pushed|pops|went|is|its|tube|button|it|coughed) (?:it |right |back |just |the tube |all the way |completely )*out(?: all the way| completely)? (?:again|already|once more|a second time)|(?:came|come|comes|fell|popped|slipped|slid|pushed) (?:it |right |just )*back out|out again|out the rest of the way|(?:all the way|completely|fully|totally|entirely) out|(?:whole thing|all of it|rest of it) (?:is |came |fell |has come |popped |slid )out|now (?:its |it is )?out$|(?:tube|button|it|its|shes|hes|she|he|baby|temporary|new one|temp tube|foley|catheter) (?:\w+ ){0,3}(?:fell out|came out|popped out|pulled (?:it |the tube |the new (?:one|tube) )?out|slipped out|came off|is out|pushed (?:it )?out|yanked (?:it )?out|slid out|fallen out|come out))\b|^(?:its |it is |tube )?(?:fell |came |popped |slipped |is )?(?:out|back out)(?: (?:now|again))?$/;
/** What comes out through a tube is not the tube. */
export const contentsCameOut =
  /\b(?:milk|milky|stuff|contents|fluid|liquid|formula|air|some|nothing|blood|it came out (?:\w+ ){0,2}(?:at|around|about|\d|clear|milky|whit|yellow|cloudy|green|brown|tan|beige|cream|curdl|dark|light|thick|thin|sour|slimy|colou?r|the colou?r|like|looking|of the|with)\w*|(?:before|if|when) (?:it|the tube)|originally|first time)\b/;

export const tubeProblem =
  /\b(?:(?:wont|doesnt|not|not going to|cant get it to) let (?:me|us|it) (?:\w+ ){0,3}(?:water|fill|push|flush|inflate|put|draw)|(?:wont|doesnt|not|isnt|cant|couldnt|hard to|difficult to|stopped|no) (?:\w+ ){0,3}(?:flush\w*|flow\w*|go through|inject|push (?:the )?water|fill(?!ed)\w*|inflat(?!ed)\w*)|(?:water|flush|syringe|plunger) (?:\w+ ){0,2}(?:wont|doesnt|not|isnt|cant|stuck|is stuck)(?: \w+){0,2}|clog\w*|block(?:ed|age)|(?:very |really |so |too |feels |is |its |getting |kind of |kinda )stiff|stiff|resistance|(?:balloon|syringe) (?:is |feels |so |really |very |getting )*(?:hard|stiff|tight)|backs up|backing up|kinked)\b/;

/** Told of a tube in use: nothing holds it. */
export const balloonEmpty =
  /\b(?:(?:never|didnt|havent|hasnt|forgot to|forgotten to|did not|not)(?: \w+)? (?:fill|filled|inflate|inflated|put|add|added)(?: (?:up|any|the|his|her|that|water|anything|nothing|in|into|inside|to)){0,6} (?:balloon|bulb|cuff)|(?:balloon|bulb|cuff)(?: (?:is|was|its|still|i|we|left|it|got|get)){0,4} (?:empty|flat|unfilled|(?:(?:never|not|isnt|wasnt|didnt get|never got) (?:fill|fill\w*|inflat\w*)))|no water in (?:the |his |her |that )?(?:balloon|bulb|cuff)|(?:left|leave|leaving|kept|keep) (?:the |his |her )?(?:balloon|bulb|cuff) (?:empty|flat))\b/;

/** Help was called, or is coming or there. */
export const helpCalled =
  /\b(?:(?:called|rang|phoned|dialed|dialled|calling) (?:them|911|999|112|ems|the ambulance|an ambulance|already)|(?:ambulance|paramedics?|ems|medics?|they|help|911)(?: (?:is|are|r|was|were|theyre|just|now|already|almost))* (?:on (?:the|their|its) way|coming|came|here|arriv\w+|with (?:us|him|her)|sending|en route)|theyre (?:coming|here|on (?:the|their) way)|^(?:(?:ok|yes|i|we|just|already|now|it) )*called(?: it)?)\b/;
/** Called, and nobody comes. */
export const helpNotComing =
  /\b(?:not|isnt|arent|wont|havent|hasnt|no one|nobody|never|cant|refus\w+|no answer|hung up|on hold|busy)\b/;
/** Nothing to get there with. */
export const noWayThere =
  /\b(?:(?:no|without (?:a|any)|(?:dont|do not|doesnt|cant|havent)(?: \w+)? (?:have|get|got|find|afford)(?: (?:a|any|no))?|got no|have no) (?:car|ride|lift|way (?:to get )?there|transport\w*|taxi|cab|gas|petrol)|car (?:wont start|is broken|broke|died|is dead|is in the shop)|cant (?:get|make it|drive) (?:there|in)?|snowed in)\b/;
/** Small talk has only these words. */
export const smallWords: ReadonlySet<string> = new Set(
  'guys both folks team ladies people nurses finally whew yay amazing wonderful fantastic brilliant lovely angels angel kind kindly patient heart such really grateful thankful relieved everyone guys guy team everyone yall ya lovely brilliant wonderful legend legends star stars u ur r been such cheers ta love mate waiting ok okay k kk thank thanks thankyou thx ty tysm so very much you god bless great good perfect awesome got it will do alright all right cool sounds understood understand i see sure yes yep yeah done ready next go on ahead continue im am we are were hi hello hey there a lot lots appreciate appreciated this that for your help everything the lol phew doing now one sec second minute moment hold hang wait please nurse life saver lifesaver lifesavers goodnight night morning noted read reading youre best amazing bye and haha'.split(
    ' ',
  ),
);
/** On the way to the emergency department, or there: nothing to answer. */
export const onTheWay =
  /^(?:(?:ok|okay|yes|yep|yeah|thanks|thank you|alright|right|well|so|and|we|weve|we are|were|im|i am|ive|just|now|all|about to|gonna|already|still|well be)(?: |$))*(?:on (?:our|my|the|r) way(?: now| there| in)?|leaving(?: now| here)?(?: in (?:about |like )?\d+(?: mins?| minutes?)?)?|(?:going|heading|driving|headed|setting off|off)(?: now| there| in| out| over| to (?:the )?(?:hospital|er|ed|emergency(?: room| department)?|car))*|(?:here|there|(?:at|in) the (?:hospital|er|ed|emergency(?: room| department)?|waiting room|ambulance))(?: now)?|(?:(?:getting|got|sat|loaded|hopping|walking|running|all) )*(?:in|into|in to|to|out to) the (?:car|truck|van|taxi|cab|jeep)(?: now)?|(?:putting|getting|strapping|loading|buckling|popping) (?:her|him|them|everyone)(?: (?:dressed|ready|in|into|up|to|the|her|his|a|car ?seat|car|truck|van|coat|shoes|on|wrapped|out of bed)){0,6}|getting (?:ready|dressed|our (?:shoes|coats|things|stuff)(?: on)?|(?:her|his) (?:shoes|coat|things|stuff)(?: on)?)|packing (?:up|a bag|his bag|her bag|now)|tap(?:ing|ed) (?:it|the tube)?(?: (?:down|up|in place|now))*|(?:its |about |only |like |a )*(?:\d+|half an?|an|1) ?-?(?:mins?|minutes?|hours?|hrs?|miles)(?: (?:drive|away|out|now|to go|from here|tho|though))*|we live (?:about |only |like )?\d+ (?:mins?|minutes?|miles) (?:away|out|from (?:there|it|here))|(?:nearly|almost|half ?way) there|(?:shes|hes|she is|he is) (?:fine|ok|okay|asleep|good|calm|with me)|(?:called|calling|rang|ringing|phoned) (?:911|an ambulance|the ambulance|999|112|000|them|for a (?:ride|cab|taxi|lift))|(?:the )?(?:ambulance|they|paramedics|theyre|crew) (?:is |are )?(?:coming|on (?:the|their) way)|(?:my |the |her |his )?(?:mom|mum|dad|husband|wife|partner|sister|brother|neighbou?r|friend|mother|father|gran|nan|grandma|grandpa)s? (?:is )?driving(?: us| me| him| her| now| there| in| to (?:the )?(?:hospital|er|ed))*|(?:see you|see u) (?:there|soon|in a bit))(?: (?:now|thanks|thank you|ty|ok|tho|though))*$/;
export const thanks =
  /\b(?:thanks?|cheers|ta|thank you|thankyou|thx|ty|tysm|appreciate|bless you|god bless|grateful)\b/;

const device =
  '(?:g ?-?tube|gtube|gj ?-?tube|gj|g-j|gt|j ?-?tube|jtube|peg|feeding tube|feed tube|tube|button|ng|catheter|gastrostomy|balloon)';
export const aboutTube = new RegExp(
  `\\b${device}s?\\b|\\bstoma\\b|\\b(?:hole|opening) in (?:her|his|the) (?:belly|stomach|tummy)\\b`,
);
/** Out, but no word of what: still about a tube on this line. */
export const somethingOut =
  /\b(?:(?:its|it is|it|she|he) (?:\w+ ){0,2}(?:fell out|came out|popped out|pulled (?:it )?out|is out|out)|fell out|came out|popped out|pulled (?:it )?out|(?:yanked|ripped|tugged|wrenched) (?:it|his|hers|the whole thing)(?: (?:right |all |clean )?out)?)\b/;
export const otherTubes =
  /\b(?:you ?tube|tube of (?!(?:the |his |her |my |our |a )?(?:\w+ )?(?:stomach|belly|tummy|food|feeding|child|son|daughter|baby|kid|boy|girl|patient|client)\b)|inner tube|test tube|tube socks|ear tubes?|(?:chest|breathing|trach) tube|belly button(?! tube)|button(?:s)? on|shirt)\b/g;
/** A person after all, whatever was said of nurses beside it. */
export const personNow = /\b(?:call|need|want)\b.*\b(?:please|now)\b/;
export const firstStep = /^(?:1|first)/;
export const secondStep = /^(?:2|second)/;
/** Thanks that go on to ask. */
export const wantsMore = /\?|\bbut\b|\b(?:can|could|would|how|what) (?:you|i|do|is)\b/;
export const notOut = /\b(?:not|hasnt|didnt|never|havent) (?:\w+ )?(?:come|came|fallen|fell|out)\b/;
export const again = /\bagain\b|\bback out\b/;
export const noTubeProblem = /\bno (?:resistance|problems?|clog|blockage)\b/g;
/** "Cannot wait" has words of waiting and is none. */
export const cantWait =
  /\bcant wait\b|\b(?:must|should|can) not (?:be )?(?:miss\w*|skip\w*|delay\w*|late|wait|go without)\b/;
