/** French yes, no, and the many ways of being unsure. Tried in the order: neutral, unsure, no, yes. */

/** Sounds like yes or no and is neither. */
export const neutral =
  /\b(?:pas|jamais) (?:trop |si |tellement )mal\b|\b(?:meme pas|pas meme|pas) (?:bronchee?|pleuree?|reveillee?|sourcille|reagi(?= ?(?:$|[,.!])))\b|\b(?:je |jai |on )?(?:comprends?|compris|saisis?|pige|capte) (?:pas|rien)(?: (?:trop|bien|vraiment))?\b|\b(?:pas|sans|aucun|nul|zero|0) (?:de |le moindre |la moindre |le |trop de |grand |gros |vraiment de )?(?:problemes?|soucis?|difficultes?|histoires?|doute|stress|galere|misere|trouble)\b|\brien a (?:signaler|redire|dire|declarer)\b|\bcomme si de rien (?:etait|n etait|netait)\b|\bpas de quoi\b|\bpas (?:mal|grave|de souci|la peine|besoin de repondre)\b|\bn importe\b|\bpourquoi pas\b|\b(?:ma reponse|ce que jai (?:dit|ecrit)|cetait|cest) (?:etait )?(?:fausse?|faux|une erreur)\b|\bme suis trompee?\b|\bpas a pas\b|\b(?:(?:veut|voulait|veulent) rien (?:savoir|entendre)|(?:y|en) (?:comprends|comprend|vois|pige|capte|connais) (?:rien|pas grand chose)|rien a voir|(?:sert|servait) a rien|ca fait rien|(?:(?:ca|cela) )?(?:(?:me|te|vous) )?dit rien|(?:de|pour) rien|peux rien(?: faire)?|(?:fais|fait|faire|ferai|avec ou) sans|non mais (?:attend\w*|oh|allo|quoi|franchement|serieux\w*|je reve|dites|dis|bon|vous))\b|\bquitte (?:jamais|pas|nplus)\b|\bpas encore une fois\b|\bi ni (?:ce|che|tie|sogoma|su|baara)\b|\b(?:cru|croyais|pensais|craignais|avais peur|peur)(?: (?:que|qu|je|jy|y|jamais|on|elle|ca|de|la|le))* \w+ (?:pas|jamais)\b|\bpas (?:pire|bete|cool|vrai \?)|\bsans (?:broncher|rechigner|sourciller|pleurer|reagir|se reveiller|hesiter|histoire)\b|\bpas (?:un|le moindre) (?:bruit|mot|cri|pleur)\b|\bjai pas (?:vu (?:le |ton |votre |vos )?(?:message|texto|sms|temps)|fait expres|dormi)\b/g;

/** Beside an answer, and none: a wish not to, a thing that will not open. */
export const aside =
  /\b(?:(?:elle|il|bebe|petite?) (?:arrete|cesse) pas de \w+(?: avec (?:son|sa|ses) \w+)?|je (?:ne )?(?:veux|voudrais|voulais|souhaite) pas|(?<!^(?:non,? )?)j?ose (?:pas|meme pas)|^(?:non,? )?j?ose (?:pas|meme pas)(?= ?(?:$|[.!]))|(?:seringue|paquet|emballage|bouchon|capuchon|embout|raccord|rallonge|prolongateur|pince|gel|gants?)(?: \w+){0,2} (?:ne )?(?:rentre|entre|va|souvre|sadapte|tient|colle|correspond|se visse|fitte?|marche) pas(?: dessus| dedans| dans \w+)?|(?:j?arrive|je peux) pas a ouvrir)\b|\b(?:en )?(?:peux|tiens) (?:nplus|plus)\b(?! (?:rien|la |le |\w+er\b|\w+ir\b))|\b(?:j?ai |jai |on a )?(?:trop |tellement |tres |super |si )?peur de (?:lui |la |le |se |me )*(?:\w+)(?: mal)?\b|\b(?:laissez|laisse|quittez|quitte) pas\b|\b(?:ma|mon|sa|son) (?:blonde|chum|conjointe?|mari|femme|mere|pere|soeur|frere|copine|copain|ex|maman|papa)(?:,? (?:mais|et|qui|elle|il|me|nous))* repond(?:ait)? (?:pas|plus|nplus)(?: (?:au|a|sur) [a-z ]{1,20})?|\bpersonne (?:avec moi|pour (?:me |nous )?aider|qui (?:me |nous )?aide)\b/g;

