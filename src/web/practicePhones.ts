/** The practice phones: send a text from one, ring the line, press a key in its call, read its thread, see its newest case. */
import { randomUUID } from 'node:crypto';
import { Router } from 'express';
import { dataAddress } from '#src/carrier/practice.ts';
import { staticWords } from '#src/carrier/voice.ts';
import type { Line } from '#src/line/line.ts';
import { onlyMethods } from './answers.ts';
import type { Gate } from './gate.ts';
import { onlyJson, readJson, readLargeJson } from './jsonBody.ts';
import { Refused } from './refusal.ts';
import { callShape, keyShape, mostCharacters, parseBody, parseNumber, textShape } from './shapes.ts';
import type { Ticker } from './ticker.ts';

/** Routes under `/practice/phones`; a nurse's phone is a phone like any other. */
export function phonesRouter(line: Line, gate: Gate, ticker: Ticker, emergencyNumber: string): Router {
  const router = Router();

  router
    .route('/:number/texts')
    .get(async (request, response) => {
      response.json({ texts: await line.thread(parseNumber(request.params.number)) });
    })
    .post(onlyJson, readLargeJson, async (request, response) => {
      const from = parseNumber(request.params.number);
      const { body, id = randomUUID(), media } = parseBody(textShape, request.body);
      if ([...body].length > mostCharacters) throw new Refused('text-too-long');
      // A cause of its own for every request, so that a repeated id finds nothing sent because of it.
      const cause = randomUUID();
      await gate.together(async () => {
        await line.hear({ from, body, id, media: media.map(dataAddress), cause });
        await line.settle(cause);
      });
      ticker.tick();
      response.json({ sent: await line.sentBecauseOf(cause) });
    })
    .all(onlyMethods('GET', 'HEAD', 'POST'));

  router
    .route('/:number/calls')
    .post(onlyJson, readJson, async (request, response) => {
      const from = parseNumber(request.params.number);
      const { id = randomUUID() } = parseBody(callShape, request.body);
      const cause = randomUUID();
      const plan = await gate.together(async () => {
        const settled = await line.hearCall({ from, id, cause });
        await line.settle(cause);
        return settled;
      });
      ticker.tick();
      response.json({
        sent: await line.sentBecauseOf(cause),
        spoken: plan?.spoken ?? staticWords(emergencyNumber),
        rings: plan === null ? [] : [...plan.rings, ...(plan.through === null ? [] : [plan.through])],
      });
    })
    .all(onlyMethods('POST'));

  router
    .route('/:number/keys')
    .post(onlyJson, readJson, async (request, response) => {
      const number = parseNumber(request.params.number);
      const { digit } = parseBody(keyShape, request.body);
      const cause = randomUUID();
      const answer = await gate.together(async () => {
        const goesOn = await line.pressInNewestCall({ number, digit, cause });
        await line.settle(cause);
        return goesOn;
      });
      ticker.tick();
      response.json({ sent: await line.sentBecauseOf(cause), rings: answer.go === 'ring' ? [answer.number] : [] });
    })
    .all(onlyMethods('POST'));

  router
    .route('/:number/case')
    .get(async (request, response) => {
      response.json({ case: await line.newestCase(parseNumber(request.params.number)) });
    })
    .all(onlyMethods('GET', 'HEAD'));

  return router;
}
