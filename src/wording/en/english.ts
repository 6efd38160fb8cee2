/** English, the whole of it: every message to a caregiver, every preface, every message to a nurse. */
import type { Language } from '../catalogue.ts';
import { aftercare } from './aftercare.ts';
import { beside } from './beside.ts';
import { handover } from './handover.ts';
import { insertion } from './insertion.ts';
import { nurse } from './nurse.ts';
import { outcome } from './outcome.ts';
import { pause } from './pause.ts';
import { placement } from './placement.ts';
import { prefaces } from './prefaces.ts';
import { questions } from './questions.ts';
import { rehearsal, rehearsalMark, rehearsalReplies } from './rehearsal.ts';
import { safety } from './safety.ts';
import { swap } from './swap.ts';

export const english: Language = {
  caregiver: { ...safety, ...questions, ...insertion, ...placement, ...outcome, ...beside, ...aftercare, ...rehearsal },
  prefaces,
  rehearsalMark,
  nurse: { ...nurse, ...handover, ...swap, ...pause, ...rehearsalReplies },
};
