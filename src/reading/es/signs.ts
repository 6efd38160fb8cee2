/** Spanish for the danger and warning signs, sure and doubtful, and the words that take a sign back. */
import type { SignWords } from '../signs.ts';

const belly =
  '(?:barrig\\w*|barigu?it\\w*|panz\\w*|pans(?:a|ita)|panc\\w*|estomag\\w*|estomaguit\\w*|vientre|abdomen|abdominal|guata|guatita|tripa|tripita|tripas|buche)';
const copula =
  '(?: (?:esta|estan|se|le|la|lo|ve|siente|puso|pone|poniendo|esta|quedo|muy|bien|super|re|toda|todo|mas|tan|bastante|un|poco|como|de|piedra|tabla|demasiado|y|e|medio|parece|anda|tiene|trae|traia|veo|noto|siento|sentia|toco|toque|amanecio|sigue|va|hoy|anoche|ya|cada|vez|sientes?|algo|tens[oa]|roja|rojo|grande|hinchad\\w*|inflamad\\w*|dur[oa])){0,6}';
const body =
  '(?:labi\\w*|tromp\\w*|bemb\\w*|jet(?:a|ita)|orej\\w*|frente|boca|boquita|cara|carita|piel|naric\\w*|nariz|dedos?|deditos?|unas?|unitas|manos?|manitas?|pies|piecitos|cachetes|mejillas|lengua|encias|cuerpo)';
const blue =
  '(?:azul\\w*|morad\\w*|moraduzc\\w*|moret\\w*|gris\\w*|violeta|violace\\w*|purpura|amoratad\\w*|ceniz[oa]s?|cenicient\\w*|plomiz\\w*|cianotic\\w*)';
const green = '(?:verd\\w*|bilis|biliar|amarill\\w*|sangre|cafe oscuro|negro)';

/** To be sick, as it is called here and there. */
const vomits =
  '(?:vomit\\w*|trasboc\\w*|devolv\\w*|devuelv\\w*|arroj\\w*|g?uacare\\w*|huacare\\w*|buitre\\w*|regurgit\\w*|bascas?|deposo|depuso)';

/** The breathing tube in the neck: where it is out or shut, the airway is. */
const windpipe = '(?:traque\\w*|traqiost\\w*)';
const windpipeOut = '(?:sali\\w*|cay\\w*|zaf\\w*|saf[oa]\\w*|arranc\\w*|jalo|saco|quito|bot[oa]|solto|tapo)';

/** Being sick of what was fed is not green or repeated yet. */
const notMilk =
  '(?! (?:su|la|toda la|toda su|pura|un poco de|poquita)? ?(?:leche|lechita|formula|toma|comida)\\b(?! (?:otra|de nuevo|cada|todo|toda|verd|con|much|sin parar)))';

