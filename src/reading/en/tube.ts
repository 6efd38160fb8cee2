/** English for the tube: its kind, its state, and how it went in. Generic words only, no makers' names. */

/** Kinds by name, tried in this order; what one has read the next no longer sees. */
export const gj =
  /\b(?:(?:gee|jee|ghee|ge|g) ?-?jay(?: ?-?(?:tube|button))?|gee ?-?j|gjay|g slash j|g ?[-/]? ?j(?: ?-?tubes?)?|gj ?tubes?|gjtubes?|g and j|gastro ?-?jejun\w*|gastrojej\w*|transgastric|peg ?-?j|g to j|combo(?: tube)?|combination tube)\b/g;
export const jFirm =
  /(?<=\b(?:its|was|just) (?:just )?(?:an? |the )?)j\b(?! ?-? ?tube)(?= ?(?:$|[,.;!]))|\b(?:j ?-?tubes?|jay ?-?tubes?|jtubes?|jejunostomy|j ?-?pej|pej|surgical j)\b/g;
export const j = /\b(?:j ?-?tubes?|jay ?-?tubes?|jtubes?|jej\w*|j ?-?pej|pej|surgical j)\b|(?<![-/] ?)\bj\b/g;
export const noseFirm =
  /\b(?:n ?-?[gjd] ?-?tubes?|n[gj]s?(?: tube)?|ngtube|nose ?-?tube|nasal tube|naso\w+|(?:in|through|out of|from|down) (?:her|his|the) nose(?<!\b(?:blood|bled|bleeding|bleed|snot|mucus|boogers?)\b[^.!?;]{0,38}))\b/g;
export const nose =
  /\b(?:en ?-?(?:gee|jee)(?: ?-?tube)?|n ?-?[gjd] ?-?tubes?|n[gjd]s?(?: tube)?|ngtube|nose ?-?tube|nasal(?: tube)?|naso\w*|(?:in|through|down|up|from|out of) (?:her|his|the) (?:nose|nostrils?)|(?<!\b(?:stuffy|runny|snotty|blocked|red) )nose)\b(?! (?:is |all |so )*(?:runny|stuffy|stuffed|blocked|running|red))/g;
export const gFirm =
  /\b(?:g ?-?tubes?|gtubes?|gtub|gtbe|gtue|gt|gastrostomy|gastric tube|pegs?(?: tube)?|g ?-?buttons?|gastrostomy buttons?|(?<=\b(?:its|was|just) (?:just )?(?:a |the )?)g|(?<=(?:^|[,.;] ?)(?:a )?)g(?= ?(?:[,.;]|$)))\b/g;
export const g =
  /\b(?:g ?-?tubes?|gtubes?|gtub|gtbe|gtue|gt|gastrostomy|gastric(?: tube)?|peg(?: tube)?|gastro(?: ?-?tube)?|stomach tube|g ?-?buttons?|(?:gee|jee|ghee|ge) ?-?(?:tube|button)s?|(?:only|just) (?:goes |going )?(?:straight |right |directly |down )?(?:in|into|to|inside) (?:the |her |his )?(?:stomach|tummy|belly)|(?:of|in|into|to|for) (?:the |her |his )?(?:stomach|belly|tummy) only|(?:^|the )stomach (?:(?:1|one) )?only|stomach (?:1|one) only|(?:only|just) (?:the )?stomach (?:1|one))\b|(?<!\d ?)\bg\b/g;

/** Words for a tube of either kind: a G may be a button or have a balloon, and so may a GJ. */
export const eitherKind =
  /\b(?:buttons?|(?:feeding|feed) (?:1|one)|(?:kind|type|one|1) (?:with|w) (?:the|a) balloon|low ?-?profile|balloon tube|(?:belly|tummy) (?:tube|1|one)|(?:goes|going|1|one|in|into|to) (?:in |into |to )?(?:the |her |his )?stomach|stomach (?:1|one)|^(?:the )?stomach$)\b/;

