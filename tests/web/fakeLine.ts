/** A line that decides nothing: it echoes every text, so that the HTTP layer can be tested alone. */
import type { KeptCall } from '#src/line/callPlan.ts';
import type { HeardCall } from '#src/line/calls.ts';
import type { KeyAnswer, PressedKey } from '#src/line/keys.ts';
import type { Callback, Family, HeardText, Line, Seeds, Sent, ThreadEntry } from '#src/line/line.ts';
import type { CallKey } from '#src/line/takeCall.ts';

export interface FakeLine extends Line {
  readonly keys: PressedKey[];
  /** What the next key is answered by. */
  keyAnswer: KeyAnswer;
  readonly calls: HeardCall[];
  readonly callKeys: CallKey[];
  /** The call it has settled. */
  kept: KeptCall | null;
  /** What the line was asked to do, in order. */
  readonly asked: string[];
  readonly heard: HeardText[];
  readonly enrolled: Map<string, Family>;
  readonly fates: { readonly message: string; readonly fate: Callback; readonly carrierId: string | null }[];
  /** Makes the next text fail. */
  failNext(): void;
}

const at = (atMs: number) => new Date(atMs).toISOString();

/** A line at 2027-03-06T07:10Z. */
export function fakeLine(): FakeLine {
  const asked: string[] = [];
  const heard: HeardText[] = [];
  const enrolled = new Map<string, Family>();
  const fates: FakeLine['fates'] = [];
  const sent: (Sent & { readonly cause: string })[] = [];
  let nowMs = Date.parse('2027-03-06T07:10:00Z');
  let failing = false;
  return {
    asked,
    heard,
    enrolled,
    fates,
    keys: [],
    keyAnswer: { go: 'taken' },
    async pressKey(key) {
      this.keys.push(key);
      return this.keyAnswer;
    },
    pressInNewestCall: async () => ({ go: 'nothing' }),
    openMedia: async (token) => (token === 'a.b.c' ? { type: 'image/png', bytes: Buffer.from('picture') } : null),
    calls: [],
    callKeys: [],
    kept: null,
    async hearCall(call) {
      if (failing) {
        failing = false;
        throw new Error('no room for a call');
      }
      this.calls.push(call);
      return this.kept?.plan ?? null;
    },
    async keptCall() {
      if (failing) throw new Error('no database');
      return this.kept;
    },
    async takeCall(key) {
      if (failing) throw new Error('no database');
      this.callKeys.push(key);
      return key.digit === '1';
    },
    pause: async () => null,
    failNext() {
      failing = true;
    },
    async hear(text) {
      if (failing) {
        failing = false;
        throw new Error(`no room for ${text.body}`);
      }
      if (heard.some(({ id }) => id === text.id)) return;
      heard.push(text);
      sent.push({ to: text.from, body: `heard: ${text.body}`, at: at(nowMs), kind: 'text', cause: text.cause });
    },
    async settle(cause) {
      asked.push(`settle ${cause}`);
    },
    async sentBecauseOf(wanted) {
      return sent.filter(({ cause }) => cause === wanted).map(({ cause: _, ...message }) => message);
    },
    async thread(number) {
      const texts = heard.filter(({ from }) => from === number);
      return texts.map(({ body }): ThreadEntry => ({ direction: 'in', body, at: at(nowMs), kind: 'text' }));
    },
    newestCase: async () => null,
    async advance(toMs) {
      nowMs = toMs;
    },
    now: async () => nowMs,
    async enrol(number, family) {
      enrolled.set(number, family);
    },
    families: async () => [...enrolled].map(([number, { child }]) => ({ number, child })),
    async reset(toMs, seeds: Seeds) {
      nowMs = toMs;
      heard.length = 0;
      asked.push(`reset to ${seeds.families.length} families`);
    },
    async noteFate(message, fate, carrierId) {
      fates.push({ message, fate, carrierId });
    },
    async start() {},
    async stop() {},
  };
}
