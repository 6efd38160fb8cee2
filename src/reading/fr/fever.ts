/** French around a body temperature: by name, with its unit, or as a number alone. */

export const named =
  /\b(?:(?:temp(?:erature)?|t|fievre|thermometre|degres?|chaude?)\b[^\d]{0,24}|(?:elle|il|bebe) a (?:deja )?(?=(?:3[89]|4[01])(?:\.\d)?\b))(\d{2,3}(?:\.\d+)?)(?![.:]?\d| ?(?:minutes?|mins?|heures?|h|jours?|mois|ans?|kg|kilos?|livres?|lbs?|ml|cm|semaines?)\b)/g;
export const withUnit =
  /\b(\d{2,3}(?:\.\d+)?) ?(?:(?:au|sur le|dit le|selon le) thermo\w*|degres?|deg|f|c|fahrenheit|celsius|de fievre|de temp\w*|fievre|temp|d(?! ?(?!fievre)[a-z])|sous (?:le|son) (?:bras|aisselle)|en rectal|rectal|axillaire|dans (?:le |le s |son )?(?:oreille|fesses))\b/g;
export const bare =
  /(?:^|[,;] ?|\b(?:avec|reveillee?|matin|affiche|indique|marque|monte|montee?) )(?:(?:cest|oui|non|mais|maintenant|elle|il|a|est|environ|fait|ca|jai|pris|bebe|avec) )*(10[0-7](?:\.\d)?|9[89]\.\d|3[789]\.\d|4[01]\.\d|(?<=\b(?:il|elle|bebe) fait )(?:3[89]|4[01]))\b(?! ?(?:kg|kilos?|lbs?|livres?|ml|cm|g|fr|%))/g;
