/** Signing: who, when and what is kept beside the protocol file, and any change afterwards is seen and named. */
import { execFile } from 'node:child_process';
import { cp, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { pino } from 'pino';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openLive, openPractice } from '#src/app.ts';
import { carrierClient } from '#src/carrier/twilio.ts';
import { liveConfig } from '#src/config.ts';
import { ProtocolNotSigned, ProtocolUsage, RegulatoryDecisionMissing } from '#src/errors.ts';
import { protocolCommand } from '#src/protocol/command.ts';
import { contentOf } from '#src/protocol/content.ts';
import { languagesOf, standingOf } from '#src/protocol/signature.ts';
import { loadProtocol } from '#src/seeds.ts';
import { SeedsRefused } from '#src/seedsErrors.ts';
import { listen } from '#src/web/socket.ts';
import { copyEmpty } from '#tests/store/empty.ts';

const silent = pino({ enabled: false });
const signer = ['--by', 'Ada Larkfield', '--role', 'Nurse practitioner'];
const decision = ['--regulatory', 'Used inside the hospital only, decided by its board'];

let folder: string;
let file: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nightjar-sign-'));
  await cp('seeds', folder, { recursive: true });
  file = join(folder, 'protocol.yaml');
});
afterEach(() => rm(folder, { recursive: true, force: true }));

async function protocol(...words: string[]): Promise<string> {
  const printed: string[] = [];
  await protocolCommand([...words, '--protocol', file], {}, silent, (text) => printed.push(text));
  return printed.join('\n');
}

const contentShape = z.object({
  hash: z.string(),
  parts: z.object({ settings: z.string(), machines: z.string(), wording: z.string() }),
});

const change = async (from: string, to: string, path = file) => {
  const text = await readFile(path, 'utf8');
  expect(text).toContain(from);
  await writeFile(path, text.replace(from, to));
};

describe('signing', () => {
  it('records who, in which role, when and which content, its parts apart', async () => {
    expect(await protocol('check')).toBe('unsigned');
    const before = Date.now();
    await protocol('sign', ...signer, ...decision);
    const { hash, parts } = contentOf(loadProtocol(await readFile(file, 'utf8')));
    const kept = await readFile(join(folder, 'protocol.signed.yaml'), 'utf8');
    for (const value of ['Ada Larkfield', 'Nurse practitioner', decision[1], hash, ...Object.values(parts)])
      expect(kept).toContain(value);
    const signedAt = Date.parse(/^signedAt: (.+)$/m.exec(kept)?.[1] ?? '');
    expect(signedAt).toBeGreaterThanOrEqual(before);
    expect(signedAt).toBeLessThanOrEqual(Date.now());
    expect(await protocol('check')).toMatch(/^signed by Ada Larkfield, Nurse practitioner, 20/);
  });

  it('says that a value changed, and is whole again once it is back', async () => {
    await protocol('sign', ...signer);
    await change('phLimit: 6', 'phLimit: 5');
    expect(await protocol('check')).toMatch(/^changed since .*\nchanged: settings$/s);
    await change('phLimit: 5', 'phLimit: 6');
    expect(await protocol('check')).toMatch(/^signed/);
  });

  it('counts a fact of the site as a setting, not as wording', async () => {
    await protocol('sign', ...signer);
    await change("Owlet Hill Children's Hospital", 'Larkfield Hospital');
    expect(await protocol('check')).toMatch(/changed: settings$/);
  });

  it('does not mind how the file is written', async () => {
    await protocol('sign', ...signer);
    await change('  phLimit: 6\n', '  # looked at again\n  phLimit: 6.0\n');
    expect(await protocol('check')).toMatch(/^signed/);
  });

  it('refuses a signature without a name or role, one written by hand, and a call it does not know', async () => {
    await expect(protocol('sign', '--by', 'Ada')).rejects.toThrow(ProtocolUsage);
    await expect(protocol('sign', '--by', ' ', '--role', 'Nurse')).rejects.toThrow(SeedsRefused);
    await expect(protocol('praise')).rejects.toThrow(/usage: npm run protocol/);
    await expect(protocol('check', '--loud')).rejects.toThrow(ProtocolUsage);
    await protocol('sign', ...signer);
    const settings = contentOf(loadProtocol(await readFile(file, 'utf8'))).parts.settings;
    await change(`settings: ${settings}`, `settings: ${'a'.repeat(64)}`, join(folder, 'protocol.signed.yaml'));
    await expect(protocol('check')).rejects.toThrow(/changed by hand/);
  });

  it('speaks a draft language only once the signature names it', async () => {
    const stands = async () => standingOf(file, loadProtocol(await readFile(file, 'utf8')));
    expect(languagesOf(await stands())).toEqual(['en']);
    await protocol('sign', ...signer);
    expect(languagesOf(await stands())).toEqual(['en']);
    await protocol('sign', ...signer, '--languages', 'es');
    expect(languagesOf(await stands())).toEqual(['en', 'es']);
    expect(await protocol('check')).toMatch(/\nlanguages: English, Spanish$/);
    await change('phLimit: 6', 'phLimit: 5');
    expect(languagesOf(await stands())).toEqual(['en']);
    await expect(protocol('sign', ...signer, '--languages', 'es,de')).rejects.toThrow(/one of es, fr/);
  });

  it('refuses a protocol that is not there or out of bounds', async () => {
    await change('phLimit: 6', 'phLimit: 7');
    await expect(protocol('sign', ...signer)).rejects.toThrow(/phLimit is 7/);
    await rm(file);
    await expect(protocol('sign', ...signer)).rejects.toThrow(/cannot be read \(ENOENT\)/);
  });
});

