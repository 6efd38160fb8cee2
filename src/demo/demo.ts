/**
 * The demo: one invented night on the real machines, database and timers, printed as a transcript of every phone.
 * The clock is the practice clock, so an hour takes no time; the families and nurses are those of the seeds, all invented.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openPractice } from '#src/app.ts';
import { createLog } from '#src/log.ts';
import { loadSeeds } from '#src/seeds.ts';
import { night, nightBegins } from './night.ts';
import { play } from './stage.ts';
import { title } from './transcript.ts';

/** Prints the night; `print` gets it line by line. Uses a database of its own and leaves nothing behind. */
export async function demo(print: (text: string) => void = (text) => process.stdout.write(`${text}\n`)): Promise<void> {
  const dataFolder = await mkdtemp(join(tmpdir(), 'nightjar-demo-'));
  const seedsFolder = 'seeds';
  const app = await openPractice(
    { port: 0, dataFolder, databaseUrl: null, seedsFolder },
    createLog({ write: () => {} }),
  );
  try {
    const seeds = loadSeeds(seedsFolder);
    await app.line.reset(Date.parse(nightBegins), seeds);
    print('One night on the line. Families, nurses and hospital are invented. Not for a real child.');
    for (const scene of night) {
      title(print, scene.title);
      for (const move of scene.moves) await play({ line: app.line, seeds, print }, move);
    }
  } finally {
    await app.stop();
    await rm(dataFolder, { recursive: true, force: true });
  }
}
