/** The real carrier through its official library, against a double on this machine. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Carrier, Outgoing } from '#src/carrier/port.ts';
import { twilioCarrier } from '#src/carrier/twilio.ts';
import { accountSid, authToken, type Double, startDouble, type Trouble } from './double.ts';

const message = (over: Partial<Outgoing> = {}): Outgoing => ({
  id: '7',
  to: '+12025550123',
  body: 'Is the tube in?',
  kind: 'text',
  saidAtMs: Date.now(),
  ...over,
});

const settings = { accountSid, from: '+12025550100', publicUrl: 'https://line.example' };

let double: Double;
let carrier: Carrier;

beforeEach(async () => {
  double = await startDouble();
  carrier = twilioCarrier({ ...settings, authToken, httpClient: double.client(300), fetch });
});

afterEach(() => double.close());

describe('sending', () => {
  it('gives a text to the carrier, with our id in the address its news come back to', async () => {
    expect(await carrier.send(message())).toEqual({ fate: 'accepted', carrierId: `SM${'0'.repeat(32)}` });
    expect(double.made[0]).toMatchObject({
      resource: 'Messages',
      form: {
        To: '+12025550123',
        From: '+12025550100',
        Body: 'Is the tube in?',
        StatusCallback: 'https://line.example/carrier/status?message=7',
      },
    });
  });

  it('has a call read out twice, its words escaped', async () => {
    await carrier.send(message({ kind: 'call', body: 'Tube < 3 cm & out' }));
    expect(double.made[0]).toMatchObject({
      resource: 'Calls',
      form: {
        To: '+12025550123',
        Twiml: expect.stringContaining(
          '<Response><Gather numDigits="1" action="https://line.example/carrier/key?message=7" method="POST">' +
            '<Say loop="2">Tube &lt; 3 cm &amp; out</Say></Gather></Response>',
        ),
        StatusCallback: 'https://line.example/carrier/status?message=7',
      },
    });
  });

  // Codes 21610 (recipient opted out), 21211 (bad To) and 20429 (too many requests): from memory. 30006 (landline) is a
  // published code.
  it.each<[string, Trouble, object]>([
    ['an opted-out recipient is refused', { status: 400, code: 21610 }, { fate: 'refused', why: '21610' }],
    ['a bad number is refused', { status: 400, code: 21211 }, { fate: 'refused', why: '21211' }],
    ['a landline is refused', { status: 400, code: 30006 }, { fate: 'refused', why: '30006' }],
    ['too many requests were surely not sent', { status: 429, code: 20429 }, { fate: 'later' }],
    ['an account not let in must lose nothing', { status: 403, code: 20005 }, { fate: 'later' }],
    ['a fault of the carrier may have taken it', { status: 500, code: 20500 }, { fate: 'unknown' }],
    ['a carrier that is down may have taken it', { status: 503, code: 20503 }, { fate: 'unknown' }],
    ["a proxy's page says nothing", { status: 502, code: null }, { fate: 'unknown' }],
    ["a proxy's refusal is not the carrier's", { status: 404, code: null }, { fate: 'unknown' }],
    ['no answer in time says nothing', 'hang', { fate: 'unknown' }],
    ['a reset says nothing', 'reset', { fate: 'unknown' }],
    ['nor a reset after it was taken', 'taken-then-reset', { fate: 'unknown' }],
  ])('%s', async (_name, trouble, fate) => {
    double.meetNext(trouble);
    expect(await carrier.send(message())).toEqual(fate);
  });

  it('with a wrong token was surely not sent, and is sent once the token is right', async () => {
    const locked = twilioCarrier({ ...settings, authToken: 'wrong', httpClient: double.client(300), fetch });
    expect(await locked.send(message())).toEqual({ fate: 'later' });
    expect(double.made).toEqual([]);
  });

  it('to a carrier nobody reaches was surely not sent', async () => {
    await double.close();
    expect(await carrier.send(message())).toEqual({ fate: 'later' });
    double = await startDouble();
  });
});

/** The one made at this place, as a look-up tells it. */
const found = (place: number, fate = 'accepted') => ({
  fate: 'found',
  made: [{ carrierId: `SM${String(place).padStart(32, '0')}`, fate }],
});

describe('finding a message whose fate is unknown', () => {
  it('tells them all where several may be it, the oldest first, each with what became of it', async () => {
    for (const kind of ['call', 'text', 'call'] as const) await carrier.send(message({ kind }));
    double.fates.set(0, 'no-answer').set(2, 'completed');
    expect(await carrier.find(message({ kind: 'call' }))).toEqual({
      fate: 'found',
      made: [...found(0, 'refused').made, ...found(2, 'delivered').made],
    });
  });

  it('finds the one the carrier had taken', async () => {
    double.meetNext('taken-then-reset');
    await carrier.send(message());
    expect(await carrier.find(message())).toEqual(found(0));
  });

  it('finds a call by whom it rang', async () => {
    double.meetNext('taken-then-reset');
    await carrier.send(message({ kind: 'call' }));
    expect(await carrier.find(message({ kind: 'call' }))).toEqual(found(0));
  });

  it('does not take other words, or the same words said earlier, for it', async () => {
    await carrier.send(message());
    const nothing = { fate: 'found', made: [] };
    expect(await carrier.find(message({ body: 'Other words' }))).toEqual(nothing);
    expect(await carrier.find(message({ saidAtMs: Date.now() + 120_000 }))).toEqual(nothing);
    expect(await carrier.find(message({ to: '+12025550124' }))).toEqual(nothing);
  });

  it.each<Trouble>(['reset', 'hang', { status: 500, code: 20500 }, { status: 429, code: 20429 }])(
    'cannot tell after %j',
    async (trouble) => {
      double.meetNext(trouble);
      expect(await carrier.find(message())).toEqual({ fate: 'unknown' });
    },
  );
});

describe('the log of texts to the line', () => {
  it('tells those since a time, the line’s own left out', async () => {
    const sinceMs = Date.parse('2027-03-06T07:00:00Z');
    const inbound = (sid: string, afterMs: number) => ({
      sid,
      from: '+12025550123',
      body: 'it came out',
      atMs: sinceMs + afterMs,
    });
    await carrier.send(message());
    double.inbound.push(inbound('SM7', -60_000), inbound('SM8', 0), inbound('SM9', 60_000));
    double.inbound.push({ ...inbound('SM10', 1000), from: 'NOTANUMBER' });
    expect(await carrier.heardSince(sinceMs)).toEqual(
      [60_000, 0].map((afterMs, place) => ({
        id: `SM${9 - place}`,
        from: '+12025550123',
        body: 'it came out',
        media: [],
        atMs: sinceMs + afterMs,
      })),
    );
  });

  it('throws where the carrier does not answer', async () => {
    double.meetNext({ status: 500, code: 20500 });
    await expect(carrier.heardSince(0)).rejects.toThrow();
  });
});
