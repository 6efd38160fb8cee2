/** French for how a tube went in: easily, hard, or not at all. */

const force =
  '(?:pousse\\w*|poussant|pousser|force\\w*|forcer|appuye\\w*|insist\\w*|forc\\w*|pes(?:e|er|ais|ant) (?:fort|dessus|dur)|presser|presse (?:fort|dessus)|bourr(?:e|er|ant)\\b|lutte\\w*|batt\\w*|bataille\\w*)';
export const wentHard = new RegExp(
  `\\b(?:dur(?:e|ement)?|difficile(?:ment)?|difficultes?|peniblement|penible|${force}|force\\w*|du mal|(?:beaucoup|pas mal|un peu) de (?:mal|peine)|resist\\w*|resistance|galer\\w*|serree?|raide|tourne\\w*|tortill\\w*|visse\\w*|pression|delicat|complique\\w*|laborieu\\w*|tendu|(?!en (?:\\d|une|quelques) (?:secondes?|secs?|minutes?|min|temps|mouvements?|gestes?)\\b)(?:apres|en|a|de|au bout de|fallu|fait|mis|pris|faut) (?:de )?(?:plusieurs|quelques|2|3|4|5|6|beaucoup|la deuxieme|le deuxieme|le 2e|le troisieme|deuxieme|troisieme|2eme|3eme)(?: \\w+)? ?(?:essais?|fois|tentatives?|reprises|coups?)?|(?:2|3|4|5|plusieurs|deuxieme|troisieme|2eme|2e|3eme) (?:essais?|fois|tentatives?|reprises|coups?)|finalement|enfin par|a peine|(?:hurl\\w*|crie|cri)(?! depuis\\b)|y (?:aller|suis allee?|ai ete) (?:un peu |assez |tres |bien |super |vraiment )*(?:fort|franchement|franco|comme une brute)|rude|misere|de peine et de misere|tough|rush\\w*)\\b`,
  'g',
);
export const notEasy =
  /\b(?:pas|pas ete|jamais|loin de|guere)(?: (?:ete|si|tres|trop|vraiment|super|hyper|du tout|tellement|aussi|ca|rentree?|entree?|alle|passe|tout|toujours))* (?:facile(?:ment)?|simple(?:ment)?|evident|aise\w*|tout seul|en douceur|bien|commode)\b|\b(?:facile|simple|evident|aise) pas\b/g;