/** Half out in words firm enough to be believed unasked. */
export const halfOutFirm =
  /\b(?:half ?-?(?:way)? ?(?:out|in)|half of (?:it|its|the tube) (?:is )?(?:out|in)|(?:partly|partially|partway|part way) (?:still )?(?:out|in|pulled out)|(?:only |just )?part of (?:it|the tube) (?:came|is|has come|comes) out|(?:slid|slipped|came|come|pulled|popped|moved) out (?:a (?:little )?bit|a little|slightly|some)|hanging (?:out|by|half|partly)|not out (?:all the way|completely|fully|yet)|still (?:partly|partially|half|halfway|part way|partway|a little bit) in|(?:not|isnt|wasnt|aint) (?:all the way|completely|fully|totally|quite) out|balloon (?:\w+ ){0,2}(?:poking|sticking|peeking|peeping) out|(?:came|come|comes|coming|pulled|slid|slipped|popped|fell) (?:out )?(?:partially|partly|part ?way|half ?way)(?: out)?|part of it(?:s| is)? still (?:in|inside))\b/g;
export const halfOut =
  /\b(?:half ?-?(?:way)? ?(?:out|in|of it)|half of (?:it|the tube) (?:is )?(?:out|in)|(?:partly|partially|partway|part way|mostly|almost|nearly|some of it is|a (?:little|bit)|kind of|sort of) (?:still )?(?:out|in|pulled out|hanging out)|(?:came|come|comes|coming|pulled|slid|slipped|popped|fell) (?:out )?(?:partially|partly|part ?way|half ?way)(?: out)?|(?:only |just )?part of (?:it|the tube) (?:came|is|has come|comes) out|(?:slid|slipped|came|come|pulled|popped|moved) out (?:a (?:little )?bit|a little|slightly|some)|hanging (?:out|by|half|partly|there|on|off|loose)|not out (?:all the way|completely|fully|yet)|sticking (?:way |half |partly )?out|still (?:partly |partially |half |halfway |a (?:little|bit) |kind of |sort of |part way |partway |somewhat |a little bit )?in(?:side)?|not (?:all the way|completely|fully|totally|entirely) out|slipp(?:ed|ing) (?:out )?(?:a (?:little|bit)|part|half)|dangling|(?:tube|its|it|button) (?:is )?coming (?:out|loose)|halfway|out a (?:little|bit)|not (?:all the way|fully|completely)|part of it(?:s| is)? still (?:in|inside))\b/g;

/** In a first text: a tube that is not out, or not all of it. */
export const stillIn =
  /\b(?=(?:tube|button|its?|balloon|tip) )(?<!\b(?:tape|dressing|plaster|bandage|cap|gauze)s? (?:\w+ ){0,4}(?:came|comes|fell|is|peeled|popped) off\b.{0,40})(?:tube|button|it|its|balloon|tip)(?: is)? still (?:in|inside)\b(?! but (?:it )?(?:looks?|seems?|smells?|leak\w*|is (?:red|sore|leak\w*)))(?<!\b(?:leak\w{0,5}|red|sore|infected|smelly|clogged|blocked)\b[^.!?]{0,30})|\bonly the tip\b|\b(?:out|up) (?:about |by )?(?:an?|1|2|half an?) inch\w*\b|\bsticking out (?:further|farther|more|a lot)\b|\b(?:tube|button) is (?:coming|sticking|poking|hanging) out\b|\bput it back (?:in )?but\b/;
/** A kind, or the state half out, taken back: "not a gj". */
export const notThat =
  /\b(?:(?:dont|didnt|doesnt) (?:think|believe) (?:that )?(?:its |it is |it was )?(?:an? |the )?|(?:not|isnt|wasnt|never|aint) (?:like )?(?:had |been |was )?(?:a |an |the |her |his |really |just )*|no (?:a |an )?|(?:nothing to do with|nowhere near|doesnt (?:go|reach|get)(?: down)? (?:to|in|into|as far as)|not (?:in|into|to|down|as far as)) (?:the |his |her )?|before (?:that )?(?:it )?(?:was |had )?(?:just )?(?:an? |the )?)$/;
/** Whatever it was before: "changed to a gj". */
export const changedTo =
  /\bused to (?:have|be) .{0,40}\bnow (?=.*\b(?:g|j|gj|g-j)\b)|\b(?:chang|switch|swapp|convert|upgrad)\w* (?:it |her |him |over |out )*(?:to|for|into) (?=.*\b(?:g|j|gj|g-j)\b)/;

