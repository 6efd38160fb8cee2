/** French for the danger and warning signs, sure and doubtful, and the words that take a sign back. */
import type { SignWords } from '../signs.ts';

const belly = '(?:ventre|bidou|bidounet|bedaine|bedon|estomac|abdomen|abdominale?|bide|bidon)';
const copula =
  '(?: (?:est|etait|sont|a|le air|air|semble|parait|devient|devenu|devenue|tout|toute|tres|trop|vraiment|super|hyper|bien|une?|peu|petit|assez|plus|en|de|plutot|et|comme|du|la|aussi|encore|reste|se|commence|maintenant|extremement|vachement|ben|pas mal|fait|qui|cest|aussi|tendue?)){0,6}';
const who = '(?:elle|il|bebe|enfant|petite?|fille|fils|puce|loulou|garcon|mon|ma|gamine?|elles|ils|toute?)';
const body =
  '(?:levres?|visage|peau|bouche|nez|doigts?|ongles?|mains?|pieds?|orteils?|joues?|teint|langue|gencives?|figure|corps|extremites|face|contour|tour)';
const colour =
  '(?:bleu\\w*|bleutee?s?|violets?|violette?s?|violacee?s?|mauves?|gris\\w*|grise|grisatres?|cyanosee?s?|cyanose\\w*|lilas|pourpres?|ardoise|plombee?s?|aubergine|cendre(?:ux|uses?))';
const changing =
  '(?: (?:est|sont|etait|a|devien\\w*|devenue?s?|tourne\\w*|tir(?:e|ent|ant)|vire\\w*|toute?s?|tous|tres|un|peu|presque|vraiment|autour|de|la|le|les|des|aux?|sa|son|ses|en|et|du|bouche|levres?|au|ont|le air|air|super|bien|plutot|limite|genre|comme|passe\\w*|sur|mains|encore|aussi)){0,6}';

/** The breathing tube in the neck: where it is out or shut, the airway is. */
const windpipe = '(?:(?:canule (?:de |du )?)?(?:trach\\w+)|canule)';
const windpipeOut =
  '(?:sorti\\w*|sort|ressorti\\w*|tombee?|partie?|arrachee?|enlevee?|delogee?|dehors|bouchee?|obstruee?|sautee?)';

