/** The practice interface over HTTP, all of it JSON: phones, families, a clock, and what the page needs beside them. */
import { Router } from 'express';
import { DateTime } from 'luxon';
import type { Line, Seeds } from '#src/line/line.ts';
import type { Nurse } from '#src/rota/rota.ts';
import { notFound, onlyMethods } from './answers.ts';
import { createGate } from './gate.ts';
import { phonesRouter } from './practicePhones.ts';
import { worldRouter } from './practiceWorld.ts';
import type { Ticker } from './ticker.ts';

export interface PracticeParts {
  readonly line: Line;
  /** What a reset goes back to. */
  readonly seeds: Seeds;
  /** The nurses whose phones the page offers, in the order a page climbs. */
  readonly nurses: readonly Nurse[];
  /** The site's IANA time zone. */
  readonly zone: string;
  readonly emergencyNumber: string;
  /** Whether a clinician has signed the protocol as it is. */
  readonly protocol: 'signed' | 'unsigned';
  /** The state map of the machines, as the page draws it. */
  readonly stateMap: () => unknown;
  readonly ticker: Ticker;
}

/** Everything under `/practice`. Errors are thrown as `Refused`; the server turns them into JSON. */
export function practiceRouter(parts: PracticeParts): Router {
  const { line, seeds, nurses, zone, emergencyNumber, protocol, stateMap, ticker } = parts;
  const gate = createGate();
  const iso = (atMs: number) => DateTime.fromMillis(atMs, { zone }).toISO();
  const router = Router();

  router.use((_request, response, next) => {
    response.set('Cache-Control', 'no-store');
    next();
  });
  router.use('/phones', phonesRouter(line, gate, ticker, emergencyNumber));
  router.use(worldRouter(line, seeds, gate, ticker, iso));

  router
    .route('/state')
    .get(async (_request, response) => {
      const [now, pause] = [await line.now(), await line.pause()];
      const paused = pause === null ? null : { at: iso(pause.atMs), by: pause.by, why: pause.why };
      response.json({ now: iso(now), zone, families: await line.families(), nurses, protocol, paused });
    })
    .all(onlyMethods('GET', 'HEAD'));

  router
    .route('/map')
    .get((_request, response) => {
      response.json(stateMap());
    })
    .all(onlyMethods('GET', 'HEAD'));

  router.route('/events').get(ticker.listen).all(onlyMethods('GET', 'HEAD'));

  router.use(notFound);
  return router;
}
