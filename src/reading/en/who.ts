/** English for who is writing: a relation to the child said of oneself, and answers to whether somebody else texts already. */

const relation =
  '(?:(?:great |step ?|foster |god)?(?:grand(?:ma|mom|mum|mother|pa|dad|father|parents?)|mom|mum|mommy|mama|mother|dad|daddy|father|parents?)|granny|gran|nana|nanna|nan|grammy|gramps|granddad|abuela|aunt|auntie|aunty|uncle|cousin|sister|brother|neighbou?r|babysitter|baby sitter|sitter|nanny|childminder|child minder|nurse|teacher|aide|caregiver|care giver|carer|guardian|family friend|friend of the family|friend of her (?:mom|mum|family)|friend of his (?:mom|mum|family))';
const ownTo =
  '(?:grand ?(?:son|daughter|child|kid|baby|children|kids)|nephew|niece|god ?(?:son|daughter|child)|neighbou?rs?(?: \\w+)? (?:kid|child|baby|boy|girl|son|daughter)|student|pupil)';
/** "With my mom" says where, "its her brother who pulled it" says whom. */
const between =
  '(?: (?!with|at|my|not|and|near|calling|asking|texting|waiting|going|in|on|so|for|by|to|a mess)\\w+){0,4}?';

/** Says it of whoever writes. The text has no accents or apostrophes. */
export const saysWho = new RegExp(
  `\\b(?:this is|its|it is|im|i am|my name is|here is)${between} ${relation}s?\\b(?! (?:who|that|pulled|did|has|had|was|says|said|yanked|put))` +
    `|(?:^|[,.!] ?)(?:(?:hi|hello|hey) )?(?:\\w+ ){0,3}?${relation} (?:here|speaking|texting|writing)\\b` +
    `|\\bmy ${ownTo}s?\\b` +
    '|\\b(?:its|it is|this is) me again\\b|\\bsame case\\b|\\b(?:on|from|with|using|this is|its) my (?:husband|wife|partner|mom|mum|dad|sister|brother|friend|neighbou?r)s (?:phone|cell|number|mobile)\\b' +
    '|\\b(?:im|i am|i)(?: (?:the one|just|only|currently))? ?(?:baby ?sit(?:ting)?|minding|watching|looking after|taking care of|caring for|care for|look after) (?!tv\\b|the tube\\b|it\\b)\\w+|^(?:\\w+ )?(?:babysitting|taking care of|looking after|watching) (?!tv\\b|the tube\\b|it\\b)\\w+',
);

/** What is missing where it is named without digits. */
export const number = /(?<!\b(?:this|your|that|the same|one|the only|only) )\b(?:numbers?|phones?|cell|digits)\b/;
export const lost = /\b(?:forgot\w*|lost|deleted)\b/;
/** Somebody else, in a statement of its own. */
export const wrote =
  /^(?:(?:yes|yeah|i think|so|well) )*(?:my|his|her|our|the) (?!number\b)\w+(?: \w+)? (?:has |have |is |was |had |did |just |already |been )*(?:texted|texts|texting|messaged|messaging|wrote|written|writing|contacted|started|did)(?: (?!not\b)\w+){0,5}$/;
/** Nobody else. */
export const onlyMe =
  /\b(?:(?:just|only) (?:me|i am|im|i|us)|no other\w*|none of (?:us|them)|theres only (?:me|us)|(?:im|i am|i was) (?:the )?(?:first|only)(?: one)?|i texted first|nobody|no ?one|(?:havent|hasnt)(?! (?:(?:got|really|honestly) )?(?:an?|the|any|no) (?:clue|notion|idea|foggiest|scooby|inkling|info\w*)))\b/;
