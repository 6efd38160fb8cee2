/** One request of the fuzzer, and the phones it speaks for. Numbers are invented. */
import type { Dice } from './dice.ts';

export type Face = 'practice' | 'live';

export interface Probe {
  readonly face: Face;
  readonly method: string;
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer | null;
  /** Sent as it is, instead of everything above: HTTP that is none. */
  readonly raw?: Buffer;
  /** The family whose own answer this is; null where no family's number may be in it. */
  readonly family: string | null;
}

export const nurses = ['+12125550151', '+12125550152', '+12125550153'];
/** Of the seeds, and strangers. */
export const families = [
  ...['+12125550101', '+12125550102', '+12125550103', '+12125550104', '+12125550105'],
  ...['+12025550110', '+12025550111', '+12025550112', '+12025550113', '+12025550114', '+447700900123'],
];

const noNumbers = [
  ...['', '+', '911', '+1', '+123456', '+1234567890123456', '12125550101', '+1212555010a', '++12125550101'],
  ...[
    '+12125550101 ',
    encodeURIComponent('+١٢١٢٥٥٥٠١٠١'),
    '%',
    '%zz',
    '%00',
    '%ED%A0%80',
    '..',
    '.',
    'tel:+12125550101',
    '+12125550101%0a',
  ],
];

export function notANumber(dice: Dice): string {
  return dice.oneOf(noNumbers);
}

/** Kinds of body that are not what they say. */
export const contentTypes = [
  ...['text/plain', 'application/xml', 'multipart/form-data; boundary=x', 'application/json; charset=utf-7', 'x', ''],
  ...['application/x-www-form-urlencoded; charset=utf-16', 'application/json; charset=utf-16le', 'application/jsonp'],
];
export const encodings = ['gzip', 'deflate', 'br', 'compress', 'gzip, gzip', 'identity', 'x'];
export const methods = [
  'GET',
  'POST',
  'PUT',
  'DELETE',
  'PATCH',
  'OPTIONS',
  'HEAD',
  'TRACE',
  'PROPFIND',
  'CONNECT',
  'BREW',
];

/** A megabyte in one field. */
export const megabyte = 1_048_576;

/** HTTP that is broken before any route sees it. */
export function brokenHttp(dice: Dice, face: Face): Probe {
  const long = 'a'.repeat(20_000);
  const raw = dice.oneOf([
    'GET\r\n\r\n',
    '\r\n\r\n\r\n',
    'GET / HTTP/9.9\r\n\r\n',
    `GET /${long} HTTP/1.1\r\nHost: x\r\n\r\n`,
    `GET / HTTP/1.1\r\nHost: x\r\nX: ${long}\r\n\r\n`,
    'POST /carrier/text HTTP/1.1\r\nHost: x\r\nContent-Length: -5\r\n\r\n',
    'POST /carrier/text HTTP/1.1\r\nHost: x\r\nContent-Length: 3\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n',
    'POST /practice/clock HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: chunked\r\n\r\nzz\r\n',
    'GET /../../etc/passwd HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n',
    'GET /practice/phones/%2B/../case HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n',
    'GET http://other.example/practice/state HTTP/1.0\r\n\r\n',
    'GET / HTTP/1.1\r\n\r\n',
    '\u0016\u0003\u0001\u0002\0\u0001\0\u0001\u00fc\u0003\u0003',
  ]);
  return { face, method: 'raw', path: '', headers: {}, body: null, raw: Buffer.from(raw, 'latin1'), family: null };
}
