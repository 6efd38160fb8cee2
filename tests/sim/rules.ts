/** What must hold once a night has come to rest: everything answered, kept, climbed, in order, and safe by the rules of the attack. */
import { createHash } from 'node:crypto';
import { z } from 'zod';
import { type CaseSignal, openCase, stepCase } from '#machines/case.ts';
import type { Effect } from '#machines/effects.ts';
import type { Protocol } from '#machines/protocol/settings.ts';
import { openFile } from '#src/families/file.ts';
import { canonicalJson } from '#src/line/record.ts';
import type { Database } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import type { Happening } from '#tests/dislodgement/attack/alphabet.ts';
import { Ledger } from '#tests/dislodgement/attack/ledger.ts';
import { type NightSeen, rules } from '#tests/dislodgement/attack/safety.ts';
import { noteSaid } from '#tests/dislodgement/attack/walk.ts';
import type { SimulatedCarrier } from './carrier.ts';

export interface Rested {
  readonly database: Database;
  readonly seal: Seal;
  readonly protocol: Protocol;
  readonly carrier: SimulatedCarrier;
  readonly nowMs: number;
}

/** Every rule that is broken, in words; empty where all hold. */
export async function broken(rested: Rested): Promise<string[]> {
  return [
    ...(await unanswered(rested)),
    ...(await unkept(rested)),
    ...(await miscarried(rested)),
    ...(await unsafe(rested)),
  ];
}

async function unanswered({ database, carrier }: Rested): Promise<string[]> {
  const ids = carrier.inbound.map(({ sid }) => sid);
  const silent = await database.query<{ carrier_id: string; answers: number }>(
    `SELECT t.carrier_id, count(o.id) AS answers FROM message t
     LEFT JOIN message o ON o.direction = 'out' AND o.cause = t.cause AND o.phone_id = t.phone_id
     WHERE t.direction = 'in' GROUP BY t.carrier_id`,
  );
  const answers = new Map(silent.map((row) => [row.carrier_id, row.answers]));
  return ids.flatMap((id) => {
    const count = answers.get(id);
    if (count === undefined) return [`the text ${id} was never heard`];
    return count === 0 ? [`the text ${id} was not answered`] : [];
  });
}

async function unkept({ database, nowMs }: Rested): Promise<string[]> {
  const late = await database.query<{ due_ms: number; what: string }>(
    'SELECT due_ms, what FROM timer WHERE due_ms <= $1',
    [nowMs],
  );
  const open = await database.query<{ id: number; state: string }>(
    "SELECT id, state FROM message WHERE state IN ('waiting', 'carrying', 'unknown')",
  );
  return [
    ...late.map((timer) => `a timer for ${timer.what} is ${nowMs - timer.due_ms} ms late`),
    ...open.map((message) => `message ${message.id} is still ${message.state}`),
  ];
}

/** Each message once at the carrier, and each phone's in order where nothing went wrong on the way. */
async function miscarried({ database, carrier }: Rested): Promise<string[]> {
  const faults: string[] = [];
  const rows = await database.query<{ id: number; state: string; urgent: boolean; tries: number }>(
    "SELECT id, state, urgent, tries FROM message WHERE direction = 'out'",
  );
  const made = Map.groupBy(carrier.made, ({ id }) => id);
  for (const { id, state } of rows) {
    const times = made.get(id)?.length ?? 0;
    if (times > 1) faults.push(`message ${id} was sent ${times} times`);
    if (times === 0 && state !== 'refused') faults.push(`message ${id} is ${state} and was never sent`);
  }
  // An emergency waits for nobody but another call to its phone, and one whose fate is unknown, or whose process died, holds others for ten seconds at most.
  const free = new Set(rows.filter((row) => row.urgent || row.tries > 1).map(({ id }) => id));
  for (const [to, sent] of Map.groupBy(carrier.made, (one) => one.to)) {
    const plain = sent.filter(({ id }) => !free.has(id) && !carrier.troubled.has(id)).map(({ id }) => id);
    if (plain.some((id, place) => id < (plain[place - 1] ?? 0)))
      faults.push(`out of order to ${to}: ${plain.join(' ')}`);
  }
  return faults;
}

interface CaseRow {
  readonly id: number;
  readonly file: Buffer | null;
  readonly opened_ms: number;
  readonly closed_ms: number | null;
  readonly parked_ms: number | null;
}
interface EventRow {
  readonly number: number;
  readonly type: string;
  readonly at_ms: number;
  readonly body: Buffer;
  readonly hash: Buffer;
}
const eventShape = z.looseObject({
  machine: z.string(),
  event: z.looseObject({ type: z.string() }),
  effects: z.unknown(),
});

