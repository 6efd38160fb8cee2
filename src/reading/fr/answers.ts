/** French for the answers to the plainer questions, beside yes and no. */
import type { Statements } from '../yesNo.ts';
import { matter } from './negation.ts';

const have =
  '(?:(?:oui |ok )?(?:jai|ai|on a|nous avons|elle a|il a|je (?:le|la|les) (?:ai|tiens)|on (?:le|la|les) a|jen ai|on en a|y a|y en a|voici|trouvee?s?|jai (?:bien|trouve|retrouve)|jai tout|je (?:l |le |la |les )?ai|j en ai|en ai|le ai|je tiens|je possede|on en possede))';
const thing =
  '(?:(?:bien |tout |encore |aussi |toujours |deja )*(?:ca|tout|1|2|3|une?|(?:le |la |les |un |une |des |notre |mon |ma |son |sa |du |petite?s? |fameuse?s? |bonnes? |nos |mes |ces |quelques )*(?:kit|trousse|bandelettes?|languettes?|papier|sonde|tube|bouton|sac|boite|necessaire|materiel)s?(?: (?:de |d |du |ph|urgence|secours|test|depannage|temporaire|rechange))*)?)';
const place =
  '(?: (?:avec|moi|nous|la|ici|dans|le|son|sac|a|maison|cote|main|pret|prete|et|sur|devant|de|secours|rechange|urgence|chez|voiture|placard|tiroir|armoire|frigo|sous|les|yeux|mains|en|on|dispo|disponible|l|hopital|formee?|encore|quelques|restent|reste|toujours|au|complet))*';

/** A place at hand: anywhere but where somebody would have to go for it. */
const atHand =
  '(?:dans|sur|sous|derriere|devant|a cote de|au dessus de|en bas de) (?:(?:le|la|les|l|mon|ma|mes|son|sa|ses|notre|un|une) )*(?!(?:auto|voiture|char|camion) de\\b|ecole|creche|garderie|travail|hopital|clinique|pharmacie|autre\\b)[a-z]+(?: (?:de|du|des|a|au|d|en)(?: (?:le|la|les|l|sa|son|ma|mon))? [a-z]+){0,2}';
/** Where things lie in a home. */
const keptIn =
  '(?:(?:dans|sur|sous) )?(?:(?:le|la|les|l|mon|ma|son|sa|notre|un|une) )*(?:armoire|placard|tiroir|commode|garde robe|etagere|table|frigo|frigidaire|refrigerateur|sac|sac a (?:langer|couches|dos|main)|sacoche|valise|boite|pharmacie|chambre|cuisine|salon|salle de bain|lit|bureau|comptoir|panier|poussette|bac|pochette|trousse|mains?)';

export const kit: Statements = {
  matter: matter.kit,
  // Latex in it may be what the child cannot have.
  unless: /\b(?:y a|contient|est|sont) (?:du |de le |en )?latex\b|\blatex dedans\b/,
  neutral:
    /\b(?:jamais|pas|nplus)(?: (?:encore|eu|ete|du|besoin|de|a|le|la|lai|les))* (?:fait|utilise\w*|servie?|essaye\w*|ouverte?|ouvrir|fait|faire|perimee?s?|besoin|expire\w*|servir)(?: (?:seule?|ca|moi meme|encore|toute seule))*\b|\b(?:pas|plus|nplus|sans) (?:de )?(?:gel|lubrifiant|gants?|compresses?|sparadrap|seringue)\b|\b(?:pas|sans) (?:la |le |de |son |sa )?(?:boite|sachet|pochette|notice|emballage|mode de emploi)\b/g,
  yes: new RegExp(
    `^${have} ?${thing}${place}$|^(?:(?:oui|la|ici|le kit|trousse|kit|sac|notre|elle|il|cest|tout|rangee?|toujours|juste) )*(?:est|sont|y est|cest|jai ca|je le ai|je la ai) (?:(?:la|ici|rangee?|juste|toujours) )*${atHand}$|^(?:(?:oui|la|ici|rangee?|juste) )*${keptIn}(?: (?:de|du|a) (?:(?:la|le|sa|son|ma|mon) )?[a-z]+){0,2}$|^je viens de (?:le|la) (?:sortir|prendre|trouver|ouvrir|recuperer)$|^(?:kit|trousse)${place}$|^(?:la |le |notre )?(?:trousse|kit) est (?:la|ici|prete?|complete?)(?![ -]bas)(?: \\w+){0,6}$|^(?:(?:je |on |jai |nous |elle |il )*(?:a |ai |avons |ete |etais |etait |suis |sommes |avais )*(?:formee?s?|montre|apprise?|appris|entraine\\w*)).*$|^(?:(?:la |une |le |un )?(?:infirmi\\w+|hopital|medecin|docteur|ils|elle|il|on)) (?:me |nous |mont )?(?:a |ont |avait )?(?:bien )?(?:montre|explique|forme|appris).*$|^(?:(?:elle|trousse|le kit|la trousse|il) est|cest|tout est) (?:la|ici|pret|devant moi|dans (?:le|mon|son) sac)$|^(?:(?:le |la |notre )?(?:kit|trousse) )?(?:trouvee?|y est|prete?|en main|sortie?|ouverte?|dispo\\w*|presente?|sous la main)$|^je sais (?:comment )?faire.*$|^on (?:me|nous|le?) ?a (?:bien |deja )?(?:montre|explique|appris|forme).*$`,
  ),
  no: /\b(?:(?:trouve|retrouve) (?:pas|plus|nplus)|perdu|perdue|restee? (?:a|chez|au)|laissee? (?:a|chez|au|dans)|oublie\w* (?:a|chez|au|le|la)|le a oubliee?|oubliee?$|deja utilisee?|plus (?:de|d) (?:kit|trousse|bandelette\w*)|pas (?:de )?(?:kit|trousse)|(?:a|ai) (?:pas|plus|nplus) recu|tout utilise|introuvable|(?:pas|jamais|rien|nplus|aucune?)(?: (?:encore|de|du|d|le|la|les|notre|nos|mon|ma|son|sa|un|une|ce|cette|tel|cela|ca|toujours|ete|nous|a))* (?:kit|trousse|sac|necessaire|materiel|boite|autre|eue?s?|donnee?s?|recue?s?|remise?s?|remis|fournie?s?|laissee?s?|prevue?s?|prescrite?s?|livree?s?|ici|la|sous la main|a la maison)|sans (?:le |la |mon |notre )?(?:kit|trousse|materiel))\b/,
};
export const neverDone = /\b(?:jamais|pas)(?: (?:\w+))? (?:fait|essaye\w*|utilise\w*|pratique\w*|le faire)\b/;
export const shown =
  /\b(?:montre\w*|formee?s?|appris\w*|explique\w*|sais (?:comment )?faire|entraine\w*|sait (?:comment )?faire)\b/;
