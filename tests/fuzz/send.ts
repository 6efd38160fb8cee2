/** Sends a request as bytes, so that no client mends it on the way. */
import { Agent, request } from 'node:http';
import { connect } from 'node:net';
import type { Answer } from './judge.ts';
import type { Probe } from './probe.ts';

const patienceMs = 30_000;

/** Keeps its connections, as a hundred thousand of them would use up the ports. */
export function createSender(lanes: number) {
  const agent = new Agent({ keepAlive: true, maxSockets: lanes });
  return {
    send: (probe: Probe, url: string): Promise<Answer> =>
      probe.raw === undefined ? sendRequest(agent, probe, url) : sendRaw(probe.raw, url),
    close: () => agent.destroy(),
  };
}

function sendRequest(agent: Agent, { method, path, headers, body }: Probe, url: string): Promise<Answer> {
  const { hostname, port } = new URL(url);
  const plain = path.replaceAll(/[^\x21-\xff]/g, encodeURIComponent);
  const length = body === null ? {} : { 'content-length': String(body.length) };
  return new Promise((resolve, reject) => {
    const asking = request({
      agent,
      hostname,
      port,
      method,
      path: plain,
      headers: { ...headers, ...length },
      timeout: patienceMs,
    });
    asking.on('response', (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('error', () => resolve(nothing));
      response.on('end', () => {
        const body = Buffer.concat(chunks).toString('utf8');
        resolve({ status: response.statusCode ?? null, headers: response.rawHeaders.join('\n'), body });
      });
    });
    // A refusal may come, and the connection go, while a megabyte is still on its way.
    asking.on('error', (error: NodeJS.ErrnoException) => {
      const cut = error.code === 'EPIPE' || error.code === 'ECONNRESET';
      if (cut && ((body?.length ?? 0) > 100_000 || method === 'CONNECT' || method === 'BREW'))
        resolve({ ...nothing, status: 413 });
      else if (cut || error.code === 'ETIMEDOUT') resolve(nothing);
      else reject(error);
    });
    asking.on('timeout', () => asking.destroy(Object.assign(new Error('silence'), { code: 'ETIMEDOUT' })));
    asking.on('connect', (response, socket) => {
      socket.destroy();
      resolve({ ...nothing, status: response.statusCode ?? null });
    });
    asking.end(body ?? undefined);
  });
}

const nothing: Answer = { status: null, headers: '', body: '' };

function sendRaw(bytes: Buffer, url: string): Promise<Answer> {
  const { hostname, port } = new URL(url);
  return new Promise((resolve) => {
    const socket = connect(Number(port), hostname);
    const chunks: Buffer[] = [];
    socket.on('data', (chunk: Buffer) => chunks.push(chunk));
    socket.on('error', () => undefined);
    socket.on('close', () => {
      const text = Buffer.concat(chunks).toString('utf8');
      const [head = '', ...rest] = text.split('\r\n\r\n');
      const status = /^HTTP\/1\.1 (\d{3})/.exec(head)?.[1];
      resolve({ status: status === undefined ? null : Number(status), headers: head, body: rest.join('') });
    });
    socket.end(bytes);
  });
}
