/** Requests to the practice interface: most of them well formed, so that cases come to every state; the rest broken in every way known. */
import { gzipSync } from 'node:zlib';
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
import { anyBytes, anyText, noise, nurseText } from './words.ts';

const json = { 'content-type': 'application/json' };
const none: Pick<Probe, 'face' | 'headers' | 'body' | 'family'> = {
  face: 'practice',
  headers: {},
  body: null,
  family: null,
};

export function practiceProbe(dice: Dice, place: number): Probe {
  if (place === 0) return put('POST', '/practice/reset', { now: '2027-03-06T02:10:00-05:00' });
  const throwOf = dice.below(1000);
  if (throwOf < 620) return textProbe(dice, place);
  if (throwOf < 690) return readProbe(dice);
  if (throwOf < 700) return callProbe(dice, place);
  if (throwOf < 760) return clockProbe(dice);
  if (throwOf < 800) return familyProbe(dice);
  if (throwOf < 802) return put('POST', '/practice/reset', { now: dice.oneOf(times) });
  if (throwOf < 980) return spoiled(dice, textProbe(dice, place));
  return brokenHttp(dice, 'practice');
}

function textProbe(dice: Dice, place: number): Probe {
  const nurse = dice.chance(0.2);
  const from = dice.oneOf(nurse ? nurses : families);
  const id = dice.below(10);
  const body = {
    body: nurse ? nurseText(dice) : anyText(dice),
    // One in ten repeats an id of its neighbours; some have none.
    ...(id === 0 ? { id: `again-${Math.floor(place / 20)}` } : id < 4 ? {} : { id: `text-${place}` }),
  };
  return { ...put('POST', `/practice/phones/${encodeURIComponent(from)}/texts`, body), family: nurse ? null : from };
}

function callProbe(dice: Dice, place: number): Probe {
  const from = dice.oneOf([...families, ...nurses]);
  const body = dice.oneOf([
    {},
    { id: `call-${place}` },
    { id: 'again-call' },
    { id: '' },
    { id: 7 },
    { body: 'x' },
    [],
  ]);
  return put('POST', `/practice/phones/${encodeURIComponent(from)}/calls`, body);
}

function readProbe(dice: Dice): Probe {
  const number = dice.oneOf(families);
  const own = dice.oneOf(['texts', 'case']);
  const path = `/practice/phones/${encodeURIComponent(number)}/${own}`;
  if (dice.chance(0.7)) return { ...none, method: 'GET', path, family: number };
  const elsewhere = dice.oneOf([
    '/',
    '/practice/state',
    '/practice/map',
    '/healthz',
    '/icon.svg',
    '/nothing',
    '/practice',
  ]);
  return { ...none, method: dice.oneOf(['GET', 'HEAD']), path: elsewhere };
}

const times = [
  ...['2027-03-14T01:30:00-05:00', '2027-11-07T01:59:00-04:00', '2026-12-31T23:59:59-05:00', '2028-02-29T12:00:00Z'],
  ...['2027-03-06T02:10:00', 'yesterday', '1999-01-01T00:00:00Z', '2100-01-01T00:00:00Z', '2027-13-40T25:61:00Z', ''],
];
/** Before any time a reset sets, or no time. */
const notLater = ['2026-01-01T00:00:00Z', ...times.slice(4)];
/** Short ones: a page nobody takes goes round every few minutes, so that a day of it is hundreds of turns. */
const advances = ['PT1M', 'PT5M', 'PT5M', 'PT6M', 'PT10M', 'PT20M', 'PT0S', 'PT0.001S'];
const strangeAdvances = [
  'P46D',
  'P1Y',
  'P1M',
  '-PT1H',
  'PT',
  'P',
  'PT99999999999999H',
  'one hour',
  'PT1e9S',
  'PT-1S',
  '',
];

function clockProbe(dice: Dice): Probe {
  const body = dice.chance(0.9) ? { advance: anyAdvance(dice) } : { to: dice.oneOf(notLater) };
  return put('POST', '/practice/clock', dice.chance(0.05) ? { ...body, advance: 5 } : body);
}