/** The kit is not where they are, whatever it lies in. */
export const kitAway =
  /\b(?:(?:mari|femme|conjointe?|copain|copine|chum|blonde|mere|pere|maman|papa|mamie|papi|soeur|frere|nounou|gardienne|infirmiere|elle|il) (?:le a|la |les a|a) ?(?:emportee?|emmenee?|prise?|amenee?)s?(?: avec \w+)?(?! (?:une? |la |le )?(?:fois|photo|formation))|partie?s? avec(?: (?:le |la )?(?:kit|trousse|auto|voiture|char|sac|camion))?(?= ?(?:$|[,.!]))|(?:qui |elle |il |mere |pere |soeur )(?:le |la |les )(?:a|ont) (?:chez|dans son|dans sa|au|a son|a sa|avec)|(?:est|sont|restee?s?|laissee?s?) (?:chez|a le ecole|a la creche|a la garderie|au travail))\b/;
/** Someone else was shown, and is not there. */
export const otherShown =
  /\b(?:femme|mari|conjointe?|maman|papa|mere|pere|infirmi\w+|mamie|grand mere|belle mere|copine|copain|epouse|elle|il|soeur|tante|fille|fils|frere|cousine?|voisine?|nounou|gardienne|auxiliaire|aide|avs|aesh)\b.{0,30}\b(?:formee?|montre\w*|appris|sait (?:comment )?faire|sait le faire|explique\w*)\b.{0,30}\b(?:travail\w*|boulot|job|absente?|pas la|pas ici|dort|partie?|sortie?|voyage|deplacement|loin|injoignable|pas (?:a la )?maison|repond pas)\b/;
export const notShown =
  /\b(?:(?:jamais|pas|personne|nul|aucune?|nplus)(?: (?:\w+)){0,4} (?:montre\w*|formee?s?|formation|apprise?|appris|explique\w*|entraine\w*|montrer|apprendre|comment (?:faire|on fait|ca marche))|(?:sais|sait|savons|savent) (?:pas|plus|nplus|vraiment pas|pas du tout)(?: \w+){0,2} (?:comment|faire|quoi faire|me servir|utiliser|servir|le utiliser|le mettre)|(?:pas sure?|aucune idee|oublie)(?: \w+){0,2} (?:comment|quoi faire)|(?:personne|aucun)(?: \w+){0,4} (?:sait|forme\w*|montre\w*|appris|explique\w*)|sans formation|(?:sais|sait) pas faire|me a rien (?:montre|appris|explique)|rien (?:montre|appris|explique)|formation,? (?:jamais|non|aucune|pas encore))\b/;
export const ownTube: Statements = {
  matter: matter.ownTube,
  yes: new RegExp(
    `^(?!ok$)(?:(?:elle |il |cest |ca |tout |toute |est |a le air |le air |semble |parait |ballon\\w* )*(?:bon|bonne|bien|ok|nickel|parfait|parfaite|impeccable|impec)|${have} dans la main tout va bien|${have}|je (?:la|le) garde|jai (?:garde|recupere|conserve)|gardee?|recuperee?|garde) ?(?:${thing}|entier|entiere|en entier)${place}$`,
  ),
};
export const strips: Statements = {
  matter: matter.strips,
  yes: new RegExp(
    `^${have} ?${thing}${place}$|^(?:(?:oui|la|ici) )*(?:elles sont|cest|sont) (?:(?:la|ici|rangees) )*${atHand}$|^(?:(?:oui|la|ici) )*${keptIn}(?: (?:de|du|a) (?:(?:la|le|sa|son|ma|mon) )?[a-z]+){0,2}$|^elles sont (?:la|ici)$|^(?:(?:ah|si|oui|voila|tiens|bon) )*(?:les |des |mes )?(?:petites? )?(?:bandelettes?|languettes?) (?:(?:sont|y sont|bien|toujours) )*(?:la|ici|presentes?|trouvees?|retrouvees?|pretes?|en main|dispo\\w*|rangees?|dans)(?: (?!pas\\b|plus\\b)\\w+){0,5}$|^(?:jen ai|en ai) trouvee?s?$|^(?:il )?me? ?en reste(?: (?:encore |juste )?(?:1|2|3|\\d+|une|quelques unes|quelques|plein))?$|^bandelettes?$|^(?:juste |encore |plus que |reste |il en reste |il reste |il me reste |il men reste )*(?:1|2|3|une|quelques unes|quelques|plein|plusieurs)(?: restantes?| qui restent?| seule)?$`,
  ),
  // Strips past their date are no strips.
  no: /\b(?:(?:trouve|retrouve) (?:pas|plus|nplus)|perdu\w*|restee?s? (?:a|chez|au)|laissee?s? (?:a|chez|au)|oublie\w*|(?:plus|nplus|pas) (?:de |d )?(?:bandelettes?|languettes?|papier)|j?en ai (?:plus|nplus)|en a (?:plus|nplus)|reste (?:plus|nplus)(?! que)|(?:mere|pere|maman|papa|mamie|soeur|frere|mari|femme|nounou|elle|il) (?:qui )?les a (?:chez|avec|dans)|(?:epuise\w*|vide|finie?s?)|tout utilise|(?:pas|jamais|rien|nplus|aucune?)(?: (?:encore|de|du|d|le|la|les|notre|nos|mon|ma|son|sa|un|une|ce|cette|tel|cela|ca|toujours|ete|nous|a))* (?:bandelettes?|languettes?|papiers?|testeurs?|autres?|une?|seule|dans (?:la|le|notre|ma|mon)|eue?s?|donnee?s?|recue?s?|remise?s?|remis|fournie?s?|laissee?s?|prevue?s?|prescrite?s?|livree?s?|ici|la|sous la main|a la maison)|(?:plus|nplus|pas) (?:aucune?|une seule)|(?<!pas |pas encore |nplus )(?:mouillee?s?|humides?|perimee?s?|expiree?s?|passees? date))\b/,
};
const liquid =
  '(?:lait|laiteux|liquide|jus|suc|formule|truc|trucs|chose|un peu|gouttes?|contenu|blanc\\w*|jaun\\w*|clair\\w*|transparent\\w*|trouble|caille\\w*|grumeaux|beige|verdatre|\\d+(?:\\.\\d+)? ?(?:ml|mls|cc)|preparation|nourriture|aliment\\w*|suc gastrique|gastrique|quelque chose|mousse|vert\\w*|brun\\w*|marron)';
