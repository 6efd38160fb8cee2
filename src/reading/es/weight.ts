/** Spanish for weights. */
/** Inside one weight, and between two. */
export const and = '(?:y|con)';
export const joined = '-|/|\\bo\\b|\\bu\\b|\\ba\\b|\\by\\b|\\bor\\b';
/** No Spanish speaker weighs a child in stones. */
export const stone = '(?!)';
export const pound = 'libras?\\b|lbrs?\\b|lbras?\\b|libas\\b|libritas?\\b|lbs?\\b|lb(?=\\d)|lbs(?=\\d)|pounds?\\b|#';
export const ounce = 'onzas?\\b|onsas?\\b|oz\\b|ozs\\b';
export const kilogram = 'kgs?\\b|kgrs?\\b|kilos?\\b|kilitos?\\b|quilos?\\b|kilogramos?\\b|kls?\\b|ks?\\b';
export const gram = 'g\\b|gr\\b|grs\\b|gms?\\b|gramos?\\b';
export const kilogramAlone = /\b(?:kgs?|kilos?|kilogramos?|quilos?)\b/;
export const poundAlone = /\b(?:lbs?|libras?|pounds?)\b/;
export const weighs =
  /\b(?:pesa|peso|pesaba|pesando|peza|pesan|pesaron|pesamos)(?: es| de| como| unos| unas| aproximadamente| casi| alrededor| mas o menos| en| actual| fue|:)* (\d+(?:\.\d+)?)(?! ?(?:mes|semanas?|anos?|dias?|:|\/|am\b|pm\b|minutos?|horas?))/;
/** The number is only a bound above, or below, the weight. */
export const atMost =
  /(?:\b(?:menos de|debajo de|abajo de|no (?:pasa|pasaba) de|hasta|maximo|no mas de|menor (?:de|a))|<) ?(?:como |unos |unas |los |las )?\d/;
export const nearly = /\b(?:casi|no llega a|no (?:alcanza|completa)|ni) (?:como |unos |unas |los |las |a )*\d/;
export const atLeast =
  /(?:\b(?:mas de|arriba de|por lo menos|al menos|minimo|pasad[oa] de|pasa de|mayor (?:de|a))|>) ?(?:como |unos |unas |los |las )?\d/;
/** A mass that is not the child's weight now. */
export const otherMass =
  /\b(?:yo (?:solo |sola |sol[oa] |misma? )?peso|mi peso(?: es)?(?: de)?|conmigo(?: pesa| marca| dice)?|yo (?:con (?:el|ella)|cargand\w+)) (?:como |unos |casi |es |son )*\d+(?:\.\d+)?(?: ?(?:kgs?|kilos?|lbs?|libras?))?|\b(?:si|cuando|al) (?:lo |la )?(?:carg|abraz)\w*[^.;!?\d]{0,40}\d+(?:\.\d+)?(?: ?(?:kgs?|kilos?|lbs?|libras?))?|\b(?:cargand\w+|en brazos|juntos|los dos|las dos)[^.;!?\d]{0,30}\d+(?:\.\d+)?(?: ?(?:kgs?|kilos?|lbs?|libras?))?|\b(?:no|en vez de|en lugar de) (?:(?:pesa|pesaba|son|es|eran) )?\d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|libras?)?|\b(?:bajo|perdio|subio|gano|aumento|ha (?:bajado|subido|ganado)|nacio|al nacer|peso al nacer) (?:con |de |peso |pesando |como |casi |fue )*\d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|libras?|gramos?|grs?|g|oz|onzas?)\b(?:(?: y| con)? ?\d+ ?(?:oz|onzas?|gramos?|grs?|g)?\b)?|\b\d+(?:\.\d+)? ?(?:kgs?|kilos?|lbs?|libras?)(?: (?:con )?\d+)? (?:al nacer|cuando nacio)\b/g;
/** Numbers that are no weight. */
export const otherNumbers: readonly RegExp[] = [
  /\b\d+(?:\.\d+)? ?-?(?:anos?|mes(?:es)?|semanas?|dias?|minutos?|mins?|min|horas?|hrs?|ml|cc|cm|gramos?|gms?|grs?|pulgadas?|fr|french|am|pm|%|metros?)\b(?: de edad)?/g,
  /\b\d{1,4}[/-]\d{1,2}(?:[/-]\d{2,4})?\b(?=.*[/-])/g,
  /\b\d{1,2}:\d{2}\b/g,
  /\b(?:percentil\w*|centil\w*)(?: (?:es|del?|el|en|como|al|va|esta|anda))* \d+|\b\d+(?: de)? (?:percentil\w*|centil\w*)/g,
  /\b(?:paso|numero|en|desde|talla|tamano|edad) \d+[a-z]?\b/g,
];
export const unknown =
  /\b(?:no (?:estoy|estamos) (?:muy )?segur\w*|no (?:lo |la )?se(?! (?:le|ha|pesa|leer(?! (?:la|el)\b)|escribir|ingles)\b)|no (?:me )?(?:acuerdo|recuerdo)|ni idea|no (?:tengo|tenemos) (?:ni )?(?:idea|bascula|balanza|pesa|como)|no (?:lo|la) (?:hemos|he|han) pesado|no (?:lo|la) (?:puedo|podemos) pesar|(?:nunca|no) (?:lo|la) pes\w+|quien sabe|sin bascula|desconozco|se me olvido|no (?:sabria|sabemos))\b/;
export const unsure =
  /\b(?:no (?:estoy|estamos) (?:muy )?segur\w*|no se|ni idea|quizas?|tal vez|creo|supongo|probablemente|a lo mejor)\b/;
