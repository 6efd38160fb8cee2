/** French for which child it is: taking a name back, none of them, and more than one. */

export const no = 'non|nan';
export const takeBack =
  'attend(?:s|ez)?|pardon|desolee?|en fait|je voulais dire|je veux dire|erreur|je me suis trompee?';
export const itIs = '(?:cest(?: pour)?|il sagit de|pour|cetait)';
/** Between two names, one of which is meant. */
export const or = 'ou(?: bien)?';
export const not = 'pas(?: pour)?|cest pas|ce nest pas';
const child = '(?:fils|fille|petite?|enfant|bebe|neveu|niece|voisine?|filleule?)';
export const none = `^(?:c(?:est)? (?:un|une|le|la) (?:\\w+ ){0,5}(?:qui|il|elle) est pas (?:sur|dans|de) (?:la|votre|cette|ta) liste|aucune?(?: des (?:deux|trois|quatre|\\d))?|personne (?:de|sur) (?:la|votre|cette) liste|(?:pas|absente?) (?:de|sur|dans) (?:la|votre|cette) liste|(?:cest |ce est |il s agit de |ce n est |est )*(?:pas )?aucune? (?:dentre|de|d) ?(?:eux|elles|ces 2|ceux la|celles la)|personne|ni (?:l |le )?une? ni (?:l |le )?autre|une? autre(?: enfant)?|cest une? autre(?: enfant)?|(?:cest |il est |elle est )?pas (?:une? )?(?:des |de )?(?:miens|miennes|mes enfants|mon enfant)|(?:pas|absente?|il est pas|elle est pas)(?: \\w+)? (?:de|sur|dans) (?:la|votre|cette|ta) liste)(?:,? (?:cest|je garde|jai)(?: (?:le|la|l|un|une|ma|mon|mes|celle|celui))* (?:petite? )?(?:${child}|copine?|copain|amie?|cousine?)(?: [\\w-]+){0,9})?[.! ]*$`;
/** Said of a child after the name: not the one this is about. */
export const well = '(?:dort|va (?:tres )?bien|est (?:\\w+ )?(?:au lit|tranquille|couchee?|a l ecole))';
/** Another child, told by one of the family's; said of the writer it is the caller. */
export const relative = {
  before: '(?:soeur|frere|jumeau|jumelle|cousine?|copine|copain|amie?)(?: (?:aine|ainee|jumelle|cadette?))? (?:de|d)',
  after:
    '(?:va (?:tres )?bien|a rien|n a rien|dort),? (?:non,? |mais |la |ici )*(?:c ?est|pour|il s agit de) (?:pour )?(?:son|sa|le|l|la) ?(?:frere|soeur|autre|jumeau|jumelle)',
};
export const caller = 'suis|suis la|suis le|suis sa';

const other = '(?:fils|fille|jumeau|jumelle|frere|soeur|enfant|bebe)';
/** More than one child with a tube; one of twins is one. */
export const several = [
  // "Leo l'a arrachee, Milo va bien": the one who is well is no second one.
  '(?<!\\bune? (?:de|des) (?:mes |nos )?)\\bjum(?:eaux|elles)\\b(?!.{0,90}\\b(?:(?:le )?autre|(?!(?:elle|il|ca|cela|tout|bebe|enfant|peau|trou|sonde|bouton|et|mais|qui|ne|on|ventre)\\b)[a-z]+) va (?:tres )?bien\\b)',
  `\\b(?:les|mes|nos) 2 (?:${other}s?|sondes)\\b`,
  `\\bautre ${other} (?:\\w+ ){0,4}(?:sonde|bouton)\\b|\\bsonde de (?:mon|ma|l) ?autre ${other}\\b`,
  `\\bpas (?:celle|celui) de (?:mon|ma) (?:autre )?${other}\\b`,
  `\\bde (?:mon|ma) ${other} aussi\\b`,
].join('|');
/** Where words that are names as well are said as words of every day. */
export const common =
  '(?:en|depuis|debut|fin|mi|\\d+) (?:avril|mai|juin|juillet|aout)|(?:est|liquide|un peu|tout|toute|couleur) rose';
/** Another child of the family, whose tube it is. */
export const another =
  /\b(?:de|a|pour|cest|est) (?:mon|ma|notre) (?:autre (?:fils|fille|enfant|bebe|petite?|garcon)|(?:2e|deuxieme|second) (?:fils|enfant))\b/;
/** At the facts on file: they are another child's. */
export const wrongChild =
  /\bpas (?:son nom|son prenom|le bon (?:enfant|nom|prenom)|la bonne (?:enfant|fille)|mon (?:fils|enfant|bebe)|ma fille)\b|\b(?:autre|mauvais) (?:enfant|nom|prenom|fils|bebe)\b|\bpas (?:lui|elle)(?= ?(?:$|[.,!]))/;
/** Between the name and what the child is to the one it is about. */
export const isThe = '(?:cest |est |etait )?(?:le|la|son|sa|mon|ma)';
/** Another name said instead of one. */
export const itIsOther = /\bnon,? c.?est (\p{L}+) (?:qui|dont)\b/u;