export const contents: Statements = {
  matter: matter.contents,
  neutral: /\bpas (?:encore )?(?:fini|termine|prete?)\b|\ba moitie (?=pleine?|remplie?|diger\w*)/g,
  yes: new RegExp(
    `^(?:(?:(?:oui|ok|jai|jen|ai|on|y|je|la|il|elle|cest|ca|eu|vu|tire|aspire|ramene|recupere|remontee?|revient|revenu|sort|sorti|vient|monte|vois|obtenu|recois|ressort|donne|pu|du|de|le|des|un|une|bien|quelques|peu|petit|tout|genre|encore|environ|a|dans|seringue|est|avoir|tirer|aspirer|en|retire|doigt|fond|filet|trait|bonne?|moitie|demie?|pleine?|remplie?|seringuee|juste|assez|epais|epaisse|chouia|poil) )*${liquid}\\b.*|(?:(?:ca (?:a )?(?:remonte\\w*|revient|marche|monte|vient|coule|sort|sorti|ressort|revenu) ?)+|jen ai (?:eu|tire|recupere|ramene)|reussi|un (?:petit )?peu|quelques gouttes|cest (?:re)?venu)(?: (?:bien|un peu|dans la seringue|tout seul|facilement))*)$`,
  ),
  // What went in and comes back again is not the stomach's.
  unless:
    /\beau (?:\w+ ){0,3}(?:mis|mise|pousse\w*|rince\w*|injecte\w*|donnee?|rincage)\b|\b(?:mon|notre|de) eau\b|\beau de rincage\b/,
  no: /\b(?:^(?:de le )?air$|(?:que|juste|seulement|uniquement) (?:de )?(?:le )?(?:air|bulles|du vide)|de le air|du vent|air seulement|rien|sec|a sec|vide|bulles|(?:veut|peut|arrive|arrives|peux|reussis|remonte|revient|vient|sort|marche|monte|tire|coule|aspire) (?:pas|plus|nplus|rien|toujours rien|toujours pas)|(?:pas|nplus|ni|aucune?)(?: (?:de|d|une|un|la|le|moindre|seule|du))* (?:gouttes?|liquide|lait|jus|suc|contenu|chose)|que dalle)\b/,
};
export const looksRight =
  /\b(?:comme (?:d ?|de )?habitude|comme toujours|lait\w*|blanc\w*|blanchatre|trouble|caill\w*|yaourt\w*|yogourt\w*|fromage (?:cottage|blanc)|grumeaux?|grumeleux|formule|beige|creme|vert herbe|vert (?:clair|pale)?gazon|herbe|(?:points?|flocons?|grains?|particules?|petits? bouts?|taches?|filaments?) (?:bruns?|marrons?|fonces?)|(?:brune?s?|marrons?|fonces?)(?: \w+){0,5} (?:bouts|points|grains|flocons)|contenu (?:gastrique|de l estomac|de le estomac)|(?:comme|du|le) (?:contenu|suc|jus) (?:de )?(?:le estomac|gastrique)?)\b/g;
export const looksWrong =
  /\b(?:jaun\w*|dore\w*|paille|jus de pomme|comme (?:de le |du )?(?:pipi|urine)|or\b|ambre\w*|rouge\w*|(?<!\b(?:brune?|marron|verte?|beige|blanc|blanche) )clair(?:e|es|s)?(?! que)|eau|aqueux|limpide|transparent\w*|incolore|bile|bilieux|vert (?:fonce|vif|bouteille|fluo|sapin|epinard)|noir\w*|rose\w*|rosatre|sang\w*|translucide|caca|selles?|comme de le eau)\b(?! non\b(?:$|[,.;!]| (?:plutot|blanc|lait|beige|cest)))/g;
export const looksOpen = /\b(?:vert\w*|brun\w*|marron\w*|verdatre)\b/;
/** Too little light to see is no answer, and makes a yes doubtful. */
export const looks: Statements = {
  matter: matter.looks,
  neutral: /\b(?:pas|nplus)(?: (?:beaucoup|assez|trop|bien))* de (?=lumiere\b)/g,
  unless: /\blumiere\b|\bcoupure de courant\b/,
};
export const looksUnsure =
  /\b(?:pas (?:sure?|certaine?)|(?:sais|sait|arrive|peux|vois) (?:pas|plus|nplus|trop pas)(?! (?:rouge|jaune|clair))|sais trop|aucune idee|difficile a (?:dire|voir)|dur a (?:dire|voir))\b/;
