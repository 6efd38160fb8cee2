/** Requests to the live line: the carrier's webhooks signed, replayed, forged and malformed, and everything a stranger tries. */
import { parse } from 'node:querystring';
import twilio from 'twilio';
import { authToken } from '#tests/carrier/double.ts';
import type { Dice } from './dice.ts';
import {
  brokenHttp,
  contentTypes,
  encodings,
  families,
  megabyte,
  methods,
  notANumber,
  nurses,
  type Probe,
} from './probe.ts';
import { anyBytes, anyText, nurseText } from './words.ts';

export const publicUrl = 'https://line.example';

const statuses = [
  'queued',
  'sent',
  'delivered',
  'undelivered',
  'failed',
  'completed',
  'no-answer',
  'pondering',
  '',
  'DELIVERED',
];

export function liveProbe(dice: Dice, place: number): Probe {
  const throwOf = dice.below(1000);
  if (throwOf < 600) return textProbe(dice, place);
  if (throwOf < 700) return statusProbe(dice);
  if (throwOf < 740) return keyProbe(dice, place);
  if (throwOf < 760) return callProbe(dice, place);
  if (throwOf < 960) return spoiled(dice, textProbe(dice, place));
  if (throwOf < 985) return strangersProbe(dice);
  return brokenHttp(dice, 'live');
}

function textProbe(dice: Dice, place: number): Probe {
  const nurse = dice.chance(0.2);
  const form = new URLSearchParams({
    // One in ten is a webhook that comes again.
    MessageSid: dice.chance(0.1) ? `again-${Math.floor(place / 20)}` : `SM${place}`,
    From: dice.oneOf(nurse ? nurses : families),
    To: '+12025550100',
    Body: nurse ? nurseText(dice) : anyText(dice),
    NumMedia: dice.chance(0.05) ? dice.oneOf(['1', '10', '-1', '1.5', 'x', '1e9']) : '0',
  });
  return post('/carrier/text', form);
}

function statusProbe(dice: Dice): Probe {
  const ids = [
    String(dice.below(500)),
    '0',
    '-1',
    '1e3',
    '9'.repeat(15),
    '9'.repeat(30),
    '',
    '../1',
    "1'",
    '%00',
    '1&message=2',
  ];
  const form = new URLSearchParams({ MessageSid: 'SM1', MessageStatus: dice.oneOf(statuses) });
  if (dice.chance(0.2)) form.set('MessageSid', dice.oneOf(['\0', 'x'.repeat(5000), '']));
  return post(`/carrier/status?message=${dice.chance(0.7) ? dice.below(500) : dice.oneOf(ids)}`, form);
}

/** Keys pressed in calls, by whom the call was for and by others. */
function keyProbe(dice: Dice, place: number): Probe {
  const form = new URLSearchParams({
    CallSid: dice.chance(0.1) ? 'CA1' : `CA${place}`,
    To: dice.oneOf(dice.chance(0.8) ? nurses : families),
    Digits: dice.oneOf(['1', '2', '1', '2', '9', '*', '', '12', 'x'.repeat(30), '\0']),
  });
  return post(
    `/carrier/key?message=${dice.chance(0.9) ? dice.below(500) : dice.oneOf(['', '0', "1'", '9'.repeat(30)])}`,
    form,
  );
}

/** Calls to the line by families, nurses and numbers that are none, and what the carrier asks of them later, also of calls that never were. */
function callProbe(dice: Dice, place: number): Probe {
  const call = dice.chance(0.5) ? `CA${dice.below(place + 1)}` : dice.oneOf(['CA1', '', '%00', 'x'.repeat(300), "'"]);
  const kind = dice.below(4);
  if (kind === 0) {
    const From = dice.oneOf([...families, ...nurses, '', 'anonymous', '\0']);
    return post('/carrier/call', new URLSearchParams({ CallSid: dice.chance(0.8) ? `CA${place}` : call, From }));
  }
  const what = dice.oneOf(['next', 'whisper', 'key']);
  const at = dice.oneOf(['0', '1', '2', '3', '-1', 'x', '1e9', '']);
  const form = new URLSearchParams({ CallSid: 'CA1', DialCallStatus: 'no-answer', Digits: dice.oneOf(['1', '2', '']) });
  return post(`/carrier/call/${what}?call=${encodeURIComponent(call)}&place=${at}`, form);
}

