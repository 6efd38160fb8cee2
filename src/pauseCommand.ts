/** The pause command: stops the line's advice on every process at once, or lets it go on, and records who did. */
import { parseArgs } from 'node:util';
import { PauseUsage } from './errors.ts';
import { type Pause, pauseLine, pauseNow, resumeLine } from './line/pause.ts';
import type { Log } from './log.ts';
import { nowOf, withExisting } from './store/existing.ts';
import { migrate } from './store/migrate.ts';

const usage = `usage: npm run pause -- --by NAME [--why WORDS]
       npm run pause -- resume --by NAME
Paused, no family gets advice: each text gets the emergency number, nothing through the tube, and a page to everybody on call.
The database is DATABASE_URL, or the practice line's folder, which has to be stopped first. A nurse lead can text PAUSE THE LINE.`;

type Environment = Readonly<Record<string, string | undefined>>;

/** Pauses or resumes. Throws `PauseUsage` for a call it does not know, `NoLineDatabase` where there is no line. */
export async function pauseCommand(
  words: readonly string[],
  environment: Environment,
  log: Log,
  print: (text: string) => void,
): Promise<void> {
  const { resume, by, why } = asked(words);
  await withExisting({ environment, folder: undefined, log }, async (database, seal, kind) => {
    await migrate(database, kind);
    const nowMs = await nowOf(database);
    const done = await database.transaction((client) =>
      resume ? resumeLine(client, seal, nowMs, by, null) : pauseLine(client, seal, { atMs: nowMs, by, why }, null),
    );
    if (done) log.error({}, resume ? 'the line was resumed by command' : 'the line was paused by command');
    print(standing(await pauseNow(database, seal)));
  });
}

function standing(pause: Pause | null): string {
  if (pause === null) return 'The line is not paused: it gives advice.';
  const why = pause.why === null ? '' : `: ${pause.why}`;
  return `The line is paused since ${new Date(pause.atMs).toISOString()} by ${pause.by}${why}.`;
}

function asked(words: readonly string[]) {
  const { values, positionals } = parsed(words);
  const by = values.by?.trim() ?? '';
  const known = positionals.length === 0 || (positionals.length === 1 && positionals[0] === 'resume');
  if (by === '' || !known) throw new PauseUsage(usage);
  return { resume: positionals.length === 1, by, why: values.why ?? null };
}

function parsed(words: readonly string[]) {
  try {
    const options = { by: { type: 'string' }, why: { type: 'string' } } as const;
    return parseArgs({ args: [...words], options, allowPositionals: true });
  } catch (error) {
    throw error instanceof TypeError ? new PauseUsage(usage) : error;
  }
}
