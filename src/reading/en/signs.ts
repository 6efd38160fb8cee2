/** English for the danger and warning signs, sure and doubtful, and the words that take a sign back. */
import type { SignWords } from '../signs.ts';

const belly =
  '(?:belly|bellys|bellies|tummy|tummys|stomach|stomachs|stomache|stomachache|stomick|stummy|stumik|abdomen|abdominal|abdomin|abdo|guts?|tums?|tum ?tum|middle|midsection|midriff)';
/** What is hard to the touch, as people compare it. */
const hardThing =
  '(?:rock|drum|dhol|board|stone|brick|bricks|plank|wood|wall|concrete|cement|iron|steel|boulder|tabletop|log|tank|cricket ball|bowling ball)';
const copula =
  '(?: (?:is|s|are|was|feels?|felt|feeling|looks?|looked|looking|seems?|getting|gotten|gone|going|went|goes|got|has|have|become|becoming|turned|turning|dey|so|real|really|right|very|super|big|huge|the|same|proper|pure|mighty|awful|dead|solid|all|kind|of|kinda|pretty|a|bit|lil|little|as|like|and|now|just|still|more|quite|extremely|it|its|rock|sort|tight|blown|up|out|balloon|ball|rugby|beach|puffed|firm|big|bloated|round|huge)){0,8}';
const body =
  '(?:lips?|face|skin|mouth|nose|fingers?|nails?|fingernails|hands?|feet|toes|cheeks?|color|colour|tongue|gums)';
const who = '(?:she|shes|he|hes|baby|babys|they|theyre|kid|child|son|daughter|girl|boy|him|her)';

/** The breathing tube in the neck: where it is out or shut, the airway is. */
const windpipe = '(?:trachs?|traches|trake|trachea\\w*|tracheo\\w*|tracheal)(?: ?-?(?:tube|can+ula|button))?';

