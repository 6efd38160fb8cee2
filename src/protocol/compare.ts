/** What if: a past case played on its own protocol and on another, and where the two would part. */
import type { CaseSignal } from '#machines/case.ts';
import type { FamilyFile } from '#machines/facts.ts';
import type { Protocol } from '#machines/protocol/settings.ts';
import { type Played, Replay } from './replay.ts';

/** A case as it was recorded. */
export interface PastCase {
  readonly id: number;
  /** The one it began with. */
  readonly protocol: Protocol;
  readonly file: FamilyFile | null;
  readonly openedMs: number;
  /** What people did, in order: texts and nurses' words. Its timers are played, not read. */
  readonly signals: readonly CaseSignal[];
  /** How far it was recorded, epoch ms. */
  readonly untilMs: number;
}

/** Something that happened at an epoch ms. */
export interface Point {
  readonly atMs: number;
  readonly what: string;
}

export const courseParts = ['disposition', 'page', 'timing'] as const;
export type CoursePart = (typeof courseParts)[number];

/** How a case goes on one protocol. */
export type Course = { readonly [P in CoursePart]: readonly Point[] };

/** From here on the family would have been asked something else: `other` instead of `own`, null for nothing. */
export interface Parting {
  readonly atMs: number;
  readonly own: string | null;
  readonly other: string | null;
}

export interface Difference {
  readonly id: number;
  readonly openedMs: number;
  readonly differs: readonly CoursePart[];
  readonly own: Course;
  readonly other: Course;
  /** Null where the case could be played on both to its end. */
  readonly parting: Parting | null;
}

/** Plays a past case on both protocols. Null where disposition, pages and timing stay as they are. */
export function compareCase(past: PastCase, otherProtocol: Protocol): Difference | null {
  const own = new Run(past, past.protocol);
  const other = new Run(past, otherProtocol);
  const parting = playBoth(past, own, other);
  const courses = { own: own.course(), other: other.course() };
  const differs = courseParts.filter((part) => !same(courses.own[part], courses.other[part]));
  if (parting === null && differs.length === 0) return null;
  return { id: past.id, openedMs: past.openedMs, differs, ...courses, parting };
}

/**
 * Both go side by side until they ask the family different things: from there on neither its texts nor its silence would have
 * been what was recorded, so only the case's own protocol goes on.
 */
function playBoth({ signals, untilMs }: PastCase, own: Run, other: Run): Parting | null {
  let parting: Parting | null = null;
  const compareAt = (atMs: number) => {
    if (own.asking !== other.asking) parting = { atMs, own: own.asking, other: other.asking };
  };
  const waitUntil = (atMs: number) => {
    for (let dueMs = soonest(own, other); parting === null && dueMs <= atMs; dueMs = soonest(own, other)) {
      own.waitUntil(dueMs);
      other.waitUntil(dueMs);
      compareAt(dueMs);
    }
    own.waitUntil(atMs);
  };
  for (const signal of signals) {
    waitUntil(signal.event.at);
    own.hear(signal);
    if (parting !== null) continue;
    other.hear(signal);
    compareAt(signal.event.at);
  }
  waitUntil(untilMs);
  return parting;
}

const soonest = (own: Run, other: Run): number => Math.min(own.dueMs, other.dueMs);

class Run {
  readonly #replay: Replay;
  readonly #played: Played[] = [];

  constructor(past: PastCase, protocol: Protocol) {
    this.#replay = Replay.opened(protocol, past.file, past.openedMs);
  }

  get asking(): string | null {
    return this.#replay.view.asking;
  }

  /** When its next timer comes true; never is infinite. */
  get dueMs(): number {
    return this.#replay.waiting[0]?.dueMs ?? Number.POSITIVE_INFINITY;
  }

  hear(signal: CaseSignal): void {
    this.#played.push(this.#replay.hear(signal));
  }

  waitUntil(untilMs: number): void {
    this.#played.push(...this.#replay.waitUntil(untilMs));
  }

  course(): Course {
    const due = this.#replay.waiting.filter(({ what }) => what !== 'silence');
    return {
      disposition: this.#played
        .filter(changesDisposition)
        .map(({ atMs, disposition }) => point(atMs, `${disposition}`)),
      page: this.#played.flatMap(pagesOf),
      timing: [...this.#played.flatMap(saidByItself), ...due.map(({ dueMs, what }) => point(dueMs, `${what} due`))],
    };
  }
}

const point = (atMs: number, what: string): Point => ({ atMs, what });

function changesDisposition({ disposition }: Played, index: number, all: readonly Played[]): boolean {
  return disposition !== (all[index - 1]?.disposition ?? null);
}

function pagesOf({ atMs, effects }: Played): Point[] {
  return effects.flatMap((effect) =>
    effect.type === 'callNurse'
      ? [point(atMs, `${effect.level}, person ${effect.place + 1}: ${effect.reasons.join(', ')}`)]
      : [],
  );
}

/** What the line said without being written to: nudges, the recheck, aftercare. */
function saidByItself({ atMs, byTimer, effects }: Played): Point[] {
  if (!byTimer) return [];
  return effects.flatMap((effect) => (effect.type === 'say' ? [point(atMs, effect.say.key)] : []));
}

function same(own: readonly Point[], other: readonly Point[]): boolean {
  return JSON.stringify(own) === JSON.stringify(other);
}
