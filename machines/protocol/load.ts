/** Reads a site's protocol: the clinical settings and the site's own facts, or a refusal that names each wrong value. */

import { z } from 'zod';
import { clinicalSchema } from './clinicalSchema.ts';
import { ProtocolRefused } from './errors.ts';
import { refusalsOf } from './refusals.ts';
import type { Protocol } from './settings.ts';
import { siteSchema } from './siteSchema.ts';

export { defaultClinical } from './clinicalSchema.ts';

const protocolSchema = z.strictObject(
  { clinical: clinicalSchema.prefault({}), site: siteSchema },
  'a protocol: clinical and site',
);

/**
 * Parses a protocol already read from its file. A clinical setting that is left out takes its default; every fact of the site
 * has to be there. Throws `ProtocolRefused` with field, value and bound of everything that may not stand.
 */
export function parseProtocol(value: unknown): Protocol {
  const parsed = protocolSchema.safeParse(value);
  if (!parsed.success) throw new ProtocolRefused(refusalsOf(parsed.error, value));
  return parsed.data;
}