export const secured: Statements = {
  matter: matter.secured,
  yes: /^(?!ok$)(?:(?:cest |tout est |tout |ok |bon |voila )*(?:fait|fini|termine|en place|bon|ok|regle|nickel|pret|fixee?|scotchee?|securisee?|attachee?|rempli|gonfle|gonflee)|(?:(?:elle |il |tout |cest |sonde |la sonde |tube |le tube |ballon\w* |le ballon\w* |ca |est |sont |bien |tient )+(?:fixee?|scotchee?|collee?|securisee?|attachee?|en place|serree?|rempli|gonfle|bien|stable|tendue?|bon|ok|plaquee?|solide))(?: (?:et|est|bien|fixee?|scotchee?|collee?|tape|gonfle|rempli|sonde|la|le|ballon\w*|en|place|sur|peau|ventre|contre|tient|avec|du|sparadrap|bouge pas))*|(?:jai |on a |ai )(?:tout |bien )*(?:fait|rempli|gonfle|scotche|colle|fixe|mis|tape|attache)(?: \w+){0,7}|ballon\w* (?:est )?(?:rempli|gonfle|plein|ok)(?: \w+){0,6}|ca (?:tient(?! (?:pas|plus|nplus))|bouge pas)(?: \w+){0,3}|(?:la )?sonde (?:tient(?! (?:pas|plus|nplus))|bouge pas)(?: \w+){0,3}|tout (?:est )?(?:bien )?(?:fixe|fait|bon|ok|en place)|(?:(?:cest|elle est|il est|tout|bien|ca y est|la sonde est|voila|deja|est) )*(?:fixee?|scotchee?|collee?|attachee?|tapee?|securisee?|gonflee?|remplie?)(?: (?:avec|et|du|de|la|le|les|bien|tape|micropore|sparadrap|scotch|ruban|pansement|adhesif|ml|cc|\d+(?:\.\d+)?|eau|comme|il|faut|solide(?:ment)?|fort|ballon\w*|dedans|dans|sur|ventre|peau|partout))*|(?:la |le |les )?(?:fixation|sparadrap|scotch|pansement|tape|ruban|adhesif|micropore|collant)s? (?:(?:est|sont|bien|aussi|cest|tout) )*(?:faite?s?|mise?|mis|posee?|pose|ok|bon|bonne|solide|aussi|nickel|en place|termine\w*|colle)(?: \w+){0,3}|\d+(?:\.\d+)? ?(?:ml|cc)(?: (?:de|le|eau|dans|ballon\w*|dedans))* (?:mise?|mis|injectee?s?|dedans)(?: (?:dans|le|ballon\w*))*)$/,
  neutral:
    /\b(?:(?:ca|elle|il|sonde|tube|bouton) )?(?:bouge|glisse|coule|fuit|sort) (?:pas|plus|nplus)\b|\bpas de fuite\b/g,
  no: /\b(?:(?:arrive|peux|peut|veut|reussis|reussit|pu|parviens)(?: (?:toujours|meme))* (?:pas|plus|nplus)(?: (?:a|le|la|se|de|y))* (?:gonfl\w*|rempli\w*|fix\w*|coll\w*|scotch\w*|attach\w*|tenir|tendre|injecter|pousser|mettre|faire tenir)|(?:eau|ballon\w*|tout)(?: (?:me|de|du|le|la|ballon\w*|en|a|est|toujours|encore))* (?:ressort\w*|revient|revenue?|repart|fuit|fuyait|se vide)|(?:sonde|tube|ca|elle) (?:se |me )?(?:balade|promene|branle|gigote)|(?:tient|tiens|colle|reste|gonfle|remplit) (?:pas|plus|nplus)|lache\w*|lousse|(?:elle |il |ca |sonde |tube )(?:bouge|glisse|sort|coulisse|flotte)(?! (?:pas|plus|nplus))|desserr\w*|pas (?:encore )?(?:fini|fait|fixe\w*|scotche\w*|rempli|gonfle|serre\w*|attache\w*)|encore en train|a moitie|mal fixe\w*|pas (?:bien |assez )?(?:serre\w*|tendue?|colle\w*|tape\w*|scotche\w*)|plus de (?:sparadrap|ruban|scotch|tape)|(?:sparadrap|ruban|scotch|tape) (?:colle|tient) (?:pas|plus|nplus)|pas (?:le )?ballon\w*|pas (?:de )?(?:sparadrap|ruban|scotch)|presque|bientot|manque (?:le|la|du|un|une|encore|juste))\b/,
};
export const firstFeed: Statements = {
  matter: matter.firstFeed,
  // "Pas de fuite, rien": after a sign denied it says no more.
  neutral: /;[ ,]*rien(?: du tout)?\b/g,
  yes: /^(?:(?:ca |tout |elle |il |le repas |le gavage |repas |gavage |se est |sest |est |a |cest )*(?:bien |tres bien |super bien |ok |nickel )+(?:passee?|tolere\w*|alle|supporte\w*|pris)?(?: \w+){0,3}|(?:ca |tout |elle |il )*(?:se est |a |va |est )*(?:bien |tres bien |super )*(?:tres )?(?:bien|passe bien|ok|nickel|parfait|impeccable|bien passe|tolere|bien tolere)|(?:ca |cest |tout )?(?:est )?passee?|(?:le )?boire a bien (?:passee?|ete)(?: \w+){0,2}|tout est passe(?: (?:bien|doucement|lentement|tranquillement|facilement))*|(?:(?:elle|il|y|le gavage|enfant|le enfant|ca) )+a (?:bien|tout)(?: bien)? (?:ete|supporte|tolere|bu|pris|digere|garde)(?: \w+){0,3}|(?:aucun|pas de|sans) (?:probleme|souci)s?|rien a (?:signaler|redire|dire)|ras|super|parfait|(?:elle|il) a tout (?:bu|pris|mange|fini|garde)|(?:elle|il|y|bebe|petite?|le petit|la petite) a (?:bien |tout )*(?:pris|bu|mange|fini|recu|eu|garde|digere) (?:ses|son|sa|les|ca|tout)(?: (?!pas\b|mal\b|moitie\b|mais\b)\w+){0,5}|(?:nickel|super|parfait|top|impec\w*|genial|niquel)(?: (?:chrome|merci|bien))*|(?:tout |ca |cela |le |son |repas |gavage |lait |biberon |boire |bib |alimentation |nutrition )+(?:se |sest |est |a |va |passe |deroule |coule |descend |rentre |entre |roule |file |glisse |bien |tres |super )+(?:tranquille\w*|a merveille|bien|ben|super|impec\w*|nickel|parfait\w*|calmement|doucement|normal\w*|correct\w*|sans (?:souci|probleme|pb|broncher)s?|tout seul|en douceur|comme (?:d |de )?habitude|comme sur des roulettes)(?: \w+){0,3}|comme sur des roulettes|tout (?:roule|baigne|passe|va)|(?:elle|il) (?:dort|digere|suce|somnole|sourit|joue)(?: \w+){0,3} (?:tranquille\w*|paisible\w*|content\w*|bien))$/,
  no: /\b(?:du arreter|(?:va|passe|coule|descend|se passe|passait|coulait|supporte|tolere|marche) (?:vraiment |toujours |plutot )*(?:pas|plus|nplus|mal)|pas (?:top|fort|fameux|genial|ouf|folichon|super|la joie)|moyen\b|bof|pas (?:bien|encore|tres bien|terrible|bon)|mal (?:passe|tolere|alle)|(?:se est |ca a |a ete )?mal|horrible\w*|terrible\w*|arretee?|refuse|veut pas|catastrophe)\b/,
};
export const nextDay: Statements = {
  matter: matter.nextDay,
  yes: /^(?:(?:elle|il|tout|ca|bebe|cest|on|tout le monde|la petite|le petit)(?: (?!(?:pas|nplus|jamais)\b)\w+){0,3} ?(?:bien|tres bien|super|ok|mieux|normal\w*|forme|nickel|parfait|contente?|merveille)(?: (?:ce matin|aujourdhui|maintenant))*|(?:elle|il) est (?:partie?|sortie?|retournee?)(?: \w+){1,5} (?:forme|contente?|heureu\w+)|tout (?:va )?bien|(?:tout (?:est )?)?en ordre|(?:super|top|nickel|parfait|numero (?:un|1)|au top|impec\w*|que du bonheur)(?: (?:ce matin|aujourdhui|merci))*|comme si de rien (?:etait|netait|ete)|rien a (?:redire|dire|declarer)|ca va(?: (?!pas\b|plus\b|nplus\b|mal\b|moyen\w*\b|pire\b|guere\b)\w+){0,2}|(?:aucun|pas de|sans) (?:probleme|souci)s?|rien a signaler|ras|nickel|super|parfait|(?:tres |bien )*(?:bien|mieux)|comme (?:de |d )?habitude|(?:elle|il) (?:joue|rit|gazouille|court)(?: \w+){0,3}|(?:elle|il) a bien dormi(?: tout va bien)?|(?:(?:est |toujours |elle |il )*en )?(?:pleine |super |grande )?forme(?: (?:ce matin|aujourdhui|depuis hier|merci))*|(?:tout|bref tout|ca|donc tout) (?:roule|baigne|marche|file|gaze|passe|est beau|est normal|est rentre dans le ordre)(?: \w+){0,2}|(?:petite |bonne |une |la |tres |super )*nuit (?:a ete |etait |est )*(?:tres |plutot |super |bien )*(?:calme|tranquille|bonne|paisible|passee?|nickel|parfaite|sans (?:souci|probleme|histoire)s?)|bonne nuit(?: et)? bien (?:reveillee?|dormi)|(?:bien |encore |beaucoup )?mieux (?:que|qu) (?:moi|nous|hier|toi|jamais)(?: \w+){0,2}|(?:elle|il|la petite|le petit|bebe|tout|ca) (?:se porte|va|file|est)(?: (?:tout|tres))? (?:comme (?:un charme|une fleur|sur des roulettes|un coeur|d habitude|de habitude|avant)|a merveille|(?:bien |ben )?correct\w*|impec\w*|nickel|au poil|au top)(?: \w+){0,3}|pas (?:pire|mal)(?: (?:du tout|merci|pantoute))*|(?:elle|il) a (?:bien |tout |tres bien )?(?:dormi|mange|joue|bu)(?: (?:toute la nuit|comme un (?:bebe|loir|ange)|bien))*|tire d affaire|requinque\w*|repart comme en (?:14|quatorze)|petee? de forme|peteuse? de forme)$/,
  neutral:
    /\bpas (?:pire|mal)\b|\b(?:pas|plus|nplus|ni|aucune?|sans)(?: (?:de|du|tout|trop|tres|vraiment|est|d|le|la))* (?:rouge\w*|rougeurs?|irrit\w*|gonfl\w*|enfl\w*|inflam\w*|pus|infect\w*|suint\w*|coul\w*|odeurs?|malade|fuites?)\b|\b(?:coule|suinte|fuit|gonfle) (?:pas|plus|nplus)\b/g,
  no: /\b(?:mal|pire|malade|(?:pas|plus|nplus) (?:bien|tres bien|terrible|super|la forme|en forme|fort|top|genial|fameux|ouf|la joie|comme (?:d |de )?habitude|elle meme|lui meme|son assiette|dans son assiette)|empire\w*|bof|moyen\w*|couci|patraque|rouges?|rougeurs?|irrit\w*|enfl\w*|inflam\w*|pus|purul\w*|infect\w*|odeur|pue|sent (?:mauvais|fort)|bourgeon\w*|va (?:vraiment |toujours )?(?:pas|plus|nplus)|mauvaise nuit|nuit (?:blanche|horrible|difficile|agitee|compliquee))\b/,
};
export const arrived: Statements = {
  matter: matter.arrived,
  neutral:
    /\b(?:personne|on)(?: (?:nous|la|le|a|se))* (?:pas |encore )*(?:occupee?|occupe|vue?s?|regarde|appelee?s?|examine\w*)(?: de (?:nous|elle|lui))?\b|(?<=\b(?:arrivee?s?|la|ici|la bas|sur place|hopital|urgences|attend\w*|attente|est|sommes|suis) )(?:y a|depuis|ca fait) (?:environ |deja |bien )?\d+(?:\.\d+)? ?(?:min\w*|mn|heures?|h)\b|\bca fait (?:environ |deja |bien )?\d+(?:\.\d+)? ?(?:min\w*|mn|heures?|h) (?=qu?e? ?(?:on|nous|je) (?:est|sommes|suis|attend\w*)\b)|^.{0,120}\b(?:mais|et|la|enfin) (?=ca y est\b)/g,
  yes: /^(?:(?:(?:le|la|les|un|une|des) )?(?:docteure?s?|medecins?|infirmi\w+|pediatres?|chirurgien\w*|internes?|urgentistes?|ils|elles|on)(?: qui)? (?:(?:le|la|les|lui|nous|en|a|ont|vient|viennent|sont|de|deja|bien|ete|est|train|juste) )*(?:vue?s?|vus|examinee?s?|regardee?s?|remise?|mise?|posee?s?|prise?s?|changee?s?|reposee?|replacee?|auscultee?s?|poser|remettre|mettre|changer|voir|examiner|recue?s?)(?: \w+){0,6}|(?:elle|il|on) (?:est|a|vient) (?:(?:deja|de|bien|ete) )*(?:passee?s?|passer|vue?s?|recue?s?) (?:devant|par|avec|chez) (?:le|la|un|une) (?:docteure?|medecin|infirmi\w+|pediatre|chirurgien\w*)(?: \w+){0,4}|(?:en|dans la) salle(?: de)? attente|(?:on |nous |je |jy |y |elle |il |est |sommes |suis |ca |vient |viens |de |d |deja |bien )*(?:(?<!\b(?:on|nous|je|j) )arrivee?s?|arriver|dedans|la|a le hopital|aux urgences|sur place|admise?|inscrits?|pris en charge|prise en charge|dans la salle(?: \w+)*|a le accueil|hospitalisee?|y est|y sommes|(?<!\b(?:on|nous|je|j) )arrive|avec le (?:medecin|docteur)|avec (?:une? |la )?(?:infirmiere?|docteur|medecin))(?: (?:aux urgences|a le hopital|la|ici|en pediatrie|maintenant))*|(?:ca y est )?(?:qu |que )?(?:on|nous|elle|il|je) (?:est|sommes|suis|attend\w*)(?: (?:deja|bien|tous?))* (?:assise?s?|installee?s?|au triage|a le accueil|a le admission\w*|aux admissions|en salle|au guichet|en pediatrie|dans le (?:box|hall|couloir|service)|au box|en box|en consultation|avec (?:eux|le equipe)|garee?s?)(?: \w+){0,4}|ils (?:la|le|nous|s occupent|se occupent) .*|on nous a pris(?: en charge)?|on (?:la|le|nous) (?:voit|examine|soigne|prend)|(?:ca y est )?(?:le |la |un |une )?(?:docteur|medecin|infirmi\w+|pediatre) est (?:avec|aupres)(?: \w+){0,2}|on est (?:ici |la )?depuis \d+ (?:min\w*|heures?)|bien arrivee?s?(?: \w+){0,8})$/,
  no: /\b(?:en (?:route|chemin|voiture|train de (?:partir|rouler))|presque|bientot|pas encore|conduis|roule\w*|pas aller|y va pas|coince\w*|bouchons?|embouteillages?|trafic|part(?:ons)? (?:maintenant|la)|on part|a la maison|minutes|\d+ mins?|garer?|taxi|dans la voiture|sur la route|on arrive(?! a)|je arrive|jarrive|(?:on|nous|je|jy|j y) (?:y )?(?:va|vais|allons|file|fonce|decolle|se prepare|prepare|prend la route|prend le (?:bus|metro|train|taxi)|prend la voiture|met|habille|shabille|cherche|finis)(?! pas)|jhabille|je habille|je prepare|pas de (?:voiture|taxi|vehicule|transport|bus|moto|auto|char|lift|place)|partis? (?:y a|depuis|de)|tourne pour|cherche (?:une place|a se garer|le parking|le entree)|parking|jattends?|attends? (?:le|un|la|ma|mon))\b/,
};
/** Somebody else of the family who has called, however it is turned. */
const otherCalled =
  '(?:(?:mon|ma|notre|le|la) (?:[a-z-]+ ){1,2}(?:qui )?(?:(?:les|le|la|leur|y) )?(?:a|vient de) (?:(?:deja|bien|enfin|pu|ete) )*(?:appele\\w*|telephone\\w*|contacte\\w*|prevenue?s?|joindre|jointe?s?|eue?s?|parle|avise\\w*|ecrit|laisse (?:un )?message|pris (?:un )?(?:rdv|rendez[ -]?vous)))';

