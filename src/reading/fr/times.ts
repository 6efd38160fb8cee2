/** French for how firmly a length of time was said, and for what a moment or a date belongs to. */
/** Between the counts of one span: "2 ou 3 semaines", and after its unit: "une heure ou 2". */
export const spanJoin = '-|\\ba\\b|\\bou\\b|\\bet\\b|\\bpeut etre\\b|\\bvoire\\b|\\bou meme\\b';
export const spanTail = 'ou|a|-|voire';
/** Between the parts of one span: "2 ans et 3 mois". */
export const spanAnd = /^,? ?(?:et )?$/;
/** What "une couple", "quelques" and "plusieurs" can mean, low to high (common practice, no source). */
export const vague: Readonly<Record<string, readonly [number, number]>> = {
  couple: [2, 3],
  quelques: [2, 4],
  quelque: [2, 4],
  qq: [2, 4],
  plusieurs: [3, 8],
  dizaine: [10, 10],
  douzaine: [12, 12],
  quinzaine: [14, 15],
  vingtaine: [20, 20],
  trentaine: [30, 30],
  quarantaine: [40, 40],
};
/** After a span: it lies in the past. */
export const ago = /^ (?:derniere?s?|passee?s?)/;

/** A little more than is named. */
export const justOverBefore = /\b(?:un (?:tout )?(?:petit )?peu|a peine|guere) plus (?:de |d ?)(?: ?(?:une?|la))?\s*$/;
export const atLeastBefore =
  /(?:>|\b(?:plus (?:de|que)|au moins|minimum|au dela de|depasse|un peu plus de|pas moins de|largement|passe))(?: (?:de|le|la|les))?\s*$/;
export const atLeastAfter =
  /^ ?(?:\+|et (?:plus|quelques?|des poussieres|un peu|demie?)\b|ou plus\b|au moins\b|minimum\b|bien (?:tasse\w*|sonne\w*)\b|passe\w*(?: de)?$)/;
export const lessBefore =
  /(?:<|\b(?:moins (?:de|que)|meme pas|pas (?:meme|plus de)|a peine|maximum|max|au plus|au maximum|pas encore|tout juste))(?: (?:de|les?|la))?\s*$/;
export const roughBefore =
  /\b(?:environ|env|autour de|vers|presque|pres de|a peu pres|peu pres|genre|peut etre|je crois|je pense|crois|pense|quasi\w*|dans les|probablement|disons|je dirais|dirais|bientot|approximativement|grosso modo|il me semble|me semble|comme|facile|facilement|quelque chose comme|aux alentours de)(?: (?:que|cetait|cest|fait|y a|depuis|de|les|le|la|ca|doit|faire))*\s*$/;
export const roughAfter =
  /^ ?(?:environ|env\b|a peu pres|peut etre|je crois|je pense|je dirais|approximativement|plus ou moins|genre|grosso modo|a vue de nez|quelque chose comme ca|ou quelque chose|par la)/;
export const roughAnywhere =
  /\b(?:pas sure?|sais pas|sais plus|pas exactement|rappelle pas|souviens pas|approximativement|plus ou moins|je crois|je pense|environ|il me semble)\b/;

/** A child's age, not a time ago. */
export const age =
  /\b(?:(?:elle|il|qui|bebe|fille|fils|enfant|petite?|garcon|on) )?(?:(?<!\by )a(?! peu)|avait|agee? de|aura|vient d avoir|(?:fille|fils|bebe|enfant|garcon|petite?|gamine?|jumeaux|jumelles?|nourrisson|loulou|puce|prematuree?) de|va avoir|age de|age) (?:environ |presque |bientot |maintenant |juste |deja |peine )*(\d+(?:\.\d+)?)(?: ?(?:-|a|ou|et) ?(\d+))?[ -]?(ans?|mois|semaines?|sem|jours?|j)\b(?: et (?:demie?|\d+ mois))?(?! (?:que|de pose|quelle|qu)\b)|\b\d+ (?:ans|mois|semaines) (?:d age|de age)\b/g;

export const outWords =
  /\b(?:sorti\w*|sort|sortir|tombe\w*|enleve\w*|arrache\w*|retire\w*|tiree?|partie?|sautee?|ejecte\w*|expulse\w*|delogee?|perdue?(?! (?:connaissance|conscience|ses couleurs|du (?:sang|poids)|beaucoup de sang))|decroche\w*|glisse\w*|dehors|degagee?|lache\w*|arrivee?)\b(?! (?:avec|aux?|a|dans) (?:(?:la|le|les) )?(?:ordures|poubelles?|bennes?|dechets?|dechetterie|recyclage|encombrants|vidanges)\b)/;
