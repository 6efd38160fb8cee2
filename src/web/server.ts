/** The two HTTP faces of the house, as express applications without a socket: practice, and live. */
import { fileURLToPath } from 'node:url';
import express, { type Express, type Router } from 'express';
import { jsonErrors, notFound } from './answers.ts';
import { type CarrierParts, carrierHooks } from './carrierHooks.ts';
import { liveHeaders, refuseHuge, strictHeaders } from './headers.ts';
import { mediaRouter } from './media.ts';
import { type PracticeParts, practiceRouter } from './practice.ts';
import { type WatchParts, watchRouter } from './watching.ts';

export interface CommonParts {
  /** Resolves once the database answers. */
  readonly alive: () => Promise<void>;
  /** Hears of faults of our own. */
  readonly report: (fault: unknown) => void;
}

const page = fileURLToPath(new URL('./page/', import.meta.url));

/** The practice line: the page at `/`, its interface under `/practice`. */
export function practiceApp(parts: CommonParts & PracticeParts): Express {
  return app(parts, (router) => {
    router.use('/practice', practiceRouter(parts));
    router.use('/media', mediaRouter(parts.line));
    router.use(express.static(page, { redirect: false }));
  });
}

/** The live line: the carrier's webhooks, and nothing that tells a stranger anything. */
export function liveApp(parts: CommonParts & CarrierParts & WatchParts): Express {
  return app(parts, (router) => {
    router.use(liveHeaders);
    router.use('/carrier', carrierHooks(parts));
    router.use('/media', mediaRouter(parts.line));
    router.use(watchRouter(parts));
    router.get('/', (_request, response) => {
      response
        .type('text/plain')
        .send('Nightjar: a line for text messages. In an emergency call the emergency number.\n');
    });
  });
}

function app({ alive, report }: CommonParts, mount: (router: Router) => void): Express {
  const server = express();
  server.disable('x-powered-by');
  server.disable('etag');
  server.use(strictHeaders, refuseHuge);
  server.get('/healthz', async (_request, response) => {
    const answers = await alive().then(
      () => true,
      (fault: unknown) => {
        report(fault);
        return false;
      },
    );
    response.status(answers ? 200 : 503).json({ ok: answers });
  });
  mount(server);
  server.use(notFound);
  server.use(jsonErrors(report));
  return server;
}
