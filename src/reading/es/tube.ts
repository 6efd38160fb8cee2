/** Spanish for the tube: its kind and its state. Generic words only, no makers' names. */

/** Kinds by name, tried in this order; what one has read the next no longer sees. */
export const gj =
  /\b(?:(?:sonda |tubo |boton )?g ?[-/]? ?j(?: ?-?(?:tube|tubo|sonda))?|gj ?tubes?|g y j|gastro ?-?y?eyun\w*|gastro ?-?jejun\w*|transgastric\w*|transpilorica|peg ?-?j|gastrostomia y yeyun\w*|combinad[oa]|estomago y (?:\w+ ){0,2}(?:intestino|yeyuno)\w*|(?:intestino|yeyuno)\w* y (?:\w+ ){0,2}estomago)\b/g;
export const jFirm =
  /\b(?:j ?-?tubes?|jtubes?|(?:tubo|sonda|boton)(?: de(?: tipo)?)? j|j(?<=\b(?:salio|cayo|zafo|safo|arranco|jalo|saco|quito|solto|trae|tiene|usa|lleva|tenia|traia|usaba) (?:la|el|su|una|un) j)|yeyunostom\w*|yeyunal|jejunostom\w*|pej)\b/g;
export const j =
  /\b(?:j ?-?tubes?|jtubes?|(?:tubo|sonda|boton)(?: de(?: tipo)?)? j|yeyun\w*|jejun\w*|pej)\b|(?<![-/] ?)\bj\b|\bjota\b/g;
export const noseFirm = /\b(?:n ?-?g ?-?tubes?|ngs?|sng|naso\w+|(?:por|de|en) (?:la|su) (?:nariz|naricita|fosa))\b/g;
export const nose =
  /\b(?:n ?-?[gj] ?-?tubes?|n[gj]s?|sng|naso\w*|nariz|naricita|nasal)\b(?! (?:esta |muy |toda |un poco )*(?:tapada|mocosa|congestionada|con mocos|roja|suelta))/g;
export const gFirm =
  /\b(?:g ?-?tubes?|gtubes?|gt|(?:tubo|sonda|boton)(?: de(?: tipo)?)? g|g(?<=\b(?:salio|cayo|zafo|safo|arranco|jalo|saco|quito|solto|trae|tiene|usa|lleva|tenia|traia|usaba) (?:la|el|su|una|un) g)(?![-/ ]?j)|(?:sonda|tubo|boton) (?:de |por |para )?(?:la )?gastro\w*|gastrostom\w*|(?<!\b(?:contenidos?|jugos?|liquidos?) )gastric[oa]|peg)\b/g;
export const g =
  /\b(?:g ?-?tubes?|gtubes?|gt|(?:tubo|sonda|boton)(?: de(?: tipo)?)? g|gastro\w*|gastric[oa]|peg|solo (?:va )?(?:al|en el|hasta el) estomago|(?:va|llega) (?:directo|derecho|directamente) (?:al|hasta el) estomago(?! y (?:al|el|la|a|sigue|luego|despues) )|al estomago (?:nada mas|solamente|solo))\b|(?<!\d ?)\bg\b|\bge\b/g;

/** Words for a tube of either kind: a G may be a button or have a balloon, and so may a GJ. */
export const eitherKind =
  /\b(?:boton(?:es)?|button|perfil bajo|(?:sonda|tubo) (?:con|de) globo|(?:del|de la|en el|en la|al|a la) (?:estomago|panza|pancita|barriga|barriguita|vientre|abdomen))\b/;

