/** The environment: practice needs nothing, a live line names each thing it lacks. */
import { randomBytes } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { liveConfig, practiceConfig } from '#src/config.ts';
import { ConfigRefused } from '#src/errors.ts';

const key = randomBytes(32);
const live = {
  DATABASE_URL: 'postgresql://nightjar:secret@db/nightjar',
  NIGHTJAR_KEY: key.toString('base64'),
  NIGHTJAR_PROTOCOL: 'protocol.yaml',
  NIGHTJAR_ROTA: 'rota.yaml',
  PUBLIC_URL: 'https://line.example/',
  TWILIO_ACCOUNT_SID: `AC${'0'.repeat(32)}`,
  TWILIO_AUTH_TOKEN: 'token',
  TWILIO_FROM: '+12025550100',
};

function faultsOf(environment: Record<string, string | undefined>): readonly string[] {
  try {
    liveConfig(environment);
  } catch (error) {
    if (error instanceof ConfigRefused) return error.faults;
    throw error;
  }
  return [];
}

describe('a practice line', () => {
  it('needs nothing', () => {
    const defaults = { port: 8090, databaseUrl: null, dataFolder: 'var/practice', seedsFolder: 'seeds' };
    expect(practiceConfig({})).toEqual(defaults);
    expect(practiceConfig({ PORT: '', DATABASE_URL: '' })).toEqual(defaults);
  });

  it('takes what it is given', () => {
    const url = 'postgres://localhost/nightjar';
    expect(practiceConfig({ PORT: '9', DATABASE_URL: url, NIGHTJAR_DATA: 'd', NIGHTJAR_SEEDS: 's' })).toEqual({
      port: 9,
      databaseUrl: url,
      dataFolder: 'd',
      seedsFolder: 's',
    });
  });

  it.each([{ PORT: 'x' }, { PORT: '65536' }, { PORT: '1.5' }, { DATABASE_URL: 'mysql://x/y' }, { DATABASE_URL: 'x' }])(
    'refuses %j',
    (environment) => {
      expect(() => practiceConfig(environment)).toThrow(ConfigRefused);
    },
  );
});

describe('a live line', () => {
  it('reads all it needs', () => {
    expect(liveConfig({ ...live, TWILIO_AUTH_TOKEN_OLD: 'old', HOST: '0.0.0.0', PORT: '80' })).toEqual({
      host: '0.0.0.0',
      port: 80,
      databaseUrl: live.DATABASE_URL,
      key,
      oldKey: null,
      accountSid: live.TWILIO_ACCOUNT_SID,
      tokens: ['token', 'old'],
      from: live.TWILIO_FROM,
      publicUrl: 'https://line.example',
      protocolFile: 'protocol.yaml',
      mail: null,
      metricsToken: null,
      watcherUrl: null,
      rotaFile: 'rota.yaml',
    });
    expect(liveConfig(live).tokens).toEqual(['token']);
    expect(liveConfig(live).host).toBe('127.0.0.1');
  });

  it.each(Object.keys(live))('names %s when it is missing', (variable) => {
    expect(faultsOf({ ...live, [variable]: undefined })).toEqual([expect.stringMatching(`^${variable}: is missing`)]);
    expect(faultsOf({ ...live, [variable]: '' })).toEqual([expect.stringMatching(`^${variable}: is missing`)]);
  });

  it('mails the handover only with all three of its variables', () => {
    const mail = { SMTP_URL: 'smtps://mail.example.org', MAIL_FROM: 'line@example.org', MAIL_TO: 'day@example.org' };
    expect(liveConfig({ ...live, ...mail }).mail).toEqual({
      url: 'smtps://mail.example.org',
      from: 'line@example.org',
      to: 'day@example.org',
    });
    expect(faultsOf({ ...live, ...mail, MAIL_TO: '' })).toEqual([
      'SMTP_URL: MAIL_FROM and MAIL_TO have to be set with it',
    ]);
    expect(faultsOf({ ...live, ...mail, SMTP_URL: 'https://mail.example.org' })).toHaveLength(1);
  });

  it('names everything at once', () => {
    expect(faultsOf({})).toHaveLength(Object.keys(live).length);
  });

  it.each([
    ['DATABASE_URL', 'mysql://secret/y'],
    ['NIGHTJAR_KEY', 'c2VjcmV0'],
    ['PUBLIC_URL', 'http://secret.example'],
    ['TWILIO_ACCOUNT_SID', 'SKsecret'],
    ['TWILIO_FROM', '2025550100secret'],
  ])('refuses a wrong %s without repeating it', (variable, value) => {
    const faults = faultsOf({ ...live, [variable]: value });
    expect(faults).toEqual([expect.stringMatching(`^${variable}: `)]);
    expect(faults.join()).not.toMatch(/secret/i);
  });
});
