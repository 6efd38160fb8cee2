/** French for the tube: its kind, its state, and what it looks like. Generic words only, no makers' names. */

/** Kinds by name, tried in this order; what one has read the next no longer sees. */
export const gj =
  /\b(?:(?:sonde |tube |bouton |type |une |un |la |le )?g ?[-/]? ?j\b(?!\d)|(?:sonde |bouton |tube )?gastro ?-?jejun\w*|(?:sonde |bouton )?gastro ?-?j\b|gastrojej\w*|g et j|trans ?-?gastrique|gastrostomie (?:jejunale|avec (?:une |la )?(?:branche|partie|extension|sonde|prolongation) jejunale)|jejunale? (?:par|via|dans) (?:la |le |sa )?(?:gastro\w*|bouton)|peg ?-?j|gpe ?-?j|(?:double|2) (?:voies?|lumieres?)|combinee?)\b/g;
export const jFirm = /\b(?:(?:sonde|tube|bouton|type|une|cest la|cest un) (?:de )?j|jejunostomie|jejuno)\b/g;
export const j =
  /\b(?:(?:sonde |tube |bouton )?(?:de )?jejunostomie|(?:sonde |tube |bouton |type )j|jejuno?|jejunale?|jejunostom\w*|(?:direct\w*|droit|drette|juste|seulement|uniquement) (?:dans |a )?(?:le )?(?:intestin|grele|jejunum)(?:,? (?:rien|pas|et pas|et rien|sans passer) (?:dans |par )?(?:le )?estomac)?|(?:dans |a )(?:le |son )?(?:intestin|grele|jejunum) (?:seulement|uniquement|directement|direct)(?:,? (?:le )?estomac (?:on |elle |ca )?(?:y )?(?:touche|va|passe) (?:pas|jamais))?)\b|(?<![-/\d] ?)\bj\b/g;
export const noseFirm =
  /\b(?:s ?n ?[gjd]|sng|snj|naso ?-?\w+|(?:sonde |tube )?(?:nasale?|nasal)|(?<!\b(?:saign|coul|mouch)\w*(?: \w+)? )(?:dans|par|du|de) (?:le |son |sa )?(?:nez|narine)|(?<!\b(?:saign|coul|mouch)\w*(?: \w+)? du )nez)\b(?! (?:est |tout |toujours |un peu |bien |pas mal )*(?:bouchee?|qui coule|coule|siffle|encombree?|morve|pris|rouge|sec|sale))/g;
export const nose =
  /\b(?:s ?n ?[gjd]|sng|snj|ng|(?:sonde |tube )?naso ?-?\w*|(?:sonde |tube )?nasale?|nez|narines?)\b(?! (?:est |tout |toujours |un peu |bien |pas mal )*(?:bouchee?|qui coule|coule|siffle|encombree?|morve|pris|rouge|sec|sale))/g;
export const gFirm =
  /\b(?:(?:sonde|bouton|tube|kit|orifice|tuyau|catheter) (?:de |d )?(?:gastro(?:stomie)?|gastr\w*stom\w*)|gastrostomie\w*|gastrostomi|gastrotomie|(?:le|la|son|sa|un|une|mon) gastro|gpe|peg|bouton gastrique|g[ -]?tubes?|(?:sonde|tube|type|bouton) (?:de )?g(?= ?(?:$|[,.!?]|\w{2,}|a \d))|cest (?:une?|la) g(?= ?(?:$|[,.!?])))\b/g;