async function unsafe(rested: Rested): Promise<string[]> {
  const { database } = rested;
  const cases = await database.query<CaseRow>(
    'SELECT id, file, opened_ms, closed_ms, parked_ms FROM "case" ORDER BY id',
  );
  const faults: string[] = [];
  for (const theCase of cases) {
    const events = await database.query<EventRow>(
      'SELECT number, type, at_ms, body, hash FROM event WHERE case_id = $1 ORDER BY number',
      [theCase.id],
    );
    const timers = await database.query<{ machine: string; id: string; due_ms: number }>(
      'SELECT machine, id, due_ms FROM timer WHERE case_id = $1 ORDER BY machine, id',
      [theCase.id],
    );
    for (const fault of replayed(rested, theCase, events, timers)) faults.push(`case ${theCase.id}: ${fault}`);
  }
  return faults;
}

type Timer = NightSeen['timers'][number];

/** Plays the record again: its chain is whole, the machines decide the same, every step is safe, and the timers are those of the end. */
function replayed(
  { seal, protocol }: Rested,
  theCase: CaseRow,
  events: readonly EventRow[],
  timersKept: readonly { machine: string; id: string; due_ms: number }[],
): string[] {
  const file = theCase.file === null ? null : openFile(seal, theCase.file);
  let snapshots = openCase(protocol, file, theCase.opened_ms);
  const ledger = new Ledger(file);
  let timers: Timer[] = [];
  const all: Effect[] = [];
  let hash: Buffer | null = null;
  let view: NightSeen['view'] | null = null;
  for (const row of events) {
    const body = seal.open(row.body);
    const chained: Buffer = createHash('sha256')
      .update(hash ?? '')
      .update(body)
      .digest();
    if (!chained.equals(row.hash)) return [`the chain breaks at event ${row.number}`];
    hash = chained;
    if (row.type === 'parked') return [];
    const told = eventShape.parse(JSON.parse(body));
    const signal = { machine: told.machine, event: told.event } as unknown as CaseSignal;
    const asked = view?.asking ?? null;
    const inUse = view?.disposition === 'use' || view?.disposition === 'own-tube';
    const clarified = view?.clarifying === 'sign';
    const happening = happeningOf(signal);
    if (happening.type === 'text') {
      ledger.hear(happening.event, { asking: asked, inUse, clarifying: clarified, atMs: row.at_ms });
    }
    const step = stepCase(protocol, snapshots, signal);
    if (canonicalJson(step.effects) !== canonicalJson(told.effects))
      return [`event ${row.number} is decided otherwise`];
    snapshots = JSON.parse(JSON.stringify(step.snapshots));
    view = step.view;
    all.push(...step.effects);
    if (signal.event.type.startsWith('xstate.after.')) {
      timers = timers.filter(({ machine, event }) => machine !== signal.machine || event !== signal.event.type);
    }
    timers = keptBy(timers, step.effects, row.at_ms);
    noteSaid(ledger, step.effects, asked);
    const saidEver = all.flatMap((effect) => (effect.type === 'say' ? [effect.say.key] : []));
    const night: NightSeen = { nowMs: row.at_ms, view, timers, all, saidEver };
    const seen = { happening, asked, clarified, night, ledger, effects: step.effects };
    const wrong = Object.keys(rules).filter((name) => rules[name]?.(seen) === false);
    if (wrong.length > 0) return wrong.map((name) => `${name} (event ${row.number}, ${row.type})`);
  }
  if (theCase.closed_ms !== null) return timersKept.length === 0 ? [] : ['a closed case keeps timers'];
  const told = timers.map(({ machine, id, dueMs }) => `${machine} ${id} ${Math.round(dueMs)}`).sort();
  const kept = timersKept.map(({ machine, id, due_ms }) => `${machine} ${id} ${due_ms}`).sort();
  return told.join() === kept.join() ? [] : [`timers ${kept.join(', ')} where the record says ${told.join(', ')}`];
}

function keptBy(before: readonly Timer[], effects: readonly Effect[], atMs: number): Timer[] {
  let timers = [...before];
  for (const effect of effects) {
    if (effect.type !== 'startTimer' && effect.type !== 'cancelTimer') continue;
    timers = timers.filter(({ machine, id }) => machine !== effect.machine || id !== effect.id);
    if (effect.type === 'startTimer') {
      const { machine, id, event, delayMs } = effect;
      timers.push({ machine, id, event, dueMs: atMs + delayMs });
    }
  }
  return timers;
}

function happeningOf({ machine, event }: CaseSignal): Happening {
  if (machine === 'paging' && event.type === 'take') return { type: 'take' };
  if (machine !== 'conversation' || event.type.startsWith('xstate.after.')) return { type: 'wait', minutes: 0 };
  if (event.type === 'nurse.clear') return { type: 'clear' };
  if (event.type === 'nurse.close') return { type: 'close' };
  return { type: 'text', event: event as Extract<Happening, { type: 'text' }>['event'] };
}
