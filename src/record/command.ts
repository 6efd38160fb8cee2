/** The record command: prints a case for the chart, draws it, writes it as FHIR, or checks that no event was changed. Reads only. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { parseArgs } from 'node:util';
import { RecordBroken, RecordUsage } from '#src/errors.ts';
import type { Log } from '#src/log.ts';
import type { Queryable } from '#src/store/database.ts';
import { nowOf, withExisting } from '#src/store/existing.ts';
import type { Seal } from '#src/store/seal.ts';
import { courseOf } from './course.ts';
import { RecordOfRehearsal } from './errors.ts';
import { bundleOf } from './fhir/bundle.ts';
import { picture } from './picture/picture.ts';
import { allCases, findCase, readRecord } from './read.ts';
import { timeline } from './timeline.ts';
import { verifyCase } from './verify.ts';

const usage = `usage: npm run record -- CASE                    prints the case as a timeline for the chart
       npm run record -- CASE --picture FILE.svg draws it
       npm run record -- CASE --fhir FILE.json   writes it as a FHIR R4 bundle
       npm run record -- verify [CASE]           finds what was altered, moved or taken out
A case is named by its number or by its code, as pages name it. All take --data FOLDER. The database is DATABASE_URL, or the
practice line's folder, which has to be stopped first. What comes out holds what a family told: keep it as a chart is kept.`;

type Environment = Readonly<Record<string, string | undefined>>;
type Print = (text: string) => void;

/** Runs one record command. Throws `RecordUsage`, `NoSuchCase`, `RecordBroken`, or what refuses the database. */
export async function recordCommand(
  words: readonly string[],
  environment: Environment,
  log: Log,
  print: Print,
): Promise<void> {
  const { named, verifies, options } = parsed(words);
  await withExisting({ environment, folder: options.data, log }, async (database, seal) => {
    const nowMs = await nowOf(database);
    await database.transaction(async (client) => {
      await client.query('SET TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY');
      if (verifies) return verify(client, seal, named, print);
      if (named === undefined) throw new RecordUsage(usage);
      return show({ client, seal, print, nowMs }, await findCase(client, named), options);
    });
  });
}

function parsed(words: readonly string[]) {
  const text = { type: 'string' } as const;
  try {
    const options = { picture: text, fhir: text, data: text };
    const { values, positionals } = parseArgs({ args: [...words], options, allowPositionals: true });
    const verifies = positionals[0] === 'verify';
    const [named, ...more] = verifies ? positionals.slice(1) : positionals;
    if (more.length > 0) throw new RecordUsage(usage);
    return { named, verifies, options: values };
  } catch (error) {
    throw error instanceof TypeError ? new RecordUsage(usage) : error;
  }
}

async function verify(client: Queryable, seal: Seal, named: string | undefined, print: Print): Promise<void> {
  const cases = named === undefined ? await allCases(client) : [await findCase(client, named)];
  const faults: string[] = [];
  let events = 0;
  for (const id of cases) {
    const verdict = await verifyCase(client, seal, id);
    if (verdict.whole) events += verdict.events;
    else faults.push(verdict.fault);
  }
  if (faults.length > 0) throw new RecordBroken(faults);
  print(`${cases.length} ${cases.length === 1 ? 'case' : 'cases'}, ${events} events: as the line wrote them.`);
}

interface Desk {
  readonly client: Queryable;
  readonly seal: Seal;
  readonly print: Print;
  readonly nowMs: number;
}

/**
 * A picture or a bundle of a broken record would hide that it is broken, and one of a rehearsal that it is practice, so neither is
 * made; the timeline says so on top.
 */
async function show(
  { client, seal, print, nowMs }: Desk,
  caseId: number,
  { picture: svg, fhir }: { readonly picture?: string | undefined; readonly fhir?: string | undefined },
): Promise<void> {
  const verdict = await verifyCase(client, seal, caseId);
  const fault = verdict.whole ? null : verdict.fault;
  if (fault !== null && (svg !== undefined || fhir !== undefined)) throw new RecordBroken([fault]);
  const record = await readRecord(client, seal, caseId).catch((error: unknown) => {
    throw fault === null ? error : new RecordBroken([fault]); // what is broken may not even open
  });
  if (record.rehearsal && (svg !== undefined || fhir !== undefined)) throw new RecordOfRehearsal(caseId);
  const course = courseOf(record);
  if (svg === undefined && fhir === undefined) print(timeline(record, course, fault));
  if (svg !== undefined) write(svg, picture(record, course), print);
  if (fhir !== undefined) write(fhir, `${JSON.stringify(bundleOf(record, course, nowMs), null, 2)}\n`, print);
}

function write(file: string, text: string, print: Print): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
  print(`Written: ${file}`);
}
