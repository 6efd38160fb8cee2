/** French for what a caregiver wants beside answering: a person, a step again, to correct, to stop. */

/** French words that Canadian carriers act on beside the English ones (common carrier practice, from memory). */
export const stopWords: ReadonlySet<string> = new Set(['arret', 'arreter', 'desabonner', 'desinscrire']);
export const startWords: ReadonlySet<string> = new Set(['reabonner']);
export const helpWords: ReadonlySet<string> = new Set(['aide', 'aidez moi', 'aidez-moi', 'au secours']);

const someone =
  '(?:quelquun|une? (?:vraie? |autre )?(?:personne|infirmi\\w+|humain|docteur|medecin|etre humain|responsable|conseill\\w+|soignante?)|(?:le |la |mon |ma |notre |les |l |des )?(?:infirmi\\w+|docteur|medecin|humain|garde|specialiste|toubib|soignants?)|des gens|un agent|(?<!\\by a )du monde|une? conseiller\\w*|une? operat\\w+)';
export const person = new RegExp(
  `\\b(?:(?:appel\\w*|rappel\\w*|telephone\\w*|contact\\w*|sonn\\w*)(?: |-)(?:moi|nous)|(?:me|nous) (?:re)?(?:appeler|appelle|telephoner|joindre)|(?:parle\\w*|discuter?|causer|jaser|echanger|entretenir|communiquer|dialoguer) (?:directement |vraiment |de vive voix )?(?:a|avec|au) (?:${someone}|le medecin|un)|(?:besoin|faut|faudrait|veux|voudrais|voulons|souhaite|aimerais|prefere|cherche) (?:de |d |absolument |vraiment |une? |parler |voir |avoir |a )*${someone}|(?:pass\\w*|donn\\w*|envoy\\w*)(?: |-)(?:moi |nous )${someone}|(?:ou est|y a(?:-t-il| t il)?|est ?-?ce que y a|est ce qu y a|y a(?: |-)t(?: |-)il) ${someone}|${someone} (?:peut|pourrait|peux|pourrais|pouvez|va|svp|peuvent)(?: |-)?(?:elle |il |on )?(?:me |nous )?(?:re)?(?:appel\\w*|telephon\\w*|parler|aider|repondre|joindre|venir)?|(?:allo|est ce que|ho|he) y a du monde|y a du monde ?\\?|vraie personne|etre humain|humain svp|vrai humain|humain (?:au bout|derriere|en vrai)|(?:vous etes|tu es|es tu|etes vous|cest|je parle a|parle a) (?:un |une )?(?:vrai |vraie )?(?:robot|machine|humain|personne|ordinateur|bot|ia|automate|repondeur|infirmiere)|aide[zr]?(?: |-)(?:moi|nous)|(?:besoin|demande) (?:de |d )?aide|a le aide|au secours|(?:numero|telephone) (?:de |d |du )?${someone}|que quelquun|quelquun (?:est )?la|a qui parler|(?:pouvez|peux|pourriez|peut)(?: |-)(?:vous|tu|on) (?:m |me |nous |n )?(?:re)?(?:appeler|telephoner|passer|aider))\\b|^(?:une? |l |le |la )?(?:infirmi\\w+|docteur|medecin|personne|humain|operateur|operatrice|appel(?!e$)\\w*|rappel\\w*|quelquun)(?: svp)?$`,
);
/** Said to the line itself; it asks for no other person. */
export const cryForHelp =
  /\b(?:aide[zr]?(?: |-)(?:moi|nous)|(?:besoin|demande) (?:de |d )?aide|a le aide|au secours|quelquun (?:est )?la|(?:pouvez|peux|pourriez|peut)(?: |-)(?:vous|tu|on) (?:m |me |nous |n )?aider)\b/g;
export const notPerson =
  /\b(?:jai|on a|ai) (?:deja |bien |eu |pu )*(?:parle|parler|telephone|appele|appelee|ecrit|laisse|eu)(?: (?:un message|a|avec|le|la|l|une?|au))* (?:infirmi\w+|docteur|medecin)\b|\b(?:pas|plus|nplus|jamais|deja)(?: (?:besoin|parle|appele|vu|demande|veux|la peine|de|d|que|a|avec|quelquun|une|un|l|le|la)){1,5} (?:infirmi\w+|docteur|medecin|personne|quelquun|aide|humain|appeler|appelle)\b|\b(?:infirmi\w+|docteur|medecin) (?:est|a|m a|me a|nous a|avait|dit|ma|mont|vient) (?!pas)|\bpas (?:besoin|la peine) (?:de |d )?(?:me |nous |m )?(?:appeler|rappeler|aide)\b/;

