/** An answer meant otherwise, "sorry, I meant 3 weeks": the one given before, told anew after the next question was asked. */
import type { Told } from '#machines/facts.ts';
import type { Event, HeardBeside } from './answers.ts';
import type { Said } from './said.ts';
import { corrects } from './wishes.ts';

/** Values that answer many questions, so that without "I meant" they answer the one that is asked. */
const commonValues: ReadonlySet<unknown> = new Set(['yes', 'no', 'unknown', 'in', 'none', 'as-told']);

/** "I meant": nobody says so who answers for the first time. */
export function saysMeant({ plain, words }: Said): boolean {
  return words.yesNo.meant.test(plain);
}

/** Whether an answer to the question before, in a text that answers nothing now, can only correct what was answered. */
export function canOnlyCorrect(said: Said, answer: Event): boolean {
  return corrects(said) && 'value' in answer && !commonValues.has(answer.value);
}

/** The fact an answer tells, if it can be told beside another. */
function factIn(answer: Event): Told | null {
  switch (answer.type) {
    case 'answer.tube-kind':
      return { tubeKind: answer.value };
    case 'answer.first-placed':
      return { firstPlaced: answer.value };
    case 'answer.own-tube':
      return { ownTube: answer.value };
    case 'answer.kit':
      return { kit: answer.value };
    case 'answer.weight':
      return answer.value === 'as-told' ? null : { weight: answer.value };
    case 'answer.came-out':
      return answer.value === 'unknown' ? null : { cameOutAtMs: answer.value };
    case 'answer.strips':
      return { strips: answer.value };
    case 'answer.ph':
      return { ph: answer.value };
    case 'answer.tube-in':
    case 'answer.own-tube-in':
      return answer.value === 'easy' || answer.value === 'hard' ? { insertedHow: answer.value } : null;
    default:
      return null;
  }
}

/** A fact is told with words of correction; any other answer is taken back, and its question asked again. */
export function asCorrection(said: Said, answer: Event, heard: HeardBeside): Event | null {
  const { answered } = said.open;
  if (answered === null || !('value' in answer)) return null;
  const fact = factIn(answer);
  if (fact === null) return { ...heard, type: 'correct', key: answered };
  return { ...heard, type: 'told', told: { ...heard.told, ...fact }, corrects: true };
}