export const signWords: readonly SignWords[] = [
  {
    sign: 'breathing',
    sure: new RegExp(
      `\\b(?:${windpipe}(?: (?!(?:and|not|never|didnt|hasnt|isnt|wasnt|g|gj|j|peg|feeding|button|gtube)\\b)\\w+){0,4} (?:out|off|fell|dislodged|displaced|missing|plugged|clogged|blocked|obstructed)\\b(?! (?:\\w+ ){0,3}(?:ago|last (?:year|month|summer|winter|week)|years?|for good)\\b)|(?:pull|yank|cough|knock|push|lost|lose|popp)\\w* (?:out )?(?:(?:his|her|the|my|our) )?(?:\\w+s )?${windpipe}\\b(?! (?:tie|care|collar))|${windpipe} (?:\\w+ ){0,2}(?:wont|not|isnt|cant|doesnt|couldnt) (?:\\w+ ){0,2}(?:go|going|fit|fitting|get)\\b|(?:get|put|putting|getting) (?:\\w+ ){0,3}${windpipe} (?:back )?in\\b|spare ${windpipe})`,
      'g',
    ),
  },
  {
    sign: 'breathing',
    sure: /\b(?:(?:whistl\w*|squeak\w*|rattl\w*|crackl\w*|crow\w*)(?: \w+)? (?:every time|each time|when|whenever|as) (?:she|he) |can (?:hardly|barely) cry\b|(?:sats?|spo2|o2|oxygen|saturations?) (?:is |are |at |of |now |reading |down to |dropped to |only )*(?:[1-8]\d|9[01])\b|(?:trouble|difficulty|difficult|problems?|struggl\w+|hard time|issues?|distress) (?:with )?(?:her |his |to |in )?breath\w*|hard (?:for (?:her|him) )?to breathe?|no breath(?:ing|e)?(?! (?:problems?|trouble|issues?|difficult\w*|concerns?))|(?!(?:not|isnt) (?:really )?breathing (?:funny|weird|fast|heavy|heavily|noisy|noisily|rapidly|strange|hard)\b(?! enough))(?:cant|cannot|couldnt|not|isnt|wont|doesnt|barely|hardly|stopped|stops|quit) (?:able to )?(?:really )?(?:breath\w*|breething|catch (?:her|his) breath)|breath\w* (?:is |isnt |seems? |looks? |sounds? |a |bit |little |really |very |so |too |not |kind of |kinda |all |like ){0,4}(?:hard|fast|heavy|heavily|funny|weird|bad|badly|noisy|rapid|rapidly|shallow|labou?red|strange|difficult|off|wrong|quick|quickly|slow|slowly|irregular|right|rough|raspy|trouble|difficulty|problems?|worse|well|normal|normally|good)|(?:short|shortness|out) of breath|heavy breathing|fast breathing|(?:rapid|shallow|labou?red|noisy) breath\w*|resp(?:iratory)? distress|(?:not|isnt|cant|doesnt|hardly|barely|wont) (?:get|getting)(?: any| enough)? air|(?:fight\w*|gulp\w*|hungry|starved) (?:for )?air|not enough air|out of puff|panting|(?:nasal|nostril\w*) flar\w+|recessions?|tracheal tug|sucking in (?:at )?(?:the |her |his )?(?:ribs|chest|neck)|(?:chest|ribs?|belly|tummy|throat|neck) (?:is |are |keeps? |all )*(?:suck\w*|pulling|pulled|tugging|caving|sinking|drawing|drawn|dipping) in|indraw\w*|(?:not|isnt|cant|wont|doesnt)(?: \w+)? (?:get|getting|got) (?:enough |any |much |no )?(?:oxygen|o2|air)|low oxygen|chest(?: (?:is|keeps|keep|just))* (?:going|moving|heaving|pumping|working)(?: (?:in and out|up and down|in|out|up|down|really|so|very|like|and)){0,4} (?:hard|fast|quick\w*|rapid\w*|mad|crazy)|stridor|croup\w*|drowning|hyperventilat\w*|asphyxiat\w*|strangl\w*|desat\w*|puffing|rasping|raspy|belly breath\w*|nose (?:is |keeps |holes )*(?:opening and closing|flar\w+)|blocked airway|gasp(?:s|ing)?|gurgling|wheez\w+|grunting|cho(?:c|k)?k(?:es|ed|ing)|suffocating|apnea|retractions|breath\w*|breeth\w*|breth\w*|brething|airway)\b/g,
  },
  {
    sign: 'colour',
    sure: new RegExp(
      `\\b(?:cyanosed|(?:skin|face|lips?|hands?|feet|nails?)s? (?:(?:is|are|has|have|gone|went|going|turned|all|looks?) )+(?:\\w+ and )?(?:blue|purple|grey|gray|mottled)|blueness|paleness|pallor|colou?r of (?:ash|chalk|paper|milk|putty|slate|lead|concrete|snow|a (?:sheet|ghost))|dusky|purplish|bluish|blueish|(?:${who}|${body}|tur\\w{1,6}|go(?:es|ing|ne)|went|looks?|looking|all|around)(?: (?:is|are|r|was|looks?|looking|look|turning|turned|going|gone|went|getting|all|as|so|really|very|a|bit|little|around|the|like|kind|sort|shade|of|kinda|cold|and|pale|white|clammy|sweaty|limp|floppy|blotchy|funny|weird|strange|odd|horrible|awful|nasty|terrible|scary|deathly|dead|proper)){0,6} (?:blue|blu|bluey|bluish|blueish|grey|gray|greyish|grayish|purple|ashen|dusky)|(?:blue|blu|bluish|grey|gray|purple|dusky) (?:in the |around the |around (?:her|his) )?${body}|(?:very|really|real|right|proper|so|too|extremely|super|hella|mad|mighty|awful|awfully|terribly|deathly|deadly|dead|ghostly|ghastly|scary|sickly|dreadfully|horribly|horrible|totally|completely|pure|white and) pale|pale (?:as|like)|(?:lips?|face|mouth|gums?)(?: (?:is|are|was|has|have|gone|going|went|turned|turning|looks?|all|completely|totally|so|really|dead|pure|just)){1,4} white(?! (?:with|from) (?:milk|formula|cream))|(?:she|shes|he|hes|baby)(?: (?:is|has|just|all|has)){0,2} (?:gone|went|turned|turning|going|turns)(?: (?:all|really|dead|pure|so|completely|totally|as)){0,2} white|drained of (?:all )?colou?r|colou?r (?:has |is |just |all )*(?:drained|gone|went|draining|left)(?: (?:out of|from) (?:her|his))?|bloodless|ghost(?:ly)? white|(?:grey|gray|blue) as (?:ash|slate|stone|putty|death|cement|concrete|a (?:ghost|corpse|stone|battleship))|white (?:as|like) (?:a )?(?:sheet|ghost|paper|chalk|snow|wall)|(?<!^)no colou?r|lost (?:her |his )?colou?r|cyanotic|cyanosis|mottled|blue spell)\\b|^(?:yes )?(?:(?:really|so|very|all|proper|totally) )?(?:blue|blu|grey|gray|bluish)$`,
      'g',
    ),
    near: /\b(?:pale|paler|(?:dark|black)(?:er)? (?:a?round|on|at) (?:the|her|his) (?:lips?|mouth)|(?:dark|black) lips|(?:turn(?:s|ed|ing)?|chang(?:es|ed|ing)|go(?:es|ing|ne)) colou?rs?|pasty|peely ?-?wally|wan|sallow|waxy|ashy|blotchy|clammy|bad colou?r|off ?-?colou?r|(?:funny|weird|strange|odd|horrible|awful|nasty|different|bad|terrible) colou?r|colou?r(?: (?:is|looks|seems|a|bit|little|just|really)){0,4} (?:off|bad|wrong|funny|weird|strange|not (?:great|good|right)|isnt (?:great|good|right)|poor|awful|terrible)|colou?r (?:isnt|doesnt look|aint|not) (?:\w+ )?(?:great|good|right|normal|itself)|a little white)\b|^no colou?r\b/g,
  },
  {
    sign: 'limp',
    sure: /\b(?:limp|floppy|floppier|flopping|(?:she|he|shes|hes|baby) (?:just )?flopped|(?:she|he|shes|hes|is|baby|body|gone|went|feels|just|all)(?: all| just| gone| went| a bit)? like (?:a |an )?(?:wet )?(?:noodle|dishrag|dish rag|rag|jelly|dead weight)|limpness|floppiness|dead weight in my|(?:wont|not|isnt|doesnt|cant|hardly|barely|stopped) (?:hardly |even |really |barely |respond\w* or )?(?:answer(?:ing)? (?:me|us|to|when|her|his|at all|back)|talk(?:ing)? back|look(?:ing)? at (?:me|us)|know(?:ing)? (?:me|who i am|us)|recogni[sz]\w+ (?:me|us)|hold(?:ing)? (?:her|his) head up|stay(?:ing)? awake|come (?:round|around|to(?= ?$| ?[.,!]))|coming (?:round|around|to(?= ?$| ?[.,!])))|(?:foam|froth)\w* at (?:the|her|his) mouth|(?:cant|hard to|struggling to|barely|trying to|couldnt) keep (?:her|him) (?:awake|conscious|with us)|slumped|(?:she|he|shes|hes|baby)(?: has| is| went| gone| just| keeps)* (?:gone|going|went) (?:stiff|rigid)|cant (?:bring|get) (?:her|him) (?:round|around)|(?:keeps?|kept) (?:drifting|nodding|zoning|conking|passing) (?:off|out)|slipping away|not with it|comatose|in a coma|staring (?:into space|at nothing|blankly|off)|blank stare|eyes (?:are |is |look |gone |went )*(?:glassy|glazed)|glassy eye\w*|(?:taking|took|takes) (?:a |another )?(?:fit|seizure|turn)s?(?! (?:at|with|on|to))|having a turn|(?:whole|entire) body (?:is |was |keeps )?(?:jerk|shak|twitch|stiff)\w*|(?:shaking|jerking|twitching|shaky) (?:all over|uncontrollabl\w+|nonstop|non stop)|unresponsive|uncon[cs]\w{1,4}ous|(?:barely|hardly|half|semi|not|not fully|not really|isnt|isnt fully|losing) ?-?conscious\w*|(?:lost|losing|loss of|lose) conscious\w*|in and out of (?:it|conscious\w*)|(?:drift|dropp|fad|slipp)\w* in and out|(?:un|not )rous(?:e)?able|(?:no|cant (?:find|feel|get)|couldnt (?:find|feel|get)|weak|faint) (?:a |any |his |her )?(?:pulse|heart ?beat)|(?:shes|hes|she is|he is|baby is|looks) (?:dead|dying)|(?:(?:shes|hes|she|he|baby|is|was|been|started|keeps|kept) fitting(?! (?:in|into|the|it|well|snug\w*|right(?! now)|fine|ok|okay|tight\w*)))|lifeless|letharg\w*|(?:wont|cant|not|isnt|doesnt|wouldnt|couldnt|hard to|difficult to|trouble|struggling to|unable to|impossible to|barely|hardly|cant get (?:her|him) to|cant get (?:her|him)|never) (?:really |to |hardly |barely |even |properly |fully |seem to )?(?:open (?:her|his) eyes|wake|waking|wakes|be woken|arouse|rouse|respond|responding|move|moving|react|reacting)(?: (?:her|him))?(?: up)?|(?:passed|passing|pass|passes|blacked|blacking|blacks) out|faint(?:ed|ing|s)|(?:don|done|did|go|gon|gonna|about to|going to|might|could|may|she|he) faint|feels? faint|collaps(?:e|es|ed|ing)|seizing|convuls\w+|(?:having|had|has|have|in|a|another|more|several|\d+) (?:an? |some |the )?(?:big |bad |long )?(?:seizures?|fits?(?! (?:in|into|the|it|well|right|fine|ok|okay)\b))|rag ?doll|no response|(?:cant|couldnt) (?:rouse|wake)|non ?responsive|out cold|(?:hardly|barely) (?:opens?|opening) (?:her |his )?eyes|(?:wont|doesnt|not|isnt|cant) open(?:ing)? (?:her|his) eyes|eyes (?:are |is |have |just |keep |kept )?roll\w*)\b|^(?:yes )?(?:seizures?|fitting)$/g,
    near: /\b(?:(?:very|so|really|too|this|super|extra|more) sleepy|sleepier|drowsy|(?:she|he|shes|hes|so|really|bit|totally|completely|looks|seems|acting|kind of|kinda) (?:is |so |really |a bit |totally )?out of it|groggy|seizures?|twitching|jerking|shaking|shaky|listless|very weak|really weak|dazed|sluggish|droopy|woozy|dizzy|lightheaded|spaced out|zoned out|vacant|delirious|confused|spasms?|jerks?|jerky|twitch|twitches|twitchy|(?:no|not much|zero) energy|nodding off|weak(?! (?:tea|coffee|juice|squash|gravy|milky tea)\b)|not (?:acting )?(?:her|him) ?self|not (?:very )?alert)\b/g,
  },
  {
    sign: 'bleeding',
    sure: /\b(?:(?:wont|not|doesnt|hasnt|cant (?:get it to )?) ?(?:stop(?:ped|ping)?|quit) (?:the )?bleed\w*|(?:bleed\w*|blood) (?:\w+ ){0,8}(?:wont|doesnt|hasnt|not|isnt|cant) (?:\w+ )?(?:stop|stopped|stopping|quit|quitting)|(?:keeps?|still|constantly|actively) bleed\w*|blood (?:\w+ ){0,5}keeps? (?:on )?(?:a )?(?:coming|running|going|flowing|leaking|dripping)|blood\b[^.!?;]{0,60}\bsoak\w* (?:right |clean |straight )?(?:through |thru |up )?(?:\d+|an?|two|three|several|a couple of|all|the|her|his|my|our|every)\b|(?:soak\w*|gone through|went through|been through|used) (?:right |clean |straight )?(?:through |thru |up )?(?:\d+|an?|several|loads of|a load of|the whole) (?:\w+ )?(?:towels?|rags?|washrags?|cloths?|washcloths?|flannels?|nappies|nappy|gauzes?|pads?|dressings?|t ?-?shirts?)\b(?=.{0,60}\bblood)|(?:pissing|peeing|hosing|pumping)(?: out)? (?:of )?blood|blood ?bath|(?:isnt|not|wont|doesnt) clot\w*|(?:cant|couldnt|wont|not|unable to|cannot|struggling to|trying to)(?: \w+)? (?:stop|stem|control|staunch|stopping) (?:the |all the |her |his |this )?(?:blood|bleed)|bleed\w*|bled|hemorrhag\w*|haemorrhag\w*|gush\w*|(?:a lot|lots|alot|so much|too much|tons?|pool|puddle|full|loads|covered in|soaked (?:in|with)|pouring|spurting|squirting|heavy|losing) (?:of )?(?:the )?blood|blood (?:\w+ ){0,6}keeps coming|blood (?:is |keeps )?(?:welling|bubbling|pumping|pulsing)|blood (?:blood )*(?:is )?(?:everywhere|all over|pouring|gushing|spurting|squirting|soaking|keeps|dripping|running|flowing|streaming)|soak\w* (?:the |a |through |thru )?(?:\w+ ){0,2}(?:cloth|towel|gauze|shirt|rag|diaper|blanket|sheet|onesie|pad)\w* (?:with|in) blood)\b/g,
    near: /\b(?:ooz(?:e|es|ing)(?! (?:out |some |a |bit |of |the |her |his |little )*(?:milk|formula|feed|food|water)\b)|stopped bleeding|bleeding (?:has |is |seems to (?:have )?)?(?:stop\w*|slow\w*))\b/g,
  },
  {
    sign: 'fresh-blood',
    sure: /\b(?:blood|bloods|bloody|bloodied|blud|claret)\b/g,
    near: /\b(?:spotting|(?:bright )?red (?:on|in|from) (?:the |her |his )?(?:gauze|dressing|tube|tubing|vest|shirt|sheet|bandage)|pink(?:ish)?(?: ?-?tinged?)? (?:on|in|from|around|fluid|gauze|stuff|liquid|drainage|spots?|discharge|tinged?|streaks?|stain|tint|color|colour|milk|foam)|(?:some|little|bit of|of|tiny|see) pink|pink(?:ish)? tinged?|coffee grounds?|reddish|red stuff|red fluid|red liquid)\b/g,
  },
  {
    sign: 'hard-belly',
    sure: new RegExp(
      `\\b(?:${belly}${copula} (?:hard|harder|stiffer|rigid|swollen|swolen|swole|swoll|swell|swelling|swelled|swoled|distended|tense|stiff|solid|${hardThing})(?! (?:to|time)\\b)|(?:hard|rigid|swollen|swole|distended|rock hard|stiff|solid)(?: and (?:swollen|hard|tight))? ${belly}|${belly} swelling|${belly} distension)\\b`,
      'g',
    ),
  },
  {
    sign: 'tight-belly',
    sure: new RegExp(
      `\\b(?:${belly}${copula} (?:(?:to |does |do )?(?:look|looks|looking|seem|seems|feel|feels) )?(?:tight(?! (?:like|as) an? ${hardThing})|tighter|taut|big|bigger|rounder|fuller|puffier|bulging|bulgy|stretched|sticking out|poking out|stuck out|bloated|bloating|blown up|blowing up|blew up|ballooned|swelling|swelled|swells|growing|firm|firmer|larger|full|puffy|puffed|doubled)|(?:tight|tighter|bigger|bloated|firm) ${belly}|${belly}(?: (?:is|s|was|has|have|all|just|looks?|gone|up|blown|out|big|round|it|like|as|a|an|beach|little)){1,8} (?:balloon(?:ed|ing)?|football|basketball|beach ?ball|melon|watermelon|barrel|ball)|bloated|bloating)\\b`,
      'g',
    ),
  },
  {
    sign: 'severe-pain',
    sure: /\b(?:scream(?:s|ing)?|squeal(?:s|ing)|(?:yell|holler|shout|bawl|roar|howl)(?:s|ing)? (?:out )?(?:in|with|from) (?:\w+ )?(?:pain|agony)|(?:thrashing|rolling) (?:(?:around|about|round) )?(?:in|with) pain|rolling (?:around|about|round|on the floor) (?:in|with) pain|doubled up|screech\w*|(?:beside|out of) (?:him|her)self (?:in|with) pain|(?:[7-9]|10) ?(?:\/|out of) ?10|shriek\w*|(?:severe|terrible|horrible|awful|extreme|intense|strong|horrid|unbearable|excruciating|worst|serious|huge) (?:\w+ )?pain|(?:a lot|lots|alot|so much|too much|tons?) (?:of )?pain|(?:really|very|so|real) bad pain|bad pain|pain (?:is )?(?:really |very |so |getting )?(?:bad|severe|terrible|awful|unbearable)|hurt(?:s|ing)?(?: (?:her|him|me))? (?:(?:so|really|very|real|too|right|awful|proper|super|mighty|pretty) )+(?:bad|badly|much)|hurt(?:s|ing)?(?: (?:her|him))? (?:bad|badly|a lot)|agony|inconsolable|writh\w+|unconsolable|doubled over)\b/g,
    near: /\b(?:(?:cry(?:ing)?|cries) (?:a lot|so much|so hard|nonstop|non stop|constantly|hysterically|in pain|uncontrollabl[ey])|(?:wont|cant|not|doesnt|hasnt) stop(?:ped|ping)? crying|in (?:some )?pain and crying|curled up|wailing|squealed|shrieked|hollering|bawling|arching (?:her|his) back|(?:wont|cant|not) (?:be |to )?(?:settle\w*|soothe\w*|console\w*|comforted)|howl\w*|(?:hold|clutch|grab)(?:s|ing)? (?:on to )?(?:her|his) (?:belly|tummy|stomach|tum)|screamed)\b/g,
  },
  {
    sign: 'vomit',
    sure: /\b(?:(?:chuck\w*|thr[oe]w\w*|bring\w*|brought|sick\w*|puk\w*|cough\w*|spat|spit\w*|fetch\w*|come|came|coming|heav\w*|vom\w*|bo(?:a)?k\w*) (?:(?:it|everything|all|the|whole|lot|of|her|his|last|feed|milk|half|most|right|straight|back|out|that) )*up\b(?:,| and| its| it| now| was| is| there| like| about| at least| over| already)* (?:again|over and over|non ?-?stop|a lot|everything|(?:\d+|several|many|a few|a couple|couple|multiple|loads of|lots of) times|\d+x|twice|green\w*|bile|constantly|repeatedly|all night|all day|since)|bo(?:a)?k(?:s|e|es|ed|ing)\b(?: (?!milk\b)\w+){0,3} (?:green\w*|bile|everywhere|again|twice|\d+ times)|bo(?:a)?king|chunder\w*|ralphing|yakking|vomming|regurgitating|(?:spew|vomit|puk|sick|barf|chuck|hurl|vom|throw|threw)\w*(?: up)?(?: \w+){0,2} everywhere|chucking up|upchuck\w*|spewing|hurling|(?:been|being|was) sick (?:loads|non ?-?stop|constantly|repeatedly)|sick (?:again|twice|(?:\d+|several|many|a few|lots of) times)|(?:sick|heaving|spew\w*) (?:over and over|again and again|a lot|constantly|non ?stop|repeatedly|every \w+ min\w*)|(?:keeps?|kept|still|wont stop) (?:on )?(?:being sick|chucking|spewing|heaving|retching)|sick (?:\w+ ){0,4}green|(?:chuck(?:s|ed|ing)?|spew(?:s|ed)?|heav(?:ed|es)|hurl(?:s|ed)?|spat|vom(?:s|med)?)(?: \w+){0,3} (?:green\w*|bile|over and over|again and again|nonstop|non stop|repeatedly|constantly|twice|\d+ times|\d+x|many times|several times|all night)|green (?:\w+ ){0,3}sick|(?:brought|bringing|brings|coughed|coughing|spat|spit) (?:it |some |something |stuff )*up (?:\w+ ){0,4}(?:green\w*|bile|yellow\w*)|bile (?:is |keeps |just )*(?:coming|came|comes) (?:up|out)|green (?:vomit\w*|puke\w*|throw ?up|barf\w*|stuff coming up|spit ?up|bile)|(?:vomit\w*|puk\w*|thr(?:ow|ew|owing|own|owed) ?(?:it )?up|barf\w*|spit(?:ting)? up)(?: \w+){0,2} (?:green|bile|greenish)|(?:vomit\w*|puk\w*|thr(?:ow|ew|owing|own|owed) up|barf\w*)(?: \w+){0,5} (?:over and over|again and again|a lot|nonstop|non stop|repeatedly|constantly|everything|twice|\d+ times|\d+x|many times|several times|(?:second|third|fourth|fifth|sixth|\dth|2nd|3rd) time|all night|all day|since|couple times|few times|multiple times|again|blood)|(?:keeps?|kept|wont stop|cant stop|constantly|still|repeated(?:ly)?|been|non ?stop|continuous(?:ly)?) (?:on )?(?:vomit\w*|puk\w*|throwing up|barf\w*|getting sick)|vomiting|puking|throwing (?:it |everything |the lot |all |his feed |her feed )?(?:back )?up|barfing|sicking(?: up)?|bilious|projectile)\b/g,
    near: /\b(?:(?:brought|bringing|brings) (?:it |everything |the lot |all |right |back |her feed |his feed )*up|emesis|(?:been|being|was|is being) sick|spew(?:s|ed)?|chuck(?:s|ed) up|vomit(?:s|ed)?|puked?|thr(?:ew|ow|ows|own|owed) (?:(?:it|everything|all|the|lot|whole|feed|her|his|back|right|straight) )*up|chuck(?:s|ed) (?:(?:it|everything|all|the|lot|whole|feed|her|his|back|right|straight) )*up|bo(?:a)?k(?:ed|es|e)?|chundered|ralphed|yakked|yacked|sicked(?: up| it up)?|regurgitat\w*|posset\w*|gagg\w+|retch\w*|heav(?:es|ing)|dry heav\w+|spit(?:ting)? up|nause\w+|queasy)\b/g,
  },
  {
    sign: 'fever',
    sure: /\b(?:fevers?|feverish|febrile|pyrexi\w+|burning (?:up|hot)|burnt up|hot as (?:fire|hell|a furnace|an oven|coals)|running (?:a |real |very |so |really )*(?:hot|temp(?:erature)?)|high temp(?:erature)?|(?:has|have|running|got|with|spiked|spiking) a (?:high )?temp(?:erature)?|temp(?:erature)? (?:is )?(?:up|high|elevated|spiking))\b/g,
    near: /\b(?:(?:feels?|seems?|is|shes|hes|bit|little|very|really|so|kinda|feeling|felt|too|skin|forehead|super) (?:hot|warm)|(?:is|shes|hes|feels?|she|he|skin|head|forehead)(?: is| so| really| all)? (?:roasting|boiling|scorching|baking|on fire|burning|scalding|piping|like (?:a|an) (?:furnace|oven|radiator))|warm to (?:the )?touch|hot to (?:the )?touch|chills|shivering|sweat(?:y|ing))\b|^(?:yes )?(?:hot|warm)$/g,
  },
  {
    sign: 'pain',
    sure: /\b(?:(?:cries|crying|cried|cry|whin\w*|flinch\w*|yelp\w*|jump\w*|recoil\w*|whimper\w*|squirm\w*|moan\w*|pulls? away|squeal\w*) (?:when|whenever|every time|each time|if|as soon as) (?:i|we|you) (?:touch|press|move|push|fill|inflat|flush|inject|pull|turn)\w*|(?:pull\w*|draw\w*|bring\w*) (?:up )?(?:her|his|the) (?:knees|legs) up|(?:hold|clutch|grab|rubb)(?:s|ing)(?: on to| on| at)? (?:her|his) (?:belly|tummy|stomach|tum|middle|side)|pain|pains|painful|paining|pained|owies?|owwies?|ouchy|ouchies|hurts?|hurting|sore|aching|aches?|ouch|tender|cramp\w*|winc\w+)\b/g,
    near: /\b(?:uncomfortable|uncomfy|discomfort|whimper\w*|grimac\w+|moaning|groaning|stinging|stings|throbbing|throbs|guarding|wont let (?:me|us|anyone) (?:touch|near|go near) (?:it|her|his|the)(?: belly| tummy| stomach| hole| site)?)\b/g,
  },
  {
    sign: 'leak',
    sure: /\b(?:leak(?:s|y|ed|in|ing|age)?|(?:wet|soaked|damp|drenched|soaking)(?: all)? a?round (?:the |his |her )?(?:tube|button|hole|stoma|site|it)|(?:vest|onesie|clothes|top|shirt|sheets?|bed|pjs|dressing|gauze|babygrow)(?: (?:is|are|was|all))* (?:soaked|drenched|saturated|wet) (?:with|in) (?:milk|formula|feed)|(?=c[ao]m|pour|spi|str|gush|flow|dri|ooz|squ|spr|tri|wee|see|run|soak)(?<!\bblood\b[^|]{0,60})(?:com|came|pour|spill|stream|gush|flow|dribbl|drip|ooz|squirt|spray|trickl|weep|seep|runn?|running|soak)\w* (?:(?:back|straight|right|all|down|up|out|over|his|her|the|belly|tummy|skin|some|milk|formula|feed|food|water|fluid|liquid|stuff|it) ){0,5}(?:(?:a?round|beside|next to|alongside|past|along|by|at) (?:the |her |his |its )?(?:sides?|edges?|outside|tube|button|hole|stoma|site|it|opening)|(?:from|out of|out|through) (?:the |her |his )?(?:sides?|edges?|hole|stoma|site|opening))\b|(?:milk|formula|feed|food) (?:is |was )?(?:all |everywhere )?a?round (?:the |her |his )?(?:tube|button|hole|stoma|site|it)|(?:stoma|hole|site) (?:is |keeps |was )?(?:weep\w*|dribbl\w*|dripp?\w*|seep\w*|pouring|soaked)|(?:dribbl\w*|spurt\w*|weep\w*) (?:out|around|from)|(?:milk|formula|feed|fluid|liquid|stuff)(?: (?:is|was|are|all|s|just|keeps?|still)){0,3} (?:running|dripping|pouring|coming|leaking|dribbling|trickling|streaming|oozing|seeping|going) (?:down (?:his|her|the) (?:belly|tummy|stomach|sides?|skin|leg|front)|all over (?:his|her|the) (?:belly|tummy|stomach|clothes|bed|shirt|vest|pjs|sheets?))|(?:weep|seep|dribbl|trickl)\w*(?: (?:a|wee|bit|little|lil|lot|slightly|tiny|out|it|some)){0,4} (?:a?round|from|at|by|beside)|seep\w*|ooz\w+ (?:out )?(?:a?round|from)|drip\w* (?:out )?(?:a?round|from|at)|(?:came|come|comes|coming|running|ran) (?:back )?out (?:a?round|beside|next to|along)|(?:coming|comes|dripping|drips|running) out around)\b/g,
    near: /\b(?:(?:wet|damp|moist|soggy|sticky|milky) (?:patch|spot|mark|stain|ring|bit|dressing|gauze)(?:es|s)?|(?:dressing|gauze|bandage|tape|vest|onesie|shirt|top|clothes|babygrow|sleeper|pjs|pyjamas|pajamas|skin round it|skin around it)(?: (?:is|are|was|feels?|got|gets|getting|a|bit|little|slightly|all|so)){1,4} (?:wet|damp|moist|soggy|soaked|drenched|sopping))\b/g,
  },
];

