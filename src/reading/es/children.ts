/** Spanish for which child it is: taking a name back, none of them, and more than one. */

export const no = 'no|nop';
export const takeBack = 'espere?|perdon|perdone|disculpe|en realidad|quise decir|quiero decir|me equivoque|digo';
export const itIs = '(?:es(?: el| la)?(?: de)?|era|se trata de|por|para)';
/** Between two names, one of which is meant. */
export const or = 'o|u';
export const not = '(?:no es|no era|no|ni|tampoco)(?: (?:es|de|del|la|el|por)){0,3}';
const child =
  '(?:(?:nin|hij|sobrin|niet(?:ec)?|vecin|prim|herman|amigu)(?:it)?[oa]|bebe(?:cito|cita)?|ahijad(?:it)?[oa])';
export const none = `^(?:(?:(?:no )?es |son )?(?:de |para |por )?ningun[oa]?(?: de (?:ellos|ellas|los (?:2|3|dos|tres|cuatro|4)|las (?:2|3|dos|tres|cuatro|4)|esos|esas|mis hijos))?|nadie|ni un[oa] ni otr[oa]|ni el un[oa] ni el otr[oa]|otr[oa](?: (?:nin[oa]|hij[oa]))?|es otr[oa](?: nin[oa])?|no es (?:de )?(?:mis? hij[oa]s?|mi[oa]s?|ningun[oa]))(?:,? (?:es|son|cuido a|estoy cuidando a)(?: (?:el|la|un|una|mi|a))* ${child}(?: (?:\\w+ ?){1,4})?)?[.! ]*$`;
/** Said of a child after the name: not the one this is about. */
export const well =
  '(?:esta|sigue|anda) (?:\\w+ )?(?:bien|dormid[oa]|durmiendo|tranquil[oa]|en la escuela|con la suya|puest[oa])|duerme|ni se (?:mueve|la toca|lo toca)|ni (?:la|lo) toca|no (?:se )?(?:la|lo) (?:toca|jala)|(?:la|lo) tiene (?:puest[oa]|bien)|se porta bien';
/** Another child, told by one of the family's; said of the writer it is the caller. */
export const relative = {
  before:
    '(?:herman(?:it)?[oa]|gemel(?:it)?[oa]|prim(?:it)?[oa]|amig(?:uit)?[oa])(?: (?:mayor|menor|chic[oa]|grande))? de(?:l| la| el)?',
  after: '(?!)',
};
export const caller = 'soy|soy la|soy el|habla|habla la|habla el';

const other = '(?:hij|nin|gemel|melliz|herman)(?:it)?[oa]';
/** More than one child with a tube; one of twins is one. */
export const several = [
  // "Leo se la saco, Milo esta bien": the one who is well is no second one.
  '(?<!\\bun[oa] de (?:mis|los|las) )\\b(?:gemel|melliz)(?:it)?[oa]s\\b(?!.{0,90}\\b(?:(?:el|la) otr[oa]|(?!(?:ella|el|lo|la|todo|bebe|nin[oa]|piel|hoyo|sonda|boton|y|si|ya|que|no|pero|ahorita|ahora|respiracion)\\b)[a-z]+) esta (?:muy )?bien\\b)',
  `\\b(?:amb[oa]s|l[oa]s 2|mis 2) (?:${other}s|bebes|sondas)\\b`,
  `\\botr[oa] ${other} (?:\\w+ ){0,4}(?:sonda|boton)\\b|\\bsonda de(?:l| mi| la) otr[oa] ${other}\\b`,
  `\\bno (?:la|el|lo) de mi (?:otr[oa] )?${other}\\b`,
  `\\bde mi ${other} tambien\\b|\\btambien (?:\\w+ ){0,4}de mi ${other}\\b`,
].join('|');
/** Where words that are names as well are said as words of every day. */
export const common =
  '(?:(?:no|ni|sin|hay|poca|mala|buena|con|tengo|tenemos) (?:hay |tenemos |tengo |llega |vino |una |la |poca |buena |mucha )*|(?:fue|va|corto|cortaron|quitaron|regreso|volvio|llego|prend[a-z]+|apag[a-z]+|encend[a-z]+|a) (?:la )?|de la )luz|(?:el|al|del|de|puro|mucho) sol|(?:mi|santo|al|del) cielo|en paz|(?:la|con|tengo|hay|sin|ni) esperanza|(?:con|tiene|los|muchos|sin|por|unos|hay|tuvo) dolores|(?:ay|por|santo) jesus|(?:color|color de|es|esta|ve|medio|algo|muy) rosa|el salvador|(?:en|desde|hasta|\\d+ de|principios de|mediados de|fin(?:al)?(?:es)? de) (?:abril|mayo|julio|agosto)';
/** Another child of the family, whose tube it is. */
export const another =
  /\b(?:a|de|es|para|por) (?:mi|nuestr[oa]) otr[oa] (?:hij[oa]|hijit[oa]|nin[oa]|nene|nena|bebe|chiquit[oa])\b/;
/** At the facts on file: they are another child's. */
export const wrongChild =
  /\bno (?:es|se llama) (?:su nombre|ese? (?:nin[oa]|nombre)|mi (?:hij[oa]|nin[oa]))\b|\bno se llama asi\b|\b(?:otr[oa]|equivocad[oa]) (?:nin[oa]|hij[oa]|nombre|bebe)\b|\b(?:nin[oa]|hij[oa]|nombre|bebe) equivocad[oa]\b|\bno es (?:el|ella)(?= ?(?:$|[.,!]))/;
/** Between the name and what the child is to the one it is about. */
export const isThe = '(?:es |era )?(?:el|la|su|mi)';
/** Another name said instead of one. */
export const itIsOther = /\bno,? es (?:a )?(\p{L}+) (?:el|la|al) que\b/u;