export const signWords: readonly SignWords[] = [
  {
    sign: 'breathing',
    sure: new RegExp(
      `\\b(?:${windpipeOut} (?:(?!(?:y|g|sonda|boton|no)\\b)\\w+ ){0,4}${windpipe}|${windpipe}(?: (?!(?:y|no|pero|sonda|boton|g)\\b)\\w+){0,4} (?:${windpipeOut}|afuera|fuera|tapad\\w*|obstruid\\w*|bloquead\\w*)\\b|${windpipe} (?:\\w+ ){0,2}no (?:\\w+ ){0,2}(?:entra|entro|pasa|va)\\b|(?:meter|poner)\\w* (?:\\w+ ){0,3}${windpipe}|${windpipe} de repuesto)`,
      'g',
    ),
  },
  {
    sign: 'breathing',
    sure: /\b(?:(?:satura\w*|sats?|spo2|oxigeno|oximetro)(?: (?:es|esta|en|de|a|al|bajo|marca|dice|ahora|solo|le|la|tiene))* (?:[1-8]\d|9[01])\b|(?:dificultad|problemas?|trabajos?|cuesta|costando|esfuerzo|esfuerza|esforz\w*|fatiga\w*|falta|batall\w*|luch\w*|pelea\w*|sufr\w*|matand\w*|desesper\w*)(?: \w+){0,3} (?:respir\w*|aire)|(?!no (?:(?:le|la|lo|se|esta|anda|muy|tan|nada|para|como|que) )*respir\w+ (?:muy |tan |nada )*(?:rar[oa]|fe[oa]|mal|agitad\w*|rapid\w*|ruidos\w*|cansad\w*|forzad\w*|con (?:dificultad|trabajo|ruido\w*|esfuerzo|problemas?))\b)no (?:(?!cuesta|problemas?|dificultad\w*|trabajo|esfuerzo|falta)\w+ ){0,3}(?:respir\w*|(?:jala\w*|entra|agarr\w*|cog\w*|pesc\w*|alcanz\w*|consig\w*|tom[ae]\w*|llega|recib\w*|meter?|tiene) (?:bien |casi |nada de )?(?:el )?(?:aire|aliento|resuello|resuell[oa]))|(?:sin|le falta(?:ndo)?|se queda sin|perdio el) (?:el )?(?:aliento|resuello)|(?:casi|apenas|sin|dejo de|dejando de|deja de|ya no|paro de|puede|poder) respir\w*|respir\w*(?: (?:muy|bien (?=feo|raro|mal|rapid|agitad)|mal|rapid\w*|raro|rara|agitad\w*|fuerte|despacio|lento|con|corto|feo|dificil|ruid\w*))*|(?:le )?falta(?:ndo)?(?: de)? (?:el )?aire(?:cito)?|sin aire|jal(?:a|ando) aire|(?<!\bglobo (?:\w+ )?)se le (?:va|fue|esta yendo|acaba) el aire(?! (?:al?|del) (?:el |la )?(?:globo|sonda|tubo|boton|jeringa))|cuesta (?:mucho |muchisimo |tanto )?jalar(?! (?:la|el|de la|del) )|ahog\w*|asfixi\w*|atragant\w*|sofoc\w*|agitad[oa]|jade(?:a|e|o)\w*|boque\w*|apnea|silb\w*|sibil\w*|(?:chill|pit|silb|ronc|suena)\w*(?: mucho| feo)? el pech(?:o|ito)|se (?:le )?(?:hunde\w*|sumen?|meten?|marcan?) (?:las |los |el |la )?(?:costill\w*|pech(?:o|ito)))\b/g,
  },
  {
    sign: 'colour',
    sure: new RegExp(
      `\\b(?:(?:esta|estan|se|puso|pusieron|puesto|puesta|poniendo\\w*|pone|ponen|ve|ven|quedo|anda|toda|todo|muy|medio|como|${body})(?: (?:esta|estan|se|le|la|lo|los|las|ve|ven|pone|ponen|puso|poniendo|muy|toda|todo|un|poco|medio|como|de|ya|alrededor|el|su|sus|y|${body})){0,5} ${blue}|${blue}(?: (?:en|de|del|alrededor|la|los|las|el|su|sus|toda|todo)){0,4} ${body}|(?:muy|super|bien|tan|demasiado|re) (?:palid\\w*|pali\\w*|blanc[oa])|palid\\w* como|palid\\w* palid\\w*|blanc[oa]s? como (?:un |una |el |la )?\\w+|(?:labi\\w*|cara|carita|boca|boquita|cachetes|mejillas|unas|piel)(?: (?:esta|estan|se|le|ven|ve|pone|ponen|pusieron|puso|muy|bien|todos|todas|los|las)){0,4} (?:blanc[oa]s?|transparentes?)|(?<!^)sin color|(?:perdio|perdiendo|se le fue) (?:el |su )?color|amoratad\\w*|morat\\w*|cianosis|cianotic\\w*|no tiene color(?! (?:rar[oa]|feo|azul\\w*|morad\\w*|mal[oa]?|gris\\w*|extran\\w*|de (?:nada|enferm\\w*)))|(?:puso|puesto|pone|ponen|pusieron|poniendo\\w*|esta|estan)(?: tod[oa]s?| medio| muy)? (?:priet|negr)[oa]s? (?:de |en |alrededor de )?(?:la|las|los|el|su|sus) ${body}|${body}(?: (?:se|le|puso|pusieron|pone|ponen|esta|estan|poniendo|medio|muy|todos?|todas?)){1,4} (?:priet|negr)[oa]s?|(?:labi\\w*|boca|boquita|unas|unitas|encias) (?:priet|negr)[oa]s?|palid\\w*(?:,? (?:y|muy|esta|con|bien|toda|todo|como|anda)){0,3} (?:sud(?:a|ando|or|ores|oros[oa]|ad[oa])|fri[oa]|helad[oa])|(?:fri[oa]|helad[oa]|sudad[oa]|sudoros[oa]|sudando(?: frio)?) y (?:muy |bien )?palid\\w*)\\b`,
      'g',
    ),
    near: new RegExp(
      `^sin color\\b|\\b(?:palid\\w*|mal color|descolorid\\w*|pierde color|amarilw+ (?:de|en|la|los|toda)(?: (?:la|los|su|sus))? (?:carw+|pielw*|ojos?|ojitos|cuerpo))\\b|^(?:si )?${blue}$`,
      'g',
    ),
  },
  {
    sign: 'limp',
    sure: /\b(?:desmay\w*|inconscien\w*|(?:no|ya no|casi no|apenas|sin) (?:(?:me|nos|se|la|lo|le|puedo|podemos|logro|logramos|quiere|esta|puede|que|consigo|conseguimos|hay|forma|manera|modo|de|hago|hacemos|tiene|trae|queda|quedan) )*(?:respond\w*|reaccion\w*|despert\w*|despiert\w*|mueve|moverse|mover|abre(?: \w+)? oj(?:it)?os|abrir(?: \w+)? oj(?:it)?os|contesta|hace caso|fuerzas?)|no (?:la|lo) (?:puedo|podemos|logro) (?:despert\w*|levantar)|flacid\w*|aguad[oa]|aguadit[oa]|guang\w+|no (?:se )?(?:sostiene|aguanta|detiene|levanta|puede (?:sostener|levantar|con))(?: ni)? (?:la |su )?cabe\w+|floj[oa] (?:como|el cuerpo|tod[oa]|sus)|(?:tod[oa]|muy|cuerpo|como|ella|nin[oa]|bebe|hij[oa]|hijit[oa]|nen[ea])(?: \w+)? floj(?:o|a|ito|ita)|como (?:un |una )?(?:trapo|trapito|munec[oa] de trapo|gelatina)|desvanec\w*|convulsion(?:a|o|ando|aba)\w*|(?:tiene|tuvo|teniendo|dio|dando|con|otra|una|le dio una) (?:otra |otro |el |la |un |una )*(?:convulsion\w*|crisis convulsiva|ataques?(?! de (?:tos|risa|hipo|nervios)))|(?:le )?(?:dio|esta dando) un ataque|oj(?:it)?os (?:\w+ ){0,2}(?:en blanco|blancos|voltead(?:it)?os|virad(?:it)?os|para atras|para arriba|hacia atras|ido|perdidos)|se le (?:van|voltean|voltearon|fueron|ponen|pusieron|viran|viraron) los oj(?:it)?os|letarg\w*|desguanz\w*|sin vida|colaps\w*|(?:tembl\w*|tiembl\w*|sacud\w*) (?:tod[oa]|todo el cuerpo|el cuerpo|sin parar)|se esta sacudiendo|sacudidas|perdio el (?:conocimiento|sentido)|(?:esta|quedo|se quedo) privad[oa]|no esta consciente|(?:nin[oa]|nen[ea]|bebe(?:cit[oa])?|hij(?:it)?[oa]|chiquit[oa]|criatura|ella|^el)(?: ya)? ni (?:siquiera )?se mueve|ni (?:siquiera )?(?:me |nos )?(?:responde|reacciona|contesta cuando|abre (?:los|sus) oj(?:it)?os))\b/g,
    near: /\b(?:(?:muy|bien|tan|demasiado|super|mas|bastante) (?:dormid\w*|dormilon\w*|sueno|cansad\w*|debil)|somnolient\w*|adormilad\w*|adormec\w*|decaid\w*|desganad\w*|debil\w*|tembl\w*|tiembl\w*|aletargad\w*|convulsion\w*|mucho sueno|no es (?:el|ella) mism[oa]|se (?:me |nos )?(?:privo|esta privando)|^(?:ella |el |la nina |el nino |mi [a-z]+ )?(?:esta|se (?:me |le )?(?:puso|pone|quedo)|quedo) (?:tod[oa] |muy |como )*ties[oa]\b(?! (?:la|el|su|de) )|(?:esta|como) (?:id[oa]|perdid[oa]|atontad[oa]|apagad[oa])|sin energia|apagad(?:it)?[oa])\b/g,
  },
  {
    sign: 'bleeding',
    sure: /\b(?:no (?:se )?(?:le |me )?(?:quita|corta|detiene|para|contiene|frena|ataja|estanca|cede|puedo (?:parar|detener|cortar|contener)(?:le|sela)?) (?:la |el )?(?:sangr|hemorrag)\w*|sangre y (?:mas )?sangre|empapad\w* (?:\w+ ){0,3}(?:de|en|con) sangre|(?:empap|remoj|encharc|inund|traspas|llen|manch|moj)(?:o|a|ando|ado|amos|aron) (?:ya |como |casi )*(?:\d+|varias|vari[oa]s|otra|otro|toda|todo|una|un|la|el|su) (?:\w+ )?(?:gasas?|gasitas?|compresas?|toall\w+|trapos?|panal\w*|servilletas?|pan(?:o|uel)\w*|vendas?|sabanas?|camis\w+|blusa|playera|pijama|ropa|cobijas?|cama)(?: \w+){0,3} (?:de|en|con) sangre|(?:\d+|varias|muchas) (?:gasas?|gasitas?|compresas?|toall\w+|trapos?|panales|vendas?) (?:llen\w+ |empapad\w+ |mojad\w+ )?(?:de|en|con) sangre|sangre (?:\w+ ){0,4}(?:empap|traspas|encharc)\w*|(?:no|ni) (?:\w+ ){0,2}?(?:para|deja|paro|detiene|detener|parar|contener|dejado|parado|deja)(?: \w+){0,2} (?:de )?(?:sangr\w*)|sangr(?:a|ando|ado|ar|o|aba|ada|an)\b|sangramiento|sangrad[oa]|hemorrag\w*|emorrag\w*|desangr\w*|(?:much[oa]|muchisima|bastante|demasiada|harta|tanta|monton de|llen[oa] de|banad[oa] (?:en|de)|empapad[oa] (?:de|en|con)|charco de|chorro de|chorros de|borbotones de) sangre|sangre (?:much[oa]|muchisima)|sangre (?:(?!no\b|ni\b|poca\b|sin\b)\w+ ){0,5}(?:hart[oa]|much[oa]|muchisim[oa]|demasiad[oa]|bastante|a monton(?:es)?)(?= ?$| (?:hart[oa]|much[oa]|demasiad[oa])\b)|sangre (?:\w+ ){0,5}(?:por todos? (?:lados|partes)|a chorros?|chorreando|sin parar|no para|no se detiene|que no (?:se |le |me )*(?:para|deja|cesa|corta|detiene|quita)|a borbotones|brotando)|chorre\w+ (?:de )?sangre)\b/g,
    near: /\b(?:(?:dejo|paro|para) de sangrar|supur\w*)\b|(?<!\b(?:leche|agua|formula|jugo|liquido|contenido|aguita)(?: [a-z]+){0,4} )\bempap(?:o|a|ado|ando) (?:ya )?(?:la|una|el|un|\d+|varias|toda la|todo el) (?:gasas?|gasitas?|toallas?|toallitas?|compresas?|trapos?|panales?)\b(?! (?:de|con) )/g,
  },
  {
    sign: 'fresh-blood',
    sure: /\b(?:sangre|sangrecita|sangrit[ao]|sanguinolent\w*|ensangrent\w*|sanguin\w*)\b/g,
    near: /\b(?:rosad\w*|rosit\w*|rojiz\w*|rojit\w*|(?:liquido|algo|cosa|manchit\w*|color) (?:rosa|roj[oa])|(?:borra|pozo|asientos?|granos|posos?|cuncho|zurrapa|sedimento) de(?:l)? cafe|cafe (?:molido|quemado))\b/g,
  },
  {
    sign: 'hard-belly',
    sure: new RegExp(
      `\\b(?:${belly}${copula} (?:dur[oa]|durit[oa]|durisim[oa]|rigid\\w*|ties[oa]|hinchad\\w*|hinchando\\w*|hincho|inflamad\\w*|inflamo|distendid\\w*|abultad\\w*|piedra|tabla|tambor|pelota|bola|balon)|(?:dur[oa]|durit[oa]|durisim[oa]|rigid\\w*|hinchad\\w*|inflamad\\w*|distendid\\w*)(?: (?:y|la|el|su|de|del|esta|tiene|dur[oa]|hinchad[oa]|toda|que|hace|rato|un|antes|ayer|hoy|ahora)){0,5} ${belly}|(?:hincha\\w*|hincho|inflam[oa]\\w*|distension) (?:\\w+ ){0,3}${belly})\\b`,
      'g',
    ),
  },
  {
    sign: 'tight-belly',
    sure: new RegExp(
      `\\b(?:${belly}${copula} (?:mas (?:dur|hinchad|inflamad|rigid)[oa]|tens[oa]|apretad\\w*|inflad\\w*|inflando\\w*|inflo|duplic\\w*|al doble|grande|grandota|gord[oa]|llen[oa]|firme|tirante|tirantit[oa]|estirad[oa]|restirad[oa]|templad[oa]|creciendo|gases|abombad\\w*|globo)|(?:tens[oa]|apretad\\w*|infl(?:ad\\w*|o|ando\\w*)|abombad\\w*)(?: (?:la|el|su|de|del|que|hace|rato|un|antes|ayer|anoche|hoy|ahora|ya|esta|esa|tiene|manana|noche)){0,6} ${belly})\\b`,
      'g',
    ),
  },
  {
    sign: 'severe-pain',
    sure: /\b(?:grit(?:a|ando|os?|aba|ar|an|e)\b|(?:[7-9]|10) ?(?:\/|de) ?10|(?:much[oa]|muchisim[oa]|bastante|demasiad[oa]|hart[oa]|tanto|mucho mucho|monton de) dolor\w*|dolor(?:es|cito)? (?:(?:es|esta|muy|tan|bien|super|demasiado|bastante|mas|cada|vez) )*(?:fuertes?|intens[oa]s?|horribles?|terribles?|insoportables?|sever[oa]s?|grave|fuertisim\w*|agudo|feo|mucho)|(?:fuerte|terrible|horrible|intenso|insoportable) dolor|(?:duele\w*|dole\w*|doliendo\w*)(?: (?:la|el|su|le|barriga|panza|estomago|muy|bien|tan|ya)){0,3} (?:muchisimo|mucho|bastante|demasiado|horrible|un monton|feo|fuerte|harto|un chingo|terrible)|retorc\w*|retuerc\w*|revolc\w*|inconsolable\w*|agonia|desesperad[oa] (?:de|del|por|por el|con el) dolor|(?:llor\w*|chill\w*) de(?:l)? dolor)\b/g,
    near: /\b(?:(?:llor\w*|chill\w*)(?: (?:y|ella|el|tanto|muy|mucho)){0,2} (?:mucho|muchisimo|sin parar|demasiado|fuerte|bastante|desconsolad\w*|tanto|y llora|no para|todo el tiempo)|no (?:\w+ ){0,2}?(?:para|deja|ha parado|paro) de (?:llorar|chillar|quejarse)|no (?:se calma|(?:lo|la) puedo calmar|se consuela|hay (?:quien|como|nada que|forma de que|manera de) (?:(?:lo|la|le|se) )?(?:calm\w*|consuel\w*))|nada (?:lo|la) (?:calma|consuela)|encog\w*|doblad[oa])\b/g,
  },
  {
    sign: 'vomit',
    sure: new RegExp(
      `\\b(?:${vomits}(?: \\w+){0,5} (?:\\d+|varias|muchas|tantas|demasiadas) veces|(?:\\d+|varias|muchas|tantas|demasiadas) veces (?:\\w+ ){0,3}${vomits}|(?:bota|botando|boto|echa|echando|echo|saca|sacando|saco|tira|tirando|tiro|sale|saliendo|salio|escup\\w*|expuls\\w*)(?: \\w+){0,4} ${green}(?: \\w+){0,2} por (?:la |su )?(?:boca|boquita)|(?:vomit\\w*|vomit[oó]|devolv\\w*|devuelv\\w*|arroj\\w*|guacare\\w*|regurgit\\w*|basc\\w*|deposo)(?: \\w+){0,4} ${green}|(?:verd\\w*|bilis)(?: \\w+){0,2} (?:vomit\\w*|arroj\\w*)|(?:[2-9]|varios|muchos) vomitos?|volvi\\w* (?:todo )?(?:el |la )?(?:estomago|leche|comida)(?: \\w+){0,2} (?:otra vez|de nuevo|veces)|(?:vomit\\w*|trasboc\\w*|devolv\\w*|devuel[tv]\\w*|arroj\\w*)(?: \\w+){0,2} (?:muchas veces|varias veces|a cada rato|cada (?:que|vez|rato|toma|comida)|tod[oa]s?|(?:como )?(?:la|mas de la) mitad|media (?:toma|mamila|botella|comida)|casi tod[oa]|sin parar|\\d+ veces|otra vez|de nuevo|seguido|mucho|muchisimo|bastante|constante\\w*|todo el (?:dia|tiempo)|toda la noche|a chorros?|en proyectil)|(?:no (?:para|deja|ha parado|ha dejado) de|sigue|lleva|sin parar de|cada vez mas|mucho|much[oa]s|varios|empezo a|comenzo a) (?:vomit\\w*|devolver|devolviendo|arroj(?:ar|ando))|esta (?:vomit\\w*|devolviendo|arrojando)${notMilk}|(?:vomitando|vomita)${notMilk}|devolviendo|bilis|bilioso)\\b`,
      'g',
    ),
    near: /\b(?:vomit\w*|trasboc\w*|volvi\w* (?:todo )?(?:el |la )?(?:estomago|leche|comida)|devolvi\w*|arrojo|arcad\w*|arqu\w+ada\w*|arquead\w*|nause\w*|ascos?|regurgit\w*|ganas de vomitar|guacare\w*|(?:bota|botando|boto|echa|echando|echo|saca|sacando|saco|tira|tirando|tiro|sale|saliendo|salio)(?: (?!sonda\b|tubo\b|boton\b)\w+){1,5} por (?:la |su )?(?:boca|boquita)|buitre\w*|huacare\w*|eructa\w*)\b/g,
  },
  {
    sign: 'fever',
    sure: /\b(?:fiebre\w*|fiebrecita|calentura\w*|febril|afiebrad\w*|enfiebrad\w*|temperatura (?:esta |muy |le )?(?:alta|altisima|elevada|subio|sube)|(?:tiene|con|trae|anda con|le dio|hay|de) (?:mucha |alta |algo de )?temperatura(?! (?:normal|de (?:3[0-6]|37)))|(?:muy )?hirviendo|ardiendo|quemando)\b/g,
    near: /(?<=\b(?:sin|ni|nada de|no hay|no tuvo) )temperatura\b|\b(?:(?:esta|muy|un poco|poco|siento|siente|tod[oa]|bien|algo|frente|piel|medio|super|cuerpo) (?:calient\w*|calentit\w*|tibi[oa])|calientit[oa]|escalofri\w*|sud(?:ando|ad[oa]|orosa|oroso|or)\b|decimas|febricula)\b|^(?:si )?caliente$/g,
  },
  {
    sign: 'pain',
    sure: /\b(?:encog\w* (?:las |sus )?(?:pierna|rodilla)s?|quej\w* de(?:l)? dolor\w*|(?:llor|chill|quej|grit)\w* (?:cuando|si|al) (?:se )?(?:lo |la |le )?(?:toc|apriet|apret|mov|muev)\w*|dolor\w*|duele\w*|dolid\w*|adolorid\w*|dolio|dolia\w*|dolieron|doliendo\w*|ardor|arde(?! en\b)|ardiendo(?:le)|colicos?|retortij\w*|calambres?|sensible|(?:empez\w*|empiez\w*|comenz\w*|comienz\w*|vuelv\w*|volvi\w*|puso) a doler(?:le)?)\b/g,
    near: /\b(?:no (?:se )?(?:deja|quiere) (?:ni )?(?:que )?(?:(?:le|la|lo|se|me|nos) ){0,2}toc(?:ar\w*|o|a|an|que|quen|amos|uen)|molest\w*|incomod\w*|quej\w*|gim(?:e|i|ot)\w*|irritad[oa] del? dolor)\b/g,
  },
  {
    sign: 'leak',
    sure: /\b(?:gote(?:a|ando|o|aba|ar|os)\b|gotera|fug(?:a|o|an|ando|aba|as|arse|andose)\b|filtr\w*|escurr\w*|chorre\w+|derram\w*|rezum\w*|(?:se (?:le )?(?:esta )?)?(?:sal(?:e|en|iendo|io|ia|ian)|tir(?:a|ando|o|aba)|bot(?:a|ando|o|aba)|regres(?:a|o|ando|aba)|rieg[ao]|reg(?:ando|o|aba)|escap\w*|devuelv\w*|devolv\w*|desbord\w*|brot\w*)(?: \w+){0,4} (?:por (?:los |las |el |la |un |una |al |ambos )?(?:lad\w+|alrededor|fuera|orilla\w*|costado\w*|borde\w*)|al lado|alrededor|del (?:agujero|hoyo|hoyito|estoma))|(?<!\b(?:sonda|tubo|boton|globo|cateter|foley)(?: [a-z]+){0,3} )(?:se (?:le )?(?:esta )?)?(?:sal(?:e|en|iendo)|tir(?:a|ando)|bot(?:a|ando)|escap\w*)(?: (?!sonda\b|tubo\b|boton\b)\w+){0,3} (?:por|desde) (?:el |su |ese |este )?(?:huequ?it[oa]|huec[oa]|hoy(?:it)?o|agujer(?:it)?o|orificio|estoma|ostomia))\b/g,
    near: /\b(?:mojad|empapad|batid|embarrad|llen)[oa]s? (?:(?:toda|todo|la|el|su|sus|las|los) ){0,3}(?:camis\w+|ropa|ropita|pijama|blusa|gasas?|sabanas?|playera|body|mameluco|panza|barriga|piel)(?: \w+){0,2} (?:de|con) (?:la |su )?(?:leche|formula|lechita|comida|jugo)\b|\b(?:camis\w+|ropa|ropita|pijama|blusa|gasas?|playera|body|mameluco)(?: (?:esta|estan|toda|todas|amanecio|bien|muy)){0,4} (?:mojad|empapad)[oa]s? (?:de|con) (?:la |su )?(?:leche|formula|lechita|comida)\b/g,
  },
];

