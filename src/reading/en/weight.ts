/** English for weights. */
/** Inside one weight, and between two. */
export const and = '(?:and|plus|with|&|n)';
export const joined = '-|/|\\bor\\b|\\bto\\b|\\band\\b';
/** "1st" is a stone only with its pounds behind it. */
export const stone = 'stones?|(?<!1)st\\b|(?<=1)st\\b(?= ?\\d+(?! ?(?:nd|rd|th|st)\\b))';
export const pound = 'lbs?\\b|lb(?=\\d)|lbs(?=\\d)|pounds?\\b|pouns?\\b|punds?\\b|#';
export const ounce = 'oz\\b|ozs\\b|ounces?\\b';
export const kilogram =
  '(?:and a (?:bit|little) )?(?:kgs|kilos|kilograms)\\b|kgs?\\b|kg(?=\\d{3}\\b)|kgms?\\b|kilos?\\b|kilogram\\w{0,3}\\b|kilogrammes?\\b|keys\\b|k\\b';
export const gram = 'g\\b|gr\\b|gms?\\b|grams?\\b|grammes?\\b';
export const kilogramAlone = /\b(?:kgs?|kilos?|kilograms?|kilogrammes?|metric)\b/;
export const poundAlone = /\b(?:lbs?|pounds?)\b/;
export const weighs =
  /\bweigh(?:s|ed|ing|t)?(?: is| was| about| around| like| at| yesterday| today| last week| this week| this morning| at the (?:clinic|doctors?|hospital|pediatrician))*:? (\d+(?:\.\d+)?)(?! ?(?:months?|mos?|weeks?|years?|days?|yrs?|:|\/|am\b|pm\b|minutes?|hours?))/;
/** The number is only a bound above, or below, the weight. */
export const atMost =
  /(?:\b(?:less than|lighter than|smaller than|under|below|up to|at most|no more than|not more than|not over)|<) ?(?:about |around )?\d/;
export const nearly = /\b(?:almost|nearly|not (?:quite|even)|just under|close to|barely) (?:about |around )?\d/;
export const atLeast =
  /(?:\b(?:more than|heavier than|bigger than|(?<!\b(?:just|little|bit|tad) )over|above|at least)|>) ?(?:about |around )?\d/;
/** A mass that is not the child's weight now. */
export const otherMass =
  /\b(?:it|you|file|that|this|records?) (?:says?|said|shows?|have|has|had|put|got) (?:\w+ ){0,2}\d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|pounds?)(?=.*\d)|\b(?:not|instead of) \d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|pounds?)?|\b(?:lost|gained|born(?: at)?|birth ?weight(?: was)?|birth|up|down|gain|gaining|losing) (?:about |at |around |was )?\d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|pounds?|grams?|g|oz|ounces?)\b(?: ?\d+ ?(?:oz|ounces?))?|\b\d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|pounds?) (?:at birth|when born|born|newborn|as a newborn|when (?:she|he) (?:was born|came home|came out))\b|\b(?:when|since|once|as|cos|until|till) (?:she|he) (?:was|reached|got to|hit|weighed)(?: (?:only|about|around|just|like|a|tiny))* \d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|pounds?|grams?|g)\b/g;
/** Numbers that are no weight. */
export const otherNumbers: readonly RegExp[] = [
  /\b\d+(?:\.\d+)? ?-?(?:years?|yrs?|yo|y\/o|months?|mos?|weeks?|wks?|days?|minutes?|mins?|hours?|hrs?|seconds?|secs?|moments?|ml|cc|cm|inch\w*|grams?|grammes?|gms?|fr|french|am|pm|%|ft|feet|foot|th|nd|rd|m ago)\b(?: old)?/g,
  /\b\d{1,4}[/-]\d{1,2}(?:[/-]\d{2,4})?\b(?=.*[/-])/g,
  /\b\d{1,2}:\d{2}\b/g,
  // "7 something kilos".
  /\b\d+(?:\.\d+)? (?:and |point )?(?:something|a bit(?= (?:lbs?|pounds?)))\b/g,
  /\b(?:step|number|in|since|size|age|aged|for(?: an?| only)?) \d+t?\b|\b\d+t\b/g,
];
export const unknown =
  /\b(?:not a (?:clue|scooby|notion)|beats me|search me|god knows|(?:not|never) (?:been )?weighed|not (?:sure|known)|unsure|dont know|dont remember|no idea|no clue|unknown|dont have (?:that|it|her weight|his weight|(?:a |any )?scale)|havent (?:weighed|been weighed)|cant remember|cant say|couldnt (?:say|tell)|who knows|havent (?:a|the) (?:notion|clue|foggiest|idea)|never weighed|(?:nobody|noone|havent|hasnt|never|not|didnt) (?:\w+ ){0,2}weigh(?:ed)?|no scales?|forgot|not certain)\b/;
export const unsure = /\b(?:not sure|unsure|dont know|no idea|maybe|think|guess|probably|no clue|not certain)\b/;
