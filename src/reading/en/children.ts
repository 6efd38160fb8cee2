/** English for which child it is: taking a name back, none of them, and more than one. */

export const no = 'no|nope|nah|wrong (?:child|kid|one|name)';
export const takeBack = 'wait|sorry|actually|i mean|i meant|oops|my mistake|my bad|wrong (?:child|kid|one|name)';
export const itIs = '(?:its|it is|it was|this is|thats|that is|i mean|i meant|for|about)';
/** Between two names, one of which is meant. */
export const or = 'or';
export const not = 'not(?: about| for)?|isnt|its not|wasnt';
const child =
  '(?:nephew|niece|grand ?(?:son|daughter|child|baby)|neighbou?rs?|foster \\w+|step ?\\w+|friends?|sisters?|brothers?)';
export const none = `^(?:none|neither|no one|nobody|none of (?:them|these|those)(?: (?:2|3))?|neither(?: one| of (?:them|these))?|another (?:child|kid|one)|someone else|somebody else|a different (?:child|kid)|other|not (?:them|one of them|mine|my kids?|my child(?:ren)?))(?:,? (?:its|hes|shes|this is|thats|i have|im (?:watching|minding|babysitting)) (?:my|our|the|a) (?:(?:\\w+ ){0,2}${child}(?: (?:\\w+ ?){1,2})?|(?:new|other) (?:baby|kid|child|one)))?[.! ]*$|^(?:(?:its |it is |no,? )*none(?: of (?:them|these|those|the above|that lot|yall|you))?|(?:its |it is )?neither(?: (?:one|kid|child|of (?:them|these|those)))?|not (?:any|either|one) of (?:them|these|those)|not either(?: (?:one|kid|child))?|(?:no,? )?(?:its |this is )?(?:another|a different|somebody elses|someone elses) (?:child|kid|baby|one))(?:$| ?[.,!;-]| (?=(?:its|it is|hes|shes|he is|she is|this|thats|that is|i have|im|i am|they|theyre|those|the|my|our|because|cause|actually|another|a different|new)\\b)).{0,120}$|^none of (?:yall|you|u)\\b.{0,80}$|^.{0,60}(?<!\\b(?:i am|im|am|i) )\\b(?:isnt|not|aint|wasnt) (?:on|in|listed) ?(?:here|there|on here|the list|your list|this list|file|the system|your system)\\b.{0,60}$|^(?:its |hes |shes )?(?:my |our |the )(?:\\w+ ){0,2}(?:not (?:on|in) (?:your|the) list)[.! ]*$`;
/** Said of a child after the name: not the one this is about. */
export const well =
  '(?:is|was) (?:\\w+ )?(?:sleeping|asleep|ok|okay|fine|good|alright|well|in bed|away|at (?:school|home))';
/** Another child, told by one of the family's; said of the writer it is the caller. */
export const relative = {
  before: '(?:sister|brother|twin|cousin|friend|sibling) of',
  after:
    '(?:(?:little|big|baby|twin|older|younger|step|half) )*(?:sister|brother|twin|cousin|friend|sibling)s?(?![\\p{L}])',
};
export const caller = 'im|i am|this is';

const other = '(?:son|daughter|boy|girl|brother|sister|twin|child|kid|baby)';
/** More than one child with a tube; one of twins is one. */
export const several = [
  // "Leo pulled his out, Milo is fine": the one who is well is no second one.
  '(?<!\\b(?:1|one) of (?:my|the|our) )\\b(?:twins|triplets)\\b(?!.{0,90}\\b(?:(?:the )?other(?: one| twin| 1)?|(?!(?:she|he|it|they|this|that|who|which|baby|all|everyone|everything|everybody|both|kid|child|skin|hole|tube|tubes|button|stoma|belly|twin|twins|else|balloon|site|breathing|rest|color|colour)\\b)[a-z]+) (?:is|was) (?:\\w+ )?(?:fine|ok|okay|good|alright)\\b)',
  '\\bboth (?:of )?(?:(?:my|our|the|her|his) )?(?:kids|children|boys|girls|babies|sons|daughters)\\b',
  '\\bboth (?:of )?(?:(?:my|our|the|their) )?(?:\\w+ )?(?:tubes|buttons|pegs) (?:\\w+ ){0,3}out\\b',
  `\\bother ${other}s? (?:\\w+ ){0,4}(?:tube|button|peg|out)\\b`,
  `\\bnot (?:for )?(?:my|the|her|his) (?:other )?${other}s?(?: (?:\\w+ )?tube)?$`,
  `\\b${other}s? (?:\\w+ )?(?:tube|button|peg) (?:\\w+ ){0,4}(?:too|also|as well)\\b`,
].join('|');
/** Where words that are names as well are said as words of every day. */
export const common =
  '(?:i|we) hope|(?:i|we|she|he|it|you|they|that|this|what|who|when|how|nurse|doctor) will|(?:it|she|he|i|we|you|they|that|this|in|since|last|of|until|early|late|mid|\\d+(?:st|nd|rd|th)?) may|(?:in|since|last|of|until|early|late|mid|\\d+(?:st|nd|rd|th)?) (?:april|june|august)';
/** Another child of the family, whose tube it is. */
export const another =
  /\b(?:its|it is|this is|thats|im texting|texting|for|about) (?:for |about |not \w+ its )*(?:my|our|the|his|her) (?:other|younger|older|second|little|big) (?:son|daughter|boy|girl|child|kid|baby|one|brother|sister)(?! (?:is|was) (?:fine|ok|asleep|sleeping))\b|\bmy other (?:son|daughter|boy|girl|child|kid|baby)s?\b.{0,20}\b(?:tube|button|peg)\b/;
/** At the facts on file: they are another child's. */
export const wrongChild =
  /\b(?:not|isnt|wasnt) (?:his|her|their|the right|my (?:son|daughter|kid|child|baby)s?) (?:name|child|kid|file)\b|\b(?:wrong|other|different|another) (?:child|kid|name|patient|person|file|baby|boy|girl|son|daughter)\b|\b(?:thats|its|this is) not (?:him|her|my (?:son|daughter|kid|child|baby)|who)(?= ?(?:$|[.,!]))|\bwho is (?:that|this)\b/;
/** Between the name and what the child is to the one it is about. */
export const isThe = '(?:is |was )?(?:the|his|her|my|our|their|a)';
/** Another name said instead of one. */
export const itIsOther = /\bno,? (?:its|it is) (\p{L}+) (?:who|that|whose)\b/u;
