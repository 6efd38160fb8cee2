/** The pictures and voice notes of families, by the link a nurse was sent: shown by GET alone, kept by nobody on the way. */
import { Router } from 'express';
import type { Line } from '#src/line/line.ts';
import { onlyMethods } from './answers.ts';
import { Refused } from './refusal.ts';

export function mediaRouter(line: Pick<Line, 'openMedia'>): Router {
  const router = Router();
  router
    .route('/:token')
    .head(onlyMethods('GET'))
    .get(async (request, response) => {
      const media = await line.openMedia(request.params.token);
      if (media === null) throw new Refused('not-found');
      response.set({
        'Cache-Control': 'no-store',
        'Content-Disposition': `inline; filename="${media.type.startsWith('audio/') ? 'voice-note' : 'picture'}"`,
        // Whatever is in it, it runs nothing and loads nothing.
        'Content-Security-Policy': "default-src 'none'; sandbox",
      });
      response.type(media.type).send(media.bytes);
    })
    .all(onlyMethods('GET'));
  return router;
}
