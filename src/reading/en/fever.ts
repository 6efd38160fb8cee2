/** English around a body temperature: by name, with its unit, or as a number alone. */

export const named = /\b(?:temps?|temperature|t|fever|thermometer|degrees?|hot|warm)\b[^\d]{0,24}(\d{2,3}(?:\.\d+)?)/g;
export const withUnit =
  /\b(\d{2,3}(?:\.\d+)?) ?(?:degrees?|deg|f|c|fahrenheit|celsius|fever|temp|under (?:the |her |his )?(?:arm|tongue)|rectal\w*|axillary|oral\w*|in (?:the |her |his )?(?:ear|bum|bottom))\b/g;
export const bare =
  /(?:^|[,;] ?|\b(?:woke(?: up)? with|woke at|up with|got|at|has|was|reads|says) )(?:(?:its|it is|yes|no|but|now|she is|shes|hes|at|around|about|reading|got|she has|running) )*(10[0-7](?:\.\d)?|9[89]\.\d|3[789]\.\d|4[01]\.\d)\b(?! ?(?:kg|kilos?|lbs?|pounds?|ml|cm|g|fr|%))/g;
