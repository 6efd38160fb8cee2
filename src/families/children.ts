/** The children of a family: each with a file of its own, and what holds for whichever of them it is. */
import type { FamilyFile } from '#machines/facts.ts';
import { severalChildren } from '#machines/rules/children.ts';
import type { Family } from '#src/line/line.ts';

/** Every child's own file, in the order of the family's. */
export function childrenOf({ siblings = [], ...first }: Family): readonly [Family, ...Family[]] {
  return [first, ...siblings.map((child: FamilyFile): Family => ({ ...child, language: first.language }))];
}

/** The names to choose from where there are several, by the numbers a case gives them. */
export function namesOf(file: Family | null): readonly string[] {
  return file === null ? [] : severalChildren(file).map(({ child }) => child ?? '');
}

/** The file of a case: of several children the one it is about stands first, and before that is known nobody does. */
export function fileOfCase(family: Family, child: number | 'none' | null): Family {
  const several = severalChildren(family);
  const { language } = family;
  // The only child on file is not the one: nobody is named.
  if (several.length === 0) return child === 'none' ? { ...nobody, language } : family;
  const chosen = typeof child === 'number' ? (several[child] ?? nobody) : nobody;
  return { ...chosen, language, siblings: several.filter((each) => each !== chosen) };
}

const nobody: FamilyFile = {
  child: null,
  born: null,
  tubeKind: 'unknown',
  firstPlaced: null,
  weightKg: null,
  weighedOn: null,
};

/** How a nurse reads whose case it is: one name, or all it may be. */
export function childName(file: Family | null): string | null {
  return file?.child ?? (namesOf(file).join('/') || null);
}
