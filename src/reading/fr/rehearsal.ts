/** French for a rehearsal: asked for, over, or denied. The text has no accents, apostrophes or marks. */

const greeting = '(?:(?:bonjour|bonsoir|salut|svp|stp|sil vous plait|s il vous plait|ok|alors) )*';
const doing =
  '(?:(?:s ?|m ?|nous )?(?:entrainer|exercer)|(?:essayer|tester)(?: (?:la|cette|votre|le) (?:ligne|numero|service))?|pratiquer|repeter|(?:faire |commencer |lancer )?(?:un |une |l ?)(?:petite? )?(?:exercice|entrainement|repetition|pratique|simulation|essai)(?: pour (?:s ?|m ?|nous )?(?:entrainer|exercer))?)';
/** What may come up while practising is named as such: it is not said to have come. */
const supposed =
  '(?:(?: (?:pour|au cas ou|si|quand|quoi faire|ce qu ?il faut faire|savoir))+(?: (?:la|le|sa|son|une?))?(?: (?:sonde|bouton|tube))(?: (?:sort|sortait|tombe|tombait|s ?enleve))?)?';
const when =
  '(?: (?:svp|avant d ?en avoir besoin|entre (?:collegues|nous|parents|amis|infirmieres)|avec (?:les|des|mes) collegues|juste|un (?:petit )?peu|un moment|une fois|stp|sil vous plait|s il vous plait|maintenant|ce soir|aujourdhui|encore|avec vous|avec la ligne|merci|avec (?:mamie|papi|maman|papa|(?:la|ma|mon|le|une?)(?: nouvelle)? (?:nounou|mari|femme|mere|pere|belle mere|gardienne|soeur|famille))|rien (?:n ?)?est sorti(?: pour de vrai| en vrai)?|rien ne sest passe|cest (?:juste|seulement) pour (?:s ?|m ?|nous )?(?:entrainer|exercer)))*';

/** The wish, as the whole text. */
export const wish = new RegExp(
  `^${greeting}(?:(?:est ce qu ?)?(?:on|nous) (?:peut|pourrait|voudrait|veut|voudrions|souhaite|souhaiterait|voulons|pouvons|pourrions|aimerait|aimerions)|(?:est ce que )?je (?:peux|veux|voudrais|pourrais|souhaite)|j ?aimerais|je souhaiterais|peut on|puis je|pouvons nous) (?:juste |seulement |bien )?${doing}${supposed}${when}$|^${greeting}(?:(?:ceci|ce|c) ?est )?(?:juste |seulement |uniquement )*(?:un |une |pour un )(?:exercice|entrainement|simulation)(?: (?:on|nous|je)(?: (?:s|m|nous))? ?(?:sentraine|mentraine|entraine|entrainons|exerce|exercons|teste|essaie))?${when}$|^${greeting}(?:un )?(?:exercice|entrainement|faire un exercice|faire un entrainement)${when}$`,
);
/** Practice of something else. */
export const otherPractice =
  /\b(?:pratique|repetition|entrainement)s? (?:de |du |d ?)(?:foot\w*|hockey|soccer|natation|musique|danse|chorale|basket\w*|judo|gym\w*|theatre)\b/g;
/** It is over, as the whole text. */
export const over =
  /^(?:(?:ok|merci|svp|l|on|nous|je|veux|veut|peut|voudrais) ?)*(?:(?:la |l ?)?(?:exercice|entrainement|pratique|simulation) (?:est )?(?:terminee?|finie?)|(?:a |ai |j ?ai |avons )?(?:fini|termine|terminee?) (?:avec |de )?(?:la |le |notre |cet |cette |l ?|nous |s ?|m ?)?(?:exercice|entrainement|entrainer|pratique|pratiquer|simulation)|(?:arreter|arrete|arretez|terminer|finir) (?:l ?|cet |de (?:s ?|m ?)?)?(?:exercice|entrainement|entrainer))(?: (?:maintenant|svp|stp|merci))*$/;
/** No rehearsal, or perhaps none. */
export const real =
  /\b(?:reel(?:le)?(?:ment)?|pour de (?:vrai|bon)|en vrai|c ?est vrai|serieux|serieusement|ambulance|samu|911)\b|\bvraiment(?: \w+){0,4} (?:sorti\w*|tomb\w*|parti\w*|arrach\w*|enlev\w*|besoin|mal)\b|\b(?:sorti\w*|tombe\w*)(?: \w+){0,2} vraiment\b|\b(?<!(?:kit|trousse|sonde) d )urgences?\b|\b(?:pas|plus|jamais|aucun) (?:un |une |de |d |l |en train de |du tout )*(?:d ?)?(?:exercice|entrainement|entrainer|entraine|repetition|simulation|simulacre|test|jeu|blague)\b|\b(?:ne|on ne|je ne|nous ne) ?(?:nous |m ?|s ?)?entrain\w+ (?:pas|plus)\b/;
/** Words for a rehearsal, whatever is said of it. */
export const named = /\b(?:d ?|l ?)?(?:exercices?|entrain\w*|repetition|simulation)\b|\b[sm]entrain\w*\b/;
