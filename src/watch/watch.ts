/** What the line tells of itself as it works: how long a turn took, what could not be read, where it fell back. Counts only. */
import { Counter, Gauge, Histogram, Registry } from 'prom-client';
import type { Health } from './health.ts';

export interface Watch {
  /** One text was answered, in real time. */
  turnTaken(seconds: number): void;
  /** A caregiver's text could not be read. */
  textUnread(): void;
  /** A turn failed twice and the fixed safe message went out. */
  safeMessageSent(): void;
}

/** For a line nobody watches: practice, tests. */
export const unwatched: Watch = {
  turnTaken: () => undefined,
  textUnread: () => undefined,
  safeMessageSent: () => undefined,
};

export interface Metrics extends Watch {
  /** Everything in the Prometheus text format, with the rows' state as of now. */
  render(health: Health): Promise<string>;
  readonly contentType: string;
}

/** A registry of its own, so that two lines in one process do not share their counts. */
export function createMetrics(): Metrics {
  const registers = [new Registry()];
  const [registry] = registers;
  if (registry === undefined) throw new Error('a list of one has one');
  const turns = new Histogram({
    name: 'nightjar_turn_seconds',
    help: 'From a text received to its answer committed',
    buckets: [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 15],
    registers,
  });
  const unread = new Counter({ name: 'nightjar_texts_unread_total', help: 'Texts that could not be read', registers });
  const safe = new Counter({
    name: 'nightjar_safe_messages_total',
    help: 'Turns that failed twice and were answered by the safe message',
    registers,
  });
  const gauge = (name: string, help: string) => new Gauge({ name: `nightjar_${name}`, help, registers });
  const gauges = {
    outbox: gauge('outbox_wait_seconds', 'Age of the oldest message not handed to the carrier'),
    timers: gauge('timers_late_seconds', 'How late the earliest due timer is'),
    cases: gauge('cases_open', 'Open cases'),
    parked: gauge('cases_parked', 'Open cases that only a person carries on'),
    pages: gauge('pages_open', 'Pages nobody has taken'),
    paused: gauge('paused', '1 while people have stopped the advice'),
    pageWait: gauge('page_wait_seconds', 'Age of the oldest page nobody has taken'),
  };
  return {
    turnTaken: (seconds) => turns.observe(seconds),
    textUnread: () => unread.inc(),
    safeMessageSent: () => safe.inc(),
    render: (health) => {
      gauges.outbox.set(health.outboxWaitMs / 1000);
      gauges.timers.set(health.timerLateMs / 1000);
      gauges.cases.set(health.openCases);
      gauges.parked.set(health.parkedCases);
      gauges.pages.set(health.openPages);
      gauges.pageWait.set(health.pageWaitMs / 1000);
      gauges.paused.set(health.pausedMs === null ? 0 : 1);
      return registry.metrics();
    },
    contentType: registry.contentType,
  };
}
