/** One of the proof's workers: proves the worlds, or runs the planted faults, that it is handed, and hands back what came of it. */
import { parentPort } from 'node:worker_threads';
import { faults } from './planted.ts';
import { caughtBy, soundMachine } from './plantedRun.ts';
import { prove } from './prove.ts';
import type { Task, TaskDone } from './tasks.ts';
import { worlds } from './worlds.ts';

function done(task: Task): TaskDone {
  if (task.kind === 'world') {
    const world = worlds[task.index];
    if (world === undefined) throw new Error(`no world ${task.index}`);
    return { kind: 'world', proven: prove(world, task.disturbances, task.nights) };
  }
  const fault = task.kind === 'sound' ? soundMachine(task.index) : faults[task.index];
  if (fault === undefined) throw new Error(`no fault ${task.index}`);
  const begin = performance.now();
  return { kind: task.kind, name: fault.name, caught: caughtBy(fault), seconds: (performance.now() - begin) / 1000 };
}

parentPort?.on('message', (task: Task) => parentPort?.postMessage(done(task)));
