/** French for a tube that never came out, and what is wrong with it. */

/** Said firmly, so that no question before an insertion can mean it otherwise. */
export const neverOut =
  /\b(?:(?:pas|jamais|nplus) (?:ete |meme |encore |du tout |vraiment )?(?:sorti\w*|tombee?|dehors|partie?)\b(?! (?:completement|entierement|toute?|tout a fait|depuis|avant|en entier|facilement|de)\b)|rien (?:ne |est |n |nest )*(?:sorti|tombe)\b)/;
/** It is out all the same, by somebody's hand, or it is no feeding tube. */
export const otherwise = /\btrach|\b(?:a|la|le|ai) (?:tiree?|arrachee?|enlevee?|retiree?)\b/;
/** Where it is now; weaker, as "elle est dedans" may answer how an insertion went. */
export const isIn =
  /\b(?<!\b(?:si|quand|que|avant) )(?:(?:elle|il|sonde|bouton|tube) (?:est|reste)|cest)(?: (?:bien|toujours|encore|la))* (?:en place|dedans|a sa place|dans (?:son|le|sa|mon|elle|lui) ?(?:ventre|estomac|bedaine|trou|corps|bide)?)(?= ?(?:$|[,.!;]|mais\b|et\b|juste\b|elle\b))/;
/** A tube that may be taken out is in. */
export const mayTakeOut =
  /\b(?:faut|dois|doit|devrais|peux|peut)(?: (?:je|il|on|que|quand|meme|alors|donc))* (?:la |le )?(?:sorte|sortir|enleve|enlever|retire|retirer|tire|tirer)\b(?=.*\?)|^(?:(?:alors|donc|mais|attendez|et|ok) )*je (?:la|le) (?:sors|retire|enleve|tire)(?: alors| donc)*[ .,]*\?/;
export const device = /\b(?:g ?-?tube|gj|peg|sondes?|bouton|tube|tuyau|catheter|gastrostomie)\b/;
export const out = /\b(?:(?:re)?sort\w*|tombee?|partie?|arrach\w*|enlev\w*|retir\w*|dehors|perdue?|trou|ballon\w*)\b/;

export const leaks = /\b(?:fui\w*|fuites?|coule\w*|goutte\w*|trempee?s?|suinte\w*|deborde\w*)\b/;
export const blocked =
  /\b(?:bouch\w*|obstru\w*|bloquee?|(?:eau|lait|gavage|rien|ca|repas) (?:ne )?(?:passe|coule|descend)(?: (?:pas|plus|nplus|rien))?)\b/;
export const sore =
  /\b(?:pus|infect\w*|(?:peau|autour|trou|cest|tout)(?: \w+){0,3} (?:rouge|irritee?|gonflee?|enflammee?)|sent mauvais|pue)\b/;

/** The child's own tube put back before it was asked for. */
export const putBack =
  /\b(?:(?:ai|a|avons) (?:deja |vite |bien |tout de suite |tout )*(?:remise?|replacee?|rerentree?|rentree?|reinseree?|remis la sonde|remis le bouton)(?! une?\b)|(?:elle|il|sonde|bouton) est (?:deja |bien |toute )*(?:remise?|replacee?))\b/;
/** Not done, only asked about, or undone. */
export const notPutBack =
  /\b(?:pas|nplus|jamais|essay\w*|faut|dois|doit|peux|peut|veux|si|quand|avant|comment|vais|va|mais|ou|ressort\w*|trousse|kit|secours|provisoire|nouvelle|neuve|moitie|\d{4})\b/;

/** Devices of other places: this line has no steps for them. */
export const otherDevices =
  /\b(?:(?:sonde|catheter) (?:sus ?-?pubienne?|urinaire|vesicale)|cecostomie|picc(?: ?-?line)?|voie centrale|catheter central|colostomie)\b/g;
