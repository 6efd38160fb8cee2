/** The practice world: back to the seeds, enrol a family, move the clock. */
import { randomUUID } from 'node:crypto';
import { Router } from 'express';
import type { Line, Seeds } from '#src/line/line.ts';
import { onlyMethods } from './answers.ts';
import type { Gate } from './gate.ts';
import { onlyJson, readJson } from './jsonBody.ts';
import { Refused } from './refusal.ts';
import { clockShape, familyShape, mostAdvanceDays, parseBody, parseNumber, resetShape } from './shapes.ts';
import type { Ticker } from './ticker.ts';

const dayMs = 24 * 60 * 60 * 1000;

/** Routes straight under `/practice`. `iso` writes epoch ms with the site's offset. */
export function worldRouter(
  line: Line,
  seeds: Seeds,
  gate: Gate,
  ticker: Ticker,
  iso: (atMs: number) => string | null,
): Router {
  const router = Router();

  router
    .route('/reset')
    .post(onlyJson, readJson, async (request, response) => {
      const { now } = parseBody(resetShape, request.body);
      await gate.alone(() => line.reset(now, seeds));
      ticker.tick();
      response.json({ now: iso(now) });
    })
    .all(onlyMethods('POST'));

  router
    .route('/families/:number')
    .put(onlyJson, readJson, async (request, response) => {
      const number = parseNumber(request.params.number);
      const family = parseBody(familyShape, request.body);
      await gate.together(() => line.enrol(number, family));
      ticker.tick();
      response.json({ enrolled: number });
    })
    .all(onlyMethods('PUT'));

  router
    .route('/clock')
    .post(onlyJson, readJson, async (request, response) => {
      const move = parseBody(clockShape, request.body);
      const cause = randomUUID();
      const now = await gate.alone(async () => {
        const toMs = target(move, await line.now());
        await line.advance(toMs, cause);
        return toMs;
      });
      ticker.tick();
      response.json({ now: iso(now), sent: await line.sentBecauseOf(cause) });
    })
    .all(onlyMethods('POST'));

  return router;
}

/** Where a move of the clock ends, epoch ms. Throws `Refused` for a move back or too far. */
function target(move: { readonly advance: number } | { readonly to: number }, nowMs: number): number {
  const toMs = 'to' in move ? move.to : nowMs + move.advance;
  if (toMs < nowMs) throw new Refused('clock-backward');
  if (toMs - nowMs > mostAdvanceDays * dayMs) throw new Refused('clock-too-far');
  return toMs;
}
