/** English for the answers to the plainer questions, beside yes and no. */
import type { Statements } from '../yesNo.ts';
import { matter } from './negation.ts';

const have =
  '(?:(?:yes |ok )?(?:i|we|she|he|ive|weve) (?:do )?(?:have|has|got|found|see|do have|have got)|(?:we are|were|i am|im|are) having|have|got|found|ive got|weve got|there is|theres)';
const thing =
  '(?:it|them|one|some|1|2|both|(?:the |a |an |our |my |her |his |some |ph )*(?:emergency |ph |test |backup |spare |extra |temporary |replacement )?(?:kit|strips?|paper|tube|foley|bag)s?|(?:the |a |our |his |her )?spare)';

export const kit: Statements = {
  matter: matter.kit,
  // Latex in it may be what the child cannot have.
  unless: /\blatex in (?:it|there|them)\b|\b(?:its|it is|tube is|theyre|made of) latex\b/,
  neutral:
    /\b(?:never|not|havent|hasnt|didnt) (?:(?:ever|actually|really) )?(?:done|used|use|tried|had to|needed|opened|need|expired?)(?: (?:it|this|that|one|them|to))*\b|\bnot expired\b|\b(?:no|without|dont have (?:any )?) ?(?:jelly|gel|lube|lubricant|gloves|tape|gauze|syringe)\b/g,
  yes: new RegExp(
    `^${have} ${thing}(?: (?:with|in|from|ready|and|of|on|the|me|us|hand|bag|a|spare|tube|it|home|hospital|right|here|diaper|car|my|our|her|his|room|drawer|closet|backpack|purse|next|to|front|out|only|open|opened|beside|table|bed|side|counter|hands|lap|floor|kitchen|bathroom))*$|^(?:kit|got kit|have kit|(?:kit|its|kits|it is) (?:is )?in (?:my|our) hands?|kit present|its (?:right )?here|(?:(?:its|it is|kit is|kits) )?(?:right |just )?(?:in front of|beside|next to) (?:me|us|her|him)|(?:its|it is|kit is) (?:right )?in (?:the|my|our|her|his|a) (?:\\w+ )?(?:bag|backpack|drawer|closet|cupboard|cabinet)|sure do|kit ready|(?:the |our |her |his |emergency )*kits? (?:is )?(?:present|available|to hand|at hand|with (?:me|us)|here|ready|(?:here )?at (?:the |her |his )?bedside)|kit (?:is )?at (?:the |her |his )?bedside|trained|kit is (?:here|ready|right here))$|^(?:i |we )?(?:was|were|been|have been|got) (?:shown|taught|trained).*$|^(?:the |a )?(?:nurse|hospital|they|doctor) (?:showed|taught|trained) (?:me|us).*$|^i know how.*$`,
  ),
  no: /\b(?:(?:at|in) (?:my|his|her|our) (?:exs?|moms?|mums?|dads?|mothers?|fathers?|sisters?|parents?|grandmas?|grans?|nans?|sitters?|school(?! ?bag)|daycare|nursery|office|other)(?: (?:house|home|place|flat))?|at (?:the |a )?(?:school|daycare|nursery|office|respite|hospice)|(?:cant|couldnt) find|lost|left (?:it |the kit )?(?:at|in)|ran out|(?:gave|sent|handed) (?:it|them) back|returned it|out of (?:them|strips)|no kit|no strips|all out|used (?:it|them) (?:all|up|last time|already))\b/,
};
export const neverDone = /\b(?:never|havent|have not|not) (?:\w+ )?(?:done|tried) (?:it|this|one|that|them|anything)\b/;
export const shown = /\b(?:shown|showed|taught|trained|know how|learned|learnt)\b/;
/** The kit is not where they are, whatever it lies in. */
export const kitAway =
  /\b(?:(?:husband|wife|partner|mom|mum|dad|mother|father|grandma|grandpa|sister|brother|nurse|sitter|he|she|they) (?:just |already |must have )?took (?:it|the (?:car|truck|van|kit|bag))|(?:has|have|got) it (?:at|with) (?:her|him|his|their|them|work|school|home))\b/;