export const clinic: Statements = {
  matter: matter.clinic,
  neutral: new RegExp(
    `\\b(?:ils|elles?|on|la clinique) (?:nous |la |le |me )?(?:voi\\w+|recoi\\w+|prend\\w*|attend\\w*) demain\\b|\\b(?:(?:cest )?pas moi|moi (?:non|pas)|(?:jai|je) pas (?:pu|appele|eu le temps|pu appeler|eu le temps de appeler))(?=,? (?:mais |cest |par contre |et )*${otherCalled}\\b)`,
    'g',
  ),
  yes: new RegExp(
    `^(?:(?:oui|cest|mais|deja|par contre) )*${otherCalled}(?: \\w+){0,8}$|^(?:(?:oui |je |jai |on a |nous avons |viens de |leur |les ai |le ai |la |deja |ai |bien )*(?:appele\\w*|parle\\w*|laisse (?:un )?message|pris (?:un )?(?:rdv|rendez[ -]?vous)|rendez[ -]?vous|rdv|contacte\\w*|prevenue?s?|joint\\w*|telephone\\w*|fait|avise\\w*|eu (?:le |la |une? )?(?:infirmi\\w*|secretaire|medecin|docteur|service))(?: \\w+){0,8}|(?:ils|elles?|on) (?:me |nous )?(?:mont |ont |me ont |nous ont |ma |me a |nous a |a )?rappelee?s?(?: \\w+){0,3}|(?:cest )?(?:fait|pris|note|prevu)|(?:je |on |nous )*(?:les ai|la ai|le ai|les a|ai) eue?s? (?:au (?:telephone|tel)|en ligne)(?: \\w+){0,4}|(?:jai|on a) (?:un )?(?:rdv|rendez[ -]?vous)(?: \\w+){0,5}|(?:je |on |nous )(?:viens|vient|venons) (?:juste |tout juste )?de (?:raccrocher|les avoir|les appeler|leur parler|parler|telephoner|les joindre)(?: \\w+){0,5}|(?:la |le |une? )?(?:secretaire|infirmi\\w+|clinique|docteure?|medecin|equipe|service|hopital|standard)(?: \\w+){0,3} (?:ma |me a |nous a |me ont |vient de (?:me |nous ))?(?:rappelee?s?|rappeler|repondue?|donnee? (?:un |le )?rdv|dit de (?:venir|passer))(?: \\w+){0,5}|(?:tout |cest )+(?:est )?(?:regle|arrange|organise|cale|vu avec eux)(?: \\w+){0,3}|(?:jai|on a)(?: \\w+)? raccroche(?: \\w+){0,4}|(?:jai|on a) (?:bien )?(?:reussi|pu)(?: a| de)? (?:les |le |la )?(?:joindre|avoir|appeler|contacter)(?: \\w+){0,5})$`,
  ),
  no: /\b(?:pas encore|demain|plus tard|oublie\w*|sorti de (?:la |ma )?tete|vais (?:appeler|le faire|les appeler)|va appeler|repond\w* pas|pas de reponse|ferme\w*|en attente|(?:jappelle|je appelle|on appelle)(?: \w+)* (?:maintenant|suite|apres|demain)|zappe\w*|passe a la trappe|(?:pas|plus|nplus|jamais)(?: (?:encore|eu|le|la|les|pu|y|a|de|du|en|trop))* (?:pense|songe|temps|appele\w*|appeler|telephone\w*|contacte\w*|fait|joindre|jointe?s?|ecrit|prevenue?s?|pris (?:le |de )?(?:rdv|rendez)|ose|reussi)|(?:moi )?ni (?:moi|lui|elle|mon \w+|ma \w+)\b(?! (?:a |vient de |les a )?(?:appele|eu))|(?:on|personne|ni \w+ ni \w+ \w+) a appele$|personne (?:repond\w*|decroche\w*|au bout|au tel\w*)|lundi (?:je|on)|occupee?|tombe sur (?:le )?repondeur|sonne (?:occupe|dans le vide))\b/,
};
export const notYet =
  /\bpas encore\b|\bpas (?:revue?|vue?)\b|\best (?:chez|avec) (?:son|sa|le|la) (?:pere|papa|mere|maman|mamie|grand mere)\b|\b(?:pas|jamais)(?: \w+)? (?:donne|nourrie?|commence\w*|mange|essaye\w*|fait|eu|gave|demarre\w*)\b|(?<!\bbien (?:supporte|tolere|passe|bu|pris|mange|digere)\w*\b.{0,50})\b(?:dort|endormie?|dodo)\b(?!.{0,40}\bbien (?:passee?|alle|tolere\w*))/;
