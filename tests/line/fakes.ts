/**
 * A line of stand-ins, so that what is tested is the way of one event and nothing else: a machine whose steps are told by
 * one word of the text, words that are the key of what is said. Numbers and names are invented.
 */
import type { CaseSignal, CaseStep, CaseView } from '#machines/case.ts';
import type { Effect } from '#machines/effects.ts';
import type { TextEvent, Unstamped } from '#machines/events.ts';
import type { PageReason } from '#machines/facts.ts';
import { parseProtocol } from '#machines/protocol/load.ts';
import type { Say } from '#machines/says.ts';
import type { Carrier, Fate, LoggedText, MediaFate, Outgoing } from '#src/carrier/port.ts';
import { type Clock, practiceClock, realClock } from '#src/clock.ts';
import { noAlarm } from '#src/line/alarm.ts';
import { noCheckpoint } from '#src/line/checkpoint.ts';
import type { Parts } from '#src/line/parts.ts';
import { readNurse } from '#src/reading/nurse.ts';
import type { Reading } from '#src/reading/read.ts';
import type { Database } from '#src/store/database.ts';
import { createSeal, practiceKey } from '#src/store/seal.ts';
import { unwatched } from '#src/watch/watch.ts';

export const minuteMs = 60_000;
export const startMs = Date.parse('2027-03-06T02:10:00-05:00');

export const nurses = [
  { name: 'Ada', number: '+12025550101' },
  { name: 'Bea', number: '+12025550102' },
  { name: 'Cleo', number: '+12025550103' },
];
export const fallbackNumber = '+12025550109';
export const parent = '+12025550150';

export const protocol = parseProtocol({
  clinical: {},
  site: {
    emergencyNumber: '911',
    hospital: 'Lakeside Hospital',
    clinicNumber: '+12025550108',
    fallbackNumber,
    timeZone: 'America/New_York',
    clinicDays: [1, 2, 3, 4, 5],
    clinicOpens: '08:00',
    clinicCloses: '17:00',
    holidays: null,
  },
});

/** What the stand-in machine remembers. */
interface Memory {
  readonly steps: readonly string[];
  readonly clearable: boolean;
}

const plain = { told: {}, person: false, corrects: false };
const say = (key: 'askUnwell' | 'askHowIn' | 'stopped' | 'closedByNurse' | 'opening'): Effect => {
  const said: Say =
    key === 'closedByNurse'
      ? { key, params: { left: 'in-use', asks: false }, preface: [] }
      : { key, params: {}, preface: [] };
  return { type: 'say', say: said, by: 'text' };
};
const startQuiet: Effect = {
  type: 'startTimer',
  machine: 'conversation',
  id: 'quiet',
  what: 'silence',
  delayMs: 5 * minuteMs,
  event: 'xstate.after.quiet',
};
const callFirst = (level: 'urgent' | 'emergency', place = 0, reason: PageReason = 'person-wanted'): Effect => ({
  type: 'callNurse',
  place,
  level,
  reasons: [reason],
  by: level === 'urgent' ? ['text'] : ['text', 'call'],
});

/** The first word of a text is the event it reads as. */
const events: Record<string, Unstamped<TextEvent>> = {
  tube: { type: 'told', ...plain },
  person: { type: 'person', ...plain },
  danger: { type: 'signs', sure: ['breathing'], near: [], ...plain },
  boom: { type: 'tubeProblem', ...plain },
  silence: { type: 'outAgain', ...plain },
  hard: { type: 'correct', key: null, ...plain },
  now: { type: 'repeat', step: null, ...plain },
  gap: { type: 'cannotWait', what: 'a medicine', ...plain },
  stop: { type: 'stop', ...plain },
  help: { type: 'help', ...plain },
  thanks: { type: 'smallTalk', ...plain },
  bomb: { type: 'unknownDevice', ...plain },
};

/** What each event makes the stand-in machine do; a missing one is said nothing to. */
const effectsOf: Record<string, () => readonly Effect[]> = {
  told: () => [say('askUnwell'), startQuiet],
  unclear: () => [say('askUnwell'), { type: 'cancelTimer', machine: 'conversation', id: 'quiet' }, startQuiet],
  person: () => [say('askHowIn'), callFirst('urgent')],
  signs: () => [say('opening'), callFirst('emergency'), callFirst('emergency', 1)],
  tubeProblem: () => {
    throw new Error('the machine broke');
  },
  outAgain: () => [startQuiet],
  correct: () => [say('askHowIn'), callFirst('urgent', 0, 'hard-insertion')],
  repeat: () => [say('askHowIn'), { ...startQuiet, id: 'now', delayMs: 0, event: 'xstate.after.now' }],
  cannotWait: () => [say('askHowIn'), callFirst('urgent', 7)],
  media: () => [say('askHowIn')],
  stop: () => [
    say('stopped'),
    callFirst('urgent', 0, 'stopped'),
    // What the other phones of the case hear of it.
    say('askHowIn'),
    { type: 'cancelTimer', machine: 'conversation', id: 'quiet' },
    startQuiet,
  ],
  smallTalk: () => [say('askHowIn')],
  unknownDevice: () => [say('askHowIn'), { ...startQuiet, id: 'bomb', event: 'xstate.after.bomb' }],
  'xstate.after.quiet': () => [say('askHowIn'), { type: 'tellNurse', level: 'urgent', reason: 'silence' }],
  'xstate.after.now': () => [say('closedByNurse')],
  'xstate.after.bomb': () => {
    throw new Error('the machine broke in a timer');
  },
  take: () => [say('askHowIn')],
  'page.raise': () => [callFirst('urgent')],
  'nurse.clear': () => [say('askUnwell')],
  relayed: () => [say('askHowIn')],
  'nurse.close': () => [say('closedByNurse'), { type: 'closeCase' }],
};

