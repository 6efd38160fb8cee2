/** Spanish for how a tube went in: easily, hard, or not at all. */

export const wentHard =
  /\b(?:(?:darle|le di|le dimos|di|meter\w*|meti\w*|con|bien|recargar\w*|apoyar\w*)(?: \w+){0,2} (?:fuert\w*|recio|ganas|duro)|(?:darle|le di|le dimos|dandole) (?:unas |varias |muchas )?vueltas?|a (?:pura |viva )?fuerzas?|a la (?:brava|mala|fuerza)|a las malas|a como (?:dio|pude|pudo|diera)|a duras penas|durisim[oa]|a empujones|cost(?:o|a|aba|ando|ar)|cuesta|dificil\w*|dificultad|trabaj(?:o|ito|oso)|empuj\w*|forz\w*|fuerza|apret\w*|resist\w*|batall\w*|breg\w*|luch\w*|dur[oa]|presion\w*|esfuerzo|retorc\w*|gir(?:ar|e|arla|arlo)|a la (?:2|3|segunda|tercera)(?: \w+)?|vari(?:os|as) (?:intentos|veces)|(?:2|3|4|5|6|par) (?:intentos|veces)|por fin|finalmente|apenas(?: y)?|a penas|grit\w*|ajustad[oa]|justa|justo|forcej\w*|a la fuerza|con trabajos)\b/g;
export const notEasy =
  /\b(?:no (?:fue|entro|estuvo|era|es|entraba|paso|se metio)?(?: (?:tan|muy|nada|del todo|para nada))* ?(?:facil\w*|suave\w*|sencill\w*|bien|rapido)|nada (?:facil|sencillo|suave)|facil no|poco facil)\b/g;
export const wentEasy =
  /\b(?:facil\w*|facilit\w*|suave\w*|suavecit\w*|sencill\w*|resbal\w*|desliz\w*|(?:de|a la) (?:primera|1ra)|entro de (?:una|1)(?! (?:forma|manera|vez|golpe))|de (?:un|1) (?:solo|saque|viaje|tiron|toque|jalon)|derechit[oa]|directo|rapidit[oa]|solit[oa]|(?:cero|0|nada de|ningun[oa]?|ni un[oa]?) (?:problemas?|problemitas?|esfuerzos?|fuerza|resistencia|dificultad|trabajos?|lios?|broncas?|rollos?|dramas?|complicacion(?:es)?|contratiempos?|inconvenientes?)|sin problemas? (?:ninguno|alguno)|(?:entro|paso|se fue|se metio|se deslizo|resbalo) sol[oa]|^de una$|sin (?:encontrar |sentir |notar |hallar |oponer |ofrecer |ejercer |nada de |la (?:menor|minima) |ningun |ninguna |mayor |tanta |mucha |mucho |hacer |tener que |necesidad de )*(?:problemas?|dificultad|resistencia|fuerza|empuj\w*|esfuerzo|presion\w*|forz\w*|trabajos?|batallar|lios?|broncas?|pedos?|rollos?|dramas?|complicacion(?:es)?|contratiempos?|inconvenientes?|trabas?|novedad|molestias?|dolor|llanto|llorar|queja\w*)|(?:no|ni|nunca) (?:tuve|tuvimos|hubo|fue|hice|hizo|habia|necesite|necesitamos|se necesito)? ?(?:que |falta |necesidad de |necesario )?(?:empuj\w*|forz\w*|hacer (?:la )?fuerza|fuerza|presion\w*|resistencia|problemas?|batall\w*)(?: (?:nada|para nada|ni tantito|nadita|de nada))?|(?:no|ni) (?:me |le |nos )?cost[oa](?: nada| trabajo)?|^de volada(?= ?$| ?[.,;!])|ni (?:se (?:entero|quejo|inmuto|dio cuenta)|cuenta se dio|(?:l[ao] )?(?:sintio|noto|chisto|pestaneo)(?! (?:el|la) (?:clic|tope)))|para nada (?:me |le |nos )?(?:cost[oa]|dificil|dur[oa])|no (?:fue|estuvo|estaba|es) (?:nada |tan |muy )?(?:dificil|dur[oa]|apretad[oa])|como (?:(?:un )?cuchillo en (?:la )?)?(?:mantequilla|manteca|mantequita|si nada|(?:la |una )?seda|guante|anillo al dedo)|(?:ha )?entr(?:o|ado) (?:de|como) (?:lujo|maravilla|diez|10|pelos|perlas|cine|primera|volada|rapido)|entro (?:muy |super |bastante |todo |re |bien )*(?:bien|perfect\w*|rapid\w*|tranquil\w*)|sin mas)\b/g;
