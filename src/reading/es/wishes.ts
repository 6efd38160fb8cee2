/** Spanish for what a caregiver wants beside answering: a person, a step again, to correct, to stop. */

/** Spanish words for the carriers' keywords, as the whole text. The carriers act on the English ones; these are ours. */
export const stopWords: ReadonlySet<string> = new Set(['parar', 'detener', 'cancelar', 'baja', 'darme de baja']);
export const startWords: ReadonlySet<string> = new Set(['reanudar']);
export const helpWords: ReadonlySet<string> = new Set(['ayuda', 'informacion']);

const someone =
  '(?:(?:un|una|la|el|mi|alguna|algun|otra) )?(?:enfermer[oa]|enfermer[oa]s|doctor|doctora|medico|persona(?: real| de verdad| humana)?|alguien|humano|interprete|agente|operador|operadora)';
export const person = new RegExp(
  `\\b(?:(?:me |nos )?(?:llam(?:ame|enme|eme|enos|ennos|en?(?= (?:ya |ahora )?(?:a |al |por favor))|a(?= (?:a (?:la|una|un|alguien|mi)|al |por favor)))|marqu(?:enme|eme|ennos|enos)|marc(?:ame|enme|eme|a(?= a (?:la|una|alguien)))|hablenme|hableme|(?:puede|pueden|podria|podrian|puedes)(?: alguien)? (?:llamar(?:me|nos)?|hablar(?:me|nos)?|ayudar(?:me|nos)?|venir|marcar(?:me|nos)?))(?: por favor)?(?: ya| ahora)?|(?:puede |pueden |que )?(?:me|nos) (?:llame|llamen|marque|marquen|llama(?! la atencion)|hable|hablen)(?: (?:${someone}|por favor|ya|ahora))?|(?:quiero|quisiera|necesito|puedo|podria|deseo|queremos|necesitamos|prefiero|paseme|comuniqueme|pasame|comunicame|pongame|deme|mandeme|manden|mande|(?:me |nos )(?:pasa|pasan|comunica|comunican|puede pasar|pueden pasar))(?: (?:a|que|hablar|platicar|comunicarme|conversar|me|con))* ${someone}(?: (?:me |que )?(?:llame|hable|ayude))?|(?:hablar|platicar|comunicarme) con ${someone}|(?:hay|esta) alguien(?: ahi| real)?|(?:es|eres) (?:usted )?(?:un |una )?(?:robot|bot|maquina|computadora|persona(?: real)?|humano)|(?:esto|este) es (?:un )?(?:robot|automatico|una maquina)|que (?:alguien|la enfermera|el doctor|una persona) (?:me |nos )?(?:llame|hable|ayude|venga|conteste)|alguien (?:que )?(?:me |nos )?(?:ayude|llame|conteste|atienda)|persona real|donde esta la enfermera|numero de telefono|ayudenme|ayudeme|ayudame|auxilio|necesito ayuda|(?:un|una|algun|alguna) (?:ser )?(?:humano|persona real|persona de verdad)(?: real)?(?: por favor)?|(?:no mas|basta de|ya no quiero|harta de|harto de|no quiero)(?: (?:hablar con|mas|la|el|esta|este|un|una))* (?:robot\\w*|maquin\\w*|bot|automatic\\w*|contestador\\w*)|call me|talk to a nurse)\\b|^(?:enfermera|enfermero|doctor|doctora|persona|humano|llamenme|llamame|llameme|operadora?)$`,
);
/** Said to the line itself; it asks for no other person. */
export const cryForHelp =
  /\b(?:ayud(?:en|e|a)(?:me|nos)|auxilio|necesit\w+ (?:su |de su )?ayuda|(?:puede|pueden|podria|podrian|puedes)(?: alguien)? ayudar(?:me|nos)?|alguien (?:que )?(?:me |nos )?ayude|(?:hay|esta) alguien(?: ahi)?)\b/g;
