/** How long the practice line takes from its start to healthy, on a folder that holds a night already. */
import { performance } from 'node:perf_hooks';
import { embeddedHome, startProcess } from '#tests/contract/process.ts';
import { median, print, under } from './figures.ts';

const starts = 5;
const mostS = 2;

export async function start(): Promise<void> {
  const home = await embeddedHome();
  try {
    await onceHealthy(home); // makes and fills the folder
    const tookS: number[] = [];
    for (let count = 0; count < starts; count += 1) tookS.push(await onceHealthy(home));
    print(
      'embedded',
      'start to healthy on a warm folder',
      `${median(tookS).toFixed(2)} s`,
      under(mostS, median(tookS), 's'),
    );
  } finally {
    await home.remove();
  }
}

async function onceHealthy(home: Awaited<ReturnType<typeof embeddedHome>>): Promise<number> {
  const beganMs = performance.now();
  const running = await startProcess(home);
  const health = await fetch(`${running.url}/healthz`);
  const seconds = (performance.now() - beganMs) / 1000;
  if (!health.ok) throw new Error(`not healthy: ${health.status}`);
  await running.end('SIGTERM');
  return seconds;
}