/** Words that make any sign small, so that it is asked about. */
export const small =
  /\b(?:(?:muy |un )?(?:poco|poquit\w*|poquitin|tantit\w*|pelin|chin|tris|pizca|pedacito)(?: de)?|gotit\w*|gotas?|mancha|manchit\w*|puntit\w*|puntos?|hilit\w*|hilos?|rastr\w*|rastros?|leve\w*|levemente|liger\w*|apenas(?! (?:le|la|lo|se|me|abr\w*|empez\w*|comenz\w*|puse|termin\w*|comio|tomo|com\w+|toco|toque|mueve|movi\w*)\b)|casi nada|minim\w*|algo de|raya|rayita|restos?|tantico|(?:no|ni) (?:mucho|mucha|tanto|tanta)|medio|nada mas)\b/;

/** A negation reaches forward over words that only lead up to the sign. */
export const negator =
  /\b(?:no(?! se (?:esta (?:tod[oa]|muy|como|bien|super|medio|un poco|bastante)|(?:la|lo) (?:veo|noto|siento) (?:muy|como|medio|tod[oa]|bien|rar[oa]|palid|decaid|floj)|le (?:veo|noto|siento)|tiene|trae|anda (?:como|muy|tod[oa]|medio))\b)(?! (?:se |le |la |lo |me )*(?:para|paran|paraba|deja|dejan|cesa|cesan)\b)(?! vomit\w+ (?:\d|una|varias|muchas|otra|todo|mucho))|ni|sin|nada de|ningun|ninguna|ninguno|ningunos|ningunas|nunca|tampoco|jamas|niega|cero|libre de|nadie|(?<![\d.,:/] ?)0(?= [a-z]))\b(?! (?:a|y|positivo|negativo|ml|mls|cc|grados|horas?|solo|se si|estoy segur|estamos segur))/g;

