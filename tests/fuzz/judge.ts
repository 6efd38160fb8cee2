/** What may never be in an answer: a fault of ours, where in our code it happened, or a number of somebody else. */
import { fileURLToPath } from 'node:url';
import { families, type Probe } from './probe.ts';

export interface Answer {
  /** Null where the connection was closed without one: only for HTTP that is none. */
  readonly status: number | null;
  readonly headers: string;
  readonly body: string;
}

const root = fileURLToPath(new URL('../../', import.meta.url));
/** As stacks, paths and the database's own words look. */
const leaks = [
  /\n\s+at .+[:)]/,
  /node:internal|node_modules/,
  /\.ts:\d/,
  /\b(?:syntax|relation|column|duplicate key) .*"/,
];
const number = /\+\d{7,15}(?!\d)/;

/** What is wrong with the answer, in words; empty where nothing is. */
export function faultsOf(probe: Probe, { status, headers, body }: Answer): string[] {
  const text = `${headers}\n${body}`;
  const others = families.filter((family) => family !== probe.family);
  return [
    status === null && probe.raw === undefined ? 'no answer' : '',
    // A line whose time the attack moves on is late, and /readyz says so.
    status !== null && status >= 500 && !probe.path.startsWith('/readyz') ? `status ${status}` : '',
    text.includes(root) || leaks.some((leak) => leak.test(text)) ? 'tells where the code is' : '',
    // A call goes on to somebody: the carrier has to be told to whom.
    ((probe.face === 'live' && !/^\/carrier\/(?:key|call)/.test(probe.path)) || (status ?? 400) >= 400) &&
    number.test(body)
      ? 'a number in an answer that has none'
      : '',
    probe.family !== null && others.some((other) => body.includes(other)) ? 'a number of another family' : '',
    probe.face === 'practice' && (status ?? 0) >= 400 && probe.raw === undefined && !refusal(probe, body)
      ? 'a refusal that is not JSON'
      : '',
  ].filter((fault) => fault !== '');
}

/** The contract: every refusal under `/practice` is one object with a code. */
function refusal({ method, path }: Probe, body: string): boolean {
  if (!path.startsWith('/practice') || method === 'HEAD' || body === '') return true;
  try {
    const { error } = JSON.parse(body);
    return typeof error.code === 'string' && typeof error.message === 'string';
  } catch {
    return false;
  }
}
