/** Puts an express application on a port, and takes it off again. */
import { createServer, type Server } from 'node:http';
import type { Express } from 'express';
import { PortRefused } from '#src/errors.ts';

export interface Socket {
  readonly url: string;
  /** Takes no new request, lets running ones end, and cuts off what has not ended after a few seconds. */
  close(): Promise<void>;
}

const graceMs = 4000;

/** How long a request may take to come and how much it may bring before its body, so that slow and huge ones hold nothing. */
export interface Limits {
  readonly headersMs: number;
  /** Headers and body. */
  readonly requestMs: number;
  /** How often connections are looked at. */
  readonly lookMs: number;
  readonly headerBytes: number;
}

/** The carrier itself waits 15 s for an answer, so nothing it sends takes longer to come. Common practice, no source. */
const usual: Limits = { headersMs: 10_000, requestMs: 15_000, lookMs: 1_000, headerBytes: 16_384 };

/** Listens on `host`; port 0 is any free one. Throws `PortRefused`. */
export async function listen(app: Express, host: string, port: number, limits = usual): Promise<Socket> {
  const server = createServer(
    {
      headersTimeout: limits.headersMs,
      requestTimeout: limits.requestMs,
      connectionsCheckingInterval: limits.lookMs,
      maxHeaderSize: limits.headerBytes,
    },
    app,
  );
  await new Promise<void>((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => reject(new PortRefused(host, port, error.code ?? '')));
    server.listen(port, host, resolve);
  });
  return { url: urlOf(server), close: () => close(server) };
}

function urlOf(server: Server): string {
  const address = server.address();
  if (typeof address !== 'object' || address === null) throw new TypeError('a listening server has an address');
  const host = address.family === 'IPv6' ? `[${address.address}]` : address.address;
  return `http://${host}:${address.port}`;
}

async function close(server: Server): Promise<void> {
  const cutOff = setTimeout(() => server.closeAllConnections(), graceMs);
  await new Promise<void>((resolve) => server.close(() => resolve()));
  clearTimeout(cutOff);
}