export const manyParts =
  /\b(?:(?:2|3|4|two|three|several|multiple|many|lots of|more than (?:1|one)|a few|couple)(?: \w+)? ?(?:ports?|openings?|holes|places|ends|plugs|caps|spots|connectors?)|ports)\b/;
export const onePart =
  /\b(?:(?:1|one|single)(?: \w+)? ?(?:port|opening|hole|place|end|plug|cap|spot|connector))\b|^(?:(?:just|only|its|it has|it had|theres|has|had|there is|i see|see|ok|um) )*(?:1|one)(?= ?$|[.,]?(?: (?:and|with|plus|but))? (?:an? |the |1 |one )?(?:little|small|tiny|wee|lil|mini)? ?(?:other )?(?:side|valve|balloon|thingy|bit for|little|small|one for the (?:balloon|water)))/;
export const longInside =
  /\b(?:(?<!\b(?:an?|1|one|half an?|half|2|two|couple|1.5) (?:inch|inches|cm|cms) )(?:really |very |super |pretty |quite |so |has a |a )?long(?:er)?(?! ?-?(?:ago|time|term|lasting|standing|story|as (?:my|a|her|his) (?:thumb|finger|pinky|little finger)))|(?:met(?:re|er)|foot|yard)s? (?:of|long)|intestines?|bowel|jejunum|foot long|goes (?:way )?down|feet|(?<!\b(?:half|2|couple) )inches)\b/g;
export const shortInside = /\b(?:short|shorter|stubby|(?:1|one|an) inch)\b/g;

/** Where a G ends, as nobody says of a GJ. */
export const gByPlace =
  /\b(?:goes|going|straight|right|directly|feeds) (?:(?:straight|right|directly|just|only) )*(?:into|to) (?:the|her|his) (?:stomach|belly|tummy)\b(?! and)/;

export const unsure =
  /\b(?:not a (?:clue|scooby|notion)|beats me|search me|(?:god|lord) knows|(?:havent|wouldnt|dont) (?:got|have) (?:a|the) (?:clue|foggiest)|not sure|(?:i |im |highly |really )?doubt\w*|not (?:100|a 100|a hundred|totally|entirely|fully|completely) ?%?|not convinced|(?:never|nobody|didnt|wasnt|werent|hasnt) (?:\w+ )?(?:told|said|explained|mentioned)|unsure|(?:dont know|dont remember|cant remember|dont recall|cant recall)(?! how\b| what (?:\w+ ){1,6}(?:means?|stands? for|is|are)\b(?: (?!g\b|gj\b|j\b)\w+)*(?:$|[.,?!]))|no idea|no clue|maybe|i think|think|believe|guess|probably|might|possibly|not certain|pretty sure|fairly sure|almost sure|hopefully|havent (?:a|the) (?:clue|foggiest)|cant (?:tell|say)|couldnt (?:tell|say)|unknown|which one|whats the difference|what is (?:a|that)|could be|who knows|how (?:do|can) i tell|hard to (?:say|tell))\b/;

/** A device word that is none of the above, as in "it is a something tube". */
export const deviceForm =
  /^(?:(?:its|it is|was|it was|she has|he has|shes got|hes got|we have|they have|has|had|got|have|i think|think|called|the|a|an|her|his) )*(?:(?:a|an|the|called|kind|of|type|some|like) )*([a-z][a-z-]{2,})(?: ([a-z-]{3,}))?(?: (?:tube|button|device|catheter|thing|kind|type|model|brand|one))?$/;
export const deviceNoun = /\b(?:\w+ (?:tube|button|device|catheter|model)|catheter|\w+tube)\b/;
/** Words that stand before "tube" without naming a kind, or make up an answer that names no device. */
export const noDevice =
  /\b(?:feeding|feed|the|her|his|a|this|that|my|our|tube|tubes|stomach|belly|old|new|whole|normal|regular|same|yes|yeah|yep|no|nope|ok|okay|what|why|how|who|when|where|huh|help|please|thanks|thank|hello|hi|come|came|out|fell|it|one|is|hurry|scared|nurse|doctor|hospital|idk|sure|hard|easy|fine|good|bad|well|she|he|you|see|red|blue|white|yellow|green|clear|plastic|long|short|wait|sorry|and|but|crying|blood|mad|know|was|just)\b/;

