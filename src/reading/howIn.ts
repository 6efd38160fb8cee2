/** Reads whether a tube went in, and how: easily, hard, or not at all. Any word of force counts as hard. */
import type { InsertedAnswer } from '#machines/facts.ts';
import { mayHoldLatex } from './latex.ts';
import type { Lexicon } from './lexicon.ts';
import { type Found, part, type Said } from './said.ts';
import { wordsOf } from './spell.ts';
import { afterCorrection, isDoubtful, yesNo } from './yesNo.ts';

/** How it went, by the words alone. Easy words are taken out first, so that "no resistance" is not resistance. */
function howSaid(text: string, { howIn: words }: Lexicon): 'easy' | 'hard' | 'slightly' | null {
  if (text.search(words.notEasy) !== -1) return 'hard';
  const notHard = text.replace(words.wentEasy, ' _ ');
  const hards = [...notHard.matchAll(words.wentHard)];
  if (hards.some(({ index }) => !words.negatedHow.test(notHard.slice(0, index)))) return 'hard';
  const easy = [...text.matchAll(words.wentEasy)].map(({ 0: word, index }) => ({ word, before: text.slice(0, index) }));
  const firm = easy.filter(({ word, before }) => !words.plainlyEasy.test(word) || words.leadsToEasy.test(before));
  if (firm.some(({ before }) => !words.slightly.test(before) && !words.notBefore.test(before))) return 'easy';
  if (easy.length > 0) return 'slightly';
  return hards.length > 0 ? 'slightly' : null;
}

/** "Easy?", "stop pushing?": no answer. */
const asksBack = /^[^?]{1,24}\?+$/;

/** "It went in, then it slid out": what was said last holds. */
export function cameBackOut(plain: string, { howIn: words }: Lexicon): boolean {
  const out = [...plain.matchAll(words.backOut)].at(-1);
  if (out === undefined) return false;
  const after = plain.slice(out.index + out[0].length);
  return !words.firmlyIn.test(after) && !words.inNow.test(after);
}

function plainHowIn(whole: Said): Found<InsertedAnswer> {
  const said = part(whole, whole.plain.replace(whole.words.yesNo.aside, ' | '));
  const { plain, open } = said;
  const words = said.words.howIn;
  if (mayHoldLatex(said)) return null;
  if (words.eitherHow.test(plain)) return { unclear: 'two-answers' };
  if (words.stuckHalfWay.test(plain)) return { value: 'no' };
  if (asksBack.test(plain) || plain.search(said.words.tube.halfOutFirm) !== -1) return { unclear: 'unsure' };
  const how = howSaid(plain, said.words);
  const withoutHow = plain.replace(words.notEasy, ' _ ').replace(words.wentEasy, ' _ ').replace(words.wentHard, ' _ ');
  if (words.stillTrying.test(plain)) return null;
  if (cameBackOut(plain, said.words)) return { value: 'no' };
  const isIn = words.firmlyIn.test(plain) && !words.notIn.test(plain);
  if (words.secondTryIn.test(plain) && !words.notIn.test(plain)) return { value: 'hard' };
  if (withoutHow.search(words.wontGo) !== -1 && !isIn) return { value: 'no' };
  const said1 = yesNo(part(said, withoutHow), { matter: said.words.negation.matter.howIn });
  const answered = said1 && 'value' in said1 ? said1.value : null;
  const unsure = said1 !== null && 'unclear' in said1 && said1.unclear === 'unsure';
  if (how === 'hard')
    return answered === 'no' && open.clarifying !== 'how' && !saysIn(said) ? { value: 'no' } : { value: 'hard' };
  if (how === 'easy' && wordsOf(plain).some((word) => isDoubtful(word, said.words))) return { unclear: 'unsure' };
  if (how === 'easy' && !unsure) return answered === 'no' && !isIn ? { unclear: 'two-answers' } : { value: 'easy' };
  if (unsure) return { unclear: 'unsure' };
  if (open.clarifying === 'how') return how === null && answered === null ? null : { unclear: 'unreadable' };
  if (said1 && 'unclear' in said1) return said1;
  if (answered === 'no') return isIn ? { value: how === 'easy' ? 'easy' : 'in' } : { value: 'no' };
  return answered === 'yes' || how === 'slightly' || saysIn(said) ? { value: 'in' } : null;
}

function saysIn({ plain, words: { howIn } }: Said): boolean {
  return howIn.inNow.test(plain.replace(/[.,!]+/g, ' ').trim());
}

/** The answer to "is it in, and did it go easily or did you have to push?". */
export function howIn(said: Said): Found<InsertedAnswer> {
  const corrected = afterCorrection(said.plain, said.words);
  return (corrected && plainHowIn(part(said, corrected.after))) ?? plainHowIn(said);
}

/** How it went in, told later and beside something else. */
export function howInTold(said: Said): 'easy' | 'hard' | null {
  const { fillsWater, tellsHow } = said.words.howIn;
  const about = said.clauses.filter((clause) => !fillsWater.test(clause) && tellsHow.test(clause));
  const hows = about.map((clause) => howSaid(clause, said.words));
  if (hows.includes('hard')) return 'hard';
  return hows.includes('easy') ? 'easy' : null;
}
