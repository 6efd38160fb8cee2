/** Spanish for the answers to the plainer questions, beside yes and no. */
import type { Statements } from '../yesNo.ts';
import { matter } from './negation.ts';

const have =
  '(?:(?:si |ok |ya |pues |yo |nosotros |aqui |aca |todavia |aun |lo |la |los |las |me |nos )*(?:tengo|tenemos|tiene|tenia|teniamos|hay|encontre|encontramos|consegui|traigo|traje|trajimos|(?:ando|estoy|estamos|andamos) con|guarde|guardamos|quedan?|esta|estan|dieron|veo|dispon(?:go|emos) de(?:l)?|(?:cuento|contamos) con))';
const thing =
  '(?:(?:el|la|los|las|un|una|unos|unas|mi|nuestro|nuestra|su|ese|esa|esas|esos|todo|de|solo|\\d+|uno|algun[oa]s?|varias?|pocas|par|frasc\\w*|frasq\\w*|bote|botecito|tarr(?:o|ito)|tubito|rollo|rollito|monton|chorro|buen|buena) )*(?:kit|equipo|estuche|neceser|bolso|mochila|botiquin|maletin|maleta|bolsa|bolsita|tiras?|tiritas?|papel|papeles|papelitos?|sonda|tubo|foley|paquete|paquetito|caja|cajita|pote|potecito|bote|botecito|frasc\\w*|frasq\\w*|tarrito|sobres?|sobrecitos?|algunas?|unas|varias|pocas|bastantes|muchas|monton|de sobra|suficientes?|todo|\\d+|una|aqui|list[oa])';
const tail =
  '(?: (?:de|del|emergencias?|repuesto|reserva|ph|aqui|listo|list[oa]s|conmigo|en|la|el|las|los|mi|su|casa|mano|a|todo|bolsa|panalera|mochila|carro|coche|cuarto|cajon|con|kit|hospital|y|que|me|nos|dieron|dio|sonda|temporal|tubo|nuev[oa]s?|caja|todavia|cerca|lado|abiert[oa]|es[oa]s?|llen[oa]|sellad[oa]|sin abrir|una|prueba|medir|para|mia|nomas|nada mas|no mas|jeringa|gel|guantes|numero|\\d+|fr|french|calibre))*';

/** A place at hand: anywhere but where somebody would have to go for it. */
const atHand =
  '(?:en|dentro de|encima de|arriba de|debajo de|abajo de|junto a|sobre|al lado de|detras de) (?:el |la |los |las |mi |su |un |una |nuestro |nuestra )*(?!(?:escuela|guarderia|kinder|trabajo|oficina|hospital|clinica|farmacia|consultorio|otr[oa]|casa de|carro de|coche de|camioneta de|auto de|internet)\\b)[a-z]+(?: (?:azul|verde|roj[oa]|negr[oa]|blanc[oa]|gris|rosa|rosad[oa]|amarill[oa]|morad[oa]|cafe|grande|chic[oa]|chiquit[oa]|viej[oa]|nuev[oa]))?(?: (?:de|del|en|al lado|junto|bajo)(?: (?:el|la|los|las|mi|su))? [a-z]+){0,2}';
/** Where things lie in a home. */
const keptIn =
  '(?:closet|ropero|armario|placard|cajon|cajonera|gaveta|buro|comoda|tocador|mesa|mesita|repisa|estante|alacena|refri\\w*|nevera|heladera|cocina|bano|cuarto|recamara|habitacion|pieza|sala|cama|cuna|cunero|panalera|mochila|bolso|bolsa|bolsita|maleta|maletin|valija|cartera|caja|cajita|botiquin|mano|manos|carro|coche|auto|camioneta|carriola|silla)';
/** Who has taken it along, or what it lies in. */
const takenAway =
  '(?:se (?:lo|la|los|las) llev\\w+|(?:se llev\\w+|anda en|se fue (?:en|con)|salio (?:en|con)|trae|tiene) (?:el |la |mi |su )?(?:carro|coche|camioneta|troca|auto|moto)\\b|(?:anda en|anda con|se fue con|salio con) (?:ella|el)\\b|(?:lo|la) (?:tiene|trae|dejo|guarda) (?:mi|su|la|el|nuestra) [a-z]+ (?:en|con) (?:su|el|la|ella|otra|casa)|se (?:me |nos |le )?quedo en (?:el |la )?(?:kinder|escuela|guarderia|trabajo|carro de|casa de|hospital|otra)|no esta (?:aqui|en casa))';

export const kit: Statements = {
  matter: matter.kit,
  // Latex in it may be what the child cannot have.
  unless:
    /\b(?:viene|vienen|trae|traen|va a traer|me lo trae|nos lo trae) (?:ya )?(?:en camino|de camino|para aca|con (?:el|ella|eso)\b)|\b(?:tiene|trae|es|son|hecho) (?:de )?latex\b|\bpero\b.{0,40}\b(?:mas (?:grues|delgad|grande|chic|ancha|larg)\w*|otr[oa] (?:medida|talla|tamano|numero|calibre)|no (?:es|son) (?:de )?(?:la|el|su|mi) (?:medida|talla|tamano|numero)|distint\w+|diferente)\b/,
  neutral:
    /\b(?:nunca|no) (?:lo |la |los |las )?(?:he |hemos |habia )?(?:hecho|hice|usado|use|usamos|abierto|abri|necesitado|probado)(?: (?:lo|la|uno|esto|eso|antes|el|kit))*\b|\bno (?:esta |han? )?(?:vencid[oa]s?|caducad[oa]s?|vencido|expirad[oa]s?)\b|\b(?:sin|no (?:tengo|tenemos|hay|tiene|trae)) (?:el |la |los )?(?:gel|gelatina|lubricante|guantes|gasas?|cinta|jeringa)\b/g,
  yes: new RegExp(
    `^${have}(?: ${thing})?${tail}$|^(?:(?:si|ya|aqui|ahi|aca|alla) )*${atHand} (?:lo |la |las |los )?(?:esta|estan|tengo|tenemos|hay|guardo|guardamos|quedo|quedaron|viene|vienen|traigo)(?: ${thing})?${tail}$|^(?:(?:si|ya|aqui|ahi|aca|guardad[oa]|guardadit[oa]|el kit|la sonda|todo|siempre) )*(?:esta|estan|lo tengo|la tengo|lo tenemos|la tenemos|anda) (?:(?:aqui|ahi|aca|guardad[oa]|guardadit[oa]|siempre|ya) )*${atHand}$|^(?:(?:si|aqui|ahi|aca|guardad[oa]|guardadit[oa]|dentro|arriba|encima|de|en|el|la|mi|su) )*${keptIn}(?: (?:de|del|en|su|mi|la|el|mano|bebe|cuarto|bano|cocina|nin[oa]|cama|abajo|arriba)){0,4}$|^(?:(?:si|ya|yo|aqui) )*(?:tengo|tenemos|hay) (?:uno|una|el que|la que)(?: que)?(?: (?:me|nos|le))* (?:dio|dieron|mando|mandaron|entregaron|entrego|trajo|prepararon)(?: \\w+){0,5}$|^(?:(?:si|ya|aqui|ahi|aca) )*(?:lo|la) (?:tengo|tenemos) (?:colgad|guardad|list|preparad|puest|metid|separad|apartad)[oa](?: \\w+){0,4}$|^(?:ya )?(?:lo|la) (?:saque|abri|agarre|traje|busque|encontre|halle|tengo)(?: [a-z]+){0,4}$|^(?:el )?kit(?: (?:esta |aqui|list[oa]|a la mano|en mano))*$|^(?:aqui (?:esta|lo tengo|lo tenemos)|a la mano|listo)$|^(?:ya |si |me |nos |a mi |en el hospital |la enfermera |le |mi esposo |a nosotros )*(?:ensenaron|enseno|mostraron|mostro|explicaron|explico|capacitaron|entrenaron|dieron (?:el |la |un |una )?(?:curso|cursillo|taller|entrenamiento|capacitacion|formacion|charla|clase)).*$|^(?:yo )?se (?:como|hacerlo|ponerl[oa]|usarl[oa]|cambiarl[oa]).*$`,
  ),
  no: new RegExp(
    `\\b(?:no (?:lo |la |los |las )?(?:encuentro|encontramos|hallo)|perdi\\w*|perdid[oa]|se (?:me |nos )?(?:acab\\w+|perdi\\w+|olvid\\w+|quedo en)|(?:lo|la) (?:deje|dejamos|olvid\\w+)|otra casa|(?<!\\b(?:hij[oa]|espos[oa]|marido|mama|papa|herman[oa]|suegr[oa]|abuel[oa]|ti[oa]|senora?|pareja|mujer|ella|el)(?: que| ya| todavia| ahora)? )(?:esta|estan|quedo|deje|dejamos|dejaron|tengo|tenemos) en (?:la |el )?(?:otr[oa] \\w+|escuela|guarderia|kinder|trabajo|oficina|hospital|clinica|casa de \\w+)|ya (?:lo|la) us\\w+|sin kit|sin tiras|(?:lo|la|los|las) (?:tiene|trae|guarda) (?:mi|su|el|la|en) (?:doctora?|pediatra|medic[oa]|clinica|hospital|escuela|maestr[oa])\\b(?!.{0,30}\\b(?:aqui|casa|conmigo)\\b)|${takenAway})\\b`,
  ),
};
export const neverDone =
  /\b(?:nunca|no) (?:lo |la )?(?:he |hemos |habia )?(?:hecho|hice|intentado|probado|puesto|metido|cambiado)\b/;
