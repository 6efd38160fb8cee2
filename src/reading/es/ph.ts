/** Spanish around the number on a pH strip. */
/** Between the two ends of a range, and what may stand before and after. */
export const beforeJoin = '(?:y algo ?)?';
export const join =
  ',? ?\\bo\\b|\\bu\\b|\\ba\\b|\\by\\b|\\btal vez\\b|\\bquizas?\\b|\\bcasi\\b|\\bhasta\\b|\\btirando(?:le)? al?\\b|\\bor\\b|-|/|~|,? ?(?:y |pero )?\\b(?:yo|el|ella|mi [a-z]+)(?: (?:veo|leo|digo|dice|ve|lee|que|le|pone|es|un))*\\b';
export const afterJoin = '(?:tal vez |quizas? |un |una |como |el |casi |unos |de |al |a lo mejor )?';
export const above =
  '>=?|\\+|\\b(?:mas de|mas que|mayor (?:de|a|que)|arriba de|encima de|por encima de|por arriba de|superior a|mas (?:alto|arriba) (?:de|que|del)|pasad[oa] de|pas(?:a|o) (?:de|del)|minimo|por lo menos|al menos|sobre|over|above)\\b(?: el| un)?';
export const orAbove =
  '\\+|o (?:mas|mayor|mas alto|arriba)\\b|para arriba\\b|y picos?\\b|y fraccion\\b|y tant(?:os?|ito)\\b|y cachito\\b|y un (?:poco|poquito|pelin|cachito)\\b|y algo\\b|en adelante\\b|pasad[oa]s?\\b';
export const below =
  '<=?|\\b(?:menos de|menor (?:de|a|que)|debajo de|abajo de|por debajo de|inferior a|no llega a|casi|hasta|maximo|no mas de|no pasa de|mas bajo (?:de|que)|under)\\b(?: el| un)?';
export const orBelow = 'o (?:menos|menor|mas bajo)\\b|para abajo\\b';
export const slightlyAbove =
  '\\b(?:un poco|poquito|un poquito|apenas|tantito|ligeramente|algo|un pelin|un tris) (?:mas (?:de|del|que|arriba de|alto (?:que|de))|arriba de|por (?:encima|arriba) de|encima de|mayor (?:a|que|de)|pasad[oa] de)\\b';

/** Numbers that belong to something else: amounts, times, counts, lengths, "de 14", "no 5". */
export const otherNumbers: readonly RegExp[] = [
  /\b\d+(?:\.\d+)? ?(?:ml|mls|cc|ccs|oz|onzas?|kg|kgs|kilos?|lbs?|libras?|cm|pulgadas?|minutos?|mins?|min|horas?|hrs?|segundos?|segs?|dias?|semanas?|meses|tiras?|tiritas?|intentos?|veces|vez|am|pm|por ciento|%|fr|gotas?|x)\b/g,
  /\b(?:a )?las? \d{1,2}(?::\d{2})?(?: ?[ap]m)?\b/g,
  /\b\d{1,2}:\d{2}(?: ?[ap]m)?\b/g,
  /\b(?:paso|opcion|pregunta|intento|telefono)(?: numero)? \d+\b/g,
  /\bl[oa]s 2\b/g,
  /\b(?:de|sobre|hasta) 14\b/g,
  /\b(?:no|no es|no era|no fue|no un) (?:el |un )?\d+(?:\.\d+)?\b/g,
];

export const unsure =
  /\b(?:no (?:estoy|estamos) (?:muy |tan |bien )?segur\w*|no se(?: (?:si|bien|ve|distingue|cual)\b| ?$| ?[.,])|no (?:puedo|logro|alcanzo a) (?:ver|distinguir|leer|saber)|ni idea|dificil (?:de )?(?:ver|decir|leer|saber)|adivin\w*|no distingo)\b/;
export const unreadable =
  /\b(?:no (?:se|la|lo)? ?(?:puedo|logro|alcanzo a|pude|puede|entiende|distingue|lee|ve)(?: (?:ver|leer|distinguir|decir|bien|claro|saber))*|no distingo|no se lee|ilegible|dificil (?:de )?(?:ver|decir|leer|saber)|no (?:esta|es|sale) clar[oa]|no (?:estoy|estamos) segur\w*|no se|ni idea|borros[oa]|no (?:cambio|cambia|cambiaba)|sin cambio|no (?:coincide|corresponde)|entre)\b/g;