/** A word that may stand between a negation and its sign without ending its reach. */
export const reach =
  /^(?:hay|hubo|tener|sentir|haber|estar|presentar|mostrar|es|tiene|tengo|tuvo|teniendo|veo|ve|ven|vemos|le|la|lo|les|se|me|nos|ha|han|he|hemos|esta|estan|estuvo|estado|anda|andan|a|un|una|ningun|ninguna|ningunas|ninguno|mas|nada|de|del|el|los|las|con|signos?|senal|senales|rastros?|visible|fresca|fresco|nuev[oa]s?|tanto|tanta|muy|parece|ni|sale|salio|saliendo|salido|sintio|siente|siento|noto|nota|presenta|presentado|presento|por|en|ahi|ya|algo|que|este|haya|tenido|sido|puesto|pone|puso|poniendo|ninguno|sonda|tubo|boton|agujero|hoyito|estoma|herida|su|sus|color|algun|alguna|dado|visto|trae|tan|o|u|e|al|tocar|esa|ese|eso|asi|como|verde|morad\w*|azul\w*|palid\w*|mal|roj[oa]|alta|alto|dolor|signo|sintomas?|ganas|problemas?|dificultad|cuesta|trabajo|para|respirar|labios|cara|boca|piel|barrig\w*|panz\w*|estomago|vientre|abdomen|bien|todo|toda|cosa|tipo|clase|hinchad[oa]|ella|nin[oa]|bebe|hij[oa]|mi|fuerte|fuertes|mucho|mucha|quejado|queja|tanto|demasiad[oa]|parar|ver|verse|sangre|todavia|aun|por|fuera|donde|ponerse|parece|aparente)$/;