export const shown = /\b(?:ensen\w+|mostr\w+|explic\w+|capacit\w+|entren\w+|se como|aprend\w+)\b/;
/** The kit is not where they are, whatever it lies in. */
export const kitAway = new RegExp(
  `(?<!\\b(?:no|nadie)(?: \\w+){0,2} )\\b${takenAway}|\\b(?:lo |la )?(?:esta|quedo|deje|tengo|dejamos) en (?:la )?(?:casa de (?:mi|su|la|el|los|un|una)|otra casa|escuela|guarderia|oficina)\\b`,
);
/** Someone else was shown, and is not there. */
export const otherShown =
  /\b(?:espos[oa]|marido|mujer|mama|papa|abuel[oa]|suegra|enfermera|hermana|ella|el|senora|pareja)\b.{0,30}\b(?:sabe|ensenaron|capacitaron|entrenaron|explicaron|entrenad[oa]|aprendio)\b.{0,30}\b(?:trabaj\w+|jale|chamba|laburo|laburando|camello|guardia|turno|fabrica|obra|carretera|manejando|en la calle|no esta|no se encuentra|dormid[oa]|durmiendo|fuera|lejos|salio|viaje|se fue|ausente)\b/;
export const notShown =
  /\b(?:(?:nada mas|solo|solamente|unicamente) (?:lo |la |los )?(?:he |hemos )?(?:visto|vi|vimos|mire|miramos|leido|lei|leimos)(?: (?:en|por|un|una|unos|los|el))* (?:videos?|tutorial\w*|fotos?|internet|folleto|papel|instructivo|manual)|(?:nadie|nunca|no|ni|ningun[oa]?|tampoco) (?:\w+ ){0,6}(?:ensen\w+|mostr\w+|explic\w+|capacit\w+|entren\w+|instruy\w+|aprend\w+|dijeron como|sabe(?:mos)? (?:como|usar\w*|hacer\w*|poner\w*|cambiar\w*))|no (?:estoy|estamos|esta|estan|fui|fuimos) (?:formad|capacitad|entrenad|instruid|habilitad|adiestrad|acreditad)[oa]s?|(?:sin|no (?:tengo|tenemos|recibi|recibimos)) formacion|(?:nadie|no) (?:me |nos )?(?:ha |han )?formado|no (?:se|sabemos|sabria|sabe) (?:muy bien |bien )?(?:como|usarl\w*|hacerl\w*|ponerl\w*|meterl\w*|que hacer|cambiarl\w*|hacer eso)|no (?:me )?(?:acuerdo|recuerdo)(?: de)? como|(?:se me olvido|olvide) como|sin (?:entrenamiento|capacitacion)|no (?:tengo|tenemos|recibi|recibimos) (?:entrenamiento|capacitacion)|(?:entrenamiento|capacitacion|curso),? (?:no|nunca|jamas|ninguno))\b/;
export const ownTube: Statements = {
  matter: matter.ownTube,
  neutral: /\bno (?:le |se |se le )?(?:pierde|gotea|tira|fuga|desinfla|sale)(?: (?:nada|agua|nada de agua))?\b/g,
  yes: new RegExp(
    `^(?:(?:si |esta |se ve |todo |muy |la sonda |el globo |el tubo |el boton |y )*(?:bien|bueno|buena|good|fine|perfect[oa]|enter[oa]|complet[oa]|limpi[oa]|intact[oa]|whole|nuevecit[oa]|como nuev[oa]|integr[oa]|buenit[oa])|(?:esta |se ve |todo |si )+(?:ok|okay)|${have}(?: (?:la|el) (?:sonda|tubo|boton))?(?: (?:aqui|conmigo|en|la|mano|todavia|tod[oa]|enter[oa]|bolsa|una|mi))*|(?:la|lo) (?:tengo|guarde|guardamos|lave|lavamos)(?: (?:aqui|en|una|un|la|el|mi|bolsit[oa]|bolsa|servilleta|panuelo|frasco|agua|limpia|lavada|mano|guardada|vasito|plato|toalla))*)$`,
  ),
};
/** Answers whether something is right, not whether a tube is there and whole. */
export const onlyRight =
  /^(?:(?:si|ok|todo|es|esta|eso) )*(?:bien|correct[oa]|exact[oa]|ciert[oa]|asi es|igual|verdad)[.! ]*$/;