export const notAll =
  /\b(?:sauf|excepte|a part|hormis|il manque|reste (?:juste|que|a|le|la)|mais pas|manque (?:juste|que|le|la)|pas (?:encore )?(?:scotche\w*|fixe\w*|le sparadrap|le ruban|gonfle|rempli))\b/;
export const someTimeAgo =
  /\b(?:avant (?:le |de se |d aller |de aller |son )?(?:coucher|dodo|dormir|lit|sommeil|au lit)|au (?:coucher|diner|dejeuner|souper|petit dejeuner|gouter)|(?<!\b(?:pas|rien|ni|jamais|aucune?)\b.{0,40} depuis )(?:(?:hier|ce) soir|hier)|(?:cet|cette) apres[ -]?midi|ce matin|ce midi|longtemps)\b/;
export const forgotHow = /\b(?:oublie\w*|(?:rappelle|souviens) (?:pas|plus|nplus)) comment\b/;
/** Said of the next step: no sign, whatever the yes before it. */
export const otherMatter =
  /^(?:oui,? )?(?:(?:jai|on|a|les|des|la|le|elle|il|est|cest|bien|encore) )*(?:bandelettes?|languettes?|papier|collee?|scotchee?|en place|dedans|trousse|kit|seringue)[.! ]*$/;
