/** Tells open practice pages that something changed, by Server-Sent Events that carry a sequence number and nothing else. */
import type { RequestHandler, Response } from 'express';

export interface Ticker {
  /** Answers a page that listens; its first event comes at once, so a page that reconnects refetches. */
  readonly listen: RequestHandler;
  /** Something changed. */
  tick(): void;
  /** Ends every open stream, so that the server can close. */
  end(): void;
}

export function createTicker(): Ticker {
  const pages = new Set<Response>();
  let sequence = 0;
  const tell = (page: Response) => page.write(`data: {"sequence":${sequence}}\n\n`);
  return {
    listen(_request, response) {
      response.set({ 'Content-Type': 'text/event-stream', 'Cache-Control': 'no-store' });
      response.flushHeaders();
      pages.add(response);
      response.on('close', () => pages.delete(response));
      tell(response);
    },
    tick() {
      sequence += 1;
      for (const page of pages) tell(page);
    },
    end() {
      for (const page of pages) page.end();
    },
  };
}
