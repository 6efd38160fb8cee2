/** The ways the practice interface refuses a request: one code each, with its HTTP status and words. */
import { CodedError } from '#src/errors.ts';

export const refusals = {
  'bad-json': { status: 400, message: 'The body is not readable JSON.' },
  'bad-escape': { status: 400, message: 'The address has a broken percent escape.' },
  'bad-number': { status: 400, message: 'A phone number is a plus sign and 7 to 15 digits.' },
  'bad-request': { status: 400, message: 'The request is not of the documented shape.' },
  'clock-backward': { status: 400, message: 'The clock only moves forward; a reset sets it.' },
  'clock-too-far': { status: 400, message: 'The clock moves at most 45 days a call.' },
  'not-found': { status: 404, message: 'There is nothing at this address.' },
  'method-not-allowed': { status: 405, message: 'This address does not take this method.' },
  'phone-taken': { status: 409, message: 'One of these phones belongs to another family.' },
  'text-too-long': { status: 413, message: 'A text has at most 1,600 characters.' },
  'body-too-large': { status: 413, message: 'The body is too large.' },
  'not-json': { status: 415, message: 'The body must be JSON, sent as application/json in UTF-8.' },
  stopping: { status: 503, message: 'The line is stopping.' },
  broken: { status: 500, message: 'The line could not do this. Nothing more is known here; its log says why.' },
} as const;

export type RefusalCode = keyof typeof refusals;

/** A request the interface refuses; `detail` says what was wrong with this one and never repeats what was sent. */
export class Refused extends CodedError {
  readonly code: RefusalCode;
  readonly status: number;

  constructor(code: RefusalCode, detail?: string) {
    super(detail === undefined ? refusals[code].message : `${refusals[code].message} ${detail}`);
    this.code = code;
    this.status = refusals[code].status;
  }
}