/** The whole answer to "taped and filled?", which a hurried thumb scrambles. */
export const doneWords: readonly string[] = ['fait', 'fini', 'termine'];
/** One of the facts on file taken out of a yes. */
export const exceptFact =
  /\b(?:sauf|pas|hormis|excepte|a part|seulement|juste) (?:le |la |l)?(?:poids|date|sonde|tube|bouton|type)\b(?! (?:est |sont )?(?:bon\w*|juste|correct\w*))/;
export const exception = /\b(?:mais|sauf|seulement|par contre|cependant|a part|excepte|hormis|juste que)\b/;
export const confirm: Statements = {
  matter: matter.confirm,
  strictNo: true,
  yes: /^(?!ok$)(?:(?:cest |tout |oui |ils |elles |est |sont |toujours |encore |les |infos |informations |la |le |info |bien )*(?:exacte?s?|correcte?s?|juste|justes|vraie?s?|bon|bonne|bonnes|pareil|a jour|ca|ok|bien ca|les memes?|identique|valable|valables|meme chose)|(?:y a |non )*(?:rien|aucune?) (?:qui |que )?(?:a |de |ne? |est )*(?:change|changement|changer|bouge|evolue|modifie|modification|differente?|corriger|redire|erreur|faute)|(?:a |pas |rien )*pas (?:change|bouge)|pas de changement|(?:cest |oui )*(?:en plein|exactement|tout a fait|pile|bien|pile poil) ca|en plein dedans)$/,
  no: /\b(?:pas (?:exact\w*|correct\w*|juste|bon|bonne|ca|vrai|a jour|tout a fait|le bon|la bonne)|fausse?s?|faux|erreur|erronee?s?|plus (?:valable|a jour|vrai|exact|ca|bon|bonne|le bon|la bonne)|(?<!rien |pas |rien a |a pas |aucun )change\w*|differente?s?|incorrecte?s?|nplus|plus maintenant|vieux|vieille|ancienne?s?|a (?:corriger|mettre a jour|changer)|mauvaise?s?)\b/,
  neutral:
    /\bpas tout a fait\b(?=.*\b(?:faux|fausse|change\w*|plus)\b)|\b(?:rien|pas|aucune?)(?: (?:qui|a|de|ne|est|d|ete))* (?:chang\w+|bouge\w*|evolu\w*|modifi\w*|differente?s?|erreurs?|fautes?|redire|corriger)\b|\b(?:change|bouge) (?:pas|plus|nplus)\b/g,
};
/** At "any danger sign?": well, and unwell. */
export const unwell: Statements = {
  matter: matter.unwell,
  strictNo: true,
  no: /\b(?:(?:elle|il|y|bebe|tout|ca|cest|on|petite?|ma fille|mon fils|sinon|le reste|etat|enfant)(?: (?:va|est|a|semble|parait|le air|air|se|sent|reste|tres|super|plutot|assez|tout|toute|vraiment|encore|sinon|quand|meme|bien|de|comme|ete|la|et|en|parfaitement))* (?:bien|ok|normale?|normalement|calme|joyeu\w*|en forme|contente?|souriante?|sourit|me sourit|joue|dort|tranquille|comme d habitude|comme de habitude|impec\w*|nickel|stable|relax|rose|gazouille|rigole|rit)|respir\w* (?:bien|normal\w*)|tout (?:roule|baigne|est beau|est pareil)|tout va bien|file (?:tres |tout a fait )?(?:bien|ben|correct\w*)|ca va|va bien|tout est normal|rien de (?:tout|ca|cela|special|particulier|tel|grave|inquietant|anormal|la liste|tout ca)|aucun (?:de (?:ces|ca|tout)|signe|symptome|des|probleme|souci)|aucune? (?:de ca|de ceux|de ceux la)|pas (?:de )?(?:tout )?(?:ca|signe|probleme|souci)s?|ras|rien a signaler|pas (?:a ma connaissance|que je (?:sache|voie|vois))|^(?:bien|nickel|normale?)$|pas (?:pour le instant|maintenant)|rien)\b/,
  neutral:
    /\b(?:pas|aucun|sans) (?:de )?(?:probleme|souci)s?\b|\bpas (?:a ma connaissance|que je (?:sache|voie|vois))\b|\bpas pour le instant\b|\b(?:elle|il|y|bebe) (?:est|file|va) (?:bien |ben |tout a fait |super )*correcte?\b|\bdans le doute\b/g,
};
export const notWell =
  /^(?!.*\bmais (?:je )?sais (?:pas|trop)$).*?\b(?:(?:va|vas|est|sent|semble|parait|a l air|a le air|respire|dort) (?:vraiment |toujours )*(?:pas|plus|nplus) (?:\w+ )?(?:bien|ok|bon|normale?\w*|comme d habitude|comme de habitude|en forme|super|elle meme|lui meme)|pas (?:tres |trop |super |vraiment |du tout )*(?:bien|en forme|comme d habitude|comme de habitude|elle meme|lui meme|normale?|rassuree?|bon signe)\b|(?:tres|vraiment|super|trop|hyper) (?:mal|malade|grave|faible)|va (?:tres |vraiment |plus |de plus en plus )*mal|se sent mal|malade|quelque chose (?:qui )?(?:va (?:vraiment )?pas|cloche)|empire\w*|pire|de pire en pire|(?:elle|il|bebe|enfant) (?:est en train de |va )?(?:mourir|meurt|part|en danger)|urgence|en detresse|ca va (?:vraiment |toujours )?(?:pas|plus)(?! (?:mal|si mal|trop mal))(?= ?$| ?[.,!]| du tout)|cest (?:tres |vraiment )?grave|mal en point|mauvais etat|se degrade|inquietante?)\b/;
