/** Every coded error of the house, in one place. Messages hold no number, name or text of a person: they may be logged. */

export abstract class CodedError extends Error {
  abstract readonly code: string;

  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = new.target.name;
  }
}

/** A practice line was given a live database, or the other way round. */
export class WrongDatabase extends CodedError {
  readonly code = 'wrong-database';
  readonly where: string;

  constructor(where: string, found: string, wanted: string) {
    super(`${where} is a ${found} database; a ${wanted} line must not use it`);
    this.where = where;
  }
}

/** The database does not answer at the start. */
export class DatabaseUnreachable extends CodedError {
  readonly code = 'database-unreachable';

  constructor(where: string, why: string) {
    super(`${where} does not answer (${why})`);
  }
}

/** The database was migrated by a newer release. */
export class DatabaseNewer extends CodedError {
  readonly code = 'database-newer';

  constructor(where: string, found: number, known: number) {
    super(`${where} is at migration ${found}; this release knows ${known}`);
  }
}

/** A migration that was already run reads differently now. */
export class MigrationChanged extends CodedError {
  readonly code = 'migration-changed';

  constructor(file: string) {
    super(`${file} was changed after it had been run; add a new migration instead`);
  }
}

/** Another running process has the embedded database's folder. */
export class FolderInUse extends CodedError {
  readonly code = 'folder-in-use';

  constructor(folder: string, pid: number) {
    super(`${folder} is in use by process ${pid}; the embedded database takes one process`);
  }
}

/** The environment lacks something or holds what cannot stand; `faults` has a line for each variable. */
export class ConfigRefused extends CodedError {
  readonly code = 'config-refused';
  readonly faults: readonly string[];

  constructor(faults: readonly string[]) {
    super(['the environment is refused', ...faults].join('\n  '));
    this.faults = faults;
  }
}

/** The port cannot be listened on. */
export class PortRefused extends CodedError {
  readonly code = 'port-refused';

  constructor(host: string, port: number, why: string) {
    super(`cannot listen on ${host}:${port} (${why}); set PORT to a free one`);
  }
}

/** The command line has to name one of the commands. */
export class UnknownCommand extends CodedError {
  readonly code = 'unknown-command';

  constructor(known: readonly string[]) {
    super(`usage: node src/main.ts ${known.join('|')}`);
  }
}

/** A sealed value was sealed with a key this process does not hold. */
export class UnknownKey extends CodedError {
  readonly code = 'unknown-key';

  constructor(keyId: string) {
    super(`a value was sealed with key ${keyId}, which is not the key given`);
  }
}

/** A sealed value was damaged or forged. */
export class SealBroken extends CodedError {
  readonly code = 'seal-broken';

  constructor() {
    super('a sealed value does not open');
  }
}

/** The key must be 32 bytes. */
export class BadKey extends CodedError {
  readonly code = 'bad-key';

  constructor(bytes: number) {
    super(`the key has ${bytes} bytes; it has to have 32`);
  }
}

/** The practice clock only goes forward. */
export class ClockBackward extends CodedError {
  readonly code = 'clock-backward';

  constructor(nowMs: number, toMs: number) {
    super(
      `the clock stands at ${new Date(nowMs).toISOString()} and does not go back to ${new Date(toMs).toISOString()}`,
    );
  }
}

/** Something only a practice line may do. */
export class PracticeOnly extends CodedError {
  readonly code = 'practice-only';

  constructor(what: string) {
    super(`${what} exists only on a practice line`);
  }
}

/** The line is stopping and takes no new work. */
export class LineStopping extends CodedError {
  readonly code = 'line-stopping';

  constructor() {
    super('the line is stopping');
  }
}

/** A step answered a caregiver's text with silence: a fault of ours, answered by the safe message. */
export class NothingSaid extends CodedError {
  readonly code = 'nothing-said';

  constructor(eventType: string) {
    super(`a step said nothing to a caregiver's text (${eventType})`);
  }
}

