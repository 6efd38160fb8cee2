/** Runs one command from start to clean stop, and says in one line what stands in the way when it cannot. */
import { once } from 'node:events';
import { type App, openLive, openPractice } from './app.ts';
import { carrierClient } from './carrier/twilio.ts';
import { liveConfig, practiceConfig } from './config.ts';
import { UnknownCommand } from './errors.ts';
import { createLog, type Log } from './log.ts';
import { openServer } from './store/server.ts';
import { listen } from './web/socket.ts';

type Environment = Readonly<Record<string, string | undefined>>;

const commands = {
  async practice(environment: Environment, log: Log) {
    const config = practiceConfig(environment);
    await serve('Nightjar practice line', openPractice(config, log), '127.0.0.1', config.port);
  },
  async live(environment: Environment, log: Log) {
    const config = liveConfig(environment);
    await serve('Nightjar live line', openLive(config, log, carrierClient()), config.host, config.port);
  },
  async demo() {
    const { demo } = await import('./demo/demo.ts');
    await demo();
  },
  async protocol(environment: Environment, log: Log, words: readonly string[]) {
    const { protocolCommand } = await import('./protocol/command.ts');
    await protocolCommand(words, environment, log, (text) => process.stdout.write(`${text}\n`));
  },
  async families(environment: Environment, log: Log, words: readonly string[]) {
    const { familiesCommand } = await import('./families/command.ts');
    await familiesCommand(words, environment, log, (text) => process.stdout.write(`${text}\n`));
  },
  async handover(environment: Environment, log: Log, words: readonly string[]) {
    const { handoverCommand } = await import('./handover/command.ts');
    await handoverCommand(words, environment, log, (text) => process.stdout.write(`${text}\n`));
  },
  async 'self-check'(environment: Environment, log: Log) {
    const { selfCheck } = await import('./watch/selfCheck.ts');
    const open = (url: string) => openServer(url, 1, (error) => log.warn({ error }, 'a connection broke'));
    const print = (text: string) => process.stdout.write(`${text}\n`);
    await selfCheck(environment, { httpClient: carrierClient(), fetch, open, log, nowMs: Date.now, print });
  },
  async pause(environment: Environment, log: Log, words: readonly string[]) {
    const { pauseCommand } = await import('./pauseCommand.ts');
    await pauseCommand(words, environment, log, (text) => process.stdout.write(`${text}\n`));
  },
  async 'rotate-key'(environment: Environment, log: Log) {
    const { rotateKeyCommand } = await import('./store/rotateCommand.ts');
    await rotateKeyCommand(environment, log, (text) => process.stdout.write(`${text}\n`));
  },
  async migrate(environment: Environment, log: Log) {
    const { migrateCommand } = await import('./store/migrateCommand.ts');
    await migrateCommand(environment, log, (text) => process.stdout.write(`${text}\n`));
  },
  async retention(environment: Environment, log: Log, words: readonly string[]) {
    const { retentionCommand } = await import('./retention/command.ts');
    await retentionCommand(words, environment, log, (text) => process.stdout.write(`${text}\n`));
  },
  async rota(environment: Environment, log: Log, words: readonly string[]) {
    const { rotaCommand } = await import('./rota/command.ts');
    await rotaCommand(words, environment, log, (text) => process.stdout.write(`${text}\n`));
  },
  async record(environment: Environment, log: Log, words: readonly string[]) {
    const { recordCommand } = await import('./record/command.ts');
    await recordCommand(words, environment, log, (text) => process.stdout.write(`${text}\n`));
  },
};

function isCommand(name: string | undefined): name is keyof typeof commands {
  return name !== undefined && Object.hasOwn(commands, name);
}

/** The exit code: 0 after a clean stop, 1 when it could not start. */
export async function run([name, ...words]: readonly string[], environment: Environment): Promise<number> {
  try {
    if (!isCommand(name)) throw new UnknownCommand(Object.keys(commands));
    await commands[name](environment, createLog(), words);
    return 0;
  } catch (error) {
    process.stderr.write(`${wordsOf(error)}\n`);
    return 1;
  }
}

/** Serves until SIGTERM or SIGINT, also one that came while it was still starting. */
async function serve(title: string, opening: Promise<App>, host: string, port: number): Promise<void> {
  const told = Promise.race([once(process, 'SIGTERM'), once(process, 'SIGINT')]);
  const app = await opening;
  try {
    const socket = await listen(app.web, host, port);
    process.stdout.write(`${title}: ${socket.url}\n`);
    await told;
    app.hangUp();
    await socket.close();
  } finally {
    await app.stop();
  }
}

/** A coded error says all in its message; anything else is a fault of ours and shows where it happened. */
function wordsOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const coded = 'code' in error && typeof error.code === 'string' && /^[a-z-]+$/.test(error.code);
  return coded ? error.message : (error.stack ?? error.message);
}