export const burst =
  /\b(?:(?:rip|tear|split|hole|holes|cut|crack|slit|slash|gash|puncture|nick|slice|bite|bites|pinhole|tooth ?marks?|teeth marks?)(?: (?!and\b|or\b|but\b)\w+){0,3} (?:in|on|through|down|along|into|by|near|at|under|around|beside|next to) (?:the |its |her |his |that |one )?(?:\w+ )?(?:balloon|bubble|bulb|side|end|tip)|balloon\w* (?:(?:has|is|was|have|just|done|all|are) ){0,4}(?:carked|cactus|stuffed|munted|shot|dead|fucked|buggered|had it|toast|done for|kaput|snagged|punctur\w*|sprung|gone)|punctur\w*|(?:limp|floppy|saggy) balloon|(?:limp|floppy|burst|hole|split|torn|leak\w*|flat)(?: (?!and|or|but)\w+){0,3},? (?:the |its )?balloon|balloon\w*(?: (?!in\b)\w+){0,4} (?:pop\w*|burst\w*|ruptur\w*|perished|knackered|broke\w*|busted|bust|leak\w*|torn|tore|tear|hole|holes|pin ?holes?|ripped|rip|split|flat|deflat\w*|empty|gone|bad|blown|blew|damaged|cracked|floppy|limp|saggy|wrinkl\w*|shrivel\w*|wont (?:inflate|hold|fill|stay\w*)|doesnt (?:inflate|hold|fill|work)|failed|no good|not (?:good|ok|holding|inflating|working|whole|intact)|isnt (?:good|ok|holding|inflating|working|whole|intact))|(?:popped|burst|busted|broken|leaky|leaking|torn|ripped|flat|deflated|bad|hole in|holes in|blown|damaged|split|no) (?:the |its |her |his )?balloon|bubble (?:is )?(?:broke|broken|ripped|gone)|water (?:\w+ )?(?:comes|came|runs|pours|leaks) (?:straight |right |back )*out|(?:spray\w*|squirt\w*|shoots?|shot|spurt\w*) (?:straight |right |back )*out|burst(?:ed|en)?|brust(?:ed)?|bust(?:ed)?|popped|leaks?|leaking|(?:wont|doesnt) (?:inflate|hold (?:water|air)))\b/g;
/** Said not to be long, or to have no long part. */
export const notLong =
  /\b(?:not|isnt|wasnt|no|nothing|without(?: a)?|doesnt have(?: a| any)?|didnt have(?: a| any)?) (?:a |an |the |very |that |any |really |so )*long(?:er|ish)?(?: (?:part|bit|piece|tail|one|1|tube|end|thing|inside))?\b/g;
/** Nobody has looked at it yet. */
export const notLookedAt =
  /\b(?:havent|hasnt|isnt|didnt|never|yet to|no time to|without) (?:really |even |properly |had (?:a |the )?(?:chance|time) to )?(?:check\w*|look\w*|inspect\w*|test\w*|examin\w*|seen|see)\b|\bhavent had a look\b|\bnot (?:yet |been |really )*(?:checked|tested|inspected|looked)\b/;
export const tubeLost =
  /\b(?:(?:dog|cat|puppy) (?:ran|took|made off|walked off|buried)|threw(?! (?:it|the \w+) (?:at|to|on|across)\b)|thrown|throw(?:ing)? it|in the (?:\w+ )?(?:bin|rubbish|dumpster|skip)|toss(?:ed)?|trash|trashed|garbage|flushed|lost|cant find|couldnt find|missing|disappeared|chew(?:ed)?|ate it|(?:dont have|havent got)(?! (?:a|the) (?:clue|foggiest|idea|notion))|dont got|didnt (?:think to |even |bother to |get to )?(?:keep|save|bring|grab)|no longer have|left (?:it )?(?:at|in)|in (?:(?:2|3|two|three|several|many|lots of|a million) )?(?:pieces|bits|halves|half)(?! way)|down the (?:toilet|loo|drain|sink)|cut|snapped|broke(?:n)? (?:in|off|apart|into)|piece (?:is |came |broke )?(?:missing|off)|pieces|hospital (?:has|kept|took)|not with (?:me|us)|balloon (?:is |has )?(?:came|come|fell|fallen|broke|ripped) off|dog (?:got|has|ate)|binned|chucked|(?:paramedics?|ambulance|crew|medics?|ems|nurse|doctor|they) (?:crew |men |people |guys? |lady )?(?:has|have|kept|took)|gone(?! (?:pop|flat|bust|limp|floppy|soft|saggy|down)))\b/g;
