/** A night of one case on a simulated clock, without shell or database: texts in, what was said and who was called out. */
import { type CaseSnapshots, type CaseView, openCase, stepCase, viewCase } from '#machines/case.ts';
import type { Effect } from '#machines/effects.ts';
import type { NurseFacts, Stamp, TextEvent, Unstamped } from '#machines/events.ts';
import type { Answers, FamilyFile, PageReason, QuestionKey, Told } from '#machines/facts.ts';
import { defaultClinical } from '#machines/protocol/load.ts';
import type { Clinical, Protocol, Site } from '#machines/protocol/settings.ts';
import type { SayKey } from '#machines/says.ts';

/** An invented site. */
export const site: Site = {
  emergencyNumber: '911',
  hospital: 'Alder Valley Hospital',
  clinicNumber: '+12025550150',
  fallbackNumber: '+12025550151',
  timeZone: 'America/New_York',
  clinicDays: [1, 2, 3, 4, 5],
  clinicOpens: '08:00',
  clinicCloses: '17:00',
  holidays: 'US',
};

export const protocolWith = (clinical: Partial<Clinical> = {}): Protocol => ({
  clinical: { ...defaultClinical, ...clinical },
  site,
});

/** Saturday 6 March 2027, ten past two in the morning. */
export const startMs = Date.parse('2027-03-06T02:10:00-05:00');
const minuteMs = 60_000;

/** A tract of about two years. */
export const oldTract = { earliest: '2025-03-01', latest: '2025-03-01' } as const;
export const daysBefore = (days: number) => {
  const date = new Date(startMs - days * 86_400_000).toISOString().slice(0, 10);
  return { earliest: date, latest: date };
};

/** More in one wait than any case does: its timers start each other without time passing. */
const mostEffects = 20_000;

interface Timer {
  readonly machine: 'conversation' | 'paging' | 'aftercare';
  readonly id: string;
  readonly event: string;
  readonly dueMs: number;
}

export type Body = Partial<Pick<TextEvent, 'told' | 'person' | 'corrects'>>;

/** An invented child on file whose G tube may be used. */
export const wren: FamilyFile = {
  child: 'Wren',
  born: '2024-06-01',
  tubeKind: 'g',
  firstPlaced: '2024-11-01',
  weightKg: 9,
  weighedOn: '2027-03-01',
};

export class Night {
  nowMs = startMs;
  clinicOpen = false;
  effects: Effect[] = [];
  /** What a nurse was needed for in the last step. */
  raised: readonly PageReason[] = [];
  all: Effect[] = [];
  timers: Timer[] = [];
  readonly protocol: Protocol;
  private snapshots: CaseSnapshots;

  constructor(file: FamilyFile | null = null, clinical: Partial<Clinical> = {}) {
    this.protocol = protocolWith(clinical);
    this.snapshots = openCase(this.protocol, file, this.nowMs);
  }

  /** A night that goes on from here by itself. */
  branch(): Night {
    const other: Night = Object.create(Night.prototype);
    return Object.assign(other, this, { all: [...this.all], timers: [...this.timers] });
  }

  get view(): CaseView {
    return viewCase(this.protocol, this.snapshots);
  }

  get asking(): QuestionKey | null {
    return this.view.asking;
  }

  /** Keys of what was said in the last step. */
  get said(): SayKey[] {
    return this.effects.flatMap((effect) => (effect.type === 'say' ? [effect.say.key] : []));
  }

  get saidEver(): SayKey[] {
    return this.all.flatMap((effect) => (effect.type === 'say' ? [effect.say.key] : []));
  }

  /** Reasons and level of every call made in the last step. */
  get calls() {
    return this.effects.flatMap((effect) => (effect.type === 'callNurse' ? [effect] : []));
  }

  get callsEver() {
    return this.all.flatMap((effect) => (effect.type === 'callNurse' ? [effect] : []));
  }

  text(event: Unstamped<TextEvent>): this {
    return this.step({ machine: 'conversation', event: { ...event, ...this.stamp() } });
  }

  /** Sends an event that needs no more than its type. */
  hear(
    type: 'told' | 'outAgain' | 'tubeProblem' | 'person' | 'media' | 'smallTalk' | 'stop' | 'help',
    body: Body = {},
  ): this {
    return this.text({ type, told: {}, person: false, corrects: false, ...body });
  }

  tell(told: Told, corrects = false): this {
    return this.hear('told', { told, corrects });
  }

  unclear(): this {
    return this.text({ type: 'unclear', why: 'unreadable', told: {}, person: false, corrects: false });
  }

  signs(...sure: Extract<TextEvent, { type: 'signs' }>['sure']): this {
    return this.text({ type: 'signs', sure, near: [], told: {}, person: false, corrects: false });
  }

  near(...near: Extract<TextEvent, { type: 'signs' }>['near']): this {
    return this.text({ type: 'signs', sure: [], near, told: {}, person: false, corrects: false });
  }

  /** Answers the open question; a test that answers another one is wrong. */
  answer<K extends QuestionKey>(key: K, value: Answers[K], body: Body = {}): this {
    if (this.asking !== key) throw new Error(`the line asks ${this.asking}, not ${key}`);
    return this.text(answerEvent(key, value, body));
  }