export const notPerson =
  /\b(?:esper\w+ (?:a )?(?:que )?(?:nos|me|la|lo) (?:llamen|atiendan|pasen|reciban|vean|hablen)|no (?:quiero|necesito|hace falta|es necesario|tengo que|llame|hable)(?: \w+){0,3} (?:enfermera|doctora?|persona|alguien|nadie)|ya (?:llame|hable|hablamos)|no (?:me )?llam(?:en|e|es)|(?:enfermera|doctora?|medico) (?:ya |me |nos )?(?:es|enseno|dijo|puso|explico|mostro|llamo|vino|la|lo))\b/;

export const repeat =
  /^(?:(?:ok|perdon|ay|hola|oiga|senora|senorita|dona|no (?:le |lo |la |les )?(?:entendi|entiendo|vi|lei|alcance a leer)(?: bien| nada)?|es que|pero|por favor|espere|me|lo|la|puede|puedes|podria|pueden|nos|disculpe) )*(?:(?:otra vez|de nuevo|nuevamente)(?: (?:la pregunta|el mensaje|el paso|los pasos|las instrucciones|eso|todo|lo mismo|lo ultimo|lo de antes))?|(?:la pregunta|el mensaje|el paso|los pasos|las instrucciones),? (?:otra vez|de nuevo|nuevamente)|repet(?:ir|irlo|irmelo|irme|ir eso|ir (?:la|su) pregunta|ir el paso|ir los pasos)|repit(?:e|a|alo|elo|amelo|eme|ame|an)(?: (?:por favor|eso|el ultimo(?: \w+)?|los pasos|el paso|las instrucciones|lo ultimo)){0,4}|(?:digame|dime|manda(?:me)?|mandeme|envie(?:me)?|enviar(?:me)?|mandar(?:me)?|explique(?:me)?|explicar(?:me)?) (?:\w+ ){0,4}(?:otra vez|de nuevo|nuevamente)(?: (?:la|el|las|los) (?:pregunta|mensaje|paso|pasos|instrucciones|indicaciones))?|(?:re ?)?(?:mand|envi|pas|escrib|pong|repit)\w* (?:(?:otra vez|de nuevo|nuevamente) )?(?:todos )?(?:los pasos|el paso|las instrucciones|las indicaciones|el mensaje|la pregunta|todo|eso|lo de antes)(?: (?:otra vez|de nuevo|nuevamente|que (?:mando|dijo)|anterior))*|(?:re ?)?(?:mand|envi|pas|escrib|pong|repit)\w* (?:otra vez|de nuevo|nuevamente)|(?:re|vuelv\w+ a |volver a )(?:mand|envi|pas|escrib|dec)\w*(?: (?:los pasos|el paso|las instrucciones|las indicaciones|el mensaje|la pregunta|todo|eso|lo))*|una vez mas|como dijo|que dijo|que decia|cual era (?:el|la) (?:paso|ultimo|primer\w*|segund\w*|tercer\w*)(?: \w+)?|no (?:me |le |la |lo |les |te )?(?:llego|entendi|entiendo|entendimos|capte|cacho|cache|comprendo|comprendi|vi|lei|recibi)(?: (?:bien|muy|el|la|los|las|mensaje|pregunta|instruccion|instrucciones|paso|pasos|eso|lo|que|dijo|dice|me|puso|escribio|ultimo|texto|nada|de|ni|jota|papa|pio))*|(?:se me )?(?:borro|borre|perdi) (?:el|la|los) (?:mensaje|paso|pasos|texto)|desde el (?:principio|inicio)|los pasos (?:otra vez|de nuevo))(?: por favor| gracias| dona| senora| senorita| doctora| miss| mija| jefa| oiga| disculpe)*(?: (?:que|porque|es que|pues) [a-z ]{1,60})?(?: (?:se (?:me|nos|le)|lo|la) (?:borr|perd|elimin|fue)\w*(?: (?:el|la|todo|mensaje|texto|sin querer))*)?$/;
