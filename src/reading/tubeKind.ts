/** Reads which kind of tube came out, by its name or by its looks. A hedged kind is an unknown one, unless it asks for more care. */
import type { QuestionKey, TubeKind } from '#machines/facts.ts';
import { type Lexicon, onceEach } from './lexicon.ts';
import { clausesOf, type Found, type Said } from './said.ts';
import { wordsOf } from './spell.ts';
import { afterCorrection } from './yesNo.ts';

type Kinds = readonly (readonly [Exclude<TubeKind, 'unknown'>, RegExp])[];

/** The kinds by name, and those firm enough to be believed unasked; what one pattern has read the next no longer sees. */
const patterns = onceEach(({ tube }): { readonly byName: Kinds; readonly firmly: Kinds } => ({
  byName: [
    ['half-out', tube.halfOut],
    ['gj', tube.gj],
    ['nose', tube.nose],
    ['j', tube.j],
    ['g', tube.g],
  ],
  firmly: [
    ['half-out', tube.halfOutFirm],
    ['gj', tube.gj],
    ['nose', tube.noseFirm],
    ['j', tube.jFirm],
    ['g', tube.gFirm],
  ],
}));

/** The kinds named and not taken back. */
function kindsNamed(text: string, named: Kinds, { tube }: Lexicon): TubeKind[] {
  let rest = text;
  const kinds: TubeKind[] = [];
  for (const [kind, pattern] of named) {
    // Most texts name none: looking first is much cheaper than listing and replacing.
    if (rest.search(pattern) === -1) continue;
    for (const match of rest.matchAll(pattern)) {
      if (!tube.notThat.test(rest.slice(0, match.index))) kinds.push(kind);
    }
    rest = rest.replace(pattern, ' - ');
  }
  return kinds;
}

/** The kind by looking: a long part inside is a GJ, a short one or a single port a G (common practice). */
function kindByLook(text: string, { tube: words }: Lexicon): TubeKind | null {
  const long = [...text.matchAll(words.longInside)];
  if (long.some(({ index }) => !words.notThat.test(text.slice(0, index)))) return 'gj';
  const short = words.onePart.test(text) || text.search(words.shortInside) !== -1 || long.length > 0;
  const many = words.manyParts.test(text);
  if (short && many) return 'unknown';
  return short ? 'g' : many ? 'unknown' : null;
}

function settle(kinds: readonly TubeKind[]): Found<TubeKind> {
  const distinct = [...new Set(kinds)];
  // "A GJ, with a G port and a J port".
  if (distinct.includes('gj') && distinct.includes('g') && distinct.includes('j')) return { value: 'gj' };
  if (distinct.includes('half-out')) return { value: 'half-out' };
  if (distinct.length === 2 && distinct.includes('g') && distinct.includes('j')) return { value: 'gj' };
  const [one, ...others] = distinct;
  if (one === undefined) return null;
  return others.length === 0 ? { value: one } : { unclear: 'two-answers' };
}

/** "G I think, it goes straight to the stomach": a hedged G whose place is then said without a hedge. */
function isShownByPlace(text: string, kinds: readonly TubeKind[], words: Lexicon): boolean {
  const place = text.match(words.tube.gByPlace);
  if (place?.index === undefined || !kinds.includes('g') || kinds.some((kind) => kind !== 'g')) return false;
  const said = clausesOf(text, words).find((clause) => words.tube.gByPlace.test(clause)) ?? '';
  const hedgedLater = words.tube.unsure.test(text.slice(place.index));
  return !hedgedLater && !words.tube.unsure.test(said) && text.search(words.tube.longInside) === -1;
}

/** "GJ I think... yeah, GJ": hedged, and then affirmed. A G is not believed so easily: it may go back in at home. */
function isAffirmedLater(text: string, kind: TubeKind, lexicon: Lexicon): boolean {
  const { tube, yesNo } = lexicon;
  const yes = [...text.matchAll(yesNo.yes)].at(-1);
  if (yes === undefined || kind === 'g' || kind === 'unknown') return false;
  const after = text.slice(yes.index + yes[0].length);
  return !tube.unsure.test(after) && kindsNamed(after, patterns(lexicon).byName, lexicon).includes(kind);
}

/** A kind that allows less than an unknown one is heard through any doubt: "J I think". */
function asksForCare(kind: TubeKind): boolean {
  return kind === 'gj' || kind === 'j';
}

/** "G tube?" is no firm answer. */
const asksBack = /^[^?]{1,24}\?+$/;