export const seenWords =
  /\b(?:vue?|vu|vus|voyais|y etait|etait (?:encore |toujours |bien )*(?:la|dedans|en place|dans|bonne|ok)|encore (?:la|en place|dedans)|en place|verifiee?|verifie|controle\w*|regardee?|toujours (?:la|en place|dedans)|remarquee? qu?e? ?etait (?:la|en place))\b/;
/** The same told beside something else. */
export const toldOutWords = outWords;
export const toldSeenWords = seenWords;
export const foundWords =
  /\b(?:trouvee?|retrouvee?|decouverte?|decouvert|rendu compte|apercue?s?|constatee?|constate|remarquee?|en (?:me |se )?reveillant|reveillee?s?|au reveil|en rentrant|rentree? (?:du|de la|de le)|vu que (?:elle|ca|la sonde|le bouton) (?:etait|est) (?:sorti\w*|plus|tombe\w*|partie?|dehors))\b/;
/** How long the child has been ill is no time of the tube. */
export const illSince =
  /\b(?:rien (?:de |qui a )?(?:neuf|9|nouveau|change|bouge)|fievre|temperature|vomi\w*|toux|tousse|grippe|rhume|diarrhee|malade|infection|antibiotiques?|douleurs?|pleure)(?: (?!sonde\b|tube\b|bouton\b)\w+){0,2} (?:depuis|pendant|toute|tout)\b[^,.;!?]*/g;
/** A time at which something is due, and where what is said of it ends. */
export const dueEnd = /[;!?]|[.,](?!\d)|\bmais\b|\bdonc\b/;
export const dueTime =
  /\b(?<!\bsonne pour (?:ses|son|sa|le|la|les) )(?:medicaments?|medocs?|medoc|dose|doses|insuline|traitement|cachets?|comprimes?|sirop|antibio\w*|prevue?|doit (?:avoir|prendre|recevoir))\b/;
export const quarterMonths = '3 mois';
export const quarterYear = /\b(?:un )?trimestre\b/;
/** The child was placed with a family, not the tube. */
export const childPlaced = /\bplacee? (?:chez|en famille|dans (?:notre|ma|une) famille|avec nous)\b.*$/;
/** Firm enough to take a date from where no date was asked for. */
export const placedFirmly =
  /\b(?:(?:gastro\w*|stomie|trou|orifice|bouton|sonde|peg) (?:a |lui |ete |est |fut )*(?:faite?|cree?e?|realisee?|ouverte?|pratiquee?)|posee?|pose|placee?|place|mise? en place|mise? (?:en|y a|le|au|lors|depuis|pendant)|on (?:lui|le|la) a mis|inseree?|installee?|operation|operee?|chirurgie|implantee?|gastrostomisee?|(?:elle|il|on|bebe) (?:le |la )?a (?:sa|son|une|un|le|la|cette|ce)? ?(?:premiere? )?(?:sonde|tube|bouton|gastro\w*|peg|gpe)? ?(?:que )?depuis|(?<=\bfait (?:juste |que |a peine |deja )?)\d+ [a-z]+ que (?:elle|il) (?:a|porte) (?:la|le|sa|son|une|un) (?:sonde|tube|bouton|gastro\w*)|(?:porte|a) (?:sa|son|une|un) (?:sonde|tube|bouton|gastro\w*) depuis|premiere? (?:sonde|tube|bouton|pose|fois)|a eu (?:sa|son|une|un) (?:premiere? )?(?:sonde|tube|bouton|gastro\w*))\b/;
export const placedWords =
  /\b(?:posee?|pose|placee?|place|mise?|mis|inseree?|installee?|operation|operee?|chirurgie|implantee?|premiere?|depuis|fait|eu|eue|y a|stomie|orifice|trajet|au debut|initiale?|intervention|bloc|a (?:sa|son|cette|le|la)|faite?|recu|recue|ouverture|trou)\b/;
export const firstWords =
  /\b(?:premiere?|1ere?|1er|toute premiere|origine|initiale?|initialement|au (?:tout )?debut|operation|operee?|chirurgie|stomie|orifice|trajet|intervention|tout debut|la base)\b/;
export const changeWords =
  /\b(?:change\w*|changement|remplace\w*|remplacement|nouvelle?|nouveau|2e|2eme|deuxieme|seconde|3e|3eme|troisieme|4e|quatrieme|celle[ -](?:la|ci)|celui[ -](?:la|ci)|actuelle?|derniere? (?:sonde|tube|bouton|une?|en date|pose|changement)|la derniere(?! fois)|renouvel\w*|echange\w*)\b/;