export const wentEasy = new RegExp(
  `\\b(?:(?:super |tres |bien )?smooth|facile(?:ment)?|simple(?:ment)?|aisement|tout(?:e)? seule?|en douceur|doucement|gliss\\w*|(?:comme dans|dans) du beurre|comme une lettre a la poste|(?:tout|super|tres|bien) fluide|sans (?:la moindre |le moindre |aucune?s? |trop de |trop |meme |avoir (?:a |eu a |besoin de )?|le |la |devoir |rien |vraiment |qu on )*(?:${force}|forcer|force|problemes?|soucis?|difficultes?|resistance|effort|peine|mal|misere|pression|pb|stress|accroc|encombre)|(?<!\\b(?:ose|veux|voulais|vais|peux|faut|dois|doit|preferes?|voudrais|arretes?|cesse|continue) )(?:pas|jamais|aucun\\w*|nul|zero|0|rien)(?: (?:eu|de|du|le|a|besoin|ete|dû|d|en|trop|vraiment|fallu|oblige\\w*|senti|difficile|dure?|tout))* (?:${force}|forcer|resistance|effort|problemes?|soucis?|difficultes?|misere|pression)|(?:force|pousse|resiste|galere) pas|pas (?:ete )?(?:dur|dure|difficile|complique)\\w*(?: du tout)?|(?:rentre|rentree|entre|entree|passe|passee|va|alle|allee|mise?) (?:directement|direct|tres bien|super bien|bien|nickel|du premier coup|vite|rapidement|parfaitement|impec\\w*|crème|creme|toute seule|tout droit|comme il faut|sans rien)|(?:du|au) (?:premier|1er) coup|les doigts dans le nez|nickel|impec\\w*|easy|ez|en (?:2|deux|une|quelques) (?:secondes?|minutes?|secs?|temps|mouvements?)|tranquille\\w*|relax|fastoche|finger in the nose|peinard\\w*|comme (?:un charme|une fleur|un gant|une plume|sur des roulettes|une lettre|du velours|si de rien)|comme papa dans maman|sans (?:broncher|palabres?|palabrer|hesiter|histoires?|chichis?)|pas (?:eu )?(?:de )?(?:palabres?|histoires?|chichis?)|(?:rentree?|entree?|passee?|mise?) (?:en |d |de )?(?:une (?:seule )?fois|un (?:seul )?coup|2 secondes|deux temps|une seconde|moins de 2))\\b`,
  'g',
);
export const wontGo =
  /\b(?:(?:rentre|entre|passe|va|marche|avance|bouge|descend|penetre|reussi|reussis|reussit|arrive|arrives|rentrait|entrait|passait|fonctionne|tient) (?:pas|plus|nplus|toujours pas|vraiment pas|meme pas|absolument pas)(?! (?:mal|tres|trop|si|difficile))|(?:voulait|veut|peut|peux|pouvait|pu) (?:toujours |vraiment |meme |absolument )*(?:pas|plus|nplus)(?= ?(?:$|[,.!?;]|_)| (?:elle|il|ca|je|jai|on|y a|cest|parce|car|mais|et|meme|malgre|du tout|la sonde|le tube|le bouton|svp|desole)\b(?! (?:approche|touche|reste))|(?: (?:a|la|le|y|lui|me|se|en|tout|encore))* (?:re)?(?:rentr|entr|mett|pass|aller|all|inser|plac|descend|avanc|pouss|gliss|enfonc|introdu|faire|mise)\w*)|(?:pas|jamais|nplus)(?: (?:reussi|pu|voulu|capable|moyen|arrivee?|du tout|encore|completement|bien|de|a|la|le))* (?:rentrer?|rentree?|entrer?|entree?|mettre|passee?|passer|inserer|remettre|replacer|dedans|reussi|pu|arrivee?|moyen)|(?:rentre|entre|avance|descend|enfonce)(?: \w+)? (?:de |d |que )?(?:une?|1|2|quelques|un petit|un) ?(?:cm|centimetres?|mm|bout|peu),? ?(?:et |puis |mais )?(?:stop|apres|ensuite|ca bloque|plus rien|cest tout|ca (?:va|avance) (?:pas|plus))|pas en place|impossible|bute|buttes?|cale|accroche|echec|echoue\w*|rate\w*|bloqu\w*|coinc\w*|ressorti\w*|ressort|rejete\w*|repousse\w*|(?:est |se est )?ferme\w*|referme\w*|rebouche\w*|bouche|(?:pas|jamais) (?:etre )?(?:capable|reussi\w*|parvenu\w*|foutu\w*)|trop (?:petit|serre|etroit|gros|grosse)|(?:j?a?i? ?essay\w*(?: (?:\d+|plusieurs) fois)?|(?:\d+|plusieurs) (?:fois|essais|tentatives)|_),? (?:mais |et )?(?:toujours )?rien\b|parviens (?:pas|plus)|(?<!\b(?:cru|croyais|pensais|peur)(?: (?:que|je|de|jamais|ne))* )y arriv\w+ (?:pas|plus|nplus)|j?abandonne\w*|je laisse tomber|je renonce|rien a faire|pas possible|(?:je )?j?ose (?:pas|meme pas|plus)|(?:jai|ai|on a|a) (?:meme )?pas ose\b(?! (?:le |la )?(?:pousser|forcer|appuyer|tourner))|pas moyen|pas capable|ne? veut rien savoir|veut rien savoir|encore dehors|toujours dehors|retombe\w*|dehors)\b/g;
/** What may stand right before "facile"; another word there could be a slip of "pas". */
export const leadsToEasy =
  /(?:^|[,.!_]|\b(?:etait|ete|est|cest|cetait|rentree?|entree?|passee?|mise?|mis|alle|allee|va|dedans|tres|super|si|assez|vraiment|trop|plutot|bien|hyper|oui|ouais|ok|et|facile|aussi|ca|elle|il|tout|toute|place|mettre|relativement|etonnamment|finalement|cette fois|fois|insere\w*|posee?|in|se|sans|fait|faite|quand|meme|assez|plus|tellement|remise?|remis))\s*$/;
export const notBefore = /\b(?:pas|jamais|nplus)\b[a-z ]{0,12}$/;
/** Both ways named at once. */
export const eitherHow =
  /\b(?:facile\w*|bien|doucement) ou (?:dur|difficile\w*|pouss\w*|forc\w*|pas|non)\b|\b(?:dur|difficile\w*|pouss\w*|forc\w*) ou (?:facile\w*|pas|non)\b/;
/** "Pas difficile": a negation of the how, not of the going in. */
export const negatedHow =
  /(?<!\b(?:ose|veux|voulais|vais|peux|faut|dois|doit|preferes?|voudrais) )\b(?:pas|jamais|sans|aucun|aucune|nul|zero|0|rien)(?: (?:moindre|eu|besoin|de|du|a|d|trop|tres|vraiment|si|ete|fallu|le|la|senti|beaucoup|tellement|oblige\w*|avoir|devoir|tant|que ca|force|mal|meme|plus|etait|utilise|mis))*\s*$/;
export const slightly =
  /\b(?:un peu|assez|plutot|relativement|a peu pres|plus ou moins|moyennement|pas trop|pas tres|pas si|presque) ?$/;
/** Says so firmly that it is in: whatever else is denied beside it, it is not out. */
export const firmlyIn =
  /^(?:(?:oui|ouais|ok|cest|bon),? )*(?:dedans|rentree?|entree?|en place|passee?)\b(?=,? (?:mais|et|par contre|puis|apres)\b)|(?<!\bpas )\btoute? seule?\b|\b(?:(?:elle|il|ca|sonde|tube|cest|bouton) (?:est |a |y est |le |la |me |se est |finalement |bien |enfin |maintenant |toute? |re|deja )*(?:rentree?|entree?|dedans|en place|passee?|inseree?|mise?|glissee?|placee?|installee?|in|remise?)|ca y est|jai (?:reussi|pu la mettre|pu le mettre))\b(?! (?:(?:absolument|vraiment|toujours|meme|carrement) )?(?:pas|plus|nplus|un peu))/;
