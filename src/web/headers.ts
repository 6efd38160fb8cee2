/** Headers of every answer: the page runs its own files only, in no frame, and tells nobody where it was. */
import type { RequestHandler } from 'express';
import { Refused } from './refusal.ts';

const policy = [
  "default-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
];

export const strictHeaders: RequestHandler = (_request, response, next) => {
  response.set({
    'Content-Security-Policy': policy.join('; '),
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'Permissions-Policy': 'camera=(), geolocation=(), microphone=()',
    'Referrer-Policy': 'no-referrer',
    'X-Content-Type-Options': 'nosniff',
    'X-Frame-Options': 'DENY',
  });
  next();
};

/** Beside those, on a live line: nothing of it is kept on the way, and whoever came by https comes by https again (RFC 6797). */
export const liveHeaders: RequestHandler = (_request, response, next) => {
  response.set({ 'Cache-Control': 'no-store', 'Strict-Transport-Security': 'max-age=31536000' });
  next();
};

/** A body too large by far; a smaller one that is too large is read to its end, so that its sender hears the refusal. */
const hugeBytes = 10_000_000;

/** Refuses a body by what its header says of it, before any of it comes. */
export const refuseHuge: RequestHandler = (request, response, next) => {
  if (Number(request.get('Content-Length') ?? 0) > hugeBytes) {
    response.set('Connection', 'close');
    throw new Refused('body-too-large');
  }
  next();
};
