/** English for how a tube went in: easily, hard, or not at all. */
import { trouble } from './trouble.ts';

export const wentHard =
  /\b(?:elbow grease|muscle|put (?:my|some) (?:back|weight|strength)|took (?:some|a (?:good |fair |wee )?(?:bit|lot|while)(?: of)?) ?(?:doing|work|effort|persua\w*|coax\w*)|(?:a )?(?:bit|lot|fair bit) of (?:work|coax\w*|persua\w*|heaving|grunt\w*)|shoving|(?:lots?|bit|plenty) of wriggl\w*|wriggled (?:it|the)|squeez\w*|ramm\w*|heaved|wrestl\w*|brute|strength|oomph|a battle|hard(?:er)?(?! (?:balloon|plastic))|difficult|difficulty|push(?:ed|ing)?|forced?|forcing|bear(?:ing)? down|bore down|(?<!\btoo )tight|tightly|resist\w*|struggl\w*|tough|fight|fought|shove\w*|press(?:ed|ing)?|jam\w*|stiff|snug|wiggl\w*|twist\w*|pressure|rough|effort|welly|lean\w* (?:\w+ )?(?:on|into)|stubborn|tricky|(?:took|after|on) (?:me |us )?(?:a )?(?:few|several|couple|many|some|2|3|4|5|6|while|forever|2nd|second|third|3rd)(?: \w+)? ?(?:tries|try|times|attempts?|work)?|finally|eventually|barely|screamed|scream)\b/g;
export const notEasy =
  /\b(?:(?:wouldnt|cant|couldnt) (?:say|call) (?:it |that |was |its )*|not|nto|nott|ont|ot|nt|no|nnot|noot|wasnt|isnt|werent|didnt go in|didnt go|didnt) (?:so |that |very |really |too |exactly |in |all that )*(?:easy|easily|smooth\w*)\b/g;
export const wentEasy = new RegExp(
  `\\b(?:(?:never|couldnt|cant|could not) (?:have |of )?(?:had it|been|be|gone|go|went) (?:in )?(?:so |any |more )*(?:easy|easier|smoother|better)|easy(?! to say)|easier|easily|eazy|esay|easu|easypeasy|smooth|smoothly|simple|simples|effortless(?:ly)?|(?:sweet|easy) as|lovely|slid|slide|slides|slipped|glided|right in|straight (?:back )?in|(?:no|0|zero|nil|without) (?:the slightest |the least |any |a |much |too much |real |big |major |single |bit of )*(?:${trouble})|(?:didnt|did nt|dont|never) (?:even |really )?(?:have to |had to |need to |take any |take no |need no |need any )?(?:push|pushed|force|forced|pushing|shove|shoving|fight|forcing)(?: (?:it|on it|none|any|nothing|at all|much|hard|or nothing|or anything))*|(?:like |as easy as )(?:a glove|silk|oil|clockwork|nothing|pie|abc|1 2 3|falling off a log)|a treat|no (?:sweat|hassle|fuss|bother|fight|drama|dramas|worries|battle|argument)|without a hitch|straightforward|straight forward|no need to (?:push|force)|(?:wasnt|isnt|not) (?:hard|difficult|tight|tough|bad)(?: at all)?|(?:like|was) (?:butter|a dream|a charm)|piece of cake|a (?:doddle|breeze|cinch|dream)|nicely|gently|gentle|popped (?:right |straight |back |it )*in|went (?:right |straight |back )*in (?:fine|good|well|great|ok|okay|perfect\\w*|nice\\w*|quick\\w*|just fine))\\b`,
  'g',
);
export const wontGo =
  /\b(?:(?:wont|wouldnt|doesnt|didnt|not(?! (?:sure|certain|yet))|isnt|cant|couldnt|refuses? to|unable to) (?:\w+ ){0,3}(?:go|going|gone|fit|fitting|slide|get|getting|put|budge|pass|work|working|move|make|in)\b(?! hurt)|(?:cant|couldnt)(?: (?:do|get) it)?$|failed|(?<!\b(?:not|isnt|wasnt|never|didnt get|nt get) )stuck|blocked|impossible|no luck|gave up|still out|c[ao]mes? (?:right )?(?:back )?out|(?:popped|pops|bounces|bounced) (?:back |right |straight )*(?:out|back)|(?:has )?shut|unable$|(?:fell|falls|slid|slides|slipped|slips|shot|flew) (?:back |right |straight |just )*out|pushes (?:back |right )?out|closed(?: up)?|too small|too big|too tight|too narrow|stop(?:s|ped)? (?:half ?way|part ?way|there|short|dead)|(?:half ?way|part ?way|some of the way|(?:an|1|half an|2) inch\w*|a bit|so far) (?:\w+ )?(?:and|then|but|before)(?: it| its)? (?:just )?(?:stop\w*|stuck|got stuck|jammed|wont|wouldnt|quit)|hits? (?:something|a wall)|unsuccessful|unable to (?:re)?(?:insert|place|advance|pass)|nothing works|no way|not happening|doesnt want to|(?:keeps?|kept) (?:on )?(?:coming|popping|falling|slipping|sliding|pushing|bouncing|springing|shooting|flying|being pushed)(?: (?:it|right|straight|back|itself|all the way))* (?:out|back)|(?:wont|doesnt|didnt|not|isnt|cant|wouldnt) (?:\w+ ){0,2}(?:stay|stays|staying|hold|holding)\b(?! (?:still|her|him|down))|cant do (?:it|this)|(?:scared|afraid) to(?! (?:do|try|start)\b))\b/g;
