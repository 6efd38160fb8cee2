/** French statements known by their words alone, in whatever order: every one of them a plain word, and one that says it. */

/** Words that stand in many statements and turn none of them round: no negation, no doubt, no "but". */
const common =
  'oui|ouais|si|je|jai|jen|ai|en|y|on|nous|avons|a|ont|me|ma|mon|mes|la|le|les|lui|leur|une?|des|du|de|son|sa|ses|notre|nos|votre|vos|ce|cet|cette|ces|ca|cest|cetait|se|est|sont|ete|etait|elle|elles|il|ils|tout|tous|toute|toutes|bien|tres|super|encore|deja|aussi|toujours|justement|ici|avec|au|aux|pour|qui|comme|petite?s?|bebe|ben|voila|donc|et|ok|enfin|maintenant|merci|madame|monsieur|vraiment|completement|parfaitement|meme|vous|te|tu|svp';

/**
 * The source of a pattern for a whole statement of `keys` and `others`, single words all of them, with one of the keys. Each
 * word is looked up and then passed over as letters, so that one told twice is not tried twice.
 */
export function bag(keys: string, others: string): string {
  const known = `(?=(?:${keys}|${others}|${common})(?: |$))`;
  const word = '[a-z\\d.:]+';
  return `^(?=(?:${word} )*(?:${keys})(?: |$))(?:${known}${word} )*${known}${word}$`;
}
