/** The whole live line as a process of its own, and the carrier's webhooks to it: as fast as it answers, or at a steady pace. */
import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { setTimeout as pause } from 'node:timers/promises';
import { z } from 'zod';
import { type Double, lineNumber, startDouble } from '#tests/carrier/double.ts';
import { postSigned, spawnLine } from '#tests/faults/stand.ts';
import { texts } from './conversation.ts';
import { type Pace, paceOf } from './figures.ts';
import { freshNumber } from './line.ts';

const lookMs = 100;
const kib = 1024;

export interface Process {
  readonly url: string;
  /** The most memory it has had resident so far, bytes. */
  residentMost(): number;
  end(): Promise<void>;
}

/** Starts it on the database its environment names, with a double of the carrier in this process. */
export async function startLine(environment: Readonly<Record<string, string>>): Promise<Process> {
  const double: Double = await startDouble();
  const child = spawnLine({ CARRIER_URL: double.url, ...environment });
  child.stderr?.resume();
  const [message] = await once(child, 'message');
  const { url } = z.object({ url: z.string() }).parse(message);
  let most = 0;
  const look = setInterval(() => {
    most = Math.max(most, resident(child));
  }, lookMs);
  return {
    url,
    residentMost: () => most,
    end: async () => {
      clearInterval(look);
      child.kill('SIGTERM');
      await once(child, 'exit');
      await double.close();
    },
  };
}

/** As Linux shows it of a process: proc(5). */
function resident({ pid }: ChildProcess): number {
  const found = /^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'));
  return Number(found?.[1] ?? Number.NaN) * kib;
}

/** These many phones text side by side, each its next text as soon as the last is answered. */
export async function textAsFastAsItAnswers(url: string, phones: number): Promise<Pace> {
  const tookMs: number[] = [];
  const beganMs = performance.now();
  const converse = async () => {
    const from = freshNumber();
    for (const [index, body] of texts.entries()) tookMs.push(await text(url, from, index, body, performance.now()));
  };
  await Promise.all(Array.from({ length: phones }, converse));
  return paceOf(tookMs, (performance.now() - beganMs) / 1000);
}

/**
 * Texts come at this pace whether or not the line keeps up; how long one takes is counted from when it was to come. Families text
 * by turns and begin in turn, so that in any second as many open a case as in any other; counted from when all have begun.
 */
export async function textSteadily(url: string, perSecond: number, seconds: number): Promise<Pace> {
  const families = Array.from({ length: Math.ceil(perSecond) }, (_, place) => ({
    beginsIn: place % texts.length,
    from: '',
  }));
  const rounds = texts.length + Math.ceil((seconds * perSecond) / families.length);
  const tookMs: number[] = [];
  const sent: Promise<void>[] = [];
  const beganMs = performance.now();
  let countedFromMs = beganMs;
  for (let round = 0; round < rounds; round += 1) {
    if (round === texts.length) countedFromMs = performance.now();
    for (const [place, family] of families.entries()) {
      if (round < family.beginsIn) continue;
      const index = (round - family.beginsIn) % texts.length;
      if (index === 0) family.from = freshNumber();
      const dueMs = beganMs + ((round * families.length + place) * 1000) / perSecond;
      const early = dueMs - performance.now();
      if (early > 1) await pause(early);
      const answered = text(url, family.from, index, texts[index] ?? '', dueMs);
      sent.push(answered.then((ms) => void (round >= texts.length && tookMs.push(ms))));
    }
  }
  await Promise.all(sent);
  return paceOf(tookMs, (performance.now() - countedFromMs) / 1000);
}

/** One webhook; it is answered once the reply is committed. A connection that ended as it was used again is no answer: once more. */
async function text(url: string, from: string, index: number, body: string, sinceMs: number): Promise<number> {
  const form = { MessageSid: `${from}-${index}`, From: from, To: lineNumber, Body: body };
  const post = () => postSigned(url, '/carrier/text', form);
  const answer = await post().catch(post);
  if (answer.status !== 200) throw new Error(`the line answered ${answer.status}`);
  await answer.arrayBuffer();
  return performance.now() - sinceMs;
}