export const signWords: readonly SignWords[] = [
  {
    sign: 'breathing',
    sure: new RegExp(
      `\\b(?:${windpipe}(?: (?!(?:et|pas|nplus|mais|sonde|bouton|gastro\\w*|g)\\b)\\w+){0,4} ${windpipeOut}\\b|(?:arrache|enleve|perdu|retire|tire) (?:\\w+ ){0,2}${windpipe}|${windpipe} (?:\\w+ ){0,3}(?:veut|va|passe|rentre|entre) (?:pas|plus|nplus)\\b|(?:remettre|mettre|rentrer) (?:\\w+ ){0,2}${windpipe}|${windpipe} de (?:rechange|secours))`,
      'g',
    ),
  },
  {
    sign: 'breathing',
    sure: /\b(?:(?:sat\w*|spo2|o2|oxygene|saturation) (?:est |a |de |sont |maintenant |descend\w* |tombe\w* |chute\w* |baisse\w* |en dessous |elle )*(?:[1-8]\d|9[01])\b|(?:(?:pas|plus|nplus|jamais|du mal|mal|gene|peine|misere|difficultes?|difficile|probleme|problemes|soucis?|arrive|peut|veut|cesse|arrete\w*|stoppe\w*|galere|lutte)(?: (?:a|de|d|pour|bien|la|pas|plus|nplus|beaucoup|en|du|toujours|vraiment|le|mieux|qu|que|elle|il|avec)){0,4} )?(?<!\bsans )respir\w*(?: (?:elle|il|est|a|se|un|peu|tres|trop|vraiment|super|bien|plus|pas|nplus|presque|du|tout|mal|vite|fort|rapide\w*|difficile\w*|bizarre\w*|bruyan\w*|siffl\w*|courte?|saccade\w*|normal\w*|lourd\w*|comme|d|habitude|par|a|coups|peine)){0,6}|souffle (?:est )?(?:coupe|court|mal|vite|fort|bizarre|difficile\w*|pas|trop)|essouffl\w*|(?:bout|plus|pas|manque) de souffle|manque de air|(?:cherche|court apres|reclame|happe) (?:son|de le|le|l|sa|de) ?(?:air|souffle|respiration)|(?:mal|difficile|difficultes?|peine|misere|galere|rame)(?: \w+)? (?:a|de|pour) (?:re)?(?:prendre|trouver|retrouver|avoir) (?:son|sa|du|de le) ?(?:souffle|respiration|air)|manque(?: \w+)? de? air|(?:poitrine|thorax|cotes|torse|cou)(?: (?:qui|lui|se|est|tout))* (?:creus\w*|rentr\w*|tir(?:e|ent)\b)|tire sur (?:ses|les) (?:cotes|muscles|epaules)|(?:narines?|ailes du nez)(?: (?:qui|se))* (?:bat\w*|ouvr\w*|ecart\w*|palpit\w*)|(?:pauses?|arrets?) (?:respi\w*|dans (?:sa|la) respi\w*|de respi\w*)|(?:trouve|reprend|retrouve) (?:pas|plus|nplus) (?:son|sa) (?:souffle|respiration)|etouff\w*|suffoqu\w*|suffoc\w*|se etrangle\w*|etrangl\w*|apnees?|siffle\w*|sifflements?|ral(?:e|es|er|ements?)\b(?! (?:parce|car|contre|puisque|apres (?:moi|nous|tout|le monde|son|sa)|de faim|pour (?:manger|avoir|rien|ses|son|sa|tout|un)|comme (?:d |de )?habitude|que|a cause (?:de la faim|du)))|geignements?|tirage|asphyxi\w*|halet\w*|halete|fausse route|gargouill\w* (?:quand|en)|balancement|(?:creuse|rentre|aspire|tire)(?: \w+){0,2} (?:sous|entre|dans|au niveau de|au niveau du|au dessus de) (?:les |des |ses |le |son |la )?(?:cotes|cou|gorge|clavicules?)\b|grogn\w* (?:a chaque|en) (?:souffle|respir\w*|expir\w*)|souffle comme un|bat des ailes du nez|detresse respi\w*|les cotes (?:rentrent|creusent)|creuse (?:le|la|les|au) (?:thorax|poitrine|cotes))/g,
  },
  {
    sign: 'colour',
    sure: new RegExp(
      `\\b(?:(?:${who}|${body})${changing} ${colour}|(?:devien\\w*|devenue?s?|tourne\\w*|vire\\w*|toute?s?)(?: (?:un|peu|au|toute?|tres|le|legerement))* ${colour}|${colour} (?:au niveau |autour |aux? |sur |de |des |du |la |le |les |sa |son |ses )+${body}|\\b(?:le|la) trouve(?: (?:un|peu|tres|tout|toute|plutot|bien|limite|vraiment))* ${colour}|bleui\\w+|cyanos\\w*|livides?|cireux|cireuses?|cadaverique|(?:gris|grise|pale) comme (?:un |une |la |le )?(?:mort|cendre|cadavre|linge|drap)|blemes?|blemie?s?|blemit|(?:visage|teint|peau|mine) de (?:cire|cendre|craie|cadavre|plomb)|blafarde?|marbree?s?|exsangue|(?:tres|vraiment|toute?|trop|si|super|hyper|extremement|tellement|pas mal) pales?|(?:toute |tout |tres |vraiment |super )blanche?s?|blanche? comme (?:un|du|le|une|la|neige)|blanc(?:he)? comme (?:un |une |la |le )?(?:linge|drap|mort|morte|cachet|cadavre)|(?:${who}|${body})(?: \\w+){0,2} blanc(?:he)? comme (?:un |une |la |le |de la )?(?:neige|craie|cire|cierge|fantome|mur)|pale comme|(?:perdu|perd) (?:toutes )?ses couleurs|(?<!^|\\bchang\\w{0,4} )(?:plus|nplus|pas) (?:aucune )?de couleurs?|teint (?:est |tout |tres )*(?:gris|cireux|bleu|terreux|blafard)|levres? (?:sont |est |toutes |tres |devien\\w* )*(?:noires?|blanches?|foncees?|decoloree?s?))\\b|^(?:oui )?(?:bleue?|grise?|violette?|cyanosee?)$|(?<=\\b(?:pas|ni|sans|jamais|nplus) (?:devenue? |toute? |les? |levres? |de )*)${colour}\\b`,
      'g',
    ),
    near: /^(?:plus|nplus|pas) (?:aucune )?de couleurs?\b|\b(?:pales?|palot\w*|paleurs?|palichon\w*|mauvaise mine|petite mine|un peu blanche?|drole de couleur|mauvaises? couleurs?|(?:teint|visage|peau|mine|figure)(?: (?:est|tout|un peu|devient|vire au|plutot))* (?:verdatre|vert|verte|jaunatre|terne)|couleur bizarre|(?:elle|il|bebe|visage|peau) (?:a )?change\w* de couleur|bizarre de couleur)\b/g,
  },
  {
    sign: 'limp',
    sure: new RegExp(
      `\\b(?:(?:${who}|corps|bras|jambes|tete|comme|ultra)(?: (?:est|sont|a|tout|toute|tres|trop|comme|devien\\w*|devenue?|vraiment|super|hyper|le air|air|un|peu|genre|et|de|du|corps|bien|reste|encore)){0,5} (?:mous?|molles?|mou|mollassonne?)|^(?:oui )?(?:mou|molle|toute? (?:mou|molle))|(?:tout|toute|super|tres|devenue?) (?:mou|molle)|flasques?|amorphes?|inertes?|lethargi\\w*|inconscien\\w*|(?:pas|plus|nplus|peu|a peine) (?:tout a fait |vraiment |tres |completement |du tout |bien )?consciente?s?|(?:perd|perdu|perte de|perdre) conscience|sans connaissance|evanoui\\w*|(?:perdu|perd|perte de) connaissance|convuls\\w*|(?:fait|en|fais|eu|a|refait|faire|pleine|encore|avoir) (?:une |des |sa |de |d |la |plusieurs |encore |grosse |longue )*crises?(?! (?:de (?:larmes?|nerfs|colere|pleurs|toux|rire|gaz|panique)))|crise d epilepsie|crise de epilepsie|tombee? (?:dans les pommes|en syncope|sans connaissance)|syncope|malaise|(?:le|en|un) coma|comateu\\w*|${who} (?:(?:me|nous|la|m|vraiment|presque|y|a|aux?|n|ses?|les?|yeux) )*(?:reagit|repond|reveille|reagis|ouvre|reagi) ?(?:(?:plus|presque|meme|vraiment|toujours|du tout|les|ses|yeux|absolument|quasi\\w*) )*(?:pas|plus|nplus|a peine|presque pas|peu)|(?:reagit|reveille|reagis) (?:pas|plus|nplus|presque pas|a peine|plus du tout)|(?:elle|il|bebe) bouge (?:plus|nplus|presque (?:plus|pas|nplus)|quasi\\w* plus|a peine)|ouvre (?:pas|plus|nplus|meme pas|presque pas|a peine) (?:les|ses) yeux|(?:arrive|arrivons|peux|peut|parviens|reussis|impossible|difficile|dur|mal|moyen|pas|veut)(?: (?:pas|plus|nplus|a|de|la|le|se|du|tout|toujours|moyen|d|bien|capable)){0,4} (?:reveiller|faire reagir|reagir|ouvrir les yeux|tenir sa tete|(?:la |le )?(?:tenir|garder) (?:reveillee?|eveillee?))|(?:aucune|sans|pas de|plus de) (?:reaction|reponse)s?(?! (?:des?|du|au|a (?:mon|mes|ma)|de (?:la|le|votre)|pour|par)\\b)|(?:pas|plus|nplus|in)(?: (?:du tout|facilement))? ?reveillable|poupee de chiffon|chiffe molle|comme une (?:chiffe|serpilliere|loque)|comme un (?:pantin|sac(?: de (?:patates|riz))?|chiffon)(?! de table)|tourn\\w* de le oeil|(?:tomb\\w*|partie?|part) dans les vapes|(?:se |s )(?:ecroul|effondr)\\w*|flagada|assommee?|(?:completement |totalement )?(?:ko|k o)\\b(?= |$)|guenille|(?:yeux|regard)(?: (?:se|sont|est|qui|lui|tout))* (?:revuls\\w*|revir\\w*|retourn\\w*|dans le vide|vides?|vitreux|fixes?|blancs?|part(?:ent|is)?|roul\\w*|revers\\w*|tourn\\w*)|trembl\\w* (?:de partout|de tout son corps|tout le corps|de tout|sans arret|beaucoup)|secousses|(?:se |corps )(?:est )?raidi\\w*|tout(?:e)? raide|saccades|spasmes|dans les pommes|comme morte?|sans vie|tient (?:pas|plus|nplus) (?:sa tete|debout|assise?|sur ses jambes))\\b|^(?:oui )?convulsions?$`,
      'g',
    ),
    near: /\b(?:somnolen\w*|(?:tres|trop|super|vraiment|anormalement|hyper|tellement|plus|bien|extremement) (?:endormie?|fatiguee?s?|faible|epuisee?|abattue?|calme)|abattue?|apathique|dans les vapes|dans le gaz|dans le vague|ailleurs|tremble\w*|tremblements?|faible|sans force|sans energie|plus de force|pas dans son assiette|molle|mou|mollasson(?:ne)?|ramollo|ramollie?|raplapla|chiffonnee?|vaseuse?|vaseux|endormie? tout le temps|dort (?:beaucoup|tout le temps|trop)|(?:pas|plus|nplus) (?:tres |du tout )?(?:tonique|reactive?|eveillee?|vive?|presente?)|dans le (?:cirage|coaltar|brouillard)|zombie|a plat|affalee?|avachie?|crises?|reagit (?:moins|peu|lentement)|patraque|groggy|confuse?|hagarde?|(?<!\b(?:ca|sa|rien|sonde|tube|bouton) )bouge pas|amortie?|(?:elle|il|bebe|enfant|petite?) est (?:\w+ )?(?:bizarre|etrange|absente?)|(?:regard|comportement) (?:\w+ )?(?:bizarre|etrange|absent)|(?:pas|plus|nplus) (?:normale?|lui meme|elle meme|comme (?:d |de )?habitude)|(?:me |nous )?regarde (?:pas|plus|nplus|a travers|dans le (?:vide|vague))|(?:suit|fixe) (?:pas|plus|nplus) (?:du regard|des yeux|mon|le)?|sourit (?:plus|nplus)|joue (?:plus|nplus))\b/g,
  },
  {
    sign: 'bleeding',
    sure: /\b(?:(?:arrete|stoppe|cesse|arretent) (?:pas|plus|nplus) (?:de )?saign\w*|(?:j?arriv\w*|peu[xt]|reussi\w*) (?:pas|plus|nplus) (?:a )?(?:arreter|stopper|contenir|calmer) (?:le |les |ce |l )?(?:sang|saign\w*)|saign\w*|saigment\w*|hemorr?ag\w*|(?:beaucoup|pas mal|plein|trop|enormement|tellement|plus en plus|perd(?:u|s)?|perdre|flaques?|mare|bain|litres?|jets?|flots?|pleine?|remplie?s?|tas|quantite|pisse\w*|crache\w*|inonde\w*|couvert\w*|recouvert\w*|baigne\w*|tremp\w*|imbib\w*|caillots?|gros) (?:de |du |le |son |dans |d |en )*sang|sang (?:est |y en a |en |qui |a |sort |coule |il |ca |rouge |vif )*(?:partout|coule\w*|gicle\w*|pisse\w*|jailli\w*|degouline\w*|abondan\w*|a flots?|arrete (?:pas|plus|nplus)|stoppe (?:pas|plus)|quantite|beaucoup|continue|plein|ruisselle\w*|se arrete (?:pas|plus|nplus)|dans (?:le lit|tout le lit))|(?:compresses?|gazes?|serviettes?|pansements?|couches?|draps?|body|pyjama|linge|chemise|pagne|t ?-?shirt|lit)(?: \w+){0,3} (?:pleine?s?|rempli\w*|tremp\w*|imbib\w*|inond\w*|satur\w*|couvert\w*) (?:de |du )?sang)\b/g,
    near: /\b(?:suint\w*|(?:continue|arrete pas|cesse pas) (?:de |a )(?:couler|pisser|gicler)|(?:ca|cela|tout) (?:gicle|pisse|degouline|jaillit) ?(?:fort|partout|de partout|du trou|du ventre|beaucoup)?(?! (?:de le |de la )?(?:eau|lait|ballon))|(?:saignement|sang) (?:a |est |se est )*(?:arrete|stoppe|fini|ralenti|calme|cesse)\w*|gouttes? rouges?)\b/g,
  },
  {
    sign: 'fresh-blood',
    sure: /\b(?:sang|sanglante?s?|ensanglante\w*|sanguinolen\w*)\b/g,
    near: /\b(?:roses?|rosee?s?|rosatres?|rougeatres?|(?:liquide|truc|gouttes?|traces?|taches?|filets?|ecoulement|stries?|points?|fil|filaments?) (?:un peu |tout |est |bien )*rouges?|marc de cafe|un peu (?:de )?rouge|brunatres?|rouge (?:sur|dans|autour) (?:la |le |les |une |un )(?:compresse|gaze|pansement|couche|mouchoir|serviette))\b/g,
  },
  {
    sign: 'hard-belly',
    sure: new RegExp(
      `\\b(?:${belly}${copula} (?:dure?|durci\\w*|rigide|raide|gonfl\\w*|enfl\\w*|distendue?|bois|pierre|beton|tambour|roche|caillou)|(?:dure?|rigide|gonfle|enfle|distendu) (?:du |le |son |au )?${belly}|tambour (?:le |son )?${belly}|(?:gonflement|distension|gonfle|enfle)(?: \\w+){0,2} (?:du |de le |le |au )?${belly}|${belly} (?:qui |a |se |est |lui )*(?:gonfl\\w*|enfl\\w*|durci\\w*)|(?:gonfle|enfle|gonflee|enflee) (?:du|au niveau du) ${belly})\\b`,
      'g',
    ),
  },
  {
    sign: 'tight-belly',
    sure: new RegExp(
      `\\b(?:${belly}${copula} (?:tendue?(?! comme)|serree?|ballonnee?s?|gros|grosse|grossi\\w*|double\\w*|ronde?|bombe\\w*|plein|ferme|enorme|gaz|ballon)|ballonnee?s?|ballonnements?|(?:gros|enorme) ${belly})\\b`,
      'g',
    ),
  },
  {
    sign: 'severe-pain',
    sure: /\b(?:hurl\w*|(?:cri|crie|crient|criait|crier|cris)(?: sans arret)? tellement (?:elle|il) a mal|(?:cri|crie|crient|criait|crier|cris) (?:tellement )?(?:de|a cause de la|de la) (?:douleur|mal)|se tord\w*|tordre? de douleur|pli\w* en (?:2|deux)|\b(?=[a-z])(?<!respir\w* )(?:tres|trop|super|vraiment|tellement|si|hyper|affreusement|atrocement|terriblement|horriblement|beaucoup|extremement|vachement) (?:tres )?mal(?! (?:a|pour) (?:respir|rentr|pass))(?= ?(?:$|[,.!]|au|a|quand|et|la|elle|il|on|dans|depuis|partout|la|svp|maintenant))|(?:tres |vraiment |de |une |des |plus en plus )*(?:fortes?|grosses?|grande?s?|horribles?|terribles?|atroces?|insupportables?|intenses?|violentes?|enormes?|affreuses?|extremes?|vives?|severes?|sacree?s?) (?:\w+ )?douleurs?|douleurs? (?:est |sont |tres |trop |vraiment |super |assez |de plus en plus |et |qui |semble |au ventre |abdominale?s? |a le )*(?:fortes?|horrib\w*|terrib\w*|atroces?|insupportab\w*|intenses?|violentes?|aigues?|extreme\w*|severe\w*|affreuse\w*|empire\w*|augmente\w*|vives?)|(?:beaucoup|enormement|trop|plein|tellement) (?:de )?(?:mal|douleurs?)\b(?! (?:a|pour) respir)|tellement (?:elle|il|ca) (?:lui )?(?:a|fait) mal|mal (?:tres fort|terrible|de chien|en maudit|pas possible|a mourir|beaucoup|enormement|fort)|inconsolab\w*|(?:pleur\w*|sanglot\w*|chiale|cri\w*) (?:(?:sans arret|tellement|tres fort|fort) )?(?:a fendre|a le agonie|comme jamais|comme un (?:cochon|animal|fou)|comme une (?:folle|bete)|a en (?:mourir|perdre|vomir|devenir)|de toutes ses forces|a s en|a pleins poumons)|(?:rien|personne) (?:ne )?(?:arrive a |peut |reussit a )?(?:la |le )?(?:calme|console)\w*(?: pas)?|(?:arrive|arrivons|peux|reussis) (?:pas|plus|nplus) a (?:la |le )?(?:calmer|consoler|apaiser)|a deux doigts de (?:s evanouir|se evanouir)|plie[e]? de douleur|se tortille|souffr\w* (?:beaucoup|enormement|trop|le martyre|tellement|terriblement|horrible\w*)|(?:[7-9]|10) ?(?:\/|sur) ?10|a le agonie|douleur extreme|insupportable|cri[es]? strident\w*|hurlements?)\b/g,
    near: /\b(?:(?:pleure|pleurs|chiale|braille|crie)(?: \w+){0,2} (?:beaucoup|sans arret|tout le temps|non stop|fort|trop|continu\w*|sans cesse|enormement|depuis)|arrete (?:pas|plus|nplus) de (?:pleurer|crier|chialer|brailler|hurler)|crie|cris|crier|criait|recroquevill\w*|inconfortable|gemi\w*|gein\w*|replie\w* (?:sur|ses))\b/g,
  },
  {
    sign: 'vomit',
    sure: /\b(?:(?:vomi\w*|regurgit\w*|rend\b|rendu|rejett?e\w*|rejet\w*|remont\w*|crach\w*|degueul\w*|degobil\w*|gerb\w*|dobill\w*|restitu\w*|renvoie|renvoye|recrach\w*)(?: \w+){0,4} (?:vert\w*|verdatre\w*|bile|bilieu\w*|jaunes?(?: fluo)?|sang|plusieurs|\d+ fois|sans arret|tout le temps|encore|en jets?|non stop|toute la nuit|partout|depuis|beaucoup|tout ce|a repetition)|vomi\w*(?: \w+){0,2} (?:[2-9] fois|plusieurs fois|tout)|(?:renvoie|rend|rejette|recrache|vomit|degueule|regurgite) (?:absolument )?tout|tout (?:re)?(?:vomi|rendu|rejete|degueule|gerbe|regurgite)|vert (?:fluo )?(?:vomi\w*)|(?:arrete|cesse|stoppe) (?:pas|plus|nplus) (?:de )?(?:vomir|degueuler|degobil\w*|gerber|rendre|rejeter|regurgiter|cracher|vomit)|(?:encore|toujours|continue (?:a|de)|beaucoup|en train de|recommence a|remis a|met a) (?:\w+ )?vomi\w*|vomit|vomissent|vomissements?|vomir|vomito|degueule|degobil\w*|gerbe|(?:rend|rendu|vomi\w*) (?:tripes|ses tripes|tout son)|bilieu\w*|(?:bouche|sort|rend|sorti)(?: \w+){0,4} (?:verdatre|vert|bile))\b/g,
    near: /\b(?:vomi|vomie?s?|renvois?|vomissait|regurgit\w*|recrach\w*|rejete|(?:a|va|veut|veux|failli|envie de|manque de|pret a|pres de) vomir|haut le coeur|hauts le coeur|haut-le-coeur|nausees?|nauseeu\w*|ecoeure\w*|mal au coeur|gerb\w*|degueul\w*|rendu|renvoye|crache)\b/g,
  },
  {
    sign: 'fever',
    sure: /\b(?:fievres?|fievreu\w*|febriles?|(?:de la|fait de la|grosse|forte|haute|une) temperature(?! (?:normale|ok|correcte|est (?:normale|ok|bonne|correcte)|de \d|a \d|est|ambiante))|temperature (?:est |a |qui |tres |un peu |bien )*(?:elevee?|haute|mont\w*|grimp\w*)|brulante?s?|bouillante?s?|brule de|pyrexie|corps (?:\w+ ){0,2}(?:chauffe|brule\w*|bouillant))\b/g,
    near: /(?<=\b(?:pas|sans|aucune|ni|jamais|nplus)(?: (?:de|eu|une|la))* )temperature\b|\b(?:(?:est|semble|parait|un peu|tres|toute?|front|trop|bien|plutot|peau|toucher|vraiment|super|corps|joues|air|est|hyper|assez|cou|a) (?:chaude?s?)|chaude? au toucher|frissonn\w*|frissons?|transpir\w*|sueurs?|grelott\w*|chauffe)\b|^(?:oui )?chaude?$/g,
  },
  {
    sign: 'pain',
    sure: /\b(?:(?:pleur|cri|gemi|grimac)\w* (?:quand|des que|si|lorsque) (?:je|on|jy) (?:le |la |y |lui )?(?:touch|appui|boug|rempli|gonfl|injecte|rinc|tourn)\w*|(?:repli|remont|ramen)\w* (?:ses|les) (?:jambes|genoux|cuisses)|(?:dit|dis|plaint)(?: \w+){0,3} (?:pique|brule|lance|elance|tiraille)\b|ca (?:le |la |lui )(?:pique|brule|lance|elance|tiraille)\b|douleurs?|douloureu\w*|\b(?=[a-z])(?<!respir\w*(?: \w+){0,2} )(?:a|ai|as|avoir|ont|eu|encore|tres|toujours|fait|font|faire|faisait|avait|lui|plus|moins|peu|le air|semble|aura|air d avoir|trop|bien|que|si|tellement|super|vraiment|un peu|de)(?: (?:tres|trop|un|peu|encore|toujours|super|vraiment|plus|bien|petit|aussi|si|beaucoup|assez|tellement))* mal(?! (?:a|pour|de) (?:respir|rentr|pass|dorm|comprendre|lire|voir|la |le |me |se |pouss|mett)|(?: \w+)? ?(?:rentre\w*|mis\w*|lu\w*|compris|vu\w*|ecrit|tape|pose\w*|place\w*|passe\w*|dormi|colle\w*|ferme\w*|vue?|fixe\w*|tombe\w*|repondu|note|dit|regarde|poli\w*)\b)|(?<=\bpas )mal(?= ?(?:$|[,.!])| quand)|mal (?:au|a la|aux|a son|a sa|dans le|autour|quand|partout|ou)(?! (?:coeur|moment))|bobos?|souffr\w+|souffrance|sensible|crampes?|coliques?|aie|ouille)\b/g,
    near: /\b(?:inconfort\w*|genee?|grimac\w*|pleurnich\w*|chign\w*|gemi\w*|gein\w*|plaint)\b/g,
  },
  {
    sign: 'leak',
    sure: /\b(?:fui(?:t|te|tes|r|ent|tait)|fuites?|(?:coul\w*|sort\w*|degoulin\w*|perd|passe|deborde\w*|suint\w*|remonte|ressort)(?: (?:\w+)){0,4} (?:autour|a cote|cotes|sur (?:les|le|un|son) cotes?|par (?:les|le|un) cotes?|de cote|de un cote|par le trou|du trou|par (?:le |l )orifice|de le orifice|pourtour|par la stomie|de la stomie|tout autour|entre la peau|le long (?:de|du))|suinte\w*|deborde\w*|(?:lait|liquide|mouille|humide|gavage)(?: \w+){0,3} (?:autour|a cote|tout autour|pourtour))\b/g,
  },
];

