/** Pictures fetched from the carrier's double: from its own hosts only, bounded, of a kind, and the account shown to nobody else. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bytesMost } from '#src/carrier/media.ts';
import type { Carrier } from '#src/carrier/port.ts';
import { twilioCarrier } from '#src/carrier/twilio.ts';
import { accountSid, authToken, type Double, fetchTo, lineNumber, startDouble } from './double.ts';

const at = (id: string) => `https://api.twilio.com/2010-04-01/Accounts/${accountSid}/Messages/MM1/Media/${id}`;
const bytes = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 255, 254]);

describe('a picture at the carrier', () => {
  let double: Double;
  let carrier: Carrier;
  beforeAll(async () => {
    double = await startDouble();
    const publicUrl = 'https://line.example';
    const around = { accountSid, authToken, from: lineNumber, publicUrl, httpClient: double.client(300) };
    carrier = twilioCarrier({ ...around, fetch: fetchTo(double.url) });
  });
  afterAll(() => double.close());

  const put = (id: string, type: string, body: Buffer, to?: string) =>
    double.media.set(id, { type, bytes: body, ...(to !== undefined && { at: to }) });

  it('is fetched as it is, with the account', async () => {
    put('ME1', 'image/png', bytes);
    expect(await carrier.fetchMedia(at('ME1'))).toEqual({ fate: 'fetched', type: 'image/png', bytes });
    put('ME2', 'audio/amr; codecs=x', bytes);
    expect(await carrier.fetchMedia(at('ME2'))).toEqual({ fate: 'fetched', type: 'audio/amr', bytes });
  });

  it('that is sent on to the carrier’s own media host is fetched there, without the account', async () => {
    put('ME3', 'image/jpeg', bytes, 'https://media.twiliocdn.com/ME3');
    expect(await carrier.fetchMedia(at('ME3'))).toMatchObject({ fate: 'fetched', type: 'image/jpeg' });
  });

  it.each([
    'https://elsewhere.example/ME4',
    'http://media.twiliocdn.com/ME4',
    'https://media.twiliocdn.com:8443/ME4',
    'https://user@media.twiliocdn.com/ME4',
    'https://api.twilio.com.elsewhere.example/ME4',
    'https://127.0.0.1/ME4',
    'https://api.twilio.com/ME4',
    'file:///etc/passwd',
    '',
  ])('that is sent on to %s is not fetched', async (to) => {
    put('ME4', 'image/png', bytes, to);
    expect(await carrier.fetchMedia(at('ME4'))).toMatchObject({ fate: 'refused' });
  });

  it.each([
    'https://elsewhere.example/2010-04-01/Accounts/x',
    at('ME1').replace('https:', 'http:'),
    at('ME1').replace('api.twilio.com', 'api.twilio.com:444'),
    at('ME1').replace('api.twilio.com', 'api.twilio.com@elsewhere.example'),
    at('ME1').replace(accountSid, `AC${'1'.repeat(32)}`),
    `https://api.twilio.com/2010-04-01/Accounts/${accountSid}/Calls.json`,
    'data:image/png;base64,AAAA',
    'not an address',
    '',
  ])('at %s is never asked for', async (address) => {
    expect(await carrier.fetchMedia(address)).toEqual({ fate: 'refused', why: 'not at the carrier' });
  });

  it.each(['text/html', 'application/pdf', 'image/svg+xml', 'video/mp4', ''])(
    'of type %s is not kept',
    async (type) => {
      put('ME5', type, bytes);
      expect(await carrier.fetchMedia(at('ME5'))).toMatchObject({ fate: 'refused', why: 'neither picture nor sound' });
    },
  );

  it('of ten million bytes is kept, one byte more is not', async () => {
    put('ME6', 'image/png', Buffer.alloc(bytesMost));
    expect(await carrier.fetchMedia(at('ME6'))).toMatchObject({ fate: 'fetched' });
    put('ME7', 'image/png', Buffer.alloc(bytesMost + 1));
    expect(await carrier.fetchMedia(at('ME7'))).toEqual({ fate: 'refused', why: 'too large' });
  });

  it('that is not there yet, or whose carrier does not answer, is tried later', async () => {
    expect(await carrier.fetchMedia(at('ME-none'))).toEqual({ fate: 'later' });
    const away = {
      accountSid,
      authToken,
      from: lineNumber,
      publicUrl: 'https://line.example',
      httpClient: double.client(300),
    };
    const cut = async () => {
      throw new Error('reset');
    };
    expect(await twilioCarrier({ ...away, fetch: cut }).fetchMedia(at('ME1'))).toEqual({ fate: 'later' });
  });
});
