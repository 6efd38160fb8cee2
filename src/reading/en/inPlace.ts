/** English for a tube that never came out, and what is wrong with it. */

/** Said firmly, so that no question before an insertion can mean it otherwise. */
export const neverOut =
  /\b(?:(?:never|hasnt|havent|didnt|wasnt|isnt|not|aint) (?:actually |really |even |ever )?(?:come|came|coming|fell|fallen|fall|popped|slipped|pulled)? ?out\b(?! (?:(?:of|for|long|more|very|that|all the|completely|fully|totally|entirely|before|easily|yet|far|by|on|over|an?|\d+)\b|\w+ (?:hours?|minutes?|mins?)))|nothing (?:has |is |ever )?(?:came|come|fell|fallen|popped)? ?out\b|never (?:even |actually )?(?:took|taken|pulled) (?:it|the tube|that) out\b(?! of (?:the|its|that|a) (?:bag|box|pack\w*|kit|wrap\w*)))/;
/** It is out all the same, by somebody's hand, or it is no feeding tube. */
export const otherwise =
  /\btrach|\b(?<!\bnever (?:even |actually )?)(?:pull(?:ed)?|yank(?:ed)?|ripp?(?:ed)?|tore|took|drag(?:ged)?|tugg?(?:ed)?) (?:it|the|her|his|on|out)\b/;
/** Where it is now; weaker, as "it is in" may answer how an insertion went. */
export const isIn =
  /\b(?<!\b(?:if|when|while|before|until|til|after|whether|once|how|sure|think|thought|shape|state|condition|mess|size|bag|box|drawer|place|way|where) (?:that )?(?:the |her |his )?)(?:its|it is|tubes|(?:tube|button|peg|catheter|1|one|thing) is)(?: (?:still|all|already|actually|only|just))* in(?:side)?(?: (?:him|her|place|(?:his|her|the|my \w+) (?:belly|tummy|stomach|hole|body|gut|tum)))?(?= ?(?:$|[,.!;]|but\b|and\b|just\b|its\b))/;
/** A tube that may be taken out is in. */
export const mayTakeOut =
  /\b(?:should|do|can|must|shall|could|am) (?:i|we) (?:\w+ ){0,3}(?:take|pull|remove|slide) (?:it|the tube|the button|this|her tube|his tube|that)(?: \w+)? ?out\b/;
export const device = /\b(?:g ?-?tube|gtube|gj|j ?-?tube|peg|tube|button|catheter)\b/;
export const out =
  /\b(?:(?:laying|lying|sat|sitting) (?:there|next|beside|on|in) ?|(?:on|in) (?:the|her|his) (?:floor|bed|cot|crib|mat|pillow|sheets?|blankets?|hands?|lap|bath|nappy|diaper)|out|off|fell|fallen|came|come|pulled|yanked|lost|hole|balloon)\b/;

export const leaks = /\b(?:leak\w*|drip\w*|seep\w*|soaked|soaking|wet all)\b/;
export const blocked =
  /\b(?:clog\w*|block(?:ed|age)|plugged|(?:wont|cant|doesnt|couldnt) (?:\w+ ){0,2}(?:flush|unclog)|(?:formula|feed|water|milk|flush|food|nothing) (?:wont|doesnt|isnt|not|cant|will|goes|is going) ?(?:\w+ )?(?:go|going|flow|flowing|run|through|thru))\b/;
export const sore =
  /\b(?:pus|puss|infect\w*|(?:skin|hole|around|area|site)(?: \w+){0,3} (?:red|sore|raw|swollen)|red and|smelly|stinks?)\b/;

/** The child's own tube put back before it was asked for. */
export const putBack =
  /\b(?:(?:put|stuck|slid|popped|pushed|eased|got|placed) (?:it|the tube|the button|her tube|his tube|that|(?:the |her |his )?(?:g ?-?tube|button|tube))(?: \w+)? back(?: in(?:side)?)?\b|(?:put|stuck|slid|popped|pushed|got) back in (?:it|the tube|the button|her tube|his tube)\b|(?:its|it is|tube is|button is|went|slid|popped|goes) (?:right |straight |already |all )*back in\b)(?! (?:in(?:to|side)? )?(?:the|a|my|our|an|its) (?!hole|belly|stomach|tummy|stoma))/;
/** Not done, only asked about, or undone. */
export const notPutBack =
  /\b(?:should|can|could|may|do|does|how|tried|trying|try|cant|couldnt|wont|wouldnt|didnt|not|never|havent|hasnt|isnt|if|to|want|when|before|until|unless|will|ill|gonna|let me|or|but|out again|back out|half|kit|spare|emergency|temp\w*|foley|new|ago|last|yesterday|weeks?|months?|years?)\b/;

/** Devices of other places: this line has no steps for them. */
export const otherDevices =
  /\b(?:suprapubic(?: catheter| tube)?|cecostomy(?: tube| button)?|picc(?: line)?|central line|ear ?-?tubes?|(?:urinary|bladder) catheter|colostomy(?: bag)?)\b/g;