export const strips: Statements = {
  matter: matter.strips,
  yes: new RegExp(
    `^${have}(?: ${thing})?${tail}$|^(?:(?:si|ya|aqui|ahi|aca|alla) )*${atHand} (?:lo |la |las |los )?(?:esta|estan|tengo|tenemos|hay|guardo|guardamos|quedo|quedaron|viene|vienen|traigo)(?: ${thing})?${tail}$|^(?:(?:si|ya|aqui|ahi|aca|guardadas|las tiras|todas?) )*(?:esta|estan|las tengo|las tenemos) (?:(?:aqui|ahi|aca|guardadas) )*${atHand}$|^(?:(?:si|aqui|ahi|aca|guardadas|en|el|la|mi|su) )*${keptIn}(?: (?:de|del|en|su|mi|la|el|cuarto|bano|cocina|nin[oa]|kit)){0,4}$|^(?:(?:si|aqui|ahi|ya|en|el|la|kit|caja|bolsa|tambien|las) )*(?:vienen|venian|trae|traia)(?: (?:en|con|el|la|kit|caja|aqui|unas|las|tiras?|varias|\\d+|dentro|adentro|incluidas)){0,6}$|^(?:tiras|tiritas)$|^(?:(?:si|pero|solo|nomas|nada mas) )*(?:solo|nomas|nada mas) (?:una?|\\d|unas (?:pocas|cuantas)|pocas)(?: tir(?:a|ita)s?)?$|^(?:solo |nada mas |me |nos )*(?:queda|quedan|tengo|hay) (?:\\d+|una|unas|pocas|poquitas|algunas|varias)(?: (?:tiras?|tiritas?|nada mas|nomas|no mas|aqui|todavia))*$`,
  ),
  // Strips past their date are no strips.
  no: /\b(?:no (?:las |la )?(?:encuentro|encontramos|hallo)|perdi\w*|perdid[oa]s?|se (?:me |nos )?(?:quedaron en|acab\w+|terminaron|perdi\w+|olvid\w+|mojaron|echaron a perder)|(?:las|la) (?:deje|dejamos)|sin tiras|(?:lo|la|los|las) (?:tiene|trae|guarda) (?:mi|su|el|la|en) (?:doctora?|pediatra|medic[oa]|clinica|hospital|escuela|maestr[oa])\b(?!.{0,30}\b(?:aqui|casa|conmigo)\b)|se las llev\w+|las (?:tiene|trae) (?:mi|su|la|el|nuestra) [a-z]+ (?:en|con) (?:su|el|la|ella|otra|casa)|(?<!\bno (?:estan |esta |han )?)(?:vencid[oa]s?|caducad[oa]s?|expirad[oa]s?|caducaron|vencieron))\b/,
};
export const contents: Statements = {
  matter: matter.contents,
  neutral: /\b(?:todavia |aun )?no (?:he )?(?:termin\w+|acab\w+)(?: todavia)?\b|,? casi nada$/g,
  yes: /^(?:(?:si |ya |me |le |nos |ahora |apenas |pues |solo |al fin )*(?:sali(?:o|eron)|sale|subio|subieron|bajo|trajo|asomo|aparecio|devolvio|se vino|saque|sacamos|saco|jale|obtuve|consegui|hay|vino|regreso|vi|veo|tengo|logre sacar|aspire|extraje|hubo)(?: \w+){0,4} (?:poco|poquit\w+|algo|lech\w+|liquid\w+|formula|contenido|jug\w+|got\w+|cuaj\w*|moco\w*|bab(?:a|ita)s?|chorr\w+|blanco|amarill\w+|transparente|clar[oa]|cosas?|\d+(?:\.\d+)? ?(?:ml|mls|cc)?|estomago|gastric\w*|tantito|poca|agu(?:a|ita) (?:verd|amarill|blanc|lechos)\w+)\b.*|(?:si )?(?:sali(?:o|eron)|hubo|hay) (?:algo|poquito|poco|leche|liquido|formula|contenido|gotas?|gotitas?|jugo)\b.*|(?:(?:un|una|unas|unos|apenas|apenitas|solo|nomas|algo|poco|poquit[oa]s?|poquitit[oa]|poca|tantito|como|par|de|puro|pura|chorrito|chorro|bastante|mucho|mucha|tipo|medio|dedit?o|cucharadita|buchito|traguito|chisguete|chin|pelin|en la jeringa|por la jeringa|salio|hay|veo|tengo|se ve) )*(?:lech(?:e|ita)|liquid(?:o|ito|illo)|formula|contenido|jug(?:o|uito|os)|got(?:as?|itas?|ica)|chorr(?:it)?o|lechos\w+|cafe(?:cito)?|cuajad\w*|cortad[oa]|grum\w*|espum\w*|blanc\w+|blanquit\w*|blancuzco|amarill\w*|verdos[oa]|transparente|agu(?:a|ita)(?= (?:con|lechos\w|blanc\w+|verd\w+|amarill\w+|y|como|tipo|de(?:l)? estomago))|\d+(?:\.\d+)? ?(?:ml|mls|cc)|mililitros?|ml|cc)(?: \w+){0,8}|(?:leche|liquido|formula|contenido)(?: \w+){0,3} en la jeringa\b.*|(?:si )?(?:salio|funciono|lo logre|se pudo)(?: \w+){0,3}|(?:un )?(?:poco|poquito|tantito))$/,
  no: /\b(?:(?:solo|pur[oa]s?|nada mas|unicamente|nomas) (?:aire|burbujas?)|aire (?:nada mas|nomas|no mas|solamente|solo)|^aire$|nada(?! mas\b)|burbujas? (?:nada mas|solamente)|^(?:(?:si|solo|puras|salieron|salen|unas) )+burbuj\w+$|sec[oa]|vaci[oa]|no (?:me |le |se )?(?:sale|salio|sali|viene|vino|regresa|regreso|jala|saca\w*|pude|puedo|logro|hay)(?: \w+)?)\b/,
};
export const looksRight =
  /\b(?:(?:igual que|como) siempre|lechos\w+|lechita|leche|blanc\w+|blanquit\w*|blanquec\w*|turbi[oa]|nublad[oa]|cuaj\w*|cortad[oa]|grum\w*|quesit\w*|requeson|yogur\w*|formula|cafecit[oa] clar[oa]|beige|crema|cremit[oa]s?|cremos[oa]|verde(?: como(?: el| la)?)? (?:pasto|hierba|cesped|grama|zacate)|(?:puntitos|pintitas|hilitos) cafes?|contenido (?:del estomago|gastrico|estomacal)|como (?:leche|formula|del estomago))\b/g;
export const looksWrong =
  /\b(?:amarill\w*|dorad(?:it)?[oa]|roj\w*|orina|pipi|pis|transparent\w*|se (?:ve a|le ve a|mira a) traves|traslucid\w*|se trasluce|cristalin[oa]|(?<!\b(?:cafe|cafecito|leche|beige|crema|cremita|blanco|color|tipo) )clarit[oa]s?|(?<!^|^si,? |cafe |cafecito )clar[oa]s?(?! que)|(?<=^)clar[oa](?= (?:con|y|como|casi|medio|tipo)\b)|agua|(?<!\b(?:yogur\w*|lech\w*|crema|formula|atole)(?: [a-z]+){0,5} )aguad(?:it)?[oa]|como agua|ambar|bilis|verd\w* (?:muy |bien )?(?:oscur[oa]|fuerte|brillante|fosforescente|militar|botella)|negr[oa]|rosad\w*|rosa|sangre|sanguinolent\w*|sin color|incolor[oa]|popo|caca|heces|excremento)\b(?! no\b(?: es| era)?(?:$|[,.;!]| (?:mas bien|sino|blanc|lech|beige|crem)))/g;
export const looksOpen = /\b(?:verd\w*|cafe\w*|marron\w*|saliva|baba|babit\w*|babos\w*|mocos?|mocos\w*|flemas?)\b/;
/** "Claro" is "of course", and clear. */
export const looks: Statements = {
  matter: matter.looks,
  neutral: /^(?:si,? )?claro[.!]*$/g,
  yes: /^(?:(?:pues|se ve|lo veo|la veo|esta|es|todo|muy|como|si) )*(?:normal\w*|bien|igual(?:it[oa])?(?: que siempre)?|como siempre)$/,
};
export const looksUnsure =
  /\b(?:no (?:estoy|estamos) (?:muy )?segur\w*|no (?:lo |la )?se(?! (?:le|ve|parece)\b)|no (?:puedo|alcanzo a|logro) (?:ver|distinguir|saber)|no distingo|no se (?:ve|alcanza|distingue)|ni idea|(?:es )?dificil (?:de )?(?:decir|saber|ver)|no sabria|creo|quizas?|tal vez|a lo mejor)\b/;