export const wontGo =
  /\b(?:(?<!\b(?:jeringa|jeringuilla|tapa|tapita|tapon|extension|conector|globo|agua|gel)(?: \w+){0,2} )no (?:le |la |lo |me |se |nos )*(?:entr\w+|pas(?:a|o(?! nada))|quiere (?:entrar|pasar)|pued[oe]\w*(?: \w+)?|pud(?:e|o|imos)(?: \w+)?|cab[eo]|logr\w*(?: \w+)?|deja(?: \w+)?|va|quiso|met\w+|avanza|consigo|consegui\w*)|falle|fallamos|fallo|se (?:me )?ator\w*|atorad[oa]|trabad[oa]|bloquead[oa]|imposible|no hay (?:manera|forma|modo)|se (?:vuelve|volvio) a salir|(?:se )?(?:salio|sale) (?:otra vez|de nuevo)|se (?:me |le )?sale|(?:sigue|siguen) saliendo(?:se\w*)?|(?:se )?vuelve a salir(?:se)?|se (?:me |le )?(?:anda |esta )?(?:saliendo|regresa|bota)\b|(?:se )?(?:esta )?(?:cerrad[oa]|cerro|cerrando)|(?:muy|demasiado|bien) (?:grande|gruesa|grueso|chic[oa]|chiquit[oa]|pequen[oa]|cerrad[oa]|estrech[oa])|topa(?: con \w+)?|choca|todavia (?:esta )?(?:afuera|fuera)|sigue (?:afuera|fuera))\b/g;
/** What may stand right before "facil"; another word there could be a slip of "no". */
export const leadsToEasy =
  /(?:^|[,.!]|\b(?:fue|es|entro|entraba|estuvo|muy|super|bien|bastante|re|si|sip|ok|y|todo|toda|tan|adentro|dentro|ella|el|la|lo|se|metio|meti|meter|poner|entrar|resbalo|deslizo|puse|quedo|mas|de|manera|forma|ya|paso|rapido|rapida|asi|claro|ahora|vez|demasiado|relativamente|que|todo|facil|suave|dije|digo|dije que|respondi|conteste|puse|rapidito|bastante)) *$/;
export const notBefore = /\b(?:no|ni|nunca|nada)\b[a-z ]{0,12}$/;
/** Both ways named at once. */
export const eitherHow =
  /\b(?:facil\w*|bien|suave) o (?:dificil|dur[oa]|empuj\w*|forz\w*|con fuerza|no)\b|\b(?:dificil|dur[oa]|empuj\w*) o (?:facil\w*|no)\b/;
/** "No tuve que empujar": a negation of the how, not of the going in. */
export const negatedHow =
  /\b(?:no|sin|nunca|ni|cero|0|nada de|tampoco|ningun[oa]?)(?: (?:menor|minima|tuve|tuvimos|que|hubo|necesidad|de|hacer|hice|fue|estuvo|tan|muy|nada|la|le|lo|me|mucha|mucho|tanta|mayor|necesite|hizo|use|usamos|se|ningun[oa]?|habia|hay|necesario|falta))*\s*$/;
export const slightly =
  /\b(?:mas o menos|medio|algo|relativamente|casi|no tan|no muy|maso|dentro de todo|no del todo) ?$/;
/** Says so firmly that it is in: whatever else is denied beside it, it is not out. */
export const firmlyIn =
  /(?<!\bno (?:\w+ ){0,2})\bsolit[oa]\b|\b(?:ya )?(?:esta|quedo|la tengo|lo tengo|entro|se fue|paso) (?:toda |todo |ya |bien |muy |completa )*(?:adentro|dentro|puest[oa]|metid[oa]|facil\w*)\b|\b(?<!no (?:le |la |lo |me |quiere )?)(?:ya |si |por fin )?(?:entro|ha entrado)\b/;
