/** How a nurse's text names her cases: by their codes anywhere in it, or by a child's name that only one of them has. */
import { childName } from '#src/families/children.ts';
import { caseCode, isCodeLike, type LockedCase } from '../cases.ts';

const bare = (word: string) => word.replace(/[^A-Za-z0-9]/g, '').toUpperCase();

/** What has the form of a code in a text, once each. */
export function codesIn(body: string): readonly string[] {
  return [...new Set(body.trim().split(/\s+/).map(bare).filter(isCodeLike))];
}

/** "CLEAR K42", "take K42 and K43": her cases as named, and the words without their codes and what joins them. */
export function withoutCodes(
  cases: readonly LockedCase[],
  body: string,
): { readonly all: readonly LockedCase[]; readonly rest: string } {
  const words = body.trim().split(/\s+/);
  const names = (word: string | undefined) => word !== undefined && cases.some(({ id }) => caseCode(id) === bare(word));
  const named = words.filter(names).map(bare);
  if (named.length === 0) return { all: [], rest: body };
  const joins = (word: string, index: number) =>
    /^(?:and|&|\+)$/i.test(word) && names(words[index - 1]) && names(words[index + 1]);
  return {
    all: cases.filter(({ id }) => named.includes(caseCode(id))),
    rest: words.filter((word, index) => !names(word) && !joins(word, index)).join(' '),
  };
}

/** "Tell Wren to wait": the case of the child whose name comes first, where only one of hers has it. */
export function namedFirst(cases: readonly LockedCase[], words: string): LockedCase | null {
  const plain = words.trim().toLowerCase();
  const [only, more] = cases.filter(({ file }) => {
    const name = childName(file)?.toLowerCase() ?? '';
    return name !== '' && (plain === name || plain.startsWith(`${name} `) || plain.startsWith(`${name}'s `));
  });
  return only === undefined || more !== undefined ? null : only;
}

/** "Clear Wren": a word of hers and nothing but a child's name beside it, where one of her cases has that name. */
export function withoutName(
  cases: readonly LockedCase[],
  body: string,
): { readonly named: LockedCase; readonly rest: string } | null {
  const plain = body.trim().toLowerCase();
  const found = cases.flatMap((named) => {
    const name = childName(named.file)?.toLowerCase() ?? '';
    const rest = name === '' || !plain.endsWith(` ${name}`) ? '' : plain.slice(0, -name.length).trim();
    return rest === '' ? [] : [{ named, rest }];
  });
  const [only, more] = found;
  return only === undefined || more !== undefined ? null : only;
}
