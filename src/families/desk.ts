/** What a person of the clinic does with families: enrol a file of them, add or change a child, take a family off. One transaction each. */

import { type Enrolled, enrolledFamilies, enrolOn, removeFamily } from '#src/line/families.ts';
import type { Family } from '#src/line/line.ts';
import type { Queryable } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import { childrenOf } from './children.ts';
import { cellsOf, type Fault, type Row, readRow } from './columns.ts';
import { FamiliesRefused, FamilyPhoneTaken, NoSuchFamily } from './errors.ts';
import { changedFields, type FileFamily, type LineFault, readFamilies } from './importing.ts';

/** Where and when a change is made, and by whom. */
export interface Desk {
  readonly client: Queryable;
  readonly seal: Seal;
  readonly nowMs: number;
  /** The site's day, as `yyyy-mm-dd`. */
  readonly today: string;
  /** The person's name, for the audit. */
  readonly by: string;
}

type Cells = Readonly<Record<string, string>>;

/** Enrols every family of a file; prints what became of each line. Throws `FamiliesRefused` where any line cannot stand. */
export async function importFile(desk: Desk, text: string, print: (line: string) => void): Promise<void> {
  const { families, faults } = readFamilies(text, desk.today);
  const before = new Map((await enrolledFamilies(desk, desk.client)).map((family) => [family.number, family]));
  const all = [...faults];
  const report: string[] = [];
  if (faults.length === 0) {
    for (const family of families) {
      const refused = await enrolOne(desk, family, before.get(family.number) ?? null, report);
      if (refused !== null) all.push(refused);
    }
  }
  for (const { line, column, rule } of all)
    print(`line ${line}: refused: ${column === null ? '' : `${column}: `}${rule}`);
  if (all.length > 0) throw new FamiliesRefused(new Set(all.map(({ line }) => line)).size);
  for (const line of report) print(line);
}

async function enrolOne(
  desk: Desk,
  { number, enrolment, lines }: FileFamily,
  before: Enrolled | null,
  report: string[],
): Promise<LineFault | null> {
  const [line = 0] = lines;
  const { phones = [], ...file } = enrolment;
  const changes = before === null ? [] : familyChanges(before, { number, morePhones: phones, file });
  const children = childrenOf(file).map(({ child }) => child ?? 'unnamed child');
  const what = before === null ? 'enrolled' : changes.length === 0 ? 'unchanged' : `changed: ${changes.join(', ')}`;
  report.push(...lines.map((each, place) => `line ${each}: ${children[place]}: ${what}`));
  if (what === 'unchanged') return null;
  try {
    await enrolOn(desk, desk.client, desk.nowMs, number, enrolment, { what, by: desk.by });
    return null;
  } catch (error) {
    if (error instanceof FamilyPhoneTaken) return { line, column: 'phones', rule: error.message };
    throw error;
  }
}

/** What differs between two states of a family: fields, children by name, phones. */
function familyChanges(before: Enrolled, after: Enrolled): string[] {
  const were = childrenOf(before.file);
  const are = childrenOf(after.file);
  const alone = were.length === 1 && are.length === 1;
  const sameChild = (a: Family) => (alone ? were[0] : were.find(({ child }) => child === a.child));
  const fields = are.flatMap((child) => {
    const old = sameChild(child);
    return old === undefined ? [`${child.child} added`] : changedFields(old, child);
  });
  const gone = alone ? [] : were.filter(({ child }) => !are.some((each) => each.child === child));
  const phones = String([...before.morePhones].sort()) === String([...after.morePhones].sort()) ? [] : ['phones'];
  return [...new Set([...fields, ...gone.map(({ child }) => `${child} no longer`), ...phones])];
}

/** Enrols a child: with a family of its own, or in the one its phone has. Throws `FamiliesRefused`. */
export async function addChild(desk: Desk, cells: Cells, print: (line: string) => void): Promise<void> {
  const row = standing(readRow(cells, desk.today), print);
  const family = (await enrolledFamilies(desk, desk.client)).find(({ number }) => number === row.number);
  if (family === undefined) {
    await enrolOn(
      desk,
      desk.client,
      desk.nowMs,
      row.number,
      { ...row.child, phones: row.phones },
      { what: 'enrolled', by: desk.by },
    );
    return print('enrolled');
  }
  const children = childrenOf(family.file);
  const names = [...children, row.child].map(({ child }) => child?.toLowerCase());
  if (names.includes(undefined) || new Set(names).size < names.length)
    return refuse([{ column: 'child', rule: 'children of one phone have names of their own' }], print);
  if (row.child.language !== family.file.language)
    return refuse([{ column: 'language', rule: 'one language a family' }], print);
  await enrolAgain(
    desk,
    family,
    [...children, row.child],
    [...family.morePhones, ...row.phones],
    `${row.child.child} added`,
  );
  print('added to its family');
}

/** Changes columns of a child; `name` tells it from the others of its family. Throws `NoSuchFamily`, `FamiliesRefused`. */
export async function changeChild(
  desk: Desk,
  number: string,
  name: string | null,
  cells: Cells,
  print: (line: string) => void,
): Promise<void> {
  const family = await enrolledBy(desk, number);
  const children = childrenOf(family.file);
  const place = name === null && children.length === 1 ? 0 : children.findIndex(({ child }) => child === name);
  const before = children[place];
  if (before === undefined) throw new NoSuchFamily('child');
  const now = cellsOf({ number, phones: family.morePhones, child: before });
  const row = standing(readRow({ ...now, ...cells }, desk.today), print);
  const after = children.map((child, at) => ({ ...(at === place ? row.child : child), language: row.child.language }));
  const changes = familyChanges(family, { number: row.number, morePhones: row.phones, file: joined(after) });
  const what = `changed: ${[...changes, ...(row.number === number ? [] : ['phone'])].join(', ')}`;
  if (row.number !== number) await removeFamily(desk, desk.client, desk.nowMs, number, desk.by);
  await enrolAgain(desk, { ...family, number: row.number }, after, row.phones, what);
  print(what);
}

/** The family a number is enrolled by. Throws `NoSuchFamily`. */
export async function enrolledBy(desk: Pick<Desk, 'client' | 'seal'>, number: string): Promise<Enrolled> {
  const family = (await enrolledFamilies(desk, desk.client)).find((each) => each.number === number);
  if (family === undefined) throw new NoSuchFamily('family');
  return family;
}

/** Takes a family off the line. Throws `NoSuchFamily`. */
export async function takeOff(desk: Desk, number: string): Promise<void> {
  await enrolledBy(desk, number);
  await removeFamily(desk, desk.client, desk.nowMs, number, desk.by);
}

async function enrolAgain(
  desk: Desk,
  { number }: Enrolled,
  children: readonly Family[],
  phones: readonly string[],
  what: string,
): Promise<void> {
  await enrolOn(desk, desk.client, desk.nowMs, number, { ...joined(children), phones }, { what, by: desk.by });
}

function joined([first, ...others]: readonly Family[]): Family {
  if (first === undefined) throw new RangeError('a family without a child');
  return { ...first, siblings: others.map(({ language: _, ...file }) => file) };
}

function standing(row: Row | readonly Fault[], print: (line: string) => void): Row {
  return 'child' in row ? row : refuse(row, print);
}

function refuse(faults: readonly Fault[], print: (line: string) => void): never {
  for (const { column, rule } of faults) print(`refused: ${column}: ${rule}`);
  throw new FamiliesRefused(1);
}
