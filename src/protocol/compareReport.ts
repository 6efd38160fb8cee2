/** What a comparison found, in words: each case that would go otherwise, its own protocol beside the other. No names, no numbers. */
import { DateTime } from 'luxon';
import { caseCode } from '#src/line/cases.ts';
import { type CoursePart, courseParts, type Difference, type Point } from './compare.ts';

export interface Comparison {
  /** How many cases were played. */
  readonly count: number;
  readonly differences: readonly Difference[];
  /** IANA time zone of the times shown. */
  readonly zone: string;
}

const columnWidth = 52;

const titles: Readonly<Record<CoursePart, string>> = {
  disposition: 'told to',
  page: 'pages',
  timing: 'by itself',
};

/** The whole comparison as text. */
export function compareReport({ count, differences, zone }: Comparison): string {
  const counted = `${count} past ${count === 1 ? 'case' : 'cases'} played on both protocols; ${differences.length} would go otherwise.`;
  return [counted, ...differences.map((difference) => differenceText(difference, zone))].join('\n\n');
}

function differenceText({ id, openedMs, differs, own, other, parting }: Difference, zone: string): string {
  const at = (ms: number) => DateTime.fromMillis(ms, { zone }).toFormat('d LLL HH:mm');
  const opened = DateTime.fromMillis(openedMs, { zone }).toFormat('d LLL yyyy HH:mm');
  const rows = courseParts
    .filter((part) => differs.includes(part))
    .flatMap((part) => sideBySide(titles[part], own[part], other[part], at));
  const parts =
    parting === null
      ? []
      : [
          `  from ${at(parting.atMs)} on the family would have been asked ${asked(parting.other)} instead of ${asked(parting.own)};`,
          '  what it would have answered is not known, so the other column stops there.',
        ];
  return [
    `Case ${caseCode(id)} (number ${id}), opened ${opened}`,
    row('', 'on its own protocol', 'on the other'),
    ...rows,
    ...parts,
  ].join('\n');
}

const asked = (key: string | null): string => key ?? 'nothing';

function sideBySide(
  title: string,
  own: readonly Point[],
  other: readonly Point[],
  at: (ms: number) => string,
): string[] {
  const lines = Array.from({ length: Math.max(own.length, other.length, 1) }, (_, index) => index);
  const cell = (point: Point | undefined) => (point === undefined ? '-' : `${at(point.atMs)}  ${point.what}`);
  return lines.map((index) => row(index === 0 ? title : '', cell(own[index]), cell(other[index])));
}

function row(title: string, own: string, other: string): string {
  return `  ${title.padEnd(10)} ${own.padEnd(columnWidth)} ${other}`.trimEnd();
}
