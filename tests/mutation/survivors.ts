/** The mutants that may live: each with the reason why it changes nothing that matters, read from `survivors.yaml`. */
import { readFileSync } from 'node:fs';
import type { MutantResult } from '@stryker-mutator/api/core';
import { parse } from 'yaml';
import { z } from 'zod';

const survivor = z.strictObject({
  file: z.string(),
  /** The whole line of code, trimmed, on which the mutant begins. */
  line: z.string(),
  /** What the mutant put there, its white space made single. */
  becomes: z.array(z.string()).min(1),
  why: z.string().min(10),
});
export type Survivor = z.infer<typeof survivor>;

export const survivors: readonly Survivor[] = z
  .array(survivor)
  .parse(parse(readFileSync(new URL('./survivors.yaml', import.meta.url), 'utf8')));

/** A mutant as the list names it; `fileName` is absolute, `root` ends in a slash. */
export function asListed({ fileName, location, replacement }: MutantResult, root: string) {
  const line = readFileSync(fileName, 'utf8').split('\n')[location.start.line - 1] ?? '';
  return {
    file: fileName.replace(root, ''),
    line: line.trim(),
    becomes: (replacement ?? '').replaceAll(/\s+/g, ' '),
  };
}

export function isExplained(mutant: ReturnType<typeof asListed>): boolean {
  return survivors.some(
    ({ file, line, becomes }) => file === mutant.file && line === mutant.line && becomes.includes(mutant.becomes),
  );
}
