/** The log: what happened, by codes and row numbers. No phone number, name or text of a person is ever in it. */
import { type DestinationStream, type Logger, pino } from 'pino';

export type Log = Pick<Logger, 'info' | 'warn' | 'error'>;

/** Fields that hold a person's words or number wherever they turn up. */
const personal = ['number', 'to', 'from', 'body', 'text', 'child', 'name', 'nurse', 'file', 'what', 'caregiver'];

/** Makes a log of JSON lines, to standard error unless told otherwise. */
export function createLog(destination: DestinationStream = pino.destination(2)): Log {
  const paths = personal.flatMap((field) => [field, `*.${field}`, `*.*.${field}`]);
  return pino({ base: null, redact: { paths, censor: '[kept back]' }, serializers: { error: errorLine } }, destination);
}

/** Code, class and frames: a library's message may quote the value that troubled it, so only our coded ones are kept. */
function errorLine(error: unknown): object {
  if (!(error instanceof Error)) return { class: typeof error };
  const code = 'code' in error ? String(error.code) : null;
  const frames = (error.stack ?? '').split('\n').filter((line) => line.trimStart().startsWith('at '));
  return { class: error.constructor.name, code, frames: frames.slice(0, 8).map((line) => line.trim()) };
}
