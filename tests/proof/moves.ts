/** One move of a walk: an event before it is stamped, in plain words, and whether it answers or disturbs. */
import type { ConversationEvent } from '#machines/dislodgement/conversationEvent.ts';
import type { Unstamped } from '#machines/events.ts';
import type { Answers, QuestionKey, Told } from '#machines/facts.ts';

export interface Move {
  readonly event: Unstamped<ConversationEvent>;
  readonly clinicOpen: boolean;
  readonly words: string;
  /** Anything but an answer to the open question, a timer, or the nurse's clearance. */
  readonly disturbs: boolean;
}

const plain = { told: {}, person: false, corrects: false } as const;

export function says<K extends QuestionKey>(key: K, value: Answers[K], clinicOpen = false): Move {
  // The signature pairs key and value; the union of all pairs cannot be built from it without help.
  const event = { type: `answer.${key}`, value, ...plain } as unknown as Unstamped<ConversationEvent>;
  const day = clinicOpen ? ', the clinic being open' : '';
  return { event, clinicOpen, words: `${key}: ${inWords(value)}${day}`, disturbs: false };
}

export function tells(told: Told, corrects = false): Move {
  const [fact] = Object.entries(told);
  const words = `${corrects ? 'corrects' : 'tells'} ${fact === undefined ? 'nothing' : `${fact[0]} ${inWords(fact[1])}`}`;
  return { event: { type: 'told', told, person: false, corrects }, clinicOpen: false, words, disturbs: true };
}

export function disturbance(event: Unstamped<ConversationEvent>, words: string): Move {
  return { event, clinicOpen: false, words, disturbs: true };
}

export function timer(id: string): Move {
  const event = { type: `xstate.after.${id}` } as const;
  return { event, clinicOpen: false, words: `time passes: ${id.split('.')[0]}`, disturbs: false };
}

/** An event that needs no more than its type. */
export const bare = (
  type: 'outAgain' | 'tubeProblem' | 'person' | 'media' | 'smallTalk' | 'stop' | 'help' | 'unknownDevice',
  words: string,
): Move => disturbance({ type, ...plain }, words);

function inWords(value: unknown): string {
  return typeof value === 'object' ? JSON.stringify(value).replaceAll('"', '') : String(value);
}
