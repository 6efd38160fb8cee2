/** Reads that a tube is in before the line asked for it: it never came out, or was put back by itself. */
import type { InPlace, QuestionKey } from '#machines/facts.ts';
import { cameBackOut, howInTold } from './howIn.ts';
import { clausesOf, type Said, sentencesOf } from './said.ts';

/** Questions at which "it is in" is how an insertion went; only that it never came out says otherwise. */
const asksHowIn: ReadonlySet<QuestionKey | null> = new Set<QuestionKey | null>(['tube-in', 'own-tube-in', null]);

/** What the text says is wrong with it, the gravest first. */
function trouble({ plain, words: { inPlace: words } }: Said): InPlace {
  if (words.leaks.test(plain)) return 'in-leaking';
  if (words.sore.test(plain)) return 'in-sore';
  return words.blocked.test(plain) ? 'in-blocked' : 'in-place';
}

/** Before anything was asked, a tube in trouble of which nobody says that it is out is in its place. */
function inFirstText(said: Said, firmly: boolean): boolean {
  const { inPlace: words } = said.words;
  const troubled = trouble(said) !== 'in-place';
  const isDevice = words.device.test(said.plain);
  if (firmly) return isDevice || troubled;
  const isIn = words.isIn.test(said.plain) || words.mayTakeOut.test(said.plain);
  return isDevice && (isIn || (troubled && !words.out.test(said.plain)));
}

/** Whether a statement says so, and nothing in its clause takes it back. */
function isPutBack(said: Said): boolean {
  const { putBack, notPutBack } = said.words.inPlace;
  const stated = sentencesOf(said.plain).filter((sentence) => !sentence.includes('?'));
  const clauses = clausesOf(stated.join(' '), said.words).filter((clause) => putBack.test(clause));
  return clauses.length > 0 && clauses.every((clause) => !notPutBack.test(clause));
}

/** Where the own tube is back in before it was asked for, how it went in; null where the text says nothing of it. */
export function backInTold(said: Said): 'easy' | 'hard' | 'in' | null {
  const { open, plain } = said;
  if (open.tubeIn || open.asking === 'tube-in' || open.asking === 'own-tube-in') return null;
  if (!isPutBack(said) || cameBackOut(plain, said.words) || said.words.tube.stillIn.test(plain)) return null;
  if (plain.search(said.words.tube.halfOutFirm) !== -1) return null;
  return howInTold(said) ?? 'in';
}

/** That the tube is in and never came out, by what is wrong with it; null where the text does not say so. */
export function inPlaceTold(said: Said): InPlace | null {
  const { plain, open, words } = said;
  const { neverOut, otherwise, isIn, mayTakeOut } = words.inPlace;
  // "Not gone yet" is then the family that has not left.
  if (
    open.tubeIn ||
    open.asking === 'arrived' ||
    plain.search(words.tube.halfOutFirm) !== -1 ||
    words.tube.stillIn.test(plain)
  )
    return null;
  const firmly = neverOut.test(plain) && !otherwise.test(plain);
  const isInPlace = open.caseOpen
    ? firmly ||
      (open.asking !== 'tube-in' && mayTakeOut.test(plain)) ||
      (!asksHowIn.has(open.asking) && isIn.test(plain))
    : inFirstText(said, firmly);
  return isInPlace && !isPutBack(said) ? trouble(said) : null;
}
