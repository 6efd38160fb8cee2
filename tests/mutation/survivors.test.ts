/** The list of mutants that may live says nothing of code that is gone. */
import { describe, expect, it } from 'vitest';
import { textOf } from '#tests/tidy/tree.ts';
import { survivors } from './survivors.ts';

describe('the mutants that may live', () => {
  it('are on lines that still stand', () => {
    const stands = ({ file, line }: { file: string; line: string }) =>
      textOf(file)
        .split('\n')
        .some((text) => text.trim() === line);
    expect(survivors.filter((survivor) => !stands(survivor))).toEqual([]);
  });

  it('are never of the rules', () => {
    expect(survivors.filter(({ file }) => file.startsWith('machines/rules/'))).toEqual([]);
  });
});