export const secured: Statements = {
  matter: matter.secured,
  // It holds.
  neutral:
    /\b(?:ya )?no se (?:me |le )?(?:sale|mueve|zafa|safa|cae|resbala|suelta|despega|afloja|corre|desliza)(?: (?:nada|para nada|ni tantito))?\b/g,
  yes: /^(?:(?:ya |si |todo |esta |quedo |muy |re |super |bien |la |el |sonda |tubo |globo |lo |y |con |cinta |tiene )*(?:list[oa]s?|hecho|asegurad[oa]|pegad(?:it)?[oa]|amarrad(?:it)?[oa]|fij[oa]|fijad[oa]|firme|firmecit[oa]|re firme|llen[oa]|inflad[oa]|ajustad[oa]|sujet[oa]|sujetad[oa]|en su lugar|(?:bien |todo )?puest[oa]|segur[oa]|tapad[oa])(?: (?:y|con|cinta|esta|la|el|quedo|quedaron|muy|re|super|bien|todo|list[oa]|asegurad[oa]|pegad(?:it)?[oa]|fij[oa]|firme|inflad[oa]|llen[oa]|ajustad[oa]|globo|sonda|ya|sujet[oa]|agua|tela|esparadrapo|en|su|lugar|puest[oa]|seguro|segura|agarrad[oa]))*|(?:ya |si )*(?:lo|la) (?:hice|hicimos|llene|infle|pegue|asegure|fije)(?: \w+){0,5}|(?:ya )?(?:le |lo )?(?:hice|hicimos) todo(?: (?:menos|excepto|salvo) (?:el |la |lo )?\w+)?|(?:ya |si |le |la |lo |les )*(?:llene|infle|pegue|asegure|puse|eche|inyecte|amarre|fije|ajuste|sujete)(?: \w+){0,6}|(?:ya )?termin(?:e|amos)|todo (?:bien|en orden|listo|hecho)|ya|ya quedo(?: \w+){0,3}|(?:dale )?esta|hecho(?: \w+){0,4})$/,
  unless:
    /\b(?:pero|aunque|solo que|lo malo)\b(?!.{0,40}\b(?:bien|listo|lista|ya|quedo|todo|toda|tranquil\w*|normal|content\w*|feliz|rapido|mejor|perfecto|jug\w+|com\w+)\b)/,
  no: /\b(?:no (?:me |le |se )?agarra(?= ?$| ?[.,;!]| (?:la |el |bien |nada |con |ni )*(?:agua|cinta|pega|tela|piel|esparadrapo|nada|bien))|desinfl\w+|se (?:vuelve|volvio|sigue) (?:a )?(?:sal\w+|vac\w+|zaf\w+|caer\w*|afloj\w+)|floj[oa]|flojit[oa]|suelt[oa]|aguad[oa]|se (?:me |le |nos )?(?:sale|mueve|resbala|cae|desliza|zafa|safa|suelta|despega|desinfla|afloja|corre|sigue saliendo|viene (?:para |tod[oa]|hacia )?(?:afuera|fuera|tod[oa]))|bail(?:a|ando)|no (?:me )?(?:animo|atrevo) a (?:infl|llen|peg|asegur|fij|poner)\w*|(?:sigo|seguimos|estoy|estamos) (?:llen|pega|infl|hac|trat|intent|busc|prepar)\w+|se (?:me |le )?(?:sigue|anda) (?:resbal|sal|mov|zaf|cay|despeg|afloj)\w+|falta|faltan|todavia no|ya casi|a medias)\b/,
};
/** At "filled, to the stop and taped?": done with all of it, and the parts; a text that names one part leaves the others open. */
export const securedParts = {
  whole:
    /\b(?:list[oa]s?|hech[oa]|termin\w+|completo|(?:lo )?(?:hice|hicimos)|todo(?! (?:el|la|lo de|con) (?:agua|cinta|tela|globo)))\b/,
  filled: /\b(?:globo|balon\w*|llen\w+|infl\w+|\d+(?:\.\d+)? ?(?:mls?|cc)|agua|enjuag\w+)\b/,
  held: /\b(?:cintas?|tela|esparadrapo|pega\w*|pegu\w*|amarr\w+|fij\w+|firme\w*|ajust\w+|sujet\w+|asegur\w+|segur[oa]|tope|topa\w*|topo|en su lugar|jal\w+|agarrad\w*|tapad[oa]|no se mueve)\b/,
  yes: /^(?:si|sip|simon|claro|afirmativo)\b/,
} as const;
export const firstFeed: Statements = {
  matter: matter.firstFeed,
  neutral:
    /\bsin (?:ninguna? )?(?:novedad(?:es)?|pena ni gloria)\b|\b(?:sin|ni) nada(?: de (?:nada|eso))?\b|\b(?:no|ni) (?:se |le |la |lo )*(?:boto|tiro|devolvio|regreso|escupio|arrojo|salio|derramo|lloro|quejo|molesto)(?: (?:nada|ni (?:una )?(?:gota|gotita)|leche|la leche|algo))*\b|\bni una (?:sola )?gota(?: se (?:le )?(?:salio|cayo|tiro))?\b/g,
  yes: /^(?:(?:le |la |el |todo |comida |leche |toma |fue |muy |se |ella |lo |super |primera |alimentacion |esta |salio |paso |quedo |tolero |acepto |recibio |cayo |sento |asento )*(?:bien|ok|perfect[oa]|excelente|super|genial|tranquil[oa]|normal|tolero|cool|chid[oa]|chevere|chill|bacan\w*|padre|tuanis|joya|calidad|cheque|de pelos)(?: \w+){0,4}|de (?:maravilla|lujo|diez|10|pelos|primera|perlas|fabula)|fenomenal|estupend[oa]|(?:ahi (?:la |lo )?|la |lo )?va(?:mos)?(?: muy)? bien|hasta (?:ahora|ahorita)(?: va| todo| muy| vamos)* bien|(?:ya |si )*comio(?: (?:todo|bien|muy bien|rico|y))*|se (?:la|lo) (?:avento|zampo|trago|chupo|acabo) tod[oa]|(?:paso|entro|bajo|fue|cayo|asento|sento) (?:muy |super |re )?(?:bien|todo|toda|tranquil[oa]|perfect[oa]|lent[oa]|despacito|suave\w*)(?: \w+){0,3}|(?:todo )?en orden|optim[oa]|sin (?:ningun |ninguna )?(?:problemas?|novedad|percances?|incidentes?|complicacion(?:es)?|molestias?|inconvenientes?)(?: ningun[oa]| algun[oa])?|(?:y )?(?:eructo|repitio)(?: (?:mucho|bien|un poco|rico|2 veces|una vez))*(?: (?:nada|no) mas)?|(?:[a-z]+ )?(?:no|ni) (?:se |le |la |lo )*(?:quejo|lloro|inmuto|molesto)(?: (?:ni|nada|para|se|poquito|un|pio))*|(?:[a-z]+ )?no (?:se |le |la |lo )*(?:boto|tiro|devolvio|regreso|escupio|arrojo|derramo)(?: (?:nada|ni (?:una )?(?:gota|gotita)|leche|la leche))+|(?:la |lo |le )?tolero(?: bien| muy bien| todo| super bien| perfecto| perfectamente| de lujo| al 100)?|(?:se )?(?:lo |la )?(?:comio|tomo|acabo|termino|echo|zampo|bebio) (?:todo|toda|complet[oa]|enter[oa]|rico|bien|perfecto|sin (?:ningun )?problemas?)(?: \w+){0,4})$/,
  no: /\b(?:todavia no|aun no|mal|no (?:la |lo )?tolero|vomito|horrible|pesimo|no quiso|pare|paramos|tuve que (?:parar|detener))\b/,
};
export const nextDay: Statements = {
  matter: matter.nextDay,
  neutral:
    /\bsin (?:ninguna? )?(?:novedad|cambios?)\b|\b(?:sin|ni) nada(?: de (?:nada|eso))?\b|\bni (?:se |le )?(?:acuerda|acordo|entero|entera|queja|quejo|molesta|dio cuenta|da cuenta)\b/g,
  yes: /^(?:(?:ella |el |la |bebe |nin[oa] |todo |esta |sigue |amanecio |muy |super |re |mas |paso |durmio |la sonda |va |anda |y |se ve |se siente )*(?:bien|bn|ok|okay|perfect[oa]|excelente|super|genial|normal|normalit[oa]|feliz|content\w*|tranqui|tranquil\w*|(?:\d+ ?% ?)?mejor|mejorcit[oa]|jugando|en orden|chid[oa]|chevere|bacan\w*|padre|joya|barbar[oa]|fresc[oa]|enter[oa]|de diez|al 100|activ[oa]|risuen[oa]|estable|afebril|cool|tuanis|cheque)(?: (?!no\b|ni\b|pero\b|aunque\b|menos\b|excepto\b|salvo\b|mal\b|un poco\b|algo\b|medio\b)\w+){0,7}|(?:(?:el |la |su )?(?:sitio|estoma|piel|pielecita|herida|hoyito|agujero|agujerito|orificio|area|zona|alrededor|ostomia|sonda|boton|tubo) (?:esta |se ve |lo veo |la veo |muy |bien |todo |toda |y |e )*(?:limpi|sec|bien|san|normal|integr|intact|perfect|hermos|bonit)\w*(?: (?:y |e |muy |bien |sin secrecion\w* )*(?:limpi|sec|san|normal|integr|intact|perfect|bonit)\w*)*)|(?:(?:amanecio|esta|sigue|anda|todo|va) )*de (?:maravilla|lujo|diez|10)|(?:todo )?(?:al 100|al cien)|(?:durmio|descanso|paso la noche)(?: (?:como|bien|toda|rico|de corrido|tranquil\w*|parej\w*|delicioso|perfecto|sin|a gusto))(?: \w+){0,4}|(?:ya )?(?:anda|esta) (?:corriendo|brincando|gateando|dando (?:lata|guerra|batalla|lora)|peleando|haciendo travesuras|cantando|riendo\w*)(?: \w+){0,4}|(?:aqui |ya )*(?:dando (?:lata|guerra|batalla)|(?:quiere|pide|anda queriendo) (?:jugar|correr|salir|comer|caminar|bajarse|levantarse)(?: \w+){0,4})|tolerando(?: (?:bien|la|el|su|sus|alimentacion|alimento|tomas?|formula|leche|comida|via|oral|enteral|dieta|todo)){1,5}|ahi (?:la |lo )?(?:llevamos|vamos|va)|ahi,? tirando|(?:ya )?(?:salio|quiere salir|se fue) a (?:jugar|correr|la escuela|caminar)(?: \w+){0,3}|como si nada(?: \w+){0,3}|ni se (?:acuerda|acordo)|(?:(?:le )?(?:informo|aviso|comento|digo) que )?(?:la nina|el nino|ella|el|bebe|mi [a-z]+)? ?(?:ya )?(?:paso|tuvo|pasamos|tuvimos) (?:muy |una |toda la )*buena noche(?: \w+){0,3}|(?:paso|pasamos|tuvo) (?:la )?(?:noche )?(?:muy )?(?:bien|buena|tranquil[oa])(?: la noche)?|(?:el |la |su )?(?:vientre|panza|pancita|panzita|barriga|barriguita|abdomen|aposito|parche|gasa)(?: (?:esta|sigue|la tiene|muy|bien|y|todo|toda))* (?:suave|suavecit[oa]|bland[oa]|blandit[oa]|normal|sec[oa]|limpi[oa])(?: (?:y )?(?:suave|bland[oa]|sec[oa]|limpi[oa]))*|mucho mejor|(?:como|igual que) siempre|sin (?:ningun |ninguna )?(?:problemas?|cambios?|novedad(?:es)?))$/,
  no: /\b(?:mal|malit[oa]|peor|enferm[oa]|enfermit[oa]|no (?:esta |amanecio |siguio |sigue |anda |se ve )?(?:muy )?(?:bien|normal|mejor))\b/,
};
export const arrived: Statements = {
  matter: matter.arrived,
  unless: /\bcerrad[oa]\b|\bno (?:nos |la |lo )?(?:dejan|quieren|reciben|recibieron|admiten)\b|\botro hospital\b/,
  // Not going at all is no "not yet".
  neutral:
    /\b(?:ya )?no (?:(?:voy|vamos|pienso|pensamos|quiero|queremos) (?:a |que )?(?:ir|llev\w+|vayamos)|ire|iremos|hace falta (?:ir|llevar\w*)|es necesario (?:ir|llevar\w*)|fue necesario|nos quedamos)\b|\b(?:no|nadie)(?: (?:me|nos|la|lo|le))? (?:hacen? caso|atienden?|ha atendido|han atendido|han? visto|llaman|ha llamado|han llamado|revisan?|pasan)(?: todavia| aun)?\b|\bhace (?:como |unos )?(?:\d+ (?:minutos?|mins?)|(?:un )?rat(?:o|ito))\b/g,
  yes: /^(?:(?:ya |si |nosotros |estamos |estoy |andamos |seguimos |aqui |acabamos de |recien )*(?:llegamos|llegue|aqui|llegar|adentro|en (?:el |la )?(?:hospital|urgencias|emergencias?|sala(?: de \w+){0,2}|er|clinica|triage|triaje|recepcion|admision\w*|observacion|pediatria|consultorio|ventanilla|puerta|entrada|fila)(?: \w+){0,3}|con (?:el|la|un|una) (?:doctor|doctora|medico|enfermera)|(?:sentad|formad|anotad)[oa]s|registrad[oa]s|ingresad[oa]s?)(?: \w+){0,5}|(?:ya )?(?:(?:el|la|los|las|un|una) (?:doctor\w*|medic[oa]s?|enfermer[oa]s?|pediatra|cirujan[oa]) )?(?:ya )?(?:la|lo|le|nos|se la|se lo)(?: ha| han)? (?:estan |esta )?(?:viendo|atendiendo|revisando|checando|poniendo|cambiando|tomando|haciendo|sacando|registrando|anotando|valorando|canalizando|curando|atend\w+|atiend\w+|ingres\w+|intern\w+|vieron|vio|visto|pasaron|paso|pasado|revis(?:o|aron|ado)|chec(?:o|aron|ado)|examin(?:o|aron|ado)|recibi(?:o|eron|do)|pusieron|puso|puesto|cambi(?:o|aron|ado)|coloc(?:o|aron|ado)|meti(?:o|eron|do)|dieron de alta|volvieron a poner|hicieron (?:la |una )?(?:placa|radiografia|estudio))(?: \w+){0,6}|nos tienen (?:aqui |aca |ahi )?esperando(?: \w+){0,4}|(?:(?:aqui|estamos|seguimos|ya) )*esperando (?:a )?(?:que (?:nos|la|lo|le) (?:atiend\w+|llamen|vean|pasen|reciban|revisen|toque)|(?:el |nuestro )?turno|al (?:doctor|medico|pediatra)|a la (?:doctora|enfermera))(?: \w+){0,4}|(?:aqui )?(?:llevamos|llevo) \d+ (?:min\w*|horas?)(?: (?:aqui|esperando|en urgencias|en la sala))*|ya|ya entramos)$/,
  no: /\b(?:en (?:el )?camino|(?:a|por) (?:el )?(?:medio|la mitad del?) camino|ya mer(?:o|ito)|(?:por|a punto de) llegar|ya casi|casi|manejando|en el (?:carro|coche|auto|taxi|bus)|no (?:vamos|voy|hemos|he|fuimos)|(?:apenas|ya) (?:vamos|voy)|esperando (?:a |la |el |un |una |mi )*(?:ambulancia|taxi|remis|colectivo|bus|guagua|micro|combi|buseta|metro|tren|coche|auto|moto|grua|ride|aventon|carro|camion|mama|papa|espos[oa]|suegra|herman[oa]|abuel[oa]|vecin[oa]|cunad[oa]|ti[oa]|prim[oa]|hij[oa]|compadre|comadre|padrino|madrina|amig[oa]|patron|patrona|chofer|jef[ea]|mujer|marido)|atorad[oa]s|trafico|saliendo|(?:recien|apenas|ya|ahora|acabamos de|acabo de) (?:salimos|sali|salir|salgo)(?! (?:del? (?:la |el )?(?:hospital|emergencia|urgencia|consulta|alta|ahi|alli|alla|clinica|doctor)))|sal(?:imos|go|i) de (?:la |mi |nuestra )?casa|en (?:la |mi |nuestra )?casa(?! de)|faltan?|minutos|vamos (?:llegando|en camino|para alla)|(?:ya )?casit(?:o|ico)|todavia no|aun no|estacion\w+|parque(?:o|adero|ando\w*)|parking)\b/,
};
/** Somebody else of the family who has called, however it is turned. */
const otherCalled =
  '(?:(?:mi|su|el|la|nuestra|nuestro) [a-z]+ (?:(?:si|ya|les|los|le|la|las|me|nos|apenas|fue|quien|que|el|hace rato) )*(?:llamo|hablo|aviso|marco|telefoneo|escribio|contacto|agendo|dejo (?:un )?(?:mensaje|recado)|mando (?:un )?(?:mensaje|correo)|saco (?:la |una )?cita|hizo (?:la |una )?cita)|(?:ya )?(?:llamo|hablo|aviso|marco) (?:mi|su|nuestr[oa]) [a-z]+)';

