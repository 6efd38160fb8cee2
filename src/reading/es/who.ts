/** Spanish for who is writing: a relation to the child said of oneself, and answers to whether somebody else texts already. */

const relation =
  '(?:bis)?(?:abuelit[ao]|abuel[ao]s?|abue|yaya|yayo|tias?|tios?|prim[ao]|herman[ao]|madrina|padrino|comadre|compadre|vecin[ao]s?|niner[ao]|nana|canguro|enfermer[ao]|maestr[ao]|profesora?|cuidador[a]?|mama|papa|mami|papi|madre|padre|madrastra|padrastro|tutora?|amig[ao] de (?:la )?(?:familia|su mama|la mama))';
const ownTo = '(?:nietos?|nietas?|nietecit[ao]|nietit[ao]|sobrin[ao]s?|sobrinit[ao]|ahijad[ao]s?|alumn[ao])';

/** Says it of whoever writes. The text has no accents or apostrophes. */
export const saysWho = new RegExp(
  `\\b(?:soy|somos|es|aqui|habla|hablo|escribe|escribo|le escribe|le habla)(?: (?:yo|la|el|los|las|su|una?|de|otra|otro|como)){0,3} ${relation}\\b(?! (?:que|le|se|la|lo) )` +
    `|\\b(?:mi|mis) ${ownTo}\\b` +
    '|\\b(?:es|por) (?:el )?mismo caso\\b|\\b(?:este|ahora) (?:es|escribo (?:de|desde)) (?:el|del) (?:cel\\w*|telefono|movil|numero) de (?:mi|la|un)\\b|\\b(?:del|desde el) (?:cel\\w*|telefono|movil) de mi\\b|\\b(?:soy yo|yo) otra vez\\b' +
    '|\\b(?:(?:estoy|estaba|ando) )?(?:cuidando|cuido) (?:a|de|al) \\w+|\\b(?:yo )?(?:la|lo) (?:estoy )?cuid(?:o|ando)\\b',
);

/** What is missing where it is named without digits. */
export const number = /\b(?:numeros?|telefonos?|celular|movil|digitos)\b/;
export const lost = /\b(?:olvid\w+|perdi\w*|borre)\b/;
/** Somebody else, in a statement of its own. */
export const wrote =
  /^(?:(?:si|creo que|pues) )*(?:mi|su|la|el|nuestr[oa]) \w+ (?:ya )?(?:(?:les|le|te|os) )?(?:escribio|ha escrito|mando|esta escribiendo|contacto)(?: (?!no\b)\w+){0,5}$/;
/** Nobody else. */
export const onlyMe =
  /\b(?:(?:solo|solamente|nomas|unicamente) (?:estoy |ando |soy )?yo|estoy (?:yo )?(?:sol[oa]|solit[oa])|yo (?:solo|nomas)|soy (?:la|el) (?:primer[ao]?|unic[ao])|nadie)\b/;