/** Someone else was shown, and is not there. */
export const otherShown =
  /\b(?:wife|husband|mom|dad|nurse|grandma|grandpa|partner|mother|father|she|he)\b.{0,30}\b(?:trained|shown|taught|knows how)\b.{0,30}\b(?:work|away|not here|isnt here|asleep|gone|out|sleeping|home)\b/;
export const notShown =
  /\b(?:(?:never|not|nobody|no body|havent|hasnt|wasnt|werent|arent|didnt|dont|isnt|no) (?:\w+ ){0,4}(?:shown|showed|show|taught|teach|trained|training|train|told how|learned|learnt|know how|knows how|knowing how|instructed|been shown|walk(?:ed)? (?:me|us) through|went (?:over|through) it)|(?:not sure|unsure|no idea|no clue|dont know|dont remember|forgot|cant remember) (?:\w+ ){0,2}(?:how|what to do)|untrained|no training)\b/;
export const ownTube: Statements = {
  matter: matter.ownTube,
  yes: new RegExp(
    `^(?:(?:its |all |looks |tube |balloon |looks like its )*(?:good|fine|ok|okay|perfect)|${have}|i kept|i saved|kept|saved) (?:it|the (?:old )?(?:tube|button)|the whole thing|that)(?: (?:here|with|me|right|in|my|hand|still|all|of|it|a|bag))*$`,
  ),
};
export const strips: Statements = {
  matter: matter.strips,
  yes: new RegExp(
    `^${have} ${thing}(?: (?:with|in|from|ready|and|of|on|the|me|us|hand|bag|a|it|left|home|kit|here|only|front|out|right|drawer|cupboard|cabinet))*$|^strips?$|^(?:just |only )?(?:1|2|3|one|a few|some|plenty) left$|^(?:i |we )?(?:have|got|have got) (?:plenty|loads|lots|a few|some|them)$|^in my hand$|^have got$|^(?:the |our |ph |indicator |test )*strips? (?:are |is )?(?:present|available|here|ready|to hand|at hand|with (?:me|us))$`,
  ),
  // Strips past their date are no strips.
  no: /\b(?:(?:cant|couldnt) find|lost|left (?:it|them) (?:at|in)|(?:^|i |we |got )left (?:at|in)|ran out|all gone|out of (?:them|strips|date|it|those)|(?:got|are|were|is) (?:wet|damp|soaked|ruined)|(?:finished|used) (?:them|it|the last|all)|fresh out|no strips|all out|all used|(?<!not |never |nt )used up|^(?:all )?finished$|used (?:it|them) (?:all|up)|(?<!not |nt )expired)\b/,
};
export const contents: Statements = {
  matter: matter.contents,
  neutral: /\b(?:not|havent|isnt) (?:\w+ )?(?:done|finished|ready)(?: yet)?\b/g,
  yes: /^(?:(?:i |we )?(?:just |did )?(?:got|get|see|have|pulled|drew|there is|theres|had)(?: (?!(?:nothing|no|not|never|none)\b)\w+){0,5} (?:some|stuff|milk|fluid|formula|liquid|contents|back|juice|milky|it|cloudy|yellow|clear|white|tan|little|drops?|ml|mls|cc|stomach|\d+(?:\.\d+)? ?(?:ml|mls|cc))\b.*|(?:approx\w* |about |around |roughly |maybe |then )?(?:(?:a )?(?:little|few|tiny|small|couple|good|fair|bit|drops?)(?: (?:bit|amount|drops?|mls?|lot))?(?: of)? )?(?:(?:brown|brownish|green|greenish|dark|thick|thin|old|warm|sour|curdled|yellowy|pale|creamy) )?(?:some|milky|milk|fluid|formula|liquid|stuff|cloudy|curdled|curds|yellow|yellowish|clear|white|tan|contents|stomach contents|drops?|juice|\d+(?:\.\d+)? ?(?:ml|mls|cc))(?: \w+){0,8}|(?:aspirate|contents|residual|return) (?:obtained|present|seen|positive|got)(?: \w+){0,3}|aspirated (?:about |approx |some )?(?:\d+(?:\.\d+)? ?(?:ml|mls|cc)|milk\w*|contents|fluid|gastric)(?: \w+){0,4}|(?:i |we )?(?:got|have|had) (?:a |just )?(?:wee|little|tiny|small|good) (?:bit|drop|amount)(?: (?:back|up|in|of|the|syringe|it|there))*|(?:stuff|milk|something|fluid|formula|liquid|some|contents)(?: \w+){0,3} (?:came|comes|coming|in the syringe)\b.*|it (?:did|came|worked)(?: \w+){0,5}|(?:its|it is) coming(?: (?:up|back|in|out|now|slowly))*|(?:a )?(?:little|tiny)? ?(?:bit|some)(?: (?:just|finally))? (?:came|comes|is coming)(?: \w+){0,3}|success|a (?:little|bit|few drops|tiny bit))$/,
  no: /\b(?:(?:pulls?|sucks?|draws?|pulling|drawing) (?:in |back |up )?(?:only |just )?air\b(?!,? (?:then|first|at first|and|but))|(?:springs?|pings?|snaps?|sucks?|sprang|pulls) (?:right |straight |itself )?back|^air$|^(?:0|zero)(?: ?mls?)?$|(?:just |only )?(?:sucking|pulling|getting) air|only air|just air|air only|air(?: and)? nothing|nothing|bubbles only|just bubbles|only bubbles|dry|empty|no luck|(?:wont|cant|couldnt|doesnt|didnt) (?:\w+ )?(?:come|draw|pull|get|work))\b/,
  // What went in and comes back again is not the stomach's.
  unless: /\b(?:water|flush) (?:\w+ ){0,3}(?:put|pushed|flushed|gave|in)\b|\b(?:the|my|our) (?:flush|water)\b/,
};
export const looksRight =
  /\b(?:(?:same|like) (?:as )?(?:it )?(?:usual(?:ly)?|always|normal(?:ly)?)|milky|milk|cream\w*|whit(?:e|ish)|cloudy|curd\w*|cottage cheese|yogh?urt\w*|formula|tan|tannish|beige|grass(?:y)?(?: ?-?green)?|(?:brown|dark) (?:flecks?|specks?|bits|dots)|flecks?|specks?|stomach contents|like (?:stomach|milk|formula))\b/g;