/** Half out in words firm enough to be believed unasked. */
export const halfOutFirm =
  /\b(?:(?:esta |quedo |salio |salida |se salio |va )?a (?:la )?(?:medias|mitad)(?! (?:del? )?(?:camino|entre|precio))(?: (?:de salir|salida|salido|afuera|fuera))?|medi[oa] (?:salid[oa]|salir|afuera|fuera|adentro|dentro|metid[oa])|(?:la )?mitad (?:esta )?(?:afuera|fuera|salida|adentro|dentro|metida)|no (?:se )?(?:le )?(?:ha |esta )?(?:salio|salido|sali|salida|afuera|fuera) (?:del todo|complet\w+|tod[oa]|por completo)|no (?:esta )?(?:completamente|totalmente|del todo) (?:afuera|fuera|salid[oa])|parcialmente (?:afuera|fuera|salid[oa]|adentro|dentro)|(?:salio|sali|salid[oa]|se salio) (?:un (?:poco|poquito|pedazo|pedacito)|un tanto|parcialmente|una parte)|se (?:le )?(?:salio|ha salido) (?:un (?:poco|poquito|pedazo|pedacito)|la mitad|una parte)|(?:solo |nada mas )?(?:una )?parte (?:de (?:la|el) \w+ )?(?:salio|esta afuera|esta fuera|sigue adentro|sigue dentro)|colgando|globo (?:\w+ ){0,2}asoma\w*)\b/g;
export const halfOut =
  /\b(?:(?:esta |quedo |salio |salida |se salio |va )?a (?:la )?(?:medias|mitad)(?! (?:del? )?(?:camino|entre|precio))(?: (?:de salir|salida|salido|afuera|fuera))?|medi[oa] (?:salid[oa]|afuera|fuera|adentro|dentro|metid[oa]|salir)|(?:la )?mitad (?:esta )?(?:afuera|fuera|salida|adentro|dentro|metida)|no (?:se )?(?:le )?(?:ha |esta )?(?:salio|salido|sali|salida|afuera|fuera) (?:del todo|complet\w+|tod[oa]|por completo)|no (?:esta )?(?:completamente|totalmente|del todo) (?:afuera|fuera|salid[oa])|no del todo|parcialmente(?: \w+)?|(?:salio|sali|salid[oa]|se salio) (?:un (?:poco|poquito|pedazo|pedacito)|un tanto|parcialmente|una parte)|se (?:le )?(?:salio|ha salido) (?:un (?:poco|poquito|pedazo|pedacito)|la mitad|una parte)|(?:solo |nada mas )?(?:una )?parte (?:de (?:la|el) \w+ )?(?:salio|esta afuera|esta fuera|sigue adentro|sigue dentro)|colgando|guindando|globo (?:\w+ ){0,2}asoma\w*|(?:todavia|aun|sigue) (?:esta |un poco |medio )*(?:adentro|dentro|puest[oa]|metid[oa])|un poco (?:salid[oa]|afuera|fuera|adentro|dentro)|casi (?:toda |todo )?(?:afuera|fuera|salid[oa]|se sale)|se (?:le )?esta (?:saliendo|zafando)|va saliendo)\b/g;

/** In a first text: a tube that is not out, or not all of it. */
export const stillIn =
  /\b(?:sonda|tubo|boton|globo|punta)(?: (?:todavia|aun))?(?: esta| sigue) (?:todavia |aun )?(?:adentro|dentro)\b|\bsolo la punta\b|\bse (?:le )?esta saliendo\b|\b(?:la|lo) (?:volvi|volvimos) a (?:meter|poner) pero\b|\bsalid[oa] (?:como )?(?:\d|un|media) (?:pulgada|centimetro|cm)/;
/** Whatever it was before: "la cambiaron por una gj". */
export const changedTo =
  /\bcambi\w+ (?:\w+ )?(?:a|por) (?=.*\b(?:g|j|gj|g-j)\b)|\b(?:antes|primero|al principio) (?:tenia|era|usaba|traia|fue|le pusieron|con)\b.{1,40}?\b(?:ahora|luego|despues|hoy|ya)\b(?=.*\b(?:g|j|gj|g-j|gastro\w*)\b)|\b(?:pens\w+|crei(?:a|amos)?|decia(?: yo)?|yo decia|juraba|suponia|segun yo)\b.{1,40}?\bpero\b(?=.*\b(?:g|j|gj|g-j|gastro\w*|yeyun\w*)\b)/;
