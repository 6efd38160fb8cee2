/** The carrier's webhooks: a text came in, a message of ours fared so or so, somebody rang. Each is signed or refused. */
import { randomUUID } from 'node:crypto';
import { type RequestHandler, Router, urlencoded } from 'express';
import twilio from 'twilio';
import { z } from 'zod';
import { signedByCarrier } from '#src/carrier/signature.ts';
import { fateOfStatus } from '#src/carrier/status.ts';
import type { KeyAnswer } from '#src/line/keys.ts';
import type { Line } from '#src/line/line.ts';
import { callHooks } from './callHooks.ts';

export interface CarrierParts {
  readonly line: Line;
  /** Where the carrier reaches us, without a slash at the end: signatures are made over it, never over the `Host` header. */
  readonly publicUrl: string;
  /** The account's token, and the one before it while they change. */
  readonly tokens: readonly string[];
  /** Said to somebody who rings the line, as the site writes it. */
  readonly emergencyNumber: string;
  /** The line's own number: all that either side of a call put through sees. */
  readonly lineNumber: string;
}

interface Reported {
  /** Hears of faults of our own. */
  readonly report: (fault: unknown) => void;
}

const textShape = z.object({
  MessageSid: z.string().min(1).max(200),
  From: z.string().regex(/^\+[0-9]{7,15}$/),
  Body: z.string().default(''),
  NumMedia: z.coerce.number().int().min(0).default(0),
});
const mediaMost = 10;
const address = z.string().max(2000).catch('');

/** Where each picture is; one without an address is still one. */
function mediaIn(form: Readonly<Record<string, unknown>>, count: number): string[] {
  return Array.from({ length: Math.min(count, mediaMost) }, (_, place) => address.parse(form[`MediaUrl${place}`]));
}

const keyShape = z.object({
  message: z.string(),
  To: z.string().regex(/^\+[0-9]{7,15}$/),
  Digits: z.string().max(20),
  CallSid: z.string().min(1).max(200),
});

/** An id the store can keep. */
const carrierId = z
  .string()
  .max(200)
  .refine((id) => id.isWellFormed() && !id.includes('\0'))
  .optional();

/** The form names the carrier's message or call; `message` in the address is our own id, put there when it was sent. */
const statusShape = z
  .object({
    message: z.string(),
    MessageSid: carrierId,
    MessageStatus: z.string().optional(),
    CallSid: carrierId,
    CallStatus: z.string().optional(),
  })
  .transform((form) => ({
    message: form.message,
    carrierId: form.MessageSid ?? form.CallSid ?? null,
    status: form.MessageStatus ?? form.CallStatus,
  }));

/**
 * The router under `/carrier`. A text is answered empty once it is committed: what the line says leaves by its outbox, at once. A
 * webhook that fails answers 500, so that the carrier goes to its fallback address.
 */
export function carrierHooks({
  line,
  publicUrl,
  tokens,
  emergencyNumber,
  lineNumber,
  report,
}: CarrierParts & Reported): Router {
  const router = Router();
  router.use(urlencoded({ extended: false }), signed(publicUrl, tokens));

  router.post('/text', async (request, response) => {
    const text = textShape.safeParse(request.body);
    if (!text.success) {
      response.status(400).end();
      return;
    }
    const { MessageSid, From, Body, NumMedia } = text.data;
    const media = mediaIn(request.body, NumMedia);
    await line.hear({ from: From, body: Body, id: MessageSid, media, cause: randomUUID() });
    response.type('text/xml').send(new twilio.twiml.MessagingResponse().toString());
  });

  router.post('/status', async (request, response) => {
    const news = statusShape.safeParse({ ...request.body, message: request.query.message });
    if (!news.success) {
      response.status(400).end();
      return;
    }
    const { message, status, carrierId } = news.data;
    const fate = fateOfStatus(status);
    if (fate !== null) await line.noteFate(message, fate, carrierId);
    response.status(204).end();
  });

  router.post('/key', async (request, response) => {
    const key = keyShape.safeParse({ ...request.body, message: request.query.message });
    if (!key.success) {
      response.status(400).end();
      return;
    }
    const { message, To, Digits, CallSid } = key.data;
    const pressed = { messageId: message, number: To, digit: Digits, id: CallSid, cause: randomUUID() };
    response.type('text/xml').send(goesOn(await line.pressKey(pressed), lineNumber));
  });

  router.use(callHooks({ line, publicUrl, emergencyNumber, lineNumber, report }));

  return router;
}

function signed(publicUrl: string, tokens: readonly string[]): RequestHandler {
  return (request, response, next) => {
    const form = z.record(z.string(), z.unknown()).catch({}).parse(request.body);
    const genuine = signedByCarrier(tokens, request.get('X-Twilio-Signature'), publicUrl + request.originalUrl, form);
    if (genuine) next();
    else response.status(403).end();
  };
}

/** What the call goes on with after a key. Whoever is put through sees the line's number, and so does the other side. */
function goesOn(answer: KeyAnswer, lineNumber: string): string {
  const voice = new twilio.twiml.VoiceResponse();
  if (answer.go === 'ring') voice.dial({ callerId: lineNumber, answerOnBridge: true }, answer.number);
  else if (answer.go === 'taken') voice.say('Thank you. Read your texts now.');
  else voice.hangup();
  return voice.toString();
}