/** Words that make any sign small, so that it is asked about. */
export const small =
  /\b(?:dried|dry|crusty|crusted|old|brown(?:ish)?|(?:a )?(?:smidge|tad)(?: of)?|(?:a )?(?:few|couple(?: of)?) (?:drops|spots|specks)(?: of)?|a (?:tiny|little|wee|small|slight)(?: (?:bit|little|amount|drop|spot|smear|trace))?(?: of)?|(?:tiny|little|small) (?:bit|amount|drop|drops|spot|spots|smear)(?: of)?|(?<!\bquite )(?<!fair |good |decent )\b(?:a bit(?! of)|(?:a )?bit of(?! (?:fresh|bright|new|red)\b))|(?:tiny|little|small) (?=blood|bleed)|(?:a )?(?:drop|drops|spot|spots|speck|smear|streak|dot|trace|hint|tinge|touch(?=s? of)|dab)s? (?:of )?|slight(?:ly)?|mild(?:ly)?|minor|not much|barely any|hardly any|some tiny)\b/;

/** A negation reaches forward over words that only lead up to the sign. */
export const negator =
  /\b(?:no(?! (?:she|shes|he|hes|they|theyre|we|i|im|it|its|baby|my|her|his)\b)|nothing|nothin|nuthin|nuffin|nobody|nae|nary|nun|non(?! ?-?stop)|not|isnt|arent|wasnt|hasnt|havent|hadnt|doesnt|dont|didnt|without|never|none|neither|nor|nil|zero|0|denies|free of|no longer|not any)\b(?! (?:only|just|sure|certain))/g;

