/** What a text without a case is about: a feeding tube, thanks, or something else. */
import { inPlaceTold } from './inPlace.ts';
import type { Said } from './said.ts';
import type { SignsHeard } from './signs.ts';
import { isThanks } from './wishes.ts';

export type About = 'tube' | 'thanks' | 'other';

/** A feeding tube that is out, in trouble or half told of; a sign is heard as one too. */
export function aboutOf(said: Said, signs: SignsHeard): About {
  const words = said.words.wishes;
  const plain = said.plain.replace(words.otherTubes, ' ');
  // "Her central line came out": it is asked whether a feeding tube is.
  const { otherDevices } = said.words.inPlace;
  const isOther = said.plain.search(otherDevices) !== -1 && !words.aboutTube.test(plain.replace(otherDevices, ' '));
  if (isOther && signs.sure.length === 0) return 'other';
  const isInPlace = inPlaceTold(said) !== null;
  if (words.aboutTube.test(plain) || words.somethingOut.test(plain) || isInPlace || signs.sure.length > 0)
    return 'tube';
  return isThanks(said) ? 'thanks' : 'other';
}