export const looksWrong =
  /\b(?:yellow\w*|gold\w*|straw|apple juice|like (?:wee|pee|urine)|red\w*|clear(?!ly)|watery|like water|amber|bile|dark green|bright green|black|pink\w*|blood\w*|see[- ]?through|transparent|colou?rless|poop\w*|stool)\b/g;
export const looksOpen = /\b(?:green\w*|brown\w*)\b/;
export const looks: Statements = { matter: matter.looks };
export const looksUnsure =
  /\b(?:not sure|unsure|dont know|cant (?:really )?(?:tell|see|say)|no idea|hard to (?:tell|see|say))\b/;
export const secured: Statements = {
  matter: matter.secured,
  yes: /^(?:(?:(?:its|all|everything|everythings|thats|is) )*(?:sorted|squared away|in order|strapped)|did (?:all (?:of )?(?:it|that|this|them)|(?:them|those) all)|(?:(?:i|we|ive|weve|its|have|then|tube|is|balloon) )*(?:taped|secured|strapped|inflated)(?: (?!not\b|no\b|nothing\b)\w+){0,6}|done(?: (?:all|it|everything|that|this|as|like|you|u|said|say|told|now|the|steps?|both|three|3|of|them|sir|maam))*|(?:(?:i|we|ive|weve|have|then|also) )*(?:put|stuck|added|got|used|placed|did|taped)(?: (?!no\b|not\b)\w+){0,5} tape(?: (?:on|down|over|across|round|it|there|both|sides))*|(?:(?:some|the|\d|two|couple|few|lots|plenty) )*(?:of )?(?:strips?|bits?|pieces?|layers?|lots) of tape(?: (?:on|down|over|across|it))*|(?:(?:i|we|ive|have|then) )*(?:stuck|strapped|fixed|tied|fastened) (?:it |the tube )?(?:down|on|in place)(?: (?:with|and|tape|plaster|well|good))*|thats (?:all )?(?:done|it)|complete|done|all done|all set|did (?:it|all of it|that|everything)|finished|(?:its |it is |tube is |tubes |all |everything is |everythings |everything )*(?:secured?|secure|snug|tight|taped|in place|filled|set|done)(?: (?:and|is|snug|taped|filled|tight|in|place|down|up|secure))*|(?:i |we )?(?:filled|taped)(?: \w+){0,4}|balloon (?:is )?(?:filled|full|up)(?: \w+){0,4}|(?:its |it is )?(?:good|all good|good to go)|(?:tube |its |all )*(?:is )?snug(?: as (?:a bug|can be)(?: \w+){0,3})?|tube (?:is )?snug(?: \w+){0,3}|tape (?:is )?on|(?:its |all )?locked in|completed?|dobe|donr)$/,
  neutral:
    /\b(?:tube|button|disc|its|it is|it)(?: is)? (?:not|isnt|doesnt) (?:going anywhere|budging|budge|mov(?:e|ing)|slip(?:ping)?|slid(?:e|ing))\b/g,
  no: /\b(?:(?:not|isnt|wasnt|un)(?: \w+)? ?(?:filled|taped|snug|secured|full)|no tape|loosely|badly|balloon (?:is |still )?(?:empty|flat)|(?:no|without) water|(?:ran )?out of tape|tape (?:keeps|wont|is not|isnt|came)|loose|falling|slipping|slides|sliding|moves|moving|still (?:working|trying|doing|filling)|not done|half done|almost|nearly)\b/,
};
export const firstFeed: Statements = {
  matter: matter.firstFeed,
  yes: /^(?:(?:all )?done|all (?:in|gone|down|finished)|(?:feed|feeding) (?:is |was )?(?:completed?|done|finished)(?: \w+){0,4}|(?:fine|good|ok|okay|great|well) so far|(?:(?:she|he|baby|shes|hes|weve|ive|we|i) )?(?:fed|ate|drank|took|had|feeding|feed|tolerat(?:ed|ing)|finished|managed)(?: (?:it|her|him|his|the|all|whole|feed|bottle|everything|of|was|is|went|very|really|pretty|just|down))* (?:good|great|fine|well|ok|okay|lovely|nicely|grand|brilliant\w*|perfect\w*|smooth\w*|all|everything|it all|done)|(?:(?:she|he|baby|shes|hes) )?(?:took|had|finished|drank|ate) (?:it all|all of it|(?:her|his|the) (?:whole |full |entire )?(?:feed|bottle|milk))|feed (?:is )?(?:done|finished)|(?:(?:she|he|shes|hes) )?(?:is )?(?:settled|content|comfy)|(?:it |all |that )*(?:went|going|stayed) (?:in|down) (?:lovely|nicely|grand|brilliant\w*|a treat)|(?:completed|finished|done|complete)(?: (?!half|some|part|nearly|almost)\w+){0,6}|smooth(?:ly)?(?: af| as \w+)?|(?:all )?(?:fine|good|ok|well) (?:it )?went (?:in|down)(?: \w+){0,4}|(?:it )?(?:went|going) down (?:slow|slowly|fine|well|ok|easy|nice\w*)|(?:it |feed |that |she |he |first feed |the first feed |the feed |everything |all )*(?:went|did|is|was|has been|tolerated|doing|going|are)?(?: \w+){0,2} ?(?:good|great|fine|well|ok|okay|perfect|perfectly|smooth|smoothly|it)|all good|so far so good|(?:\w+ )?no (?:problems?|probs|issues?|troubles?|complaints?|dramas?|hassles?|worries|bother|fuss|leaks?|leaking|pain)(?: (?:at all|thanks|thank you|no \w+|so far|happy \w+))*|tolerated (?:it )?(?:well|fine)?|(?:it )?all went (?:down|in)(?: (?:fine|well|slow|slowly))*|(?:(?:all good|yes|good) )?(?:she|he|it|baby) (?:took|drank|kept|finished) (?:it|everything|the whole (?:thing|bottle|feed)|all of it)(?: all| down| fine| well)*|(?:it )?(?:went|did|was) (?:\w+ )?(?:good|great|fine|well|ok|perfect)|(?:really|very|pretty) (?:good|well))$/,
  neutral: /\bno (?:cry|crying|fussing|fuss|tears|gagging)\b/g,
  no: /\b(?:not yet|havent|didnt feed|bad|badly|poorly|terrible|awful|wont|stopped|had to stop)\b/,
};
export const nextDay: Statements = {
  matter: matter.nextDay,
  yes: /^(?:(?:(?:shes|hes|she|he|all|is|right) )*(?:good as (?:new|gold)|(?:right|bright) as (?:rain|a button)|back to (?:herself|himself|normal)|(?:on|in) (?:top|great|good|fine) (?:form|spirits|nick|shape)|(?:eating|playing|feeding|sleeping)(?: (?:well|fine|good|ok|and|eating|playing|happy|normally))*)|(?:she|he|shes|hes|it|its|baby|everyone|everything|everythings|all|were|is|tube)?(?: (?!(?:not|isnt|never|no|wasnt|aint|doesnt)\b)\w+){0,3} ?(?:good|great|fine|well|ok|okay|perfect|normal|happy|better|grand|brilliant|lovely|ace|fab|mint|smashing|brill)(?: (?:thanks|thank you|today|now|so far))*|all good|(?:(?:is |are )?(?:doing|feeling|very|really|much|so) )*(?:well|good|great|fine|better|ok|okay|grand|brilliant|lovely|alright)(?: thank(?:s| you)| today| now)*|ace|fab|brill|mint|back to normal|no (?:problems?|issues?|troubles?|changes?|complaints?|dramas?|worries|hassles?|bother)(?: (?:at all|thanks|thank you|today|so far))*|(?:(?:shes|hes|back to|she is|he is) )*(?:her|his) (?:old|usual|normal) self(?: again)?|not (?:too |so )?bad)$/,
  no: /\b(?:bad|worse|sick|unwell|poorly|rough|(?:not|isnt) (?:\w+ )?(?:good|great|fine|well|ok|okay|right|herself|himself))\b/,
};
export const arrived: Statements = {
  matter: matter.arrived,
  neutral:
    /\b(?:nobody|noones?|no one|nobodys|they havent|havent|hasnt|not) (?:has |have |even |been |yet )*(?:seen|called|looked|come|checked|triaged|helped)(?: (?:us|her|him|at her|at him|yet))*\b/g,
  yes: /^(?:(?:we |im |were |are |i am |just |yes )*(?:here|inside(?: now)?|walked in|parked and inside|arrived at (?:the )?(?:hospital|er|ed)(?: \d+)?|got (?:here|there)(?: \w+){0,4}|(?:have |has |had |weve |ive )+(?:reached|arrived|got here|come)(?: \w+){0,3}|got to (?:the )?(?:hospital|er|ed|emergency\w*)(?: \w+){0,3}|reached|here now|there now|(?:here|there) already|arrived(?: at)?(?: \d{1,2}(?::?\d\d)?(?: ?[ap]m)?)?|made it|there|checked in(?: \w+){0,4}|at (?:the )?(?:hospital|er|ed|emergency|a and e|casualty)(?: \w+){0,3}|reached (?:the )?(?:hospital|er)(?: \w+)?|(?:been )?seen by (?:the )?(?:triage|doctor|nurse)|in (?:the )?(?:er|ed|waiting (?:room|area)|emergency \w+)(?: \w+){0,3}|been (?:here|in here|waiting here|sat here)(?: \w+){0,4}|waiting to be (?:seen|called|triaged)|at (?:the )?(?:reception|front desk|desk|check ?in|triage|entrance)(?: now)?|(?:the |a )?(?:doctor|dr|nurse|doctors|nurses|team|they)(?: is| are)? (?:with|examining|checking|looking at) (?:her|him|us)|with (?:the|a) (?:doctor|nurse)|waiting room|in (?:a |the )?(?:cubicle|bay|bed|ward|resus\w*|exam room|room \d+|triage)(?: now)?|triaged|got (?:here|there)|admitted|in a room|being seen)|they(?:ve)? (?:are )?(?:seeing|looking at|have|took|taken|brought|let|called) (?:her|him|us)(?: (?:in|back|through|now|already))*)$/,
  no: /\b(?:on (?:our|my|the) way|omw|waiting (?:for|on) (?:a )?(?:lift|bus|taxi|ride|car)|half ?way (?:there|to)|\d+ ?(?:mins?|minutes?|miles?) (?:out|off|to go)|(?:taxi|cab|uber|lift|bus|ambulance|ambos?|paramedics?|ride)s? (?:is |are |still |just )*(?:coming|on (?:its|the|their) way|not here)|nearly|min(?:ute)?s? away|eta|pulling in|waiting (?:for|on) (?:the |an |a |my |her |his |our )?(?:ambulance|taxi|ride|cab|bus|sitter|babysitter|mom|mum|mother|dad|father|wife|husband|sister|brother|neighbou?r|friend|grandma|grandpa)|(?:we are|were|im|i am) coming|(?:\d+|a few|couple) more (?:min\w*|hours?)|getting in|no ride|stayed? (?:at )?home|staying|turned back|almost|driving|in the car|not going|stuck|traffic|leaving|still (?:at )?home|soon|minutes? away|en route|parking|about to)\b/,
};
export const clinic: Statements = {
  matter: matter.clinic,
  yes: /^(?:(?:i |we |ive |weve |my (?:wife|husband|partner|mom|mum|mother|dad|father) |just |have |already )*(?:called|rang|phoned|informed|notified|told|been in touch|got hold|got through|reached|spoke|talked|left (?:a )?(?:message|voicemail)|booked|scheduled|made|got|emailed|messaged|contacted|did)(?: \w+){0,8}|(?:its |all )?(?:booked|scheduled|done|set|arranged|sorted)|appointment (?:is )?(?:\w+ ?){1,4}|(?:i |we |weve |ive )?(?:have|got) an (?:appointment|appt)(?: \w+){0,4}|they (?:said|told us|told me) (?:to )?come(?: \w+){0,3}|they (?:called|rang|phoned) (?:me|us)(?: back)?|they (?:already |do )?know(?: about (?:it|this|her|him))?|(?:i |we )?call (?:them )?already|(?:theyre|they are|they) (?:fitting|fit|seeing|squeez\w+|booked|having|getting|taking|see|gave|have given)(?: (?:us|him|her|me))(?: \w+){0,5})$/,
  no: /\b(?:not yet|(?<!\b(?:in|us|him|her|for|at|booked|scheduled|appointment|appt|coming|go|going|seen) )tomorrow|later|after work|at lunch|forgot|calling (?:now|them)|(?:will|ill|gonna|going to) (?:\w+ )?(?:call|ring|phone|do)|about to|going to call|no answer|(?:goes|went|going|straight) (?:straight |right )?to (?:voicemail|voice mail|answerphone|machine)|(?:just|keeps?|only) ring(?:s|ing)|rang out|slipped my mind|engaged|(?:i|we) will(?= ?$| today| later| do| ring| call)|closed|havent|on hold|monday i will|busy)\b/,
};
export const notYet =
  /\bnot (?:yet|started|fed)\b|\b(?:is|are|shes|hes) (?:at|with) (?:her|his|the) (?:dad|mom|mum|father|mother|grandma|school|nana|papa)s?\b|\b(?:havent|hasnt|have not|has not|didnt|did not) (?:\w+ )?(?:fed|feed|started|eaten|given|had|tried|seen|done|begun)\b|(?<!\b(?:fine|well|good|great|ok|okay|perfect|down|lovely|all|feed|nicely|grand)\b.{0,30})\b(?:still )?(?:asleep|sleeping)\b/;