export const clinic: Statements = {
  matter: matter.clinic,
  neutral: new RegExp(
    `\\b(?:yo|nosotros) (?:todavia |aun )?no(?: (?:he podido|pude|fui|llame|he llamado|hable|alcance|los he llamado))?(?=(?: personalmente)?,? ?(?:pero |sino |fue |es que )?${otherCalled}\\b)|\\bno (?:fui|he sido|llame) yo,? ?(?:pero |sino |fue )?(?=${otherCalled}\\b)|\\b(?:nos|lo|la) (?:ven|reciben|atienden|esperan|toca) (?:el |la )?(?:lunes|manana|semana)`,
    'g',
  ),
  yes: new RegExp(
    `^(?:(?:ya|si|fue|pero|no) )*${otherCalled}(?: \\w+){0,8}$|^(?:(?:ya|si|ellos|ellas|de la clinica|la clinica|la enfermera|el doctor) )*(?:me|nos) (?:llamaron|llamo|hablaron|hablo|marcaron|marco|regresaron la llamada|devolvieron la llamada|contestaron|dieron cita|apuntaron|anotaron|agendaron|citaron|programaron|dieron (?:espacio|hora|turno|campo|fecha|chance)|metieron|van a (?:ver|recibir|atender)|veran|esperan|reciben|atienden)(?: \\w+){0,8}$|^(?:(?:ya |si |yo |apenas |les |le |los |la )*(?:llame|llamamos|hable|hablamos|deje (?:un |el )?(?:mensaje|recado|buzon|correo|dicho|avisado|encargado|razon)|hice (?:la |una )?cita|agende|contacte|avise|mande|escribi|saque (?:la |una )?cita|(?:me |nos )dieron (?:la |una )?cita|(?:tengo|tenemos|hay|conseguimos|consegui|sacamos) (?:la |una |su )?cita)(?: \\w+){0,8}|(?:(?:ya|si|me|nos) )*(?:quedo|quedamos|dieron)(?: (?:la|una|cita|de|en|para|que|ir))* (?:el |la )?(?:lunes|martes|miercoles|jueves|viernes|sabado|manana|\\d+|otra semana|proxima semana)(?: \\w+){0,6}|(?:ya )?(?:list[oa]|hecho|agendad[oa])|(?:la )?cita (?:es |esta )?(?:\\w+ ?){1,4}|(?:ya )?saben (?:en|los de) la clinica)$`,
  ),
  no: /\b(?:todavia no|aun no|(?<!\b(?:apuntaron|anotaron|agendaron|agende|citaron|citado|cita|programaron|dieron|hable|hablamos|llegue|vaya|vayamos|lleve|llevemos|traiga|lleguemos|ven|veran|reciben|esperan|toca|tenemos|tengo|quede|quedamos)\b[^.;!?]{0,24})(?<!\b(?:la|esta) )manana|luego|despues|mas tarde|se me (?:olvido|fue|paso)|olvide|solo (?:suena|timbra)|suena y suena|buzon|voy a (?:llamar|hablar)|(?:mi|su|la|el|ella) (?:[a-z]+ )?(?:va a|quedo en|quedo de|dijo que (?:el |ella |iba a )?) ?(?:llam|habl|marc|avis)\w+|no (?:contestan|contesto|contestaron|he|me|hay)|(?:ahora|al rato|manana|luego) (?:los |les )?(?:llamo|hablo|marco)|cerrad[oa]s?|(?<!\b(?:apuntaron|anotaron|agendaron|agende|citaron|citado|cita|programaron|dieron|hable|hablamos|llegue|vaya|vayamos|lleve|llevemos|traiga|lleguemos|ven|veran|reciben|esperan|toca|tenemos|tengo|quede|quedamos)\b[^.;!?]{0,24})el lunes|ocupad[oa])\b/,
};
/** The first feed is put off. */
export const fedLater =
  /\b(?:(?:todavia|aun) no|(?:le )?(?:doy|damos|voy a dar\w*|vamos a dar\w*|empezamos|daremos)(?: \w+){0,3} (?:en la manana|por la manana|manana|mas tarde|al rato|cuando despierte)|mas tarde$|hasta manana$)/;