export const g =
  /\b(?:(?:sonde|bouton|tube|tuyau|catheter) (?:de |d )?(?:gastro(?:stomie)?|gastr\w*stom\w*)|gastrostomie\w*|gastrostomi|gastrotomie|gastrosto\w*|gastro|gpe|peg|bouton gastrique|(?:juste|seulement|que|uniquement) (?:dans |vers )?(?:le )?estomac|(?:ca|elle|il|sonde) va (?:direct|directement|droit|drette) dans (?:le |son )?estomac(?! et )|(?<=(?:^|,) ?|\b(?:bouton|sonde|tube|va|arrive|simple|classique|normale?) )(?:tout )?(?:direct|directement|drette|droit) (?:dans|a) (?:le |son )?estomac\b(?! et )|dans (?:le )?estomac (?:seulement|uniquement|juste)|(?:pour|dans) (?:le |son )?estomac,? (?:et )?(?:rien de autre|pas (?:dans )?(?:le |les )intestins?)|(?:sonde|tube|type|bouton) (?:de )?g)\b|(?<!\d ?)\bg\b/g;

/** Words for a tube of either kind: a G may be a button or have a balloon, and so may a GJ. */
export const eitherKind =
  /\b(?:boutons?|button|low ?-?profile|profil bas|bas profil|(?:sonde|tube) a ballon\w*|(?:dans|de) (?:le )?(?:estomac|ventre)|(?:du|au) ventre)\b/;

const partly =
  '(?:a moitie|a demi|en partie|partiellement|a peine|un peu|un petit peu|pas (?:completement|entierement|totalement|tout a fait|toute?)|presque|aux (?:trois|3) quarts|moitie)';
const out = '(?:sorti\\w*|dehors|retiree?|enlevee?|arrachee?|partie?|delogee?|tiree?|ressorti\\w*|degagee?|deboitee?)';
const inside =
  '(?:dedans|a le interieur|rentree?|dans (?:le|son|sa) (?:ventre|trou|estomac|orifice)|en place|dans (?:elle|lui)|a linterieur)';
/** Half out in words firm enough to be believed unasked. */
export const halfOutFirm = new RegExp(
  `\\b(?:${partly} ${out}|${out} (?:qu |que |seulement |juste )?${partly}|(?:a )?moitie ${inside}|a moitie (?:${out}|${inside})|moitie dehors|(?:encore|reste|restee?|toujours|est) (?:un peu |a moitie |en partie |un bout |partiellement |encore )+${inside}|(?:un bout|une partie|la moitie|le bout)(?: \\w+){0,4} (?:encore |toujours |reste |est )+(?:${inside}|dehors|sorti\\w*)|(?:que|juste|seulement) (?:un bout|la moitie|une partie)|(?:sorti|sortie|glisse|glissee|ressorti|ressortie|bouge|recule|tiree?) de (?:\\d|quelques|plusieurs)(?:\\.\\d+)? ?(?:cm|centimetres?|mm)?|pendouille\\w*|pend (?:a moitie|encore|dehors)|(?:ballon\\w*|boule) (?:\\w+ ){0,2}(?:depasse|visible))\\b`,
  'g',
);
export const halfOut = new RegExp(
  `\\b(?:${partly} ${out}|${out} (?:qu |que |seulement |juste )?${partly}|${partly}(?: ${inside})|a moitie|moitie moitie|moitie|mi sortie|(?:encore|reste|restee?|toujours)(?: un peu| a moitie| en partie| un bout| partiellement)* ${inside}|(?:un bout|une partie|la moitie|le bout(?! dedans (?:fait|mesure)))(?: \\w+){0,4} (?:${inside}|dehors|sorti\\w*)|(?:que|juste|seulement) (?:un bout|la moitie|une partie)|(?:sorti|sortie|glisse|glissee|ressorti|ressortie|bouge|recule|tiree?) de (?:\\d|quelques|plusieurs)(?:\\.\\d+)? ?(?:cm|centimetres?|mm)?|pendouille\\w*|pend\\b|qui pend|commence a sortir|en train de sortir|(?:${out}) (?:un peu|un petit peu|legerement|en partie)|pas (?:completement|entierement|totalement|tout a fait)|depasse|tient (?:a peine|encore|plus que))\\b`,
  'g',
);