export const unsure =
  /\b(?:(?:je |on |jen |y )?(?:le |la |en |me )?(?:sais|sait|savons|savait|savais|rappelle|souviens|souvient|connais|vois|voit) (?:pas|plus|nplus|rien|meme pas|vraiment pas|absolument pas|trop pas)(?: (?:trop|vraiment|bien|du tout|exactement))?|sais trop|(?:peux|peut|pourrais|saurais) pas (?:vous |te )?(?:le |la |en )?(?:dire|savoir)|(?:je |j|nous )?(?:le |la )?ignor(?:e|ons|ais)|(?:pas|plus|nplus|pa|moyen|moyennement|a moitie|pas trop|pas tres|pas vraiment|pas tellement|pas completement|pas totalement|pas tout a fait|pas super|pas trop bien|pas hyper|pas 100 ?%|pas a 100 ?%) (?:sur|sure|surs|certaine?s?|convaincue?)|pas (?:(?:trop|vraiment|tellement)(?! (?:bien|fort|top|en forme|super|ca|mal)\b)|exactement|completement|totalement|que je sache|a ma connaissance)|pas tout a fait|incertaine?|aucune idee|pas (?:la )?(?:moindre )?idee|pas d idee|pas de idee|peut etre|ptetre|(?<!\b(?:pas|nplus) )possible|possiblement|probable|probablement|surement|sans doute|(?<!(?:respir\w*|coul\w*|diger\w*|supporte|tolere|pris|bu|dormi|rentree?|entree?|alle|deroule|descendu|mange|dort|boit|joue|va|urine|tete|rit|gazouille|passe|passee) )normalement|en principe|theoriquement|je (?:crois|pense|suppose|dirais|presume|me demande|croyais|pensais|devine|croi|pens|crois bien|trouve(?! (?:pas|plus|nplus|rien|que (?:elle|il) (?:est|va) (?:\w+ )?(?:pas|mal|moins)\b)))|crois|(?<!\b(?:pas|jamais|a) )pense|(?:on )?dirait|me semble|ca semble|semble t il|semblerait|(?:ca|elle|il|sonde|ballon\w*|tout) a le air(?! (?:d |de |tres |toute? |vraiment |plutot |aller )*(?:bien|normale?|contente?|en forme|calme|tranquille))|jimagine|imagine|parait|mettons|faudrait (?:que je (?:voie|verifie|regarde)|voir|verifier)|verrai|verra bien|jespere|espere|esperons|esperant|jai l impression|le impression|impression que|devrait|doit|ca depend|depend|plus ou moins|a peu pres|presque sure?|quasi\w* sure?|mouais|moui|bof|mwouais|couci couca|genre|un genre de|des fois|parfois|difficile a (?:dire|voir|savoir)|dur a (?:dire|voir|savoir)|oui et non|moitie moitie|si vous le dites|(?:va|allez|qui) savoir|qui sait|a voir|ou (?:pas|non)(?= ?(?:$|[?.!]))|(?<=\b(?:oui|ouais|ok) )(?:mais )?si (?:cest|vous|je|on|elle|il|ca|y a)\b|ca se peut|se peut|il se peut|je doute|doute|hesite|non mais oui|ni oui ni non|en quelque sorte|(?<!\bpas )a moitie|je vais dire|faut croire|vaguement|eventuellement|j ai un doute|un doute)\b/g;