/** A word that may stand between a negation and its sign without ending its reach. */
export const reach =
  /^(?:a|an|any|anymore|lot|lots|tons?|complaints?|complain\w*|more|other|real|really|new|signs?|of|big|fresh|visible|obvious|seem\w*|to|be|have|has|having|had|in|look\w*|see|seeing|feel\w*|running|actual|actually|severe|green|trouble|with|much|or|very|that|so|red|at|all|noticeable|active|actively|getting|got|turning|going|bad|extra|sudden|evidence|single|drop|either|yet|currently|from|the|tube|hole|stoma|site|anything|like|her|his|hard|bit|wee|tiny|speck|hint|trace|slightest|smallest|remotely|least|spot|touch|one|1|been|acting|too|problems?|probs?|concerns?|worries|difficult\w*|issues?|distress|blue|blu|grey|gray|pale|purple|hot|warm|appear\w*|respiratory|high|low|grade|crazy)$/;

/** "Fever? no" asks and denies in one; "limp... sorry, limping" says and takes back. */
export const askedAndDenied =
  /\?+ ?(?=(?:no|none|nope)\b(?! \w))|\blimp(?=[ .,!-]{1,5}(?:(?:oh|no|oops|sorry|wait|i mean|i meant|meant|as in|not limp)[ .,!-]{1,4}){1,3}limping\b)/g;