  /** A nurse is at work on the case beside its machines. */
  touch(): this {
    return this.step({ machine: 'paging', event: { type: 'touch', ...this.stamp() } });
  }

  take(nurse = 'Ana'): this {
    return this.step({ machine: 'paging', event: { type: 'take', nurse, ...this.stamp() } });
  }

  /** The family's own call rings whoever is at that place. */
  rung(place: 0 | 1 | 2): this {
    return this.step({ machine: 'paging', event: { type: 'rung', place, ...this.stamp() } });
  }

  clear(): this {
    return this.step({ machine: 'conversation', event: { type: 'nurse.clear', ...this.stamp() } });
  }

  close(): this {
    return this.step({ machine: 'conversation', event: { type: 'nurse.close', ...this.stamp() } });
  }

  /** The nurse sends the child in. */
  sendIn(): this {
    return this.step({ machine: 'conversation', event: { type: 'nurse.goIn', ...this.stamp() } });
  }

  /** A nurse corrects a fact, the one who has the case or another. */
  corrects(told: NurseFacts, byTaker = false): this {
    return this.step({
      machine: 'conversation',
      event: { type: 'nurse.corrects', told, corrects: true, ...(byTaker && { byTaker }), ...this.stamp() },
    });
  }

  /** Another phone says whose child it is with. */
  joinedBy(lastFour: string): this {
    return this.step({ machine: 'conversation', event: { type: 'phone.joined', lastFour, ...this.stamp() } });
  }

  /** The nurse passes the page on. */
  pass(from: 0 | 1 | 2 = 0, nurse = 'Ana'): this {
    return this.step({ machine: 'paging', event: { type: 'pass', nurse, from, ...this.stamp() } });
  }

  /** Lets time pass; every timer due on the way fires at its own time. The last step's effects are those of the whole wait. */
  wait(minutes: number): this {
    const untilMs = this.nowMs + minutes * minuteMs;
    const before = this.all.length;
    const raised: PageReason[] = [];
    for (let timer = this.nextDue(untilMs); timer !== undefined; timer = this.nextDue(untilMs)) {
      if (this.all.length - before > mostEffects) throw new Error('the timers never come to an end');
      this.nowMs = Math.max(this.nowMs, timer.dueMs);
      this.timers = this.timers.filter((other) => other !== timer);
      this.step({ machine: timer.machine, event: { type: delayed(timer.event), ...this.stamp() } });
      raised.push(...this.raised);
    }
    this.nowMs = untilMs;
    this.raised = raised;
    this.effects = this.all.slice(before);
    return this;
  }

  private nextDue(untilMs: number): Timer | undefined {
    return this.timers.filter((timer) => timer.dueMs <= untilMs).sort((a, b) => a.dueMs - b.dueMs)[0];
  }

  private stamp(): Stamp {
    return { at: this.nowMs, clinicOpen: this.clinicOpen };
  }

  private step(signal: Parameters<typeof stepCase>[2]): this {
    const { snapshots, effects, raised } = stepCase(this.protocol, this.snapshots, signal);
    this.raised = raised;
    // Through JSON, as the store keeps it: what JSON drops must not be missed.
    this.snapshots = JSON.parse(JSON.stringify(snapshots));
    this.effects = [...effects];
    this.all.push(...effects);
    for (const effect of effects) this.keepTime(effect);
    return this;
  }

  private keepTime(effect: Effect): void {
    if (effect.type !== 'startTimer' && effect.type !== 'cancelTimer') return;
    this.timers = this.timers.filter((timer) => timer.machine !== effect.machine || timer.id !== effect.id);
    if (effect.type === 'startTimer') {
      const { machine, id, event, delayMs } = effect;
      this.timers.push({ machine, id, event, dueMs: this.nowMs + delayMs });
    }
  }
}

function delayed(event: string): `xstate.after.${string}` {
  return `xstate.after.${event.replace(/^xstate\.after\./, '')}`;
}

function answerEvent<K extends QuestionKey>(key: K, value: Answers[K], body: Body): Unstamped<TextEvent> {
  // The pair of key and value is checked by the signature; the union of all pairs cannot be built from it without help.
  return {
    type: `answer.${key}`,
    value,
    told: {},
    person: false,
    corrects: false,
    ...body,
  } as unknown as Unstamped<TextEvent>;
}

/** A stranger's night up to the length: a G tube in an old tract, no own tube, a kit, shown how, 7 kg. */
export function toInsertion(night = new Night()): Night {
  return night
    .tell({ tubeKind: 'g', cameOutAtMs: startMs - 20 * minuteMs })
    .answer('unwell', 'no')
    .answer('first-placed', oldTract)
    .answer('own-tube', 'no')
    .answer('kit', 'yes')
    .answer('weight', { kg: 7 });
}

/** On to the question for contents, the temporary tube in. */
export function toContents(how: 'easy' | 'hard' = 'easy', night = toInsertion()): Night {
  return night.answer('tube-in', how).answer('after-in', 'no').answer('strips', 'yes');
}