export const notYet =
  /\bno (?:la|lo) (?:he|hemos) visto\b|\besta con (?:su|el|la) (?:papa|mama|abuel[oa]|tia|otra familia)\b|\b(?:todavia|aun) no\b|\bno (?:le |la |lo )?(?:he|hemos|ha) (?:dado|alimentado|empezado|comido|tomado|probado)\b|\bno (?:ha )?(?:comido|empezamos)\b|(?<!\b(?:bien|perfect[oa]|tranquil[oa]|todo|toda|completo|comio|tomo|termino)\b.{0,30})\b(?:sigue |esta )?(?:dormid[oa]|durmiendo)\b/;
export const notAll = /\b(?:excepto|menos|salvo|solo (?:me )?falta|falta|aparte de|pero no|todo pero)\b/;
export const someTimeAgo =
  /\b(?:antes de (?:dormir|acostar\w*)|(?:a la hora de|en) (?:la )?(?:cena|comida|almuerzo|desayuno|merienda)|(?<!desde )anoche|(?<!desde )ayer|hace (?:un )?rato|(?:esta|en la) (?:tarde|noche|manana))\b/;
export const forgotHow =
  /\b(?:no (?:me )?(?:acuerdo|recuerdo)(?: bien)?(?: de)? como|(?:se me olvido|olvide) como|se me (?:fue|borro|olvido)(?: (?:la onda|el avion|todo|el rollo|lo que))?|ya no (?:me )?(?:acuerdo|recuerdo))\b/;
/** Said of the next step: no sign, whatever the yes before it. */
export const otherMatter =
  /^(?:si,? )?(?:(?:ya|yo|las|la|lo|tengo|tenemos|hay|esta|algunas|unas) )*(?:tiras?|tiritas|papel|pegad[oa]|adentro|dentro|kit|jeringa)[.! ]*$/;
/** The whole answer to "taped and filled?", which a hurried thumb scrambles. */
export const doneWords: readonly string[] = ['listo', 'lista', 'hecho'];
/** One of the facts on file taken out of a yes. */
export const exceptFact =
  /\b(?:menos|excepto|salvo|no|solo|aparte de) (?:el|la|lo de la|lo del) (?:peso|fecha|sonda|tubo|boton|tipo)\b(?! (?:es|esta|sigue) (?:bien|correct\w|igual))/;