/** Not knowing about the sign. */
export const unsureOfSign =
  /\b(?:(?:not sure|unsure|dont know|cant tell|no idea|hard to tell)(?! (?:what|why|whats|how|where|who|when))|wondering|worried (?:about|that))\b/;

/** A fear, a rule asked about, or a question: not something that is there. */
export const supposed =
  /\b(?:what if|in case|if(?<!\b(?:as|shrieks?|screams?|cries|yells?|wails?|winces|flinches|whimpers|moans|squeals|jumps|screaming|crying|wincing) if) (?:she|he|there|it|they|i|we)|what happens|should (?:i|we|she|he|there)|will (?:she|he|it|there|this)|would (?:she|he|it|there|that)|could (?:she|he|it|there|this)|can (?:she|he|it|this) (?:get|cause|start)|watch(?:ing)? (?:for|out)|look(?:ing)? (?:for|out for)|how (?:do|would|can|will) i|does (?:she|he|it) (?:have|need)|is (?:she|he) going to|supposed to|is it normal|afraid (?:of|she|he)|scared (?:of|she will|he will)|(?:is|does) (?:it|this|that) (?:\w+ )?(?:meant|supposed|going|normally|usually|always)|might (?:get|start|be)|to prevent|risk of|avoid|what (?:counts|does|do(?! (?:i|we) do\b)|is|are|would)|whats (?:a|an|the|hard)|^is an? |how (?:much|do|will|would)|is that|meaning of|classed as|class as|counted as|mean by|definition of|what if)\b|^(?:define|explain|describe)\b/;

/** Trouble breathing that has not begun: "what if she stops breathing". Told of as there, again or lasting, it is no fear. */
export const feared =
  /\b(?:what if|if|in case|(?:scared|afraid)(?: that)?) (?:she|he|they|it|(?:the |my )?(?:baby|son|daughter|child)) (?:ever |suddenly |just )?(?:(?:starts?|begins?) (?:to )?|stops? |quits? )?(?:breathing|chok(?:e|es|ing)|gasping)\b(?! (?:again|for|like|every|all|so|hard|fast|bad\w*|when|now|right now|and (?:she|he) is)\b)/g;

/** Said of another time. */
export const past =
  /\b(?:(?:last|back on|on|this past) (?:mon|tues|wednes|thurs|fri|satur|sun)day|the other (?:day|night|week)|last (?:week|weekend|month|year|night|time|summer|winter|spring|fall|autumn|christmas)|yesterday|(?:days?|weeks?|months?|years?|hours?) ago|in the past|history of|used to|when (?:she|he) was (?:born|little|a baby|younger|in)|(?:in|during|after|at) (?:the |her |his )?(?:surgery|birth|hospital|nicu)|earlier|(?<!than |\b(?:didnt|hadnt|wasnt|never|not) (?:\w+ )?)before(?! (?:and|it))|once when|when (?:she|he) was a? ?(?:newborn|baby|infant|preemie)|previously|prone to|in (?:january|february|march|april|may|june|july|august|september|october|november|december)|not today|always (?:is|are|has|was|does|been|looks?|a bit)|normal for (?:her|him)|sometimes|always has|usually|disorder|(?:for|with) (?:her|his) seizures)\b/;

