/** French words around a negation: which attach to what stands beside them, what says nothing by itself, and what each question is about. */
import { wordSet } from '../wordSet.ts';

/** These negate the words beside them; any other negation stands for itself. */
export const attached = wordSet('pas nplus jamais sans personne aucun aucune ni point no');
/** A no that is an answer where another statement follows it at once. */
export const bare = wordSet('no');
/** Negations that stand behind their verb: it must be of the question too. */
export const afterVerb = wordSet('pas nplus jamais point aucun aucune');

/** Begins another statement: the negation reaches no further. */
export const ends = wordSet(
  'je j jai on nous il elle ils elles parce parceque pcq pck psk car comme donc alors quand lorsque si mais puisque puis sinon tant ou tandis malgre cest jetais jen',
);
/** Right after a negation: what is negated is not the answer. */
export const asks = wordSet('comment pourquoi quoi quand ou que');
/** Right after a bare no: another statement begins, or plain chatter follows. */
export const opens = wordSet('le la les mon ma mes son sa ses tout toute tous merci madame monsieur docteur pas rien');

/** Says nothing by itself. */
export const light = wordSet(
  'le la les l lui leur un une des de du d en y ca cela ce c me m te t se s nous vous moi que qui ' +
    'a ai as avons avez ont avait avais avions aurai est es suis sommes sont etait etais etaient ete fait fais faire va vont vais peux peut peuvent pu pouvons veut veux voulu arrive arrives arrivons jarrive darrive reussi reussis reussit reussir ' +
    'encore du tout deja ici la maison maintenant moment jamais nplus plus non pas rien meme vraiment trop tres bien tellement si aussi et mon ma mes son sa ses notre nos votre cet cette ces au aux avec pour sur dans chez a par seul seule seules moyen autre tout toute toujours absolument besoin svp merci madame monsieur dieu oui autre autres deuxieme troisieme putain foutu foutue maudit maudite jen jai nen yen soir soiree aujourdhui sous main ni lo deh dh wesh snif zut mince merde helas malheureusement franchement pff hein quoi la',
);