/** A row that must be there is not: the database was changed behind the line's back. */
export class MissingRow extends CodedError {
  readonly code = 'missing-row';

  constructor(what: string) {
    super(`no ${what} where one must be`);
  }
}

/** A live line may only run a protocol that is signed as it is; `changed` is null where it was never signed. */
export class ProtocolNotSigned extends CodedError {
  readonly code = 'protocol-not-signed';
  readonly changed: readonly string[] | null;

  constructor(file: string, changed: readonly string[] | null) {
    const why = changed === null ? 'nobody has signed it' : `since it was signed, this changed: ${changed.join(', ')}`;
    super(
      `a live line does not start on ${file}: ${why}. A clinician of the site reads "npm run protocol -- sheet" and signs`,
    );
    this.changed = changed;
  }
}

/** A live line needs the site's own decision on what this software is under its regulations. */
export class RegulatoryDecisionMissing extends CodedError {
  readonly code = 'regulatory-decision-missing';

  constructor(file: string) {
    super(
      `a live line does not start: ${file} records no regulatory decision of the site; sign with --regulatory "..."`,
    );
  }
}

/** Something a live line needs does not hold. */
export class SelfCheckFailed extends CodedError {
  readonly code = 'self-check-failed';

  constructor(failed: number) {
    super(`${failed} of the checks failed: a night should not depend on this line yet`);
  }
}

/** The database to read past cases from was never a line's. */
export class NoLineDatabase extends CodedError {
  readonly code = 'no-line-database';

  constructor(where: string) {
    super(`${where} holds no line: nothing to replay there`);
  }
}

/** The protocol command was called in a way it does not know. */
export class ProtocolUsage extends CodedError {
  readonly code = 'protocol-usage';

  constructor(why: string, usage: string) {
    super(`${why}\n${usage}`);
  }
}

/** A calendar of the rota that cannot be read: no iCalendar, or an event that cannot be placed in time. */
export class CalendarRefused extends CodedError {
  readonly code = 'calendar-refused';

  constructor(why: string) {
    super(`a calendar of the rota is refused: ${why}`);
  }
}

/** The rota leaves somebody without a person to call. */
export class RotaGap extends CodedError {
  readonly code = 'rota-gap';

  constructor(gaps: number) {
    super(`the rota does not hold: ${gaps} gap${gaps === 1 ? '' : 's'}`);
  }
}

/** A calendar of the rota cannot be fetched. Its address may hold a secret, so it is not named. */
export class CalendarUnreachable extends CodedError {
  readonly code = 'calendar-unreachable';

  constructor(why: string) {
    super(`a calendar of the rota cannot be fetched (${why})`);
  }
}

/** The rota command was called in a way it does not know. */
export class RotaUsage extends CodedError {
  readonly code = 'rota-usage';

  constructor(usage: string) {
    super(usage);
  }
}

/** The handover command was called in a way it does not know. */
export class HandoverUsage extends CodedError {
  readonly code = 'handover-usage';

  constructor(usage: string) {
    super(usage);
  }
}

/** The database has no such case. */
export class NoSuchCase extends CodedError {
  readonly code = 'no-such-case';

  constructor(cases: number) {
    super(`there is no such case; a case is named by its number or its code, as pages name it (${cases} cases there)`);
  }
}

/** A record is not as the line wrote it. */
export class RecordBroken extends CodedError {
  readonly code = 'record-broken';
  readonly faults: readonly string[];

  constructor(faults: readonly string[]) {
    super(['the record is not as the line wrote it', ...faults].join('\n  '));
    this.faults = faults;
  }
}

/** The record command was called in a way it does not know. */
export class RecordUsage extends CodedError {
  readonly code = 'record-usage';

  constructor(usage: string) {
    super(usage);
  }
}

/** The pause command was called in a way it does not know. */
export class PauseUsage extends CodedError {
  readonly code = 'pause-usage';

  constructor(usage: string) {
    super(usage);
  }
}
