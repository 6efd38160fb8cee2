/** The one way a seeds file is refused. */

import { type Refusal, refusalLine } from '#machines/protocol/errors.ts';

/** A seeds file that cannot be read or holds what may not stand; the message has a line for each refused value. */
export class SeedsRefused extends Error {
  readonly code = 'seeds-refused';
  readonly file: string;
  readonly refusals: readonly Refusal[];

  constructor(file: string, refusals: readonly Refusal[]) {
    super([`${file} refused`, ...refusals.map(refusalLine)].join('\n'));
    this.name = 'SeedsRefused';
    this.file = file;
    this.refusals = refusals;
  }
}
