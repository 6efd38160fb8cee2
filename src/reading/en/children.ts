/** English for which child it is: taking a name back, and none of them. */

export const no = 'no|nope|nah|wrong (?:child|kid|one|name)';
export const takeBack = 'wait|sorry|actually|i mean|i meant|oops|my mistake|my bad|wrong (?:child|kid|one|name)';
export const itIs = '(?:its|it is|it was|this is|thats|that is|i mean|i meant|for|about)';
export const not = 'not(?: about| for)?|isnt|its not|wasnt';
export const none =
  '^(?:none|neither|no one|nobody|none of (?:them|these|those)|neither(?: one| of (?:them|these))?|another (?:child|kid|one)|someone else|somebody else|a different (?:child|kid)|other|not (?:them|one of them))[.! ]*$';
