/** The retention command: what is to go, purging it, a hold on a case, and a family's copy or erasure. */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { retentionDays } from '#src/config.ts';
import { NoSuchCase, RecordBroken } from '#src/errors.ts';
import type { Log } from '#src/log.ts';
import { allCases } from '#src/record/read.ts';
import type { Database } from '#src/store/database.ts';
import { nowOf, withExisting } from '#src/store/existing.ts';
import type { Seal } from '#src/store/seal.ts';
import { RetentionUsage } from './errors.ts';
import { eraseFamily, exportFamily } from './family.ts';
import { type Hand, hold, overdueCases, purge } from './purge.ts';

const usage = `usage: npm run retention -- show                          what is over its time
       npm run retention -- purge --by NAME               erases it
       npm run retention -- hold CASE --by NAME           keeps a case until it is released
       npm run retention -- release CASE --by NAME
       npm run retention -- export NUMBER --out FILE      all that is kept of a family, as JSON
       npm run retention -- erase NUMBER --by NAME        erases all of it
NIGHTJAR_RETENTION_DAYS says how long a closed case is kept. The database is DATABASE_URL, as its owner, or the practice line's folder,
which has to be stopped first.`;

type Environment = Readonly<Record<string, string | undefined>>;
type Print = (text: string) => void;
type Work = (database: Database, seal: Seal, nowMs: number) => Promise<void>;

const dayMs = 86_400_000;
const aNumber = /^\+[0-9]{7,15}$/;

/** Runs one call. Throws `RetentionUsage` for one it does not know, and what refuses it. */
export async function retentionCommand(
  words: readonly string[],
  environment: Environment,
  log: Log,
  print: Print,
): Promise<void> {
  const work = workOf(words, environment, print);
  await withExisting({ environment, folder: undefined, log }, async (database, seal) =>
    work(database, seal, await nowOf(database)),
  );
}

function workOf(words: readonly string[], environment: Environment, print: Print): Work {
  const { word, operand, by, out } = parsed(words);
  const handAt = (nowMs: number): Hand => {
    if (by === undefined) throw new RetentionUsage('say who does it: --by NAME', usage);
    return { nowMs, by };
  };
  switch (word) {
    case 'show':
      return show(retentionDays(environment), print);
    case 'purge':
      handAt(0);
      return purgeNow(retentionDays(environment), handAt, print);
    case 'hold':
    case 'release':
      handAt(0);
      return holdNow(caseIn(operand), word === 'hold', handAt, print);
    case 'export':
      if (out === undefined) throw new RetentionUsage('say where to: --out FILE', usage);
      return exportNow(numberIn(operand), out, print);
    case 'erase':
      handAt(0);
      return async (database, seal, nowMs) => {
        const number = numberIn(operand);
        const cases = await database.transaction((client) => eraseFamily(client, seal, number, handAt(nowMs)));
        print(`Erased, ${cases} cases with it. Backups still have it until they are overwritten.`);
      };
    default:
      throw new RetentionUsage('say what to do', usage);
  }
}

function show(days: number, print: Print): Work {
  return async (database, _seal, nowMs) => {
    const cases = await overdueCases(database, nowMs - days * dayMs);
    print(
      `${cases.length} cases were closed more than ${days} days ago and are not on hold: ${cases.join(', ') || 'none'}`,
    );
  };
}

function purgeNow(days: number, handAt: (nowMs: number) => Hand, print: Print): Work {
  return async (database, seal, nowMs) => {
    const { cases, phones, broken } = await purge(database, seal, nowMs - days * dayMs, handAt(nowMs));
    print(
      `Erased: ${cases} cases, the numbers of ${phones} phones. Backups still have them until they are overwritten.`,
    );
    if (broken.length > 0)
      throw new RecordBroken(broken.map((id) => `case ${id} is kept until somebody has looked at it`));
  };
}

function holdNow(caseId: number, on: boolean, handAt: (nowMs: number) => Hand, print: Print): Work {
  return (database, seal, nowMs) =>
    database.transaction(async (client) => {
      const done = await hold(client, seal, caseId, on, handAt(nowMs));
      if (!done) throw new NoSuchCase((await allCases(client)).length);
      print(`case ${caseId}: ${on ? 'on hold' : 'released'}`);
    });
}

/** Readable by nobody else on the machine. */
function exportNow(number: string, out: string, print: Print): Work {
  return async (database, seal) => {
    writeFileSync(out, `${JSON.stringify(await exportFamily(database, seal, number), null, 2)}\n`, { mode: 0o600 });
    print(`Written: ${out}. It holds all that a family told: give it to nobody else.`);
  };
}

function parsed(words: readonly string[]) {
  const text = { type: 'string' } as const;
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options: { by: text, out: text },
      allowPositionals: true,
    });
    const [word, operand, ...more] = positionals;
    if (more.length > 0) throw new RetentionUsage('too many words', usage);
    return { word, operand, ...values };
  } catch (error) {
    throw error instanceof TypeError ? new RetentionUsage('not understood', usage) : error;
  }
}

function caseIn(operand: string | undefined): number {
  if (operand === undefined || !/^[0-9]{1,12}$/.test(operand))
    throw new RetentionUsage('name a case by its number', usage);
  return Number(operand);
}

function numberIn(operand: string | undefined): string {
  if (operand === undefined || !aNumber.test(operand))
    throw new RetentionUsage('name a family by its phone: a plus sign and 7 to 15 digits', usage);
  return operand;
}
