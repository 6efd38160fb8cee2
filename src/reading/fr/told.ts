/** French for facts told unasked: ages, births, allergies, and what is not at hand. */
import type { TimeUnit } from '../durations.ts';

/** An age: the count and its unit, after "elle a", "bébé de" or "âgé de". */
export const age =
  /\b(?:agee? de|age de|age|(?:elle|il|bebe|fille|fils|enfant|petite?|garcon|qui|puce|loulou) a(?: maintenant| deja| juste| presque| bientot)?|(?:fille|fils|bebe|enfant|garcon|petite?|nourrisson|gamine?|puce|loulou) de)(?: environ| presque| juste)? (\d+(?:\.\d+)?) ?(ans?|mois|semaines?|jours?)\b(?! que| de pose)|\b(\d+) (ans|mois|semaines) (?:d age|de age)\b/g;
export const ageUnits: readonly { readonly unit: TimeUnit; readonly form: RegExp }[] = [
  { unit: 'year', form: /^a/ },
  { unit: 'month', form: /^m/ },
  { unit: 'week', form: /^s/ },
  { unit: 'day', form: /^j/ },
];
/** An age at another time, or of something else. */
export const notAge =
  /\b(?:quand|lorsque|a le|a l|depuis que|sonde|tube|bouton|kit|etait|avait|bandelettes)(?: (?:elle|il|etait|avait|environ|a|de))*\s*$/;
export const born =
  /\b(?:nee?|naissance|anniversaire|ddn)\b(?: (?:est|le|en|au|mois de|:|cest))*:? ?([a-z0-9 ,/.-]{4,24})/;
export const latexAllergy =
  /\b(?:allergi\w+ (?:\w+ )?(?:au |a la |a le )?latex|intolerant\w* au latex|sensible au latex|latex (?:allergi\w+|interdit)|(?:supporte|tolere) pas le latex|pas de latex|reagit au latex|latex\b.{0,24}\b(?:elle|il|bebe) est (?:tres )?allergique)\b/;
/** An allergy whose matter is not named. */
export const bareAllergy =
  /\ballergi(?:qu?es?|es?)\b(?! (?:au|aux|a (?!ca\b|cela\b)|alimentaires?|saisonni\w*|connues? (?:au|aux|a)|de) ?)/;
export const noAllergy =
  /\b(?:pas|aucune?s?|sans|jamais|ni|nplus|non)(?: (?:eu|de|d|une|est|fait|ete|vraiment|connue?|elle|il|a))* allergi/;
/** The tube at hand is not said to be free of it. */
export const notLatexFree = /\b(?:pas|rien|nulle part) (?:\w+ ){0,3}sans latex\b|\brien sur le latex\b/;
export const noLatexAllergy =
  /\blatex\b.{0,24}\best pas allergique|\b(?:pas|aucune|sans|jamais|ni|non|nplus)(?: (?:eu|de|d|une|le|connue|est|fait|ete|vraiment))* (?:allergi\w+|intoleran\w+)(?: \w+)? ?(?:au |a la |a le )?(?:latex)?\b|\blatex:? (?:non|ok)\b/;
export const noKit =
  /\b(?:(?:jai|on a|a|avons|ai|y a|trouve|retrouve|avec) (?:pas|jamais|plus|nplus|aucun)(?: eu| recu| de| le| trouve| la| notre| du)* (?:trousse|kit)|pas (?:de |le |la )?(?:kit|trousse)|sans (?:kit|trousse|le kit|la trousse)|aucune? (?:kit|trousse)|perdu (?:le|la|notre) (?:kit|trousse)|(?:kit|trousse) (?:est )?(?:perdue?|introuvable|reste\w* (?:a|chez)))\b/;
export const noStrips =
  /\b(?:(?:pas|plus|nplus|aucune?|jamais)(?: (?:de|d|les|eu|trouve|recu|la|ces))* (?:bandelettes?|languettes?|papiers? ph)|perdu les (?:bandelettes|languettes)|sans (?:bandelettes?|les bandelettes))\b/;
/** Test strips made for something else. */
export const otherStrips =
  /(?<!\b(?:pas|nplus|ni|non)(?: (?:les?|la|des|de|du|celles?|bandelettes?|pour|une?))* )(?<=\b(?:bandelettes?|languettes?|tests?|papiers?|celles?|kit|ceux|celui|oui,?) (?:(?:que|jai|on a|utilise\w*|sont|cest|de|du|pour|des|ph|le|la|les|l|a|tester|test|mesurer|eau) )*)(?:piscine|spa|jacuzzi|aquarium|poissons?|urine|urinaires?|pipi|glycemie|glucose|sucre|cetones?|diabet\w+|terre|jardin)\b/;
export const haveKit =
  /\b(?:(?:jai|on a)(?: (?:finalement|enfin|bien))? (?:re)?trouve (?:la trousse|le kit)|(?:la trousse|le kit) (?:est|a ete) (?:re)?trouvee?)\b(?! vide)|(?<!\bsi )\bjai (?:la trousse|le kit)(?: (?:ici|sous la main|avec moi|pret|prete))*$|^(?:(?:oui|et|on|nous|je|aussi|ok|mais|jai) )*(?:jai|ai|a|avons|tiens) (?:le|la|un|une|notre|mon|ma|son|sa|aussi le|bien le|bien la) (?:kit|trousse)(?: (?:de urgence|d urgence|de secours|de depannage|ici|pret|prete|avec (?:moi|nous)|a la maison|sous la main|aussi))*$/;
