/** French for weights. "Livres" are pounds, as in Quebec; a metric pound of 500 g would be a little more. */
/** Inside one weight, and between two. */
export const and = 'et';
export const joined = '-|/|\\bou\\b|\\ba\\b|\\bet\\b|\\bvoire\\b';
export const stone = 'stones?\\b';
export const pound = 'lbs?\\b|livres?\\b|lvs?\\b|livr\\b|#';
export const ounce = 'oz\\b|onces?\\b';
export const kilogram = 'kgs?\\b|kilos?\\b|kilogrammes?\\b|kilogr\\b|kilo\\b|kl\\b|k\\b|kgr?\\b';
export const gram = 'g\\b|gr\\b|grs\\b|grammes?\\b|gramme\\b';
export const kilogramAlone = /\b(?:kgs?|kilos?|kilogrammes?)\b/;
export const poundAlone = /\b(?:lbs?|livres?)\b/;
export const weighs =
  /\b(?:pese|pesait|poids|(?:elle|il|bebe) fait|pesee? a)(?: (?:est|de|environ|a peu pres|a|autour de|dans les|presque|un peu|etait|:))*:? (\d+(?:\.\d+)?)(?<!\bfait (?:3[89]|4[01]))(?! ?(?:mois|ans?|semaines?|jours?|:|\/|minutes?|mins?|mn|secondes?|jrs?|sem\b|heures?|h\b|fois|ml|degres?|cm|de fievre|%|tentatives?|\d))/;
/** The number is only a bound above, or below, the weight. */
export const atMost =
  /(?:\b(?:moins (?:de|que)|en dessous de|au[ -]dessous de|sous les|max(?:imum)?|pas plus de|au plus|inferieur a|meme pas)|<) ?(?:environ )?\d/;
export const nearly = /\b(?:presque|pas tout a fait|pas encore|bientot|quasiment|pres de|a peine) (?:les )?\d/;
export const atLeast =
  /(?:\b(?:plus (?:de|que)|au moins|au[ -]dessus de|superieur a|minimum|depasse(?: les)?|un peu plus de)|>) ?(?:environ )?\d/;
/** A mass that is not the child's weight now. */
export const otherMass =
  /\b(?:pas|au lieu de|et non|non pas|contre) \d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|livres?)?|\b(?:perdu|pris|gagne|grossi de|maigri de|nee? (?:a|avec)|naissance(?: a| de| etait| cetait)?:?|poids de naissance(?: de)?:?) (?:environ |a |de |presque )?\d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|livres?|grammes?|gr?|oz|onces?)\b(?: ?\d+ ?(?:oz|onces?|g|grammes?)?)?|\b\d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|livres?|grammes?|g) (?:a la naissance|quand (?:elle|il) est nee?)\b/g;
/** Numbers that are no weight. */
export const otherNumbers: readonly RegExp[] = [
  /\b\d+(?:\.\d+)? ?-?(?:ans?|mois|semaines?|sems?|jours?|j|minutes?|mins?|mn|heures?|h|ml|cc|cm|grammes?|gr|fr|french|ch|%|degres?|fois)\b/g,
  /\b\d{1,4}[/-]\d{1,2}(?:[/-]\d{2,4})?\b(?=.*[/-])/g,
  /\b\d{1,2}:\d{2}\b/g,
  /\b(?:etape|numero|en|depuis|taille|age|ch|fr|calibre|charriere) ?\d+[a-z]?\b/g,
];
export const unknown =
  /\b(?:pas sure?|pas certaine?|(?:sais|sait|savons|rappelle|souviens|connais|connait) (?:pas|plus|nplus|vraiment pas|absolument pas|meme pas|trop pas)|sais trop|j?ignore|aucune idee|pas idee|pas la moindre idee|inconnu|(?:pas|plus|aucune) (?:de )?balance|jamais pesee?|pas (?:ete )?pesee?|oublie\w*|peux pas (?:te |vous )?dire|qui sait)\b/;
export const unsure =
  /\b(?:pas sure?|sais (?:pas|plus|trop)|aucune idee|peut etre|crois|pense|suppose|probablement|pas certaine?)\b/;
