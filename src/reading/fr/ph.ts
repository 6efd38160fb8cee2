/** French around the number on a pH strip. */
/** Between the two ends of a range, and what may stand before and after. */
export const beforeJoin = '(?:environ ?)?';
export const join =
  ',? ?\\bou(?: bien| peut etre| meme)?\\b|\\ba\\b|\\bet\\b|\\bpeut etre\\b|-|/|~|\\bjusque a\\b|\\bvoire\\b|\\bpuis\\b|,? ?(?:et |mais )?\\b(?:moi|lui|elle|mon [a-z]+|ma [a-z]+)(?: (?:je|voit|vois|dit|dis|lit|lis|cest|un|plutot|que))*\\b';
export const afterJoin = '(?:peut etre |un |environ |genre |le |plutot |meme |ph )?';
export const above =
  '>=?|\\+|\\b(?:plus (?:de|que|grand que|haut que|eleve que)|au[ -]?dela de|superieur(?:e)? a|sup a|au[ -]?dessus (?:de|du)|au moins|depasse(?: le| les)?|minimum|passe)';
export const orAbove =
  '\\+|(?:ou|et) (?:plus|davantage|quelques?(?: \\w+)?|des (?:poussieres|brouettes|bananes)|un (?:petit )?(?:peu|poil|chouia)|au[ -]?dessus|superieur|au[ -]?dela)\\b|(?:virgule |point )?quelque chose\\b|plus\\b|minimum\\b|au moins\\b';
export const below =
  '<=?|\\b(?:moins (?:de|que)|inferieure? a|inf a|en dessous (?:de|du)|au[ -]?dessous (?:de|du)|sous(?: les?)?|au (?:plus|maximum)|maximum|max|pas plus (?:de|que)|presque|quasi(?:ment)?|pas tout a fait|jusque a|a peine|juste sous)\\b';
export const orBelow = '(?:ou|et) (?:moins|en dessous|au[ -]?dessous|inferieur)\\b|maximum\\b|max\\b|au plus\\b';
export const slightlyAbove =
  '\\b(?:juste|legerement|un (?:petit )?(?:peu|poil|chouia)|a peine) (?:plus (?:de|que|haut que|eleve que)|au[ -]?dessus (?:de|du)|superieure? a|passe)';

/** Numbers that belong to something else: amounts, times, counts, lengths, "sur 14", "pas 5". */
export const otherNumbers: readonly RegExp[] = [
  /\b(?:les|entre|des|tous|toutes|leurs|mes|ces|ces) 2\b(?! ?(?:et|ou|a|-)\b)|\b2 (?:couleurs?|cases?|carres?|nuances?|lignes?|chiffres?|valeurs?|cotes?)\b/g,
  /\b\d+(?:\.\d+)? ?(?:ml|mls|cc|oz|onces?|kgs?|kilos?|lbs?|livres?|cm|minutes?|mins?|mn|heures?|h|hrs?|secondes?|secs?|jours?|semaines?|bandelettes?|languettes?|essais?|fois|am|pm|pourcent|%|fr|ch|gouttes?|eme|e)\b/g,
  /\b\d{1,2}:\d{2}(?: ?[ap]m)?\b/g,
  /\b(?:etape|numero|option|question|essai|tentative) \d+\b/g,
  /\b(?:sur|de) 14\b/g,
  /\bvers \d{1,2}:\d\d/g,
  /\b(?:pas|et non|non pas|pas du) (?:un |a |de )?\d+(?:\.\d+)?\b(?! ?(?:tout))/g,
];

export const unsure =
  /\b(?:pas sure?|pas certaine?|sais (?:pas|plus|trop)|arrive pas a (?:dire|voir|lire)|aucune idee|difficile a (?:dire|lire|voir)|dur a (?:dire|lire|voir)|devine|au pif|pif)\b/;
