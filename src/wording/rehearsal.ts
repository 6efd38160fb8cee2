/** The texts of a rehearsal: the mark may make one too long, and then it leaves as two, each with the mark. */

/** Two segments of GSM 7-bit characters, where one of the extension table takes two places: 3GPP TS 23.038 and 23.040. */
const twoSegments = 306;
const extended = /[\^{}\\[~\]|€]/g;

function placesOf(text: string): number {
  return text.length + (text.match(extended)?.length ?? 0);
}

/** A marked text as it is sent: cut, where it has to be, before its reply line or at the end of a sentence. */
export function markedTexts(marked: string): readonly string[] {
  if (placesOf(marked) <= twoSegments) return [marked];
  const mark = marked.slice(0, marked.indexOf(' ') + 1);
  const ends = [...marked.matchAll(/(?<=[.?!]) |\n/g)].map(({ index }) => index);
  const at = ends.findLast((end) => end > mark.length && placesOf(marked.slice(0, end)) <= twoSegments);
  // No message is one sentence of more than two segments.
  if (at === undefined) return [marked];
  return [marked.slice(0, at), ...markedTexts(mark + marked.slice(at + 1))];
}
