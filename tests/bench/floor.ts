/**
 * The whole turn against its floor: the turn's own statements in its order on its pool, sends and marks included, with only
 * machine, reading, wording and sealing left out.
 */
import type { Database } from '#src/store/database.ts';
import { atLeast, median, medianPace, type Pace, paceWords, print } from './figures.ts';
import { type Ground, onEmbedded, onMigrated } from './ground.ts';
import { benchLine, converseAll, type Kind } from './line.ts';

/** Floor and whole are measured in turns, so that a noisy machine troubles both alike. */
const rounds = 5;
/** Code runs at its full speed only once it has run often. */
const warmRounds = 2;
const leastRatio = 0.6;

export async function floor({ serverUrl }: Ground): Promise<void> {
  await onEmbedded(async (database) => {
    print('embedded', 'ratio to the floor', (await measure('embedded', database, 8)).toFixed(2));
  });
  if (serverUrl === null) return;
  const ratio = await onMigrated(serverUrl, (database) => measure('postgresql', database, 64));
  print('postgresql', 'ratio to the floor', ratio.toFixed(2), atLeast(leastRatio, ratio));
}

async function measure(place: string, database: Database, phones: number): Promise<number> {
  const paces: Record<Kind, Pace[]> = { floor: [], whole: [] };
  for (let round = -warmRounds; round < rounds; round += 1) {
    for (const kind of ['floor', 'whole'] as const) {
      const line = benchLine(database, kind);
      await line.start();
      const pace = await converseAll(line, phones);
      await line.stop();
      if (round >= 0) paces[kind].push(pace);
    }
  }
  print(place, 'floor', paceWords(medianPace(paces.floor)));
  print(place, 'whole turn', paceWords(medianPace(paces.whole)));
  return median(paces.whole.map(({ perSecond }, round) => perSecond / (paces.floor[round]?.perSecond ?? Number.NaN)));
}
