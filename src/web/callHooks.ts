/**
 * The webhooks of a call to the line: it came in, the next person is to be rung, what she hears, her key. Whatever fails, the
 * caller hears the emergency number, and whoever pressed the key is connected.
 */
import { randomUUID } from 'node:crypto';
import { type Response, Router } from 'express';
import { z } from 'zod';
import { firstAnswer, keyAnswer, nextAnswer, staticAnswer, type Voice, whisperAnswer } from '#src/carrier/voice.ts';
import type { Line } from '#src/line/line.ts';

export interface CallHookParts {
  readonly line: Pick<Line, 'hearCall' | 'keptCall' | 'takeCall'>;
  readonly publicUrl: string;
  readonly emergencyNumber: string;
  readonly lineNumber: string;
  readonly report: (fault: unknown) => void;
}

/** An id the store can keep. */
const callId = z
  .string()
  .min(1)
  .max(200)
  .refine((id) => id.isWellFormed() && !id.includes('\0'));
/** A number that is withheld is a word, or nothing. */
const callShape = z.object({
  CallSid: callId,
  From: z
    .string()
    .regex(/^\+[0-9]{7,15}$/)
    .nullable()
    .catch(null),
});
/** What we put into the address ourselves; the signature covers it. */
const placeShape = z.object({ call: callId, place: z.coerce.number().int().min(0).max(20) });
const keyShape = z.object({ Digits: z.string().max(20).catch('') });

/** Routes beside the others of the carrier, behind its signature. */
export function callHooks({ line, publicUrl, emergencyNumber, lineNumber, report }: CallHookParts): Router {
  const router = Router();
  const voiceOf = (call: string): Voice => {
    const at = (what: string) => (place: number) =>
      `${publicUrl}/carrier/call/${what}?call=${encodeURIComponent(call)}&place=${place}`;
    return { lineNumber, to: { next: at('next'), whisper: at('whisper'), key: at('key') } };
  };

  router.post('/call', async (request, response) => {
    const answer = async () => {
      const { CallSid: id, From: from } = callShape.parse(request.body);
      const plan = await line.hearCall({ from, id, cause: randomUUID() });
      return plan === null ? staticAnswer(emergencyNumber) : firstAnswer(plan, voiceOf(id));
    };
    await send(response, answer, staticAnswer(emergencyNumber));
  });

  router.post('/call/next', async (request, response) => {
    const answer = async () => {
      const { call, place } = placeShape.parse(request.query);
      const kept = await line.keptCall(call);
      if (kept === null) return staticAnswer(emergencyNumber);
      return kept.connected ? keyAnswer(false) : nextAnswer(kept.plan, place, voiceOf(call));
    };
    await send(response, answer, staticAnswer(emergencyNumber));
  });

  router.post('/call/whisper', async (request, response) => {
    const answer = async () => {
      const { call, place } = placeShape.parse(request.query);
      const kept = await line.keptCall(call);
      return kept === null ? keyAnswer(false) : whisperAnswer(kept.plan, place, voiceOf(call));
    };
    await send(response, answer, keyAnswer(false));
  });

  router.post('/call/key', async (request, response) => {
    const { Digits: digit } = keyShape.parse(request.body);
    const answer = async () => {
      const { call: id, place } = placeShape.parse(request.query);
      return keyAnswer(await line.takeCall({ id, place, digit, cause: randomUUID() }));
    };
    await send(response, answer, keyAnswer(digit === '1'));
  });

  /** A malformed request is answered like a fault, and is none of ours. */
  async function send(response: Response, answer: () => Promise<string>, otherwise: string): Promise<void> {
    const said = await answer().catch((fault: unknown) => {
      if (!(fault instanceof z.ZodError)) report(fault);
      return otherwise;
    });
    response.type('text/xml').send(said);
  }

  return router;
}
