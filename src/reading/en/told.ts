/** English for facts told unasked: ages, births, allergies, and what is not at hand. */
import type { TimeUnit } from '../durations.ts';

/** An age: the count and its unit. A number of months after "she is" without "old" counts only at the end of a statement. */
export const age =
  /\b(\d+(?:\.\d+)?)[ -]?(years?|yrs?|yr|y|months?|mos?|mths?|m|weeks?|wks?|w|days?|d)[ -]?(?:old|olds|(?<!m)o|\/o)\b|\b(?:shes|hes) (\d+) (years|months|weeks)(?= ?[,.!]| ?$)/g;
export const ageUnits: readonly { readonly unit: TimeUnit; readonly form: RegExp }[] = [
  { unit: 'year', form: /^y/ },
  { unit: 'month', form: /^m/ },
  { unit: 'week', form: /^w/ },
  { unit: 'day', form: /^d/ },
];
/** An age at another time, or of something else. */
export const notAge =
  /\b(?:when (?:she|he) was|at|tube is|button is|tube|since (?:she|he) was|was|from|is a|kit is|strips are)(?: (?:about|around|only|just|almost|like|a))*\s*$/;
export const born =
  /\b(?:born|birthday|birth date|birthdate|dob|date of birth)(?: (?:is|on|in|was|:))*:? ?([a-z0-9 ,/.-]{4,24})/;
export const latexAllergy =
  /\b(?:latex (?:allergy|allergic|sensitiv\w+|reaction)|allerg\w+ to (?:\w+ )?latex|latex allerg\w+|cant (?:have|use) latex|spina bifida and latex|latex\b.{0,24}\b(?:is|shes|hes) (?:very |really |so |badly )?allergic)\b/;
/** An allergy whose matter is not named. */
export const bareAllergy =
  /(?:^|\b(?:is|s|she|he|shes|hes|was|has|have|an?|the|her|his|got|very|so|really|super|badly|bad|highly|severely|severe|and|but|with|for|of)[ ,]+)allerg(?:y|ies|ic)\b(?! (?:to (?!it\b|that\b|this\b|those\b|them\b)|med\w*|tablets?|pills?|tests?|season))/;
export const noAllergy =
  /\b(?:no|not|isnt|wasnt|never|without|doesnt have|dont have|hasnt got|aint)(?: (?:any|an|known|got|had|really|that i know|as far as i know))* allerg/;
/** The tube at hand is not said to be free of it. */
export const notLatexFree =
  /\b(?:not(?! (?:hard|bad)\b)|isnt|doesnt|wasnt|nowhere|dont see|cant see) (?:\w+ ){0,3}latex ?-?free\b|\b(?:nothing about|doesnt (?:say|mention)(?: \w+){0,3}|not (?:marked|labell?ed)(?: \w+){0,2}) latex\b/;
export const noLatexAllergy =
  /\b(?:no|not|isnt|without|doesnt have(?: a)?|dont have(?: a)?|no known|never had(?: a)?) (?:\w+ )?(?:latex allerg\w+|allerg\w+ to (?:\w+ )?latex|latex(?! ?-?free))\b|\blatex\b.{0,24}\b(?:isnt|not|never|arent) allerg\w+/;
export const noKit =
  /\b(?:no|dont have (?:a|the|any|our|an)|havent got (?:a|the)|without (?:a|the)|cant find (?:a|the|our)|lost (?:the|our)|never (?:got|given|had) (?:a|an)) (?:(?:emergency|spare|backup|replacement|tube) ){0,2}kit\b|\bkit (?:is )?(?:not|isnt) (?:available|here|with us|with me|at home)\b/;
export const noStrips =
  /\b(?:no|dont have (?:any|the)|havent got|cant find (?:the|any)|out of|ran out of|lost the) (?:ph )?strips\b/;
/** Test strips made for something else. */
export const otherStrips =
  /(?<!\b(?:not|no|isnt|arent|wasnt|werent|dont have)(?: (?:the|my|our|any|from|for|of|those|a))* )\b(?:(?:swimming )?pools?|spa|hot ?tub|aquarium|fish ?tank|fish|pond|soil|garden\w*|urine|urinalysis|pee|wee(?! (?:ph|paper)\b)|glucose|blood sugar|sugar|ketones?|diabet\w+) (?:(?:ph|test|testing|water|paper|dip) ?)*(?:strips?|sticks?|dipsticks?|papers?|tests?|testers?|kits?|ones?)\b|\b(?:strips?|sticks?|papers?|ones?|tests?|kits?|its|theyre|these|those|they|yes,?|got|use|used|have)(?: (?:i|we|have|used|got|are|is|they|only|just|some|meant|made|that|here|ph|it))* (?:for|from) (?:(?:the|my|our|a|his|her|testing|checking) )*(?:(?:swimming )?pools?|spa|hot ?tub|aquarium|fish ?tank|fish|pond|soil|garden\w*|urine|pee|wee|glucose|blood sugar|sugar|ketones?|diabet\w+)\b/;
export const haveKit =
  /^(?:(?:yes|and|we|i|do|also|ok|but) )*(?:have|got|weve got|ive got|has|ive|weve) (?:(?:the|a|an|our|my|her|his) )?(?:emergency )?kit(?: (?:here|ready|too|with (?:me|us)|at home))*(?:$| (?=(?:do|should|shall|can|so) (?:i|we)\b))|^(?:the |our |her |his )?(?:emergency )?kits? (?:is )?(?:here|ready|(?:at|in|to) (?:my )?hand|with (?:me|us))$|(?<!\b(?:do|if|should|when|wish|once) )\b(?:we|i) (?:have|got) (?:the|our|an?) (?:emergency )?kit(?: (?:here|ready|too|with (?:me|us)|at home))*$/;