export const notIn = /\b(?:no|nunca|ni)\b[a-z ]{0,18}\b(?:entr\w+|adentro|dentro|puest[oa]|pas[oa])\b/;
/** The second try went in after the first did not. */
export const secondTryIn =
  /\b(?:segunda|segundo|2da|2do|tercera|tercer|3ra|despues|luego|por fin|finalmente)\b.{0,30}(?<!\bno )(?:\bentro|\bpaso|\bpude|\blogr\w+|\bquedo|\besta adentro)\b/;
/** In, and out again after that. */
export const backOut =
  /\b(?:pero|y|luego|despues|otra vez|de nuevo) (?:luego |despues |otra vez |ya )*se (?:me |le )?(?:volvio a (?:salir|caer)|salio|sale|cayo|cae)(?: sol(?:it)?[oa])?\b|\bvolvio a salir(?:se)?\b/g;
export const inNow =
  /\b(?:ya (?:esta|quedo|entro)(?: (?:adentro|dentro|puest[oa]|list[oa]))?|esta (?:ya )?(?:adentro|dentro|puest[oa])|entro|quedo (?:adentro|dentro|puest[oa]|list[oa]|bien)|(?:ya )?(?:la|lo) (?:puse|metimos|meti|pusimos|coloque|logre|volvi a (?:poner|meter))|list[oa]|adentro|puest[oa]|lo logre|lo logramos|se pudo|pude|pudimos|todo bien|hecho)\b|^ya$|^(?:(?:si|ya|pues|muy|super|re|requete|bastante|de lo mas|todo|fue) )*(?:bien|perfect[oa]|excelente)(?: gracias(?: a dios)?)?$/;
/** "Facil" and its kin, which a slip of "no" before them turns round. */
export const plainlyEasy = /^(?:facil|suav|sencill)/;
export const stillTrying =
  /\b(?:todavia no|aun no|ya (?:casi|mero)|(?:me )?esper(?:e|en|a|ame|eme|enme)(?: (?:tantito|un (?:poco|poquito|ratito|segundito|momentito)))?|(?:me )?aguant(?:e|a|en)(?:me)?|permit[ae]me|deje(?:me)? (?:ver|la|lo|pruebo|intento|me lavo|lavarme|le hago|respiro)|en un (?:momento|minuto|segundo)|ahora (?:voy|lo|la)|(?:sigo|seguimos|estoy|estamos|todavia) (?:tratando|intentando|lavando\w*|en eso)|dame un|deme un|un momento|un segundo|ya voy|voy a (?:intentar|tratar)|(?:los|las) lei|(?:estoy|estamos) leyendo)\b/;
/** About the balloon's water, not the tube. */
export const fillsWater = /\b(?:ml|cc|agua|globo|jeringa|llen\w*|infl\w*|medicin\w*|leche|comida|formula)/;
/** How it went in, told beside something else. */
export const tellsHow =
  /\b(?:entro|entrar|ha entrado|meter\w*|meti\w*|puse|ponerla|ponerlo|pusimos|introduc\w*|empuj\w*|forz\w*|costo(?!\w| (?:trabajo |mucho )*(?:respir|despert|dorm|com|aire))|cuesta(?! (?:trabajo |mucho )*(?:respir|despert|dorm|com|aire|tom))|tuve que (?:empujar|forzar|hacer fuerza|apretar)|fue (?:muy |bien |tan )?(?:dificil|facil)|us[eo] (?:mucha |un poco de |algo de )?fuerza)\b/;
/** In by half, and no further. */
export const stuckHalfWay =
  /\b(?:a medias|hasta la mitad|la mitad|a mitad)\b[^.!?]{0,12}\b(?:y|pero|luego) (?:ahi |ya |se |no )*(?:paro|atoro|trabo|atasco|detuvo|pasa|avanza)\b/;