export const no =
  /\b(?:(?:absolument|strictement) (?:rien|aucune?s?)|(?:absolument|vraiment|certainement|surtout|bien sur que|evidemment|oh|ah|ben|bah) (?:non|pas)|(?:pas|nplus)(?: (?:du tout|vraiment|completement|entierement|tout a fait))* (?:exact\w*|correct\w*)|non+|nan+|nn|nop+|nope|nenni|nah|no|noon|noin|nno|npn|nin|(?<!\b(?:le|un|son|mon|du|au|ton|votre|quel|de) )nom(?! (?:du|de|des|d)\b)|mon(?=$)|negatif|negative|aucune?s?|rien|jamais|(?<!\b(?:une|la|cette|vraie|autre|de|en|meme) )personne|pas|nplus|ni|sans|point|nulle? part|que dalle|aucunement|nullement|pas le moins du monde|nada|niet|neant|walou|oualou|que pouic|^pantoute|incorrecte?|fausse?|faux|errone|que nenni|zero|pantoute)\b/g;

export const yes =
  /(?<=^|[,.!] ?)(?:we|wey|waip)\b(?! (?:dernier|passe|prochain|will|are|can|have|do|were|went|had|got))|\b(?:oui+|ouis|ouii|iui|oiu|oyi|oui oui|ouais?|ouaip|ouep|oue|ouai|(?<!ouin )ouin(?! ouin)|ouis|oui+e|wi|wii|ui|yes|yep|yup|yeah|yess|ye|yah|ok oui|affirmatif|absolument|certainement|evidemment|bien sur|biensur|bien entendu|tout a fait|toutafait|effectivement|en effet|exactement|exact|carrement|assurement|tres certainement|mmh oui|si si|mais oui|ouip|yessir|ouaips?|vi|oki doki|en plein (?:ca|dedans)|comme de juste|vrai|correct|correcte|parfaitement)\b/g;

/** No as an answer of its own; "elle ne voit pas" says no to something else. */
export const plainNo =
  /\b(?:(?:absolument|strictement) (?:rien|aucune?s?)|(?:absolument|vraiment|certainement|surtout) (?:non|pas)|aucunement|nullement|pas le moins du monde|nada|niet|walou|oualou|que dalle|pas du tout|bien sur que non|non+|nan+|nn|nop+|nope|nah|no|noon|negatif|(?:que )?nenni|aucune?s?|rien(?! (?:qui |que |a |de |ne )*(?:a |est |ait )?(?:bouge|change|(?:neuf|9|nouveau) depuis|evolue|modifi|redire|corriger|rajouter|ajouter|oublie)\w*)|jamais(?! (?:vu|eu (?:aussi|si)))|ni)\b|^pantoute\b/g;

/** A question of theirs, not an answer. */
export const question =
  /^(?:(?:ok|okay|daccord|donc|alors|attendez|attends|euh|et|mais|desole|pardon|bonjour|bonsoir|allo|sinon) )*(?:si (?!(?:on|je|jen|y|il) (?:en )?(?:ai |a |ai$|a$)(?!.*(?:\?|\b(?:quoi|comment)\b)))(?:je|on|elle|il|ca|jamais|y a|cest) .*|est ?-?ce (?:que|qu)|esque|eske|es ce que|dois(?: |-)?je|doit(?: |-)?on|je dois|on doit|faut(?: |-)?il|il faut|faut que|je peux(?! (?:pas|plus|nplus))|peut(?: |-)on|puis(?: |-)?je|peux(?: |-)tu|pouvez(?: |-)vous|cest quoi|ca (?:doit|devrait) (?:ressembler|etre|faire) (?!(?:\d|une?\b|genre|environ|dans les|bien|a peu pres|presque|deja|facile|pas loin|autour|peut etre|bon|ok|la\b|ca\b))|cest \w+ si\b|cest normal|cest grave|comment|pourquoi|ou (?:est|dois|puis|faut|on|je)\b|quand (?:est ce|dois|faut|on peut|je peux|pourr)|combien|quoi\b|quel(?:le)?s? (?:est|sont|sonde|tube|tuyau|kit|trou|couleur|difference|heure|taille|temperature|quantite|dose|position|sens|cote|bout|seringue|question|etape|trousse|bandelettes?|poids|date|bouton|type|genre|sorte|urgences?|hopital|numero|medecin|signes?|eau|produit|pansement)|(?:la |le |les |une? )?(?:\w+ )?cest (?:laquelle|lequel|lesquel\w*|combien|pour quoi faire)|(?!(?:je |on )?(?:sais?|sait|savais) |(?:non|nan),? cest quoi (?:dailleurs|de ailleurs|au fait))(?:\w+ ){1,3}cest (?:quoi|comment|ou)\b|ca (?:veut dire|signifie|sert a) quoi|(?:je |on )(?:la |le |les |lui )?(?:fais|fait|mets|met|donne|donnes|pousse|laisse|jette|garde|touche|appelle|reveille|nettoie|rince|coupe)(?: \w+){0,4} ou (?:pas|non|jattends?|pas encore|quoi)\b|(?:vous|tu) (?:pouvez|pourriez|peux|pourrais|savez|auriez) [^.!?]{1,60}\?|(?:vous|tu) (?:voulez|veux|preferez|preferes|parlez|parles|demandez|demandes|entendez|entends)\b|(?:je |on )(?:la |le |les )?(?:jette|mets|garde|pousse|laisse|reveille|touche)\w*(?: \w+){0,3} ?\?|qui (?:est|dois|peut)|que (?:dois|faire|faut|faites|veut|se passe)|qu est ce|quest ce|a quoi|on fait quoi|je fais quoi|va(?: |-)t(?: |-)(?:elle|il)|.{0,40}\battend(?:s|ez)?,? (?:je|on) (?:vais |va )?(?:lui |leur )?demander?\b|.{1,60}\b(?:jusque? ou|dans quel sens|de quel cote|a quelle profondeur|de combien)$|allez(?: |-)vous|vous etes|etes(?: |-)vous|y a(?: |-)t(?: |-)il)/;