function anyAdvance(dice: Dice): string {
  if (dice.chance(0.02)) return dice.oneOf(['PT1H', 'PT6H']);
  return dice.oneOf(dice.chance(0.8) ? advances : strangeAdvances);
}

const days = [null, '2024-02-29', '2023-02-29', '0000-00-00', '9999-12-31', '2027-03-06', 'soon', 5, '2027-03-05'];

function familyProbe(dice: Dice): Probe {
  const number = dice.oneOf(families);
  const kg = dice.oneOf<unknown>([null, 13.4, 0.3, 200, 0, -1, 1e308, 201, '13', 2.9]);
  const body = {
    child: dice.chance(0.7) ? dice.oneOf(['Wren', 'Pip', 'Éloïse', 'Ñandú']) : anyText(dice),
    born: dice.oneOf(days),
    tubeKind: dice.oneOf(['g', 'gj', 'unknown', 'j', 7]),
    firstPlaced: dice.oneOf(days),
    weightKg: kg,
    weighedOn: dice.oneOf(days),
    language: dice.oneOf(['en', 'es', 'fr', 'de']),
    ...(dice.chance(0.3) ? { latexAllergy: dice.oneOf([true, false, 'yes']) } : {}),
    ...(dice.chance(0.3) ? { cannotWait: dice.oneOf([null, 'insulin', '', '\0', 'x'.repeat(201)]) } : {}),
    ...(dice.chance(0.05) ? { extra: 1 } : {}),
  };
  return put('PUT', `/practice/families/${encodeURIComponent(number)}`, body);
}

function put(method: string, path: string, body: unknown): Probe {
  return { ...none, method, path, headers: json, body: Buffer.from(JSON.stringify(body)) };
}

/** The same request with one thing wrong. */
function spoiled(dice: Dice, probe: Probe): Probe {
  const body = probe.body ?? Buffer.alloc(0);
  const kind = dice.below(12);
  const base: Probe = { ...probe, family: null };
  if (kind === 0) return { ...base, headers: { ...json, 'content-type': dice.oneOf(contentTypes) } };
  if (kind === 1) return { ...base, headers: { ...json, 'content-encoding': dice.oneOf(encodings) } };
  if (kind === 2) return { ...base, path: `/practice/phones/${notANumber(dice)}/${dice.oneOf(['texts', 'case'])}` };
  if (kind === 3) return { ...base, method: dice.oneOf(methods) };
  if (kind === 4) return { ...base, body: body.subarray(0, dice.below(body.length + 1)) };
  if (kind === 5) return { ...base, body: Buffer.from(JSON.stringify({ body: 'x'.repeat(megabyte), id: 'big' })) };
  if (kind === 6) return { ...base, body: anyBytes(dice, dice.below(400)) };
  if (kind === 7)
    return { ...base, body: Buffer.from(`{"body":"\\ud800 out ${dice.oneOf(['\\u0000', '\\udc00', ''])}"}`) };
  if (kind === 8) return { ...base, body: Buffer.from(JSON.stringify(strangeBody(dice))) };
  if (kind === 9)
    return { ...base, headers: { ...json, 'content-encoding': 'gzip' }, body: gzipSync('x'.repeat(megabyte * 8)) };
  if (kind === 10) return { ...base, path: `/practice${noise(dice, 30).replaceAll(/[^\x21-\x7e]/g, '')}` };
  return {
    ...base,
    body: Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), body]),
    headers: { ...json, host: 'x\u00e9' },
  };
}

function strangeBody(dice: Dice): unknown {
  return dice.oneOf<unknown>([
    [],
    null,
    5,
    'text',
    { body: null },
    { body: ['x'] },
    { body: { body: 'x' } },
    { body: 'x', id: 5 },
    { body: 'x', id: '' },
    { body: 'x', id: '\0' },
    { body: 'x', id: 'i'.repeat(201) },
    { body: 'x', more: 1 },
    { body: 'x'.repeat(1601) },
    JSON.parse('{"__proto__":{"body":"x"},"constructor":{"prototype":{"polluted":1}},"body":"x"}'),
    JSON.parse(`${'['.repeat(500)}${']'.repeat(500)}`),
  ]);
}
