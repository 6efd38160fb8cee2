/** The carrier of a simulated night, behind the real library: it takes, refuses, times out, loses its answers, and keeps its log. */
import twilio from 'twilio';
import http from 'twilio/lib/http/response.js';
import { lineNumber } from '#tests/carrier/double.ts';
import type { Dice } from '#tests/dislodgement/attack/alphabet.ts';
import { type Busy, Cut, count, type Incarnation, type Trouble } from './faults.ts';

export interface Made {
  readonly sid: string;
  readonly kind: 'Messages' | 'Calls';
  readonly to: string;
  /** A text's words, a call's document. */
  readonly words: string;
  /** The line's own number of the message. */
  readonly id: number;
  readonly atMs: number;
  status: string;
}

export interface LoggedIn {
  readonly sid: string;
  readonly from: string;
  readonly body: string;
  readonly atMs: number;
}

export class SimulatedCarrier {
  readonly made: Made[] = [];
  readonly inbound: LoggedIn[] = [];
  /** Numbers that opted out at the carrier, and handsets it does not know. */
  readonly optedOut = new Set<string>();
  readonly unreachable = new Set<string>();
  /** Messages that met trouble on their way: these may be overtaken. */
  readonly troubled = new Set<number>();
  readonly #dice: Dice;
  readonly #trouble: Trouble;
  readonly #nowMs: () => number;
  /** A planted fault: its lists are empty, as if a look-up were not believed. */
  blind = false;
  /** Told of everything made, so that news of it can be sent. */
  onMade: (made: Made) => void = () => {};

  constructor(dice: Dice, trouble: Trouble, nowMs: () => number) {
    this.#dice = dice;
    this.#trouble = trouble;
    this.#nowMs = nowMs;
  }

  /** The library's way here from one process of the line. */
  client(life: Incarnation, busy: Busy): InstanceType<typeof twilio.RequestClient> {
    const answer = (method: string, uri: string, fields: Record<string, unknown>) => this.#answer(method, uri, fields);
    return new (class extends twilio.RequestClient {
      override request: InstanceType<typeof twilio.RequestClient>['request'] = async ({
        method,
        uri,
        data,
        params,
      }) => {
        busy.count += 1;
        try {
          if (life.dead) throw new Cut('the process is dead');
          const { status, body } = answer(method, uri, Object(data ?? params ?? {}));
          await new Promise((resolve) => setImmediate(resolve));
          if (life.dead) throw new Cut('the process is dead');
          return new http.default(status, body as never, {});
        } finally {
          busy.count -= 1;
        }
      };
    })();
  }

  #answer(method: string, uri: string, fields: Record<string, unknown>): { status: number; body: string } {
    const kind = uri.includes('/Calls') ? 'Calls' : 'Messages';
    return method.toUpperCase() === 'POST' ? this.#make(kind, fields) : this.#list(kind, fields);
  }

  #make(kind: Made['kind'], fields: Record<string, unknown>) {
    const id = Number(new URL(String(fields.StatusCallback)).searchParams.get('message'));
    const to = String(fields.To);
    if (kind === 'Messages' && this.optedOut.has(to)) return refusal(400, 21610);
    const met = this.#trouble.on ? this.#draw() : null;
    if (met !== null) {
      count(this.#trouble, `carrier: ${met}`);
      this.troubled.add(id);
    }
    if (met === 'too many requests') return refusal(429, 20429);
    if (met === 'fault') return refusal(500, 20500);
    if (met === 'timeout') throw Object.assign(new Error('timeout'), { code: 'ECONNABORTED' });
    if (met === 'unreachable') throw Object.assign(new Error('refused'), { code: 'ECONNREFUSED' });
    const sid = `${kind === 'Calls' ? 'CA' : 'SM'}${String(this.made.length).padStart(32, '0')}`;
    const words = String(fields.Body ?? fields.Twiml);
    const made: Made = { sid, kind, to, words, id, atMs: this.#nowMs(), status: 'queued' };
    this.made.push(made);
    this.onMade(made);
    if (met === 'taken, fault') return refusal(503, 20503);
    if (met === 'taken, timeout') throw Object.assign(new Error('timeout'), { code: 'ECONNABORTED' });
    if (met === 'taken, reset') throw Object.assign(new Error('reset'), { code: 'ECONNRESET' });
    return { status: 201, body: JSON.stringify(describe(made)) };
  }

  #draw() {
    if (!this.#dice.chance(0.12)) return null;
    const troubles = ['too many requests', 'fault', 'timeout', 'unreachable'] as const;
    return this.#dice.pick([...troubles, 'taken, fault', 'taken, timeout', 'taken, reset'] as const);
  }

  #list(kind: Made['kind'], fields: Record<string, unknown>) {
    if (this.#trouble.on && this.#dice.chance(0.1)) {
      count(this.#trouble, 'carrier: no list');
      return refusal(500, 20500);
    }
    const since = Date.parse(String(fields['DateSent>'] ?? '')) || 0;
    const rows = this.blind
      ? []
      : kind === 'Messages' && fields.To === lineNumber
        ? this.inbound.filter(({ atMs }) => atMs >= since).map(describeInbound)
        : this.made.filter((one) => one.kind === kind && one.to === fields.To).map(describe);
    return {
      status: 200,
      body: JSON.stringify({ [kind.toLowerCase()]: rows.reverse(), page: 0, page_size: 1000, next_page_uri: null }),
    };
  }
}

const dateOf = (atMs: number) => new Date(atMs).toUTCString().replace('GMT', '+0000');

function describe({ sid, to, words, atMs, status }: Made) {
  return { sid, to, from: lineNumber, body: words, status, direction: 'outbound-api', date_created: dateOf(atMs) };
}

function describeInbound({ sid, from, body, atMs }: LoggedIn) {
  const date = dateOf(atMs);
  return { sid, to: lineNumber, from, body, direction: 'inbound', num_media: '0', date_sent: date, date_created: date };
}

function refusal(status: number, code: number) {
  return { status, body: JSON.stringify({ code, message: 'refused', more_info: 'none', status }) };
}
