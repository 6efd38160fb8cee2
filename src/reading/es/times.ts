/** Spanish for how firmly a length of time was said, and for what a moment or a date belongs to. */
/** Between the counts of one span: "2 o 3 semanas", and after its unit: "una hora o 2". */
export const spanJoin = '-|\\b[aouy]\\b|\\bquizas?\\b|\\btal vez\\b';
export const spanTail = 'o|u|a|-';
/** Between the parts of one span: "2 anos y 3 meses". */
export const spanAnd = /^,? ?(?:y |con )?$/;
/** What "un par", "pocos" and "varios" can mean, low to high (common practice, no source). */
export const vague: Readonly<Record<string, readonly [number, number]>> = {
  par: [2, 2],
  unos: [2, 4],
  unas: [2, 4],
  pocos: [2, 4],
  pocas: [2, 4],
  varios: [3, 8],
  varias: [3, 8],
  algunos: [2, 4],
  algunas: [2, 4],
};
/** After a span: it lies in the past. */
export const ago = /^ (?:atras|antes)/;

/** A little more than is named. */
export const justOverBefore = /\b(?:un )?(?:poco|poquito|pelin|apenas) mas de(?: (?:una?|la))?\s*$/;
export const atLeastBefore =
  /(?:>|\b(?:mas de|mas que|por lo menos|al menos|minimo|como minimo|pasad\w+ de|un poco mas de|poco mas de|ya mas de))(?: (?:como|las|los|un|una|hace))*\s*$/;
export const atLeastAfter =
  /^ ?(?:\+|o mas\b|o un poco mas\b|y pico\b|y algo\b|y tantos?\b|y fraccion\b|por lo menos\b|minimo\b|cumplid[oa]s?\b|largos?\b)/;
export const lessBefore =
  /(?:<|\b(?:menos de|no mas de|no hace ni|dentro de|en menos de|maximo|ni|no llega a))(?: (?:como|los|las|un|una|hace))*\s*$/;
export const roughBefore =
  /\b(?:como|aproximadamente|aprox|mas o menos|masomenos|alrededor de|cerca de|casi|creo|quizas?|tal vez|a lo mejor|tipo|ponle|calculo|digamos|hara|debe hacer|supongo|por ahi|por ahi de|unos|unas|algo asi|se me hace|apenas)(?: (?:que|hace|unos|unas|como|fue|fueron|hara|desde|de|a|tiene|llevaba|ya|lleva|casi|los|las|en|es|son|por|ahi))*\s*$/;
export const roughAfter =
  /^ ?(?:mas o menos|masomenos|aproximadamente|aprox|aproximados|o algo asi|algo asi|o asi|por ahi|creo|maso|tal vez|quizas?|casi|o por ahi|calculo|yo creo|si acaso)\b/;
export const roughAnywhere =
  /\b(?:no (?:estoy|estamos) (?:muy )?segur\w*|no se|no (?:me )?(?:acuerdo|recuerdo)|no exactamente|aproximad\w*|mas o menos|creo|calculo|no exacto)\b/;

const units = '(?:anos?|anitos|mes(?:es)?|semanas?|dias?)';
/** A child's age, not a time ago. */
export const age = new RegExp(
  `\\b\\d+(?:\\.\\d+)? ?${units}(?: y (?:medio|\\d+ ${units}))? (?:de (?:edad|nacid[oa]|vida|nacimiento))\\b|\\b(?:hij[oa]|hijit[oa]|nin[oa]|bebe|nene|nena|peque\\w*|chiquit\\w*|niet[oa]|sobrin[oa]|gordit[oa])(?: es| ya)? de (?:casi |apenas )?\\d+(?:\\.\\d+)? ${units}|\\b(?:ella|el|(?:mi|la|el|nuestr[oa]) (?:hij[oa]|hijit[oa]|nin[oa]|bebe|nene|nena|niet[oa])) (?:ya |apenas )?tiene (?:casi |apenas |ya )?\\d+(?:\\.\\d+)? ${units}(?= ?$| ?[,.;!]| y (?:se|le|pesa|su|la))|\\b(?:cumpl(?:e|io|ira)|(?:va a|por|esta por) cumplir)(?: ya| los| sus)? (?:\\d+) ${units}`,
  'g',
);

