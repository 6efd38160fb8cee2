/** The carrier's webhooks before a line that only notes what it is told: signatures, empty answers, repeated ids. */

import twilio from 'twilio';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createMetrics } from '#src/watch/watch.ts';
import { liveApp } from '#src/web/server.ts';
import { listen, type Socket } from '#src/web/socket.ts';
import { well } from '#tests/watch/well.ts';
import { type FakeLine, fakeLine } from './fakeLine.ts';

const publicUrl = 'https://line.example';
const tokens = ['new-token', 'old-token'];
const text = { MessageSid: 'SM1', From: '+12025550123', To: '+12025550100', Body: ' it came out ', NumMedia: '0' };

let line: FakeLine;
let faults: unknown[];
let web: Socket;

const unwatchedWeb = { health: async () => well, metrics: createMetrics(), metricsToken: null };

beforeEach(async () => {
  line = fakeLine();
  faults = [];
  const report = (fault: unknown) => faults.push(fault);
  web = await listen(
    liveApp({
      line,
      publicUrl,
      tokens,
      emergencyNumber: '911',
      lineNumber: '+12025550100',
      report,
      alive: async () => {},
      ...unwatchedWeb,
    }),
    '127.0.0.1',
    0,
  );
});

afterEach(() => web.close());

async function post(path: string, form: Record<string, string>, signed: { token?: string; signature?: string } = {}) {
  const { token = 'new-token' } = signed;
  const signature = signed.signature ?? twilio.getExpectedTwilioSignature(token, publicUrl + path, form);
  const response = await fetch(web.url + path, {
    method: 'POST',
    headers: { 'X-Twilio-Signature': signature },
    body: new URLSearchParams(form),
  });
  return { status: response.status, type: response.headers.get('content-type'), body: await response.text() };
}

describe('a key pressed in a call', () => {
  const key = { CallSid: 'CA1', To: '+12025550123', From: '+12025550100', Digits: '1' };

  it('takes the page, or goes on to the family from the number of the line', async () => {
    expect((await post('/carrier/key?message=7', key)).body).toContain('<Say>Thank you.');
    line.keyAnswer = { go: 'ring', number: '+12025550150' };
    expect((await post('/carrier/key?message=8', key)).body).toContain(
      '<Dial callerId="+12025550100" answerOnBridge="true">+12025550150</Dial>',
    );
    expect(line.keys).toMatchObject([{ messageId: '7', number: '+12025550123', digit: '1', id: 'CA1' }, {}]);
  });

  it('changes nothing when it is forged or no key', async () => {
    expect((await post('/carrier/key?message=7', key, { signature: 'forged' })).status).toBe(403);
    expect((await post('/carrier/key?message=7', { ...key, Digits: '' })).status).toBe(200);
    expect((await post('/carrier/key?message=7', { CallSid: 'CA1' })).status).toBe(400);
    expect(line.keys).toHaveLength(1);
  });
});

describe('a text that came in', () => {
  it('is heard untrimmed, and answered empty once it is kept', async () => {
    const answer = await post('/carrier/text', text);
    expect(answer.status).toBe(200);
    expect(answer.type).toMatch(/^text\/xml/);
    expect(answer.body).toBe('<?xml version="1.0" encoding="UTF-8"?><Response/>');
    expect(line.heard).toMatchObject([{ from: '+12025550123', body: ' it came out ', id: 'SM1', media: [] }]);
  });

  it('that comes twice is heard once', async () => {
    await Promise.all([post('/carrier/text', text), post('/carrier/text', text)]);
    expect(line.heard).toHaveLength(1);
  });

  it('may be a picture alone', async () => {
    await post('/carrier/text', {
      MessageSid: 'MM1',
      From: '+12025550123',
      NumMedia: '2',
      MediaUrl0: 'https://api.twilio.com/1',
    });
    expect(line.heard).toMatchObject([{ body: '', media: ['https://api.twilio.com/1', ''] }]);
  });

  it('is good under the old token while they change', async () => {
    expect((await post('/carrier/text', text, { token: 'old-token' })).status).toBe(200);
  });

  it('with a parameter nobody knew of is still signed and heard', async () => {
    expect((await post('/carrier/text', { ...text, NewThing: 'x' })).status).toBe(200);
  });

  it('that breaks the line is a 500, so that the carrier goes to its fallback', async () => {
    line.failNext();
    expect((await post('/carrier/text', text)).status).toBe(500);
    expect(faults).toHaveLength(1);
  });

  it('from no phone number is a 400, so that the carrier goes to its fallback', async () => {
    expect((await post('/carrier/text', { ...text, From: '12345' })).status).toBe(400);
    expect(line.heard).toEqual([]);
  });
});