function plainKind(text: string, looks: boolean, words: Lexicon): Found<TubeKind> {
  const { unsure } = words.tube;
  const kinds = kindsNamed(text, patterns(words).byName, words);
  const named = settle(kinds);
  // "G or J?" names both and means neither.
  if (kinds.length > 1 && !kinds.includes('half-out') && words.signs.listed.test(text)) return { value: 'unknown' };
  const halfOut = named !== null && 'value' in named && named.value === 'half-out';
  const hedged = (unsure.test(text) || asksBack.test(text)) && !halfOut && (named || unsure.test(text));
  if (hedged) {
    if (named && 'value' in named && (asksForCare(named.value) || isAffirmedLater(text, named.value, words)))
      return named;
    return { value: isShownByPlace(text, kinds, words) ? 'g' : 'unknown' };
  }
  const look = kindByLook(text, words);
  if (looks || named === null) {
    if (look === 'gj') return { value: 'gj' };
    return named ?? (look && { value: look });
  }
  // "A G tube with a long part" may be a GJ.
  return look === 'gj' && 'value' in named && named.value === 'g' ? { value: 'unknown' } : named;
}

/** "It was a G, they changed it to a GJ": only what it is now. */
function sinceChange(text: string, { tube }: Lexicon): string {
  const changed = text.match(tube.changedTo);
  return changed?.index === undefined ? text : text.slice(changed.index + changed[0].length);
}

const noAtEnd = onceEach(({ yesNo: { bareNo } }) => new RegExp(`\\b(?:${bareNo})[ ,.!]*$`));

/** A no right before the words of correction, and a statement after them. */
function takesBackWholly({ before, after }: { before: string; after: string }, words: Lexicon): boolean {
  return noAtEnd(words).test(before) && wordsOf(after).length > 1;
}

/** The answer to "which kind of tube was it?". */
export function tubeKind({ plain, open, words }: Said): Found<TubeKind> {
  const looks = open.clarifying === 'look';
  const corrected = afterCorrection(plain, words);
  const said = corrected && plainKind(corrected.after, looks, words);
  // "The one in his nose? No wait, that's his brother": what was taken back is no answer.
  if (corrected && said === null && takesBackWholly(corrected, words)) return { unclear: 'unsure' };
  const found = said ?? plainKind(sinceChange(plain, words), looks, words);
  if (found) return found;
  return looks && words.tube.yesOrNo.test(plain) ? { unclear: 'unreadable' } : null;
}

/** Questions about what comes out of the tube, or goes in, the tube itself among it. */
const asksOfFlow: ReadonlySet<QuestionKey> = new Set<QuestionKey>([
  'contents',
  'first-feed',
  'fed-lately',
  'own-tube-in',
  'tube-in',
]);

/** A kind told beside something else: named firmly, and only one. */
export function tubeKindTold({ plain, open, words }: Said): TubeKind | null {
  const { firmly } = patterns(words);
  // Before anything was asked, "still in" can only be the tube this is about.
  if (!open.caseOpen && words.tube.stillIn.test(plain)) return 'half-out';
  const corrected = afterCorrection(plain, words);
  const after = corrected && settle(kindsNamed(corrected.after, firmly, words));
  const found = after ?? settle(kindsNamed(sinceChange(plain, words), firmly, words));
  // What came out "a little", or went in by half, is then what is asked for.
  if (open.asking !== null && asksOfFlow.has(open.asking) && found && 'value' in found && found.value === 'half-out')
    return null;
  if (!found || !('value' in found)) return null;
  if (!words.tube.unsure.test(plain) || found.value === 'half-out') return found.value;
  // "I think it was a GJ" is no certain G any more.
  return open.caseOpen && asksForCare(found.value) ? found.value : null;
}

/** "It is not half out": whoever was told so takes it back. */
export function deniesHalfOut({ plain, words }: Said): boolean {
  const named = [...plain.matchAll(words.tube.halfOutFirm)];
  return named.length > 0 && named.every(({ index }) => words.tube.notThat.test(plain.slice(0, index)));
}

/** Which tube is half out, where the text names one firmly beside that. */
export function halfOutOfTold({ plain, words }: Said): 'g' | 'gj' | 'j' | null {
  if (words.tube.unsure.test(plain)) return null;
  const kinds = kindsNamed(sinceChange(plain, words), patterns(words).firmly, words);
  if (!kinds.includes('half-out')) return null;
  const found = settle(kinds.filter((kind) => kind !== 'half-out'));
  const kind = found !== null && 'value' in found ? found.value : null;
  return kind === 'g' || kind === 'gj' || kind === 'j' ? kind : null;
}

/** A longer text says more than a name. */
const mostNameLength = 60;

/** Whether the text names a device the line does not know, or by a word that does not tell its kind. */
export function namesUnknownDevice({ plain, words }: Said): boolean {
  const { eitherKind, deviceNoun, noDevice, beforeDevice, deviceWord, deviceForm } = words.tube;
  const known = patterns(words).byName.some(([, pattern]) => plain.search(pattern) !== -1);
  if (plain.length > mostNameLength || known) return false;
  if (eitherKind.test(plain)) return true;
  if (/\d/.test(plain)) return false;
  if (deviceNoun.test(plain)) {
    const named = [...plain.matchAll(beforeDevice)].some(([, word = '']) => !noDevice.test(word));
    return named || deviceWord.test(plain);
  }
  const form = plain.replace(/[.!?,]+$/, '').match(deviceForm);
  return form !== null && [form[1], form[2]].every((word) => word === undefined || !noDevice.test(word));
}
