/** The ways keeping and erasing are refused. Messages hold no number or name of a person: they may be logged. */
import { CodedError } from '#src/errors.ts';

/** The retention command was called in a way it does not know. */
export class RetentionUsage extends CodedError {
  readonly code = 'retention-usage';

  constructor(why: string, usage: string) {
    super(`${why}\n${usage}`);
  }
}

/** A family cannot be erased while a case of it is open or on hold. */
export class NotErasable extends CodedError {
  readonly code = 'not-erasable';

  constructor(caseId: number, why: 'open' | 'on hold' | 'not as the line wrote it') {
    super(`nothing was erased: case ${caseId} is ${why}`);
  }
}

/** The words of this case were erased. */
export class CaseErased extends CodedError {
  readonly code = 'case-erased';

  constructor(caseId: number) {
    super(
      `the words of case ${caseId} were erased; "npm run record -- verify ${caseId}" says whether its hashes still hold`,
    );
  }
}