export const exception = /\b(?:pero|excepto|menos|solo que|salvo|aunque|aparte de)\b/;
/** All but the fact that is corrected stands. */
export const restIsRight =
  /\b(?:lo demas|el resto|todo lo demas|lo otro)(?:,? (?:esta|sigue|si|es|todo|igual|muy|ya)){0,3} (?:bien|igual|correct[oa]|lo mismo|ok)\b(?<!\bno (?:\w+ )?\w+)/;
export const confirm: Statements = {
  matter: matter.confirm,
  yes: /^(?:(?:todo |esta |eso |los datos |la informacion |si |es |son |estan |se ve |sigue |siguen |muy )*(?:correct[oa]s?|correctisim[oa]s?|cierto|verdad|igual|al dia|exact[oa]s?|exactisim[oa]|actualizad[oa]s?|vigentes?)|(?:todo |esta |estan |si )+(?:perfect[oa]s?|en orden)|(?:si )?(?:es|son) (?:el|ella|ellos|ese|esa|esos|esas|mi hij[oa]|mi nin[oa])|(?:ese|esa|esos|esas) (?:es|son|mismo|misma|mero|mera)(?: (?:mism[oa]s?|mer[oa]s?))?|(?:todo|esta|estan|si|muy|eso)(?: (?:todo|esta|estan|muy|si|eso))* (?:bien|ok|okay)(?: (?:asi|todo|la informacion|los datos|todos los datos|eso|lo que dice|como dice))?|(?:todo |sigue )*igualit[oa]s?|(?:todo |sigue )+igual|(?:de una,? )?(?:es[oa]s? |est[oa]s? )?(?:mism(?:it)?[oa]s?|tal cual)(?: (?:es|son|estan|datos|de siempre|sigue|siguen))*|(?:son |es )?(?:lo|los|la|las) (?:mism(?:it)?[oa]s?)(?: de siempre)?|nada (?:ha )?(?:cambiado|cambio)|sin cambios?|no ha (?:cambiado|cambio)(?: nada)?|no (?:cambiado|cambio) nada|no hay cambios?|(?:todo |sigue |esta |igual |exactamente )*tal cual(?: esta| estan| lo tiene| dice)?|(?:hasta ahora )?no (?:se )?(?:le |les |lo |la )?(?:he|ha|han|hemos) (?:cambiado|movido|modificado|tocado)(?: nada| ni una coma)?(?: (?:a|de|en|sus?|mis?|los|el|la|datos?|ficha|expediente|desde|entonces|ahi|todavia|aun)){0,5}|(?:no (?:hay|veo|tiene)|sin)(?: ningun| un| algun)? error(?:es)?)$/,
  no: /\b(?:no (?:esta |es |son |estan )?(?:bien|correct[oa]s?|cierto|verdad|al dia|igual)|mal|viej(?:it)?[oa]s?|antigu[oa]s?|equivocad[oa]s?|desactualizad[oa]s?|(?<!no (?:ha )?)(?:cambio|cambiado|cambiaron)|diferentes?|incorrect[oa]s?|ya no|falta (?:actualizar|cambiar)|(?:hay|tienen?|veo|traen?|encontre|vi) (?:un |el |otro |algun |unos )?(?:error(?:es)?|dato mal))\b/,
  neutral:
    /,? ?(?:pero |aunque |nomas que )?\b(?:creo|me parece|pienso|se me hace)(?: que)? (?:l[aoe] |ya )*(?:pesaron|pesamos|pesa|peso|pesaba) (?:como |en )?\d[\d.]*(?: pero bueno)?|\bsin cambios?\b|\bnada (?:ha )?(?:cambiado|cambio)\b|\bno (?:ha |a |han |hay |hubo )?(?:cambiado|cambio|cambios)(?: nada)?\b|\bno (?:se )?(?:le |les |lo |la )?(?:he|ha|han|hemos) (?:cambiado|movido|modificado|tocado|hecho)(?: nada| ni una coma)?\b|\b(?:no (?:hay|veo|tiene)|sin|ni un)(?: ningun| un)? error(?:es)?\b/g,
};
/** At "any danger sign?": well, and unwell. */
export const unwell: Statements = {
  matter: matter.unwell,
  strictNo: true,
  no: /\b(?:afebril|eupneic[oa]|(?:ella|el|la|panza|barriga|panci\w*|panzit\w*|barrigu\w*|abdomen|vientre|estomag\w*|bebe|nin[oa]|criatura|todo|esta|se ve|se siente|anda|parece|sigue|luce|hasta ahora|la veo|lo veo|por lo demas)(?: (?:ella|el|esta|se|ve|siente|muy|tod[oa]|super|bastante|estar|totalmente|perfectamente|la|lo|mi|bebe|nin[oa]|hij[oa]|de lo mas|tiene|y))* (?:bien(?= ?$| ?[.,;!?]| (?:gracias|y|e|ella|el|la|lo|mi|su|hasta|ahora|ya|todo|toda|de|del|por|a|en|con|para|desde|porque|solo|nomas|nada|pero|dentro|como|sin|no|ni|aqui|aca|durmiendo|jugando|content\w*|tranquil\w*|despiert\w*|activ\w*|feliz|risuen\w*|rosad\w*|comod\w*|calmad\w*|normal\w*|gordit\w*|dormid\w*|doctora?|jefa|dios|bendito|despues|gracia)\b)|bn|normal|normalit[oa]|tranqui|tranquil[oa]|tranquilit[oa]|content[oa]|contentit[oa]|feliz|risuen[oa]|rosadit[oa]|activ[oa]|despiert[oa]|perfect[oa]|jugando|dormid[oa]|dormidit[oa]|durmiendo|fresc[oa] como una lechuga|(?:mas )?fresc[oa] que una lechuga|sonriendo|riendo\w*|comod[oa]|calmad[oa]|como si nada|estable|igual(?:it[oa])?(?: que (?:antes|siempre))?|bland(?:it)?[oa]|depresible|suave(?:cit[oa])?|hidratad[oa]|como siempre|viendo (?:la )?tele\w*|cantando|platicando)|(?:respir\w*|color|piel)(?: (?:y|muy|color|respir\w*|de|esta|tiene|buen))* (?:bien|normal|rosad\w*)|(?:las|los) (?:3|tres) no|todo bien|^(?:(?:la|lo) veo )?igual(?:it[oa])? que (?:antes|siempre)|(?:anda|esta) de (?:buenas|buen humor)|le veo (?:bien|buena)(?: la)? (?:cara|carita|color\w*)|todo en orden|todo normal|todo (?:bonito|chido|chevere|tranqui|bello|calmado|perfecto|excelente|cool)|sin cambios?|^(?:sigue |esta )?(?:como|igual que) siempre|^(?:bien|normal|tranquil[oa])$|ningun[oa]s?|^ningun problema|nada de (?:eso|lo anterior|nada|esto)|nada(?! mas\b)|no (?:tiene|hay|le veo|veo|presenta|noto) (?:nada|ningun\w*)(?: de (?:eso|esos|esas|esto|ellos|ellas|los|las|lo)\b.*)?|ahora no|por ahora no|que yo (?:vea|note|sepa|haya visto) no|no que yo (?:vea|note)|se (?:durmio|volvio a dormir|quedo dormid[oa])(?: (?:tranquil[oa]|bien|ya|luego|rapido))*|(?:duerme|dormid[oa]|tranquil[oa]),? (?:y )?(?:duerme|dormid[oa]|tranquil[oa]|content[oa]|bien)|(?:panz\w*|panc\w*|barrig\w*|estomag\w*|vientre|abdomen) no (?:la |lo )?(?:esta|tiene|trae|se le ve|se ve|se siente)(?: (?:muy|tan|nada|ni|la))* (?:dur[oa]|hinchad[oa]|inflamad[oa]|inflad[oa]|tens[oa])|sin (?:ningun )?(?:problemas?|sintomas?|molestias?|novedad))\b/,
  neutral: /\bsin (?:ningun )?problemas?\b|\b(?:no )?que yo (?:vea|sepa|note|haya visto)\b/g,
};
export const notWell =
  /\b(?:(?:no (?:esta|se ve|se siente|anda|la veo|lo veo|parece|luce|esta actuando|respira)) (?:\w+ )?(?:bien|normal|tranquil[oa]|muy bien)|(?:muy|bien|super|tan) (?:mal|enferm[oa]|mala|malit[oa])|(?:esta|se ve|anda|la veo|lo veo|se puso|se siente) (?:mal|malit[oa]|peor|grave|enferm[oa])|peor|empeor\w*|se (?:me |nos )?(?:esta )?(?:muere|muriendo)|se (?:me|nos) (?:va|esta yendo)(?: se (?:me|nos) va)* (?:mi|el|la) (?:nin|beb|hij|nen)\w+|emergencia|grave|mal[oa] color)\b/;
