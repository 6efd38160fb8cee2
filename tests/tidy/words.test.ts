/** The words beside the code: what they point at is there, and the commands they name exist. */
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { clinicalSettings } from '#machines/protocol/settings.ts';
import { files, textOf } from './tree.ts';

const pages = files().filter((path) => path.endsWith('.md'));
const known = new Set(files().flatMap((path) => [path, ...foldersOf(path)]));

describe('README, DEVELOPERS and the pages of deploy', () => {
  it('link only to what is there', () => {
    const links = pages.flatMap((page) =>
      [...textOf(page).matchAll(/\]\((?!https?:)([^)#]+)\)/g)].map((match) => join(dirname(page), match[1] ?? '')),
    );
    expect(links.length).toBeGreaterThan(0);
    expect(links.filter((path) => !known.has(path))).toEqual([]);
  });

  it('name only files that are there', () => {
    const named = pages.flatMap((page) =>
      [...textOf(page).matchAll(/`((?:machines|src|tests|seeds|deploy|\.ci)\/[\w./-]+?)\/?`/g)].map(
        (match) => match[1] ?? '',
      ),
    );
    /** Made by whoever runs the line. */
    const made = ['deploy/live.env'];
    expect(named.filter((path) => !known.has(path) && !made.includes(path))).toEqual([]);
  });

  it('name only commands of the package', () => {
    const { scripts } = z
      .object({ scripts: z.record(z.string(), z.string()) })
      .parse(JSON.parse(textOf('package.json')));
    const run = pages.flatMap((page) => [...textOf(page).matchAll(/npm run ([\w-]+)/g)].map((match) => match[1] ?? ''));
    expect(run.filter((name) => !Object.hasOwn(scripts, name))).toEqual([]);
  });

  it('give the settings as they are', () => {
    const rows = [...textOf('README.md').matchAll(/^\| `(\w+)`\s*\| ([\d.]+)[^|]*\| ([\d.]+) to ([\d.]+)/gm)];
    const settings = new Map<string, { default: number; least: number; most: number }>(
      Object.entries(clinicalSettings),
    );
    expect(rows.length).toBeGreaterThan(5);
    for (const [, name = '', ...values] of rows) {
      const setting = settings.get(name);
      expect([name, ...values.map(Number)]).toEqual([name, setting?.default, setting?.least, setting?.most]);
    }
  });
});

function foldersOf(path: string): readonly string[] {
  const folder = dirname(path);
  return folder === '.' ? [] : [folder, ...foldersOf(folder)];
}
