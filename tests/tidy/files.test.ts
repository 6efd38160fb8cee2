/** The files of the house: short, each saying what it is for, none lying about unused, and nothing of the machine they were written on. */
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { files, found, importsOf, textOf, top, typescript } from './tree.ts';

const longest = 300;
const binary = /\.(?:png|ico|woff2)$/;

describe('the repository', () => {
  it('has nothing at its top but what belongs there', () => {
    const belongs = ['README.md', 'DEVELOPERS.md', 'package.json', 'package-lock.json', 'tsconfig.json', 'biome.json'];
    const folders = ['machines', 'src', 'tests', 'deploy', 'seeds'];
    const known = [...belongs, ...folders, 'vitest.config.ts'];
    expect(top.filter((name) => !name.startsWith('.') && !known.includes(name))).toEqual([]);
    expect(folders.filter((name) => !top.includes(name))).toEqual([]);
  });

  it(`keeps every file of machines and src within ${longest} lines`, () => {
    const lengths = files('machines', 'src').map((path) => ({ path, lines: textOf(path).split('\n').length - 1 }));
    expect(lengths.length).toBeGreaterThan(0);
    expect(lengths.filter(({ lines }) => lines > longest)).toEqual([]);
  });

  it('opens every file of TypeScript with a sentence on what it is for', () => {
    const sentence = /^\/\*\*\s+(?:\* )?[A-Z`][^*]*[.:]/;
    expect(typescript('machines', 'src').filter((path) => !sentence.test(textOf(path)))).toEqual([]);
  });

  it('has no file of TypeScript that nothing imports', () => {
    const imported = new Set(typescript('machines', 'src', 'tests').flatMap((path) => importsOf(path).map(from(path))));
    const entries = ['src/main.ts'];
    expect(typescript('machines', 'src').filter((path) => !imported.has(path) && !entries.includes(path))).toEqual([]);
  });

  it('names no path of the machine it was written on', () => {
    const paths = files().filter((path) => !binary.test(path));
    expect(found(paths, /(?<![\w.\-/])\/(?:work|tmp|home|root|mnt|Users)\/[\w.-]+/)).toEqual([]);
  });

  it('leaves it to whoever installs it which registry to use', () => {
    expect(found(['package-lock.json'], /"resolved": "(?!https:\/\/registry\.npmjs\.org\/)[^"]*"/)).toEqual([]);
    expect(found(['.npmrc'], /^.*(?:registry|_auth).*$/m)).toEqual([]);
  });
});

/** Where an import leads, as a path from the root. */
function from(path: string): (name: string) => string {
  return (name) => (name.startsWith('#') ? name.slice(1) : name.startsWith('.') ? join(dirname(path), name) : name);
}
