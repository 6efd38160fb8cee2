/**
 * French, for a parent addressed as "vous": every message to a caregiver and every preface. A draft until a signer approves
 * it. Accents that the alphabet of a text lacks fall off on the way out, so no word is used whose meaning hangs on one; no
 * space stands before ? and :, as in any text message.
 */
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

export const french: FamilyLanguage = {
  caregiver: { ...safety, ...questions, ...insertion, ...placement, ...outcome, ...beside, ...aftercare, ...rehearsal },
  prefaces,
  rehearsalMark,
};