/** "Since yesterday" goes on; "tighter than yesterday" is now. */
export const sinceThen =
  /\bsince (?:yesterday|last (?:night|week|time|weekend)|(?:last )?(?:mon|tues|wednes|thurs|fri|satur|sun)day|the other (?:day|night)|this (?:morning|afternoon|evening)|earlier|before)\b|\bthan (?:(?:it|she|he|they) (?:was|were|did|looked|felt) )?(?:yesterday|last night|this (?:morning|afternoon|evening)|earlier|before|(?:an?|few|couple|half an?|[\d.]+) (?:hours?|minutes?|mins?|hrs?) ago|at (?:bed ?time|dinner|supper|lunch|tea))\b/g;

/** Said to be over, in the same statement or a later one of the sentence. */
export const over =
  /\b(?:(?<!(?:not|nt) (?:\w+ )?|\b(?:i|we) )stopped(?! (?:half|the feed|feeding|because|it))|always (?:is|has|was|does)|not any ?more|anymore|(?:but|and|just) not (?:now|today)|no longer|went away|gone(?= ?(?:now|away|and|but|so|$))|(?:is|are|now|seems|all|feels) better|(?:calm|calmed down|fine|ok|okay|better|good) now|was (?:bleeding|screaming|crying|pale)(?! (?:with|when|while|during|all|the whole|every|throughout|so)\b)|settled|resolved|under control|slowed|(?:it|fever) (?:broke|passed|cleared))\b/;

/** What comes back through the tube, looked at only while that is asked. */
export const redContents = /\b(?:red|reddish|bloody|crimson)\b(?! ?(?:cap|clamp|port|line|tube|mark))/;

/** Said of someone or something else. */
export const other =
  /\b(?:my (?:other|older|younger|head|heart|stomach|back)|(?<!\b(?:to|under|in|on|against|with) )my (?:finger|hand)|i (?:have|had|feel) (?:a |so |like )?|im (?:so |a little )?(?:bleeding|sick|hot|pale|dizzy|nauseous))\b/;

/** Said of another person altogether: not heard at all, but for breathing. One who tells, finds or does is no patient. */
export const otherPerson =
  /\b(?:(?:my|his|her|our|the) (?:other (?:son|daughter|kid|child|one|1|twin)|(?:older|younger|big|little|wee|baby) (?:brother|sister|one|1|boy|girl|son|daughter)|sister|brother|siblings?|twin|mom|mum|mommy|mummy|mam|ma|dad|daddy|mother|father|husband|wife|partner|boyfriend|girlfriend|grandma|grandpa|granny|gran|nan|nana|aunty?|auntie|uncle|cousin|neighbou?r|friend|nurse|carer|dog|cat)s?|sibling)\b(?!.*\b(?:he|she|hes|shes|it|its|theres|there|tube|button|hole|baby|him|says?|saying|said|thinks?|thought|saw|sees|seen|notic\w+|found|finds|heard|hears|reckons?|tells?|told|pulled|yanked|ripped|knocked|took|holding|holds|tried|checked|checks|called|texted|rang|phoned|worried|asked|asks|drove|driving|with)\b)/;

/** What whoever writes says of themselves in fright. */
const callerState =
  '(?:scream\\w*|cry\\w*|shak\\w*|breath\\w*|faint\\w*|pass\\w* out|sick|vomit\\w*|throw\\w* up|chok\\w*|pale|white|sweat\\w*|trembl\\w*|hurt\\w*|bleed\\w*|pant\\w*|gasp\\w*|dizzy|(?:in )?pain|collaps\\w*|hyperventilat\\w*|wheez\\w*|limp|a seizure|a fit|hot|panicking|floppy|weak)';