export const notIn =
  /\b(?:rentre|entre|avance|descend|enfonce)(?: \w+)? (?:de |d |que )?(?:une?|1|2|quelques|un petit) ?(?:cm|centimetres?|mm|bout|peu),? ?(?:et |puis |mais )?(?:stop|apres|ensuite|ca bloque|plus rien|cest tout)\b|\b(?:rentre|entre|passe|est|va|tient|reste) (?:(?:absolument|vraiment|toujours|meme|carrement) )?(?:pas|plus|nplus)\b|\bpas\b[a-z ]{0,18}\b(?:rentr\w*|entr\w*|dedans|en place|passe\w*|reussi)\b/;
/** The second try went in after the first did not. */
export const secondTryIn =
  /\b(?:deuxieme|2e|2eme|2|second|troisieme|3e|3eme|puis|ensuite|finalement|fini par|apres)\b.{0,30}\b(?:rentree?|entree?|reussi|passee?|dedans|en place|bon|rentrer|entrer|marche|est in|hop)\b|\b(?:coinc|bloqu|but|resist|forc|cal)ait\b.{0,60}\b(?:maintenant|la|relais|finalement) (?:cest|ca|ca a|elle est|il est) (?:bon|passee?|rentree?|entree?|dedans|fait|en place|ok)\b/;
/** In, and out again after that. */
export const backOut =
  /\b(?:mais|et|puis|apres) (?:elle |il |ca |la sonde |puis |ensuite |aussitot |tout de suite )*(?:est |a |se )?(?:ressorti\w*|ressort|retombee?|retombe)\b/g;
export const inNow =
  /\b(?:(?:elle|il|ca|cest|sonde|tube|bouton) (?:est |a |y est |bien |re|toute? |maintenant |enfin )*(?:rentree?|entree?|dedans|en place|passee?|mise?|inseree?|placee?|remise?|installee?|bon|fait)|ca y est|en place|dedans|reussi|rentree?|mise en place|cest (?:fait|bon)|fait|inseree?|jai (?:pu )?(?:la |le )?(?:mise?|mettre|remise?|replacee?|remettre|rentree?)|posee?)\b(?! pas| (?:(?:du|de|le|la|les|un|une|des|mes|bien|plein) )+(?:gel|lubrifiant|gants?|eau|creme|compresses?|serviettes?|doigts?|seringue|lait|salive))|^(?:re)?mise?$/;
/** "Facilement" and its kin, which a slip of "pas" before them turns round. */
export const plainlyEasy = /^(?:facil|simpl|aise)/;
export const stillTrying =
  /\b(?:pas encore|attend\w* (?:une|2|un)|une (?:minute|seconde)|encore en train|en train (?:de |d )|j?essaie encore|jessaye encore|on essaie|on y travaille|attend\w*,? (?:(?:je|on) (?:me |nous |la |le |lui |vais |va |suis (?:en )?)?(?:cherche\w*|regarde\w*|prends?|prend|mets?|finis\w*|appelle\w*|demande\w*|lis|lire|lave\w*|prepare\w*|sors|descends?|reviens?|recommence|allume\w*|lunettes)|(?:il|elle|bebe) (?:pleure|bouge|gigote|crie|se debat|se tortille|dort|veut pas se laisser))|je cherche mes lunettes|j?essaie(?! mais)|je (?:lis|les ai lus)|je me lave|on se lave|dans (?:une|1|2) min\w*)\b/;
/** About the balloon's water, not the tube. */
export const fillsWater =
  /\b(?:ml|cc|eau|ballon\w*|seringue|rinc\w*|rempli\w*|gonfl\w*|gouttes?|bandelet\w*|languet\w*|papier)/;
/** How it went in, told beside something else. */
export const tellsHow =
  /\b(?:rentree?|entree?|mise?|mis|passee?|inseree?|glissee? (?:dedans|toute? seule?|bien)|mettre|rentrer|entrer|remise?|insertion|pose)\b|\b(?:du|fallu|oblige\w*|oblige)(?: \w+)? (?:de |a )?(?:pousser|forcer|appuyer)\b|\b(?:force|pousse) (?:pour|un peu|fort|beaucoup|dessus)\b|\bcetait (?:\w+ )?(?:dur|difficile|serre|raide)\b|\bcetait pas (?:si |tres )?facile\b/;
/** In by half, and no further. */
export const stuckHalfWay =
  /\b(?:a moitie|a mi ?-?chemin|jusqu a la moitie|la moitie)\b[^.!?]{0,16}\b(?:et|mais|puis) (?:la |apres |ca |s est |sest |est |c est |cest )*(?:bloque|coince|arrete)\w*\b/;
