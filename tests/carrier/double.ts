/**
 * A double of the carrier on this machine: enough of its Messages and Calls resources to drive the official library.
 * Shapes follow the carrier's public REST reference (2010-04-01); it keeps what it was sent and misbehaves on request.
 */
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { text } from 'node:stream/consumers';
import twilio from 'twilio';

export const accountSid = `AC${'0'.repeat(32)}`;
export const authToken = 'not-a-secret';
/** The line's own number at the double. */
export const lineNumber = '+12025550100';

/** What the next request meets: an answer with a status and a code of the carrier, or trouble on the way. */
export type Trouble =
  | { readonly status: number; readonly code: number | null }
  | 'hang'
  | 'reset'
  /** Taken by the carrier, but the answer never comes back. */
  | 'taken-then-reset';

export interface Made {
  readonly resource: 'Messages' | 'Calls';
  readonly form: Readonly<Record<string, string>>;
}

/** What a test may give the double. */
export interface Ways {
  /** Its clock, epoch ms; real time unless given. */
  readonly nowMs?: () => number;
  /** Called when somebody asks it to make something: before it is made, and once it is made but not answered. */
  readonly onMake?: (when: 'asked' | 'made') => void;
}

/** A text somebody sent to the line's number, as the carrier's log has it. */
export interface Inbound {
  readonly sid: string;
  readonly from: string;
  readonly body: string;
  readonly atMs: number;
}

export interface Kept {
  readonly type: string;
  readonly bytes: Buffer;
  readonly at?: string;
}

export interface Double {
  readonly made: Made[];
  /** The carrier's log of texts to the line, in the order they came. */
  readonly inbound: Inbound[];
  /** What became of what was made, where it is not `queued`: by its place. */
  readonly fates: Map<number, string>;
  /** The pictures it has, by their id; `at` is where it sends on to. */
  readonly media: Map<string, Kept>;
  /** Its address. */
  readonly url: string;
  meetNext(trouble: Trouble): void;
  /** The library's way to the double; a request with no answer is given up after `timeoutMs`. */
  client(timeoutMs: number): InstanceType<typeof twilio.RequestClient>;
  close(): Promise<void>;
}

interface Row extends Made {
  readonly sid: string;
  readonly createdAt: Date;
}

const path = /^\/2010-04-01\/Accounts\/(?<account>AC0+)\/(?<resource>Messages|Calls)\.json(?:\?|$)/;

/** A picture behind the account, or where that sends on to, without it. */
const pictures = /^(?:\/2010-04-01\/Accounts\/AC0+\/Messages\/\w+\/Media|\/(?<host>cdn))\/(?<id>\w+)$/;

const basic = `Basic ${Buffer.from(`${accountSid}:${authToken}`).toString('base64')}`;

/** The account's secret is wanted at the first place and must not be shown at the second. */
function sendPicture(request: IncomingMessage, response: ServerResponse, sentOn: boolean, kept: Kept | undefined) {
  const { authorization } = request.headers;
  if (sentOn ? authorization !== undefined : authorization !== basic) return send(response, 401, refusal(401, 20003));
  if (kept === undefined) return send(response, 404, refusal(404, 20404));
  if (!sentOn && kept.at !== undefined) return response.writeHead(307, { Location: kept.at }).end();
  response.writeHead(200, { 'Content-Type': kept.type });
  response.end(kept.bytes);
}