/** "¿Fiebre? no" asks and denies in one. */
export const askedAndDenied = /\?+ ?(?=(?:no|nada|ningun[oa]?)\b(?! \w))/g;

/** Not knowing about the sign. */
export const unsureOfSign =
  /\b(?:no se si|no (?:estoy|estamos) (?:muy )?segur\w*(?! (?:de )?(?:que|por que|porque|cuanto|como))|(?:no )?segur[oa]s? si|no (?:puedo|alcanzo a|logro) (?:ver|decir|saber|distinguir)|ni idea si|no sabria|(?:me )?preocupa(?:da|do)?(?: \w+)? que|dudo|tengo duda|no se distingue|no parece pero)\b/;

/** A fear, a rule asked about, or a question: not something that is there. */
export const supposed =
  /\b(?:que pasa si|que (?:hago|hacemos|debo hacer) (?:si|en caso)|(?<!\d )y si (?:le|se|la|lo|tiene|empieza|le da|hay|sale|presenta|vomita|sangra)|en caso (?:de|que)|por si (?:acaso|le|se|tiene)|si (?:llega a|llegara|tuviera|hubiera|empezara|empieza a|llegase|presenta|presentara|le llega|se llega|se pusiera|se pone|le da|le diera|saliera)|(?:me da|tengo|con) (?:mucho )?miedo (?:de |a )?(?:que )?|(?:le )?(?:puede|podria|va a|vaya a|pueda) (?:dar(?:le)?|tener|pasar(?:le)?|empezar|ponerse|salir(?:le)?|sangrar|doler(?:le)?|vomitar)|(?:debo|hay que|tengo que|estoy|estare|estamos) (?:vigilar|fijarme|estar pendiente|pendientes?|observar|vigilando|atent[oa]s?)|es normal|como se (?:si|ve)|como (?:distingo|reconozco)|para (?:evitar|prevenir)|evitar|prevenir|riesgo de|que (?:es|significa)|a que se refiere|cuanta (?:sangre|fiebre) es|le (?:va|ira) a doler|le dolera|si (?:le |se |la |lo |me |no )*[a-z]+(?: [a-z]+){0,4},? (?:entonces )?(?:que (?:hago|hacemos|debo|debemos)|a donde|a quien|debo|puedo|tengo que)\b)\b/;

/** Trouble breathing that has not begun: "que hago si deja de respirar". Told of as there, again or lasting, it is no fear. */
export const feared =
  /\bcomo (?:se|sabe|saber|puedo saber|sabria|sabemos|distingo|reconozco|noto|veo|me doy cuenta)(?: yo)? (?:si|de que|que|cuando) (?:(?:le |la |lo |se |no |esta |anda |ella |el )*respir\w+(?: (?:mal|bien|rar[oa]|feo|normal|con \w+|agitad\w*|rapido))?|(?:le )?(?:cuesta|falta|tiene|hay)(?: \w+){0,3} (?:respirar|aire))|\b(?:(?:que pasa|que hago|que hacemos|por) si|miedo (?:de |a )?que|en caso de que) (?:me |se )?(?:le )?(?:deja(?:ra)? de respirar|para(?:ra)? de respirar|ahoga(?:ra)?|ahogue|deje de respirar|atraganta(?:ra)?|atragante|asfixi[ae]|falta el aire)\b(?! (?:otra vez|de nuevo|como|cada|tanto|mucho|ahora|cuando)\b)/g;

/** Said of another time. */
export const past =
  /\b(?:ayer|anoche|antier|anteayer|(?<!que )antes(?! de (?:que|ahora))|(?:la semana|el mes|el ano|ano|mes|semana|fin de semana|verano|invierno) (?:pasad[oa]|antepasad[oa])|hace (?:como |mas de |unos |unas |un |una )*(?:\d+ |varios |varias |muchos |muchas |par )?(?:dias?|semanas?|mes(?:es)?|anos?|horas?)|(?:dias|semanas|meses|anos) atras|cuando (?:nacio|era|tenia|estaba|le pusieron|la operaron|lo operaron|recien)|(?:en|durante|despues de|tras) (?:la |el |su )?(?:cirugia|operacion|hospital|parto|nacimiento|neo\w*|ucin?)|(?<!como )la (?:ultima|primera|otra) vez(?! (?:que|desde))|la vez (?:anterior|de antes|pasada)|a veces|siempre (?:ha|tiene|se|le)|normalmente|suele|padece|padecia|sufre|sufria|tenia|tiende a|historial|antecedentes?|en el pasado|alguna vez|la otra vez|la vez pasada|de vez en cuando|trastorno)\b/;

/** "Desde ayer" goes on. */
export const sinceThen =
  /\bque (?:ayer|anoche|antier|antes|hace rato|(?:esta|en la) (?:manana|tarde|noche))\b|\bdesde (?:ayer|anoche|antier|esta (?:manana|tarde|noche|madrugada)|hace (?:\w+ ){0,2}(?:horas?|dias?|rato|\w+))(?: (?:en|por) la \w+)?\b/g;

