/** Work shared out to as many workers as there are processors, each task to the next one free. */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Caught } from './plantedRun.ts';
import type { Proven } from './report.ts';

export type Task =
  | { readonly kind: 'world'; readonly index: number; readonly disturbances: number; readonly nights: number }
  | { readonly kind: 'fault'; readonly index: number }
  | { readonly kind: 'sound'; readonly index: number };

export type TaskDone =
  | { readonly kind: 'world'; readonly proven: Proven }
  | {
      readonly kind: 'fault' | 'sound';
      readonly name: string;
      readonly caught: Caught | null;
      readonly seconds: number;
    };

/** Runs every task; `each` hears of one as soon as it is done. A worker that throws fails them all. */
export function shareOut(tasks: readonly Task[], each: (done: TaskDone) => void): Promise<void> {
  const waiting = [...tasks];
  const workers = Math.min(availableParallelism(), tasks.length);
  return Promise.all(Array.from({ length: workers }, () => work(waiting, each))).then(() => undefined);
}

function work(waiting: Task[], each: (done: TaskDone) => void): Promise<void> {
  return new Promise((resolve, reject) => {
    // A walk makes many short-lived snapshots: room for them costs a fifth less time than collecting them.
    const resourceLimits = { maxYoungGenerationSizeMb: 256 };
    const worker = new Worker(new URL('./worker.ts', import.meta.url), { resourceLimits });
    const next = () => {
      const task = waiting.shift();
      if (task !== undefined) worker.postMessage(task);
      else void worker.terminate().then(() => resolve());
    };
    worker.on('message', (done: TaskDone) => {
      each(done);
      next();
    });
    worker.on('error', reject);
    next();
  });
}
