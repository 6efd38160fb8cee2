/** A small practice line for the page's tests: the page's files and the HTTP interface's shapes over a fake line. */
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { extname } from 'node:path';
import { stateMap } from '#machines/stateMap.ts';
import { createFakeLine, type Media } from './fakeLine.ts';

const pageFolder = new URL('../../src/web/page/', import.meta.url);
const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};

interface Asked {
  readonly now?: string;
  readonly body?: string;
  readonly id?: string;
  readonly media?: readonly Media[];
  readonly advance?: string;
  readonly to?: string;
}

/** Starts it on a free port. `refuse` makes every later request under /practice fail with this message until unset. */
export async function startFake() {
  const line = createFakeLine();
  line.reset(Date.parse('2027-03-06T02:10:00-05:00'));
  const listeners = new Set<ServerResponse>();
  let refusal: string | null = null;

  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://fake').pathname);
    if (path === '/practice/events') return listen(response);
    const answering = path.startsWith('/practice/') ? practice(request, path) : null;
    if (answering) return void answering.then((answer) => json(response, answer));
    const media = line.media(path);
    if (media) return void response.writeHead(200, { 'content-type': media.type }).end(media.bytes);
    return void page(path, response);
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('a TCP server has a port');

  function listen(response: ServerResponse) {
    response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
    response.write(': here\n\n');
    listeners.add(response);
    response.on('close', () => listeners.delete(response));
  }

  function changed() {
    for (const listener of listeners) listener.write('data: changed\n\n');
  }

  async function practice(request: IncomingMessage, path: string): Promise<{ status: number; body: unknown }> {
    if (refusal !== null) return { status: 503, body: { error: { code: 'refused', message: refusal } } };
    const [, , first, number = '', last] = path.split('/');
    if (request.method === 'GET') return { status: 200, body: read(first ?? '', number, last ?? '') };
    const asked = JSON.parse(await bodyOf(request));
    const body = write(first ?? '', number, asked);
    changed();
    return { status: 200, body };
  }

  function read(first: string, number: string, last: string): unknown {
    if (first === 'state') return line.state();
    if (first === 'map') return stateMap();
    return last === 'case' ? { case: line.report(number) } : { texts: line.texts(number) };
  }

  function write(first: string, number: string, asked: Asked): unknown {
    if (first === 'reset') return line.reset(Date.parse(asked.now ?? ''));
    if (first === 'phones') return { sent: line.hear(number, asked.body ?? '', asked.id ?? randomUUID(), asked.media) };
    const minutes: Record<string, number> = { PT5M: 5, PT1H: 60 };
    const step = asked.advance;
    return line.moveTo(step ? line.now() + (minutes[step] ?? 0) * 60_000 : Date.parse(asked.to ?? ''));
  }

  return {
    base: `http://127.0.0.1:${address.port}`,
    refuse(message: string | null) {
      refusal = message;
    },
    async stop() {
      for (const listener of listeners) listener.end();
      server.close();
      server.closeAllConnections();
      await once(server, 'close');
    },
  };
}

async function bodyOf(request: IncomingMessage) {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part);
  return Buffer.concat(parts).toString() || '{}';
}

function json(response: ServerResponse, { status, body }: { status: number; body: unknown }) {
  response.writeHead(status, { 'content-type': 'application/json' });
  response.end(JSON.stringify(body ?? {}));
}

async function page(path: string, response: ServerResponse) {
  const name = path === '/' ? 'index.html' : path.slice(1);
  const content = await readFile(new URL(name, pageFolder)).catch(() => null);
  const type = types[extname(name)] ?? 'text/plain';
  response.writeHead(content ? 200 : 404, { 'content-type': type, 'content-security-policy': "default-src 'self'" });
  response.end(content);
}