function memoryOf(value: unknown): Memory {
  if (typeof value !== 'object' || value === null || !('steps' in value) || !Array.isArray(value.steps))
    throw new Error('no memory');
  return { steps: value.steps.map(String), clearable: 'clearable' in value && value.clearable === true };
}

function viewOf(memory: Memory): CaseView {
  return {
    asking: 'unwell',
    child: null,
    clarifying: null,
    bareWeight: null,
    answered: null,
    disposition: memory.clearable ? 'hold' : null,
    facts: { tubeKind: 'g' },
    told: {},
    tubeIn: null,
    inside: 'nothing',
    temporarySinceMs: null,
    cannotWait: null,
    dangerSigns: [],
    warningSigns: [],
    placedAtMs: null,
    cleared: false,
    failedTries: 0,
    fedLately: null,
    latexAllergy: false,
    clearable: memory.clearable,
    takenBy: memory.steps.includes('take') ? 'Bea' : null,
    closed: false,
    states: { conversation: memory.steps, paging: [], aftercare: [] },
  };
}

export const fakeMachines: Parts['machines'] = {
  openCase: () => ({ conversation: { steps: [], clearable: false }, paging: null, aftercare: null }),
  stepCase: (_protocol, snapshots, signal: CaseSignal): CaseStep => {
    const { type } = signal.event;
    const before = memoryOf(snapshots.conversation);
    const clearable = type === 'correct' || (before.clearable && type !== 'nurse.clear');
    const memory: Memory = { steps: [...before.steps, type], clearable };
    const effects = effectsOf[type]?.() ?? [];
    return {
      snapshots: { ...snapshots, conversation: memory },
      effects,
      view: viewOf(memory),
      raised: effects.flatMap((effect) => (effect.type === 'callNurse' ? effect.reasons : [])),
    };
  },
  viewCase: (_protocol, snapshots) => viewOf(memoryOf(snapshots.conversation)),
};

const noLanguage = { wantsLanguage: null, writtenIn: null, saysWho: false, rehearsal: null };

/** What these first words say of a rehearsal. */
const rehearsals: Record<string, Reading['rehearsal']> = {
  practise: 'wish',
  practice: 'wish',
  real: 'real',
  over: 'over',
};

export const fakeRead: Parts['read'] = (text, open): Reading => {
  const first = text.trim().split(/\s+/)[0]?.toLowerCase() ?? '';
  if (open.asking === 'confirm' && (first === 'yes' || first === 'no')) {
    return { event: { type: 'answer.confirm', value: first, ...plain }, about: 'other', ...noLanguage };
  }
  const event = events[first] ?? { type: 'unclear', why: 'unreadable', ...plain };
  const about = first === 'thanks' ? 'thanks' : open.caseOpen || event.type === 'told' ? 'tube' : 'other';
  return { event, about, ...noLanguage, rehearsal: rehearsals[first] ?? null };
};

/** A carrier that keeps what it was given and answers as it is told. */
export interface FakeCarrier extends Carrier {
  readonly sent: Outgoing[];
  /** What the next sends say, before it goes back to accepting. */
  readonly next: (Fate | Promise<Fate>)[];
  found: 'accepted' | 'absent' | 'unknown';
  /** Its log of texts to us. */
  logged: LoggedText[];
  /** What the next pictures are. */
  readonly media: MediaFate[];
}

export function fakeCarrier(): FakeCarrier {
  const carrier: FakeCarrier = {
    sent: [],
    next: [],
    found: 'absent',
    logged: [],
    send: async (message) => {
      carrier.sent.push(message);
      return (await carrier.next.shift()) ?? { fate: 'accepted', carrierId: `carrier-${message.id}` };
    },
    find: async ({ id }) =>
      carrier.found === 'unknown'
        ? { fate: 'unknown' }
        : { fate: 'found', made: carrier.found === 'absent' ? [] : [{ carrierId: `found-${id}`, fate: 'accepted' }] },
    heardSince: async () => carrier.logged,
    fetchMedia: async () => carrier.media.shift() ?? { fate: 'later' },
    media: [],
  };
  return carrier;
}

/** Log lines, kept to be looked at. */
export function fakeLog(): Parts['log'] & { readonly lines: unknown[] } {
  const lines: unknown[] = [];
  const keep = (...line: unknown[]): void => void lines.push(line);
  return { lines, info: keep, warn: keep, error: keep };
}

export function fakeParts(database: Database, change: Partial<Parts> = {}): Parts {
  const kind = change.kind ?? 'practice';
  const clock: Clock = kind === 'practice' ? practiceClock : realClock;
  return {
    kind,
    database,
    clock,
    wallMs: () => startMs,
    alarm: noAlarm,
    checkpoint: noCheckpoint,
    watch: unwatched,
    carrier: fakeCarrier(),
    seal: createSeal(practiceKey),
    log: fakeLog(),
    protocol,
    lineNumber: '+12025550100',
    publicUrl: 'https://line.example',
    machines: fakeMachines,
    read: fakeRead,
    readNurse,
    word: (said) => said.key,
    wordForNurse: (said) =>
      said.key === 'page' || said.key === 'pageCall' ? `${said.key} ${said.params.level}` : said.key,
    nurses,
    onCall: () => nurses,
    rotaGaps: () => [],
    nurseOf: (number) => nurses.find((nurse) => nurse.number === number) ?? null,
    clinicOpen: () => false,
    mail: null,
    ...change,
  };
}
