/** The rota command: prints who is on call in the weeks to come and what does not hold; a gap is a failure. */
import { readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { parseArgs } from 'node:util';
import { DateTime } from 'luxon';
import { protocolFile, rotaFile } from '#src/config.ts';
import { RotaGap, RotaUsage } from '#src/errors.ts';
import type { Log } from '#src/log.ts';
import { loadProtocol } from '#src/seeds.ts';
import { checkRota, weeksMs } from './check.ts';
import { keepRota } from './keeper.ts';
import { loadRota } from './rotaFile.ts';

const usage = `usage: npm run rota -- check [--weeks NUMBER] [--from YYYY-MM-DD]
The files are NIGHTJAR_ROTA and NIGHTJAR_PROTOCOL, or the practice line's. Four weeks from now on unless told otherwise.`;

type Environment = Readonly<Record<string, string | undefined>>;

/** Prints the check. Throws `RotaGap` where a line has nobody, `RotaUsage` for a call it does not know. */
export async function rotaCommand(
  words: readonly string[],
  environment: Environment,
  log: Log,
  print: (text: string) => void,
): Promise<void> {
  const { weeks, from } = parsed(words);
  const { site } = loadProtocol(readFileSync(protocolFile(environment), 'utf8'));
  const file = rotaFile(environment);
  const fromMs = from === undefined ? Date.now() : dayMsOf(from, site.timeZone);
  const keeper = await keepRota({
    file: loadRota(readFileSync(file, 'utf8')),
    folder: dirname(file),
    timeZone: site.timeZone,
    shelf: { find: async () => null, keep: async () => undefined },
    log,
    now: async () => fromMs,
  });
  const { lines, gaps } = checkRota(keeper.rota(), site, fromMs, fromMs + weeksMs(weeks));
  print(lines.join('\n'));
  if (gaps > 0) throw new RotaGap(gaps);
}

function parsed(words: readonly string[]): { readonly weeks: number; readonly from: string | undefined } {
  const text = { type: 'string' } as const;
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options: { weeks: text, from: text },
      allowPositionals: true,
    });
    const weeks = Number(values.weeks ?? 4);
    if (positionals.join(' ') !== 'check' || !Number.isInteger(weeks) || weeks < 1 || weeks > 52)
      throw new RotaUsage(usage);
    return { weeks, from: values.from };
  } catch (error) {
    throw error instanceof TypeError ? new RotaUsage(usage) : error;
  }
}

function dayMsOf(day: string, zone: string): number {
  const local = DateTime.fromFormat(day, 'yyyy-MM-dd', { zone });
  if (!local.isValid) throw new RotaUsage(usage);
  return local.toMillis();
}