/** Said to be over, in the same statement or a later one of the sentence. */
export const over =
  /\b(?:ya (?:paro|se (?:le )?(?:quito|calmo|paso|detuvo|compuso|durmio|fue)|dejo de|esta (?:bien|mejor|tranquil\w*|normal|calmad\w*)|le (?:paso|bajo))|ya no (?!respond|reaccion|despiert|se (?:mueve|despierta|queja)|me |nos |abre|contesta|respira|puede|quiere|la |lo |jala|aguanta)|(?:se|le) (?:detuvo|calmo|quito|bajo la fiebre)|se le paso|dejo de (?!respir|mover|respond|reaccion)|paro(?: de)?|esta mejor|mejoro|cedio|se controlo|controlad[oa])\b/;

/** What comes back through the tube, looked at only while that is asked. */
export const redContents =
  /\b(?:roj[oa]|rojiz[oa]|rojit[oa]|sanguinolent\w*)\b(?! ?(?:tapa|tapon|puerto|linea|tubo|marca))(?<!(?:tapa|tapon|puerto|linea|tubo) (?:es |esta )?roj[oa])/;

/** Said of someone or something else. */
export const other =
  /\b(?:mi (?:otr[oa]|mano|dedo|cabeza|corazon|espalda|panza|estomago)|a mi (?:me|tambien)|me (?:duele|siento|corte|estoy|tiemblan?)|yo (?:estoy|tengo|ando|me))\b/;

/** Said of another person altogether: not heard at all, but for breathing. */
export const otherPerson =
  /\b(?:(?:mi|su|nuestr[oa]|el|la) (?:otr[oa] (?:hij[oa]|nin[oa])|hij[oa] (?:mayor|menor|grande)|herman[oa]|hermanit[oa]|gemel[oa]|prim[oa]|perr[oa]|gat[oa])|(?:mi|su) (?:esposo|esposa|marido|mujer|pareja|novi[oa]|mama|papa|suegr[oa]|abuel[oa]|ti[oa]) (?:tiene|esta|tuvo|sangr\w+|vomit\w+|se (?:desmay\w+|marea\w*|cayo|puso|pone)|anda))\b/;