/** Means yes only when it is a whole statement of its own, so that a slip before it cannot turn it round. */
export const yesStatement =
  /^(?!a$)(?:si|si si|voila|cest (?:ca|cela|sa|exact|bon|bien ca|juste|vrai|correct)|ca y est|ca yest|je suis sure?|jen suis sure?|sure et certaine?|certaine?|sur a 100 ?%|sur|tout est (?:exact|juste|bon|vrai|correct)|(?:oui )?(?:(?:on |je |jen )?(?:l )?(?:ai|a|en ai|le a|lai)|(?:elle|il) (?:le a|l a))|exact|juste|vrai|toujours)$/;

/** Words before or after a statement that change nothing. */
export const filler =
  /\b(?:ok|okay|daccord|alors|bon|ben|bah|bin|hop|eh|he|euh+|hum+|hein|la|donc|voila|svp|ma (?:chere|bonne|brave|petite) dame|mon (?:cher|bon|brave) (?:monsieur|ami)|chere?s?|deh|dh|wesh|snif+|zut|mince|merde|helas|malheureusement|franchement|honnetement|putain|purée|puree|pff+|ouais bon|du coup|merci|mrc|bonjour|bonsoir|allo|salut|lol|mdr|omg|mon dieu|dieu merci|(?<!\b(?:est|cest|sont|tout|toujours|encore|bien) )juste|deja|maintenant|enfin|ici|(?<!\b(?:toujours|encore|reste|restee?s?|sommes|est) )(?:a la maison|chez nous|chez moi)|avec (?:moi|nous)|madame|monsieur|mme|desole|pardon|infirmiere|docteur|oh|ah|wallah|quand meme|genre|ouf)\b/g;

/** Whatever stands before the last of these was taken back. */
export const correction =
  /\b(?:(?:euh )?non (?:pardon|en fait|plutot|excuse\w*)|non (?:mais )?attend(?:s|ez)?|(?<!\b(?:on|nous|je) )attend(?:s|ez)?|att|je (?:voulais|veux) dire|je veux dire|en fait|enfait|enfaite|pardon|oups|oops|desole|excuse(?:s|z)?(?: moi)?|je me suis (?:trompee?|gouree?|plantee?)|me suis (?:trompee?|gouree?|plantee?)|correction|rectification|je (?:corrige|rectifie)|(?<!\b(?:y a|avez|vois|reste|dans|fait) (?:une |des |aucune |pas d |pas de )?)erreur(?! (?:dans|sur|de (?:date|poids|sonde|prenom|nom)|au))|faute de frappe|non bref|bref|plutot|enfin non|non cest pas ca|ou plutot|je me trompe|mea culpa|autocorrect\w*|scuse\w*)\b/g;

