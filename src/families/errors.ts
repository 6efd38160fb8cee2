/** The ways a change to the families is refused. Messages hold no number or name of a person: they may be logged. */
import { CodedError } from '#src/errors.ts';

/** A phone of a family to be enrolled belongs to another family. */
export class FamilyPhoneTaken extends CodedError {
  readonly code = 'family-phone-taken';

  constructor() {
    super('one of these phones belongs to another family');
  }
}

/** The families command was called in a way it does not know. */
export class FamiliesUsage extends CodedError {
  readonly code = 'families-usage';

  constructor(why: string, usage: string) {
    super(`${why}\n${usage}`);
  }
}

/** Nobody is enrolled by this phone, or no child of that name. */
export class NoSuchFamily extends CodedError {
  readonly code = 'no-such-family';

  constructor(what: 'family' | 'child') {
    super(what === 'family' ? 'no family is enrolled by this phone' : 'this family has no child of that name');
  }
}

/** Lines of a file of families that cannot stand; nothing of the file was taken. */
export class FamiliesRefused extends CodedError {
  readonly code = 'families-refused';

  constructor(lines: number) {
    super(`nothing was changed: ${lines === 1 ? 'one line is' : `${lines} lines are`} refused`);
  }
}
