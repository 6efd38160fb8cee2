/** The handover command: writes the sheet as it would be handed over now. Reads only. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { parseArgs } from 'node:util';
import { viewCase } from '#machines/case.ts';
import { protocolFile, rotaFile } from '#src/config.ts';
import { HandoverUsage } from '#src/errors.ts';
import type { Log } from '#src/log.ts';
import { gapsIn } from '#src/rota/gaps.ts';
import { keepRota } from '#src/rota/keeper.ts';
import { loadRota } from '#src/rota/rotaFile.ts';
import { shelfIn } from '#src/rota/shelf.ts';
import { loadProtocol } from '#src/seeds.ts';
import { nowOf, withExisting } from '#src/store/existing.ts';
import { gather } from './gather.ts';
import { handoverSheet } from './sheet.ts';

const usage = `usage: npm run handover [-- --out FILE]
Writes var/handover.html. The database is DATABASE_URL, or the practice line's folder, which has to be stopped first; protocol and
rota are NIGHTJAR_PROTOCOL and NIGHTJAR_ROTA, or the practice line's.`;

type Environment = Readonly<Record<string, string | undefined>>;

/** Writes the sheet. Throws `HandoverUsage` for a call it does not know, `NoLineDatabase` where there is no line to read. */
export async function handoverCommand(
  words: readonly string[],
  environment: Environment,
  log: Log,
  print: (text: string) => void,
): Promise<void> {
  const out = outOf(words);
  const { site } = loadProtocol(readFileSync(protocolFile(environment), 'utf8'));
  const file = rotaFile(environment);
  await withExisting({ environment, folder: undefined, log }, async (database, seal) => {
    const nowMs = await nowOf(database);
    const keeper = await keepRota({
      file: loadRota(readFileSync(file, 'utf8')),
      folder: dirname(file),
      timeZone: site.timeZone,
      shelf: { find: shelfIn(database, seal).find, keep: async () => undefined },
      log,
      now: async () => nowMs,
    });
    const rotaGaps = (fromMs: number, toMs: number) => gapsIn(keeper.rota(), fromMs, toMs);
    const handover = await database.transaction(async (client) => {
      await client.query('SET TRANSACTION READ ONLY');
      return gather({ seal, rotaGaps, viewCase }, client, nowMs);
    });
    mkdirSync(dirname(out), { recursive: true });
    writeFileSync(out, handoverSheet(handover, site));
    print(`The handover is in ${out}: open it and print it.`);
  });
}

function outOf(words: readonly string[]): string {
  try {
    const { values } = parseArgs({ args: [...words], options: { out: { type: 'string' } } });
    return values.out ?? 'var/handover.html';
  } catch (error) {
    throw error instanceof TypeError ? new HandoverUsage(usage) : error;
  }
}
