/** Spanish for a rehearsal: asked for, over, or denied. The text has no accents, apostrophes or marks. */

const greeting = '(?:(?:hola|por favor|ok|bueno|buenas|buenos dias|buenas (?:tardes|noches)|oiga|disculpe) )*';
const doing =
  '(?:practicar(?:lo|la)?|ensayar(?:lo|la)?|(?:(?:hacer|tener|empezar) )?(?:una |un |la |el |otra |otro )?(?:practica|ensayo|simulacro))';
/** What may come up while practising is named as such: it is not said to have come. */
const supposed =
  '(?:(?: (?:para|por si|si|cuando|que hacer|lo que hay que hacer|en caso de que))+(?: (?:el|la|su|una?|mi))?(?: (?:tubo|sonda|boton))?(?: se)?(?: (?:le|me|nos))?(?: (?:sale|salga|cae|caiga|saliera))?(?: (?:el|la|su))?(?: (?:tubo|sonda|boton))?)?';
const when =
  '(?: (?:por favor|un rat(?:o|ito)|un (?:poco|poquito)|tantito|una vez|otro rato|con calma|(?:que )?no es (?:de verdad|real|en serio|de veras)|como si (?:se )?(?:le )?(?:hubiera|hubiese|hubiere) (?:salido|caido|zafado|quitado)(?: (?:la|el|su) (?:sonda|tubo|boton))?|ahora|ahorita|hoy|otra vez|de nuevo|con (?:usted|ustedes|la linea|esto)|gracias|(?:con|para) (?:mi|la|el|una?)(?: nuev[oa])? (?:mama|papa|espos[oa]|marido|nin?era|abuela|suegra|hermana|familia|tia|cuidadora)|lo (?:del?|de la) (?:sonda|tubo|boton)|no (?:ha )?pas(?:o|ado) nada|no se (?:le )?(?:ha )?(?:salio|salido|cayo|caido) (?:nada|la sonda|el tubo|el boton)|nada se ha salido|todo esta bien|(?:la|lo) tiene puest[oa]|no hay ninguna emergencia))*';

/** The wish, as the whole text. */
export const wish = new RegExp(
  `^${greeting}(?:(?:yo |nosotros )?(?:quiero|queremos|quisiera|quisieramos|puedo|podemos|podria|podriamos|necesito|necesitamos|se puede)|(?:me|nos) gustaria|vamos a)(?: solo)? ${doing}${supposed}${when}$|^${greeting}(?:practicar|ensayar|(?:una |un )?(?:practica|simulacro|ensayo))${when}$`,
);
/** Practice of something else. */
export const otherPractice =
  /\b(?:practica|entrenamiento|ensayo)s? de (?:futbol|beisbol|natacion|musica|baile|coro|banda|danza|basquet\w*|karate)\b/g;
/** It is over, as the whole text. */
export const over =
  /^(?:(?:ok|ya|bueno|por favor|gracias|la|el|quiero|queremos|vamos a) )*(?:(?:practica|ensayo|simulacro) (?:(?:ya )?(?:esta )?(?:terminad[oa]|termino|acabo|se acabo))|(?:terminar|terminamos|termine|termino|acabe|acabo|se acabo|se termino|finaliz\w+|parar|dejar|acabar|acabamos|no mas) (?:de |con |la |el |nuestra |nuestro |este |esta )*(?:practica|practicar|ensayo|ensayar|simulacro))(?: (?:ya|ahora|por favor|gracias))*$/;
/** No rehearsal, or perhaps none. */
export const real =
  /\b(?<!\b(?:no es|no fue|no va|nada) (?:nada |algo |cosa )?)(?:real|de ?veras|de verdad|en serio|verdader[oa]|realmente|ambulancia|911)\b|\b(?<!(?:kit|tubo|sonda|bolsa|caja|mochila) de )emergencias?\b|\b(?:no|ya no|nunca) (?:es |era |fue |estamos |estoy |esta )*(?:una? |la |el |de |ningun[oa]? |mas )*(?:practica\w*|ensay\w*|simul\w*|prueba|broma\w*|fingi\w*)\b|\bahor(?:a|ita) si\b/;
/** Words for a rehearsal, whatever is said of it. */
export const named = /\b(?:practic\w*|ensay\w*|simulacros?|fingi\w*)\b/;
