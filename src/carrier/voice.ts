/** What the carrier is told to do with a call to the line: its own markup, made by its library. */
import twilio from 'twilio';
import type { LanguageCode } from '#machines/facts.ts';
import type { CallPlan } from '#src/line/callPlan.ts';
import { spoken } from '#src/wording/plain.ts';

/** Where the webhooks of one call are. */
export interface CallAddresses {
  /** Asked when somebody's telephone has rung long enough, or the talk is over. */
  readonly next: (place: number) => string;
  /** What whoever was rung hears before the two are connected. */
  readonly whisper: (place: number) => string;
  /** Hears her key. */
  readonly key: (place: number) => string;
}

export interface Voice {
  /** The line's own number: all that either side sees. */
  readonly lineNumber: string;
  readonly to: CallAddresses;
}

/** How long one telephone rings, and how long her key is waited for; shorter than a voicemail takes. Common practice, no source. */
const ringSeconds = 20;
const keySeconds = 10;

/** The carrier's names of the languages a voice reads. Source: its published list. */
const voices = { en: 'en-US', es: 'es-US', fr: 'fr-CA' } as const satisfies Record<LanguageCode, string>;

/** The first answer: what is spoken, then the first person, or, for a nurse, the family. */
export function firstAnswer({ language, spoken: words, rings, through }: CallPlan, voice: Voice): string {
  const answer = new twilio.twiml.VoiceResponse();
  // Whoever is put on waits for nobody; whoever is not hears it twice, as the first words of a call are often missed.
  const loop = rings.length > 0 || through !== null ? 1 : 2;
  answer.say({ language: voices[language], loop }, words);
  if (through !== null) answer.dial({ callerId: voice.lineNumber }, through);
  else ring(answer, rings, 0, voice);
  return answer.toString();
}

/** The next person, or, after the last, that nobody answered. */
export function nextAnswer({ language, rings, unanswered }: CallPlan, place: number, voice: Voice): string {
  const answer = new twilio.twiml.VoiceResponse();
  if (place < rings.length) ring(answer, rings, place, voice);
  else answer.say({ language: voices[language], loop: 2 }, unanswered);
  return answer.toString();
}

/** Nobody is connected but by a key, so that a voicemail never is. */
export function whisperAnswer({ whisper }: CallPlan, place: number, { to }: Voice): string {
  const answer = new twilio.twiml.VoiceResponse();
  answer
    .gather({ numDigits: 1, timeout: keySeconds, action: to.key(place), method: 'POST' })
    .say({ language: voices.en, loop: 2 }, whisper);
  answer.hangup();
  return answer.toString();
}

/** An empty answer connects the two. */
export function keyAnswer(connected: boolean): string {
  const answer = new twilio.twiml.VoiceResponse();
  if (!connected) answer.hangup();
  return answer.toString();
}

/** What is said where nothing else can be: the number digit by digit, as a voice reads 911 as a number of things. */
export function staticAnswer(emergencyNumber: string): string {
  const answer = new twilio.twiml.VoiceResponse();
  answer.say({ loop: 2 }, staticWords(emergencyNumber));
  return answer.toString();
}

export function staticWords(emergencyNumber: string): string {
  return (
    `If your child is in danger, hang up and call ${spoken(emergencyNumber)} now. This line cannot send help. ` +
    'Put nothing through the tube. Hang up and text this number.'
  );
}

function ring(
  answer: InstanceType<typeof twilio.twiml.VoiceResponse>,
  rings: readonly string[],
  place: number,
  { lineNumber, to }: Voice,
): void {
  const number = rings[place];
  if (number === undefined) return;
  answer
    .dial({ callerId: lineNumber, timeout: ringSeconds, action: to.next(place + 1), method: 'POST' })
    .number({ url: to.whisper(place), method: 'POST' }, number);
}
