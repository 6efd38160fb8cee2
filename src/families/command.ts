/** The families command: how a site enrols its families, changes their files, and sees which of them want a look. */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { today } from '#machines/rules/tractAge.ts';
import { protocolFile } from '#src/config.ts';
import { type Enrolled, enrolledFamilies } from '#src/line/families.ts';
import type { Log } from '#src/log.ts';
import { loadProtocol } from '#src/seeds.ts';
import type { Database } from '#src/store/database.ts';
import { nowOf, withExisting } from '#src/store/existing.ts';
import { type LineKind, migrate } from '#src/store/migrate.ts';
import type { Seal } from '#src/store/seal.ts';
import { childrenOf } from './children.ts';
import { cellsOf, columns } from './columns.ts';
import { addChild, changeChild, type Desk, enrolledBy, importFile, takeOff } from './desk.ts';
import { FamiliesUsage } from './errors.ts';
import { agedOf, reviewOf } from './review.ts';

const usage = `usage: npm run families -- import FILE.csv --by NAME
       npm run families -- add COLUMN=VALUE ... --by NAME
       npm run families -- change --phone NUMBER [--child NAME] COLUMN=VALUE ... --by NAME
       npm run families -- remove --phone NUMBER --by NAME
       npm run families -- show [--phone NUMBER]
       npm run families -- review
The columns are ${columns.join(', ')}.
A child is a line; children of one phone are one family. In a file a family's lines are its whole file, and one line that cannot
stand leaves everything as it was. The database is DATABASE_URL, or the practice line's folder, which has to be stopped first.`;

type Environment = Readonly<Record<string, string | undefined>>;
type Print = (text: string) => void;

interface Call {
  readonly word: string;
  readonly operands: readonly string[];
  readonly phone: string | undefined;
  readonly child: string | undefined;
  readonly by: string | undefined;
}

/** Runs one call. Throws `FamiliesUsage` for one it does not know, `FamiliesRefused` and `NoSuchFamily` where nothing was changed. */
export async function familiesCommand(
  words: readonly string[],
  environment: Environment,
  log: Log,
  print: Print,
): Promise<void> {
  await withExisting({ environment, folder: undefined, log }, familiesCall(words, environment, print));
}

/** One call on an open database; that it is complete and known is seen before any is opened. Throws as `familiesCommand` does. */
export function familiesCall(
  words: readonly string[],
  environment: Environment,
  print: Print,
): (database: Database, seal: Seal, kind: LineKind) => Promise<void> {
  const call = parsed(words);
  const act = actOf(call, print);
  const { site } = loadProtocol(readFileSync(protocolFile(environment), 'utf8'));
  return async (database, seal, kind) => {
    await migrate(database, kind);
    const nowMs = await nowOf(database);
    await database.transaction((client) =>
      act({ client, seal, nowMs, today: today(nowMs, site.timeZone), by: call.by ?? '' }),
    );
  };
}

/** What the call does, known to be complete before any database is opened. */
function actOf({ word, operands, phone, child, by }: Call, print: Print): (desk: Desk) => Promise<void> {
  const changes = word !== 'show' && word !== 'review';
  if (changes && by === undefined) throw new FamiliesUsage('say who does it: --by NAME', usage);
  if (word === 'import') {
    const [file] = operands;
    if (file === undefined) throw new FamiliesUsage('name a file', usage);
    const text = textOf(file);
    return (desk) => importFile(desk, text, print);
  }
  if (word === 'add') {
    const cells = cellsIn(operands);
    return (desk) => addChild(desk, cells, print);
  }
  if (word === 'review') return (desk) => review(desk, print);
  if (word === 'show' && phone === undefined) return (desk) => showAll(desk, print);
  if (phone === undefined) throw new FamiliesUsage('name the family by its --phone', usage);
  if (word === 'show') return async (desk) => show(await enrolledBy(desk, phone), print);
  if (word === 'remove') return (desk) => takeOff(desk, phone).then(() => print('removed'));
  const cells = cellsIn(operands);
  return (desk) => changeChild(desk, phone, child ?? null, cells, print);
}

async function showAll(desk: Desk, print: Print): Promise<void> {
  for (const { number, file } of await enrolledFamilies(desk, desk.client)) print(`${number}  ${namesOf(file)}`);
}

function show({ number, morePhones, file }: Enrolled, print: Print): void {
  for (const child of childrenOf(file)) {
    const cells = cellsOf({ number, phones: morePhones, child });
    print(columns.map((column) => `${column}: ${cells[column] || '-'}`).join('\n'));
  }
}

/** The files whose facts are old or missing, a line each child. */
async function review(desk: Desk, print: Print): Promise<void> {
  const families = await enrolledFamilies(desk, desk.client);
  const lines = families.flatMap(({ number, file }) =>
    childrenOf(file).flatMap((child) => {
      const why = [...reviewOf(child, desk.nowMs), ...agedOf(child, desk.nowMs)];
      return why.length === 0 ? [] : [`${number}  ${child.child ?? 'unnamed child'}: ${why.join('; ')}`];
    }),
  );
  print(lines.length === 0 ? 'every file is complete and new' : lines.join('\n'));
}

function namesOf(file: Enrolled['file']): string {
  return childrenOf(file)
    .map(({ child }) => child ?? 'unnamed child')
    .join(', ');
}

const known = ['import', 'add', 'change', 'remove', 'show', 'review'];

function parsed(words: readonly string[]): Call {
  const text = { type: 'string' } as const;
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options: { phone: text, child: text, by: text },
      allowPositionals: true,
    });
    const [word = '', ...operands] = positionals;
    if (!known.includes(word)) throw new FamiliesUsage('say what to do', usage);
    return { word, operands, phone: values.phone, child: values.child, by: values.by };
  } catch (error) {
    throw error instanceof TypeError ? new FamiliesUsage(error.message, usage) : error;
  }
}

/** "weightKg=7.2" names a column and what stands in it. */
function cellsIn(operands: readonly string[]): Record<string, string> {
  if (operands.length === 0) throw new FamiliesUsage('name columns and their values', usage);
  return Object.fromEntries(
    operands.map((operand) => {
      const at = operand.indexOf('=');
      if (at < 1) throw new FamiliesUsage(`"${operand}" is no COLUMN=VALUE`, usage);
      return [operand.slice(0, at), operand.slice(at + 1)];
    }),
  );
}

function textOf(file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file));
  } catch (error) {
    throw new FamiliesUsage(
      `the file cannot be read as UTF-8 (${error instanceof Error ? error.message : error})`,
      usage,
    );
  }
}