/** Words that only look like signs. */
export const lookalikes: readonly RegExp[] = [
  // Pulled at the tape: no pain of the belly.
  /\b(?:llor\w*|grit\w*|chill\w*)(?: (?:a gritos|mucho|fuerte|tantito|un poco|un poquito))? (?:cuando|al|porque|mientras) (?:yo )?(?:(?:le|se|la|lo) ){0,2}(?:quit|despeg|arranc)\w* (?:la |el |los |las )?(?:cinta|cintas|tela|esparadrapo|micropore|parche|gasa|gasita|curita|adhesivo|pegamento)\b/g,
  // A word of the question asked about.
  /\b(?:eso|esto|lo) de (?:que )?(?:(?!respir|aire)[a-z]+ ){1,5}(?:y )?(?:como se (?:sabe|nota|ve|reconoce|siente)|que (?:es|significa)|a que se refiere)\b/g,
  // Old blood, and none that is fresh.
  /\bsangre (?:ya )?(?:seca|vieja|reseca)(?: (?:vieja|seca|de|en|la|el|gasa|ropa|piel|ayer|antier|del?|ya)){0,8},? (?:y |pero )?(?:fresca|nueva|roja|de hoy) (?:no|nada|ninguna)\b/g,
  // A call or a message given back.
  /\b(?:devolv\w*|devuelv\w*|regres\w*) (?:la |el |las |mi |su |una )?(?:llamad\w+|mensaj\w+|telefonazo)\b/g,
  // "Como lo que vomita siempre": what it looks like.
  /\b(?:como|igual que|igual a|parecido a) (?:lo que|cuando) (?:(?:ella|el|la nina|el nino|siempre|normalmente) )*(?:vomit\w*|devuelv\w*|arroj\w*|regurgit\w*|bota|escupe)(?: siempre| normalmente)?/g,
  // The caller's own fever.
  /\byo (?:tambien |si |misma |ya )*(?:tengo|traigo|ando con|estoy con) (?:mucha |mucho |un poco de |algo de )?(?:fiebre|calentura|temperatura|nauseas?|vomitos?|dolor\w*(?: de [a-z]+)?)\b/g,
  // Of another time, and over: "antes convulsionaba, ahora ya no".
  /\b(?:el|la|los|las|del|su) (?:vomit\w*|fiebre|calentura|sangrado|diarrea|dolor) (?:de |del )(?:la semana pasada|mes pasado|hace (?:\d+ |un |una |unos |unas |varios )?(?:dias?|semanas?|mes(?:es)?)|ayer|antier)[^.;!?]{0,12}\b(?:y a |ya )?se (?:le )?(?:quito|paso|fue|curo)\b/g,
  /(?<=^|[.;!?] ?)(?:antes(?! de (?:que|ahora))|la semana pasada|(?<!d)el (?:mes|ano) pasado|cuando (?:nacio|era bebe))\b[^.;!?]{1,60}\b(?:ahora (?:y a|ya) no|ahora no|hoy (?:y a|ya) no|hoy no|(?:y a|ya) se le (?:quito|paso)|(?:y a|ya) no)(?= ?$| ?[.,;!])/g,
  // Thin, said of what is eaten or comes back; soft, of the belly.
  /\b(?:lech\w*|yogur\w*|crema|atole|avena|sopa|pure|papilla|caldo|liquid\w*|contenido|jug\w*|formula|popo|caca|evacuacion\w*|moco\w*|saliva|baba|panz\w*|panc\w*|barrig\w*|guat\w*|abdomen|estomag\w*|vientre|tripa|tripita)(?: (?!esta\b|anda\b|ella\b|nin)[a-z]+){0,7} (?:aguad|aguach|guang|flojit)\w*|\baguad\w*(?: (?:como|tipo|igual que))(?: (?:la|el|un|una))? (?:lech|yogur|crema|atole|avena|sopa|formula)\w*/g,
  // Another time, and not now.
  /\b(?:la|las) (?:ultima|primera|otra)s? ve(?:z|ces)(?: (?:pasada|anterior))?\b[^.;!?]{1,60}\b(?:esta vez|ahora|hoy|ya) (?:no\b|nada\b|ni\b|sin\b)/g,
  /\bantes (?:[a-z]+ ){1,5}(?:convulsion\w*|ataques?|crisis|fiebres?|vomit\w*|sangr\w*|dol(?:or|ia)\w*)[^.;!?]{0,20}\b(?:lleva|llevamos|tiene|hace|va para)(?: \w+){1,4} (?:sin|que (?:ya )?no)\b(?: (?:ningun[oa]?|nada|una|uno|tener|dar|le|la|lo|da|dan|tiene|ha|tenido|dado))*/g,
  // Somebody's at school.
  /\b(?:hay|habia|hubo|andan?) (?:un|una|unos|unas|otr[oa]s?|vari[oa]s|much[oa]s|\d) (?:nin[oa]|companer(?:it)?[oa]|amiguit[oa]|alumn[oa])s?(?: [a-z]+){1,4} (?:en|de) su (?:salon|clase|escuela|kinder|guarderia|cole\w*|grupo|aula|jardin)\b/g,
  /\b(?:nin[oa]s?|companer(?:it)?[oa]s?|amiguit[oa]s?|alumn[oa]s?) de su (?:salon|clase|escuela|kinder|guarderia|cole\w*|grupo|aula|jardin) (?:que )?(?:tienen?|esta|estan|tuvo|tuvieron|andan?|con)(?: [a-z]+){1,3}/g,
  // The caller's fright, and who does not answer the telephone.
  /\bla sangre se me (?:fue|helo|hiela|bajo|congelo)(?: a los (?:pies|talones))?\b|\bse me (?:helo|hiela|fue|bajo|congelo|puso (?:fria|helada)) la sangre\b/g,
  /\bmi (?:pareja|novi[oa]|espos[oa]|marido|mujer|mama|papa|suegr[oa]|cunad[oa]|jef[ea]|doctora?|pediatra|comadre|compadre) (?:ya |todavia |tampoco )?no (?:me |nos )?respond\w*/g,
  // The caller's own breath, hands and sweat.
  /\b(?:a mi )?me (?:cuesta|falta|faltaba|costo|costaba)(?: (?:hasta|trabajo|el|la|mucho))* (?:respir\w*|aire)(?: (?:a mi\b|(?:del|de la|de|con|por|por el|por la)(?: (?:puro|pura|tanto|tanta|el|la|los))* (?:susto|disgusto|miedo|nervios|coraje|llanto|angustia|estres|ansiedad|impresion)))|\ba mi me (?:cuesta|falta)(?: (?:el|la|trabajo))* (?:respir\w*|aire)|\byo (?:soy )?(?:la que |el que )?(?:ya |casi )?no puedo (?:ni )?respirar|\bme t(?:em|iem)bl\w+(?: (?:mucho|las|todas|hasta|bien))* (?:manos?|piernas?|rodillas?)|\bme ahog(?:o|aba) (?:yo|del?|con)\b(?: (?:la|el|los))? \w+/g,
  // "El que vomita es el hermano."
  /\b(?:el|la|quien|los|las) que (?!(?:no )?respir)(?:[a-z]+ ){1,5}(?:es|son|fue) (?:(?:el|la|su|mi|los|las) )?(?:otr[oa]s? (?:nin|hij|beb|nen|chic)|(?:otr[oa] )?(?:herman|gemel|prim|espos|marid|abuel|suegr|perr|gat|mama|papa|vecin|yo\b))\w*/g,
  // The weather's.
  /\bsud(?:a|ando|or\w*|oros[oa])(?: \w+)? (?:porque|por|de|con)(?: (?:hace|hacen|el|la|tanto|puro|este|esta|mucho|aqui|estamos|a))* (?:\d+ grados|calor\w*|bochorno|verano|sol)\b/g,
  /\bahog\w*(?: pero)? de (?:la |pura |tanta )?risa\b|\bsoy yo (?:la|el) que no (?:puede|puedo) respirar\b|\bno es (?:de|por) dolor\b/g,
  /\b(?:(?:mi|su|la|el) (?:espos[oa]|marido|mama|papa|suegr[oa]|herman[oa]|cunad[oa]|ti[oa]|prim[oa]|abuel[oa]|vecin[oa]|comadre|compadre|padrino|madrina|ninera|jef[ea]|pediatra|cirujan[oa]|clinica|hospital|consultorio|doctora?|enfermera)|(?:en (?:el|su)|al) trabajo)(?: (?:que|la|lo|sabe|es|esta|trabajando|de|guardia))*(?: y| pero)?(?: el| ella)? (?:ya |tampoco |todavia )?(?:no )?(?:me |nos )?contesta\w*(?! (?:la|el|mi|su) (?:nin|beb|hij|nen))|\bno (?:me |nos )?contesta\w* (?:el |al |mis? |las? )?(?:telefono|cel\w*|llamadas?|mensajes?)\b|\b(?:pregunt|llam|marc|telefone|habl|escrib|avis)\w* (?:ya )?(?:a|con) (?:la|el|mi|su|otra|otro|una) (?!nin|beb|nen|hij|chiquit|peque)[a-z]+(?: [a-z]+)?(?: pero| y| que)* (?:no|tampoco|nadie) (?:me |nos )?(?:contest|respond)\w*/g,
  /\bme (?:sangra|sangran|duele|duelen) (?:la|el|los|las|un) (?:mano|manos|dedo|dedos|brazo)(?: a mi)?\b/g,
  /\b(?:como|parece) (?:de )?(?:el |un )?vomit\w*\b|\b(?:amarill\w*|verd\w*|cafe|beige) (?:muy )?palid\w*/g,
  /\b(?:para(?: que)? no(?: se)?|sin) (?:despert|despiert)\w*/g,
  // Its own usual noise.
  /\brespir[ae](?:ndo)? (?:bien )?(?:como|igual que) (?:siempre|antes)(?:,? (?:con|hace) su (?:ruid\w+|ronquid\w+|silbid\w+|flem\w+))?(?: de (?:la traqueo\w*|siempre|las flemas))?(?! (?:pero|aunque|solo))|\brespir[ae](?:ndo)? con su (?:ruid\w+|ronquid\w+|silbid\w+|flem\w+) (?:de|como) siempre(?! (?:pero|aunque|solo))|\b(?:hace |con )?su (?:ruidit\w*|ronquidit\w*|ronroneo)(?: (?:al|para|cuando) respir\w+)? (?:como|de) siempre\b|\b(?:suena|tapada|silba|chifla|ronca)(?: (?:la|de la|su))? (?:nariz|naricita)\b/g,
  // A child in its good colour.
  /\b(?=esta|sigue|anda|se ve|l[ao] veo|bien|muy|tod|rosad)(?<=^|[,.;!] ?|\b(?:y|ella|el|bebe|nin[oa]|tod[oa]|bien|normal|piel|carita?|cachetes|cachetitos|mejillas|labios|labiecitos|color|buen color|brazos|cama|cuna|dormid[oa]|durmiendo|despiert[oa]|tranquil[oa]|content[oa]|feliz|jugando|lind[oa]|bell[oa]|gordit[oa]|activ[oa]|bonit[oa]|aqui|gracias|l[oa] (?:veo|tengo|traigo)) )(?:esta |estan |sigue |anda |se ve |la veo |lo veo |bien |muy |tod[oa] ){0,4}rosad(?:it)?[oa]s?\b(?! (?:la|el|los|las|alrededor|por|en|de|como|con))/g,
  /\bnada (?:aguad|floj|palid|morad|azul|dur|hinchad|inflad|calient)\w*/g,
  /\b(?:respir[ae]|respirar|respire|respiro|respirando|respiramos) (?:hondo|profundo|profundamente)\b|\brespirador\b|\bun respiro\b|\b(?:ahora si|por fin|al fin|ya) (?:respir[oe]|(?:puedo|pude) respirar)\b(?! (?:mal|feo|raro|con|muy|rapid|poco|apenas))|\brespire (?:por fin|al fin|tranquil[oa]|aliviad[oa])\b|\bme quede(?<!\bse me quede) sin (?:aire|aliento|respiracion)\b|\byo (?:casi )?sin (?:aire|aliento)\b|\byo no respond\w+|\b(?:centro|casa|casita|programa|servicio|familia|cuidados?|unidad|estancia|hogar|semana|dias?) del? respir[aeo]\b|\brespir[aeo] familiar\b/g,
  /(?<!\b(?:no|ni|sin|apenas|casi|nunca|puede|tampoco)(?: (?:esta|le|la|se|puede|puedo|pudo|podia|lo|me|nos|anda|parece|quiere|logra|deja|alcanza|consigue|va|sabe|veo|ve|noto|oigo|siento|muy|tan|del|todo|a|que))* ?)\brespir(?:a|e|ando|acion|ar)(?: (?:es|esta|va|se|ve|muy|todo|sigue|parece|super|perfectamente|totalmente|y|duerme|come|la|lo|veo|siente|de|forma|manera|por))* (?:bien(?! (?:feo|raro|rara|mal|rapid|agitad))|normal\w*|tranquil\w*|perfect\w*|parej\w*|suave\w*|seren\w*|bonit\w*|a gusto|de lo (?:mas |lo )?(?:bien|lindo|normal)|de lujo|de maravilla|como (?:siempre|debe(?: ser)?|debiera|dios manda|corresponde|reloj\w*)|con (?:normalidad|calma|tranquilidad|facilidad)|buen[oa](?! (?:rat|fuerz))|buenisimo|igual que siempre|sin (?:ningun |ninguna )?(?:problemas?|dificultad)|calmad\w*|facil\w*|regular|sol[oa]|tranquilamente)\b(?! no)/g,
  /\b(?:presion|prueba|pruebas|analisis|examen|examenes|tipo|muestra|banco|azucar) (?:de (?:la )?|en (?:la )?)?sangre\b|\bsangre fria\b|\bsangron\w*\b/g,
  /\b(?:medicin\w*|medicament\w*|jarabe|pastill\w*|gotas|remedio|plan|dosis|diazepam|lo)(?: (?:de|para|contra|del))(?: (?:la|las|los|el|su|sus))? (?:fiebre|calentura|dolor|convulsion\w*|epilepsia|nauseas?|vomitos?|temperatura|respirar|sangre)\b/g,
  /\bblanc[oa]s?(?: \w+){0,2} como (?:la )?(?:leche|yogur\w*|crema|suero)\b/g,
  /\b(?<!\bcomo (?:un |una |el |la )?)(?:tapa|tapita|tapon|pinza|puerto|puertos|tubo|tubito|sonda|boton|tira|tirita|valvula|globo|jeringa|caja|bolsa|papel|kit|gasa|cinta|camisa|cobija|trapo|toalla|punta|linea|anillo|marca|ropa|panal|manta|vestido|zapat\w+|agua|strip)s?(?: (?:es|son|esta|se|puso|de|color|la|el|que|tiene|un|una|muy|ya|medio|cambio|a|salio|ve|quedo)){0,4} (?:azul\w*|morad\w*|gris\w*|verd\w*|roj[oa]s?|rosad?a?o?|amarill\w*|blanc[oa]s?|palid\w*|caliente|tibia)\b/g,
  /\b(?:la|el|una|un) (?:azul|morad[oa]|verde|roj[oa]|rosa|rosad[oa]|gris)\b(?! (?:en|de|del) )/g,
  /\b(?:agua|toalla|trapo|bano|compresa|panito|pano|leche|formula|cuarto) (?:muy )?(?:caliente|calientita|tibia|tibio)\b|\bdolor de cabeza\b/g,
  /\b(?:yo|estoy|mama|papa|mi (?:mama|esposo|esposa|suegra|hermana)|estamos|(?<!\bse )me)(?: \w+)? (?:llorando|temblando|gritando|sudando|desmay\w+|vomitar|ahog\w+|grit\w+|agitad[oa])\b|\b(?:estoy|ando|me puse|me siento) (?:muy |toda |todo |bien |tan )?(?:palid[oa]|cansad[oa]|temblando|debil|agitad[oa]|sudando|mal)\b/g,
  /\b(?:le )?(?:va a doler|dolera|le duele\?|esto duele|sin que le duela|para que no le duela|no quiero que le duela|lastimar\w*)\b/g,
  // In French it hurts.
  /\bmal\b(?! color)/g,
];
/** Words of quantity: a negation that reaches them leaves some of the sign. */
export const muchOf = /\b(?:much[oa]s?|muchisim[oa]|tant[oa]s?|demasiad[oa]s?|bastante|gran cosa)\b/;
export const muchAfter = /^ (?:mucho|muchisimo|tanto|demasiado|bastante|gran cosa)\b/;
export const hardlyNo = /\b(?:casi|practicamente) (?:nada(?: de)?|no|sin|ningun[oa]?)$/;
/** After a sign denied: some of it after all. */
export const someAfterAll =
  /^(?:(?:bueno|ok|ah|espere|espera|en realidad|tal vez|quizas?|a lo mejor|o|si|hay|habia|veo|vi|tiene|solo|nomas|apenas|la verdad|es que|pues|no) )*(?:(?:una?|unas|unos|el|la|como) )*(?:gotit\w*|gotas?|manchit\w*|manchas?|puntit\w*|poquit\w*|poco|poca|tantit\w*|hilit\w*|rayit\w*|(?:1|una|2|dos) (?:vez|veces))(?= ?$| (?:en|de|al|cuando|alrededor|nada mas|nomas|rosad\w*)\b)/;