/** In a first text: a tube that is not out, or not all of it. */
export const stillIn = new RegExp(
  `\\b(?:sonde|bouton|tube|elle|il|ballon|bout)(?: est| reste)? (?:encore|toujours)(?: un peu| a moitie)? ${inside}\\b|\\bque le bout\\b|\\bde (?:1|2|3|\\d|quelques) (?:cm|centimetres?)\\b|\\b(?:sonde|bouton|tube) (?:ressort|sort|depasse|pend)\\b(?! pas)|\\bremi(?:s|se) (?:dedans )?mais\\b(?! (?:(?:ca|cela|cetait|etait|a|ete|fut|tres|assez|super|vraiment|un|peu|pas|on|jai|ai|il|elle|force|du) )*(?:dure?|durement|difficile\\w*|facile|complique|galere|penible|force|pousser?|forcer)\\b)`,
);
/** Whatever it was before: "changée pour une gj". */
export const changedTo =
  /\b(?:chang|remplac|pass)\w* (?:\w+ )?(?:pour|par|en|a) (?=.*\b(?:g|j|gj|g-j)\b)|\b(?:avant|au debut|au depart|dabord) (?:cetait|elle avait|il avait|on avait|avait)\b.{1,40}?\b(?:maintenant|la|depuis|aujourdhui|ensuite|apres)\b(?=.*\b(?:g|j|gj|g-j|gastro\w*)\b)|\b(?:pensais|pensait|croyais|croyait|disais|aurais dit)\b.{1,40}?\bmais\b(?=.*\b(?:g|j|gj|g-j|gastro\w*|jejun\w*)\b)/;
/** A kind, or the state half out, taken back: "pas une gj". */
export const notThat =
  /\b(?:(?:pense|crois) pas que (?:ce soit |cest |soit )?(?:une? |la )?|(?:pas|non|ni|jamais|et non)(?: (?:un|une|la|le|de|du|sa|son|d|vraiment|juste|encore|bouton|sonde|celle|celui|dans|par|au))*|pas sorti(?:e)? )\s*$/;

export const manyParts =
  /\b(?:(?:2|3|4|plusieurs|deux|trois|double|2 ou 3|quelques)(?: \w+)? ?(?:ports?|entrees?|embouts?|trous|bouchons?|orifices?|ouvertures?|voies|raccords?|connecteurs?|branches|tubulures?|capuchons?|valves?|sites?|acces))\b/;
export const onePart =
  /\b(?:(?:1|un|une|seule?|unique)(?: seule?| \w+)? ?(?:port|entree|embout|trou|bouchon|orifice|ouverture|voie|raccord|connecteur|branche|capuchon|valve|site|acces))\b|^(?:juste |seulement )?(?:1|un|une)(?: seule?)?$/;
export const longInside =
  /\b(?:(?:tres |super |assez |vraiment |trop |plus |bien |une? )?(?:long(?:ue)?s?|longs?)(?! ?temps)|intestins?|jejunum|descend (?:loin|bas|profond)|grele|(?:\d{2}) ?(?:cm|centimetres))\b/g;
export const shortInside =
  /\b(?:courte?s?|petite? (?:tube|tige|bout|partie)|[1-5](?:\.\d)? ?(?:cm|centimetres?)|tres petite?)\b/g;

/** Where a G ends, as nobody says of a GJ. */
export const gByPlace =
  /\b(?:va|arrive|entre|rentre|tombe|passe|donne|finit|direct|directement|drette) (?:(?:direct|directement|droit|drette|juste|seulement|que) )*(?:dans|a) (?:le |la |son |sa )?(?:estomac|ventre|bedaine|bedon|bide)\b(?! et )/;

