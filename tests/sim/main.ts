/** `npm run sim -- --seed N --hours H --nights M`: plays simulated nights and prints what broke, with the command that replays it. */
import { parseArgs } from 'node:util';
import { migrate } from '#src/store/migrate.ts';
import { closeSpare, databases } from '#tests/store/databases.ts';
import { playNight } from './world.ts';

const { values } = parseArgs({
  options: { seed: { type: 'string' }, hours: { type: 'string' }, nights: { type: 'string' } },
});
const first = Number(values.seed ?? 1);
const hours = Number(values.hours ?? 1);
const nights = Number(values.nights ?? 1);

const [embedded] = databases();
if (embedded === undefined) throw new Error('the embedded database is always there');
const database = await embedded.open();
await migrate(database, 'live');

const totals = { texts: 0, events: 0, sent: 0 };
const faults = new Map<string, number>();
let failed = 0;
const beganMs = performance.now();
for (let seed = first; seed < first + nights; seed += 1) {
  const outcome = await playNight(database, seed, hours);
  totals.texts += outcome.texts;
  totals.events += outcome.events;
  totals.sent += outcome.sent;
  for (const [name, times] of outcome.faults) faults.set(name, (faults.get(name) ?? 0) + times);
  if (outcome.broken.length === 0) continue;
  failed += 1;
  process.stdout.write(`seed ${seed}: replay with npm run sim -- --seed ${seed} --hours ${hours}\n`);
  for (const line of outcome.broken) process.stdout.write(`  ${line}\n`);
}
const seconds = (performance.now() - beganMs) / 1000;
process.stdout.write(
  `${nights} nights of ${hours} h in ${seconds.toFixed(1)} s: ${totals.texts} texts, ${totals.events} events, ${totals.sent} messages sent, ${failed} failed\n`,
);
for (const [name, times] of [...faults].sort()) process.stdout.write(`  ${String(times).padStart(7)} ${name}\n`);
await database.close();
await closeSpare();
process.exitCode = failed === 0 ? 0 : 1;
