/** Turns what a schema found into refusals: field, value and bound. In these schemas every message is the bound itself. */

import type { z } from 'zod';
import type { Refusal } from './errors.ts';

/** One refusal for each thing the schema found in `value`; a name it does not know is refused as "left out". */
export function refusalsOf(error: z.ZodError, value: unknown): Refusal[] {
  return error.issues.flatMap((issue) => {
    if (issue.code !== 'unrecognized_keys') return [refusal(value, issue.path, issue.message)];
    return issue.keys.map((key) => refusal(value, [...issue.path, key], 'left out: there is no such setting'));
  });
}

function refusal(value: unknown, path: readonly PropertyKey[], bound: string): Refusal {
  return { field: path.map(String).join('.') || 'the file', value: at(value, path), bound };
}

function at(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((inner, key) => Reflect.get(Object(inner), key), value);
}