export const unsure =
  /\b(?:pas (?:sure?|certaine?)|(?:sais|sait|rappelle|souviens|connais|connait|vois) (?:pas|plus|nplus|meme pas|vraiment pas|rien|trop pas)|sais trop|aucune idee|pas idee|peut etre|(?:je (?:crois|pense|suppose|dirais)|crois|pense)\b(?!.{0,80}\b(?:oui sure?|cest sure?|sure? et certaine?|jen suis (?:sure?|certaine?))\b)|probablement|sans doute|possible|surement|inconnue?|(?:jamais|pas|rien) (?:ete )?(?:dite?|explique\w*|precise\w*|appris|note\w*|ecrite?|marquee?|indique\w*)|ignor\w*|(?:peux|saurais) pas (?:(?:vous|te|le|la) )*dire|\bjy (?:comprends?|connais|pige|capte) rien|laquelle|lequel|quelle difference|cest quoi|qui sait|comment (?:savoir|je sais|voir)|difficile a dire|on dirait|il me semble|me semble)\b/;

/** A device word that is none of the above, as in "c'est une sonde machin". */
export const deviceForm =
  /^(?:(?:cest|cetait|elle a|il a|on a|jai|je crois|appelle|appele|ca se appelle|un|une|le|la|sa|son|sorte de|genre de|type|modele|marque|de|du) )*([a-z][a-z-]{3,})(?: ([a-z-]{3,}))?$/;
export const deviceNoun = /\b(?:(?:sonde|tube|bouton|catheter|dispositif|modele|tuyau|bouton) \w+|catheter|tuyau)\b/;
/** Words that stand after "sonde" without naming a kind, or make up an answer that names no device. */
export const noDevice =
  /\b(?:alimentation|de|du|des|le|la|les|sa|son|un|une|ma|mon|notre|pour|dans|qui|que|est|etait|a|se|sorti\w*|tombe\w*|enleve\w*|arrache\w*|ventre|estomac|vieux|vieille|neuf|neuve|nouveau|nouvelle|normale?|habituelle?|meme|oui|ouais|non|nan|ok|daccord|quoi|pourquoi|comment|qui|quand|ou|hein|aide\w*|svp|merci|bonjour|bonsoir|allo|venez|viens|vite|peur|infirmiere|docteur|medecin|hopital|sais|pas|dur|dure|facile|bien|bon|bonne|mal|elle|il|elles|vous|tu|voyez|rouge|bleue?|blanche?|jaune|verte?|clair|plastique|long|longue|court|courte|petite?|gros|grosse|attend\w*|desolee?|et|mais|pleure|sang|fache|savez|juste|nourrir|normal|transparent\w*|complet|complete|entiere?|avec|sans|ballon\w*|maman|papa|bebe|fille|fils|maintenant|celle|celui|voila|alors|encore|toujours|tout|toute|rien|aucune?|idee|peut|etre|crois|pense|gastrique|digestive|ca)\b/;

const tubeBroken =
  'creve\\w*|eclate\\w*|perce\\w*|explose\\w*|fui\\w*|fuite\\w*|degonfle\\w*|dechire\\w*|troue?\\w*|casse\\w*|vide|a plat|pisse\\w*|crache\\w*|goutte\\w*|fuyard\\w*|pschit\\w*|mort|fendue?|abime\\w*|petee?|pete|brisee?|brise|foutue?|mort|hs|endommage\\w*|defectueux|fissuree?|(?:eau|ca) (?:sort|gicle|coule|ressort)|(?:tient|gonfle|remplit|garde|se gonfle|se remplit|marche|fonctionne|reste) (?:pas|plus|nplus)|gonfle (?:(?:que|seulement) )?(?:de un (?:seul )?cote|mal|de travers|a moitie)|pas (?:bon|ok|gonfle|intact|entier|bien)|se est (?:creve|vide|degonfle|perce|dechire)|flasque|tout mou|ramollo|(?:reste|est) plat|prend (?:pas|plus|nplus) le eau|perdu (?:son|de le) eau';