/** Words that make any sign small, so that it is asked about. */
export const small =
  /\b(?:un (?:tout )?(?:petit )?(?:peu|poil|chouia|minimum|brin|tantinet)|(?:tout )?(?:petite?s?|legere?s?|minuscules?|infimes?|minimes?|faibles?) (?:\w+ )?(?:goutte|trace|tache|peu|filet|point|quantite|saignement|douleur|fievre|fuite|bout|suintement|gene|crampe|tremblement|sang|truc|vomi\w*|regurgit\w*|poussee|temperature|mal|bobo|teinte|strie|marque|croute)s?|(?:une? |des |quelques |2 |3 )?(?:gouttes?|gouttelettes?|traces?|taches?|points?|filets?|pointes?|soupcon|stries?|ombre|zeste|larme|croutes?|restes?|chouia|1 goutte) (?:de |du |d )|legere?(?:ment)?|a peine|presque (?:pas|rien|plus)|pas (?:beaucoup|trop|vraiment|tellement|grand chose|bcp|enormement|tres|si)|(?<!\b(?:le|la|ma|mon|notre|les|ton|votre|sa|son|un|une|cette|ce|ces|mes|nos) )petite?s?(?! (?:ventre|bedon|bedaine|bidon|corps|bouche|levres|fille|fils|garcon|coeur|puce|bebe|visage|mains?|doigts?|pieds?|loulou|bout de chou|monsieur|bonhomme|soeur|frere|tete|yeux))|moins|goutte|vague(?:ment)?|mini|legere?s?|vite fait|tout petit)\b/;

