/** What can happen to a case: the events its machines hear. The shell stamps each with the time it really runs. */
import type { Answers, QuestionKey, Sign, Told } from './facts.ts';

/** On every event, a delayed one too; nothing else tells a machine the time. */
export interface Stamp {
  /** Epoch ms. */
  readonly at: number;
  readonly clinicOpen: boolean;
}

/** What any text of the caregiver carries beside its main meaning. */
export interface Heard extends Stamp {
  readonly told: Told;
  /** The text also asks for a person. */
  readonly person: boolean;
  /** The text has words of correction ("sorry, I meant"): only then may a fact told move to the less cautious side. */
  readonly corrects: boolean;
}

/** Why an answer could not be read. */
export type Unclear =
  | 'unreadable'
  | 'unsure' // "i think so", "not sure" where that is no value of the question
  | 'future' // a date or time that has not come yet
  | 'impossible' // a value no child or strip can have
  | 'two-answers' // says both
  | 'no-number'
  | 'no-match'; // a child's name and digits of a phone that fit no other case, or more than one

type AnswerEvent = {
  [K in QuestionKey]: Heard & { readonly type: `answer.${K}`; readonly value: Answers[K] };
}[QuestionKey];

/** Each text becomes exactly one of these. */
export type TextEvent =
  | AnswerEvent
  /** Only facts, no answer to the open question (also the first text about a tube, with or without facts). */
  | (Heard & { readonly type: 'told' })
  /** `near` are signs said in a small or doubtful way: a clarifying question each. `answer` is what the text answers beside them. */
  | (Heard & {
      readonly type: 'signs';
      readonly sure: readonly Sign[];
      readonly near: readonly Sign[];
      readonly answer?: Unstamped<AnswerEvent>;
    })
  | (Heard & { readonly type: 'unclear'; readonly why: Unclear })
  /** A device word the line does not know, at `tube-kind`. */
  | (Heard & { readonly type: 'unknownDevice' })
  | (Heard & { readonly type: 'outAgain' })
  /** No flow, or stiff while filling. */
  | (Heard & { readonly type: 'tubeProblem' })
  | (Heard & { readonly type: 'cannotWait'; readonly what: string })
  /** Asks to hear a step again; `step` 1 to 3 where one was named. */
  | (Heard & { readonly type: 'repeat'; readonly step: 1 | 2 | 3 | null })
  /** Wants to take back or change an earlier answer without saying which value. */
  | (Heard & { readonly type: 'correct'; readonly key: QuestionKey | null })
  /** Wants a person; `rang` where the family rang the line instead of texting. */
  | (Heard & { readonly type: 'person'; readonly rang?: true })
  /** Answers what a nurse asked in her own words, and tells no sign or wish: it goes to her, and answers no question of the line. */
  | (Heard & { readonly type: 'relayed'; readonly nurse: string })
  /** A picture or voice note with no readable text. */
  | (Heard & { readonly type: 'media' })
  /** Thanks, ok, chatter with nothing in it. */
  | (Heard & { readonly type: 'smallTalk' })
  | (Heard & { readonly type: 'stop' })
  | (Heard & { readonly type: 'help' });

/** The facts a nurse may know better than the family; a reading is the family's alone. */
export type NurseFacts = Pick<Told, 'tubeKind' | 'firstPlaced' | 'weight'>;

/** From the nurse, by the shell. None of them can make a tube usable that the facts forbid. */
export type NurseEvent = Stamp & {
  /** She has the case: what her text would call a nurse for, its answer tells her. */
  readonly byTaker?: true;
} & (
    | { readonly type: 'nurse.clear' }
    /** `outcome` is how it ended, in her words: for the record only. */
    | { readonly type: 'nurse.close'; readonly outcome?: string }
    /** To the emergency department; nothing but that, so it is always the safer side. */
    | { readonly type: 'nurse.goIn' }
    /** Heard as a family's own correction is: the careful side counts at once, the other is asked of the family again. */
    | { readonly type: 'nurse.corrects'; readonly told: NurseFacts; readonly corrects: true }
    /** She says that the line was wrong: for the record and its review only. */
    | { readonly type: 'nurse.reports'; readonly what: string }
  );

/** From the other machines of the case to its conversation, within the same turn. */
export type CaseNews = Stamp &
  /** A nurse is being called; `mostMinutes` until everybody on call was. */
  (
    | { readonly type: 'page.began'; readonly mostMinutes: number }
    | { readonly type: 'page.taken'; readonly nurse: string }
    | { readonly type: 'page.passed'; readonly nurse: string }
    | { readonly type: 'page.unanswered' }
    /** The child is not well with the tube in use. */
    | { readonly type: 'notWell' }
  );

/** Another phone, no phone of the family, joined by saying whose child it is with; `lastFour` are its number's last digits. */
export type PhoneJoined = Stamp & { readonly type: 'phone.joined'; readonly lastFour: string };

/** A delayed transition coming true: the event its timer was started with. */
export interface DelayedEvent extends Stamp {
  readonly type: `xstate.after.${string}`;
}

/** An event before the shell has stamped it. */
export type Unstamped<E> = E extends unknown ? Omit<E, keyof Stamp> : never;