export const repeat =
  /^(?:(?:ok|okay|desole|svp|attends|attendez|pardon|vous pouvez|tu peux|me|nous|pouvez[ -]vous|peux[ -]tu|pourriez[ -]vous|le|la|stp|est ce que vous pouvez|euh|non) )*(?:encore(?: une fois)?|repete[zr]?(?: (?:ca|svp|la|le|les|moi|etape|etapes|instructions?|message|derniere?|encore|question|consigne|consignes|ce que vous avez dit))*|redi(?:t\w*|s)(?: \w+){0,4}|redire(?: \w+){0,4}|re ?envoy\w*(?: \w+){0,4}|renvoi\w*(?: \w+){0,4}|une (?:autre|derniere) fois|(?:quoi|hein|comment)\s*\?*|vous avez dit quoi|cetait quoi(?: (?:etape|la|le|question|deja|derniere?|premiere?|l|message))*|quelle etait (?:la|l|le) (?:question|etape|derniere etape|premiere etape|deuxieme etape)|(?:jai|on a) (?:rate|manque|perdu|efface|supprime|loupe|pas (?:eu|recu|vu|lu)) (?:ca|la|le|les|l|votre|vos)(?: \w+){0,4}(?:,? (?:est ce que )?(?:pouvez|pourriez|peux|pourrais|tu peux|vous pouvez|vous pourriez)(?:[ -](?:vous|tu))? (?:(?:me|nous|le|la|les) )*(?:re ?envoyer|renvoyer|redonner|remettre|repeter|redire)(?: \w+){0,3})?|(?:jai |je )?(?:comprends?|compris|saisi|suis) (?:pas|rien)(?: (?:bien|la|trop|l|le|votre|etape|question|message|tout|ce|que))*|depuis le debut|du debut|recommence[zr]?(?: (?:du|au|depuis|le|debut))*|reprendre (?:du|au|depuis le) debut|revenir en arriere|quelle etape|explique\w* (?:encore|a nouveau|mieux)|(?:les |l )?etapes? encore|pouvez vous repeter(?: \w+){0,3}|(?:re? ?)?(?:envo[iy]|donn|montr|mett|ecri|redonn)\w*(?:[ -]moi)?(?: (?:les|la|le|l|tout|toutes|etapes?|consignes?|instructions?|explications?|message|question|liste|de nouveau|a nouveau))+)(?: (?:svp|encore|merci|une fois|deja|(?:jai|on a) (?:tout )?(?:efface|supprime|perdu|oublie|rien compris|pas (?:compris|vu|lu|recu))))*[ ?]*$/;