/** A negation reaches forward over words that only lead up to the sign. */
export const negator =
  /\baucune?s?\b|\b(?:(?<!\b(?:arrete\w*|cesse\w*|stoppe\w*|sais|sait|comprends?|savoir|peut|peux|fait que) )pas|sans|jamais|ni|zero|nulle?|rien|nplus|absence)\b(?! (?:que|seulement|sure?|certaine?|mal (?!au\b|a la\b|quand\b)\w|juste|loin))/g;

/** A word that may stand between a negation and its sign without ending its reach. */
export const reach =
  /^(?:de|du|des|d|la|le|les|un|une|a|au|aux|en|y|l|eu|ete|fait|est|etre|avoir|air|signes?|traces?|symptomes?|grand\w*|grave|vrai|vraie|autre\w*|encore|non|plus|ou|et|ni|meme|moindre|goutte|nouvelle?|nouveau|rougeurs?|rouge|gonflement|que|qu|elle|il|on|par|son|sa|ses|ventre|levres?|visage|remarque|constate|observe|note|senti|ressenti|trouve|difficultes?|problemes?|soucis?|gene|pour|particulier\w*|anormal\w*|apparent\w*|visible\w*|frais|vert\w*|faire|devenue?|endroit|dehors|dans|autour|sonde|peau|cote|niveau|quoi|crise|presence|temperature|nausees?|fuites?|toute?|vue?|gros\w*)$/;

