/** Plays one move of the demo's night on the line, and prints what came of it on every phone. */
import { DateTime } from 'luxon';
import { caseCode } from '#src/line/cases.ts';
import type { CaseReport, Line } from '#src/line/line.ts';
import type { Seeds } from '#src/seeds.ts';
import { type Move, nightBegins } from './night.ts';
import { type Print, said, sentLine, wrap } from './transcript.ts';

export interface Stage {
  readonly line: Line;
  readonly seeds: Seeds;
  readonly print: Print;
}

/** The clock goes to the move's time, whatever is due on the way; then its text is heard. */
export async function play(stage: Stage, move: Move): Promise<void> {
  const { line } = stage;
  const before = await decisions(stage);
  const waited = `until ${move.at}`;
  await line.advance(timeOf(stage, move.at), waited);
  await printSent(stage, waited);
  if (move.from !== null) {
    const from = numberOf(stage, move.from);
    await (move.digit === undefined ? text(stage, from, move.body) : press(stage, from, move.digit));
  }
  const after = await decisions(stage);
  for (const [child, report] of after) printDecision(stage, child, before.get(child) ?? null, report);
}

async function text(stage: Stage, from: string, written: string): Promise<void> {
  const { line, print } = stage;
  const body = await withCodes(stage, written);
  const nowMs = await line.now();
  const cause = `${nowMs} ${from} ${body}`;
  print(said(stage, nowMs, `${nameOf(stage, from)} >`, body));
  await line.hear({ from, body, id: cause, cause });
  await line.settle(cause);
  await printSent(stage, cause);
}

async function press(stage: Stage, number: string, digit: string): Promise<void> {
  const { line, print } = stage;
  const nowMs = await line.now();
  const cause = `${nowMs} ${number} ${digit}`;
  const answer = await line.pressInNewestCall({ number, digit, cause });
  const goesOn = answer.go === 'ring' ? `; the line rings ${nameOf(stage, answer.number)} and joins the calls` : '';
  print(said(stage, nowMs, `${nameOf(stage, number)} presses ${digit}${goesOn}.`, ''));
  await line.settle(cause);
  await printSent(stage, cause);
}

async function printSent(stage: Stage, cause: string): Promise<void> {
  for (const sent of await stage.line.sentBecauseOf(cause)) stage.print(sentLine(stage, nameOf(stage, sent.to), sent));
}

/** The newest case of each child that has one. */
async function decisions({ line, seeds }: Stage): Promise<ReadonlyMap<string, CaseReport>> {
  const cases = new Map<string, CaseReport>();
  for (const { number, child } of seeds.families) {
    const report = child === null ? null : await line.newestCase(number);
    if (child !== null && report !== null) cases.set(child, report);
  }
  return cases;
}

/** What the line decided, and on what: whatever of the case this move changed. */
function printDecision({ seeds, print }: Stage, child: string, before: CaseReport | null, now: CaseReport): void {
  const clock = (iso: string) => DateTime.fromISO(iso, { zone: seeds.protocol.site.timeZone }).toFormat('ccc HH:mm');
  const dueBefore = new Set(before?.due.map(({ what, at }) => `${what} ${at}`));
  const facts = changed(before?.facts ?? {}, now.facts);
  const due = now.due
    .filter(({ what, at }) => what !== 'silence' && !dueBefore.has(`${what} ${at}`))
    .map(({ what, at }) => `${what} at ${clock(at)}`);
  const parts = [
    ...(facts.length > 0 ? [`learnt ${facts.join(', ')}`] : []),
    ...(now.asking === (before?.asking ?? null) ? [] : [now.asking === null ? 'asks nothing' : `asks ${now.asking}`]),
    ...(now.disposition === (before?.disposition ?? null) ? [] : [`DECIDES ${now.disposition}`]),
    ...(due.length > 0 ? [`due: ${due.join(', ')}`] : []),
  ];
  if (parts.length > 0) print(wrap(`[${child}: ${parts.join('; ')}]`));
}

function changed(before: object, now: object): string[] {
  const old = new Map(Object.entries(before));
  return Object.entries(now).flatMap(([name, value]) =>
    JSON.stringify(old.get(name)) === JSON.stringify(value) ? [] : [`${name} ${plain(value)}`],
  );
}

function plain(value: unknown): string {
  if (typeof value !== 'object' || value === null) return String(value);
  return Object.values(value).map(plain).join(' to ');
}

function timeOf({ seeds }: Stage, at: string): number {
  const day = DateTime.fromISO(nightBegins, { zone: seeds.protocol.site.timeZone });
  const [hour, minute] = at.split(':').map(Number);
  return day.set({ hour, minute }).toMillis();
}

async function withCodes(stage: Stage, body: string): Promise<string> {
  const cases = await decisions(stage);
  return body.replaceAll(/<(\w+)>/g, (_, child: string) => caseCode(Number(cases.get(child)?.id)));
}

function numberOf({ seeds }: Stage, name: string): string {
  const { handoverNumber } = seeds.protocol.site;
  const number =
    seeds.families.find(({ child }) => child === name)?.number ??
    seeds.rota.nurses.find((nurse) => nurse.name === name)?.number ??
    (name === dayTeam ? handoverNumber : undefined);
  if (number === undefined) throw new Error(`the seeds know nobody called ${name}`);
  return number;
}

const dayTeam = 'the day team';

function nameOf({ seeds }: Stage, number: string): string {
  const nurse = seeds.rota.nurses.find((person) => person.number === number);
  if (nurse !== undefined) return `Nurse ${nurse.name}`;
  if (number === seeds.protocol.site.handoverNumber) return 'The day team';
  const family = seeds.families.find((other) => other.number === number);
  return `${family?.child ?? 'Someone'}'s parent`;
}