/** What only somebody says who corrects an answer already given. */
export const meant =
  /\b(?:je voulais dire|correction|je (?:corrige|rectifie)|je me suis (?:trompee?|gouree?|plantee?)|faute de frappe)\b/;

/** A no as it stands beside words of correction: "non, attends". */
export const bareNo = 'non|nan|nn';
/** What a value is set against: "7 kilos, pas 17", "une gj pas une g". */
export const contrast =
  /(?<=\b(?:\d[\d.]*(?: ?[a-z]{1,11})?|g ?-?j|g|j),? )(?:et )?(?:pas|non|au lieu de) (?:une? |la |le )?(?:\d[\d.]*|g ?-?j|g|j)\b|^(?:non,? )?(?:cest |cetait |elle fait |il fait |fait )?pas (?:une? )?(?:\d[\d.]*|g ?-?j|g|j)\b(?=.*\b(?:\d|g|gj|j))/g;

/** Said alone these take nothing back. */
export const softCorrection =
  /^(?:desole|en fait|enfait|enfaite|pardon|excuse|excuses|excusez|excusez moi|excuse moi|plutot|scuse\w*|attend|attends|attendez|att)$/;

/** Short words that are no slip of "not", "think" and their kin. */
export const doubtWords: readonly string[] = [
  'pas',
  'jamais',
  'rien',
  'aucun',
  'aucune',
  'sans',
  'crois',
  'pense',
  'peut',
  'doute',
  'suppose',
  'espere',
  'semble',
  'dirait',
  'sais',
  'probablement',
  'devrait',
  'presque',
  'non',
  'nan',
];

/** Real words one letter away from them. */
export const noSlips: ReadonlySet<string> = new Set(
  'par bas cas las mas pus pis pays has pass passe passer pan pau vas tas ras pris pres plus peu peux peur peuvent sur sens sang dans sons cent bien bie lien tien mien sien tiens viens riens bon mon ton son nos nom nona ban fan van mais fais vais mauvais trois droit croit croix cris fois mois froid penser panse pansement pensez pend tense dense pente pur put put route toute doutes voute coute double deux eut peut-etre ensemble semblait assemble exemple sain saine sait sachet sac mis mise mal main maman mama an ans nous nan non nos oui ouf bout douce trace tracee but tout pot pote pose posee poser expose suppos disait dirai tirait espace espece paspas poas sauf sous sirop mai sa ses seins fait lait nais jamai pars part appas repas pages page paye parc paix paie pois poids papa pate pale pain pays plat pied pile pince piece pense repense as ai aie han nana maintenant none nein noir noire noel dos don nord norme normal lance chance france anse danse mince rince crise bris prise croire cross soir bois lois rois vois dois sans saint sanz aux nuit nue nu naan pam pal pli pic paf pab pad pac pal'.split(
    ' ',
  ),
);

/** What leads to a verdict: "donc oui". */
export const conclusion = /(?<=\w,? )\bdonc,? (?=(?:oui|non)\b)/g;
/** A word of the question said again before it is answered: "le kit? non". */
export const echo =
  /^(?:(?:le|la|les|un|une|du|de|des|mon|ma|sa|son) )*(?:kit|trousse|bandelettes?|tube|sonde|ballonnet|bouton|contenu|douleur|sang|fievre|clinique|poids)\?+$/;
/** A question that only asks what was meant, with or without its mark. */
export const asksMeaning =
  /^(?:(?:ok|attendez|pardon|euh) )*(?:vous voulez dire|(?:ca veut|ca voulait|cela veut) dire quoi|que voulez vous dire|comment ca)\b/;
/** Asked at the end of a statement. */
export const asksAtEnd = /,? ?\best ce (?:normal|grave|bon|correct)[ ?]*$/;
