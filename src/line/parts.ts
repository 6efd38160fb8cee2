/** What the line is put together from. Everything it does not do itself is handed in here. */
import type { openCase, stepCase, viewCase } from '#machines/case.ts';
import type { Protocol } from '#machines/protocol/settings.ts';
import type { Carrier } from '#src/carrier/port.ts';
import type { Clock } from '#src/clock.ts';
import type { Mail } from '#src/handover/mail.ts';
import type { Log } from '#src/log.ts';
import type { NurseWord } from '#src/reading/nurse.ts';
import type { Open, Reading } from '#src/reading/read.ts';
import type { clinicOpen } from '#src/rota/clinicHours.ts';
import type { Stretch } from '#src/rota/gaps.ts';
import type { Nurse } from '#src/rota/rota.ts';
import type { Database } from '#src/store/database.ts';
import type { LineKind } from '#src/store/migrate.ts';
import type { Seal } from '#src/store/seal.ts';
import type { Watch } from '#src/watch/watch.ts';
import type { word, wordForNurse } from '#src/wording/word.ts';
import type { Alarm } from './alarm.ts';
import type { Checkpoint } from './checkpoint.ts';

export interface Machines {
  readonly openCase: typeof openCase;
  readonly stepCase: typeof stepCase;
  readonly viewCase: typeof viewCase;
}

export interface Parts {
  readonly kind: LineKind;
  readonly database: Database;
  readonly clock: Clock;
  /** Real time, epoch ms: how long a carrier has been silent is real time in practice too. */
  readonly wallMs: () => number;
  readonly alarm: Alarm;
  /** Told as the line passes each step of the way; a no-op in life. */
  readonly checkpoint: Checkpoint;
  /** Hears how long turns take, and what went wrong; counts only. */
  readonly watch: Watch;
  readonly carrier: Carrier;
  readonly seal: Seal;
  readonly log: Log;
  /** The one in force for new cases; a running case keeps its own. */
  readonly protocol: Protocol;
  /** The line's own number, as a telephone it rings shows it, E.164. */
  readonly lineNumber: string;
  /** Where the line is reached, without a slash at the end: links in texts begin with it. */
  readonly publicUrl: string;
  readonly machines: Machines;
  readonly read: (text: string, open: Open) => Reading;
  readonly readNurse: (text: string) => NurseWord;
  readonly word: typeof word;
  readonly wordForNurse: typeof wordForNurse;
  /** Everybody on the rota, on call or not. */
  readonly nurses: readonly Nurse[];
  /** The people on call at this time by place in the climb, null where a line has nobody; swaps not counted, see `onCallNow`. */
  readonly onCall: (atMs: number) => readonly (Nurse | null)[];
  readonly nurseOf: (number: string) => Nurse | null;
  /** Where the rota has nobody between two times, epoch ms. */
  readonly rotaGaps: (fromMs: number, toMs: number) => readonly Stretch[];
  readonly clinicOpen: typeof clinicOpen;
  /** Carries the handover sheet by e-mail; null where the site has set none. */
  readonly mail: Mail | null;
}
