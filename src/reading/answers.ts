/** Which reader answers which question, and the event that an answer becomes. */
import type { Heard, TextEvent, Unstamped } from '#machines/events.ts';
import type { QuestionKey, Told } from '#machines/facts.ts';
import { cameOut } from './cameOut.ts';
import { saysNone } from './children.ts';
import { firstPlaced } from './firstPlaced.ts';
import { howIn } from './howIn.ts';
import { ownTube } from './ownTube.ts';
import { ph } from './ph.ts';
import {
  afterIn,
  confirm,
  contents,
  fedLately,
  firstFeed,
  kit,
  looks,
  nextDay,
  secured,
  strips,
  unwell,
} from './plainAnswers.ts';
import type { Found, Said } from './said.ts';
import type { SignsHeard } from './signs.ts';
import { tubeKind } from './tubeKind.ts';
import { weight } from './weight.ts';
import { who } from './who.ts';
import { yesNo } from './yesNo.ts';

export type Event = Unstamped<TextEvent>;
export type HeardBeside = Unstamped<Heard>;
type Reader = (said: Said, signs: SignsHeard, heard: HeardBeside) => Event | null;

function event<T>(found: Found<T>, heard: HeardBeside, toEvent: (value: T) => Event): Event | null {
  if (found === null) return null;
  return 'value' in found ? toEvent(found.value) : { ...heard, type: 'unclear', why: found.unclear };
}

export const readers: Readonly<Record<QuestionKey, Reader>> = {
  unwell: (said, signs, heard) =>
    event(unwell(said, signs), heard, (value) => ({ ...heard, type: 'answer.unwell', value })),
  who: (said, _, heard) => event(who(said), heard, (value) => ({ ...heard, type: 'answer.who', value })),
  'which-child': (said, _, heard) =>
    saysNone(said.plain, said.words) ? { ...heard, type: 'answer.which-child', value: 'none' } : null,
  confirm: (said, _, heard) =>
    event(confirm(said, heard.told), heard, (value) => ({ ...heard, type: 'answer.confirm', value })),
  'tube-kind': (said, _, heard) =>
    event(tubeKind(said), heard, (value) => ({ ...heard, type: 'answer.tube-kind', value })),
  'first-placed': (said, _, heard) =>
    event(firstPlaced(said), heard, (value) => ({ ...heard, type: 'answer.first-placed', value })),
  'own-tube': (said, _, heard) =>
    event(ownTube(said), heard, (value) => ({ ...heard, type: 'answer.own-tube', value })),
  'own-tube-in': (said, _, heard) =>
    event(howIn(said), heard, (value) => ({ ...heard, type: 'answer.own-tube-in', value })),
  kit: (said, _, heard) => event(kit(said), heard, (value) => ({ ...heard, type: 'answer.kit', value })),
  weight: (said, _, heard) => event(weight(said), heard, (value) => ({ ...heard, type: 'answer.weight', value })),
  'tube-in': (said, _, heard) => event(howIn(said), heard, (value) => ({ ...heard, type: 'answer.tube-in', value })),
  'came-out': (said, _, heard) =>
    event(cameOut(said), heard, (value) => ({ ...heard, type: 'answer.came-out', value })),
  'after-in': (said, signs, heard) =>
    event(afterIn(said, signs), heard, (value) => ({ ...heard, type: 'answer.after-in', value })),
  strips: (said, _, heard) => event(strips(said), heard, (value) => ({ ...heard, type: 'answer.strips', value })),
  contents: (said, _, heard) => event(contents(said), heard, (value) => ({ ...heard, type: 'answer.contents', value })),
  ph: (said, _, heard) => event(ph(said), heard, (value) => ({ ...heard, type: 'answer.ph', value })),
  'fed-lately': (said, _, heard) =>
    event(fedLately(said), heard, (value) => ({ ...heard, type: 'answer.fed-lately', value })),
  looks: (said, _, heard) => event(looks(said), heard, (value) => ({ ...heard, type: 'answer.looks', value })),
  secured: (said, _, heard) => event(secured(said), heard, (value) => ({ ...heard, type: 'answer.secured', value })),
  'first-feed': (said, signs, heard) =>
    event(firstFeed(said, signs), heard, (value) => ({ ...heard, type: 'answer.first-feed', value })),
  'next-day': (said, signs, heard) =>
    event(nextDay(said, signs), heard, (value) => ({ ...heard, type: 'answer.next-day', value })),
  arrived: (said, _, heard) =>
    event(yesNo(said, said.words.answers.arrived), heard, (value) => ({ ...heard, type: 'answer.arrived', value })),
  clinic: (said, _, heard) =>
    event(yesNo(said, said.words.answers.clinic), heard, (value) => ({ ...heard, type: 'answer.clinic', value })),
};

/** The fact a question asks for: its answer says it, so it is not told a second time. */
const askedFact: Partial<Record<QuestionKey, keyof Told>> = {
  'tube-kind': 'tubeKind',
  'first-placed': 'firstPlaced',
  'own-tube': 'ownTube',
  'own-tube-in': 'insertedHow',
  'tube-in': 'insertedHow',
  kit: 'kit',
  weight: 'weight',
  'came-out': 'cameOutAtMs',
  strips: 'strips',
};

/** The facts beside the answer. */
export function besideAnswer(told: Told, asking: QuestionKey | null): Told {
  const fact = asking && askedFact[asking];
  if (!fact) return told;
  const { [fact]: _, ...rest } = told;
  return rest;
}
