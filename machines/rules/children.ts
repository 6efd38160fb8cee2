/** The children of a family that has several with a tube: how a case and its texts number them. */
import type { FamilyFile } from '../facts.ts';

/** All of them in the order of their names, whichever stands first in the file; none where there is only one. */
export function severalChildren({ siblings = [], ...first }: FamilyFile): readonly FamilyFile[] {
  if (siblings.length === 0) return [];
  const all = first.child === null ? siblings : [first, ...siblings];
  return all.toSorted((one, other) => (String(one.child) < String(other.child) ? -1 : 1));
}
