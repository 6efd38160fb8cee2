/** Spanish words around a negation: which attach to what follows, what says nothing by itself, and what each question is about. */
import { wordSet } from '../wordSet.ts';

/** These negate the words after them; any other negation stands for itself. */
export const attached = wordSet('no noo ni sin nunca jamas nadie ningun ninguna not dont');
/** A no that is an answer where another statement follows it at once. */
export const bare = wordSet('no noo');
/** Negations that stand behind their verb: none in Spanish. */
export const afterVerb: ReadonlySet<string> = new Set();

/** Begins another statement: the negation reaches no further. */
export const ends = wordSet(
  'yo ella ellos nosotros ustedes usted porque pork porq pq xq xk pues ps entonces cuando mientras hasta si aunque solo solamente nomas pero como donde quien o disculpe perdon',
);
/** Right after a negation: what is negated is not the answer. */
export const asks = wordSet('que como donde cual cuando cuanto');
/** Right after a bare no: another statement begins, or plain chatter follows. */
export const opens = wordSet(
  'mi mis su sus el los yo ella ellos nosotros eso esa esos esas esto este esta estos estas todo toda todos todas otro otra nada ninguno ninguna ningun nadie nunca no tampoco estoy estamos voy vamos vengo creo digo mire mira fijese fijate oiga oye vea che vos ps pues que en con de a por para gracias muchas senora senor senorita doctora doctor doc amiga amigo amiguita mija mijo mijita mijito hijita hijito mamita papito seno doctorcita comadre compadre vecina jefe parce mae maje nena linda querida corazon cielo vida mi reina linda amor jefa don dona mami bien tranquila tranquilo contento contenta normal sigue igual solo nomas apenas aun todavia ya ahorita deje dejeme espere espera perdon disculpe lamentablemente desgraciadamente gracia graciasadios dios x xfa fue anda habla llora duerme jugando durmiendo dormida dormido dormidita viendo come ese era estaba estaban estuvo son es como donde cual',
);

/** Says nothing by itself. */
export const light = wordSet(
  'lo la los las le les se me te nos un una unos unas uno el ella ya mas mucho mucha muy tan de del a al en con para por que y e ni nada ninguno ninguna ningun nadie tengo tenemos tiene tienen tenia teniamos traje hay hubo habia esta estan estaba es son era fue he ha han hemos habia haya mi su sus mis este esa eso esto esos todavia todabia aun aqui aca ahora ahorita hoy casa momento modo manera chance forma solo sola absolutamente pude puedo pudo puede podemos pudimos podido quiere quiero quiso logro logre lograr consigo logrado sabria senora senorita gracias mija doctora dios caso asi tal maldito maldita pinche puta bendita bendito ora orita nomas',
);