export const outWords =
  /\b(?:sali\w*|sale|salido|se (?:le |me )?fue|cayo|caido|caia|arranc\w*|jal[oa]\w*|tiro|tira(?! (?:de ph|leid|reactiva|indic|marc|dice|sali))|tiron|sac[oa]\w*|zaf[oa]\w*|saf[oa]\w*|solt[oa]\w*|desprend\w*|quit[oa]\w*|boto|expuls\w*|paso|ocurrio|afuera|fuera|perdio|desconect\w*|desaloj\w*|movio)\b/;
export const seenWords =
  /\b(?:vi|vimos|vio|revise|revisamos|cheque|checamos|la tenia|lo tenia|tenia (?:la|el|su|puest[oa])|todavia (?:la |lo )?(?:tenia|estaba)|aun (?:la |lo )?(?:tenia|estaba)|estaba (?:ahi|bien|puest[oa]|adentro|dentro|en su lugar|todavia)|seguia|ultima vez|con (?:ella|el|la sonda|el tubo|el boton) puest[oa])\b/;
/** The same told beside something else. */
export const toldOutWords = outWords;
export const toldSeenWords = seenWords;
export const foundWords =
  /\b(?:encontr\w+|desperto|desperte|despertamos|levant\w+|me di cuenta|nos dimos cuenta|note|notamos|descubri\w*|llegue|llegamos|amanecio|me percate|(?:fui|fuimos) a (?:ver|revisar|checar)\w*)\b/;
/** How long the child has been ill is no time of the tube. */
export const illSince =
  /\b(?:fiebre|calentura|temperatura|vomit\w*|tos|tosiendo|gripe|resfri\w*|diarrea|enferm\w*|mal|infeccion|antibiotic\w*|dolor|llorando|despierta?o?)(?: (?!sonda\b|tubo\b|boton\b)\w+){0,2} (?:desde|hace|por|toda|todo)\b[^,.;!?]*/g;
/** A time at which something is due, and where what is said of it ends. */
export const dueEnd = /[;!?]|[.,](?!\d)|\bpero\b|\basi que\b|\by\b(?= (?:su|la|el|le) )/;
export const dueTime = /\b(?:toca|tocaba|debe|medicin\w*|medicament\w*|dosis|pastill\w*|insulina|jarabe)\b/;
export const quarterMonths = '3 meses';
export const quarterYear = /\b(?:un )?trimestre\b/;
/** The child was placed with a family, not the tube. */
export const childPlaced = /\b(?:colocad[oa]|puest[oa]|llego|vive) (?:con|a) (?:nosotros|mi|nuestra|la familia)\b.*$/;
/** Firm enough to take a date from where no date was asked for. */
export const placedFirmly =
  /\b(?:pusieron|pusimos|colocaron|colocacion|operaron|opero|operacion|operad[oa]|cirugia|instalaron|insertaron|metieron|(?:lo|la) (?:lleva|usa) (?:puest[oa] )?(?:desde|hace)|se (?:la|lo|le) (?:hicieron|puso|puso la)|le hicieron|gastrostomia|primera (?:sonda|vez)|primer (?:tubo|boton)|original|(?:tiene|lleva|llevaba|trae|usa) (?:con )?(?:la|el|su|esta|este|una|un|ese|esa)? ?(?:sonda|tubo|boton|gastro\w*|g|gj|g-j|j|peg) (?:desde|hace|ya|por|como))\b/;
export const placedWords =
  /\b(?:pusieron|puso|puesta|puesto|pusimos|colocaron|colocad[oa]|colocacion|operaron|opero|operacion|operad[oa]|cirugia|instalaron|insertaron|metieron|hicieron|gastrostomia|primer[oa]?|original|tiene|lleva|llevaba|trae|usa|hace|desde|fue|procedimiento|estoma|tracto|hoyito|agujero)\b/;
export const firstWords =
  /\b(?:primer\w*|original|inicial\w*|cirugia|operacion|operaron|opero|principio|estoma|gastrostomia|quirofano)\b/;
export const changeWords =
  /\b(?:cambi\w+(?! (?:el |la |su |de |al? |los |las )*(?:panal\w*|ropa|ropita|cama|sabanas?|gasas?|pijama|posicion|curacion|cobija|canal|blusa|camis\w+)\b)|reemplaz\w+|nuev[oa]|segund[oa]|tercer[oa]?|2da|3ra|2a|ultim[oa]|recambi\w+|est[ae] (?:sonda|tubo|boton|ultim[oa])|^est[ae] (?:la |lo )?(?:tiene|lleva|trae)\b|actual|renov\w+)\b/;