/** Words that only look like signs. */
export const lookalikes: readonly RegExp[] = [
  // "Not doing so hot" is no heat.
  /\b(?:not|isnt|nt)(?: (?:doing|feeling|looking|been|all|that|too))* (?:so |too |very |all that )?hot\b(?! to\b)/g,
  // Whoever writes feels it: "i was white as a sheet".
  new RegExp(
    `\\b(?:im|ive|i)(?: (?:was|am|gonna|gunna|about|to|be|might|could|nearly|feel|felt|went|turned|got|been|so|really|very|quite|absolutely|totally|completely|feeling|gone|going|still|just|proper|right|pure|all|dead|a bit|near|near enough))+ ${callerState}(?: as a (?:sheet|ghost))?\\b`,
    'g',
  ),
  // What somebody asked about, or said to look for.
  /\basked (?:me |us )?(?:if |whether |was |is |did |has |had )?(?:he|she|hes|shes|there)\b[^.!?;]{0,50}\b(?:i|we) (?:said|told (?:them|her|him)) (?:no|nope|not|he|she)\b|\b(?:watch\w*|look(?:ing)? out|(?:an |one )?eye out|be looking|check\w*) (?:out )?for (?:(?:a|any|signs of|fevers?|pain|bleeding|vomiting|blood|leaks?|leaking|swelling|redness|and|or|temp|temperature|sickness|infection|fresh|green|sick)\b(?:, ?| )?)+(?=$|[.!?,;]|i\b|we\b|call\b|then\b)/g,
  /\b(?:hates?|scared of|afraid of|faints? at|fainting at|sight of|cant stand|dont like|doesnt like|not good with|terrified of|squeamish about|freaks? out at) (?:the (?:sight|smell) of )?(?:the )?blood\b|\bscream\w* (?:for|about|at|over) (?:(?:his|her|the|a|some|more|another) )?(?:dinner|bottle|food|milk|tv|telly|tablet|toys?|attention|ice cream|joy|biscuits?|show|cartoons?|tablet|dummy|pacifier)\b|\bscream\w* (?:with|in) (?:laughter|joy|delight|excitement)\b/g,
  /\bbleeding (?:heavy to (?:carry|lift|hold)|gorgeous|useless|stupid|awful|nightmare|mad|cold|late|typical|daft|ridiculous|annoying|joke)\b|\b(?:box|bottle|packet|roof|tap|nappy|diaper|cup|fridge)s?(?: (?:is|was|are|has|all|just|it))* leak\w*\b|\bpink(?:,| and| nice)+ warm\b/g,
  /\b(?:scream\w*|crying|cough\w*|blood|fever|vomit|sick|noise)(?: (?:is|was|were|came|comes|just|only|all))* (?:from )?(?:the|my|our|his|her) (?:own )?(?:other \w+|cat|dog|brother|sister|twin|neighbou?rs?|finger|hand|thumb|baby brother|baby sister|telly|tv)\b|\bblood (?:is|was) (?:mine|my own)\b/g,
  // Said of whoever writes, and idioms.
  new RegExp(
    `\\b(?:its|just|only|thats|it was) (?:just |only )?(?:me|mum|mom|dad|us|mommy|mummy) (?:(?:that|who|thats|whos|thatll) )?(?:(?:is|was|cant|can|could|couldnt|nearly|almost|hardly|barely|feels|feeling|about|to|gonna|going|so|all|in|having|needs) ){0,4}${callerState}\\b`,
    'g',
  ),
  new RegExp(
    `\\bim the (?:only )?(?:one|1) (?:(?:that|who|thats|whos|is|was|cant|can|could|nearly|almost|hardly|barely|about|to|gonna|going|in|having) ){0,4}${callerState}\\b`,
    'g',
  ),
  new RegExp(
    `\\b(?:i|we)(?: (?:was|am|have|just|also|practically|actually|literally|honestly|damn|bloody|about|totally)){0,3} (?:nearly|almost|practically|damn near|about)(?: (?:had|have|stopped|quit|forgot|to|was|a|went)){0,3} ${callerState}(?: myself| ourselves)?\\b`,
    'g',
  ),
  /\bi(?: (?:can|could|cant|couldnt|hardly|barely|even|just))+ breathe?\b(?=[^.!?]{0,40}\b(?:nervous|nerves|scared|panick?\w*|stress\w*|anxi\w*|worried|myself|terrified)\b)|\b(?:nervous|scared|panicking|stressed|anxious|terrified),? (?:that )?i (?:can|could|cant|couldnt)(?: (?:hardly|barely|even))? breathe?\b/g,
  /\b(?:i|ive|we)\b[^.!?;]{0,40}\b(?:took|take|taking|taken) (?:a|some|my|one|1|2|3|a few|a couple of)(?: \w+)? breaths?\b|\b(?:im|i am|i was|me|we are|we were|(?<!\w )were) (?:all |both |so |really |totally |just |a bit )*out of (?:breath|puff)\b|\b(?:im|i am|i can|i|we can) (?:can |finally |now )?breathe?(?:ing)? (?:a bit |a lot |a little |much |so much |way |lots )?(?:easier|better)\b|\bbreath of fresh air\b|\bunder (?:his|her|my) breath\b|\bwaste (?:my|your) breath\b|\bbad breath\b|\bbated breath\b|\bbreath(?:s|e|es|ing)?(?: a| some)? (?:a )?sigh\b|\bbreath(?:e|ing) again now\b/g,
  /\bmy (?:own |poor |old )?(?:eyes?|back|neck|arms?|legs?|feet|knees?|heart|nerves|chest|throat|ears?|brain|shoulders?|wrists?|head|bones)(?: (?:is|are|was|were|do|all|really|still|just|so|feels?|a bit|kind of)){0,3} (?:hurt\w*|ach\w*|sore|pain\w*|killing|bleed\w*|shak\w*|limp|weak|throbb\w*)\b/g,
  /\b(?:sick|faint|white|ill|limp|weak|dizzy|grey|gray|pale) with (?:worry|fear|nerves|fright|panic|relief)\b|\bworried sick\b|\bsick of\b|\bsick to my stomach\b|\bscared stiff\b|\bblue in the face\b|\bheart attack\b|\bbloody murder\b|\bblood,? sweat\b|\bblood (?:is |was )?boil\w*|\bin (?:the|his|her|our|my) blood\b|\bgrowing pains\b|\b(?:a|right|real|royal|total) pain(?: in the \w+)?(?= ?(?:$|[.,!]| (?:to|of|getting|but|lol)\b))|\bdead (?:asleep|tired|to the world|easy|on|sure|quick|simple|chuffed|pleased|straightforward)\b|\bdying (?:to|for)\b|\bhot (?:chocolate|tea|coffee|drink|dogs?|bottle|pot)\b/g,
  /\b(?:had|has|having|threw|throwing|throws|throw|pitch\w*|pulled|took|taking) (?:a |an |his |her )?(?:hissy |little |big |right |proper |total |royal |shit |conniption )*(?:hissy|conniption|tantrum|fits?)(?= (?:about|over|because|cos|cause|coz|when i|when we|if i|when mom|when the|cuz|bc|that|at me|wanting)\b)|\b(?:threw|throwing|throws|throw|pitch\w*) (?:a |an |his |her )(?:hissy |little |big |right )*fits?\b|\bhissy ?fits?\b|\b(?:perfect|good|snug|tight|nice|better|great) fit\b/g,
  // An intensifier: what is really bloody is a thing that blood can be on.
  /\bbloody (?!(?:and|on|at|in|around|round|from|all|everywhere|again|too|now|when|with|but|or|so|coming|looking|red|pink|brown|though|inside|near|by|under|where|it|this|since|then|after|as|like|discharge|stools?|poo|poop|fluid|drain\w*|gauze|dressing|stuff|mess|towels?|shirt|diaper|nappy|aspirate|contents?|mucus|ooz\w*|saliva|spit|vomit|sick|puke|hole|stoma|site|clothes|bandage|tee?|sheets?|vest|nose|mouth|lips?|liquid|drip|drops?|streak\w*|tinge\w*|water|hands?|fingers?|skin|belly|tummy|stomach|patch|spots?|bits?|smear\w*|bed|pad|urine|pee|wee|milk|feed|formula|leak\w*|stain\w*|goo|gunk|slime|wound|cut|rag|cloth|tissue|wipe|cotton|pillow|blanket|onesie|babygrow|pyjamas|pjs|secretions?)\b)(?=[a-z])/g,
  /\bbleeding (?:thing|things|strips?|kit|tape|phone|hell|syringe|clamp|packet|box|car|traffic|obvious|ambulance|idiot)\b/g,
  /\bnose ?-?bleeds?\b(?![^.!?;]{0,40}\b(?:wont|isnt|not|pour\w*|gush\w*)\b)|\b(?:blood|bled|bleeding|bleed)(?: \w+){0,4} (?:from|out of|on|in) (?:his|her|my|the) nose\b(?![^.!?;]{0,40}\b(?:wont|isnt|not stop\w*|pour\w*|gush\w*|mouth)\b)|\b(?:nose|knee|elbow|scab|tooth|gums?|lip)s?(?: (?:is|was|are|were|started|just|still|has|had|a|bit|little)){0,3} (?:bled|bleed\w*)\b(?![^.!?;]{0,40}\b(?:wont|isnt|not stop\w*|pour\w*|gush\w*|mouth)\b)/g,
  // An airway that was always soft, and how it always sounds.
  /\bfloppy (?:airways?|larynx|voice ?box|windpipe|trachea)\b|\b(?:breathing|breath) (?:is |sounds |its |at |just |still |as )*(?:his|her|the) (?:usual|normal|regular)\b(?: \w+)?(?: (?:self|way|noise|sound|noisy self))?|\bbreath(?:ing|es) (?:is |sounds |just |the )*(?:same )?(?:as|like) (?:usual|always|normal|ever|he always does|she always does)\b/g,
  // Long ago, and denied for now.
  /\b(?:vomited|threw up|(?:was|been) sick|puked|bled|fainted|leaked|(?:had|has had|got|with) (?:a |some )?(?:high )?(?:fever|temp\w*|seizure|fit|bleed\w*|tummy bug))\b[^.!?;]{0,24}\b(?:last (?:week|month|year|summer|winter|spring|fall|autumn|(?:mon|tues|wednes|thurs|fri|satur|sun)day)|(?:weeks|months|years) ago)\b(?=[^!?;]{0,60}\b(?:not (?:today|now|tonight|since)|(?:nothing|none) (?:today|now|since)|no to (?:all|everything|any)|(?:it|that) (?:broke|passed|went|stopped|cleared)|(?:fine|ok|okay|good|grand|better|well|great|nothing|none) (?:now|today|since|after))\b)/g,
  /\bmy (?:own )?(?:hands?|fingers?|thumbs?|knuckles?)(?: is| are| was| were| still)* (?:bleeding|bled|hurts?|sore)\b/g,
  /\bairways? (?:is |are |all |looks |looking )*(?:clear|open|patent|good|fine|ok|okay)\b/g,
  /\bfloppy ear\w*|(?<=^|\b(?:a|the|its) )(?:limp|floppy|saggy) (?:old )?(?:tube|tubing|balloon|bulb|cuff|bag|strip|tape)\b|\bits (?:\w+ )?(?:limp|floppy),? (?:the )?(?:balloon|tube|tubing|bulb)\b|\bim (?:just )?trying to breathe\b|\blike (?:a |an |the )?(?:\w+ )?(?:spit ?up|vomit|puke|throw ?up)\b/g,
  /\bpale (?:yellow|green|brown|tan|beige|milky)\w*/g,
  /\bbloody (?:thing|tube|hell|balloon|strips?|kit|phone|stupid|well|awful|nightmare|useless|tape|syringe|thingy)\b/g,
  /\b(?:tube|tubing|balloon|bulb|cuff|button|strip|paper|bag|tape|it|plunger)s?(?: (?:is|has|looks|went|gone|goes|feels|got|all|a bit|just|totally|really|so)){0,4} (?:limp|floppy)\b/g,
  /\b(?:my )?(?:own )?(?:hands?|legs?|fingers?|palms?|voice)(?: (?:is|are|was|were|still|all|so|just))* (?:shak\w*|trembl\w*|sweat\w*)\b|\bsweaty (?:hands?|palms?|fingers)\b|\bsweating (?:buckets|bullets)\b/g,
  // Sweat that only keeps the tape from sticking.
  /\b(?:tape|tap(?:ed|ing)|stick|sticking)\b[^.!?;]{0,30}\b(?:sweat\w*|clammy)\b|\b(?:sweat\w*|clammy)\b[^.!?;]{0,24}\b(?:taped?|taping|sticks?|sticking)\b/g,
  /\b(?:tube|button|balloon|tape|plunger|syringe)(?: (?:is|are|stays?|now|still))* (?:not|isnt|doesnt|wont) (?:mov\w+|budg\w+)\b/g,
  /\b(?:deep|big) breaths?\b|\bbreath(?:es|ing) (?:nice|nicely|slow|slowly) and (?:slow|slowly|easy|steady|steadily|calm|calmly|even|evenly|deep)\b|(?<=^|[,.] ?|\b(?:i|we|and|then|me|us|just|to|slowly|deep|ok) )breath(?:e|ed)? (?:in|out)\b(?! (?:of|right|properly))|\b(?:my|hold|holding|held|catch my|save your) breath\b|\bbreath(?:e|es|ing) (?:\w+ )?(?:treatment|machine)\b|\bbreather\b/g,
  /(?<!\b(?:not|dont|isnt|arent|doesnt|cant|wont|aint|hardly|barely|never)(?: \w+)? ?)\bbreath(?:e|es|ing) (?:is |looks |seems |sounds |just |perfectly |totally |really |pretty |all |very |and \w+ )*(?:(?:just |exactly )?(?:as|like|how|the way) (?:she|he|it) (?:ought|should|usually does|normally does|always does|always has)(?: to| be| do)?|fine|ok|okay|normal|normally|good|great|well|easy|easily|perfect|alright|comfortably|regular|regularly|calmly|lovely|nicely|grand|beautifully|steady|steadily|soundly|fine|sweetly|peacefully|quietly|gently|evenly|no (?:bother|problem)|on (?:her|his) own|like (?:normal|usual|always|(?:a )?(?:champ\w*|dream|trooper|baby|angel)))\b(?! ?not)/g,
  /\bblood (?:pressure|test|tests|work|draw|sugar|type|thinner|thinners|oxygen)\b|\bcold blooded\b/g,
  /\b(?:heart|seizure|epilepsy|seizures|fever|pain|nausea) (?:med|meds|medicine|medicines|medication|medications|drug|drugs|pill|pills|dose|reducer|relief|control|plan)\b/g,
  /\b(?:med|meds|medicine|medication) for (?:her |his )?(?:seizures?|pain|fever|nausea)\b/g,
  /\b(?:blue|grey|gray|green|purple|pale|white|pink|red) (?:cap|caps|clamp|port|ports|tube|button|strip|strips|valve|balloon|syringe|box|bag|paper|plug|line|kit|gauze|shirt|blanket|cloth|towel|tip|end|top|lid|one|tape|ring|pyjamas|pajamas|pjs)\b/g,
  /\b(?:cap|clamp|port|tube|button|strip|strips|valve|balloon|syringe|box|bag|paper|plug|kit|tip|end|lid|tape|ring|it)(?: (?:is|was|turned|turns|went|goes|looks|its|that|which|says|a|all|really|very|so|quite|kind of)){1,3} (?:bright |light |dark |pale |white |black |and )*(?:blue|grey|gray|purple|green|pale|pink|red)\b/g,
  /\bpain in the (?:butt|ass|neck)\b|\bpain ?(?:killer|killers|free)\b|\bpainless(?:ly)?\b|\bhot (?:water|line|mess)\b|\bwarm(?:,| and| well)+ (?:pink|dry|perfused)\b|\bwarm (?:water|cloth|washcloth|compress|room|bath|blanket)\b|\bsweatshirt\b|\bhurt her(?:self)? to\b/g,
  /\b(?:will|would|does|did|do|can|could|going to|dont want to|didnt want to|want to|afraid to|scared to|might) (?:it |this |that |i |to )?hurt(?: (?:her|him|anything|it))?\b|\bdoes it hurt\b|\bwithout hurting\b/g,
  /\b(?:i|im|we|were|mom|dad)(?: am| are| was| were| just| nearly| almost| about| literally)* (?:screaming|shaking|crying|fainting|fainted|gagging|sweating|passing out|passed out)\b|\bfreaking out\b|\bscream at\b/g,
];
/** Words of quantity: a negation that reaches them leaves some of the sign. */
export const muchOf = /\b(?:much|lots?|tons?|loads|heaps)\b/;
export const muchAfter = /^ (?:(?:that|so|too|very) )?(?:much|a lot)\b/;
export const hardlyNo = /\b(?:almost|nearly|practically|virtually) (?:no|not|none)$/;
/** After a sign denied: some of it after all, "well, a speck". */
export const someAfterAll =
  /^(?:(?:well|ok|okay|oh|wait|actually|maybe|perhaps|or|just|only|there|theres|was|is|its|i|see|can|saw|we|have|ive|got|had|um|hmm|like|even|no|sorry|then|probably|possibly|really|literally|unless|you|count|on) )*(?:(?:an?|one|1|2|some|couple|few|the|this|very|tiny|little|small|wee|slight|odd|teeny|pink|red) )*(?:bits?|drops?|droplets?|specks?|spots?|dots?|smudges?|smears?|streaks?|traces?|tinges?|hints?|dabs?|little|tad|smidge\w*|stain|slight (?:one|1)|(?:tiny )?(?:one|1)|once|twice)(?= ?$| (?:or|on|in|at|from|when|around|round|there|here|maybe|though|earlier|now|that|by|of (?:it|pink|red|blood))\b)/;