function post(path: string, form: URLSearchParams): Probe {
  return signed(path, Buffer.from(form.toString()));
}

/** Signed over what the parser makes of the body, as the carrier would. */
function signed(path: string, body: Buffer): Probe {
  const form = { ...parse(body.toString('utf8')) };
  const headers = {
    'content-type': 'application/x-www-form-urlencoded',
    'x-twilio-signature': twilio.getExpectedTwilioSignature(authToken, publicUrl + path, form),
  };
  return { face: 'live', method: 'POST', path, headers, body, family: null };
}

/** The same webhook with one thing wrong; some are signed as they are. */
function spoiled(dice: Dice, probe: Probe): Probe {
  const { path, headers } = probe;
  const body = probe.body ?? Buffer.alloc(0);
  const text = body.toString('utf8');
  const kind = dice.below(14);
  if (kind === 0) return { ...probe, headers: { ...headers, 'content-type': dice.oneOf(contentTypes) } };
  if (kind === 1) return { ...probe, headers: { ...headers, 'content-encoding': dice.oneOf(encodings) } };
  if (kind === 2)
    return { ...probe, headers: { ...headers, 'x-twilio-signature': dice.oneOf(['', 'AAAA', 'é', '0'.repeat(5000)]) } };
  if (kind === 3) return { ...probe, path: `${path}?x=${dice.below(9)}` };
  if (kind === 4) return { ...probe, method: dice.oneOf(methods) };
  if (kind === 5)
    return signed(path, Buffer.from(text.replace(/From=[^&]*/, `From=${encodeURIComponent(notANumber(dice))}`)));
  if (kind === 6) return signed(path, Buffer.from(text.replace(/From=[^&]*/, '')));
  if (kind === 7)
    return signed(
      path,
      Buffer.from(text.replace(/MessageSid=[^&]*/, `MessageSid=${dice.oneOf(['', '%00', 'x'.repeat(201)])}`)),
    );
  if (kind === 8) return signed(path, Buffer.from(`${text}&Body=second&From=%2B12025550199`));
  if (kind === 9)
    return signed(
      path,
      Buffer.from(text.replace(/Body=[^&]*/, `Body=%ED%A0%80%00${dice.oneOf(['tube', '%', '%E0'])}`)),
    );
  if (kind === 10) return signed(path, Buffer.from(text.replace(/Body=[^&]*/, `Body=${'x'.repeat(megabyte)}`)));
  if (kind === 11)
    return signed(path, Buffer.from(text.replace(/Body=[^&]*/, `Body=${'tube '.repeat(dice.below(15_000))}`)));
  if (kind === 12) return signed(path, anyBytes(dice, dice.below(400)));
  return signed(path, Buffer.from(Array.from({ length: 1100 }, (_, i) => `k${i}=1`).join('&')));
}

const strangersPaths = [
  ...['/', '/healthz', '/readyz', '/metrics', '/practice/state', '/practice/phones/%2B12125550101/texts', '/carrier'],
  ...['/carrier/text', '/carrier/nothing', '/.env', '/%', '/%00', '//', '/carrier/text/../status', '/?'.repeat(50)],
];

function strangersProbe(dice: Dice): Probe {
  const headers = dice.chance(0.5) ? { authorization: `Bearer ${'x'.repeat(dice.below(5000))}` } : {};
  return {
    face: 'live',
    method: dice.oneOf(methods),
    path: dice.oneOf(strangersPaths),
    headers,
    body: null,
    family: null,
  };
}