export const notAll = /\b(?:except|all but|apart from|aside from|other than|everything but|just not|but not)\b/;
export const someTimeAgo =
  /\b(?:before bed|at bed ?time|at (?:dinner|lunch|supper|breakfast)|for (?:dinner|lunch|supper)|last night|yesterday|this (?:afternoon|evening|morning))\b/;
export const forgotHow = /\b(?:forgot|forgotten|forget|cant remember|dont remember) how\b/;
export const exception = /\b(?:but|except|only|however|besides|other than|apart from|aside from)\b/;
/** Said of the next step: no sign, whatever the yes before it. */
export const otherMatter =
  /^(?:yes|yep|yeah|yup|ok|okay)?,? ?(?:(?:i|we|ive|weve|do|have|got|its|it is|tubes|tube|is|the|all|my|some|ph|also|here|now|right|already|with|me) )*(?:strips?|(?:ph |test )?paper|taped?(?: (?:up|down|in|on))?|in(?: place)?|secured?|kit|syringe)(?: (?:yes|yep|ready|here|now|too|ok|good|left|and|in|the|box|hand|out))*[.! ]*$/;
/** The whole answer to "taped and filled?", which a hurried thumb scrambles. */
export const doneWords: readonly string[] = ['done', 'taped', 'finished', 'secured'];
/** One of the facts on file taken out of a yes. */
export const exceptFact =
  /\b(?:not|except|all but|apart from|aside from|other than|besides|everything but|only|just)(?: for)? (?:the |her |his |my |its )?(?:weight|date|tube|kind|type|kilos|kgs?|lbs?|pounds|time|year|month|day|first (?:tube|date)|placement)\b(?! (?:is |are |looks? |all |still )*(?:right|correct|good|fine|ok|the same))/;
