/** The whole live line under load: web, signature, turn, alarm and the carrier's own library. From webhook to reply committed. */
import { join } from 'node:path';
import { type Pace, paceWords, print, under } from './figures.ts';
import { type Ground, inFolder, onServer } from './ground.ts';
import { type Process, startLine, textAsFastAsItAnswers, textSteadily } from './webhooks.ts';

/** The embedded database has one connection: more only wait. */
const phones = { embedded: 8, postgresql: 64 };
const halfSeconds = 15;
const mostP99Ms = 50;
const mostMegabytes = 250;
const megabyte = 1_000_000;

export async function load({ serverUrl }: Ground): Promise<void> {
  await inFolder(async (folder) => {
    const line = await startLine({ NIGHTJAR_DATA: join(folder, 'data') });
    await fullLoad('embedded', line);
    print('embedded', 'resident memory at load', `${megabytes(line).toFixed(0)} MB`);
    await line.end();
  });
  if (serverUrl === null) return;
  await onServer(serverUrl, async (url) => {
    const line = await startLine({ DATABASE_URL: url });
    const { perSecond } = await fullLoad('postgresql', line);
    const half = await textSteadily(line.url, perSecond / 2, halfSeconds);
    print('postgresql', 'at half load', paceWords(half), under(mostP99Ms, half.p99Ms, 'ms p99'));
    const resident = megabytes(line);
    const goal = under(mostMegabytes, resident, 'MB');
    print('postgresql', 'resident memory at load', `${resident.toFixed(0)} MB`, goal);
    await line.end();
  });
}

/** The first run only warms it up. */
async function fullLoad(place: keyof typeof phones, { url }: Process): Promise<Pace> {
  await textAsFastAsItAnswers(url, phones[place]);
  const full = await textAsFastAsItAnswers(url, phones[place]);
  print(place, 'webhook to reply committed, at full load', paceWords(full));
  return full;
}

function megabytes(line: Process): number {
  return line.residentMost() / megabyte;
}
