/**
 * `npm run mutate` changes the rules in every small way and shows that the tests notice; `-- all`, or `-- paging case`, does so
 * for the rest of `machines/`. It goes on from where it was; `-- --afresh` forgets that. Ends with 1 where a score is too low or
 * a mutant lives that `survivors.yaml` does not explain.
 */
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { MutantResult } from '@stryker-mutator/api/core';
import { Stryker } from '@stryker-mutator/core';
import { z } from 'zod';
import { type Area, areas } from './areas.ts';
import { asListed, isExplained } from './survivors.ts';

const schema = z.looseObject({
  files: z.record(z.string(), z.looseObject({ mutants: z.array(z.looseObject({ status: z.string() })) })),
});

const root = fileURLToPath(new URL('../../', import.meta.url));
const print = (line: string) => process.stdout.write(`${line}\n`);

/** What was killed stays so while its code and its killer do; what lived has another try, since Stryker does not see every new test. */
function keepKilled(reportFile: string): void {
  if (!existsSync(reportFile)) return;
  const report = schema.parse(JSON.parse(readFileSync(reportFile, 'utf8')));
  for (const file of Object.values(report.files)) {
    file.mutants = file.mutants.filter(({ status }) => status === 'Killed' || status === 'Timeout');
  }
  writeFileSync(reportFile, JSON.stringify(report));
}

async function mutate({ name, code, suite }: Area, afresh: boolean): Promise<readonly MutantResult[]> {
  const incrementalFile = `${root}var/mutation/${name}.json`;
  if (afresh) rmSync(incrementalFile, { force: true });
  else keepKilled(incrementalFile);
  return await new Stryker({
    configFile: fileURLToPath(new URL('./stryker.config.json', import.meta.url)),
    mutate: [...code],
    // Stryker's own `testFiles` would take every mutant for one that can be switched on after loading.
    suite,
    incrementalFile,
  }).runMutationTest();
}

/** Whether the area stands: prints its figures and every mutant that lives unexplained. */
function judge({ name, leastScore }: Area, mutants: readonly MutantResult[], seconds: number): boolean {
  const killed = mutants.filter(({ status }) => status === 'Killed' || status === 'Timeout').length;
  const alive = mutants.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
  const unexplained = alive
    .map((mutant) => ({ mutant, listed: asListed(mutant, root) }))
    .filter(({ listed }) => !isExplained(listed));
  const score = (100 * killed) / (killed + alive.length);
  for (const { mutant, listed } of unexplained) {
    print(`  alive: ${listed.file}:${mutant.location.start.line}\n    ${listed.line}\n    becomes ${listed.becomes}`);
  }
  const explained = alive.length - unexplained.length;
  print(
    `${name}: ${mutants.length} mutants, ${killed} killed, ${alive.length} alive (${explained} explained), ` +
      `${score.toFixed(1)} % of at least ${leastScore} %, ${seconds.toFixed(0)} s`,
  );
  return killed > 0 && killed + alive.length === mutants.length && score >= leastScore && unexplained.length === 0;
}

const words = process.argv.slice(2).filter((word) => word !== '--afresh');
const wanted = words.includes('all')
  ? areas
  : areas.filter(({ name }, index) => (words.length === 0 ? index === 0 : words.includes(name)));
if (words.some((word) => word !== 'all' && !areas.some(({ name }) => name === word))) {
  print(`There is: all, ${areas.map(({ name }) => name).join(', ')}.`);
  process.exit(2);
}
let stands = true;
for (const area of wanted) {
  const sinceMs = performance.now();
  const mutants = await mutate(area, process.argv.includes('--afresh'));
  stands = judge(area, mutants, (performance.now() - sinceMs) / 1000) && stands;
}
process.exitCode = stands ? 0 : 1;