/** "Fièvre ? non" asks and denies in one. */
export const askedAndDenied = /\?+ ?(?=(?:non|nan|aucune?|pas)\b(?! \w))/g;

/** Not knowing about the sign. */
export const unsureOfSign =
  /\b(?:(?:pas sure?|pas certaine?|sais (?:pas|plus|trop)(?: trop)?|aucune idee|difficile a dire|dur a dire|arrive pas a (?:dire|voir))(?! (?:quoi|pourquoi|comment|ou|quand|qui|ce|d ou|de ou|combien))|je me demande|peur que ce soit|inquiete? (?:pour|de|que) (?:la|le|une|ce)|dirait|peut etre)\b/;

/** A fear, a rule asked about, or a question: not something that is there. */
export const supposed =
  /\b(?:et si|au cas ou|en cas de|(?<!\bcomme )si (?:jamais )?(?:elle|il|y a|ca|on|je|y en a|le ventre|ses|elle a)|si jamais|(?:va|vont|peut|pourrait|risque|doit)(?: |-)(?:t(?: |-))?(?:elle|il|ca|on)|(?:va|peut|pourrait) (?:t elle|t il|lui faire|se mettre|avoir)|ca (?:va|peut|pourrait|risque)|est ce que (?:ca|je|elle va|il va|on|elle peut|il peut|elle risque)|faut (?:il|surveiller|que je surveille)|surveill\w*|risqu\w*|(?:peur|crains?|inquiete?)(?: \w+)? (?:qu|que|de|d)\b|comment (?:savoir|je sais|voir|je vois|on sait|reconnaitre)|cest normal|normal (?:qu|que|si|ou)|eviter|empecher|pour pas qu|devrait|cest (?:quoi|comment)|ca ressemble a quoi|a quoi (?:ca|je|on)|quelle? (?:temperature|fievre|couleur|quantite)|a partir de (?:combien|quand|quelle?|quel)|guett\w*|(?:a|ont|ma|me a|nous a) dit de (?:guetter|faire attention|regarder|verifier|appeler|venir|surveiller)|par precaution|en prevention|preventif|preventivement|ca veut dire quoi|veut dire|combien|a quoi ressemble|lequel|faire attention)\b/;

/** Trouble breathing that has not begun: "et si elle arrête de respirer". Told of as there, again or lasting, it is no fear. */
export const feared =
  /\b(?:^si|fait (?:on |je )?quoi si|je fais si|faire si|au cas ou|peur (?:qu|que)) (?:elle|il|bebe)(?: se)? (?:(?:arrete\w*|cesse) de respirer|(?:se )?etouff(?:e|ait)|(?:se )?etrangl(?:e|ait))\b(?! (?:encore|a nouveau|comme|tout|quand|depuis|maintenant|beaucoup)\b)/g;

/** Said of another time. */
export const past =
  /\b(?:(?:semaine|mois|annee|an|ete|hiver|fois|nuit) (?:derniere?s?|passee?s?)|hier|y a (?:\w+ ){1,3}(?:jours?|semaines?|mois|ans?|heures?)|longtemps|dans le passe|antecedents?|quand (?:elle|il) etait|a la naissance|(?:a|pendant|apres|lors de|lors|suite a|depuis)(?: de)? (?:le |la |sa |son |l )?(?:operation|chirurgie|naissance|hopital|accouchement|hospitalisation|premiere pose)|tout a le heure|tantot|plus tot|auparavant|(?<!\b(?:que|qu|que l) )avant(?! (?:de|que|et|hier))|parfois|des fois|de temps en temps|d habitude|de habitude|souvent|en general|generalement|connue? pour|a deja (?:eu|fait)|deja eu|dans le temps|autrefois|sujette?|habituelle?\w*|(?:pour|contre) (?:les|ses|la|son|le) (?:crises?|convulsions?|epilepsie|fievre|douleur)|epileptique)\b/;

/** "Depuis hier" goes on. */
export const sinceThen =
  /\bque (?:hier(?: soir| matin)?|tantot|ce matin|cet apres[ -]midi|avant|tout a le heure|d habitude|de habitude)\b|\b(?:depuis|de?puis) (?:hier(?: soir| matin)?|avant[ -]hier|ce matin|cette nuit|ce soir|cet apres[ -]midi|tout a le heure|tantot|y a \w+ \w+|(?:la )?(?:pose|le operation))\b/g;

/** Said to be over, in the same statement or a later one of the sentence. */
export const over =
  /\b(?:(?<!\b(?:bouge|reagit|reagi|repond|respire|reveille|ouvre|peut|veut|mange|boit|tient|pleure|urine)s? (?:presque |quasiment )?)nplus|(?:se est|a|est|sest|ca|sang|vite|saignement|cest|bien|tout|vomi\w*|deja) arretee?s?\b(?! pas)|(?<!pas |plus |nplus )(?:arrete|cesse|fini|termine) de\b|cest (?:fini|passe|termine|parti|bon|regle)|\b(?:la|maintenant|present|depuis),? cest (?:bien |tout |tres )?sec|a (?:fini|passe|disparu|diminue|baisse|cesse|stoppe)|(?:est|sont) (?:partie?s?|passee?s?|tombee?|redescendue?|finie?s?)|va mieux|ca va mieux|(?:se est |sest )?(?<!\brien (?:le |la |lui )?)calmee?|stoppee?|disparu\w*|regle|(?:pas|plus) maintenant|saigne plus(?! (?:fort|en plus|que|qu|beaucoup))|diminu\w*|ralenti\w*|(?:bien|mieux|ok|correcte?|calme|normale?) maintenant|maintenant (?:ca va|cest bon|ok|elle va|il va)|etait (?:pale|chaude?|bleue?)|redevenue?s?|repris (?:ses|des) couleurs|(?:y a|a|^) ?plus de sang(?! que)|(?:pareil|comme) (?:que )?(?:d |de )?habitude|comme toujours)\b/;

/** What comes back through the tube, looked at only while that is asked. */
export const redContents = /\b(?:rouges?|rougeatres?|sanglante?s?|cramoisi)\b(?! ?(?:bouchon|clamp|port|tube|sonde))/;

