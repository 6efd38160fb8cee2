/** The self-check: everything a live line needs, tried once before a night depends on it. Reads only; sends nothing. */
import { readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { RequestClient } from 'twilio';
import twilio from 'twilio';
import { type LiveConfig, liveConfig } from '#src/config.ts';
import { SelfCheckFailed } from '#src/errors.ts';
import type { Log } from '#src/log.ts';
import { requireSigned } from '#src/protocol/signature.ts';
import { gapsIn } from '#src/rota/gaps.ts';
import { keepRota } from '#src/rota/keeper.ts';
import { loadRota } from '#src/rota/rotaFile.ts';
import { loadProtocol } from '#src/seeds.ts';
import type { Database } from '#src/store/database.ts';

type Environment = Readonly<Record<string, string | undefined>>;

export interface SelfCheckParts {
  readonly httpClient: RequestClient;
  readonly fetch: typeof fetch;
  readonly open: (url: string) => Database;
  readonly log: Log;
  readonly nowMs: () => number;
  readonly print: (text: string) => void;
}

interface Check {
  readonly name: string;
  /** What was found, in words. Throws what is wrong. */
  readonly look: (config: LiveConfig, parts: SelfCheckParts) => Promise<string>;
}

const weeksAhead = 2;
const weekMs = 7 * 86_400_000;
/** Further apart and "an hour ago" is not what it says; common practice, no source. */
const mostSkewMs = 5_000;

const checks: readonly Check[] = [
  {
    name: 'protocol',
    look: async ({ protocolFile }) => {
      const protocol = loadProtocol(readFileSync(protocolFile, 'utf8'));
      requireSigned(protocolFile, protocol);
      return 'within its bounds, and signed as it is';
    },
  },
  {
    name: 'rota',
    look: async ({ rotaFile, protocolFile }, { log, nowMs }) => {
      const { site } = loadProtocol(readFileSync(protocolFile, 'utf8'));
      const keeper = await keepRota({
        file: loadRota(readFileSync(rotaFile, 'utf8')),
        folder: dirname(rotaFile),
        timeZone: site.timeZone,
        shelf: { find: async () => null, keep: async () => undefined },
        log,
        now: async () => nowMs(),
      });
      const gaps = gapsIn(keeper.rota(), nowMs(), nowMs() + weeksAhead * weekMs);
      if (gaps.length > 0)
        throw new Error(`${gaps.length} gaps in the next ${weeksAhead} weeks: npm run rota -- check`);
      return `somebody on every line for ${weeksAhead} weeks`;
    },
  },
  {
    name: 'database',
    look: async ({ databaseUrl }, { open }) => {
      const database = open(databaseUrl);
      try {
        const [row] = await database.query<{ version: string }>('SHOW server_version');
        return `PostgreSQL ${row?.version} answers`;
      } finally {
        await database.close();
      }
    },
  },
  {
    name: 'clock',
    look: async ({ databaseUrl }, { open, nowMs }) => {
      const database = open(databaseUrl);
      try {
        const beforeMs = nowMs();
        const [row] = await database.query<{ ms: number }>('SELECT (extract(epoch FROM now()) * 1000)::bigint AS ms');
        const skewMs = Math.max(0, Math.abs((row?.ms ?? 0) - (beforeMs + nowMs()) / 2));
        if (skewMs > mostSkewMs) throw new Error(`the database's clock is ${Math.round(skewMs / 1000)} s off ours`);
        return "ours and the database's agree";
      } finally {
        await database.close();
      }
    },
  },
  {
    name: 'carrier',
    look: async ({ accountSid, tokens, from, publicUrl }, { httpClient }) => {
      const client = twilio(accountSid, tokens[0], { httpClient });
      const [number] = await client.incomingPhoneNumbers.list({ phoneNumber: from, limit: 1 });
      if (number === undefined) throw new Error('the account does not own the number in TWILIO_FROM');
      const wrong = [
        ...(number.smsUrl === `${publicUrl}/carrier/text` ? [] : ['texts do not come to PUBLIC_URL/carrier/text']),
        ...(number.voiceUrl === `${publicUrl}/carrier/call` ? [] : ['calls do not come to PUBLIC_URL/carrier/call']),
        ...(number.smsFallbackUrl ? [] : ['no fallback address for texts is set']),
        ...(number.voiceFallbackUrl ? [] : ['no fallback address for calls is set']),
      ];
      if (wrong.length > 0) throw new Error(wrong.join('; '));
      return 'the number is ours and its addresses lead here, with a fallback';
    },
  },
  {
    name: 'webhook',
    look: async ({ publicUrl }, { fetch }) => {
      const healthy = await fetch(`${publicUrl}/healthz`, { signal: AbortSignal.timeout(10_000) });
      if (healthy.status !== 200) throw new Error(`PUBLIC_URL/healthz answers ${healthy.status}`);
      const forged = await fetch(`${publicUrl}/carrier/text`, { method: 'POST', signal: AbortSignal.timeout(10_000) });
      if (forged.status !== 403) throw new Error(`an unsigned text is answered ${forged.status}, not 403`);
      return 'reached from here, and refuses what is not signed';
    },
  },
];

/** Prints a line a check. Throws `SelfCheckFailed` where one fails, `ConfigRefused` where the environment is not whole. */
export async function selfCheck(environment: Environment, parts: SelfCheckParts): Promise<void> {
  const config = liveConfig(environment);
  parts.print('ok    settings: complete');
  let failed = 0;
  for (const { name, look } of checks) {
    try {
      parts.print(`ok    ${name}: ${await look(config, parts)}`);
    } catch (error) {
      failed += 1;
      parts.print(`FAIL  ${name}: ${error instanceof Error ? error.message || error.name : 'broken'}`);
    }
  }
  if (failed > 0) throw new SelfCheckFailed(failed);
}
