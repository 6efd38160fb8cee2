/** The ways a record is refused beside being broken. Messages hold no number or name of a person: they may be logged. */
import { CodedError } from '#src/errors.ts';

/** What was played for practice is no part of a chart: it is neither drawn nor exported. */
export class RecordOfRehearsal extends CodedError {
  readonly code = 'record-of-rehearsal';

  constructor(caseId: number) {
    super(`case ${caseId} is a rehearsal: nothing of it happened, so it is neither drawn nor written as FHIR`);
  }
}
