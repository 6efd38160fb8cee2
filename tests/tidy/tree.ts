/** The repository as its own tests see it: every file that belongs to it, without what is installed, built or kept by git. */
import { readdirSync, readFileSync } from 'node:fs';
import { extname } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const notOurs = new Set(['.git', 'node_modules', 'var', 'coverage']);

/** Names at the top of the repository. */
export const top: readonly string[] = readdirSync(root).filter((name) => !notOurs.has(name));

const all = top.flatMap(below).sort();

/** Paths from the root, with slashes; those under one of `folders`, or all. */
export function files(...folders: readonly string[]): readonly string[] {
  return folders.length === 0 ? all : all.filter((path) => folders.some((folder) => path.startsWith(`${folder}/`)));
}

/** The files that are TypeScript. */
export function typescript(...folders: readonly string[]): readonly string[] {
  return files(...folders).filter((path) => extname(path) === '.ts');
}

export function textOf(path: string): string {
  return readFileSync(root + path, 'utf8');
}

/** The text without comments; good enough for this house's style, where no code follows a block comment on its line. */
export function codeOf(path: string): string {
  return textOf(path)
    .replaceAll(/^\s*\/\*[\s\S]*?\*\/$/gm, '')
    .replaceAll(/(?<=^|\s)\/\/.*$/gm, '');
}

/** Every place where a pattern stands, as `path: what stands there`. */
export function found(paths: readonly string[], pattern: RegExp, text = textOf): readonly string[] {
  const global = new RegExp(pattern, 'g');
  return paths.flatMap((path) => [...text(path).matchAll(global)].map((match) => `${path}: ${match[0].trim()}`));
}

/** What a file imports, as written. */
export function importsOf(path: string): readonly string[] {
  return [...codeOf(path).matchAll(/\b(?:from|import)\s*\(?\s*'([^'\s]+)'/g)].flatMap((match) => match[1] ?? []);
}

function below(path: string): readonly string[] {
  const entries = readdirSync(root, { withFileTypes: true }).some(
    (entry) => entry.name === path && entry.isDirectory(),
  );
  if (!entries) return [path];
  return readdirSync(root + path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`.slice(root.length));
}