/** Said of someone or something else. */
export const other =
  /\b(?:(?:cest )?moi qui|mon (?:autre|doigt|bras|coeur|ventre|dos|mari|pouce)|ma (?:tete|main|autre|poitrine)|mes (?:mains|doigts|jambes|genoux) (?:\w+ )?(?:trembl|saign)\w*|jai les (?:mains|jambes|doigts)|j?ai (?:\w+ )?(?:mal|chaud|peur|envie de|la nausee|des frissons|tremble)|je (?:suis|saigne|tremble|vomis?|respire|pleure|me sens|transpire|panique|meurs|vais vomir))\b/;

/** Said of another person altogether: not heard at all, but for breathing. A relative who only tells of it is no patient. */
export const otherPerson =
  /\b(?:moi,? je (?:ai|suis|vomis?|saigne|tremble|me sens|transpire|pleure)\b|moi,? jai\b|moi qui (?:ai|suis|tremble|saigne|vomi\w*|pleure)|(?:mon|ma|son|sa|notre) (?:autre (?:fils|fille|enfant|bebe)|grande? (?:soeur|frere|fils|fille)|petite? (?:soeur|frere)|(?:fille|fils) aine\w*|aine\w*|soeur|frere|jumeau|jumelle|mari|femme|conjointe?|mere|pere|maman|papa|beau[ -]pere|belle[ -]mere|grand[ -]mere|grand[ -]pere|mamie|papi|chien|chat|cousine?|voisine?|oncle|tante|patronne?|collegue)|le chien|le chat|la chatte|la chienne|la grande soeur|le grand frere)\b(?! (?:(?:me|nous|la|le|l|lui|a|ma|trouve) )*(?:dit|dis|pense|voit|vu|vue|trouve|trouvee?|croit|remarque\w*|qui|que|appelle|regarde|ecrit|est avec|confirme))/;

