/** A site's own words for devices and places, read beside those the line knows in whatever language; none are shipped. */
import { z } from 'zod';

export interface SiteWords {
  readonly tubes?: Readonly<Partial<Record<'g' | 'gj' | 'j' | 'nose', readonly string[]>>>;
  readonly places?: Readonly<Partial<Record<'hospital', readonly string[]>>>;
}

const wordBound = 'a word of 3 to 40 letters, digits, spaces and hyphens';
const listBound = 'a list of at most 20 words';
const list = z
  .array(
    z
      .string(wordBound)
      .trim()
      .min(3, wordBound)
      .max(40, wordBound)
      .regex(/^[\p{L}\d]+(?:[ -][\p{L}\d]+)*$/u, wordBound)
      .regex(/\p{L}/u, wordBound),
    listBound,
  )
  .max(20, listBound)
  .exactOptional();

/** Parses them; whether a word means something else to the line is for the reader to say. */
export const siteWordsSchema = z.strictObject(
  {
    tubes: z
      .strictObject({ g: list, gj: list, j: list, nose: list }, 'lists of words for g, gj, j and nose')
      .exactOptional(),
    places: z.strictObject({ hospital: list }, 'a list of words for the hospital').exactOptional(),
  },
  'tubes and places',
);