/** What a negated word has to be about, a question each. */
export const matter = {
  kit: /^(?:kits?|trousses?|troussettes?|sac|sacs|boite|mallette|pochette|secours|urgence|rechange|provisoire|remplacement|sondes?|tubes?|bouton|foley|donne\w*|remis\w*|recu\w*|trouve\w*|retrouve\w*|vois|voit|montre\w*|appris\w*|apprend\w*|forme\w*|formation|explique\w*|envoye\w*|fourni\w*|eu|possed\w*|dispos\w*|ramene\w*|pris|apporte\w*|disponible\w*|materiel|vu|existe|\d+|livre\w*)$/,
  howIn:
    /^(?:rentr\w+|entr\w+|pass\w+|gliss\w+|veut|voulu|avanc\w+|mett\w*|mis|remett\w*|remis|insere\w*|inser\w+|enfonc\w+|tient|tenu|marche\w*|fonctionn\w+|facile\w*|difficile\w*|dur\w*|forc\w+|pouss\w+|trou|ouvr\w+|dedans|petite?|fini\w*|insist\w+|sure?|reste\w*|bouge\w*|sort\w*|ressort\w*|resist\w*|probleme\w*|fois|_|rentr\w*|entr\w*|pass\w*|mis\w*|remi\w*|remet|place|tube|sonde|bouton|tuyau|orifice|inser\w*|marche|descend\w*|avanc\w*|enfonc\w*|gliss\w*|parvien\w*|parvenu|pouss\w*|forc\w*|fonctionne|essay\w*|in|vient|veux|change|capable|moyen|possible|\d+)$/,
  ownTube:
    /^(?:trouve\w*|retrouve\w*|sonde|tube|tuyau|bouton|ballon\w*|entiere?|intacte?|complete?|garde\w*|conserve\w*|jete\w*|vois|voit|ramene\w*|pris|bonne?|ancienne|vieille|gonfle\w*|tient|marche|reutilis\w*|utilisable|eu|vu|remets?)$/,
  strips:
    /^(?:bandelettes?|bandelete\w*|bandes?|languettes?|papiers?|ph|tests?|teste\w*|tournesol|donne\w*|remis\w*|recu\w*|trouve\w*|retrouve\w*|vois|reste|restent|restait|trousse|kit|eu|envoye\w*|fourni\w*|livre\w*|connais|achete\w*|dispos\w*|village|pharmacie|bout|vu|existe)$/,
  contents:
    /^(?:sort|sorti|sorte|sortir|sortent|vient|vienne|viens|venu|venir|revient|revenu|remonte\w*|monte|coule\w*|tire\w*|tirer|aspire\w*|aspirer|ramene\w*|liquide|goutte\w*|lait|contenu|estomac|gastrique|sang|avoir|obten\w+|obtiens|recupere\w*|donne|eu|suc|residu\w*|aspiration|retour|vois|passe|rentre|marche|fonctionne|air|beau|pompe\w*)$/,
  looks:
    /^(?:ressemble\w*|blanc\w*|laiteux|laiteuse|lait|clair\w*|transparent\w*|jaune\w*|vert\w*|brun\w*|marron|normal\w*|pareil\w*|comme|couleur|aspect|sang|vois|habituel\w*|gastrique|estomac|rose|rouge|contenu|air)$/,
  secured:
    /^(?:gonfle\w*|colle\w*|tient|tiennent|tenir|sparadrap\w*|scotch\w*|ruban\w*|adhesif|tape\w*|pansement\w*|serre\w*|serree|fixe\w*|fini\w*|termine\w*|remplit|rempli\w*|eau|ballon\w*|glisse\w*|attache\w*|securis\w*|stable|bloque\w*|solide\w*|sur|fait|mis|mettre|reste|bouge|pret\w*|ok|complet\w*|autre)$/,
  firstFeed:
    /^(?:bien|top|passe\w*|passee?|super|genial\w*|terrible\w*|toler\w*|supporte\w*|garde\w*|fini\w*|pris|prend|bu|boit|mange\w*|coule|descend\w*|avale\w*|digere\w*|voulu|aime\w*|ok|normal\w*|formidable|fameux|evident)$/,
  nextDay:
    /^(?:bien|top|terrible\w*|super|fort\w*|forme|mieux|normal\w*|pire|genial\w*|ok|habitude|meme|fameux|formidable|dort|mange\w*|dormi|brillant|content\w*)$/,
  arrived:
    /^(?:arrives?|arrivees?|partis?|parties?|part|partir|pars|voiture|auto|char|taxi|transport\w*|ambulance|bus|essence|garder?|garde|hopital|la|route|vehicule|moto|rendus?|sorti\w*|bouge\w*|trouve\w*|pris|vus?|conduire|conduis|permis|personne|rentres?)$/,
  clinic:
    /^(?:repond\w*|repondu\w*|appele\w*|appeler|appelle|telephone\w*|decroche\w*|ouvert\w*|ouvre\w*|joindre|joint|joignable|contacte\w*|parle\w*|prevenu\w*|prevenir|avise\w*|eu|temps|rdv|rendez|vu|mari|rappele\w*|rappelle\w*|numero|reseau|credit|retour|nouvelles|informe\w*|pris|pense\w*|dit|tard|occupe\w*)$/,
  confirm:
    /^(?:exact\w*|bon|bons|bonne|bonnes|correct\w*|juste\w*|vrai\w*|poids|pese\w*|date|sonde|tube|type|jour|meme|change\w*|pareil\w*|kilos?|kg|g|gj|j|carnet|janvier|fevrier|mars|avril|mai|juin|juillet|aout|septembre|octobre|novembre|decembre|a jour|fait|cest|qui|que)$/,
  unwell:
    /^(?:douleurs?|mal|sang|saign\w*|saignement\w*|fievre\w*|temperature\w*|chaud\w*|vomi\w*|vomit\w*|vomissement\w*|pal\w*|bleu\w*|gris\w*|molle?|mou|convuls\w*|crise\w*|signe\w*|symptome\w*|danger\w*|special\w*|nouveau\w*|nouvelle\w*|change\w*|signaler|ventre|dur\w*|gonfl\w*|tendu\w*|respir\w*|etouff\w*|trucs?|choses?|affaires|cela|ca|souci\w*|probleme\w*|alerte|inquiet\w*|pleur\w*|grave|pire|\d+|pus|rouge\w*|rougeur\w*|ecoulement\w*|present\w*|liste|vu|vois|malade\w*|anormal\w*|bizarre\w*|inhabituel\w*|ni|eu|temp|frisson\w*|deteriore|gene|rale|crie|sueur\w*)$/,
  fedLately:
    /^(?:depuis|mange\w*|bu|boit|lait|repas|gavage|biberon\w*|nourri\w*|alimentation|medicament\w*|medocs?|dernier\w*|donne\w*|pris|prend|recu\w*|eu|heures?|h|\d+|dejeuner?|gouter|diner|pompe|tete|tetee|aliment\w*|avant|apres|dose|boire|recemment|passe\w*|branche\w*)$/,
} as const;