/** Words that only look like signs. */
export const lookalikes: readonly RegExp[] = [
  // "Elle respire" is well, where it is the whole statement and nothing bad of it follows.
  /(?<=^|[,.;!] ?|\b(?:mais|et|oui|non|bon|la|moins|heureusement|par contre) )(?:elle|il|bebe|y|la petite|le petit) respire\b(?= ?(?:$|[.!;,]|et\b|mais\b))(?!.{0,80}\b(?:mal|vite|fort|pas|plus|nplus|difficil\w*|bizarre\w*|bruit|bruyan\w*|siffl\w*|peine|moins|lent\w*|court\w*|saccad\w*|a peine|presque|drole\w*|rapide\w*|encore|faible\w*|bouche|gros|rale|bleu\w*|gris\w*))/g,
  // "Ne respire pas bizarrement": what is denied is that anything is wrong with it.
  /\brespir\w* pas (?:du tout |plus )?(?:bizarre\w*|drolement|etrange\w*|vite|trop vite|bruyamment|rapidement|difficilement|mal)\b(?! (?:assez|que))/g,
  // One sign denied and no mark before the next words: "il saigne pas il respire bien".
  /(?<=\b(?:saigne|vomit|pleure|crie|hurle|gonfle|tremble|tousse) (?:pas|nplus) )(?:elle|il|bebe) respire (?:(?:tout a fait|tres|super|plutot|vraiment|toujours) )*(?:bien|normalement|correctement|comme (?:d |de )?habitude)\b(?! (?:pas|plus|nplus|vite|mal|fort|trop))/g,
  // Breath that fear takes from the caller, play, and a caller who is pale.
  /\bj ?ai (?:vraiment |trop |tellement )?du mal a respir\w+ (?=(?:tellement|tant|avec le|a cause du|de)(?: (?:je|le|la|mon))? ?(?:stress\w*|paniqu\w*|angoiss\w*|peur|trouille|suis (?:stress|paniqu|angoiss)\w*|ai peur))/g,
  /\b(?:fais(?:ait|ais|ant)?|fait|faire|joue a faire) semblant (?:de |d )(?:se |s )?(?:etouff|etrangl|vomi|evanoui|mort|mourir|avoir mal|pleur|saign|trembl)\w*/g,
  /\bje suis (?:toute? |tres |plus )?(?:blanche?|pale|livide|bleme|verte?)(?: comme (?:un|une|du|la|le) (?:linge|drap|mort|morte|cachet|cadavre|neige))?(?=,? (?:mais|et) (?:lui|elle|il|bebe|le petit|la petite)\b)/g,
  // Cries told of another day, at the scales or the doctor's.
  /\b(?:chez|a) (?:le|la) (?:pediatre|docteure?|medecin|dentiste|infirmiere|pesee|pmi) (?:la semaine|le mois|le an|hier|lundi|mardi|mercredi|jeudi|vendredi)(?: (?:derniere?|passee?))?,? (?:elle|il) a (?:crie|hurle|pleure|chiale)\w*(?: tout (?:le|du) (?:long|temps))?/g,
  // Cries of the moment it was put in, and over.
  /\b(?:hurlait|criait|pleurait|chialait|braillait|a (?:hurle|crie|pleure))\b(?<=\bcalmee?\b.{0,60})/g,
  // Bread, which English would hear as pain.
  /\b(?:du|le|un|de|au|mon|petit|petits) pains?\b/g,
  // Another of the family who is ill.
  /\b(?:frere|soeur|cousine?|jumeau|jumelle|papa|maman|pere|mere|mari|femme|voisine?|copine?|copain)(?: \w+){0,6},? et (?:aussi |il |elle )?(?:a )?(?:vomi\w*|saigne\w*|convuls\w*|de la fievre)\b/g,
  /\bde ailleurs\b/g,
  /\bsent(?:ait)? (?:le|un peu le|comme du|comme le) vomi\b/g,
  /\broses?\b(?<=\b(?:pale|bleue?|grise?|blanche?)\b,? (?:et |mais |elle est |il est )*(?:plutot |bien |toute? )?\w+)/g,
  /\b(?:vomi|convulse|saigne|tremble)\w* (?:hier(?: soir| matin)?|(?:la )?semaine (?:derniere|passee)|le (?:mois|an) (?:dernier|passe)|le annee (?:derniere|passee)|y a \w+ (?:jours?|semaines?|mois|ans?))(?= (?:mais|et) (?:(?:la|aujourdhui|maintenant|ce soir|cette nuit|depuis) ?){1,2},? (?:rien|non|pas|ca va|tout va bien)\b)/g,
  /\b(?:(?:annee|an|mois|ete|hiver|semaine) (?:derniere?|passee?)|y a (?:\w+ ){1,2}(?:ans?|mois|semaines?))\b[^.;!?]{0,60},? (?:mais |et )?(?:(?:aujourdhui|la|maintenant|ce soir|cette nuit) ?){1,2},? (?:rien|non|pas|ca va|tout va bien)\b/g,
  // The balloon's water at its valve, and a nose with a cold.
  /\b(?:eau|ballon\w*)(?: \w+){0,2} (?:fuit|coule|ressort|revient|sort|goutte)(?: \w+){0,2} (?:par|de|du|au) (?:la |le )?(?:valve|port|bouchon|embout|clapet)\b/g,
  /\bsaign\w*(?: \w+){0,2} (?:du|par le) nez\b|\b(?:du )?nez (?:qui )?saigne\w*\b/g,
  /\b(?:jen|jy|jai(?= mal(?: au ventre| partout)? (?:tellement|de stress|de peur|a force|pour lui|pour elle)))(?: ai)? mal(?: au ventre| partout)?\b/g,
  /\bje (?:me |vais |veux |peux |suis )?(?:fais |faire |en train de )?(?:vomi[rs]?|gerber?|degueuler?)\b|\b(?:malades?|vomir) de (?:stress|peur|trouille|le angoisse|angoisse|inquietude)\b/g,
  /\bmoi qui (?:ai mal|trembl\w*|vomi\w*|pleur\w*|transpir\w*|suis (?:pale|malade|blanche?|chaude?|en sueur))\b/g,
  /\bnez (?:qui |lui |est |tout )*(?:siffle|ronfle|coule|bouchee?|prise?|encombree?)\b/g,
  /\b(?:cest moi qui|moi je) saigne\w*(?: du doigt| de la main)?\b|\b(?:comme|on dirait) (?:du |de le |un )?vomi\w*\b|\b(?:jaunes?|verte?s?|beiges?|marrons?) (?:tres )?pales?\b/g,
  /\b(?:sonde|tube|ballon\w*|bouton)(?:,? (?:est|bien|ca|cest|tapee?|fixee?|scotchee?|collee?|solide|gonflee?)){0,4},? bouge (?:pas|nplus)\b/g,
  // A village, a belly that is soft as it should be, cries that are no pain, and hands that shake over the tube.
  /\b(?:au|du|le|son|mon) bled\b/g,
  /\b(?:mou|molle|souple)\b(?<=\b(?:ventre|bedon|bedaine|abdomen|bide)\b[^.;!?]{0,40}\b(?:dure?|gonflee?|tendue?|ballonnee?|rigide|serree?),? (?:et |mais )?(?:(?:il|elle|cest|est|reste|plutot|bien|tout|toute|toujours|tres) ){0,5}\w+)/g,
  /\b(?:cri\w*|pleur\w*|hurl\w*|rale\w*|chial\w*) (?:de (?:colere|joie|rage|rire|faim|peur|surprise|frustration|fatigue|sommeil)|en (?:riant|rigolant|jouant|chantant)|parce (?:que|qu) (?:elle|il) (?:veut|a faim|est fatigue\w*|voulait|a sommeil)|pour (?:avoir|manger|son|sa|ses|la tetine|le doudou)|apres (?:moi|son|sa|le doudou|la tetine))\b/g,
  /\b(?:a|avait) crie (?:(?:a|vers) \d{1,2}:\d\d )?(?:en (?:le |la |l )?(?:arrachant|tirant|enlevant|tombant|sortant)|quand (?:elle|il|la sonde|le bouton|ca) (?:est |se est |a )?(?:sortie?|arrachee?|tombee?|partie?|tiree?|enlevee?))\b/g,
  /\b(?:mes|les) (?:mains?|doigts?|jambes?|bras)(?: \w+)? (?:me |qui )?trembl\w*\b/g,
  /\b(?:a|ont|avait)(?: (?:un (?:petit )?peu|beaucoup|juste|encore|bien))* rale\b(?! (?:en|quand|pour) )/g,
  /\bavec (?:beaucoup |pas mal |un peu )?(?:de |du )mal\b|\b(?:va|trouve|vois) (?:vraiment |tres |super |trop )*mal\b/g,
  /\bje (?:le |la |l )?(?:respir\w*|souffle)\b|\b(?:grande|profonde|bonne) (?:respiration|inspiration)\b|\brespirez\b|\brespire un (?:grand )?coup\b|\b(?:appareil|machine|tube|sonde|canule|kine) (?:de |pour |a )?(?:la )?respir\w*\b|\bpause respir\w* (?:non|ok)\b/g,
  /\b(?=respir)(?<!\b(?:pas|plus|nplus|jamais|peine|mal|peu)(?: \w+)? ?)respir\w*(?: (?:est|semble|parait|elle|il|tres|super|bien|tout|a|fait|vraiment|parfaitement|toujours|plutot|encore|reste|quand|meme|de|maniere|facon|et|va|bon|assez|tranquillement|calmement)){0,5} (?:bien|ben(?= ?(?:$|[,.!]|pu?is|et|correct))|normale?|normalement|ok|correcte?|correctement|tranquille\w*|calme|calmement|facilement|regulier\w*|regulierement|parfait\w*|bonne|nickel|seule?|comme (?:d ?|de )?(?:habitude|toujours|il faut)|sans (?:probleme|difficulte|gene|aide|effort|souci)s?|librement|impec\w*|aisement|confortable\w*)\b(?! ?(?:pas(?! (?:de|d|chaude?|vomi|pale|malade|blanche?|bleue?|fievr\w*|saign\w*)\b)|mal|trop|vite|fort|plus|difficile\w*))/g,
  /\b(?:prise|bilan|test|analyse|examen|don|groupe)s? (?:de |du )?sang\b|\bsang (?:froid|glace)\b|\bbon sang\b|\bsang d encre\b|\bsang de encre\b|\bmauvais sang\b|\b(?:pression|tension) (?:du )?sang\w*\b|\bpur sang\b/g,
  /\b(?:medicaments?|medocs?|traitements?|sirop|dose|suppo\w*|comprimes?|paracetamol|anti)s? (?:pour|contre|de|anti)? ?(?:la |le |les |sa |son |ses |l |d )?(?:fievre|douleurs?|epilepsie|convulsions?|crises?|vomissements?|coeur|nausees?|mal|epileptique\w*|convulsi\w*|vomiti\w*)\b|\banti ?-?(?:douleur|epilepti|convuls|vomi|nause|inflam)\w*/g,
  /\b(?:bouchon|clamp|embout|port|tube|sonde|bouton|bandelette|languette|bande|papier|valve|ballon\w*|seringue|boite|sac|kit|body|pyjama|couverture|capuchon|clip|pince|ruban|couleur|echelle|case|carre|trousse|gants?|fil|marque|trait|ligne|tige|test|strip|zone|pastille|chiffre|partie|pochette|bavoir|doudou|robe|jouet|siege|lit|yeux)s? (?:(?:est|sont|devenue?|a|vire\w*|au|de|du|la|le|qui|tout\w*|en|couleur|tourne\w*|bien|cest|plutot|dit|indique|tire|sur|entre|un|peu|temporaire|provisoire|avec|dans|bout|son|sa|se|met|change\w*|embout|bouchon) ){0,5}(?:bleu|gris|vert|violet|rose|rouge|blanc|blanche|pale|mauve)\w*/g,
  /\b(?:un|des|petits?|gros|gros) bleus?\b(?! autour)|\bpeur bleue\b|\bfille en rose\b|\broses?\b(?<=\b(?:elle|il|y|bebe|peau|levres?|teint|joues|petite?|fille|fils|enfant|loulou|puce|garcon)(?: (?:est|sont|a|le|air|toute?|tous|bien|reste|teint|et|encore|redevenue?)){1,8} \w+)/g,
  /\b(?:ca va|va|vas|vais|peut|veux|voudrais|veut|peur|risque|pourrait|sans|sans lui|pour pas|est ce que ca|eviter de|envie|voulais)(?: \w+){0,3} (?:faire |fait |faire du |fais )(?:trop )?mal\b|\bsans (?:avoir )?mal\b|(?<!\ba )\bpas (?:si )?mal\b(?= ?(?:$|[,.!]))|\btant bien que mal\b|\bplus de peur que de mal\b|\bmal de (?:l )?air\b|(?<!fait )\bdu mal\b(?! (?:a|pour|de) (?:respir|inspir|souffl|(?:re)?prendre|(?:re)?trouver|avoir (?:son|du|de le)))|\bca tombe mal\b|\bmal (?:de tete|au dos) (?:a force|pour moi)\b|\bse fait pas mal\b/g,
  /\b(?:je|moi je|on|nous|maman|papa|mon mari|ma femme)(?: \w+)? (?:crie|hurle|tremble|pleure|panique|transpire|vais vomir|vomis)\b|\bje (?:me )?(?:sens mal|vais tomber dans les pommes)\b/g,
  /\b(?:eau|lait|bain|linge|gant|lavette|compresse|serviette|bouillotte|debarbouillette|salle|piece|chambre|couverture|debarbouillette)s? (?:est |un peu |bien )?(?:chaude?s?|tiede)\b|\bil fait (?:tres |trop |super )?chaud\b|\bau chaud\b|\bchaude?s? (?:eau|couverture)\b/g,
  /\bventre (?:est |tout |bien |toujours |reste )*(?:mou|souple)\b|\b(?:sonde|tube|ballon(?:net)?s?|bouton|tuyau)(?: \w+){0,2} (?:mou|molle|flasque|dure?|rigide|raide)\b|\b(?:petit |gros )?(?:bouton|ballon) (?:de )?(?:gonfl\w*|enfl\w*)\b/g,
  // Laughing, paint and felt pens, a pet or a relative who has the sign, the caller out of breath, a partner who does not answer.
  /\b(?:se tord\w*|tordue?|plie\w*(?: en (?:2|deux))?|morte?|ecroulee?|fou|folle|larmes|cris|eclats?) de rires?\b|\b(?:rit|rigole|rire|rires|riait) aux (?:larmes|eclats)\b/g,
  /\b(?=bleu|vert|rouge|violet|mauve|noir|rose|gris|jaune)(?<!\blevres? (?:\w+ )?)(?:bleu|vert|rouge|violet|mauve|noir|rose|gris|jaune)\w* (?:(?:de|du|des|a|cause|avec|le|la|les|son|ses|un) ){1,3}(?:feutres?|peintures?|encre|stylos?|colorants?|gouache|crayons?|marqueurs?|maquillage|sucette|bonbons?|mures?|myrtilles?|bleuets?|craies?|teinture|pate a modeler|vernis|glace|sirop|betteraves?)\b/g,
  /\bcest (?:le|la|mon|ma|son|sa|notre|leur) (?:(?:grande?|petite?|autre|belle|beau)[ -])?(?:chat(?:te|on)?|chien(?:ne)?|chiot|lapin|frere|soeur|cousine?|copine?|copain|mari|femme|mere|pere|maman|papa|mamie|papi|voisine?|tante|oncle|nounou) qui (?:(?:a|est|se|lui|fait|de|la|du|encore|deja|juste|vient) )*(?:vomi\w*|saign\w*|cri(?:e|ait)|hurl\w*|pleur\w*|trembl\w*|fievre|malade|tousse|essouffl\w*|rale|convuls\w*|evanoui\w*|pale|blanche?)\b/g,
  /\b(?:je|jsuis|moi)(?: (?:suis|me|sens|reste|toute?|un|peu|tres|super|completement|encore|deja))* (?:essouffl\w*|hors de haleine)\b/g,
  /\b(?:ma|mon|sa|son|notre) (?:blonde|chum|conjointe?|compagn\w+|mari|femme|mere|pere|soeur|frere|copine|copain|ex|maman|papa|(?:grand|belle|beau)[ -](?:mere|pere)|docteure?|medecin|infirmi\w+|voisine?|patron\w*)(?:,? (?:mais|et|qui|elle|il|me|nous|lui|a))* repond(?:ait|ent)? (?:toujours |meme )?(?:pas|plus|nplus)\b/g,
  /\b(?:fievre|sang|douleurs?|vomissements?|convulsions?|fuites?),? (?:et |mais |or |la )?(?:il|elle|on) (?:en a|y en a) (?:pas|nplus|aucune?)\b/g,
  // Strips of that colour.
  /\broses?\b(?<=\b(?:jen ai|les ai|en a|en reste),? \w+)/g,
  /\broses?\b(?<=\b(?:calme|tonique|souriante?|chaude?|reveillee?|en forme) (?:et |, )?(?:bien |toute? )?\w+)/g,
  /\b(?:pas|jamais) (?:trop |si |tellement )?mal dormi\b/g,
  // Proud, which Spanish would hear as a fever.
  /\b(?:je suis|jsuis|on est|trop|tres|si|tellement|super) fie(?:re|bre)s?\b|\bfie(?:re|bre)s? de (?:lui|elle|moi|nous)\b/g,
  // Rosy is well where it stands for the child: beside how it breathes, or with other words for well.
  /\brose(?:e|es|s)?\b(?<= - ,? ?(?:(?:et|il|elle|est|bien|toute?) ){0,4}\w+)(?! ?(?:de|du|liquide|sur|dans|autour|qui|par)\b)/g,
  /\brosee?s?\b(?=,? (?:et )?(?:tonique|chaude?|calme|eveille\w*|souple|ventre|respir\w*|souri\w*|joue|dort|vif|vive|reacti\w*|en forme|detendue?)\b)(?<=(?:^|[,;] |\bet |\bmais |\bnon )(?:(?:il|elle|est|bien|tout|toute) ){0,3}\w+)/g,
  /\bcrises? de (?:larmes?|nerfs|colere|pleurs|toux|rire|panique)\b|\bcrise(?:s)? (?:economique|d ado)\b/g,
];
/** Words of quantity: a negation that reaches them leaves some of the sign. */
export const muchOf = /\b(?:beaucoup|enormement|tellement|trop|tant)\b/;
export const muchAfter =
  /^,? (?:(?:enfin|ou|bon|euh|disons|et|mais) )*presque (?:pas|rien|plus|nplus|aucun)|^ (?:beaucoup|enormement|tellement|trop|tant)\b/;