/** A kind, or the state half out, taken back: "no es gj". */
export const notThat =
  /\b(?:no creo que (?:sea |es |fuera )?(?:una? |la )?|(?:no|nunca|tampoco)(?: (?:es|era|fue|esta|tiene|se|le|ve|ha|un|una|el|la|de|su|nada))* ?|ni (?:un |una |es )?|sin (?:la |el )?)$/;

export const manyParts =
  /\b(?:(?:2|3|4|dos|tres|vari[oa]s|much[oa]s|par|mas de (?:1|un[oa]?))(?: \w+)? ?(?:puertos?|entradas?|tapas?|tapitas?|tapones|orificios?|agujeros?|agujeritos?|salidas?|conexiones|bocas?|huecos?|hoyos?|vias?|lados|tubitos|conectores|aberturas?|lumenes)|puertos)\b/;
export const onePart =
  /\b(?:(?:1|una?|uno|solo una?|sol[oa])(?: sol[oa])? (?:puerto|entrada|(?<=\bsol[oa] (?:una? )?|\b1 sol[oa] |^(?:tiene |es )?(?:1|una?) )(?:tapa|tapita|tapon)|orificio|agujero|agujerito|salida|conexion|boca|hueco|hoyo|via|conector|abertura))\b|^(?:solo |nada mas )?(?:1|una?|uno)(?: sol[oa])?$/;
export const longInside =
  /\b(?:(?:muy |super |bien |bastante )?larg(?:a|o|uisim[oa]|ot[ea])(?! (?:tiempo|rato))|intestino\w*|yeyuno|llega (?:muy )?(?:abajo|lejos|hasta)|como (?:una )?vibora)\b/g;
export const shortInside = /\b(?:cort[oa]|cortit[oa]|chiquit[oa]|chic[oa]|pequen[oa]|(?:1|una) pulgada)\b/g;

/** Where a G ends, as nobody says of a GJ. */
export const gByPlace =
  /\b(?:va|llega|entra|pasa|cae|da|termina|directo|directito|directamente|derecho|derechito) (?:(?:directo|directito|directamente|derecho|derechito|solo|nada mas|nomas) )*(?:al|a la|en el|en la|hasta el|hasta la) (?:estomag\w*|panza|pancita|barriga|barriguita|guata|tripa)\b(?! y (?:al|el|la|a) )/;

export const unsure =
  /\b(?:no (?:estoy|estamos) (?:muy )?segur\w*|no (?:lo |la )?se(?! (?:salio|le|cayo|ha|sale|leer(?! (?:la|el)\b)|escribir|ingles|usar\w*|hacer\w*|poner\w*|como|meter\w*|cambiar\w*)\b)|no (?:me )?(?:acuerdo|recuerdo)|ni idea|no (?:tengo|tenemos) (?:ni )?idea|creo|quizas?|tal vez|a lo mejor|supongo|probablemente|posiblemente|puede ser|podria|me parece|pienso|quien sabe|cual es la diferencia|que es (?:una?|eso)|como (?:se|puedo) (?:sabe|saber|distingo)|desconozco|imagino|dificil de|o algo asi|no (?:sabria|sabemos|supe|supimos)(?: decir\w*)?)\b/;

/** A device word that is none of the known ones, as in "es una sonda tal". */
export const deviceForm =
  /^(?:(?:es|era|un|una|el|la|su|tiene|tenia|usa|le dicen|se llama|tipo|de|como|creo|que) )*([a-z][a-z-]{2,})(?: ([a-z-]{3,}))?$/;
