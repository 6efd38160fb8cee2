/** English: one nudge on each unanswered question, short enough for one segment. */
import type { QuestionKey } from '#machines/facts.ts';
import { namesIn, type Scene } from '../catalogue.ts';
import { childIn } from './facts.ts';

const nudges: Readonly<Record<QuestionKey, (scene: Scene) => string>> = {
  unwell: (scene) => `Is there any danger sign now? If yes, call ${scene.site.emergencyNumber}.\nReply YES or NO.`,
  who: () =>
    "Has someone else texted about this child?\nReply with the first name and a parent's last 4 digits, like SAM 1234, or NO, or NOT SURE.",
  'which-child': (scene) => `Which child is this about?\nReply with the name: ${namesIn(scene).join(', ')} or NONE.`,
  confirm: () => 'Are the facts I sent you still right?\nReply YES or NO.',
  'tube-kind': () => 'Which tube came out?\nReply G, GJ, J, HALF OUT, NOSE or NOT SURE.',
  'first-placed': (scene) =>
    `When did ${childIn(scene)} get the very first tube?\nReply with a date or how long ago, or NOT SURE.`,
  'own-tube': () => 'Do you have the tube, whole?\nReply YES, BURST, LONG (inside part), NO or NOT SURE.',
  'own-tube-in': () => 'Did the tube go back in? Never force it.\nReply EASY, HARD (had to push) or NO.',
  kit: () => 'Do you have the emergency kit?\nReply YES or NO.',
  weight: (scene) => `How much does ${childIn(scene)} weigh?\nReply with KG or LB, or NOT SURE.`,
  'tube-in': () => 'Is the temporary tube in? Never force it.\nReply EASY, HARD (had to push) or NO.',
  'came-out': () => 'When did the tube come out, or when did you last see it in?\nReply with a time, or NOT SURE.',
  'after-in': () => 'Is there new pain, fresh blood or a tighter belly?\nReply YES or NO.',
  strips: () => 'Do you have pH test strips?\nReply YES or NO.',
  contents: () => 'Did stomach contents come out?\nReply YES or NO.',
  ph: () => "What number does the strip show?\nReply with the number, or CAN'T TELL.",
  'fed-lately': () => 'Was there a feed or medicine in the last hour?\nReply YES, NO or NOT SURE.',
  looks: () => 'Is it cloudy white, curdled, tan, grass green or brown-flecked?\nReply YES, NO or NOT SURE.',
  secured: () => 'Is the balloon filled, and the tube snug and taped?\nReply YES or NO.',
  'first-feed': () => 'Did the first feed go well?\nReply YES or NO.',
  'next-day': (scene) => `Is ${childIn(scene)} well today?\nReply YES or NO.`,
  arrived: (scene) => `Has ${childIn(scene)} reached the hospital?\nReply YES or NO.`,
  clinic: (scene) => `Have you called the clinic? Its number is ${scene.site.clinicNumber}.\nReply YES or NO.`,
};

/** The open question once more, for a phone that has gone quiet. */
export function nudge(asking: QuestionKey, scene: Scene): string {
  return `Are you still there? ${nudges[asking](scene)}`;
}
