/** Loads the practice world from its folder: protocol, rota and families. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { parseProtocol } from '#machines/protocol/load.ts';
import type { Protocol } from '#machines/protocol/settings.ts';
import { phoneNumber } from '#machines/protocol/siteSchema.ts';
import { fileFields, siblingFields } from '#src/families/file.ts';
import type { Enrolment } from '#src/line/line.ts';
import { knowsCalendar } from '#src/rota/holidays.ts';
import { loadRota, type RotaFile } from '#src/rota/rotaFile.ts';
import { siteWordRefusals } from './reading/siteWordsCheck.ts';
import { SeedsRefused } from './seedsErrors.ts';
import { parseYaml, yamlValue } from './yamlFile.ts';

/** A family of the seeds, with the phone it is enrolled by. */
export type SeedFamily = Enrolment & { readonly number: string };

export interface Seeds {
  readonly protocol: Protocol;
  readonly rota: RotaFile;
  readonly families: readonly SeedFamily[];
}

const familySchema = z.strictObject({
  number: phoneNumber,
  phones: z.array(phoneNumber).default([]),
  ...fileFields,
  siblings: z.array(z.strictObject(siblingFields)).default([]),
});

const familiesBound = 'a list of families, each with a number of its own';
const familiesSchema = z
  .array(familySchema, familiesBound)
  .refine((families) => new Set(families.map((family) => family.number)).size === families.length, familiesBound);

/**
 * Reads `protocol.yaml`, `rota.yaml` and `families.yaml` of a folder. Throws `SeedsRefused` for a file that is missing, is no YAML
 * or holds what may not stand, and `ProtocolRefused` for a protocol outside its bounds.
 */
export function loadSeeds(folder: string): Seeds {
  return {
    protocol: loadProtocol(readText(folder, 'protocol.yaml')),
    rota: loadRota(readText(folder, 'rota.yaml')),
    families: loadFamilies(readText(folder, 'families.yaml')),
  };
}

/**
 * Reads a protocol file; beside the protocol's own bounds, its holiday calendar has to be one that exists, and its own words
 * for devices and places mean nothing else to the line.
 */
export function loadProtocol(yamlText: string): Protocol {
  const protocol = parseProtocol(yamlValue('protocol.yaml', yamlText));
  const { holidays } = protocol.site;
  if (holidays !== null && !knowsCalendar(holidays)) {
    const bound = 'a country, or country and state, with a holiday calendar; or null';
    throw new SeedsRefused('protocol.yaml', [{ field: 'site.holidays', value: holidays, bound }]);
  }
  const refused = siteWordRefusals(protocol.site.words ?? {});
  if (refused.length > 0) throw new SeedsRefused('protocol.yaml', refused);
  return protocol;
}

/** Reads a families file. Throws `SeedsRefused` with field, value and bound. */
export function loadFamilies(yamlText: string): readonly SeedFamily[] {
  return parseYaml('families.yaml', yamlText, familiesSchema);
}

function readText(folder: string, file: string): string {
  try {
    return readFileSync(join(folder, file), 'utf8');
  } catch (error) {
    const value = error instanceof Error && 'code' in error ? error.code : String(error);
    throw new SeedsRefused(file, [{ field: 'the file', value, bound: 'readable' }]);
  }
}