/** A question of theirs after a statement, with or without its mark. */
export const asksToo =
  /\b(?:(?:je|on) (?:dois|doit|peux|peut)|(?:dois|puis)[ -]je|faut[ -]il|il faut|faut que je|est ce que je) (?:que je )?(?:la |le |l |lui )?(?:reveill\w*|laiss\w*|nourri\w*|emmen\w*|donner)\b|\bcest normal\b/;
/** Words of trouble taken back. */
export const notSoBad =
  /\b(?:pas|rien|aucune?|jamais|ni)(?: (?:de|une?|en|d|si|tres|trop|le air|l|vraiment))* (?:urgence|pire|malade|mal|en detresse|grave|en danger|empire|inquietante?)\b|\bva pas (?:plus )?mal\b/g;
export const fedLately: Statements = {
  matter: matter.fedLately,
  yes: /^(?:(?:je |on |elle |il |vient |viens |venons |de |juste |a |ai |le |lui |tout )*(?:finir?|fini|termine\w*|terminer|donnee?|donner|manger|mange|boire|bu|arreter|gave|nourrir|prendre|pris|eu|avoir)(?: \w+){0,6}|(?:le |la |son |sa |les )?(?:gavage|pompe|alimentation|nutrition|repas|biberon|bib) (?:est |etait |vient |tourne |en |de )*(?:en cours|marche|branchee?|fini\w*|train|finir|se terminer|terminee?|tourne|tournait)(?: \w+){0,6}|(?:on|je|elle|il) (?:venait|venais) de (?:finir|manger|boire|prendre)(?: \w+){0,4}|(?:elle|il) (?:mangeait|buvait)(?: \w+){0,4})$/,
  no: /\b(?:rien|y a (?:des|plusieurs|quelques) heures|pas depuis|depuis (?:hier|ce matin|le (?:souper|diner|coucher|dejeuner|matin))|hier(?: soir)?|(?:pas|jamais|rien|nplus)(?: (?:encore|eu|de|ete|a|du|pu))* (?:dans|recemment|mange|nourri\w*|bu|pris|donnee?|repas|gavage|medicaments?|medocs?|lait|biberon|bib|fini|commence|branchee?)|ni (?:lait|repas|medicaments?|medocs?|manger|gavage|biberon|nourriture)|a jeun)\b/,
};
/** What is given on other days, or is due, tells nothing of the last hour. */
export const notGiven =
  /\b(?:de habitude|d habitude|normalement|en general|(?:doit|devait|devrait|aurait du|etait cense\w*|est cense\w*)(?: pas)? (?:avoir|recevoir|prendre|manger|boire|etre nourrie?))\b|\b(?:infirmiere|nounou|gardienne|mamie|maman|papa) (?:est partie?|etait la|est restee?|a quitte|avait la garde|(?:le |la )?(?:a|avait) garde\w*)\b/;
/** A no that opens the text. */
export const startsNo = /^(?:non|nan|nn|nope|nop|no)\b/;
export const airFirst = /\b(?:air|abord|au debut)\b/;
export const looksNo = /^(?:non|nan|nn|nope|nop|pas vraiment|no)\b/;
/** Right before a colour: it does not look so. */
export const notLooking =
  /\b(?:pas|ni|jamais|sans|aucun|aucune|rien|nplus)(?: (?:vraiment|tres|si|trop|du|tout|comme|de|le|la|un|une|des|trace|l|en|vu|bien|a|air|plus|et|non))* ?$/;
