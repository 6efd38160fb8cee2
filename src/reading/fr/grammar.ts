/** French words that bind: elisions, texting spelling, units of time, and where a statement ends. */
import type { Marks } from '../clean.ts';
import type { TimeUnit } from '../durations.ts';

const month = '(janvier|fevrier|mars|avril|mai|juin|juillet|aout|septembre|octobre|novembre|decembre)';

/**
 * Accents and apostrophes are gone already. These bring what is said and what is texted to one spelling: elisions are
 * written out, "il y a" is "y a", and the "ne" that nobody types is dropped; "ne ... plus" becomes "nplus", because
 * "saigne plus" alone could mean "bleeds more".
 */
export const contractions: readonly (readonly [RegExp, string])[] = [
  [/\baujourd ?hui\b|\bauj\b|\bajd\b/g, 'aujourdhui'],
  [/\bpeut[- ]?(?:etre|etr|et)\b|\bp(?:eu)?t[- ]?etre?\b|\bptet\w{0,2}\b|\bpe\b|\bp-e\b/g, 'peut etre'],
  [/\bs il (?:vous|te|v|t) ?plai\w*\b|\bsil (?:vous|te) plai\w*\b|\bstp\b|\bsvp\b|\bsvpl\b|\bsiou?plait\b/g, 'svp'],
  [/\b(?:ne |n ?)((?:(?:y|en|le|la|les|l|lui|me|m|se|s) )*\w+) plus\b(?! (?:que|qu|de \d|fort))/g, '$1 nplus'],
  [/\bs (?=ils?\b)/g, 'si '],
  [/\bn (?=[aeiouyh])/g, ''],
  [
    /\bn(?=(?:ai|as|avons|avez|ont|avait|avais|est|etait|arrive|arrives|y a|ya) (?:pas|pa|rien|jamais|aucun|plus|meme)\b)/g,
    '',
  ],
  [/(?<!\b(?:est|etait|ete|et) )\bne (?!en\b|le \d|au\b|a \d|premat|depuis|y a|il y a|avec|avant)/g, ''],
  [/\b(?:ils?|i) ?y ?a\b|\bilya\b|\bya\b|\by ?a\b/g, 'y a'],
  [/\b(?:ils?|i) y en a\b|\byen a\b/g, 'y en a'],
  [/(?<!\b(?:sonde|tube|bouton|g|type|\d|gj? ou(?: une?)?) ?)\bj (?=[aeiouyh])/g, 'j'],
  [
    /(?<!\b(?:sonde|tube|bouton|type|une?|la|le|de|\d) ?)\bg (?=(?:pas|pa|une?|les?|la|des|du|perdu|trouve|mis|pousse|essaye?|tout|tt|rien|jamais|bien|fait|eu|vu|oublie|retrouve|jete|garde|peur|besoin|reussi|force|remis|besoin|deja|plus|que|aucune?|mal|du|nettoye|lave|rempli|tire|mes?|ma|mon)\b)/g,
    'jai ',
  ],
  [/\b(?:g|je|jai) ?(?:jamais )?pas pu\b/g, 'jai pas pu'],
  [/\bc (?=est|etait|ete)/g, 'c'],
  [/(?<!\d ?)\bc (?=[a-z])/g, 'cest '],
  [/\bse?st\b|\bs est\b/g, 'se est'],
  [/(?<!\d ?)\b([stmd]) (?=[aeiouyh])/g, '$1e '],
  // "A l'est correcte", "y'est correct": she is, he is.
  [
    /(?<=^|[,.;!] ?|\b(?:non|nope|nan|oui|ouais|mais|puis|pis|et|que|bien|ben) )a l est(?= (?:ben |bien |tres |pas |toute? |en |la |sur |a |de )?[a-z])/g,
    'elle est',
  ],
  [
    /(?<=^|[,.;!] ?|\b(?:non|nope|nan|oui|ouais|mais|puis|pis|et) )y ?est(?= (?:ben |bien |tres |pas |tout |en |la |sur |a |de )?[a-z])/g,
    'il est',
  ],
  [
    /(?<=^|[,.;!] ?|\b(?:non|nope|nan|oui|ouais|mais|puis|pis|et) )a (?=(?:va|dort|joue|respire|mange|pleure|rit|sourit|vomit|saigne|a|rentre|entre|tient|bouge|coule|fuit)\b)/g,
    'elle ',
  ],
  [/\bl (?=[aeiouyh])/g, 'le '],
  [/\bl(hopital|infirmier\w*|eau|air|estomac|urgences?|ambulance|annee|autre|operation|interieur|hosto)\b/g, 'le $1'],
  [/\bd(air|eau|habitude|accord|urgence|infirmiere)\b/g, 'de $1'],
  [/\bl ?h?opit(?:al|als|ale)\b/g, 'le hopital'],
  // "Elle aura 2 ans en mars" is no month of the tube.
  [
    new RegExp(
      `(?<=\\b(?:aura|fera|va avoir|fetera|fete) (?:ses )?(?:\\d+|une?|deux|trois|quatre|cinq|six|sept|huit) (?:ans?|mois)) (?:en|au mois de|debut|fin|mi|le \\d{1,2}) ${month}\\b`,
      'g',
    ),
    '',
  ],
  // "22, des livres", "22, ce sont des kilos".
  [
    /(?<=\d),? (?:(?:et )?(?:cest|ce sont|je dis|en) )?(?:des|en) (?=(?:livres|lbs?|kilos?|kgs?)\b(?! (?:ou|pas)\b))/g,
    ' ',
  ],
  [/\bquelqu ?e? un\b|\bquelquun\b|\bqq ?un\b|\bqqn\b|\bqlq ?un\b/g, 'quelquun'],
  [/\b(jus|pres|lors|puis|quel)qu (?=[a-z])/g, '$1que '],
  [/\bqu (?=[aeiouyh])/g, 'que '],
  [/\bde accord\b|\bdac\b|\bdacc\b|\bdak\b/g, 'daccord'],
  [
    /\b(?:je |j )?(?:ne )?(?:jsp|jspa|jsais pas?|jse pas?|ch(?:e|ai|ais) ?pas?|chepa|saispas|sai pas?|se pa|sais pa|sait pa)\b/g,
    'sais pas',
  ],
  [/\bj ?sais (?:plus|pu)\b|\bjsplus\b/g, 'sais nplus'],
  [/\bcbon\b/g, 'cest bon'],
  [/\b(?:d|de) ?hab\b/g, 'de habitude'],
  [/\b(?:qqch|qqchose|qq chose|qque chose|kekchose|qlq chose|quelqu?e? ?choz)\b/g, 'quelque chose'],
  // Alone it is an answer: so-so, and no better.
  [/^(?:euh |ben |bah )?(?:bo+f+|couci couca|comme ci comme ca)[ .,!]*$/g, 'pas terrible'],
  [/\bpa\b/g, 'pas'],
  // "Plus une goutte", "plus aucun", "plus du tout": never more of it, with or without its "ne"; so is "non, plus de sang".
  [/\bplus (?=(?:une? seule?|une? (?:goutte|trace)|aucune?|du tout|jamais|rien|personne)\b)/g, 'nplus '],
  [
    /(?<=^(?:non|nan)[ ,.!]{1,3}(?:y a |y en a )?)plus (?=(?:de |du |d )?(?:sang|saigne\w*|fuites?|fievre|vomi\w*|douleurs?)\b)/g,
    'nplus ',
  ],
  // "La trousse? Non": asked of oneself, and answered.
  [
    /^((?:(?:la|le|les|des|une?|du|mon|ma|son|sa|pour (?:la|le|les)) )?[a-z]+)\? ?(?=(?:non|nan|oui|ouais|ouep)\b)/g,
    '$1 ',
  ],
  [/\brouge vif,? (?:et |puis )?(?=ca (?:coule|continue|arrete pas|se arrete pas)\b)/g, 'sang rouge vif '],
  [/\b(re)?vien\b/g, '$1vient'],
  [/\bsor\b/g, 'sort'],
  [/(?<=\d)o(?=\d|\b)/g, '0'],
  [/\btoute? es\b|\btoute est (?=(?:beau|correct|bon|ok|legit|parfait|pret|normal)\b)/g, 'tout est '],
  [/\bje (?:vous |t |te |vous en |te en |t en )?prie\b/g, 'svp'],
  [/\b(j?)ari(?=v(?:e|es|ee|er|ais|ait|ons)\b)/g, '$1arri'],
  [/\bmet+re\b(?<=\b(?:la|les|a le) \w+)/g, 'mettre'],
  [/\bhosto\b/g, 'hopital'],
  [/\br ?\. ?a ?\. ?s\b\.?/g, 'ras'],
  [/\bni[ckq]+u?el(?:le)?s?\b|\bnikel\b/g, 'nickel'],
  [/\b(il|elle|ca|on) fai\b/g, '$1 fait'],
  [/(?<!\b(?:a|il|aurait|avait|ai) )\bplu\b/g, 'plus'],
  [/\bptit(e?s?)\b|\bp tit(e?s?)\b/g, 'petit$1$2'],
  [/\bj(?=(?:y )?arriv(?:e|ais|erai|erais)\b)/g, 'je '],
  [/\bmil+ilit(?:re|er)s?\b|\bcentimetres? cubes?\b/g, 'ml'],
  [/\bbcp\b|\bbeaucoups?\b|\bbocoup\b|\bboucoup\b/g, 'beaucoup'],
  [/\btt\b/g, 'tout'],
  [/\bttes?\b/g, 'toute'],
  [/\bt(?:j|ou?j)(?:r?s|rs?)\b|\btoujour\b/g, 'toujours'],
  [/\b(?:mtn|mnt|mtnt|mtnan|maintenan)\b/g, 'maintenant'],
  [/\b(?:qd|kan|kand|qan|quant)\b/g, 'quand'],
  [/\b(?:dps|dpuis|depui|depuit)\b/g, 'depuis'],
  [/\bds\b/g, 'dans'],
  [/\bpr\b/g, 'pour'],
  [/\b(?:ac|avc|avk)\b/g, 'avec'],
  [/\bdsl\b|\bdesoler\b|\bdesolee\b/g, 'desole'],
  [/\b(?:ke|q)\b/g, 'que'],
  [/\bki\b/g, 'qui'],
  [/\b(?:koi|qoi)\b/g, 'quoi'],
  [/\b(?:vrmt|vrm|vrmnt|vraimen)\b/g, 'vraiment'],
  [/\b(?:jms|jamai|jamé)\b/g, 'jamais'],
  [/\b(?:ri1|rin|rein de)\b/g, 'rien'],
  [/\bb1\b|\bbi1\b/g, 'bien'],
  [/\bbb\b/g, 'bebe'],
  [/\b(?:pb|pbs|prb|prob|problm)\b/g, 'probleme'],
  [/\ba (?:peu|peut) ?pres?\b/g, 'environ'],
  [
    /\bsa (?=(?:vient|revient|sort|bouche|aspire|pique|colle|passait|coulait|descend|monte|fait|saigne|veut|va|rentre|marche|coule|fuit|passe|sort|ressort|revient|remonte|suinte|repart|tombe|glisse|colle|bloque|force|y|se|a|me|reste|tient|bouge|entre|vient|donne|dit)\b)/g,
    'ca ',
  ],
  [/\b(?:fai|fais) (\d)/g, 'fait $1'],
  [/\bm(?:r|e)?ci+\b/g, 'merci'],
  [/\bdedant\b/g, 'dedans'],
  [/\bson est\b/g, 'sont'],
  [/\bball?ounes?\b/g, 'ballon'],
  [/\bball?on+et+e?s?\b/g, 'ballonnet'],
  // "Ras il a tout pris": all is well, and then a statement of its own.
  [
    /\b((?:en |la |pleine |super |grande )+forme|au top|tout(?:e)? content\w?e?|sans (?:souci|probleme)s?|pas de (?:souci|probleme)s?|comme (?:d |de )?habitude) (?=(?:je|jl?|jai|il|elle|on|nous|ils|elles|cest|tout)\b)/g,
    '$1, ',
  ],
  [
    /\b(ras|nickel(?: chrome)?|impec\w*|parfait|super|genial|top|(?:cest|tout est) (?:tout )?(?:fait|bon|ok|nickel|regle|parfait)|ca y est|tout (?:va )?bien|ca (?:roule|va bien)|(?:cest|elle est|il est|tout est|ballon\w* est) (?:bien )?(?:fixee?|scotchee?|collee?|gonflee?|attachee?|rentree?|dedans|en place|intacte?)) (?=(?:je|jl?|jai|jen|il|elle|on|nous|ils|elles|ca|cest|tout)\b)(?!tout (?:seule?|de|doucement)\b)/g,
    '$1, ',
  ],
  [/(?<!\bmal en )\bpis\b/g, 'puis'],
  [
    /\bben (?=(?:facile\w*|correcte?|ete|passee?|tolere\w*|rose|mieux|contente?|calme|normale?|tranquille|bon|bonne|en forme)\b)/g,
    'bien ',
  ],
  [
    /\b(y a|y en a|jen ai|on en a|jai|on a|reste) pu(?= (?:de|d|le|la|rien|aucune?|bandelet\w*|languet\w*)\b| ?(?:$|[,.!?]))/g,
    '$1 nplus',
  ],
  [/\bj ?l ?(ai|a)\b/g, 'je le $1'],
  [/\b(elle|il) est (?:ben |bien |tout a fait |super )*correcte?\b/g, '$1 est ok'],
  [/\b(?:se est fait )?les doigts dans le nez\b/g, 'facilement'],
  // "Juin ou juillet 2025", "moi je dis avril, lui mai, de 2025": one year for both.
  [new RegExp(`\\b${month} (ou|et|a|-) ${month},? (?:de |en )?((?:19|20)\\d{2})\\b`, 'g'), '$1 $4 $2 $3 $4'],
  [
    new RegExp(
      `\\b${month}(,? (?:et |mais )?(?:moi|lui|elle|il|mon \\w+|ma \\w+)(?: (?:je|dis|dit|crois|que|plutot|en|cest))* )${month},? (?:de |en (?:tout cas |tous cas )?|mais )?((?:19|20)\\d{2})\\b`,
      'g',
    ),
    '$1 $4,$2$3 $4',
  ],
  // "Il y a deux heures, deux heures et demie" is from the one to the other.
  [
    /\b(y a|depuis|fait) (\w+ (?:heures?|h|minutes?|min|jours?|semaines?|mois|ans?)),? (?=(?:deux|trois|quatre|cinq|six|sept|huit|neuf|dix|onze|\d{1,2}) (?:heures?|h|minutes?|min|jours?|semaines?|mois|ans?)\b)/g,
    '$1 $2 ou ',
  ],
  // A day said beside a feast is the day.
  [
    new RegExp(
      `\\b(\\d{1,2} ${month}(?: derniere?| passe)?(?: (?:19|20)\\d{2})?),? (?:juste )?(?:au retour|avant|apres|pendant|lors|entre)(?: (?:de|des|du|les?|la|fetes|vacances))* (?:noel|nouvel an|paques|toussaint)\\b`,
      'g',
    ),
    '$1',
  ],
  // The child who leaves the hospital is no tube that comes out; an illness is no tube.
  [
    /\b(?:sort|sortie?|sortons|sortis)(?: tout juste| juste| a peine)? (?=de (?:(?:le|la) )?(?:hopital|neonat\w*|maternite|rea\w*)\b)/g,
    'quitte ',
  ],
  [
    /\bgastro\b(?<=\b(?:attrap|chop|ramass|pogn|refil|couv|transmi|ramen)\w{0,4} (?:la|une|sa) gastro)/g,
    'gastroenterite',
  ],
  [
    /\bgastro\b(?<=\b(?:freres?|soeurs?|cousine?s?|jumeau|jumelle|papa|maman|pere|mere|mari|femme|voisine?s?|copine?s?|nounou|creche|ecole|monde) (?:\w+ ){0,3}(?:la|une|sa) gastro)/g,
    'gastroenterite',
  ],
  // "La semaine dernière, mardi": the last such day.
  [/\b(?:la )?semaine (?:derniere|passee),? (?:le )?((?:lun|mar|mercre|jeu|vendre|same)di|dimanche)\b/g, '$1 dernier'],
  [/\b((?:lun|mar|mercre|jeu|vendre|same)di|dimanche),? (?:de )?(?:la )?semaine (?:derniere|passee)\b/g, '$1 dernier'],
  [new RegExp(`\\b(?:en|au mois de|debut|fin|mi) ${month} (?=(?:ca |il |elle )?(?:fera|va faire|aura) )`, 'g'), ''],
  // "Ca fera 3 ans ce mois-ci": years that are nearly full, and no day of this month.
  [
    /(?<=\b(?:fera|feront|va faire|aura) (?:\d+|une?|deux|trois|quatre|cinq) (?:ans?|mois)(?: \w+)?) ce mois(?:[ -]ci)?\b/g,
    '',
  ],
  [
    /(?<=\bfait (?:\d+|une?|deux|trois|quatre|cinq|six|sept|huit|neuf|dix|onze) (?:ans?|mois|semaines?|jours?)) de ca\b/g,
    '',
  ],
];

/** What stands for a thumb up, a thumb down and a shrug, and for an apostrophe. */
export const marks: Marks = { yes: ' oui ', no: ' non ', unsure: ' sais pas ', and: ' et ', apostrophe: ' ' };

/** What people type for a unit of time. "m" is left out: minutes, months and metres share it. */
export const timeUnits: Readonly<Record<TimeUnit, string>> = {
  second: 'secondes?|secs?',
  minute: 'minutes?|minuttes?|mins?|mn|mns|minute',
  hour: 'heures?|heurs?|hrs?|h',
  day: 'jours?|jrs?|journees?|j',
  week: 'semaines?|semaine|semain|sems?|smn|smaines?',
  month: 'mois|moi',
  year: 'ans?|annees?',
};

/** Where one statement ends: at a mark, "mais", "et", "puis"; never inside a number or a range of numbers. */
export const clauseEnd = /[;!?]|[.,](?!\d)|\bmais\b|\bpuis\b|\bet\b(?! ?(?:une? )?\d)/;