describe('a change to the code', () => {
  const run = promisify(execFile);

  it('is a change of the machines or of the wording, and of nothing else', async () => {
    const house = join(folder, 'house');
    for (const part of ['machines', 'src', 'seeds', 'package.json']) {
      await cp(part, join(house, part), { recursive: true });
    }
    await symlink(resolve('node_modules'), join(house, 'node_modules'));
    const script = `import { readFileSync } from 'node:fs';
      import { contentOf } from './src/protocol/content.ts';
      import { loadProtocol } from './src/seeds.ts';
      console.log(JSON.stringify(contentOf(loadProtocol(readFileSync('seeds/protocol.yaml', 'utf8')))));`;
    const content = async () => {
      const { stdout } = await run(process.execPath, ['--input-type=module', '--eval', script], { cwd: house });
      return contentShape.parse(JSON.parse(stdout));
    };
    const first = await content();
    expect(first).toEqual(contentOf(loadProtocol(await readFile(file, 'utf8'))));
    await change('reading.high', 'reading.low', join(house, 'machines/rules/phVerdict.ts'));
    const second = await content();
    expect(second.parts).toEqual({ ...first.parts, machines: second.parts.machines });
    expect(second.parts.machines).not.toBe(first.parts.machines);
    await change('Stop any feed', 'Stop the feed', join(house, 'src/wording/en/safety.ts'));
    const third = await content();
    expect(third.parts).toEqual({ ...second.parts, wording: third.parts.wording });
    expect(third.parts.wording).not.toBe(second.parts.wording);
    expect(new Set([first.hash, second.hash, third.hash]).size).toBe(3);
  });
});

describe('a live line', () => {
  const environment = () => ({
    DATABASE_URL: 'postgresql://me@127.0.0.1:1/none',
    NIGHTJAR_KEY: Buffer.alloc(32, 7).toString('base64'),
    NIGHTJAR_PROTOCOL: file,
    NIGHTJAR_ROTA: join(folder, 'rota.yaml'),
    PUBLIC_URL: 'https://line.example',
    TWILIO_ACCOUNT_SID: 'AC1',
    TWILIO_AUTH_TOKEN: 'token',
    TWILIO_FROM: '+12025550100',
  });
  const start = () => openLive(liveConfig(environment()), silent, carrierClient());

  it('does not start on a protocol that nobody signed', async () => {
    await expect(start()).rejects.toThrow(ProtocolNotSigned);
    await expect(start()).rejects.toThrow(/nobody has signed it/);
  });

  it('does not start on one that changed since, and says which part', async () => {
    await protocol('sign', ...signer, ...decision);
    await change('recheckMinutes: 60', 'recheckMinutes: 30');
    await expect(start()).rejects.toMatchObject({ code: 'protocol-not-signed', changed: ['settings'] });
    await expect(start()).rejects.toThrow(/this changed: settings/);
  });

  it('does not start without the site’s regulatory decision', async () => {
    await protocol('sign', ...signer);
    await expect(start()).rejects.toThrow(RegulatoryDecisionMissing);
  });

  it('goes on to its database once all of that is there', async () => {
    await protocol('sign', ...signer, ...decision);
    await expect(start()).rejects.toMatchObject({ code: 'database-unreachable' });
  });
});

describe('a practice line', () => {
  const open = () =>
    openPractice({ port: 0, databaseUrl: null, dataFolder: join(folder, 'data'), seedsFolder: folder }, silent);
  const family = '+12125550101';

  async function text(app: Awaited<ReturnType<typeof open>>, body: string) {
    const id = `${body} ${Math.random()}`;
    await app.line.hear({ from: family, body, id, cause: id });
    await app.line.settle(id);
  }

  async function standing(app: Awaited<ReturnType<typeof open>>): Promise<unknown> {
    const socket = await listen(app.web, '127.0.0.1', 0);
    const state = z.object({ protocol: z.string() }).parse(await (await fetch(`${socket.url}/practice/state`)).json());
    app.hangUp();
    await socket.close();
    return state.protocol;
  }

  it('says whether its protocol is signed, and lets a case keep the one it began with', async () => {
    await copyEmpty(join(folder, 'data'));
    await protocol('sign', ...signer);
    const before = await open();
    expect(await standing(before)).toBe('signed');
    await text(before, 'wrens g tube came out 10 min ago');
    const began = await before.line.newestCase(family);
    await before.stop();

    await change('phLimit: 6', 'phLimit: 5');
    const after = await open();
    expect(await standing(after)).toBe('unsigned');
    for (const body of ['no', 'yes', 'it burst', 'yes', 'its in, easy', 'no', 'yes', 'yes', '5.5'])
      await text(after, body);
    const running = await after.line.newestCase(family);
    // 5.5 is under the limit of 6 it began with, not under 5.
    expect(running).toMatchObject({ id: began?.id, protocol: began?.protocol, asking: 'secured', facts: { ph: 5.5 } });
    await after.line.hear({ from: '+12025550177', body: 'g tube fell out', id: 'new', cause: 'new' });
    const fresh = await after.line.newestCase('+12025550177');
    expect(fresh?.protocol).not.toBe(began?.protocol);
    await after.stop();
  });
});