/** What a negated word has to be about, a question each. */
export const matter = {
  kit: /^(?:kits?|kit|equipo|estuche|bolsa|bolsita|caja|maletin|repuesto|emergencia|sonda|tubo|boton|foley|dieron|dio|dan|dado|entreg\w+|encuentr\w+|encontr\w+|hall\w+|trae|traigo|traje|trajimos|nunca|cuenta|contamos|cont\w+|mostr\w+|ensen\w+|explic\w+|capacit\w+|entren\w+|recib\w+|mand\w+|llego|llegado|prove\w+|ve|veo|aparece|localiz\w+|queda|quedan|quedo|otro|otra|otros|dejaron|escuela|existe|cargo|carga|cargamos)$/,
  howIn:
    /^(?:entr\w+|pas\w+|pude|pudo|quier\w*|quiso|cab\w+|avanz\w+|met\w+|pus\w+|pon\w+|qued\w+|sirv\w+|funcion\w+|facil\w*|dificil\w*|duro|forz\w+|empuj\w+|deja\w*|logr\w+|encontr\w+|encuentr\w+|abr\w+|hueco|hoyo|agujero|inserta\w*|introdu\w+|lleg\w+|sub\w+|baj\w+|complet\w+|bien|cost\w+|hubo|tuve|batall\w*|problema\w*|resisten\w+|mueve|cual|palos|hice|hago|hacer)$/,
  ownTube:
    /^(?:encuentr\w+|encontr\w+|hall\w+|aparec\w+|globo|globito|balon|baloncito|tubo|tubito|sonda|boton|entero|entera|complet\w+|sirve|guard\w+|conserv\w+|llevo|tire|traje|trae|veo|ve|queda|quedo|viejo|vieja|buen\w*|sana|sano|bien|funciona|infla\w*|ub\w+|existe)$/,
  strips:
    /^(?:tiras?|tirit\w+|papel\w*|ph|reactiv\w+|medidor\w*|indicador\w*|cintas?|prueba|pruebas|dieron|dio|dan|dado|entreg\w+|encuentr\w+|encontr\w+|hall\w+|trae|traigo|traje|vienen|viene|venian|vinieron|contamos|cuento|quedan|queda|quedaron|quedo|visto|ve|veo|recib\w+|mand\w+|llegaron|esas|esos|conozco|paquete|kit|compr\w+|existe\w*|idea|surti\w+)$/,
  contents:
    /^(?:sale|salen|salio|salir|saliendo|salido|saque|saco|sacar|sacamos|jala|jalar|jalo|jale|aspir\w+|succion\w+|extra\w+|regres\w+|vien\w+|vino|llega|llego|baja|sube|gota\w*|gotit\w+|liquid\w*|leche|lechit\w+|contenido|jugo|jugos|conten\w+|estomac\w+|gastric\w+|devuelve|aparec\w+|obten\w+|obtuv\w+|consegu\w+|residuo|aire|retorn\w+|fluye|veo|ve|chup\w+)$/,
  looks:
    /^(?:parece\w*|blanc\w+|lechos\w+|leche|transparent\w*|amarill\w+|verd\w+|cafe|cafecit\w+|clar\w+|normal\w*|igual|ve|veo|mira|bien|color|aspecto|luce|contenido|estomac\w+|siempre|rosad\w*|roj\w*)$/,
  secured:
    /^(?:dieron|dio|alcanz\w+|jering\w*|gasas?|parches?|material|agujas?|pega\w*|pego|pegue|pegan|cinta|cintas|tela|esparadrapo|queda|quedan|quedo|quedado|sujet\w+|asegur\w+|fij\w+|ajust\w+|agua|globo|balon|infl\w+|llen\w+|firme|floj\w+|apret\w+|animo|atrevo|segur\w+|termin\w+|acab\w+|list\w+|hice|hecho|puse|puesto|pone\w*|sostien\w+|detien\w+|aguanta|adhesiv\w+|peg\w+|bien|completo|todo)$/,
  firstFeed:
    /^(?:bien|toler\w+|pasa|paso|pasaba|pasar|baja|bajo|quiso|comio|come|toma|tomo|acepta|acepto|aguanto|retuvo|retien\w+|termin\w+|acab\w+|normal|tranquil\w+|gusto|gustado|buen\w*|boto|cayo|fluy\w+)$/,
  nextDay:
    /^(?:bien|mejor|normal|anda|amanecio|tranquil\w+|content\w+|buen\w*|igual|mejor\w+|come|duerme|durmio|siente|sigue|recuper\w+|ella|el|mism\w+)$/,
  arrived:
    /^(?:lleg\w+|yeg\w+|fuimos|ido|salid\w+|salim\w+|salgo|sali|carro|coche|auto|taxi|camion|transporte|transport|ambulancia|quien|lleve|vamos|voy|podido|atend\w+|hospital|faltan?|arranc\w+|encuentr\w+|pas\w+|cerca|movemos|ir|irnos|gasolina|moto|dinero|raite|ride)$/,
  clinic:
    /^(?:llam\w+|habl\w+|contest\w+|respond\w+|comuni\w+|avis\w+|localiz\w+|abren|abre|abierto|atiend\w+|agarran|levant\w+|cita|citas|clinica|consult\w+|telefono|numero|tel|saldo|linea|dado|dan|marc\w+|entra|regres\w+|devuel\w+|devolv\w+|informad\w+|agend\w+|sabe|saben|paso|tiempo|tenido|falta|manana|esposo)$/,
  confirm:
    /^(?:correct\w+|cierto|verdad|bien|mal|peso|pesa|peso|fecha|tipo|tubo|sonda|es|son|fue|cambi\w+|igual\w*|mism\w+|exact\w*|asi|soy|kilos?|kg|gj|g|j|boton|enero|febrero|marzo|abril|mayo|junio|julio|agosto|septiembre|octubre|noviembre|diciembre|coincid\w+|acuerdo|nacio)$/,
  unwell:
    /^(?:fiebre|calentura|temperatura|sangr\w+|dolor\w*|duel\w+|vomit\w+|devolv\w+|devuelv\w+|basca\w*|morad\w*|palid\w*|azul\w*|convuls\w*|ataque\w*|problem\w*|senal\w*|sintoma\w*|signos?|peligro\w*|dificultad\w*|cuesta|presenta\w*|novedad\w*|cambio\w*|cambiado|nuev\w+|panza|pancita|barriga|vientre|estomago|dur\w|hinch\w*|inflam\w*|llora\w*|llanto|queja\w*|quejado|sale|flojo|floja|guang\w*|aguad\w*|respir\w*|ahog\w*|mal|malestar|mole\w*|esas|esos|eso|anterior\w*|3|infeccion|pus|roj\w*|irrit\w*|tuvo|tenido|nada|parece|ve|veo|nota|noto|observ\w+|siente|complic\w+|mancha\w*|gota\w*|gotit\w*|cosas?|raro|rara|extran\w+|alarma)$/,
  fedLately:
    /^(?:desde|hace|comid\w*|come|comio|comer|coma|dado|dad\w+|di|dimos|doy|damos|dieron|tom\w+|leche|lechit\w+|formula|alimen\w+|medic\w+|ultim\w+|bebid\w*|beb\w+|recib\w+|aliment\w*|toma|tomas|hora|horas|\d+|cenado|ceno|desayun\w+|pasado|paso|estaba|bomba|puesto|puse|conect\w+|probado|probo|biberon|tetero|mamila)$/,
} as const;
