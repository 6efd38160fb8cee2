/** The safety rules a clinician reads, and the figures of the last proof that they hold. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';

/** What is proved on every path of the machines, in words. */
export const safetyRules = {
  S1: 'May use is said only after: a G tube, a tract older than the setting, no warning sign, a tube in and not come out since, asked how the child is since, a reading that passed (or the fenced exception after a feed, on a first reading), secured. A hard insertion only with the nurse’s clearance.',
  S2: 'GJ, J, an unknown kind, a young or unknown tract, a warning sign: never may use, never water in the balloon; always go in and a page. A tract too young, a J tube, a latex allergy without a latex-free tube: no length is told.',
  S3: 'No strips, no contents, an unreadable reading, not secured, a second high reading: never may use; always a page.',
  S4: 'A danger sign at any time: the next message is the emergency message, with a page at emergency level. A warning sign: feed stopped, permission void, a page at emergency level.',
  S5: 'Water in the balloon only where may use also holds; the length only from the table, only once the weight is settled.',
  S6: 'Every outcome but use and own tube has a page; every use and own tube has its aftercare; every recheck has exactly one timer.',
  S7: 'No dead end: every waiting state has a timer, and silence alone reaches a nurse within a stated time.',
  S8: 'Two unreadable answers reach a nurse and do not stop the steps that can go on. A correction, or the tube coming out again, opens every gate that hung on it.',
  S9: 'Nothing a caregiver can text ends a case without a page or an outcome; STOP in an open case pages a nurse to telephone. Nothing a nurse can text makes a tube usable that S1 to S3 forbid.',
  S10: 'A page climbs until somebody takes it; nobody is left waiting.',
  S11: 'No question before the length that changes nothing before it; at most 7 texts for a stranger, 5 for an enrolled family, 4 when the first text says it all.',
} as const;

export type RuleId = keyof typeof safetyRules;

const proofShape = z.object({
  /** Hash of the machines it was run on, see `machinesHash`. */
  machines: z.string(),
  ranAt: z.iso.datetime({ offset: true }),
  states: z.int().min(1),
  transitions: z.int().min(1),
  /** How often each rule was put to the test, and how often it failed. */
  rules: z.record(z.string(), z.object({ exercised: z.int().min(0), violations: z.int().min(0) })),
  /** The longest times found. */
  longest: z.array(z.object({ what: z.string(), minutes: z.number().min(0) })),
});
export type Proof = z.infer<typeof proofShape>;

/** Where `npm run proof` leaves its figures. */
export const proofFile = fileURLToPath(new URL('../../deploy/clinical-safety/proof.json', import.meta.url));

/** The last proof's figures, or null where none was run. Throws where the file holds something else. */
export function readProof(): Proof | null {
  return existsSync(proofFile) ? proofShape.parse(JSON.parse(readFileSync(proofFile, 'utf8'))) : null;
}