export const confirm: Statements = {
  matter: matter.confirm,
  strictNo: true,
  unless: /\b(?:not|isnt|arent|wasnt)\b/,
  yes: /^(?:(?:thats |that is |its |all |they are |theyre |everythings |everything |still |yes |it is |looks? |the info is |is |the )*(?:right|correct|true|accurate|same|up to date)|(?:thats|its|all|theyre|everything is|everythings|looks?|it is)(?: (?:is|all|still|looks?))* (?:good|ok|okay|fine)|no changes?(?: since(?: \w+)*)?|(?:spot|bang|dead) on|thats (?:him|her|us|the one)|facts|right on|same tube|same everything|same tube same everything|thats right(?: mate| love)?|(?:all of (?:thats|that|its|it)|it all)(?: is| looks?)? (?:right|correct|good)|nothing(?: has)? changed)$/,
  no: /\b(?:(?:weights?|date|tube|kind|type)(?: is| are| was| looks?)? (?:\w+ )?(?:off|out(?! of the)|old|gone up)\b|not yet|(?:not|isnt|arent|wasnt) (?:\w+ )?(?:right|correct|true|the same|up to date)|old (?:info\w*|data|weight|facts)|wrong|outdated|out of date|changed|bigger|heavier|lighter|grown|gained|put on|lost weight|not any more|different|incorrect|not anymore|needs? (?:updating|changing))\b/,
  neutral: /\bno changes?\b|\bnothing(?: has)? changed\b|\b(?:hasnt|havent|didnt) changed?\b/g,
};
/** At "any danger sign?": well, and unwell. */
export const unwell: Statements = {
  matter: matter.unwell,
  strictNo: true,
  no: /\b(?:(?:not|dont|doesnt|havent|hasnt|isnt|arent|no|cant|never)(?: \w+){0,3} (?:any|one) of (?:that|those|these|them|this|the above|it)\b|(?:not|dont|doesnt|didnt|cant|isnt|havent)(?: \w+){0,3} anything (?:like|of) (?:that|this|those|these)\b|(?:good|normal|nice|usual) (?:colou?r|breathing)|(?<!\b(?:not|isnt|wasnt|hardly)(?: \w+)? )(?:her|his) (?:usual|normal|old) self|(?:shes|hes|she|he|baby|kid|they|theyre|were|everything|everythings|all|is|seems?|doing|looks?|acting|otherwise|feels?|is doing|totally|perfectly|pretty|just|so far)(?: (?:is|seems?|doing|looks?|acting|all|totally|just|perfectly|absolutely|completely|definitely|quite|still|now|otherwise|feels?|pretty|being|very|really|so far))* (?:fine|good|ok|okay|great|well|normal|happy|alright|herself|himself|calm|playing|sleeping|asleep|smiling|perfect|comfortable|content|grand|brilliant|sweet|golden|lovely|peachy|alert|stable|pink|active|playful|cheerful|chatty)|(?:good as gold|right as (?:rain|ninepence)|fit as a fiddle|happy as larry)|(?:obs|vitals?)(?: (?:are|is|all))* (?:stable|normal|fine|ok|good)|(?:breathing|colou?r|skin)(?: (?:is|looks|seems|and|breathing|colou?r|skin|good|fine|normal|very|really|all))* (?:good|fine|normal|ok|okay|great|pink|like (?:normal|usual|always|(?:a )?(?:champ\w*|dream|trooper|angel)))|all good|all clear|all fine|none of (?:those|that|these|the above)|not (?:right )?now|not any of (?:those|that|these|them)|not that i (?:can )?(?:see|know of|noticed)|^(?:fine|good)$|fine|no (?:problems|problms|issues|complaints|concerns)|nothing)\b/,
  neutral:
    /\bno (?:problem|probs?|problm|issue)\b(?! with)|(?:(?:yes|yeah|yep) )?\b(?:she|he|baby) (?:wakes|responds|reacts|cries|looks at me|opens (?:her|his) eyes)(?: (?:up|fine|ok|normally|to me|when i call))*(?:,? (?:yes|yeah|yep))?\b|\bnot that i (?:can )?(?:see|know of|noticed)\b|^yes\b(?=.{0,24}\b(?:covered|turned|switched|stopped the|unhooked|disconnected)\b)/g,
};
export const notWell =
  /\b(?:(?:not|isnt|doesnt (?:look|seem|feel)|dont look|not (?:doing|feeling|looking|acting|breathing)) (?:\w+ )?(?:ok|okay|good|well|fine|right(?! now)|normal|great|alright)|(?:really|very|so|quite) (?:bad|sick|ill|unwell|poorly)|looks? (?:so |really |very )?(?:terrible|awful|dreadful|horrible|ill|sick|poorly)|(?:not|isnt)(?: (?:acting|being|quite|really|at all|like))* (?:herself|himself|(?:her|his) (?:usual|normal|old) self)|unwell|worse|getting worse|something(?:s| is) (?:\w+ )?wrong(?: with (?:her|him|my \w+))?(?= ?(?:$|[.,!]))|(?:she|he|shes|hes|baby) (?:is )?(?:dying|in trouble)|emergency|in distress|(?:its|looks|shes|hes) (?:really )?bad)\b/;
