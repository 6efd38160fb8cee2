/** The real carrier, through its official library: texts, and calls that are read out. */

import type { RequestClient } from 'twilio';
import twilio from 'twilio';
import { download } from './media.ts';
import type { Carrier, Fate, Found, Outgoing } from './port.ts';
import { fateOfError } from './sendError.ts';
import { fateOfStatus } from './status.ts';

export interface TwilioSettings {
  readonly accountSid: string;
  readonly authToken: string;
  /** The line's own number, E.164. */
  readonly from: string;
  /** Where the carrier reaches us, without a slash at the end. */
  readonly publicUrl: string;
  /** How the library reaches the carrier; tests point it at a local double. */
  readonly httpClient: RequestClient;
  /** How media are fetched; tests point it at a local double. */
  readonly fetch: typeof fetch;
}

/** Longer and the fate is unknown. The line itself gives up a second later, and holds later messages for 10 s at most. */
const sendTimeoutMs = 8000;

/** The way to the carrier over the internet. */
export function carrierClient(): RequestClient {
  return new twilio.RequestClient({ timeout: sendTimeoutMs });
}

/** Clocks differ a little, and the carrier's dates have whole seconds. */
const clockSkewMs = 30_000;
const lookBack = 50;
/** The most texts of one reading of the log: the carrier's own largest page. */
const logMost = 1000;
const e164 = /^\+[0-9]{7,15}$/;

/** A carrier port over the account's messages and calls. */
export function twilioCarrier(settings: TwilioSettings): Carrier {
  const { accountSid, authToken, from, publicUrl, httpClient, fetch: get } = settings;
  const client = twilio(accountSid, authToken, { httpClient });
  const callbackFor = (message: Outgoing) => `${publicUrl}/carrier/status?message=${encodeURIComponent(message.id)}`;

  const keyAddress = (message: Outgoing) => `${publicUrl}/carrier/key?message=${encodeURIComponent(message.id)}`;

  async function make(message: Outgoing): Promise<{ sid: string }> {
    const { to, body } = message;
    const statusCallback = callbackFor(message);
    return message.kind === 'text'
      ? client.messages.create({ to, from, body, statusCallback })
      : client.calls.create({ to, from, twiml: spoken(body, keyAddress(message)), statusCallback });
  }

  async function listed({ to, body, kind, saidAtMs }: Outgoing): Promise<Found[]> {
    const since = new Date(saidAtMs - clockSkewMs);
    const made =
      kind === 'text'
        ? (await client.messages.list({ to, from, limit: lookBack })).filter((text) => text.body === body)
        : await client.calls.list({ to, from, limit: lookBack });
    return made
      .filter(({ dateCreated }) => dateCreated >= since)
      .map(({ sid, status }) => ({ carrierId: sid, fate: fateOfStatus(status) ?? ('accepted' as const) }))
      .reverse();
  }

  async function mediaOf(sid: string): Promise<string[]> {
    const media = await client.messages(sid).media.list({ limit: 10 });
    return media.map(({ uri }) => `https://api.twilio.com${uri.replace(/\.json$/, '')}`);
  }

  return {
    async send(message): Promise<Fate> {
      try {
        return { fate: 'accepted', carrierId: (await make(message)).sid };
      } catch (error) {
        return fateOfError(error);
      }
    },
    /** By recipient, words and time, as the carrier keeps no id of ours. */
    async find(message) {
      try {
        return { fate: 'found', made: await listed(message) };
      } catch {
        return { fate: 'unknown' };
      }
    },
    async heardSince(sinceMs) {
      const texts = await client.messages.list({ to: from, dateSentAfter: new Date(sinceMs), limit: logMost });
      const inbound = texts
        .filter((text) => text.direction === 'inbound' && text.dateSent !== null && e164.test(text.from))
        .filter((text) => text.dateSent.getTime() >= sinceMs);
      return Promise.all(
        inbound.map(async ({ sid, from: by, body, numMedia, dateSent }) => ({
          id: sid,
          from: by,
          body: body ?? '',
          media: Number(numMedia) > 0 ? await mediaOf(sid) : [],
          atMs: dateSent.getTime(),
        })),
      );
    },
    fetchMedia: (address) => download(get, address, { accountSid, authToken }),
  };
}

/** Read out twice: the first words of a call are often missed. One key pressed at any time is told to the line. */
function spoken(body: string, keyAddress: string): string {
  const answer = new twilio.twiml.VoiceResponse();
  answer.gather({ numDigits: 1, action: keyAddress, method: 'POST' }).say({ loop: 2 }, body);
  return answer.toString();
}