export const colours =
  /\b(?:\w*(?:verd|amarill|naranj|anaranjad|roj|azul|morad|purpur|cafe|marron|rosad|gris)\w*|colou?r\w*|oscur\w*|clar[oa]\w*)\b/g;

export const misread =
  /\b(?:perdon|lei mal|leimos mal|me equivoque|nos equivocamos|menti|(?:pudo|puede) (?:haber sido|ser)|no (?:veia|vi|lo vi) bien|en realidad|error|equivocad[oa]|quise decir|correccion|corrijo|deberia (?:ser|decir)|mire (?:otra vez|de nuevo|bien)|no (?:es|era) \d)\b/;
/** A reading looked at again, by whoever. */
export const readAgain =
  /\b(?:mas bien|parece mas|(?:la tira|mi esposo|mi esposa|mi mama|mi suegra|el|ella) (?:ya |ahora )?dice|(?:revise|cheque|revisamos|checamos|mire|mirando|viendo|vi|volvi)|cambio|mas oscur[oa]|mas clar[oa]|mas cerca|se puso)\b/;
export const namesPh = /\bph\b/;
/** A number of something else than a strip. */
export const otherNumber =
  /\d ?(?:kgs?|kilos?|libras?|lbs?|mls?|cc|am|pm|semanas?|dias?|mes(?:es)?|anos?|horas?|hrs?|minutos?|mins?|oz|onzas?|grados?|f|%)\b|\d:\d\d|\b(?:llen\w*|globo|agua|jeringa|paso)\b/;
export const aboutStrip =
  /\b(?:ph|tira|tiras|tirita|tiritas|lectura|lei|lee|papel|papelito|(?<!\b(?:que|sonda|tubo|boton|empaque|paquete|caja|bolsa) )(?:dice|marca))\b/;
export const notThat =
  /\b(?:no|en vez de|en lugar de|no es|no era|dije|puse|escribi) (?:un |el )?(?:ph )?\d+(?:\.\d+)?\b/g;

/** Words that open a range: a slip of one of them beside a number could hide that the reading is higher. */
export const openWords: readonly string[] = [
  'arriba',
  'encima',
  'mayor',
  'menos',
  'entre',
  'sobre',
  'minimo',
  'pasado',
];
export const openLookalikes: ReadonlySet<string> = new Set(
  'mayo sobra sombra pobre pasada pesado entra entro entera metros mejor cobre meno mesa pasando'.split(' '),
);
/** What is left of "mas de" and "por lo menos" where their first word was not read. */
export const comparing = /\b(?:(?<!mas o )menos|mayor|que) \d|\blo menos\b/;
/** Doubt about the strip, the light, or what was dipped: no number counts beside it, but for one off another strip. */
export const doubtful =
  /\b(?:vencid[oa]s?|caducad[oa]s?|expirad[oa]s?|(?:tiras?|tiritas?|papel|paquete) (?:\w+ ){0,2}(?:viej[oa]s?|mojad[oa]s?|humed[oa]s?|rot[oa]s?|suci[oa]s?|pasad[oa]s?)|se (?:me )?mojo|saliva|baba|(?:agua de la llave|agua del lavado)|(?:hay )?(?:poca|mala) luz|no hay (?:buena )?luz|(?:esta )?(?:muy )?oscuro aqui|(?:sigue|esta) (?:cambiando|moj\w+)|(?:se me )?cayo (?:la tira|al (?:piso|suelo))|no (?:me )?confio|no puede ser|se ve rar[oa]|dalt[oó]nic[oa]|sin (?:mis )?(?:lentes|anteojos|gafas)|lado equivocado|mezclad[oa] con)\b(?!.*\b(?:en|con) (?:la|una) (?:segunda|otra|nueva)\b.*\d|.*\bla (?:segunda|otra) (?:si |ya )?(?:dice|marca|sale|salio|dio|da)\b.*\d)/;
/** Words that may stand beside a number which is nothing but a reading. */
export const readingWords: ReadonlySet<string> = new Set(
  'es el la ph tira dice marca salio da lectura como un casi o a entre y de'.split(' '),
);