export const deviceNoun = /\b(?:(?:sonda|tubo|boton|cateter|dispositivo) \w+|cateter)\b/;
/** Words that stand beside "sonda" without naming a kind, or make up an answer that names no device. */
export const noDevice =
  /\b(?:alimentacion|alimentar|comer|comida|la|el|su|mi|una?|esta|este|esa|ese|que|sonda|tubo|boton|normal|regular|misma?|mismo|si|no|ok|okay|por|favor|para|gracias|hola|ayuda|ayudenme|salio|cayo|afuera|fuera|adentro|dentro|es|urgente|miedo|enfermera|doctor|doctora|hospital|segur[oa]|facil|dificil|bien|mal|buen[oa]?|ella|usted|roj[oa]|azul|blanc[oa]|amarill[oa]|verde|clar[oa]|plastico|larg[oa]|cort[oa]|espere|perdon|y|pero|llorando|sangre|se|ya|cual|como|cuando|donde|quien|nuev[oa]|viej[oa]|con|sin|del|de|los|las|nada|todo|toda|tambien|grande|chiquit[oa]|chic[oa]|pequen[oa]|creo|jalo|complet[oa]|enter[oa])\b/;

export const burst =
  /^(?:si |esta )*rot[oa]$|\b(?:globo(?: (?!en\b)\w+){0,4} (?:rot[oa]|romp\w*|revent\w*|explot\w*|ponch\w*|pinch\w*|desinfl\w*|vaci\w*|gotea\w*|tron\w*|perfor\w*|danad\w*|mal[oa]?|fuga\w*|agujer\w*|hoyo|hoyito|hueco|picad[oa]|(?:no|ni) (?:se )?(?:infla|sirve|aguanta|retiene|funciona|esta bien|esta buen\w*|llena|guarda|queda))|(?:revent\w*|ponchad\w*|rot[oa]|desinflad\w*|pinchad\w*|romp\w*|explot\w*|ponch\w*|pinch\w*|tron\w*|sin|fuga en|agujero en|hoyo en) (?:el |del |de |su )?globo|se (?:le )?(?:revento|poncho|exploto|desinflo|pincho|trono)|reventad\w*|revent\w*|ponchad\w*|desinflad\w*|pinchad\w*|(?:se )?(?:gotea|fuga)\w*|tira (?:el )?agua|se (?:le )?sale (?:toda )?(?:el )?agua|no (?:se )?(?:infla|retiene|aguanta)|no (?:retiene|aguanta|guarda|agarra|sostiene|mantiene|detiene) (?:el |nada de )?agua)\b/g;
/** Said not to be long, or to have no long part. */
export const notLong =
  /\b(?:no|sin) (?:(?:es|era|esta|tiene|tenia|fue|muy|tan|nada|parte|una|un|la|el|ninguna|cosa) )*(?:larg[oa])\b/g;
/** Nobody has looked at it yet. */
export const notLookedAt =
  /\b(?:no (?:la|lo|le|he|hemos)? ?(?:revis\w*|mir\w*|vi|visto|chequ\w*|checa\w*|prob\w*|inspeccion\w*)|sin (?:revisar|mirar|ver|checar|probar)|(?:todavia|aun) no (?:la |lo |he )?(?:revis\w*|mir\w*|vi\b|visto|checa\w*|chequ\w*))/;
export const tubeLost =
  /\b(?:(?:lo|la) (?:tire|tiramos|tiro|tiraron|bote|botamos|boto|botaron)|(?:tire|tiramos|tiro|bote|botamos|boto) (?:la|el|a)|(?:a|en) la basura|basura|perd(?:i|io|imos|ido|ida|ieron)|no (?:lo|la) (?:encuentro|encontramos|tengo|tenemos|guarde|guardamos|traje|trajimos|trajeron|hallo|veo)|no (?:encuentro|encontramos|tengo|tenemos|guarde|aparece)(?: (?:la|el) (?:sonda|tubo|boton))?|desaparecio|mordi\w*|mastic\w*|perro|trago|pedazos|(?:mejor|prefiero|prefiere|preferimos|quiero|voy a|vamos a|puedo) (?:usar|uso|usamos|poner\w*|pongo|meter\w*) (?:la|el|una|un|mi) (?:nuev[oa]|otr[oa]|del kit|de(?:l)? (?:repuesto|emergencia|kit)|temporal|limpi[oa])|(?:le )?falta (?:un|una|el|la)(?: \w+)?|cort(?:ado|ada|e|o)|(?:se )?(?:partio|quebro|partid[oa]|quebrad[oa])|(?:hospital|doctor|doctora|enfermera|ambulancia) (?:se )?(?:lo|la) (?:quedo|quedaron|tiene|tiro|llevo)|(?:lo|la) deje|se (?:me |nos )?quedo en (?:la |el )?(?:casa de|carro de|escuela|guarderia|hospital|otra)|se (?:lo|la) llev\w+|(?:se )?(?:le )?(?:desprendio|cayo|arranco) el globo|inodoro|excusado)\b/g;
