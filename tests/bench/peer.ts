/**
 * The peer: the same conversation as a durable workflow in a general-purpose durable-execution library, on the same server in
 * the same run. It reads, steps and words as the line does, and seals nothing, which is in its favour.
 */
import { performance } from 'node:perf_hooks';
import { DBOS } from '@dbos-inc/dbos-sdk';
import type { CaseSnapshots } from '#machines/case.ts';
import { practiceCarrier } from '#src/carrier/practice.ts';
import { word } from '#src/wording/word.ts';
import { answer, texts } from './conversation.ts';
import { atLeast, median, medianPace, type Pace, paceOf, paceWords, print } from './figures.ts';
import { connections, type Ground, onMigrated, onServer } from './ground.ts';
import { benchLine, converseAll, freshNumber, protocol } from './line.ts';

const rounds = 3;
const phones = 64;
const leastTimes = 2;
const silenceSeconds = 300;

/** Told once the reply to this phone's last text is committed. */
const committed = new Map<string, () => void>();

/** One family's case: it waits for a text, answers it in a step, and hands what it says to the carrier in another. */
async function conversation(number: string): Promise<void> {
  let snapshots: CaseSnapshots | null = null;
  for (let heard = 0; heard < texts.length; heard += 1) {
    const text = await DBOS.recv<string>('text', silenceSeconds);
    if (text === null) return;
    const before: CaseSnapshots | null = snapshots;
    const turn: Decided = await DBOS.runStep(async () => decide(before, text), { name: 'answer' });
    snapshots = turn.snapshots;
    committed.get(number)?.();
    await DBOS.runStep(() => carry(number, turn.bodies), { name: 'carry' });
  }
}

interface Decided {
  readonly snapshots: CaseSnapshots;
  readonly bodies: readonly string[];
}

function decide(before: CaseSnapshots | null, text: string): Decided {
  const nowMs = Date.now();
  const { effects, snapshots } = answer(protocol, before, text, nowMs).step;
  const scene = { language: 'en', site: protocol.site, nowMs, child: null } as const;
  const bodies = effects.flatMap((effect) => (effect.type === 'say' ? [word(effect.say, scene)] : []));
  return { snapshots, bodies };
}

async function carry(to: string, bodies: readonly string[]): Promise<void> {
  const saidAtMs = Date.now();
  for (const body of bodies) await practiceCarrier.send({ id: to, to, body, kind: 'text', saidAtMs });
}

export async function peer({ serverUrl }: Ground): Promise<void> {
  if (serverUrl === null) return;
  const workflow = DBOS.registerWorkflow(conversation, { name: 'conversation' });
  const paces: Record<'peer' | 'line', Pace[]> = { peer: [], line: [] };
  await onServer(serverUrl, (url) =>
    onMigrated(serverUrl, async (database) => {
      DBOS.setConfig({
        name: 'bench',
        systemDatabaseUrl: url,
        systemDatabasePoolSize: connections,
        logLevel: 'error',
      });
      await DBOS.launch();
      const line = benchLine(database, 'whole');
      await line.start();
      for (let round = -1; round < rounds; round += 1) {
        const theirs = await converseAllByPeer(workflow);
        const ours = await converseAll(line, phones);
        if (round < 0) continue;
        paces.peer.push(theirs);
        paces.line.push(ours);
      }
      await line.stop();
      await DBOS.shutdown();
    }),
  );
  const times = median(
    paces.line.map(({ perSecond }, round) => perSecond / (paces.peer[round]?.perSecond ?? Number.NaN)),
  );
  print('postgresql', 'the same as a general durable workflow', paceWords(medianPace(paces.peer)));
  print('postgresql', 'whole turn beside it', paceWords(medianPace(paces.line)));
  print('postgresql', 'times the peer', times.toFixed(1), atLeast(leastTimes, times));
}

async function converseAllByPeer(workflow: typeof conversation): Promise<Pace> {
  const tookMs: number[] = [];
  const beganMs = performance.now();
  await Promise.all(Array.from({ length: phones }, () => converse(workflow, tookMs)));
  return paceOf(tookMs, (performance.now() - beganMs) / 1000);
}

async function converse(workflow: typeof conversation, tookMs: number[]): Promise<void> {
  const number = freshNumber();
  const handle = await DBOS.startWorkflow(workflow, { workflowID: number })(number);
  for (const [index, text] of texts.entries()) {
    const { promise, resolve } = Promise.withResolvers<void>();
    committed.set(number, resolve);
    const textedMs = performance.now();
    await DBOS.send(number, text, 'text', `${number}-${index}`);
    await promise;
    tookMs.push(performance.now() - textedMs);
  }
  committed.delete(number);
  await handle.getResult();
}
