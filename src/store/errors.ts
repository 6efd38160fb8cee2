/** The ways the store refuses that are no fault of a database's content. */
import { CodedError } from '#src/errors.ts';

/** The database has to be migrated, and this role may not. */
export class MigrationForbidden extends CodedError {
  readonly code = 'migration-forbidden';

  constructor(where: string) {
    super(`${where} is not at this release, and this role may not change that: run "npm run migrate" as its owner`);
  }
}