/** How a list written with slashes is said. */
export const or = ' o ';
/** A list: its negation reaches all of it. */
export const listed = / (?:o|u|ni) /;
/** Where a statement inside a sentence ends. */
export const statementEnd =
  /\||\b(?:(?:pero|solo|solamente|nada mas)(?! (?:es |fue |muy |solo |nada mas |como |son )*(?:un |una |unas |unos )?(?:poc|poquit|tantit|leve|gotit|gotas?|hilit|manchit|puntit|\d got))|excepto|sino|aunque|luego|entonces|porque|lo que|salvo|menos)\b|\by\b(?! (?:(?:muy|bien|super|toda?|esta|la|lo|tiene|siente|se|le|puso|ve|ya|medio|como|anda|trae|quedo|con) ){0,4}(?:dur[oa]|durisim|durit|hinchad|inflamad|inflad|tens|ties|rigid|distendid|sud(?:a|ando|or|oros[oa]|ad[oa])\b|palid|helad)\w*)|\be\b/;
/** "Y no, ella no sangra": a no that belongs to the denial after it. */
export const noBefore = /\bno,? (?:el|ella|la nina|el nino) $/;
/** "Fever: no". */
export const deniedAfter =
  /^ ?(?:[:=-] ?)?(?:no|nada|ningun[oa])$|^ (?:no (?:le |se )?(?:le )?(?:veo|vi|vemos|hay|tiene|sale|ve|noto)|tampoco)$/;