/** A feed that only tells which time is meant. */
export const besideFeed =
  /\b(?:(?:quand|lorsque|en|pendant que|apres que|apres avoir) )?(?:(?:jai|je|on|a|nous|avons|ai|lui) )*chang\w+ (?:(?:la|sa|les|une|le|son|ses|de) )*(?:couches?|body|pyjama|draps?|lit|vetements?|habits|linge)\b|\b(?:pour|pendant|avant|apres|vers|lors de) (?:le|la|son|sa|un|une|les|ses) (?:\w+ )?(?:repas|biberon|medicaments?|nutrition|gavage|tetee|gouter|dose)\b(?: d(?:e|u) (?=minuit|midi|\d))?|\bapres (?:avoir )?(?:mange|manger|boire|bu|dejeuner|diner|souper)\b/g;
export const fedWords =
  /\b(?:nourrie?|mange\w*|(?<!\bau )biberon|bib|bu|boit|tetee?|(?<!\bau )gavage|gave|(?<!\bau )repas|alimente\w*|alimentation|(?<!\bsonne pour (?:ses|son|sa|le|la|les) )(?:medicaments?|medocs?|dose)|lait|bouillie|sirop|nutrition)\b/;
/** "Quand elle avait 3 mois": a time only a birth date could place. */
export const byAge =
  /\bquand (?:elle|il|le bebe|bebe|mon \w+|ma \w+|on) (?:etait|avait|est nee?|a eu|est ne)(?: (?!,)[a-z0-9]+(?:\.\d+)?){0,6}|\b(?:a|depuis|des|apres|de) (?:la |sa )naissance\b|\bdepuis (?:que (?:elle|il) (?:est (?:nee?|bebe|petite?|toute petite?)|a \d+)|toujours)(?: [a-z0-9.]+){0,3}|\b(?:a le|a l|a) age de \d+(?:\.\d+)? (?:mois|semaines?|jours?|ans?)\b|\b(?:posee?|placee?|mise?|operee?|faite?) a (?:environ )?\d+(?:\.\d+)? (?:mois|semaines?|jours?|ans?)\b(?: de vie)?|\ba (?:environ )?\d+(?:\.\d+)? (?:mois|semaines?|jours?|ans?)(?: de vie)\b|^a (?:environ )?\d+(?:\.\d+)? (?:mois|semaines?|jours?|ans?)$|\b(?:tout )?(?:bebe|nourrisson|nouveau[ -]ne)\b|\ben neonat\w*\b|\bavant (?:ses|ces|son|sa) \d+(?:er)? (?:ans?|mois)\b|\ba la naissance\b|\bpas (?:en )?(?:19|20)\d\d\b|(?<!\b(?:sais|sait|suis|est|rappelle|souviens|connais|sommes) )\bpas (?:en |au mois de )?(?:janvier|fevrier|mars|avril|mai|juin|juillet|aout|septembre|octobre|novembre|decembre)\b(?: (?:19|20)\d\d)?(?! ou\b)|\bjai (?:dit|mis|ecrit|tape) (?:en )?(?:19|20)\d\d\b(?=.*(?:19|20)\d\d)/g;
/** Right before a length of time: the child's age then. */
export const ageThen =
  /\b(?:avait|age de|(?:posee?|placee?|mise?|operee?|faite?|eue?) a)(?: (?:environ|a peu pres|juste|presque|peut etre))*\s*$/;
/** Right before a birth: what follows tells when the tube was placed. */
export const whenBorn = /\b(?:quand|lorsque|depuis(?: que)?|des(?: que)?|apres|a la)(?: \w+){0,2} $/;
export const unknown =
  /\b(?:pas (?:sure?|certaine?)|(?:sais|sait|savons|rappelle|souviens|souvient|connais) (?:pas|plus|nplus|vraiment pas|rien|absolument pas|meme pas|trop pas)|sais trop|aucune idee|pas idee|pas la moindre idee|oublie\w*|inconnue?|incertaine?|difficile a dire|dur a dire|pas vu|jamais vu|pas (?:vue|remarque)|etais pas la|etait pas la|etions pas|dormait|dormais|dormaient|dormions|en dormant|pendant (?:la nuit|son sommeil|que)|dans la nuit|durant la nuit|pendant la nuit|qui sait|peux pas (?:te |vous )?dire|saurais pas|impossible (?:a|de) (?:dire|savoir))\b/;
/** "Dans dix minutes" is to come. */
export const coming = /\b(?:dans|d ici)(?: environ| les prochaines)?\s*$/;
/** At the facts on file, words that say that a date told is the placing's. */
export const aboutPlacing =
  /\b(?:date|posee?|pose|mise?|sonde|premiere?|operation|cetait|operee?|tube|bouton|chirurgie)\b/;
/** The first hole closed and another was made: only what is said after that counts. */
export const newHole =
  /^.*\b(?:referme|rebouche)\w*\b[^.!?]{0,40}?\b(?:nouveau|nouvelle|autre)(?: (?:trou|orifice|stomie))?\b/;
