/** Spanish, for a parent addressed as "usted": every message to a caregiver and every preface. A draft until a signer approves it. */
import type { FamilyLanguage } from '../catalogue.ts';
import { aftercare } from './aftercare.ts';
import { beside } from './beside.ts';
import { insertion } from './insertion.ts';
import { outcome } from './outcome.ts';
import { placement } from './placement.ts';
import { prefaces } from './prefaces.ts';
import { questions } from './questions.ts';
import { rehearsal, rehearsalMark } from './rehearsal.ts';
import { safety } from './safety.ts';

export const spanish: FamilyLanguage = {
  caregiver: { ...safety, ...questions, ...insertion, ...placement, ...outcome, ...beside, ...aftercare, ...rehearsal },
  prefaces,
  rehearsalMark,
};