/** How a list written with slashes is said. */
export const or = ' or ';
/** A list: its negation reaches all of it. */
export const listed = / (?:or|nor) /;
/** Where a statement inside a sentence ends. */
export const statementEnd =
  /\||\b(?:but|just(?! (?:keeps?|kept|wont|wouldnt|cant|doesnt|isnt)\b)|except|however|although|though|only|then)\b|(?<!\b(?:over|again) )\band\b(?! (?:out|down)\b)(?! (?:\w+ )?(?:hard|stiff|swollen|tight|rigid|distended|tense|bloated|bigger|firm|tighter|harder|rounder|blue|purple|grey|gray|mottled)\b)(?! (?:it|its|that|thats|still|just)(?: (?:just|still|is))* (?:isnt|not|wont|doesnt|hasnt|cant|keeps) (?:\w+ )?(?:stop\w*|quit\w*))/;
/** "And no he isn't bleeding": a no that belongs to the denial after it. */
export const noBefore = /\b(?:no|nope|nah) (?:he|she|it|they|hes|shes|its|theyre|theres|there|baby) $/;
/** "Fever: no". */
export const deniedAfter =
  /^ ?(?:[:=-] ?|(?:is|are|was) (?:a )?)?(?:no|none|nope|nil|negative|zero|0)(?: (?:sir|maam|madam|mam|love|dear|thanks|thank you))*$/;
