/** `npm run proof` walks every world and prints what the rules say; `-- --planted` shows that each wrong machine is caught. */
import { figuresOf, writeFigures } from './figures.ts';
import { faults } from './planted.ts';
import { faultsOf, lines, type Proven } from './report.ts';
import { shareOut, type Task } from './tasks.ts';
import { worlds } from './worlds.ts';

const nights = 200;
/** Anything but an answer to the open question, a timer, or the nurse's clearance. */
const disturbances = 1;

const print = (line: string) => process.stdout.write(`${line}\n`);
const since = performance.now();
const seconds = () => `${((performance.now() - since) / 1000).toFixed(0)} s`;

async function proof(): Promise<boolean> {
  const all: Proven[] = [];
  // The largest first, so that no processor idles at the end.
  const tasks = worlds.map((_, index): Task => ({ kind: 'world', index, disturbances, nights })).reverse();
  await shareOut(tasks, (done) => {
    if (done.kind !== 'world') return;
    all.push(done.proven);
    for (const line of lines(done.proven)) print(line);
  });
  const faults = all.flatMap((proven) => faultsOf(proven).map((fault) => `${proven.world}: ${fault}`));
  const figures = figuresOf(all, new Date());
  writeFigures(figures);
  print('Each rule, and how often it was exercised:');
  for (const [rule, { exercised }] of Object.entries(figures.rules))
    print(`  ${rule.padEnd(4)} ${exercised.toLocaleString('en')}${exercised === 0 ? ' NEVER' : ''}`);
  for (const fault of faults) print(`BROKEN ${fault}`);
  print(`${all.length} worlds, ${faults.length} violations, ${seconds()}`);
  return faults.length === 0 && Object.values(figures.rules).every(({ exercised }) => exercised > 0);
}

async function planted(): Promise<boolean> {
  let missed = 0;
  let sound = true;
  const tasks: Task[] = faults.map((_, index) => ({ kind: 'fault', index }));
  await shareOut([{ kind: 'sound', index: 0 }, { kind: 'sound', index: 1 }, ...tasks], (done) => {
    if (done.kind === 'world') return;
    const how = done.caught === null ? 'no rule is broken' : `${done.caught.rule}: ${done.caught.why}`;
    if (done.kind === 'sound') sound &&= done.caught === null;
    else if (done.caught === null) missed += 1;
    print(`${done.name} (${done.seconds.toFixed(1)} s)\n  ${how}`);
  });
  if (!sound) print('The machine breaks a rule without a fault: what is caught above proves nothing.');
  print(`${faults.length} wrong machines, ${faults.length - missed} caught, ${missed} not, ${seconds()}`);
  return sound && missed === 0;
}

const held = process.argv.includes('--planted') ? await planted() : await proof();
process.exitCode = held ? 0 : 1;