/** Doubt about the strip, the light, or what was dipped: no number counts beside it. */
export const doubtful =
  /\b(?:perimee?s?|expiree?s?|date (?:depassee|passee)|(?:vieilles?|anciennes?|vieux) (?:bandelettes?|languettes?|papiers?|paquet|boite)|(?:bandelettes?|languettes?|papiers?|boite|elles?|il)(?: (?:est|sont|etait|etaient|a|ont|tres|trop|vraiment|un|peu|tout|l|le|air|prise?s?|semble\w*|toutes?))* (?:vieilles?|vieux|mouillee?s?|humides?|humidite|dechiree?s?|sales?|pliee?s?|jaunies?|abimee?s?|tombee?s?|eau)|salive|bave|crachat|(?:eau|rincage) (?:du robinet|de rincage)|(?:lumiere|eclairage|luminosite) (?:est|pas|mauvaise?|trop|jaune)|mauvaise? (?:lumiere|eclairage)|fait (?:trop |tres )?(?:noir|sombre)|(?:change|bouge|fonce|vire) encore|continue (?:a|de) changer|encore (?:mouillee?|humide)|arrete pas de changer|(?:tombee?|touche|pose\w*) (?:par terre|le sol|sur le sol|au sol)|fais pas confiance|(?:semble|parait|a le air) (?:bizarre|faux|louche|etrange)|daltonien\w*|sans (?:mes )?lunettes|mauvais (?:cote|papier)|mauvaises? (?:bandelette|face)s?|melange\w* (?:avec|a))\b(?!.*\b(?:avec|sur|a) (?:la|le|une) (?:deuxieme|2e|seconde|autre|nouvelle|suivante)\b.*\d|.*\bla (?:deuxieme|2e|seconde|autre|suivante) (?:dit|donne|affiche|indique|marque|est|montre|fait)\b.*\d)/;
export const unreadable =
  /\b(?:(?:arrive|peux|peut|sais|reussis|reussit|parviens) (?:pas|plus|nplus)(?: trop)? (?:a |le |la )*(?:dire|lire|voir|distinguer|faire)|illisible|lisible|difficile a (?:dire|lire|voir)|dur a (?:dire|lire|voir)|pas clair|pas (?:tres |trop )?(?:lisible|net)|pas sure?|sais (?:pas|plus)|aucune idee|flou\w*|(?:a |cest |change |bouge )(?:pas|rien) (?:change|bouge)?|change pas|aucun changement|correspond (?:pas|a rien|a aucune)|entre|vois (?:pas|rien)|lis pas)\b/g;
export const colours =
  /\b(?:\w*(?:vert|jaune|orange|rouge|bleu|violet|brun|marron|beige|rose|gris)\w*|couleurs?|fonce\w*|clair\w*|pale)\b/g;

export const misread =
  /\b(?:desole|mal (?:lu|vu|regarde|lue)|relu|trompee?|gouree?|planteee?|menti|(?:pourrait|peut|a pu|devait) etre|mauvaise (?:ligne|colonne|couleur)|en fait|erreur|fausse?|faux|voulais dire|correction|devrait etre|aurait du|regarde (?:a nouveau|encore|de nouveau)|re ?regarde|re ?verifie|faute de frappe|oups|pas \d|plutot|me suis)\b/;
/** A reading looked at again, by whoever. */
export const readAgain =
  /\b(?:plutot|(?:bandelette|languette|mari|femme|maman|papa|il|elle|ca) (?:dit|indique|montre|affiche)|verifie\w*|reverifie\w*|regarde\w*|relu\w*|change\w*|fonce\w*|plus (?:clair|sombre|fonce)\w*|proche de|vire\w*|tourne\w*)\b/;
export const namesPh = /\bph\b/;
/** A number of something else than a strip. */
export const otherNumber =
  /\d ?(?:kgs?|kilos?|lbs?|livres?|mls?|cc|am|pm|semaines?|jours?|mois|ans?|heures?|h|minutes?|mins?|mn|oz|onces?|degres?|f|%)\b|\d:\d\d|\b(?:remplir?|rempli\w*|ballon\w*|eau|seringue|rinc\w*|etape)\b/;
export const aboutStrip = /\b(?:ph|bandelettes?|languettes?|lecture|lue?s?|mal lu|papier|resultat|test)\b/;
export const notThat =
  /\b(?:pas|au lieu de|plutot que|et non|non pas|cetait pas|dit|ecrit|mis|tape|marque) (?:un |du |de )?(?:ph )?(?:a )?\d+(?:\.\d+)?\b/g;

/** Words that open a range: a slip of one of them beside a number could hide that the reading is higher. */
export const openWords: readonly string[] = [
  'plus',
  'superieur',
  'dessus',
  'depasse',
  'entre',
  'moins',
  'dela',
  'haut',
];
export const openLookalikes: ReadonlySet<string> = new Set(
  'plu pus plis pluss dessous dessous encre entree rentre antre contre entr depart depasser moi mois main mains soins coins point peu delai hauts haute saut faut tous tout cela de la dela plutot pls'.split(
    ' ',
  ),
);
/** What is left of "plus de" and "au moins" where their first word was not read. */
export const comparing = /\b(?:plus|moins|superieure?|dessus|que) (?:de |du |que |a )?\d|\bau \w{3,5} \d/;
/** Words that may stand beside a number which is nothing but a reading. */
export const readingWords: ReadonlySet<string> = new Set(
  'cest est le la ph bandelette languette dit indique affiche lecture environ ou a entre et de marque'.split(' '),
);