/** Damage to more than the balloon: such a tube goes nowhere. */
export const damaged =
  /\b(?:(?:she|he|it|dog|cat|puppy|baby|kid|they|has|been|got|was) (?:just |been |got |done )?bit(?:ten)? (?:(?:right|clean) )?(?:through|it|off|into|the (?:end|tip|tube|balloon))|bitten|crack(?:ed)?|ripped|torn|tore|split|broken|broke|damaged|melted|bent|dirty inside)\b/g;
/** Said not to be whole. */
export const notWhole = /\b(?:not|isnt|no longer) (?:\w+ )?(?:whole|intact|complete|in 1 piece|in one piece)\b/;
export const tubeWhole =
  /\b(?:whole|intact|in (?:one|1) bit|in one piece|1 piece|inflat\w+ (?:and|n|then|\/) deflat\w+|balloon (?:still )?(?:has|holds|is full of|full of)(?: \w+)? water|complete|undamaged|(?:balloon|tube|it|its|looks?|everything)(?: (?:is|looks?|seems?|still|all|the|and|tube|balloon)){0,4} (?:good|fine|ok|okay|great|perfect|inflated|full|inflates|holds|works|working|normal|alright)|good balloon|no (?:leaks?|leaking|bubbles?|bubbling|air (?:coming|leaking|escaping)(?: out)?|holes?|tears?|damage|rips?|splits?|cracks?|drips?|dripping|cuts?|nicks?|punctures?|(?:bits|pieces|parts) (?:missing|gone|off))|(?:isnt|not|doesnt|wasnt|didnt|hasnt|never|aint) (?:all |been |even |got |at all |any )*(?:leak\w*|broke|broken|torn|tore|tear|burst|busted|bust|popped|pop|damaged|ripped|split|cracked|cut|punctured|deflated|chewed|drip\w*)(?: up| anywhere| at all| apart| or \w+)?|(?:tip ?top|(?:good|great|perfect|mint|decent) (?:nick|shape|condition|order|knick))|(?:doesnt|dont|didnt) (?:look|seem|appear|feel) (?:to be |like (?:its|it is) )?(?:\w+ )?(?:broken|torn|damaged|burst|ripped|split|cracked|leaky|popped)|nothing(?: is)? (?:broken|wrong|missing|torn|leaking|coming out|leaks))\b/g;
/** Said of it beside a yes: somebody has to look at it again. */
export const tubeDoubtful =
  /\b(?:tears?|rips?|holes?|slits?|cuts?|gash|nicks?|chips?|chipped|punctures?|bitten|bite marks?|teeth marks?|leaky|dripp\w*|drips?|manky|grotty|mangled|funky|mou?ldy|squashed|squished|bent|kinked|brittle|perished|discolou?red|stained|cracked|scratched|chewed|worn|(?:looks?|seems?|bit|feels?|little|kinda|a lil) (?:\w+ )?(?:off|funny|weird|odd|strange|iffy|dodgy|rough|wonky|crusty|nasty|old|small|low|soft|saggy|wrinkled|flat))\b/;
/** What a tube said to be whole is. */
export const fine = 'fine';
export const tubeNamed = /\b(?:tube|button|balloon|it)\b/;
export const balloonNamed = /\bballoon\b/;
/** A loss, firm enough to be believed unasked. */
export const toldLost =
  /\b(?:(?:threw|thrown|tossed) (?:it|the (?:old )?(?:tube|button))(?! (?:at|to|on|across)\b)|(?:tube|button|it) (?:is |went |got )?(?:in the )?(?:trash|garbage|chewed|flushed)|lost the (?:tube|button)|cant find the (?:old )?(?:tube|button))\b/;
/** Short texts that ask or answer, and name no kind. */
export const yesOrNo = /^(?:yes|no)\b/;
/** The word before the device, and devices named by one word. */
export const beforeDevice = /\b(\w+) (?:tube|button|device|catheter|model)\b/g;
export const deviceWord = /\bcatheter\b|\b\w+tube\b/;
