/** Spanish around a body temperature: by name, with its unit, or as a number alone. */

export const named =
  /\b(?:temperatura|temp|fiebre|calentura|termometro|grados?|marca|marco|caliente)\b[^\d]{0,24}(\d{2,3}(?:\.\d+)?)/g;
export const withUnit =
  /(?<!\b(?:hacen?|estamos (?:a|como a)|afuera (?:hay|hace|a)|(?:calor|clima|ambiente) (?:de|a)|sensacion de|clima en|aqui (?:hace|a))(?: (?:como|casi|unos|los|mas de))? )\b(\d{2,3}(?:\.\d+)?) ?(?:grados?|g de|f|c|celsius|centigrados|fahrenheit|(?:de )?(?:fiebre|temperatura|calentura|temp))\b/g;
export const bare =
  /(?:^|[,;] ?|\b(?:amanecio|desperto|desperte|dio|marco|subio|tuvo|tiene|tenia|esta) )(?:(?:tiene|trae|esta|estaba|en|a|si|no|pero|ahora|como|casi|con|de|anda|ya|marca|le marco|es|son) )*(10[0-7](?:\.\d)?|9[89]\.\d|3[789](?:\.\d)?|4[01](?:\.\d)?)\b(?! ?(?:kg|kilos?|lbs?|libras?|ml|cm|g|fr|%|semanas?|min\w*|dias?|horas?))/g;
