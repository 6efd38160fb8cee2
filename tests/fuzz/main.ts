/** The fuzzer: `npm run fuzz -- --requests 2000 --seed 1`. On TEST_DATABASE_URL where it is set, else on embedded databases. */
import { parseArgs } from 'node:util';
import { closeSpare, databases } from '#tests/store/databases.ts';
import { attack } from './attack.ts';

const { values } = parseArgs({
  options: {
    requests: { type: 'string', default: '2000' },
    seed: { type: 'string', default: '1' },
    lanes: { type: 'string', default: '4' },
  },
});
const test = databases().at(-1);
if (test === undefined) throw new Error('there is always a database');
const requests = Math.ceil(Number(values.requests) / 2);
let failed = false;
for (const face of ['practice', 'live'] as const) {
  const beganMs = performance.now();
  const outcome = await attack({ face, requests, seed: Number(values.seed), lanes: Number(values.lanes) }, test);
  const seconds = ((performance.now() - beganMs) / 1000).toFixed(1);
  process.stdout.write(`${face} on the ${test.name} database: ${requests} requests in ${seconds} s\n`);
  process.stdout.write(`  answers ${JSON.stringify(outcome.statuses)}\n  left ${JSON.stringify(outcome.standing)}\n`);
  for (const fault of outcome.faults) process.stdout.write(`  FAULT ${fault}\n`);
  if (outcome.faults.length > 0) process.stdout.write(`${outcome.log.split('\n').slice(-40).join('\n')}\n`);
  failed ||= outcome.faults.length > 0;
}
process.stdout.write(
  failed ? `replay: npm run fuzz -- --requests ${values.requests} --seed ${values.seed}\n` : 'no fault\n',
);
await closeSpare();
process.exitCode = failed ? 1 : 0;