/** What may stand right before "easy"; another word there could be a slip of "not" or "wasn't". */
export const leadsToEasy =
  /(?:^|[,.!]|\b(?:was|is|its|went|go|goes|came|in|very|so|pretty|really|real|super|just|yes|yeah|yep|ok|okay|and|easy|too|that|slid|slided|nice|inside|dead|proper|bloody|ridiculously|crazy|mega|totally|completely|extremely|incredibly|stupidly|wicked|hella|quick|quickly|fairly|quite|all|done|out|back|right|it|they|she|he|as|how|enters?|entered|inserted|placed|replaced|fitted|relatively|surprisingly|actually|this time|time|ha|um))\s*$/;
export const notBefore = /\b(?:not|nto|isnt|wasnt|didnt|never)\b[a-z ]{0,12}$/;
/** Both ways named at once. */
export const eitherHow =
  /\b(?:easy|easily|fine|ok) or (?:hard|tight|push\w*|forc\w*|not)\b|\b(?:hard|push\w*) or (?:easy|easily|not)\b/;
/** "Didn't go in hard": a negation of the how, not of the going in. */
export const negatedHow =
  /\b(?:didnt|dont|not|wasnt|isnt|no|never|without|any|didnt have to|didnt need to|not too|not that|not very|not really|no need to)(?: (?:have|need|to|any|at|all|too|that|very|really|so|it|use|go|in|take|much|feel|it was|a|bit|like))*\s*$/;
export const slightly =
  /\b(?:kinda|kind of|sort of|sorta|fairly|pretty much|mostly|somewhat|semi|relatively|not too|not that|not very|not so) ?$/;
/** Says so firmly that it is in: whatever else is denied beside it, it is not out. */
export const firmlyIn =
  /\b(?:its|it is|tube is|tubes|tube|got it|went|gone|slid|popped|slipped|in it) (?:all |now |right |back |straight |finally |gone |went )*(?:in|inside|went)\b(?! (?:my|a|her|his) )|^(?:(?:yes|yep|yeah|ok|okay|and|all|right|back|sir|maam),? )*in\b(?= ?(?:$|[,.!]|(?:no|0|zero|without|and|but|with|dead|so|super|very|easy|ok|fine) ))/;
export const notIn = /\b(?:not|isnt|wont|cant|didnt|couldnt|never|doesnt|wouldnt|wasnt|nothing)\b[a-z ]{0,18}\bin\b/;
/** The second try went in after the first did not. */
export const secondTryIn =
  /\b(?:wouldnt|didnt|not|doesnt) (?:\w+ ){0,3}go\w*\b.{0,20}\b(?:but|then|until) (?:\w+ ){0,2}(?:made it|got it(?: to| in)|managed|forced it|worked it|it went|went in)\b(?!.{0,12} out\b)|\b(?:second|2nd|third|3rd|next|then|finally|eventually)\b.{0,30}\b(?:went|got it|slid|popped|its|is|it) (?:right |back )?in\b/;
/** In, and out again after that. */
export const backOut =
  /\b(?:then|but|and|again|back|right|straight|just|before|until) (?:it |the tube |its |has |immediately |right |straight |just |back |then |all the way )*(?:came|comes|come|coming|fell|falls|popped|pops|slid|slides|slipped|slips|shot|flew|went|pushed|pushes|coughed|spat|pulled) (?:it |him |her |right |straight |just |back |all the way |clean |itself )*out\b|\b(?:and|then|but|so|now) (?:now )?(?:its|it is|the tubes|tubes|tube is) (?:right |all |back |just |now |already )*out\b|\b(?:in|went in|got it in|slid in),? (?:and |then |but )+(?:back |straight |right )*out\b/g;
export const inNow =
  /\b(?:its (?:back )?in|is (?:back )?in|went (?:back )?in|got it (?:back )?in|(?:put|pushed|slid) it (?:back )?in|all in|in now|done|did it|in and taped|taped|tube(?:s| is)? in|success|worked|got it|tapes on|made it in|went)\b|^(?:ok |okay |yes |yeah |yep )*(?:it is |its )?(?:back )?in(?:side)?$/;
/** "Easily" and its kin, which a slip of "not" before them turns round. */
export const plainlyEasy = /^(?:eas|smooth)/;
export const stillTrying =
  /^(?:(?:ok|okay|yes|sure|thanks) ?,? ?)?no (?:problems?|probs?|worries|trouble)[.! ]*$|\b(?:will|ill|gonna|going to|about to|let me|lets) (?:\w+ )?(?:try|do|start|read|go|have a go|get|give it)\b|\b(?:not yet|not (?:started|begun|tried|opened)|(?:havent|hasnt|didnt) (?:\w+ )?(?:start(?:ed)?|begun|begin|tried|try|opened)\b(?! (?:again|twice|hard|to push))|hold on|hang on|(?:in|just|give me|gimme|1|one|half) (?:a )?(?:minute|min|sec|second|moment|tick)|still (?:trying|washing|reading)|working on it|doing it now|(?:im|i am|we are|were) (?:just |now )?(?:trying(?! but)|reading|washing|getting ready)|(?:i|we) (?:just )?(?:read|have read|ve read) (?:it|them|all|the (?:steps|texts)))\b/;
/** About the balloon's water, not the tube. */
export const fillsWater = /\b(?:mls?|cc|water|balloon|syringe|flush|fill)/;
/** How it went in, told beside something else. */
export const tellsHow =
  /\b(?:went|go|get|getting|got|put|push\w*|slid|forc\w*|insert\w*)\b.*\bin\b|\bputting it\b|\bpush(?:ed)? it\b|\bused (?:\w+ ){0,3}force\b|\b(?:it|tube) was (?:\w+ )?(?:hard|stiff|tight|difficult)\b|\bwasnt (?:that |so |very )?easy\b|\b(?:forced|had to push|(?:had|have) to (?:force|shove|press|really push))\b/;
