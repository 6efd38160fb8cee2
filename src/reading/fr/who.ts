/** French for who is writing: a relation to the child said of oneself, and answers to whether somebody else texts already. */

const relation =
  '(?:arriere[ -]?)?(?:mamie|mamy|papi|papy|meme|memere|pepe|pepere|grand[ -]?(?:mere|maman|pere|papa)|grands[ -]?parents|belle[ -]?mere|beau[ -]?pere|tante|tata|tatie|oncle|tonton|cousine?|soeur|frere|marraine|parrain|voisine?|nounou|nourrice|baby[ -]?sitter|assistante maternelle|infirmiere?(?: scolaire| de l ?ecole)?|maitresse|maitre|instit|prof|aide[ -]soignante?|auxiliaire|maman|papa|mere|pere|tuteur|tutrice|amie? de (?:la famille|sa maman|sa mere))';
const ownTo = '(?:petite?s?[ -]?(?:filles?|fils|enfants?)|nieces?|neveux?|filleule?|eleve)';

/** Says it of whoever writes. The text has no accents or apostrophes. */
export const saysWho = new RegExp(
  `\\b(?:cest|c est|je suis|jsuis|chuis|ici|moi cest)(?: (?:la|le|les|l|sa|son|ses|une?|juste)){0,2} ?(?:l(?=infirm|instit|oncle|assist|auxil|aide))?${relation}\\b(?! (?:qui|que|a) )` +
    `|^(?:(?:bonjour|bonsoir|allo|salut) )?(?:infirmiere? scolaire|nounou|mamie|papi)(?: ici)?,` +
    `|\\b(?:ma|mon|mes) ${ownTo}\\b` +
    '|\\b(?:cest|c est) (?:encore|toujours|de nouveau) moi\\b|\\b(?:cest|c est|pour) le meme (?:cas|dossier)\\b|\\b(?:cest|c est|sur|avec|depuis|par) (?:le )?(?:tel|telephone|portable|numero) de (?:ma|mon|la|un)\\b' +
    '|\\bje (?:la |le )?garde\\b(?! (?:la sonde|le tube|le bouton|mon calme))|\\bje m ?occupe de \\w+',
);

/** What is missing where it is named without digits. */
export const number = /\b(?:numeros?|num|telephones?|tel|portable|chiffres)\b/;
export const lost = /\b(?:oublie\w*|perdue?|efface\w*|retrouve|(?:pas|plus|nplus) (?:son|le|leur|ce|les|ses|de))\b/;
/** Somebody else, in a statement of its own. */
export const wrote =
  /^(?:(?:oui|ouais|je crois que|ben) )*(?:mon|ma|sa|son|la|le|notre) \w+ (?:(?:vous|t|a|l) ?)*(?:deja )?(?:a )?(?:deja )?(?:ecrit|texte|contacte|envoye)(?: (?!pas\b)\w+){0,5}$/;
/** Nobody else. */
export const onlyMe =
  /\b(?:(?:juste|que|seulement) moi|je suis (?:la|le) (?:premiere?|seule?))\b|^(?:non,? )?personne\b(?! (?:svp|maintenant|vite|humaine))|\bpersonne (?:n|na|ne|d ?autre)\b/;