/** A question of theirs after a statement, with or without its mark. */
export const asksToo =
  /\b(?:debo|debemos|deberia|sera (?:bueno|mejor)|(?:lo|la) (?:despierto|dejo)|hace falta) ?(?:despertar\w*|dormir|dejar\w*|llevar\w*|darle|esperar)?\b/;
/** Nothing but doubt. */
export const onlyUnsure =
  /^(?:(?:pues|este|mmm|ay|la verdad|yo|ok|creo que) )*(?:no (?:estoy|estamos) (?:muy |tan )?segur\w*|no (?:lo )?se|no sabria|no sabemos|ni idea|quien sabe|a lo mejor|quizas?|tal vez|puede ser|tengo dudas?|dudo|con duda|en duda)(?: (?:la verdad|bien|si|perdon|ahorita))*[.!?]*$/;
/** A tube that may have made its own way. */
export const wrongWay =
  /(?<!\bno (?:se |esta |siente |sentir |fue |es )*)\b(?:debajo|abajo|bajo) (?:de )?(?:la|su) piel\b|\b(?:en )?(?:mal lugar|otro lugar|lugar equivocado|otro hoyo|mal sitio)\b|\bno (?:se|estoy segur\w*|creo|sabemos)(?: (?:si|que|de|la|lo|le|quedo|esta|este|entro|bien))* (?:en (?:su|el) (?:lugar|estomago|sitio)|en el (?:lugar|sitio) correcto)\b/;
/** Nothing to measure with says nothing of the child. */
export const noThermometer =
  /\b(?:no (?:tengo|tenemos|hay|encuentro)(?: (?:un|el|ningun))? termometros?|sin termometro|no (?:le|la|lo) (?:he|hemos) (?:tomado|medido|checado)(?: la temperatura)?)\b/g;
/** Words of trouble taken back. */
export const notSoBad =
  /\b(?:mi|la|el|su) (?:mama|papa|espos[oa]|marido|suegr[oa]|abuel[oa]|herman[oa]|cunad[oa]|ti[oa]|prim[oa]|vecin[oa])(?: (?:es|la|el|que|fue|se|me|esta|anda|ya|tambien|si|puso)){1,6} (?:muy |bien |super )?(?:mal|malit[oa]|grave|enferm[oa]|peor)\b|\b(?:yo )?(?:estoy|ando|me (?:siento|puse|pongo|senti)) (?:yo |muy |bien |super |re |tan |peor que )*(?:mal|malit[oa]|enferm[oa]|peor)\b|\b(?:no (?:es|esta|hay|se ve|parece|veo|(?:la|lo|le) (?:veo|noto|siento))?|ni|sin|nada) ?(?:una |nada |muy |tan |de )*(?:emergencia|peor|mal|grave|enferm[oa])\b|\bkit de emergencias?\b/g;
export const fedLately: Statements = {
  matter: matter.fedLately,
  yes: /^(?:(?:apenas |acaba de |acabo de |acabamos de |recien |le |la |lo |yo |se |ya |justo )*(?:termin\w+|acab\w+) (?:de )?(?:comer|su |la |el |una )?(?:toma|leche|biberon|comida|alimentacion|bomba|medicina|medicinas)?|(?:apenas |acaba de |acabo de |acabamos de |recien |acababa de |apenitas |ratito |le |la |lo |yo |se |ya |justo |hace (?:poco|poquito|nada|un rato|un ratito|ratito|unos minutos) )*(?:comio|comer|comiendo|tomo|tomar|di|dimos|dio|dar(?:le)?|alimente|alimentamos|desayuno|ceno|almorzo)(?: \w+){0,6}|(?:ahora |justo |apenas |todavia |mismo |aun )*(?:esta |estaba )(?:comiendo|conectad[oa]|con la (?:bomba|alimentacion))(?: \w+){0,6}|(?:su |la )?(?:bomba|alimentacion|leche) (?:esta|estaba|acaba)(?: \w+){0,6}|(?:todavia |ahora |si )*(?:tiene|tenia|le tengo|le puse|sigue con|esta con) (?:la |su )?(?:bomba|alimentacion|leche|formula) (?:puesta|conectada|corriendo|pasando|prendida)(?: \w+){0,3}|estaba (?:corriendo|pasando)(?: (?:la|su|el))? (?:bomba|alimentacion|leche|formula)|(?:estaba |iba )?a (?:media|la mitad de la|la mitad de su) toma|(?:(?:si|un|una|unas|unos|solo|nomas|algo|tantit[oa]|poquit\w+|poco|poca|de|nada mas|le di|le dimos|tomo) )*(?:lechit[oa]|leche|formula|gelatina|jugo|jugito|suero|te|cucharadit\w+|medicina|jarabe)(?: (?:nomas|nada mas|no mas|para enjuagar\w*|de \w+|por la boca|en la boca|hace (?:poco|poquito|nada|ratito|un ratito)|ahora|con \w+)){0,3})$/,
  no: /\b(?:nada(?! mas\b)|hace (?:varias |muchas )?horas|hace mucho|desde (?:anoche|ayer|la (?:cena|tarde|manana|noche|comida)|el (?:almuerzo|desayuno))|anoche|ayer|no (?:ha|le|la|lo|he|hemos) (?:\w+ ?)?(?:comido|dado|tomado|alimentado)?|en ayunas|ayuno)\b/,
};
/** What is given on other days, or is due, tells nothing of the last hour. */
export const notGiven =
  /\b(?:le toca|le tocaba|normalmente|suele|por lo general)\b|\b(?:enfermera|ninera|abuela|suegra|mama|papa|senora|cuidadora) (?:(?:lo|la) (?:tuvo|cuido)|estuvo|estaba|se fue|salio|trabajo)\b/;
/** A no that opens the text. */
export const startsNo = /^(?:no|nop|nope)\b/;
export const airFirst = /\b(?:aire|primero|al principio)\b/;
export const looksNo =
  /^(?:no(?! (?:se|estoy|puedo|alcanzo|traigo|encuentro|quiero|quiere|contest\w+|hay luz|tengo (?:mis|lentes|luz|linterna)|me (?:deja|dejan|atrevo|animo))\b| (?:es|esta|se ve|parece|sale)(?: \w+){0,2} (?:amarill\w*|transparente|clar[oa]|verde\w*|roj\w*|rosad\w*|agua|negr[oa]),? (?:sino|es|mas bien|se ve|pero|parece|mas))|nop|nope|nada que ver|para nada)\b/;
/** Right before a colour: it does not look so. */
export const notLooking =
  /\b(?:no|nada|ni|sin)(?: (?:es|esta|se|ve|parece|muy|tan|nada|de|para|un|una|color|como|la|el|que|sale|salio))* ?$/;