/** A question of theirs after a statement, with or without its mark. */
export const asksToo =
  /\b(?:do|should|can|shall|must|could|may) (?:i|we) (?:have to |need to |still )?(?:wake|feed|let|leave|call|take|move|give|wait|go|stop|start)\b|\bis (?:that|this|it) (?:ok|okay|normal|bad|alright)\b/;
/** Words of trouble taken back. */
export const notSoBad = /\b(?:isnt|not|no) (?:an? )?(?:emergency|worse|unwell|bad|in distress|in trouble)\b/g;
export const fedLately: Statements = {
  matter: matter.fedLately,
  yes: /^(?:(?:(?:she|he|it|we|was|were) )*(?:mid|half ?way through (?:a|his|her|the)|in the middle of (?:a|his|her|the)|during (?:a|his|her|the)|on (?:a|his|her|the)) ?-?(?:feed|bottle|meal|feeding)(?: \w+){0,5}|(?:i |we |she |he )?just (?:finished|ended|stopped)|(?:just |we |i |she |he )*(?:finished|ended|stopped) (?:a |her |his |the )?(?:feed|bottle|feeding|pump|meds)|(?:i |we |she |he )?(?:just |had |was |got )*(?:fed|ate|eaten|a feed|had (?:a )?(?:bottle|feed|meds?|milk|formula))(?: \w+){0,6}|(?:her |his )?(?:feed|pump) (?:is |was )?(?:running|on|going|just (?:ended|finished))(?: \w+){0,6})$/,
  no: /\b(?:nothing|hours ago|not since|since (?:last night|yesterday|dinner|bedtime|lunch|breakfast)|last night|yesterday|not (?:in|for|within))\b/,
};
/** What is given on other days, or is due, tells nothing of the last hour. */
export const notGiven =
  /\b(?:usually|normally|typically|is due|are due|due at)\b|\b(?:nurse|sitter|babysitter|nanny|carer|aide|gran|nan|nana|grandma|grandpa|mom|mum|dad|wife|husband|sister) (?:had|kept|watched|minded) (?:him|her|them)\b|\b(?:nurse|sitter|babysitter|nanny|carer|aide|gran|nan|nana|grandma|grandpa|mom|mum|dad|wife|husband|sister|she|he|they) (?:was|were|is|left|went) (?:here|home|there|on shift|on duty|at work|off)\b/;
/** A no that opens the text. */
export const startsNo = /^(?:no|nope)\b/;
export const airFirst = /\b(?:air|first|at first)\b/;
export const looksNo = /^(?:no|nope|nah|not really)\b/;
/** Right before a colour: it does not look so. */
export const notLooking =
  /\b(?:not|no|isnt|nto|doesnt|dont|wasnt)(?: (?:really|very|so|any|at|all|quite|look|looks|like|a|the))* ?$/;