describe('a forged signature', () => {
  it.each([
    ['/carrier/text', text],
    ['/carrier/status?message=7', { MessageSid: 'SM1', MessageStatus: 'failed' }],
    ['/carrier/call', { CallSid: 'CA1', From: '+12025550123' }],
  ])('at %s gets 403 and changes nothing', async (path, form) => {
    for (const signed of [{ token: 'stolen' }, { signature: '' }, { signature: 'AAAA' }]) {
      expect((await post(path, form, signed)).status).toBe(403);
    }
    const bare = await fetch(web.url + path, { method: 'POST', body: new URLSearchParams(form) });
    expect(bare.status).toBe(403);
    expect([line.heard, line.fates, line.asked]).toEqual([[], [], []]);
  });

  it('made over the host that was asked, not our public address, is forged', async () => {
    const signature = twilio.getExpectedTwilioSignature('new-token', `${web.url}/carrier/text`, text);
    expect((await post('/carrier/text', text, { signature })).status).toBe(403);
  });

  it('does not carry over to another message of ours', async () => {
    const form = { MessageSid: 'SM1', MessageStatus: 'delivered' };
    const signature = twilio.getExpectedTwilioSignature('new-token', `${publicUrl}/carrier/status?message=7`, form);
    expect((await post('/carrier/status?message=8', form, { signature })).status).toBe(403);
  });
});

describe('news of a message of ours', () => {
  it.each([
    [{ MessageSid: 'SM9', MessageStatus: 'delivered' }, 'delivered', 'SM9'],
    [{ MessageSid: 'SM9', MessageStatus: 'undelivered', ErrorCode: '30003' }, 'refused', 'SM9'],
    [{ CallSid: 'CA9', CallStatus: 'no-answer' }, 'refused', 'CA9'],
  ])('%j is noted', async (form, fate, carrierId) => {
    expect((await post('/carrier/status?message=7', form)).status).toBe(204);
    expect(line.fates).toEqual([{ message: '7', fate, carrierId }]);
  });

  it('with a word the line does not know changes nothing', async () => {
    expect((await post('/carrier/status?message=7', { MessageSid: 'SM9', MessageStatus: 'pondering' })).status).toBe(
      204,
    );
    expect(line.fates).toEqual([]);
  });

  it.each(['SM\0', 'S'.repeat(201)])('with an id the store cannot keep is a 400', async (MessageSid) => {
    expect((await post('/carrier/status?message=7', { MessageSid, MessageStatus: 'sent' })).status).toBe(400);
    expect(line.fates).toEqual([]);
  });

  it('that names no message is a 400', async () => {
    expect((await post('/carrier/status', { MessageSid: 'SM9', MessageStatus: 'sent' })).status).toBe(400);
  });
});

describe('a call to the line', () => {
  it('is told the emergency number, digit by digit, and to text, where nothing could be settled', async () => {
    const answer = await post('/carrier/call', { CallSid: 'CA1', From: '+12025550123', CallStatus: 'ringing' });
    expect(answer.type).toMatch(/^text\/xml/);
    expect(answer.body).toMatch(/<Say loop="2">[^<]*call 9 1 1 now[^<]*text this number/);
    expect(line.calls).toMatchObject([{ from: '+12025550123', id: 'CA1' }]);
    line.failNext();
    expect((await post('/carrier/call', { CallSid: 'CA2', From: '+12025550123' })).body).toBe(answer.body);
    expect(faults).toHaveLength(1);
  });

  it('has its words and numbers escaped', async () => {
    const plan = {
      language: 'fr' as const,
      spoken: 'Danger? <9 1 1> & more',
      rings: ['+12025550101'],
      whisper: 'The family of <b>',
      unanswered: 'Nobody & nothing',
      through: null,
    };
    line.kept = { caseId: 1, plan, connected: false };
    const first = await post('/carrier/call', { CallSid: "CA1&'<", From: '+12025550123' });
    expect(first.body).toContain('<Say language="fr-CA" loop="1">Danger? &lt;9 1 1&gt; &amp; more</Say>');
    expect(first.body).toContain("call=CA1%26'%3C&amp;place=0");
    expect((await post('/carrier/call/whisper?call=CA1&place=0', {})).body).toContain('The family of &lt;b&gt;');
    expect((await post('/carrier/call/next?call=CA1&place=1', {})).body).toContain('Nobody &amp; nothing');
  });

  it('that is forged at any step gets 403 and changes nothing', async () => {
    for (const path of [
      '/carrier/call',
      ...['next', 'whisper', 'key'].map((what) => `/carrier/call/${what}?call=CA1&place=0`),
    ])
      expect((await post(path, { CallSid: 'CA1', Digits: '1' }, { signature: 'forged' })).status).toBe(403);
    expect([line.calls, line.callKeys]).toEqual([[], []]);
  });
});

describe('the live line', () => {
  it.each(['/practice/state', '/practice/phones/+12025550123/texts', '/practice'])(
    'has nothing at %s',
    async (path) => {
      expect((await fetch(web.url + path)).status).toBe(404);
    },
  );

  it('says one plain line at its front door', async () => {
    const response = await fetch(`${web.url}/`);
    expect(response.headers.get('content-type')).toMatch(/^text\/plain/);
    expect((await response.text()).trim().split('\n')).toHaveLength(1);
  });
});
