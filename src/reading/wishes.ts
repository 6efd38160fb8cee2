/** Hears what a caregiver wants beside answering: a person, a step again, to correct, what cannot wait. */
import type { QuestionKey } from '#machines/facts.ts';
import type { Said } from './said.ts';
import { wordsOf } from './spell.ts';

/** Whether the text asks for a person. */
export function wantsPerson({ plain, open, words: { wishes, who } }: Said): boolean {
  // "Nobody" and "a person" are one word in French.
  if (open.asking === 'who' && who.onlyMe.test(plain)) return false;
  // A first text that cries for help cries to the line, which is about to help.
  const asked = open.caseOpen ? plain : plain.replace(wishes.cryForHelp, ' ');
  return wishes.person.test(asked) && !(wishes.notPerson.test(plain) && !wishes.personNow.test(plain));
}

/** The step to hear again; null where it is no such wish. */
export function wantsRepeat({ plain, words: { wishes: words } }: Said): { readonly step: 1 | 2 | 3 | null } | null {
  const text = plain
    .replace(/[.!?,]+/g, ' ')
    .replace(/ {2,}/g, ' ')
    .trim();
  const named = text.match(words.repeatStep);
  const asked = named !== null && text.length <= 60 && (words.stepAsked.test(text) || words.wholeStep.test(text));
  if (!asked) return words.repeat.test(text) ? { step: null } : null;
  const which = named[1] ?? named[2] ?? '';
  if (words.firstStep.test(which)) return { step: 1 };
  return { step: words.secondStep.test(which) ? 2 : 3 };
}

/** A medicine or feed that must not be missed, in the caregiver's words (at most 160 characters); null where none is named. */
export function cannotWait(said: Said, raw: string): string | null {
  const words = said.words.wishes;
  const named = said.clauses.some(
    (clause) =>
      (words.cannotWait.test(clause) || words.mustNotMiss.test(clause)) &&
      !words.canWait.test(clause.replace(words.cantWait, '')),
  );
  return named ? raw.replace(/\s+/g, ' ').trim().slice(0, 160) : null;
}

/** The answer to be corrected, as far as it is named; null where nothing is to be corrected. */
export function wantsCorrection({
  plain,
  words: { wishes: words },
}: Said): { readonly key: QuestionKey | null } | null {
  if (!words.correct.test(plain)) return null;
  return { key: words.correctTopics.find(([topic]) => topic.test(plain))?.[1] ?? null };
}

/** Whether the text has words of correction. */
export function corrects({ plain, words }: Said): boolean {
  return words.wishes.corrects.test(plain);
}

/** Thanks, "ok", "ready": words with nothing in them, and at least one; with busy hands, that they still are. */
export function isSmallTalk(said: Said): boolean {
  const { plain, open, words } = { ...said, words: said.words.wishes };
  const { howIn } = said.words;
  if (open.asking === null && (isOnTheWay(said) || saysHelpCalled(said))) return true;
  if ((open.asking === 'tube-in' || open.asking === 'own-tube-in') && howIn.stillTrying.test(plain)) return true;
  return isSmall(plain, words);
}

function isSmall(plain: string, words: Said['words']['wishes']): boolean {
  const said = wordsOf(plain);
  return said.length > 0 && said.every((word) => words.smallWords.has(word));
}

/** "Ok, taping it. Going now": each statement of it says no more than that they are on their way. */
function isOnTheWay({ plain, clauses, words: { wishes: words } }: Said): boolean {
  if (words.onTheWay.test(plain.replace(/[.!,]+/g, '').trim())) return true;
  const says = (clause: string) => words.onTheWay.test(clause);
  return (
    !plain.includes('?') && clauses.some(says) && clauses.every((clause) => says(clause) || isSmall(clause, words))
  );
}

/** "They are on their way", where the family was sent in. */
function saysHelpCalled({ plain, open, words: { wishes: words } }: Said): boolean {
  return (
    open.onTheWay === true && !plain.includes('?') && words.helpCalled.test(plain) && !words.helpNotComing.test(plain)
  );
}

/** A longer text may thank and want something too. */
const mostThanksLength = 80;

/** Thanks and nothing else. */
export function isThanks(said: Said): boolean {
  const {
    plain,
    words: { wishes: words },
  } = said;
  if (!words.thanks.test(plain)) return false;
  return isSmallTalk(said) || (plain.length <= mostThanksLength && !words.wantsMore.test(plain));
}

/** A tube that was in has come out again. While it is asked when the first one came out, only "again" says so. */
export function cameOutAgain({ plain, open, words: { wishes: words, inPlace } }: Said): boolean {
  if (
    !open.tubeIn ||
    words.contentsCameOut.test(plain) ||
    words.beforeItCameOut.test(plain) ||
    words.outABit.test(plain) ||
    // "Should I pull it out?": it is not out yet.
    inPlace.mayTakeOut.test(plain)
  )
    return false;
  const out = words.outAgain.test(plain) && !words.notOut.test(plain);
  return out && (open.asking !== 'came-out' || words.again.test(plain));
}

/** Questions at which water that will not go in means a tube problem. */
const afterSecuring: ReadonlySet<QuestionKey | null> = new Set<QuestionKey | null>([
  'secured',
  'first-feed',
  'next-day',
  null,
]);

/** Questions about a tube that is in use. */
const ofUse: ReadonlySet<QuestionKey | null> = new Set<QuestionKey | null>(['first-feed', 'next-day', 'clinic', null]);

/** No flow, or stiff while filling; in use, a balloon that was never filled. */
export function hasTubeProblem({ plain, open, words: { wishes: words, yesNo } }: Said): boolean {
  if (open.inUse === true && ofUse.has(open.asking) && words.balloonEmpty.test(plain)) return true;
  return (
    open.tubeIn &&
    afterSecuring.has(open.asking) &&
    words.tubeProblem.test(plain.replace(words.noTubeProblem, ' ').replace(yesNo.aside, ' | '))
  );
}
