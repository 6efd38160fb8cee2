/** How the code reads: the machines are pure, and nothing is silenced. `any` and floating promises are the linter's to find. */
import { describe, expect, it } from 'vitest';
import { codeOf, found, importsOf, typescript } from './tree.ts';

describe('the machines', () => {
  it('import xstate, zod, luxon and themselves, nothing else', () => {
    const allowed = /^(?:xstate|zod|luxon|#machines\/.*|\.{1,2}\/.*)$/;
    const outward = typescript('machines').flatMap((path) =>
      importsOf(path)
        .filter((name) => !allowed.test(name) || leavesMachines(path, name))
        .map((name) => `${path}: ${name}`),
    );
    expect(outward).toEqual([]);
  });

  it('have no clock, chance, timer, network, process or console', () => {
    const impure =
      /\b(?:Date\.now\b|new Date\(\s*\)|DateTime\.(?:now|local|utc)\(\s*\)|performance\b|Math\.random|crypto\b|set(?:Timeout|Interval|Immediate)\b|fetch\(|process\.|console\.|globalThis\b)/;
    expect(found(typescript('machines'), impure, codeOf)).toEqual([]);
  });
});

describe('machines and src', () => {
  const paths = typescript('machines', 'src');

  it('silence neither the compiler nor the linter', () => {
    expect(found(paths, /\bas unknown as\b|\bas any\b/, codeOf)).toEqual([]);
    expect(found(paths, /@ts-(?:ignore|expect-error|nocheck)|biome-ignore/)).toEqual([]);
  });

  it('read the environment where a command starts, and nowhere else', () => {
    expect(
      found(
        paths.filter((path) => path !== 'src/main.ts'),
        /\bprocess\.env\b/,
        codeOf,
      ),
    ).toEqual([]);
  });

  it('write out the ending of what they import, as Node wants it', () => {
    const crooked = paths.flatMap((path) =>
      importsOf(path)
        .filter((name) => /^[.#]/.test(name) && !/\.(?:ts|json)$/.test(name))
        .map((name) => `${path}: ${name}`),
    );
    expect(crooked).toEqual([]);
  });
});

function leavesMachines(path: string, name: string): boolean {
  return name.startsWith('.') && name.split('../').length - 1 >= path.split('/').length - 1;
}