export async function startDouble({ nowMs = Date.now, onMake = () => {} }: Ways = {}): Promise<Double> {
  const made: Row[] = [];
  const inbound: Inbound[] = [];
  const fates = new Map<number, string>();
  const media = new Map<string, Kept>();
  let trouble: Trouble | null = null;

  async function answer(request: IncomingMessage, response: ServerResponse) {
    const picture = pictures.exec(request.url ?? '')?.groups;
    if (picture !== undefined)
      return sendPicture(request, response, picture.host === 'cdn', media.get(picture.id ?? ''));
    const resource = path.exec(request.url ?? '')?.groups?.resource;
    if (resource !== 'Messages' && resource !== 'Calls') return send(response, 404, refusal(404, 20404));
    if (request.headers.authorization !== basic) return send(response, 401, refusal(401, 20003));
    const form = Object.fromEntries(new URLSearchParams(await text(request)));
    const met = trouble;
    trouble = null;
    if (met === 'hang') return;
    if (met === 'reset') return request.socket.resetAndDestroy();
    if (typeof met === 'object' && met !== null) return send(response, met.status, refusal(met.status, met.code));
    if (request.method === 'GET') {
      const query = new URL(request.url ?? '', 'http://double').searchParams;
      const rows = made.map((row, place) => ({ row, status: fates.get(place) ?? 'queued' }));
      const out = rows.filter(({ row }) => row.resource === resource && row.form.To === query.get('To'));
      const since = Date.parse(query.get('DateSent>') ?? '');
      const listed =
        resource === 'Messages' && query.get('To') === lineNumber
          ? inbound.filter(({ atMs }) => !(atMs < since)).map(describedInbound)
          : out.map(({ row, status }) => described(row, status));
      return send(response, 200, page(resource, listed.reverse()));
    }
    onMake('asked');
    const sid = `SM${String(made.length).padStart(32, '0')}`;
    const row: Row = { resource, form, sid, createdAt: new Date(nowMs()) };
    made.push(row);
    onMake('made');
    if (met === 'taken-then-reset') return request.socket.resetAndDestroy();
    send(response, 201, described(row, 'queued'));
  }

  const server = createServer((request, response) => void answer(request, response));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (typeof address !== 'object' || address === null) throw new Error('no port');
  const base = `http://127.0.0.1:${address.port}`;

  return {
    made,
    inbound,
    fates,
    media,
    url: base,
    meetNext(next) {
      trouble = next;
    },
    client: (timeoutMs) => clientTo(base, timeoutMs),
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** The library's way to the double at `base`; a request with no answer is given up after `timeoutMs`. */
export function clientTo(base: string, timeoutMs: number): InstanceType<typeof twilio.RequestClient> {
  return new LocalClient(base, timeoutMs);
}

/** `fetch` with the carrier's two hosts at the double, and no other host anywhere. */
export function fetchTo(base: string): typeof fetch {
  return async (input, init) => {
    const address = String(input)
      .replace('https://api.twilio.com', base)
      .replace('https://media.twiliocdn.com', `${base}/cdn`);
    if (!address.startsWith(base)) throw new Error('a request left the machine');
    return fetch(address, init);
  };
}

/** The library's own client, its requests sent to another host. */
class LocalClient extends twilio.RequestClient {
  private readonly base: string;

  constructor(base: string, timeoutMs: number) {
    super({ timeout: timeoutMs });
    this.base = base;
  }

  override request: InstanceType<typeof twilio.RequestClient>['request'] = (options) =>
    super.request({ ...options, uri: options.uri.replace('https://api.twilio.com', this.base) });
}

function send(response: ServerResponse, status: number, body: unknown) {
  const json = typeof body !== 'string';
  response.writeHead(status, { 'Content-Type': json ? 'application/json' : 'text/html' });
  response.end(json ? JSON.stringify(body) : body);
}

/** A refusal of the carrier, or a page of a proxy when it has no code. */
function refusal(status: number, code: number | null): unknown {
  return code === null ? '<h1>Bad gateway</h1>' : { code, message: 'refused', more_info: 'none', status };
}

function described({ form, sid, createdAt }: Row, status: string) {
  return {
    sid,
    account_sid: accountSid,
    to: form.To,
    from: form.From,
    body: form.Body,
    status,
    direction: 'outbound-api',
    date_created: createdAt.toUTCString().replace('GMT', '+0000'),
  };
}

function describedInbound({ sid, from, body, atMs }: Inbound) {
  const date = new Date(atMs).toUTCString().replace('GMT', '+0000');
  const to = lineNumber;
  return {
    sid,
    to,
    from,
    body,
    direction: 'inbound',
    status: 'received',
    num_media: '0',
    date_sent: date,
    date_created: date,
  };
}

function page(resource: Made['resource'], rows: readonly object[]) {
  return { [resource.toLowerCase()]: rows, page: 0, page_size: 50, next_page_uri: null };
}