export const burst = new RegExp(
  `\\b(?:(?:ballon\\w*|boule)(?: (?!dans\\b|ok\\b|bon\\b|bien\\b)\\w+){0,4} (?:${tubeBroken})|(?:creve|eclate|perce|dechire|degonfle|troue|casse|abime|trou dans le|fuite (?:au|dans le|du)|trou au) (?:le )?(?:ballon\\w*|boule)|(?:un|des|petits?) trous? (?:du|sur le|de le|au) (?:ballon\\w*|boule)|(?:eau|ca) (?:me |se |lui )?(?:echappe|suinte|gicle|pisse|degouline)\\b(?! (?:pas|plus|nplus)\\b)|y a (?:un |des |plein de )(?:petits? |minuscules? )?trous? dedans|(?:eau|ca|tout) (?:re)?(?:ssort|sort|gicle|coule|goutte|suinte|pisse|echappe)(?: (?!pas\\b|nplus\\b)\\w+){0,3} (?:du|de le|par le|autour du) (?:ballon\\w*|boule)|plus de (?:ballon\\w*|boule)|pas de (?:ballon\\w*|boule)|(?:il|elle|qui) est (?:toute? )?(?:trouee?|explosee?)|ca fuit|fuit|fuite|creve|crevee|perce|percee|eclate|eclatee|degonfle|degonflee|(?:veut|peut|arrive) (?:pas|plus|nplus) (?:se |a |le )*(?:gonfler|regonfler)|(?:gonfle|tient) (?:pas|plus|nplus)|se vide(?! pas))\\b`,
  'g',
);
/** Said not to be long, or to have no long part. */
export const notLong =
  /\b(?:pas|sans|aucune?) (?:de |la |une |un |partie |bout |tres |si |du tout |ete |trop )*(?:long(?:ue)?)\b/g;
/** Nobody has looked at it yet. */
export const notLookedAt =
  /\b(?:pas|jamais|nplus) (?:encore |eu le temps de |bien )*(?:regarde\w*|verifi\w*|control\w*|teste\w*|examine\w*|inspecte\w*)|\bpas (?:le courage|le temps|la force|envie|ose|osee?|eu le (?:courage|temps))(?: \w+){0,3} ?(?:regarder|verifier|controler|tester|toucher|ouvrir)\b|\bsans (?:regarder|verifier)\b/;
export const tubeLost =
  /\b(?:(?:chien|chat|chiot) (?:\w+ ){0,2}(?:parti|sauve|barre|enfui|pris|enterre)|jetee?|jete|bazardee?|poubelle|ordures|recyclage|dechetterie|benne|dechets?|toilettes?|wc|chiottes|cuvette|egouts?|lavabo|broyee?|aspiree? par|perdue?|perdu|(?:trouve|retrouve|retrouvee?|trouvee?) (?:pas|plus|nplus)|(?:pas|plus) (?:re)?trouve\w*|introuvable|disparue?|mache\w*|mordue?|mange\w*|(?:ai|a|avons|avez|jai|on a) (?:pas|plus|nplus)(?: la| le| de)?(?: vieille| ancienne?| sonde| tube| bouton)*$|(?:pas|plus|nplus) (?:avec (?:moi|nous)|ici|gardee?|la sonde|le bouton|le tube|sous la main)|restee? (?:a|chez|au|dans)|laissee? (?:a|chez|au)|oublie\w* (?:a|chez|au)|en (?:morceaux|mille morceaux|(?:2|deux)(?! (?:secondes?|minutes?|temps)\b))|coupee?|cassee? (?:en|net)|(?:bout|morceau)(?: \w+){0,3} (?:manque|casse|reste|arrache|parti)\w*|il manque (?:un|une)|manque (?:un|une) (?:bout|morceau|partie)|hopital (?:la|le|a|garde|a garde)|ballon\w* (?:\w+ ){0,2}(?:detachee?|arrachee?|parti|tombe)|(?:chien|chat)(?: \w+){0,3} (?:pris|mange\w*|attrape\w*|mache\w*|vole\w*|bouffe\w*|a))\b/g;
