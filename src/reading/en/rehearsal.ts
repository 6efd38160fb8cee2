/** English for a rehearsal: asked for, over, or denied. The text has no accents, apostrophes or marks. */

const greeting = '(?:(?:hi|hello|hey|please|pls|ok|okay|so|good (?:morning|afternoon|evening)) )*';
const doing = '(?:practi[cs](?:e|ing)|rehears(?:e|ing|al)|(?:practi[cs]e|dry|trial) run|fire drill|drill)';
/** What may come up while practising is named as such: it is not said to have come. */
const supposed =
  '(?:(?: (?:for|when|in case|if|what to do|what we do|how to act|how it works))+(?: (?:the|her|his|my|our|a|kids|childs|daughters|sons)){0,2}(?: (?:g|gj|feeding))?(?: (?:tube|gtube|button))(?: (?:ever|should|would|were to))?(?: (?:comes?|falls?|pops?|gets? pulled) out)?)?';
const when =
  '(?: (?:please|pls|now|tonight|today|again|it|this|with you|with this|with the line|on here|thanks|thank you|with (?:the|my|our|her|his)(?: new)? (?:nanny|sitter|babysitter|carer|nurse|mom|mum|dad|husband|wife|partner|mother|father|family|grandma|sister)|(?:its |this is )?not real|nothing (?:has )?(?:happened|came out)))*';

const happens =
  '(?:it|its|it is|the real thing|the (?:tube|button)|(?:her|his|my \\w+s) (?:tube|button)|this|something|anything)(?: (?:ever|really|actually|does|just))*(?: (?:happens?|(?:comes?|falls?|pops?) out|goes wrong|gets pulled|real|is real))?(?: (?:one day|some day|for real))?';
/** Whoever is shown, and when they mind the child. */
const shown =
  '(?: with (?:my|our|the|her|his)(?: [a-z-]+){1,3}(?: (?:she|he|they) (?:minds?|watches|looks? after|sits|has|takes?|keeps?) (?:him|her|them|the kids)(?: (?:on|every) \\w+)?)?)?';
/** What it is for: always of a time to come. */
const purpose = `(?: (?:before|in case|until|for when|if|when) ${happens}| (?:so|so that|and) (?:(?:i|we|im|were|i am|we are|everyone|everybody|dad|mum|mom|my (?:husband|wife|partner|mum|mom)) )(?:(?:can|will|know|knows|learn|learns|be|am|are|is|feel|feels|ready|prepared|what|how|to|do|it|remember|get|used) )*(?:know|knows|learn|learns|ready|prepared|do|it|remember|confident)(?: (?:if|when) ${happens})?| (?:first|beforehand|in advance|ahead of time|one day|some time|sometime)){0,2}`;

/** The wish, as the whole text. */
export const wish = new RegExp(
  `^${greeting}(?:(?:can|could|may|shall|should) (?:we|i)|(?:we|i) (?:want|would like|need)|(?:wed|id) like|(?:we|i) wanna|lets|let us)(?: to)?(?: (?:just|please))*(?: (?:do|have|run|try|start))?(?: (?:a|another|the|some))?(?: quick)? ${doing}${supposed}${shown}${when}${purpose}${when}$|^${greeting}(?:start )?(?:a |the )?(?:practi[cs]e|rehearsal|practi[cs]e run|dry run)${when}$`,
);
/** Practice of something else: of a sport, of music, or a doctor's. */
export const otherPractice =
  /\b(?:after|at|from|during|in|before|to|was at|had|has|the) (?:(?:his|her|my|our|a|the|school|first|last|late|early) )*(?!(?:a|the|our|this|his|her|my|your|to|of|and|for|fire|dry|quick|last|first|another|tube|any|some|just|only|is|was|we|i|not|no|school)\b)\w+ (?:practi[cs]es?|rehearsals?)\b|\b(?:soccer|football|rugby|hockey|band|choir|dance|ballet|swim|swimming|gym|cheer|cricket|tennis|basketball|baseball|track|team|piano|orchestra|judo|karate|skating|netball|doctors?|gp|medical|dental|family|group|general) practi[cs]es?\b/g;
/** It is over, as the whole text. */
export const over =
  /^(?:(?:ok|okay|please|pls|the|we|i|are|im|were|can|want to|lets|thanks|thank you) )*(?:practi[cs]e (?:is )?(?:over|done|finished)|(?:stop|finish|done with|done|finished|no more) (?:the |this |with )*(?:practi[cs]e|practi[cs]ing|rehearsal|rehearsing|drill))(?: (?:now|please|thanks|thank you))*$/;
/** No rehearsal, or perhaps none. */
export const real =
  /\breal\b|\b(?:really|actually|truly|seriously)(?: \w+){0,4} (?:out|come|came|fell|fallen|pulled|happen\w*|need|hurt\w*|sick)\b|\b(?:out|happen\w*)(?: \w+){0,2} (?:really|actually|seriously)\b|\b(?:not|isnt|aint|wasnt|no|never|nor) (?:a |an |just |only |in |the |our |your |any |longer |more )*(?:practi[cs]\w*|rehears\w*|drill|test|training|exercise|jok\w+|pretend\w*|kidding)\b|\bemergenc(?:y|ies)\b(?! (?:kit|tube|bag|box))|\b(?:911|ambulance)\b|\b(?:just|right) now it\b/;
/** Words for a rehearsal, whatever is said of it. */
export const named = /\b(?:practi[cs]\w*|rehears\w*|drills?|pretend\w*)\b/;