export const hardlyNo = /\b(?:presque|quasiment|quasi|pratiquement) (?:pas|rien|plus|nplus|aucune?)$/;
/** After a sign denied: some of it after all. */
export const someAfterAll =
  /^(?:(?:enfin|bon|ok|ah|attendez|attends|en fait|peut etre|si|il y a|y a|y avait|je vois|jai vu|elle a|il a|disons|euh|oui|ou|non|juste) )*(?:(?:une?|des|le|la|quelques|tout|toute|petite?s?|leger|legere|minuscule) )*(?:gouttes?|gouttelettes?|taches?|points?|traces?|peu|filets?|chouia|poil|1 fois|2 fois|une fois)(?= ?$| (?:sur|dans|de (?:sang|rose)|quand|autour|au|la|quand meme|rose)\b)/;
/** How a list written with slashes is said. */
export const or = ' ou ';
/** A list: its negation reaches all of it. */
export const listed =
  / (?:ou|ni) | et de (?=(?:sang|fievre|douleurs?|vomissements?|saignements?|fuites?|gonflement)\b)/;
/** Where a statement inside a sentence ends. */
export const statementEnd =
  /\||\b(?:mais|sauf|juste|seulement|par contre|cependant|pourtant|puis|alors|excepte|sinon|a part)\b|\bet\b(?! de (?:sang|fievre|douleurs?|vomissements?|saignements?|fuites?|gonflement)\b)/;
/** "Et non il ne saigne pas": a no that belongs to the denial after it. */
export const noBefore = /\bnon,? (?:il|elle|ca) (?:ne |n )?$/;
/** "Fever: no". */
export const deniedAfter =
  /^ ?(?:[:=-] ?)?(?:non|nan|aucune?)$|^(?: (?:du|beaucoup))? pas\b(?! (?:bien|mal|que|seulement|un peu|juste|sure?|trop|beaucoup|tres|tellement|vraiment|si|normal\w*|d arreter|de arreter|vert))|^ (?:jamais)\b/;
