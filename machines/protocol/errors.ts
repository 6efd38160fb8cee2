/** The one way a protocol is refused. */

/** One value that may not stand: where it is, what it was, and what it has to be. */
export interface Refusal {
  readonly field: string;
  readonly value: unknown;
  readonly bound: string;
}

/** One refusal as a line for the person who wrote the file. */
export function refusalLine({ field, value, bound }: Refusal): string {
  const shown = value === undefined ? 'missing' : JSON.stringify(value);
  return `${field} is ${shown}; it has to be ${bound}`;
}

/** A protocol outside its bounds; the message has a line for each refused value. */
export class ProtocolRefused extends Error {
  readonly code = 'protocol-refused';
  readonly refusals: readonly Refusal[];

  constructor(refusals: readonly Refusal[]) {
    super(['protocol refused', ...refusals.map(refusalLine)].join('\n'));
    this.name = 'ProtocolRefused';
    this.refusals = refusals;
  }
}
