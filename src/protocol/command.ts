/** The protocol command: prints the sheet, signs it, says how it stands, plays past cases on another one, lists what to review. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { parseArgs } from 'node:util';
import type { Protocol } from '#machines/protocol/settings.ts';
import { protocolFile } from '#src/config.ts';
import { ConfigRefused, ProtocolUsage } from '#src/errors.ts';
import type { Log } from '#src/log.ts';
import { loadProtocol } from '#src/seeds.ts';
import { nowOf, type Source, withExisting } from '#src/store/existing.ts';
import { compareCase, type Difference, type PastCase } from './compare.ts';
import { compareReport } from './compareReport.ts';
import { languageNames } from './languages.ts';
import { eachPastCase } from './pastCases.ts';
import { type Review, reviewOf, reviewReport, sampled } from './review.ts';
import { sheet } from './sheet/page.ts';
import { languagesOf, type Standing, sign, signatureFileOf, standingOf } from './signature.ts';

const usage = `usage: npm run protocol -- sheet   [--protocol FILE] [--out FILE]
       npm run protocol -- sign    --by "NAME" --role "ROLE" [--regulatory "DECISION"] [--languages es,fr] [--protocol FILE]
       npm run protocol -- check   [--protocol FILE]
       npm run protocol -- compare OTHER.yaml [--data FOLDER]
       npm run protocol -- review  [--data FOLDER]
The file is NIGHTJAR_PROTOCOL, or the practice line's. "compare" and "review" read DATABASE_URL, or the practice line's folder.`;

const weekMs = 7 * 24 * 3_600_000;

type Environment = Readonly<Record<string, string | undefined>>;
type Print = (text: string) => void;

/** Runs one protocol command. Throws `ProtocolUsage` for a call it does not know, and whatever refuses the files it names. */
export async function protocolCommand(
  words: readonly string[],
  environment: Environment,
  log: Log,
  print: Print,
): Promise<void> {
  const { command, operands, options } = parsed(words);
  const file = options.protocol ?? protocolFile(environment);
  const past = { environment, folder: options.data, log };
  switch (command) {
    case 'sheet':
      return printSheet(file, options.out ?? 'var/protocol.html', print);
    case 'sign':
      return signFile(file, options, print);
    case 'check':
      return print(standingWords(standingOf(file, readProtocol(file))));
    case 'compare':
      return compareAll(readProtocol(operand(operands)), past, print);
    case 'review':
      return review(readProtocol(file).site.timeZone, past, print);
    default:
      throw new ProtocolUsage('sheet, sign, check, compare or review?', usage);
  }
}

function parsed(words: readonly string[]) {
  const text = { type: 'string' } as const;
  const options = { protocol: text, out: text, by: text, role: text, regulatory: text, languages: text, data: text };
  try {
    const { values, positionals } = parseArgs({ args: [...words], options, allowPositionals: true });
    const [command, ...operands] = positionals;
    return { command, operands, options: values };
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new ProtocolUsage(error.message, usage);
  }
}

function printSheet(file: string, out: string, print: Print): void {
  const protocol = readProtocol(file);
  mkdirSync(dirname(out), { recursive: true });
  writeFileSync(out, sheet(protocol, standingOf(file, protocol)));
  print(`The sheet is in ${out}: open it, print it, read it, sign it.`);
}

interface SignOptions {
  readonly by?: string | undefined;
  readonly role?: string | undefined;
  readonly regulatory?: string | undefined;
  /** Codes with commas between them. */
  readonly languages?: string | undefined;
}

function signFile(file: string, { by, role, regulatory, languages }: SignOptions, print: Print): void {
  if (by === undefined || role === undefined) throw new ProtocolUsage('who signs, and in which role?', usage);
  const signer = { name: by, role, regulatory: regulatory ?? null, languages: languages?.split(',') };
  const { hash } = sign(file, readProtocol(file), signer, Date.now());
  print(`Signed in ${signatureFileOf(file)}: content ${hash}`);
  if (regulatory === undefined) print('No regulatory decision is recorded: a live line will not start on it.');
}

/** How a protocol stands, in words. */
export function standingWords(standing: Standing): string {
  if (standing.is === 'unsigned') return 'unsigned';
  const { name, role, signedAt, hash } = standing.signature;
  const signed = `signed by ${name}, ${role}, ${signedAt}, content ${hash}`;
  const languages = languagesOf(standing).map((code) => languageNames[code]);
  return standing.is === 'signed'
    ? `${signed}\nlanguages: ${languages.join(', ')}`
    : `changed since it was ${signed}\nchanged: ${standing.changed.join(', ')}`;
}

async function compareAll(other: Protocol, past: Source, print: Print): Promise<void> {
  const differences: Difference[] = [];
  let count = 0;
  await eachOf(past, (given) => {
    count += 1;
    const difference = compareCase(given, other);
    if (difference !== null) differences.push(difference);
  });
  print(compareReport({ count, differences, zone: other.site.timeZone }));
}

async function review(zone: string, past: Source, print: Print): Promise<void> {
  const reviews: Review[] = [];
  await eachOf(past, (given, texts, nowMs) => void reviews.push(reviewOf(given, texts, nowMs - weekMs)));
  const readings = sampled(reviews.flatMap((one) => one.readings));
  print(
    reviewReport(
      {
        readings,
        clearances: reviews.flatMap((one) => one.clearances),
        reports: reviews.flatMap((one) => one.reports),
      },
      zone,
    ),
  );
}

async function eachOf(
  past: Source,
  visit: (given: PastCase, texts: readonly string[], nowMs: number) => void,
): Promise<void> {
  await withExisting(past, async (database, seal) => {
    const nowMs = await nowOf(database);
    await eachPastCase(database, seal, (given, texts) => visit(given, texts, nowMs));
  });
}

function operand(operands: readonly string[]): string {
  const [file] = operands;
  if (file === undefined) throw new ProtocolUsage('compare with which protocol file?', usage);
  return file;
}

function readProtocol(file: string): Protocol {
  try {
    return loadProtocol(readFileSync(file, 'utf8'));
  } catch (error) {
    if (!(error instanceof Error && 'syscall' in error && 'code' in error)) throw error;
    throw new ConfigRefused([`${file}: the file cannot be read (${error.code})`]);
  }
}
