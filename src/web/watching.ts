/** What a machine that watches the line may ask: whether it is ready for texts, and its metrics. */
import { timingSafeEqual } from 'node:crypto';
import { Router } from 'express';
import { ailments, type Health } from '#src/watch/health.ts';
import type { Metrics } from '#src/watch/watch.ts';
import { Refused } from './refusal.ts';

export interface WatchParts {
  /** Rejects where the database does not answer. */
  readonly health: () => Promise<Health>;
  readonly metrics: Pick<Metrics, 'render' | 'contentType'>;
  /** The bearer token of whoever scrapes; null: nobody may, and the address does not exist. */
  readonly metricsToken: string | null;
}

/** `/readyz` and `/metrics`. Neither names a person, a number or a text. */
export function watchRouter({ health, metrics, metricsToken }: WatchParts): Router {
  const router = Router();

  router.get('/readyz', async (_request, response) => {
    const read = await health().catch(() => null);
    const found = read === null ? ['the database does not answer'] : ailments(read);
    // A paused line is ready: it answers every text, with no advice.
    const pausedMs = read?.pausedMs ?? null;
    const paused = pausedMs === null ? null : { since: new Date(pausedMs).toISOString() };
    response.status(found.length === 0 ? 200 : 503).json({ ready: found.length === 0, ailments: found, paused });
  });

  router.get('/metrics', async (request, response) => {
    if (metricsToken === null || !isSame(request.get('Authorization'), `Bearer ${metricsToken}`))
      throw new Refused('not-found');
    response.type(metrics.contentType).send(await metrics.render(await health()));
  });

  return router;
}

function isSame(given: string | undefined, wanted: string): boolean {
  const [a, b] = [Buffer.from(given ?? ''), Buffer.from(wanted)];
  return a.length === b.length && timingSafeEqual(a, b);
}