/** Damage to more than the balloon: such a tube goes nowhere. */
export const damaged =
  /\b(?:agriet\w*|raj\w*|rasg\w*|rot[oa]s?|rompi\w*|danad\w*|descompuest\w*|derret\w*|doblad[oa]|quebr\w*|sucia por dentro|no (?:sirve|funciona))\b/g;
/** Said of it beside a yes: somebody has to look at it again. */
export const tubeDoubtful =
  /\b(?:mordid\w+|aplastad\w+|doblad\w+|quebradiz\w+|manchad\w+|rayad\w+|mohos\w+|desgastad\w+|(?:se ve|esta|parece) (?:\w+ )?(?:rar[oa]|fe[oa]|viej[oa]|gastad[oa]|maltratad[oa]|floj[oa]|bland[oa]))\b/;
/** Said not to be whole. */
export const notWhole = /\bno (?:esta |es |la veo |se ve )?(?:muy )?(?:enter[oa]|complet[oa]|intact[oa])\b/;
export const tubeWhole =
  /\b(?:enter[oa]|complet[oa]|intact[oa]|en (?:una|1) (?:sola )?pieza|(?:globo|sonda|tubo|boton|todo|se ve|se ven|esta|estan|luce)(?: (?:esta|estan|se|ve|ven|todavia|todo|toda|muy|y|el|la|sonda|tubo|globo|si|tambien)){0,4} (?:bien|buen[oa]s?|perfect[oa]s?|inflad[oa]|infla|ok|okay|funciona|funcionando|sirve|llen[oa]|normal|en buen estado)|globo (?:bien|buen[oa]|ok|perfecto|inflado)|buen globo|buen estado|sin (?:ninguna? )?(?:fugas?|agujeros?|danos?|roturas?|hoyos?|rajaduras?)|no (?:esta |se (?:le )?(?:ve )?|tiene )?(?:ningun\w? )?(?:rot[oa]|romp\w*|ponch\w*|danad\w*|dano|gote\w*|fug\w*|revent\w*|pinch\w*|desinfl\w*|agujeros?)|nada (?:rot[oa]|mal[oa]|le falta)|no le falta nada|no (?:esta )?ni (?:rot[oa]))\b/g;
/** What a tube said to be whole is. */
export const fine = 'bien';
export const tubeNamed = /\b(?:sonda|tubo|boton|globo|se|lo|la)\b/;
export const balloonNamed = /\bglobo\b/;
/** A loss, firm enough to be believed unasked. */
export const toldLost =
  /\b(?:(?:tire|tiramos|bote|botamos|perdi|perdimos) (?:la|el) (?:sonda|tubo|boton)|(?:sonda|tubo|boton) (?:esta |se fue |quedo )?(?:en|a) la basura|no encuentro (?:la|el) (?:sonda|tubo|boton))\b/;
/** Short texts that ask or answer, and name no kind. */
export const yesOrNo = /^(?:si|no)\b/;
/** The word beside the device, and devices named by one word. */
export const beforeDevice = /\b(?:sonda|tubo|boton|cateter|dispositivo) (?:de (?:la |el )?|del |tipo |marca )?(\w+)/g;
export const deviceWord = /\bcateter\b/;