/** A feed that only tells which time is meant. */
export const besideFeed =
  /\b(?:para|durante|antes de|despues de|en|a) (?:la|el|su|una?) (?:\w+ )?(?:toma|comida|biberon|medicina|medicamento|alimentacion|leche|dosis)\b(?: de (?=(?:la |las )?(?:medianoche|mediodia|\d)))?/g;
export const fedWords =
  /\b(?:comio|comida|comer|alimentac\w*|alimento|alimente|leche|formula|tomo|biberon|mamila|tetero|mamadera|medicin\w*|dosis|desayun\w*|ceno|cena|almuerzo|almorzo|toma)\b/;
/** "Cuando tenia 3 meses": a time only a birth date could place. */
export const byAge =
  /\bcuando (?:(?:ella|el|mi \w+|la \w+|el \w+|apenas|ya) ){0,4}(?:nacio|era|tenia|cumplio|estaba)(?: (?!,)[a-z0-9]+(?:\.\d+)?){0,6}|\bal nacer\b|\bdesde (?:que nacio|(?:el |su )?nacimiento|(?:muy )?bebe|recien nacid[oa]|chiquit[oa])|\b(?:de |desde )?recien nacid[oa]\b|\bde bebe(?:cit[oa])?\b|\ba (?:los|las|sus) \d+(?:\.\d+)? (?:dias|meses|semanas|anos)(?: de (?:edad|nacid[oa]|vida))?|\bal (?:primer )?(?:mes|ano)(?: de (?:edad|nacid[oa]|vida|nacer))\b|\ben (?:la )?(?:ucin?|utin|nicu|neo\w*|incubadora)\b|\bno (?:en |del? |fue (?:en )?)?(?:19|20)\d\d\b|\b(?:dije|puse|escribi) (?:en |del? )?(?:19|20)\d\d\b(?=.*(?:19|20)\d\d)|(?<=\ba (?:los|las|sus) \d+ [a-z]+(?: de [a-z]+)? ?(?:y|,) ?(?:ella |el )?)(?:ya |ahora |hoy )*(?:tiene|va para|cumplio|lleva) (?:los )?\d+ (?:anos?|mes(?:es)?|semanas?)\b|\b(?:ahora|hoy) (?:ella |el |ya )?tiene \d+ (?:anos?|mes(?:es)?|semanas?)\b(?! con)/g;
/** Right before a length of time: the child's age then. */
export const ageThen = /\b(?:tenia|cumplio|a los|a las|al|a sus)(?: (?:como|unos|casi|apenas|mas o menos|ya))*\s*$/;
/** Right before a birth: what follows tells when the tube was placed. */
export const whenBorn = /\b(?:cuando|desde(?: que)?|al|apenas|en cuanto|(?:antes|despues) de(?: que)?) (?:\w+ ){0,2}$/;
export const unknown =
  /\b(?:no (?:estoy|estamos) (?:muy )?segur\w*|no (?:lo |la )?se(?! (?:le|la|lo|ha|me|salio|cayo|cae|sale|leer(?! (?:la|el)\b)|escribir|ingles|usar\w*|poner\w*)\b)|no (?:me |nos )?(?:acuerdo|acordamos|recuerdo|recordamos|fije)|ni idea|no (?:tengo|tenemos) (?:ni )?idea|desconozco|quien sabe|no (?:sabria|sabemos|sabe|supe|sabria)|no (?:lo |la )?(?:vi|vimos)|no (?:estaba|estuve)|(?:estaba|estabamos|estaban) dormid\w+|durmiendo|dormida|dormido|mientras dorm\w+|durante la noche|en algun momento|se me olvido|dificil (?:de )?(?:decir|saber)|imposible saber)\b/;
/** "En 10 minutos" is to come. */
export const coming = /\b(?:en|dentro de|proxim[oa]s?)(?: como| unos| unas)?\s*$/;
/** At the facts on file, words that say that a date told is the placing's. */
export const aboutPlacing =
  /\b(?:fecha|pusieron|puso|colocaron|sonda|tubo|boton|primer\w*|cirugia|operacion|operaron|fue)\b/;
/** The first hole closed and another was made: only what is said after that counts. */
export const newHole =
  /^.*\bse (?:le )?(?:cerro|sello)\b[^.!?]{0,40}?\b(?:otr[oa]|nuev[oa])(?: (?:hoyo|agujero|orificio|estoma))?\b/;
