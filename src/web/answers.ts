/** Answers that are no result: whatever goes wrong with a request becomes one JSON object with a code. */
import type { ErrorRequestHandler, RequestHandler } from 'express';
import { z } from 'zod';
import { ClockBackward, LineStopping } from '#src/errors.ts';
import { FamilyPhoneTaken } from '#src/families/errors.ts';
import { type RefusalCode, Refused } from './refusal.ts';

/** How the body parser names what it could not take. */
const parserCodes = new Map<string, RefusalCode>([
  ['entity.parse.failed', 'bad-json'],
  ['entity.too.large', 'body-too-large'],
  ['charset.unsupported', 'not-json'],
  ['encoding.unsupported', 'not-json'],
]);
/** A body that does not unpack has a status and no type. */
const parserError = z.object({ type: z.string().default(''), status: z.number().min(400).max(499) });

/** The refusal an error of the framework amounts to, or null for a fault of our own. */
function refusalFor(error: unknown): Refused | null {
  if (error instanceof Refused) return error;
  if (error instanceof URIError) return new Refused('bad-escape');
  if (error instanceof ClockBackward) return new Refused('clock-backward');
  if (error instanceof FamilyPhoneTaken) return new Refused('phone-taken');
  if (error instanceof LineStopping) return new Refused('stopping');
  const parsed = parserError.safeParse(error);
  return parsed.success ? new Refused(parserCodes.get(parsed.data.type) ?? 'bad-request') : null;
}

/** Refuses what no route took. */
export const notFound: RequestHandler = () => {
  throw new Refused('not-found');
};

/** Closes a route: any method not named before it. `allowed` goes into the `Allow` header. */
export function onlyMethods(...allowed: readonly string[]): RequestHandler {
  return (_request, response) => {
    response.set('Allow', allowed.join(', '));
    throw new Refused('method-not-allowed');
  };
}

/** Turns every error into `{"error":{"code","message"}}`; `report` hears of faults of our own, never of bad input. */
export function jsonErrors(report: (fault: unknown) => void): ErrorRequestHandler {
  return (error: unknown, _request, response, next) => {
    const refusal = refusalFor(error);
    if (refusal === null) report(error);
    if (response.headersSent) {
      next(error);
      return;
    }
    const { status, code, message } = refusal ?? new Refused('broken');
    response.status(status).json({ error: { code, message } });
  };
}