export const repeatStep =
  /\b(?:(?:paso|numero|parte|mensaje) ?#? ?([123])|(primer|primero|primera|segundo|segunda|tercer|tercero|tercera|ultimo|ultima)(?: (?:paso|parte|mensaje))?)\b/;
export const stepAsked =
  /\b(?:otra vez|de nuevo|repet\w+|repit\w+|cual (?:era|es)|una vez mas|digame|dime|mand\w+|envi\w+|no (?:vi|lei|entendi|me llego)|perdi|borr\w+|explic\w+|vuelv\w+|nuevamente|regres\w+)\b/;
export const wholeStep = /^(?:paso |numero )#? ?[123](?: por favor| otra vez| de nuevo)*$/;
export const firstStep = /^(?:1|primer)/;
export const secondStep = /^(?:2|segund)/;

export const correct =
  /\b(?:me equivoque|nos equivocamos|(?:puse|dije|di|escribi|mande|conteste|respondi|meti)(?: \w+){0,5} (?:mal|equivocad[oa]|incorrect[oa]|error)|(?:quiero|necesito|tengo que|puedo|podria|quisiera) (?:corregir|cambiar|rectificar|arreglar)|(?:respuesta|numero|fecha|peso|tubo|sonda|hora|boton|dato) (?:equivocad[oa]|incorrect[oa]|mal)|(?:cambi(?:ar|e|a)|corregir|corrija|corrige) (?:mi|la|el|lo|una|esa|ese)(?! (?:panal\w*|ropa|ropita|cama|sabanas?|gasas?|curacion|vendaje|bolsa|cinta|pijama|posicion|blusa|camis\w+|bateria|pilas?|cobija|parche)\b)(?: \w+){0,3}|(?:fue |es )?(?:un )?error mio|(?:fue|hubo|era) (?:un )?error|olvid[ea] (?:eso|lo que dije|lo anterior|mi ultim\w+)|ignor[ea] (?:eso|lo (?:que dije|anterior|ultimo)|mi ultim\w+)|eso (?:esta|estaba|estuvo) mal|no quise decir eso|no es lo que quise|lei mal|estaba equivocad[oa]|volver atras|regresar a la (?:pregunta|anterior)|pregunta anterior|atras|(?:puse|dije|conteste|respondi|marque|escribi)(?: que)? (?:si|no),? (?:y|pero) (?:era|es|debia ser|queria(?: decir)?)(?: que)? (?:si|no))\b/;
export const correctTopics: readonly (readonly [
  RegExp,
  'weight' | 'first-placed' | 'tube-kind' | 'ph' | 'came-out' | 'own-tube' | 'kit' | 'unwell' | 'first-feed',
])[] = [
  [/\b(?:peso|pesa|libras|kilos|kg|lbs)\b/, 'weight'],
  [/\b(?:ph|tira|lectura|lei)\b/, 'ph'],
  [/\b(?:fecha|pusieron|cirugia|operacion|primera sonda|primer tubo|ano|mes|meses|semanas)\b/, 'first-placed'],
  [/\b(?:tipo|clase|cual (?:tubo|sonda)|que (?:tubo|sonda)|(?:tubo|sonda) equivocad[oa])\b/, 'tube-kind'],
  [/\b(?:hora|cuando (?:salio|se salio|cayo)|salio)\b/, 'came-out'],
  [/\b(?:globo|sonda vieja|tubo viejo|su propia)\b/, 'own-tube'],
  [/\bkit\b/, 'kit'],
  [/\b(?:senales|respira\w*|como esta)\b/, 'unwell'],
  [/\b(?:toma|alimentacion)\b/, 'first-feed'],
];

/** Words that take back something said before. */
export const corrects =
  /\b\d[\d.]* (?:\w+ )?no \d|\b(?:perdon|disculpe|quise decir|quiero decir|queria decir|digo|en realidad|correccion|corrijo|ups|error|equivoque|equivocad[oa]|mejor dicho|(?<!\blo )mas bien|lei mal|mire (?:otra vez|bien|de nuevo)|revise (?:otra vez|bien|de nuevo)|deberia (?:ser|decir)|no \d[\d.]* (?:sino|es|era)|no espere?n?|espere?n? (?:no|es|era|la|el|que)|no (?:es |era )?(?:una? )?(?:g|gj|j)\b)\b/;

const medicine =
  '(?:medicinas?|medicamentos?|dosis|pastillas?|jarabe|insulina|antibioticos?|esteroides?|hidrocortisona|glucosa|anticonvulsiv\\w*|remedios?)';
const mustHave = `(?:${medicine}|toma|leche|formula|alimentacion|comida|azucar|suero|liquidos?)`;
export const cannotWait = new RegExp(
  `\\b(?:${medicine} (?:de|del|para|contra) (?:la |el |las |los |su )?(?:convulsion\\w*|epilepsia|corazon|trasplante|transplante|azucar|diabetes|presion|tiroides|rechazo|pulmon\\w*|cerebro|sangre|suprarrenal\\w*|cardiac\\w*)|${mustHave} (?:que )?(?:no (?:puede|se puede|debe|se le puede) (?:\\w+ )?(?:esperar|saltar\\w*|perder\\w*|faltar\\w*|omitir\\w*|atrasar\\w*)|importante|urgente|critica?o?)|no (?:puede|se puede|se le puede|debe|podemos) (?:\\w+ ){0,2}?(?:perder|saltar\\w*|faltar\\w*|omitir|dejar de tomar|dejar|quedarse sin|estar sin|pasar sin|esperar) (?:\\w+ ){0,3}${mustHave}|(?:tiene que|debe|necesita|hay que|le toca) (?:tomar(?:se)?|recibir|darle|dar|ponerle)? ?(?:\\w+ ){0,3}${medicine}|(?:le toca|ya le toca) (?:\\w+ ){0,3}${mustHave}|${mustHave} (?:ya|ahora)(?! (?:\\w+ )?(?:cortad|digerid|cuajad|agri|fermentad|separad|pasad|procesad|mezclad|espes|blanc|amarill|sali|volvi|regres|esta|se ve)\\w*)|(?:se le|le) baja (?:el |la )?(?:azucar|glucosa)|hipoglu\\w*|alimentacion continua|no (?:puede|aguanta) (?:estar )?(?:en )?ayun\\w*|no puede (?:\\w+ ){0,3}sin (?:comer|alimento|leche|comida|su medicina)|diabetic[oa]|insulina)\\b`,
);
export const canWait =
  /\b(?:ningun[oa]?|nada|sin(?! (?:comer|alimento|leche|comida|su))|no (?:toma|tiene|necesita|usa|hay)|ya (?:le (?:di|dimos|toco)|tomo|se la di|recibio)|le di|le dimos|se la di|puede esperar|mas tarde|despues|tomo su|como (?:le doy|puedo)|cuando (?:le|puedo)|puedo (?:darle)?)\b/;
/** "Cannot wait" has words of waiting and is none. */
export const cantWait = /\bno puede esperar\b/;
/** "No se la puede saltar": named before, or by a name the line does not know. */
export const mustNotMiss =
  /\bno (?:se )?(?:la |lo |las |los |le )?(?:puede|debe) (?:saltar\w*|perder\w*|faltar\w*|omitir\w*|quedarse sin|estar sin) ?(?:ella|eso|esa|esta|ningun\w*|una (?:dosis|toma)|su \w+|la \w+)?|\ble toca (?:su |la |el )?(?!comer|comida|leche|bano|dormir)\w+ a las? \d/;
/** Questions that the last message answers while nothing is asked. */
export const answeredAlready =
  /^(?:(?:ok|y|bueno|pero|entonces|gracias) )*(?:cuanto (?:tiempo|falta)|que sigue|y ahora(?: que)?|ahora que|que (?:hago|hacemos)(?: ahora)?|cuando|(?:puedo|podemos) (?:ya )?(?:darle|alimentar\w*|usarl\w*|ir|esperar|manejar|dar\w*))\b[^?]{0,30}\??$/;

export const outABit = /\b(?:salio|sali|salid[oa]) (?:un (?:poco|poquito)|poquito|algo|parcialmente|a medias)\b/;
/** The first time, told again. */
export const beforeItCameOut =
  /\b(?:hasta que|cuando|antes de que|desde que|despues de que) (?:se )?(?:le )?(?:salio|saliera|cayo|arranco)\b/;
export const outAgain =
  /\b(?:se (?:le )?(?:volvio a (?:salir|caer|zafar)|(?:salio|cayo|zafo|salo|fue) (?:otra vez|de nuevo|nuevamente|tod[oa]|complet\w+|por completo)|(?:salio|cayo|zafo|ha salido))|(?:otra vez|de nuevo|nuevamente) (?:se (?:le )?)?(?:salio|cayo|zafo|afuera|fuera|esta afuera)|volvio a salir(?:se)?|(?:salio|cayo|zafo) (?:otra vez|de nuevo|nuevamente)|(?:sonda|tubo|boton|foley|cateter|temporal) (?:\w+ ){0,3}(?:se salio|se cayo|se zafo|salio|cayo|afuera|fuera)|(?:se (?:la|lo)|la|lo) (?:jalo|arranco|saco|quito)|(?:se )?(?:(?:la|lo|le) )?(?:volvio|vuelto) a (?:sacar|jalar|arrancar|quitar|zafar|salir|caer|botar)(?:se|sel[oa])?|acaba de (?:salir|caer|zafar)se|se (?:la |lo |le )?acaba de (?:sacar|jalar|arrancar|quitar|zafar|salir|caer|botar)|(?:esta|quedo) (?:afuera|fuera))\b|^(?:ya )?(?:se (?:salio|cayo)|(?:esta )?(?:afuera|fuera))(?: (?:otra vez|de nuevo))?$/;
/** What comes out through a tube is not the tube. */
export const contentsCameOut =
  /\b(?:leche|lechos[oa]|contenido|liquido|formula|aire|algo|poquito|nada|sangre|agua|cuando|primera vez|antes|moco|jugo|facil\w*)\b/;
export const notOut =
  /\b(?:no|nunca|tampoco) (?:se )?(?:le |me )?(?:ha )?(?:salio|salido|cayo|caido|zafo)\b|\bni (?:una )?(?:sola )?gota (?:se )?(?:le )?salio\b/;
export const again = /\b(?:otra vez|de nuevo|nuevamente|volvio a)\b/;

export const tubeProblem =
  /\b(?:no (?:le |la |lo |se |me |quiere |puedo |pude )*(?:pasa|paso|entra|entro|cabe|acepta|recibe|fluye|corre|llena\w*|infla\w*|jala|baja|deja|empujar|inyectar|meter)(?: (?:toda |todo |mas |nada de )?(?:el |la )?(?:agua|globo|jeringa|liquido|leche|formula))?|(?:agua|jeringa|embolo) (?:\w+ ){0,2}(?:no|atorad[oa]|trabad[oa])(?: \w+){0,2}|tap(?:ad[oa]|o|ada)|obstru\w*|bloque\w*|atasc\w*|resistencia|(?:esta |muy |se siente )*(?:dur[oa]|ties[oa])|se regresa|doblad[oa]|torcid[oa])\b/;
export const noTubeProblem =
  /\btapad(?:it)?[oa] con (?:la |una |su |el |un )?(?:cinta|gasa|gasita|tela|parche|esparadrapo|curita)\b|\b(?:sin|no hay|ninguna|no (?:hubo|tiene|esta)) (?:ninguna )?(?:resistencia|problemas?|obstruccion|tapad[oa]|bloque\w*)\b/g;

/** Told of a tube in use: nothing holds it. */
export const balloonEmpty =
  /\b(?:(?:nunca|no)(?: (?:le|lo|la|les|he|habia|eche|puse|pusimos|echamos|meti|llene|infle|llenado|inflado|puesto|nada|agua|de|al|el)){1,7} globo|globo(?: (?:esta|estaba|quedo|sigue|lo|deje|dejamos|se|le)){0,4} (?:vaci[oa]|desinflado|sin (?:agua|llenar|inflar)|(?:nunca|no) (?:(?:lo|le|se) )?(?:llene|infle|puse|eche|llenamos|inflamos))|(?:dej\w+|mantener|mantuve) (?:el )?globo vacio|dej\w+ vacio(?: el globo)?|sin agua (?:en )?el globo)\b/;

/** Help was called, or is coming or there. */
export const helpCalled =
  /\b(?:(?:ya |si )+(?:los |les |lo )?(?:llame|llamamos|marque|marcamos|hable)|(?:llame|llamamos|marque) (?:al |a )?(?:911|112|la ambulancia|una ambulancia|emergencias)|(?:ambulancia|paramedicos?|ayuda|ellos)(?: (?:ya|esta|estan))* (?:viene|vienen|llego|llegaron|aqui|en camino|llegando)|ya (?:viene|vienen|llegaron|llego)|(?:viene|llego|llegaron|ya esta)(?: (?:ya|aqui|en camino))* (?:la ambulancia|los paramedicos))\b/;
/** Called, and nobody comes. */
export const helpNotComing = /\b(?:no|nadie|nunca|tampoco|ocupado|colg\w+)\b/;
/** Nothing to get there with. */
export const noWayThere =
  /\b(?:(?:no (?:tengo|tenemos|hay|traigo)|sin) (?:\w+ )?(?:carro|coche|auto|transporte|taxi|ride|como (?:ir|llegar)|forma de (?:ir|llegar)|quien (?:me|nos) lleve|gasolina)|no (?:puedo|podemos) (?:ir|llegar|manejar)|(?:carro|coche|auto) (?:no (?:prende|arranca|enciende)|descompuesto|se descompuso))\b/;
/** Small talk has only these words. */
export const smallWords: ReadonlySet<string> = new Set(
  'son es los las mejor mejores angeles angel linda lindas lindo chicas muchachas equipo verdad corazon todos todas servicio salvaron ok okay oki gracias muchas muchisimas mil dios le la lo bendiga bendice bendiciones usted ustedes perfecto excelente bien bueno buena esta si ya listo lista entendido entiendo de acuerdo vale dale va claro por favor hola buenas buenos noches dias tardes ay un momento minuto segundo espere espera esperame momentito ahora voy vamos estoy estamos aqui amable todo toda su ayuda muy igualmente amen jaja siguiente seguimos continue continuo adelante enfermera adios hasta luego tantito me deme dame permitame permiteme aguante aguanteme segundito segunditos ratito deje dejeme ver busco checo reviso que leyendo leido lei haciendo en eso a esto pues'.split(
    ' ',
  ),
);
/** On the way to the emergency department, or there: nothing to answer. */
export const onTheWay =
  /^(?:(?:(?:ya|si|ok|estamos|vamos) )*atorad[oa]s? en (?:el )?trafico)$|^(?:(?:ok|si|gracias|ya|nosotros|estamos|estoy|vamos|voy|ahora) )*(?:en (?:el )?camino(?: ahora)?|saliendo(?: ahora| ya)?|(?:vamos|voy|yendo|manejando|rumbo)(?: (?:ahora|ya|alla|para|al?|hacia|el|la|hospital|urgencias|emergencias?))*|(?:aqui|alla|en (?:el |la )?(?:hospital|urgencias|emergencias?|sala de espera|ambulancia))(?: ya)?)$/;
export const thanks =
  /\b(?:gracias|muy amable|agradec\w+|agradezco|dios (?:la|lo|le|los|les) bendiga|bendiciones|thanks|thank you)\b/;
/** Thanks that go on to ask. */
export const wantsMore = /\?|\bpero\b|\b(?:puede|puedo|podria|como|que hago|que debo|cuando|cuanto)\b/;
/** A person after all, whatever was said of nurses beside it. */
export const personNow = /\b(?:llam\w+|necesito|quiero)\b.*\b(?:por favor|ya|ahora)\b/;

const device =
  '(?:g ?-?tube|gtube|gj ?-?tube|gj|g-j|peg|sonda|sondas|tubo|tubito|boton|botoncito|cateter|gastrostomia|gastro|globo|mamila gastrica|tube)';
export const aboutTube = new RegExp(
  `\\b${device}s?\\b|\\b(?:manguer\\w*|popote|canula|tripita|aparatito) (?:de(?:l| la| el)?|en(?: el| la| su)?|para|por donde)(?: (?:la|el|su|le|dar|darle|doy))* (?:barrig\\w*|estomag\\w*|panz\\w*|panc\\w*|vientre|abdomen|guat\\w*|tripa|comer|comida|com\\w*|alimentacion|leche)\\b|\\bestoma\\b|\\b(?:hoyo|hoyito|agujero|agujerito|hueco|huequito|orificio) (?:de(?:l| la)?|en(?: el| la| su)?) (?:barriga|barriguita|estomago|panza|pancita|vientre|abdomen)\\b`,
);
/** Out, but no word of what: still about a tube on this line. */
export const somethingOut =
  /\bse (?:le|me|nos|la|lo) (?:ha )?(?:salio|salido|cayo|caido|zafo|zafado|solto|arranco|saco|jalo|quito|fue|esta saliendo)\b|\bse (?:lo|la) (?:saco|jalo|arranco|quito|zafo)\b|\bacab[ao]s? de (?:salir|caer|zafar|arrancar|soltar|jalar|sacar)se\w*|\bse (?:le )?acaba de (?:salir|caer|zafar|soltar)\b|\b(?:manguer\w*|canula|popote|tripita)(?: (?:ya|estaba|esta|amanecio|aparecio|quedo|tirad[oa]|suelt[oa]|toda)){1,4} (?:en|sobre|entre|bajo|por) (?:la|el|su|las|los|sus) (?:cobija|cama|sabana|suelo|piso|cuna|panal|pijama|ropa|mano|almohada|carriola|alfombra|cobert)\w*|^(?:ya )?se (?:salio|cayo|zafo|solto)\b/;
/** How to live with it is another matter, as long as nothing is out. */
export const otherTubes =
  /^(?!.*\b(?:sali\w*|cayo|caid[oa]|zaf\w*|arranc\w*|jalo|saco|afuera|fuera|perdio|sangr\w*|fuga\w*|tapad\w*|rot[oa])\b)(?:(?:hola|buenas|buenos|dias|tardes|noches|disculpe|perdon|una|pregunta|oiga|senorita|y|queria|saber|si|quisiera) )*(?:cuando|puedo|puede|podemos|como|cada cuanto|a que hora|con que|que|se puede|hasta cuando)\b.*\b(?:ban\w+|nadar|alberca|piscina|playa|mar|dormir boca abajo|gatear|escuela|viajar|avion|cambi(?:o|ar|amos|an)|cita|revision|limpi\w+|lav\w+|vacuna\w*)\b.*$|\b(?:you ?tube|tubo de (?:ensayo|escape|pasta|crema|agua)|(?:sonda|cateter) (?:urinari[oa]|vesical|de orina|foley urinari[oa])|tubos? (?:del?|en) (?:los )?oidos?|traqueo\w*|botones? de (?:la )?(?:camisa|ropa|blusa)|camisa)\b/g;