/** Damage to more than the balloon: such a tube goes nowhere. */
export const damaged =
  /\b(?:fissuree?|dechiree?|fendue?|cassee?|casse|brisee?|abimee?|abime|endommage\w*|fondue?|tordue?|pliee?|craquee?|petee?|rompue?|sectionnee?|foutue?)\b/g;
/** Said of it beside a yes: somebody has to look at it again. */
export const tubeDoubtful =
  /\b(?:mordue?|mordillee?|ecrasee?|pliee?|coudee?|jaunie?|tachee?|rayee?|moisie?|usee?|abimee?|(?:air|semble|parait) (?:\w+ )?(?:bizarre|drole|vieux|vieille|use|molle?|mou))\b/;
/** Said not to be whole. */
export const notWhole =
  /\b(?:pas|plus|nplus) (?:tres |vraiment |tout a fait |toute? )?(?:entiere?|complete?|intacte?)\b/;
export const tubeWhole =
  /\b(?:entiere?|intacte?|en (?:1|un) (?:seul )?morceau|complete?|(?:ballon\w*|elle|il|sonde|tube|bouton|ca|tout|toute)(?: (?:est|etait|toujours|encore|tout|la|sonde|ballon\w*|bouton|tube|et|tres|en|etre|de|se))* (?:bien|bon|bonne|ok|nickel|correcte?|bon etat|parfait\w*|gonfle (?:bien|toujours|encore)|gonfle|gonflee|impeccable|normale?|neuf)|(?:ballon\w*|elle|il|ca) (?:se )?(?:tient|gonfle|regonfle|marche|fonctionne|garde)(?! (?:pas|plus|nplus|mal))(?: (?:bien|encore|toujours|le eau|la eau|nickel|ok))*|en bon etat|bon etat|comme neuve?|(?:elle|il|sonde|bouton|tube) a (?:strictement |absolument )?rien(?= ?(?:$|[,.!]| du tout))|(?:pas|aucune?|sans|ni|rien)(?: (?:de|le|d|du|est|etait|a|la|qui))* (?:fuites?|trous?|dechirures?|degats?|casse\w*|abime\w*|creve\w*|perce\w*|dechire\w*|fissure\w*|fui\w*|eclate\w*|degonfle\w*|endommage\w*)|(?:fuit|goutte|coule|creve|perd|se vide|se degonfle) (?:pas|nplus)(?: (?:du tout|une goutte|de le eau|rien))?)\b(?! ?(?:(?:que |seulement )?de un (?:seul )?cote|mal|de travers|a moitie|pas|plus|nplus)\b)/g;
/** What a tube said to be whole is. */
export const fine = 'bien';
export const tubeNamed = /\b(?:sonde|tube|bouton|ballon\w*|elle|il)\b/;
export const balloonNamed = /\b(?:ballon\w*|boule)\b/;
/** A loss, firm enough to be believed unasked. */
export const toldLost =
  /\b(?:(?:jete|(?<=\b(?:jai|ai|on a|avons|ont)(?: \w+)? )perdu) (?:la |le |sa |son )(?:vieille |ancienne? |vieux )?(?:sonde|tube|bouton)|(?:sonde|tube|bouton) (?:est |a ete |est partie? )*(?:a la poubelle|jetee?|aux toilettes|introuvable)|(?:trouve|retrouve) (?:pas|plus|nplus) (?:la |le |sa |son )(?:sonde|tube|bouton)(?! (?:dedans|dans)))\b/;
/** Short texts that ask or answer, and name no kind. */
export const yesOrNo = /^(?:oui|ouais|non|nan)\b/;
/** The word after the device, and devices named by one word. */
export const beforeDevice =
  /\b(?:sonde|tube|bouton|catheter|dispositif|modele|tuyau)(?: (?:de|a|d|en|type|du|le|la))* (\w+)/g;
export const deviceWord = /\bcatheter\b/;