export const repeatStep =
  /\b(?:(?:etape|numero|partie|message|point|texto|sms) ?(?:numero |no |n )?#? ?([123])|(premiere?|deuxieme|seconde?|troisieme|derniere?|1ere?|2e|2eme|3e|3eme) (?:etape|partie|message|point|texto|sms|consigne))\b/;
export const stepAsked =
  /\b(?:encore|repete\w*|redit\w*|redire|renvo\w*|cetait quoi|cest quoi|quelle etait|quel etait|une fois|montre\w*|dites|dis|envoye\w*|rate|manque|perdu|oublie\w*|explique\w*|revenir|retour\w*|relire|rappele\w*|revoir|remet\w*|reprendre|compris pas|comprends pas|pas compris|nouveau)\b/;
export const wholeStep = /^(?:l )?(?:etape |numero )#? ?[123](?: svp| encore)*$/;

export const correct =
  /\b(?:(?:je )?(?:me suis|m suis|suis) (?:trompee?|gouree?|plantee?|tromper|melangee?)|je me trompe|(?:fait|ai fait|y a) (?:une )?erreur|erreur de ma part|(?:veux|voudrais|dois|faut|besoin de|puis je|je peux|peut on|peux je|aimerais)(?: que je)? (?:corriger|changer|modifier|rectifier|corrige|change|refaire|revenir|rectifie)(?! (?:la sonde|le bouton|la couche|le pansement))|(?:jai|on a) (?:mal (?:repondu|ecrit|tape|dit|compris|lu|note|mis)|donne (?:un|une|le|la|des) (?:mauvais\w*|faux|fausse)|(?:ecrit|dit|mis|donne|tape|repondu|envoye) (?:\w+ ){0,4}(?:mauvais\w*|faux|fausse|erreur|de travers))|mauvaise? (?:reponse|numero|date|poids|sonde|heure|bouton|type|chiffre|jour|mois|annee)|(?:corrige\w*|modifie\w*|rectifie\w*|changer|annule\w*) (?:ma|mon|la|le|ce|l)(?: \w+){0,3} ?(?:reponse|poids|date|sonde|type|heure|chiffre|lecture|dit|ph)?|ignore\w* (?:ca|mon dernier|ce que|le dernier)|oubliez (?:ce que|ca|mon)|cetait (?:pas ca|faux|une erreur)|cest (?:faux|pas ca|pas bon|une erreur)|(?:reparler|revenir|retourner|recommencer|refaire|reprendre) (?:de |a |sur |vers )?(?:la |ma |l )?(?:question|reponse|etape) (?:d |de )?(?:avant|precedente|derniere|d avant)|^(?:retour|revenir|question (?:d |de )?avant|question precedente)(?: svp)?$|pas ce que je voulais dire|jai eu tort|faute de frappe|erreur)\b/;
export const correctTopics: readonly (readonly [
  RegExp,
  'weight' | 'first-placed' | 'tube-kind' | 'ph' | 'came-out' | 'own-tube' | 'kit' | 'unwell' | 'first-feed',
])[] = [
  [/\b(?:poids|pese|livres|kilos|lbs|kg)\b/, 'weight'],
  [/\b(?:ph|bandelette|languette|lecture|mal lu)\b/, 'ph'],
  [/\b(?:date|posee?|pose|operation|operee?|premiere sonde|age (?:de la|du)|annee|mois|semaines)\b/, 'first-placed'],
  [/\b(?:type|sorte|genre|quelle sonde|type de sonde|sorte de sonde|mauvaise sonde|mauvais bouton)\b/, 'tube-kind'],
  [/\b(?:heure|moment|quand (?:elle|ca|il) (?:est|a)|sortie?|tombee?)\b/, 'came-out'],
  [/\b(?:ballon\w*|ancienne sonde|vieille sonde|ancien bouton)\b/, 'own-tube'],
  [/\b(?:kit|trousse)\b/, 'kit'],
  [/\b(?:signes?|respir\w*|comment (?:elle|il) va)\b/, 'unwell'],
  [/\b(?:repas|alimentation)\b/, 'first-feed'],
];

/** Words that take back something said before. */
export const corrects =
  /\b\d[\d.]* (?:\w+ )?(?:et )?(?:pas|non) \d|\b(?:desole|pardon|oups|oops|en fait|enfait|je voulais dire|voulais dire|je (?:veux|veut) dire|correction|rectification|faute de frappe|erreur|trompee?|gouree?|plantee?|mal lu|relu|fausse?|faux|reverifie\w*|non attend\w*|attend\w* non|plutot|au lieu de|enfin non|(?:regarde|verifie) (?:encore|a nouveau|de nouveau)|devrait etre|pas \d[\d.]* (?:mais|cest|cetait)|pas (?:une? )?(?:g|gj|j)\b|cest pas (?:une? )|finalement cest)\b/;

const medicine =
  '(?:medicaments?|medocs?|doses?|cachets?|comprimes?|insuline|antibiotiques?|steroides?|cortisone|hydrocortisone|glucose|traitements?|sirop|levetiracetam|anti ?-?epileptiques?)';
const mustHave =
  '(?:medicaments?|medocs?|doses?|cachets?|comprimes?|insuline|gavages?|repas|nutrition|alimentation|lait|antibiotiques?|steroides?|hydrocortisone|cortisone|sucre|glucose|traitements?|remedes?|pilules?|anti ?-?epileptiques?|sirop|biberon)';
const organ =
  '(?:convulsions?|epilepsie|coeur|cardiaques?|greffe|rejet|diabete|tension|thyroide|surrenal\\w*|poumons?|sang|crises?|douleur|foie|reins?|drepano\\w*|vih|hormon\\w*|metaboli\\w*)';
export const cannotWait = new RegExp(
  `\\b(?:${mustHave} (?:pour|contre|de|du|d|anti) (?:(?:le|la|les|son|sa|ses|l|des|du) )?${organ}|(?:anti ?-?)?(?:epileptiques?|rejet|convulsivants?|convulsifs?|coagulants?)|${mustHave} (?:\\w+ ){0,3}(?:peut pas|peuvent pas|doit pas|doivent pas|faut pas)(?: \\w+){0,2} (?:attendre|sauter|rater|manquer|oublier|retard\\w*|etre)|(?:peut|peuvent|doit|doivent|faut|peux|dois) (?:pas|jamais)(?: \\w+){0,2} (?:rater|sauter|manquer|louper|attendre|se passer de|rester sans|etre sans|oublier|retarder|passer)(?: \\w+){0,3} ${mustHave}|(?:doit|faut|devait|dois|doivent)(?: que| elle| il| qu elle| absolument| lui| bientot| vite)* (?:avoir|prendre|recevoir|donner|donne|prenne|ait)(?: \\w+){0,3} ${medicine}|${mustHave} (?:est |sont |etait |prevue?s? |due?s? |a |pour |de )+(?:\\d|maintenant|minuit|midi|en retard)|(?:heure|temps) (?:de |du |pour )(?:son |sa |ses |le |la |les |l )?${medicine}|${mustHave} (?:\\w+ ){0,2}(?:urgente?s?)|${mustHave} (?:prevue?s?|en retard|maintenant|imperative?ment|obligatoire\\w*|vitale?|vitaux|tres important\\w*)|(?:sucre|glycemie|glucose) (?:\\w+ ){0,2}(?:baisse|descend|chute|tombe|bas|basse)|hypoglyc\\w*|(?:gavage|nutrition|alimentation) (?:en )?(?:continue?|continu)|(?:peut|doit|supporte|tolere) pas (?:rester a jeun|jeuner|le jeune|le jeun|etre a jeun)|(?:peut|tient) pas (?:\\w+ ){0,4}sans (?:manger|nourriture|gavage|lait|alimentation|medicament\\w*)|diabetique|sous insuline|prend de le insuline)\\b`,
);
export const canWait =
  /\b(?:(?:quand|lorsque|au moment ou) (?:(?:le |mon |la |l )?(?:reveil|alarme|minuteur)|on (?:lui )?donn\w+|je (?:lui )?donn\w+)|pas de|pas (?:d|besoin)|aucun|aucune|rien|sans|deja (?:eu|pris|donne|recu)|(?:a|ai|lui a|avons) (?:bien |deja |lui )?(?:donne|pris|eu|recu)|vue pour la derniere|peut attendre|plus tard|(?<!\b(?:je|on) (?:fais|fait) )comment(?! (?:je fais|on fait|faire)\b)|quand (?:est ce|puis|peut|pourr|je peux)|(?:je|on) (?:peux|peut) (?:lui )?(?:donner|encore)|puis je|peut on|est ce que je peux)\b/;

/** "Il ne faut pas qu'elle le rate": named before, or by a name the line does not know. */
export const mustNotMiss =
  /\b(?:peut|doit|faut|peux|dois) (?:pas|jamais)(?: que| qu| elle| il| je| on)* (?:le |la |les |l |en )?(?:rater|rate|sauter|saute|manquer|manque|louper|loupe|attendre|attende|oublier)(?: (?:le|la|les|ca|une dose|sa dose|un|cette dose|son \w+|sa \w+|ses \w+))?\b|\b(?:elle|il) doit (?:avoir|prendre|recevoir) (?!un bain|une bain)(?:son |sa |ses |du |de la |un |une )?\w+ a \d/;
/** Questions that the last message answers while nothing is asked. */
export const answeredAlready =
  /^(?:(?:ok|okay|donc|et|mais|alors|daccord) )*(?:combien de temps|et maintenant|la suite|cest quoi la suite|on fait quoi|je fais quoi|quoi faire|que (?:dois je |faut il |faire)|qu est ce (?:qu|que)|quand|(?:puis[ -]?je|je peux|peut[ -]?on|on peut|est ce que je peux|est ce qu on peut|dois[ -]?je|je dois|on doit|faut[ -]?il) (?:la |le |lui |encore )*(?:nourrir|donner|gaver|utiliser|aller|venir|attendre|conduire|boire|manger))\b[^?]{0,40}\??$/;
/** Not out, but on its way. */
export const outABit =
  /\b(?:sorti\w*|dehors|ressorti\w*) (?:un (?:petit )?peu|legerement|en partie|partiellement|a moitie|de quelques|de \d)\b|\b(?:un peu|a moitie|en partie|partiellement|legerement) (?:re)?sorti\w*\b/;
/** The first time, told again. */
export const beforeItCameOut =
  /\b(?:jusque a ce|quand|avant|depuis|apres|lorsque) (?:que |qu )?(?:elle|il|ca|cest|la sonde|le tube|le bouton|sa sonde|son bouton) (?:se est |est |a |sa |soit |s )*(?:sorti\w*|tombe\w*|enleve\w*|arrache\w*|partie?|retire\w*|sorte)\b/;
const again = '(?:encore|a nouveau|de nouveau|une (?:deuxieme|seconde|2e) fois|encore une fois)';
const fellOut =
  '(?:sorti\\w*|tombe\\w*(?! (?:sur (?:le |un |du |la )?(?:\\d|case|vert|jaune|couleur|repondeur)|bien|mal|a pic|pile|dedans|en panne|malade))|enleve\\w*|arrache\\w*|retire\\w*|ejecte\\w*|expulse\\w*|partie?|(?<=\\b(?:a|est) )sautee?)';
export const outAgain = new RegExp(
  `\\b(?:ressorti\\w*|retombe\\w*|re ?sorti\\w*|re ?arrache\\w*|rarrache\\w*|re ?enleve\\w*|renleve\\w*|(?:elle|il|ca|sonde|tube|bouton|nouvelle?|temporaire|provisoire) (?:\\w+ ){0,4}${fellOut}(?: ${again})?|(?:vient|viens) de (?:re)?(?:sortir|tomber|ressortir|retomber)|${fellOut} ${again}|${again} (?:\\w+ ){0,2}${fellOut}|(?:elle|il|bebe) (?:\\w+ ){0,4}(?:arrache|enleve|tire|retire) (?:encore |de nouveau )?(?:sa|la|le|son|dessus)(?: \\w+)?)\\b`,
);
/** What comes out through a tube is not the tube. */
export const contentsCameOut =
  /\b(?:lait\w*|truc|contenu|liquide|jus|formule|air|rien|sang|gouttes?|(?:quand|avant|si|lorsque|au depart|la premiere fois)(?: qu| que)? (?:elle|il|la sonde|le tube|le bouton|ca))\b/;

export const tubeProblem =
  /\b(?:(?:eau|seringue|piston|rincage|lait|gavage|ca|liquide|produit)(?: (?:\w+)){0,3} (?:passe|passent|descend|coule|rentre|va|avance|pousse)(?: (?!bien|super|nickel|tranquille|parfait|normal|doucement)\w+)? ?(?:pas|plus|nplus|mal)|(?:arrive(?! (?:pas|plus|nplus) a (?:gonfler|remplir))|peux|peut|reussis|reussit|pu)(?: pas| plus| nplus) (?:a |la |le )*(?:rincer|injecter|pousser|passer|faire passer|remplir|gonfler|vider)|(?:impossible|difficile|dur) (?:de |a |d )(?:rincer|injecter|pousser|passer|remplir|gonfler)|(?:eau|ballon\w*)(?: \w+){0,2} (?:fuit|coule|ressort|revient|sort|goutte|repart)(?: \w+){0,2} (?:par|de|du|au) (?:la |le )?(?:valve|port|bouchon|embout|clapet)|(?<!\b(?:la|sa|ma|en|de|par|sur|une|petite|dans|sa petite) )bouche\b|bouch(?:ee?s|ee|er|ait|ent|on|age)\w*|bloqu\w*|obstru\w*|resist\w*|resistance|(?:ballon\w*|seringue) (?:est |tres |trop |vraiment |bien )*(?:dure?|raide|serre\w*)|coud\w*|plie\w*|reflue|remonte dans)\b/;

/** Told of a tube in use: nothing holds it. */
export const balloonEmpty =
  /\b(?:ballon\w*\b[^.!]{0,45}\b(?<!\b(?:pas|plus) )(?:vide|degonfle|plat|(?:pas|jamais) (?:ete )?(?:rempli|gonfle|mis))|(?:pas|jamais) (?:rempli|gonfle|mis)(?: (?:de|d|eau|dans|le|du))* ballon\w*|laiss\w+ (?:le )?ballon\w* (?:vide|plat|degonfle)|pas (?:de |d )?eau dans le ballon\w*)\b/;

/** Help was called, or is coming or there. */
export const helpCalled =
  /\b(?:(?:cest|ca y est|voila|ok)(?: (?:cest|deja|bien))* (?:fait|appele)|(?:jai|on a|ai|je les ai|je viens de|ya|deja)(?: (?:les|le|deja|bien|de))* appeler?|(?:samu|smur|pompiers|ambulance|ambulanciers|secours|ils|15|18|112)(?: (?:est|sont|la|le|les|deja|bientot))* (?:en route|arriv\w+|vien\w+|sont la|est la|la$|ici|en chemin))\b/;
/** Called, and nobody comes. */
export const helpNotComing = /\b(?:pas|personne|jamais|plus|occupe|raccroche\w*)\b/;
/** Nothing to get there with. */
export const noWayThere =
  /\b(?:(?:pas|plus|sans|aucun\w*)(?: (?:de|d|une?|la))* (?:voiture|auto|vehicule|taxi|transport|moyen de transport|essence|permis)|(?:peux|peut|pouvons) pas (?:y aller|venir|conduire|me deplacer|nous deplacer)|voiture (?:est )?(?:en panne|morte|demarre pas|veut pas demarrer))\b/;
/** Small talk has only these words. */
export const smallWords: ReadonlySet<string> = new Set(
  'les meilleurs meilleures meilleur geniales geniaux super equipe filles formidable formidables trop forts fortes du fond coeur encore ok okay oki okey k daccord merci mercii mrc beaucoup bcp mille fois infiniment bien tres super parfait genial bon bonne compris je vois oui ouais pret prete prets suivant suite on y va continue continuez allez allons je suis nous sommes salut bonjour bonsoir coucou allo a de votre ton aide pour tout la le l les ca et haha lol ouf voila une un seconde minute instant attendez attends att svp infirmiere vous te tu etes es un ange vie sauve sauvez journee nuit soiree note lu recu entendu cest gentil adorable top nickel au revoir bye bisous ciao dieu benisse que soit beni alors ca marche maintenant fait faire vais va est chouette impeccable cool d de accord tellement vraiment infiniment soulagee soulage rassuree rassure'.split(
    ' ',
  ),
);
/** On the way to the emergency department, or there: nothing to answer. */
export const onTheWay =
  /^(?:(?:(?:ok|oui|bon|alors|cest nul) )*(?:on|nous|je) (?:prend|prends|prenons) (?:la|le|un|notre|ma) (?:voiture|route|taxi|bus|auto)(?: (?:du|de la|de mon|de ma) \w+)?|(?:(?:ok|oui|bon|alors|cest nul) )*on part(?: alors| donc)?)$|^(?:(?:ok|oui|merci|daccord|on|nous|je|jy|y|suis|sommes|est|maintenant|la|deja) )*(?:en (?:route|chemin|voiture)(?: (?:vers|pour) (?:le hopital|les urgences))?|(?:part|pars|partons|parti|partis|partie|vais|va|allons|fonce|roule|arrive|arrivons|arrives)(?: (?:maintenant|tout de suite|la bas|la|aux urgences|a le hopital|vers le hopital|pour le hopital|y))*|(?:la|aux urgences|a le hopital|dans le ambulance|dans la salle d attente|dans la salle de attente)(?: maintenant)?)$/;
export const thanks = /\b(?:merci\w*|mrc|mci|remercie\w*|reconnaissante?|dieu (?:vous|te) benisse|gratitude)\b/;

const device = '(?:sondes?|boutons?|tubes?|gastro\\w*|g ?-?j|gj|peg|gpe|jejuno\\w*|catheter|ballonnet|sng|tuyau)';
export const aboutTube = new RegExp(
  `\\b${device}\\b|\\bstomie\\b|\\bstoma\\b|\\b(?:trou|orifice) (?:de|dans|du|sur) (?:son|sa|le|la) (?:ventre|estomac|gastro\\w*)\\b`,
);
/** Out, but no word of what: still about a tube on this line. */
export const somethingOut =
  /\b(?:(?:elle|il|ca|cest|tout) (?:\w+ ){0,3}(?:sorti\w*|tombe\w*|arrache\w*|enleve\w*|retire\w*|dehors|partie?)|(?:sorti|sortie|tombe|tombee|arrache|arrachee|enleve|enlevee) (?:tout|toute) seule?)\b/;
/** How to live with it is another matter, as long as nothing is out. */
export const otherTubes =
  /^(?!.*\b(?:sorti\w*|sort|tombe\w*|arrache\w*|enleve\w*|dehors|partie?|sang|saigne\w*|fuit|fuite|bouche\w*|cassee?)\b)(?:(?:bonjour|bonsoir|allo|salut|une|petite|question|svp|madame|desole|pardon|dites|sinon|je|voulais|savoir|si) )*(?:quand|est ce que|combien|comment|a partir de quand|cest quand|tous les combien|puis je|peut on|(?:je|on|elle|il) peut|je peux|on change)\b.*\b(?:bain|baigner|laver|nager|piscine|plage|mer|dormir sur le ventre|ramper|ecole|creche|voyager|avion|chang\w+|rendez[ -]?vous|rdv|nettoy\w+|vaccin\w*|sport)\b.*$|\b(?:you ?tube|tube de (?:creme|dentifrice|colle|pommade)|tubes? (?:dans les|aux) oreilles|drain|(?:tube|sonde) (?:de )?(?:respiration|tracheo\w*|thoracique|urinaire|rectale)|boutons? (?:de (?:fievre|chemise|acne|moustique|varicelle|pyjama|manteau)|sur (?:le|la|son|sa|ses|les) (?:visage|peau|corps|bras|dos|joues?|jambes?|fesses?)|rouges?|partout)|gastro ?-?(?:enterite|enterologue\w*)|(?:une|la) gastro (?:depuis|et (?:elle|il) vomit))\b/g;
/** A person after all, whatever was said of nurses beside it. */
export const personNow = /\b(?:appel\w*|besoin|veux|voudrais)\b.*\b(?:svp|maintenant|vite)\b/;
export const firstStep = /^(?:1|premier)/;
export const secondStep = /^(?:2|deux|second)/;
/** Thanks that go on to ask. */
export const wantsMore = /\?|\bmais\b|\b(?:pouvez|peux|peut|puis|comment|combien|que dois|est ce)\b/;
export const notOut =
  /\b(?<!\b(?:sonde|tube|bouton) )(?:est|se est) (?:deja |bien )?(?:partie?|sortie?|retournee?) (?:a (?:la|le) (?:garderie|creche|ecole|maternelle|maison|piscine|plage|fete|halte)|a (?:garderie|ecole|pied)|au (?:parc|jardin|lit|marche|centre|cpe|travail)|chez|jouer|dehors (?:jouer|avec)|en (?:promenade|voiture|balade|ville|classe|poussette|visite)|faire|se promener|prendre|voir|dormir|se coucher|de (?:le )?hopital|avec (?:son|sa|ses) (?:pere|mere|papa|maman|mamie|papi|frere|soeur|cousin\w*|grands?))\b|\bsorti (?:de|completement de) (?:la |ma |l )?(?:tete|esprit|memoire)\b|\b(?:sorti\w*|tombe\w*|bouge\w*) pas\b|\bpas(?: (?:encore|ete|re))* (?:re)?(?:sorti\w*|tombe\w*|enleve\w*|arrache\w*|dehors|bouge\w*)\b/;
const againWords = new RegExp(`\\b(?:ressorti\\w*|retombe\\w*|${again})\\b`);

export { againWords as again };
export const noTubeProblem =
  /\b(?:ca|elle|il) va (?:vraiment |toujours |plutot )?(?:pas|plus|nplus)\b(?! (?:dedans|dans|la dedans|jusque|a le interieur|descendre|passer|rentrer|couler))|\bjusque a ce que ca (?:bloque|coince|resiste)\b|\b(?:pas|aucune?|sans)(?: (?:de|d|la|le))* (?:resistance|problemes?|bouch\w*|bloqu\w*|blocage)\b/g;
/** "Peut pas attendre" has words of waiting and is none. */
export const cantWait = /\bpeut pas attendre\b/;
