/** Reads one YAML text by a schema, or refuses it by name. */

import { parse, YAMLParseError } from 'yaml';
import type { z } from 'zod';
import { refusalsOf } from '#machines/protocol/refusals.ts';
import { SeedsRefused } from './seedsErrors.ts';

/** The plain value a YAML text holds. Throws `SeedsRefused` naming `file` when it is no YAML. */
export function yamlValue(file: string, text: string): unknown {
  try {
    return parse(text);
  } catch (error) {
    if (!(error instanceof YAMLParseError)) throw error;
    throw new SeedsRefused(file, [{ field: 'the file', value: error.message, bound: 'readable YAML' }]);
  }
}

/** What `schema` makes of a YAML text. Throws `SeedsRefused` naming `file`, each field, value and bound. */
export function parseYaml<T>(file: string, text: string, schema: z.ZodType<T>): T {
  const value = yamlValue(file, text);
  const parsed = schema.safeParse(value);
  if (!parsed.success) throw new SeedsRefused(file, refusalsOf(parsed.error, value));
  return parsed.data;
}
