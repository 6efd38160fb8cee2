/** The three machines of a case, restored from what was saved and saved again; the protocol is put in and taken out here. */
import type { Snapshot, SnapshotFrom } from 'xstate';
import { z } from 'zod';
import { aftercare } from './aftercare/machine.ts';
import type { CaseSnapshots } from './case.ts';
import { dislodgement } from './dislodgement/machine.ts';
import { paging } from './paging/machine.ts';
import type { Protocol } from './protocol/settings.ts';
import { childless } from './withoutActor.ts';

type Conversation = SnapshotFrom<typeof dislodgement>;
type Paging = SnapshotFrom<typeof paging>;
type Aftercare = SnapshotFrom<typeof aftercare>;

const savedSnapshot = z.looseObject({
  status: z.literal(['active', 'done']),
  value: z.unknown(),
  // JSON drops it while there is none.
  output: z.unknown().optional(),
  context: z.looseObject({}),
});

interface Persistable {
  readonly status: string;
  readonly value: unknown;
  readonly output: unknown;
  readonly context: object;
}

/**
 * Plain JSON of a machine's snapshot, as XState persists one that has no children and no history. The protocol stays out:
 * it is kept once for all cases that began with it, and walking it would cost more than the step.
 */
export function save({ status, value, output, context }: Persistable): unknown {
  const saved = Object.fromEntries(Object.entries(context).filter(([name]) => !injected.has(name)));
  return { status, value, output, context: saved, historyValue: {}, children: {} };
}

/** What a restore puts into a context and a save takes out. */
const injected = new Set(['protocol', 'clinical', 'site']);

/**
 * The machines of one case as they stand. Each is restored when it is first asked for: most texts concern the conversation
 * alone. The protocol is put in after XState has revived the rest: it is large, shared, and needs no reviving.
 */
export class Running {
  readonly protocol: Protocol;
  readonly #saved: CaseSnapshots;
  #parsedPaging: Parsed | undefined;
  #parsedAftercare: Parsed | undefined;
  #conversation: Conversation | undefined;
  #paging: Paging | undefined;
  #aftercare: Aftercare | undefined;

  constructor(protocol: Protocol, saved: CaseSnapshots) {
    this.protocol = protocol;
    this.#saved = saved;
  }

  get conversation(): Conversation {
    this.#conversation ??= this.#revived(dislodgement.restoreSnapshot(parse(this.#saved.conversation), childless));
    return this.#conversation;
  }

  set conversation(next: Conversation) {
    this.#conversation = next;
  }

  get paging(): Paging {
    this.#paging ??= this.#revivedWaits(paging.restoreSnapshot(this.#savedPaging, childless));
    return this.#paging;
  }

  set paging(next: Paging) {
    this.#paging = next;
  }

  get aftercare(): Aftercare {
    this.#aftercare ??= this.#revivedWaits(aftercare.restoreSnapshot(this.#savedAftercare, childless));
    return this.#aftercare;
  }

  set aftercare(next: Aftercare) {
    this.#aftercare = next;
  }

  /** Whether aftercare has not begun or has been ended, read off without reviving it. */
  get aftercareIsIdle(): boolean {
    return (this.#aftercare?.value ?? this.#savedAftercare.value) === 'idle';
  }

  /** Whether somebody has the page, read off without reviving it. */
  get pagingIsTaken(): boolean {
    const value = this.#paging?.value ?? this.#savedPaging.value;
    return typeof value === 'object' && value !== null && 'taken' in value;
  }

  /** The same case, to be moved on: who looks at this one goes on seeing it as it stood. */
  copy(): Running {
    const copy = new Running(this.protocol, this.#saved);
    copy.#conversation = this.#conversation;
    return copy;
  }

  /** What is to be kept; a machine that nobody asked for is kept as it was, and for the conversation every text asks. */
  save(): CaseSnapshots {
    return {
      conversation: save(this.conversation),
      paging: this.#paging === undefined ? this.#saved.paging : save(this.#paging),
      aftercare: this.#aftercare === undefined ? this.#saved.aftercare : save(this.#aftercare),
    };
  }

  get #savedPaging(): Parsed {
    this.#parsedPaging ??= parse(this.#saved.paging);
    return this.#parsedPaging;
  }

  get #savedAftercare(): Parsed {
    this.#parsedAftercare ??= parse(this.#saved.aftercare);
    return this.#parsedAftercare;
  }

  #revived(snapshot: Conversation): Conversation {
    return { ...snapshot, context: { ...snapshot.context, protocol: this.protocol } };
  }

  #revivedWaits<S extends Paging | Aftercare>(snapshot: S): S {
    const { clinical, site } = this.protocol;
    return { ...snapshot, context: { ...snapshot.context, clinical, site } };
  }
}

type Parsed = Snapshot<unknown> & { readonly value: unknown };

function parse(saved: unknown): Parsed {
  const { status, output, ...rest } = savedSnapshot.parse(saved);
  return status === 'active'
    ? { ...rest, status, error: undefined, output: undefined }
    : { ...rest, status, error: undefined, output };
}
