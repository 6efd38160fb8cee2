/** The heartbeat: once a minute the line looks at itself, tells an outside watcher that it lives, or a person that it is sick. */
import type { Carrier } from '#src/carrier/port.ts';
import type { Log } from '#src/log.ts';
import { ailments, type Health } from './health.ts';

export interface HeartbeatParts {
  /** Rejects where the database does not answer. */
  readonly health: () => Promise<Health>;
  /** Straight to the carrier: a sick line's own outbox may be what is sick. */
  readonly carrier: Carrier;
  /** Whom it tells: the number rung when the rota names nobody. */
  readonly toNumber: string;
  /** Asked with every healthy beat, so that a watcher outside misses it when the whole machine is gone; null where none is set. */
  readonly watcherUrl: string | null;
  readonly fetch: typeof fetch;
  readonly wallMs: () => number;
  readonly log: Log;
}

export interface Heartbeat {
  /** One look. Never rejects. */
  beat(): Promise<void>;
}

const everyMs = 60_000;
/** A person is told again only after this long; common practice, no source. */
const againMs = 30 * 60_000;
const watcherMs = 10_000;

export function createHeartbeat(parts: HeartbeatParts): Heartbeat {
  let toldMs = Number.NEGATIVE_INFINITY;
  return {
    async beat() {
      const found = await look(parts);
      if (found.length === 0) return report(parts);
      parts.log.error({ ailments: found }, 'the line is sick');
      if (parts.wallMs() - toldMs < againMs) return;
      toldMs = parts.wallMs();
      await tell(parts, found);
    },
  };
}

/** Beats every minute until the returned function is called. */
export function startBeating(heartbeat: Heartbeat): () => void {
  const timer = setInterval(() => void heartbeat.beat(), everyMs);
  return () => clearInterval(timer);
}

async function look({ health }: HeartbeatParts): Promise<string[]> {
  try {
    return ailments(await health());
  } catch {
    return ['the database does not answer'];
  }
}

async function report({ watcherUrl, fetch, log }: HeartbeatParts): Promise<void> {
  if (watcherUrl === null) return;
  try {
    await fetch(watcherUrl, { signal: AbortSignal.timeout(watcherMs) });
  } catch (error) {
    log.warn({ error }, 'the outside watcher does not answer');
  }
}

async function tell({ carrier, toNumber, wallMs, log }: HeartbeatParts, found: readonly string[]): Promise<void> {
  const body = `The text line itself is sick: ${found.join('; ')}. Families may get no answer. Call whoever runs it.`;
  const saidAtMs = wallMs();
  for (const kind of ['text', 'call'] as const) {
    const fate = await carrier
      .send({ id: `heartbeat-${saidAtMs}`, to: toNumber, body, kind, saidAtMs })
      .catch(() => null);
    if (fate?.fate !== 'accepted') log.error({ kind }, 'nobody could be told that the line is sick');
  }
}
