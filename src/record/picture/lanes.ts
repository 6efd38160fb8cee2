/** The lanes of the picture: texts, what the family was told, readings against the limit, pages until taken, tube times. */
import type { Course, CourseReading, TubeSpan } from '../course.ts';
import { type CaseRecord, nameOf, type RecordedPage } from '../read.ts';
import { phOf } from '../timeline.ts';
import { box, cross, disc, eye, faint, inRows, line, paper, rowsOf, square, triangle, words } from './marks.ts';
import { type Scale, spread } from './scale.ts';

export interface Lane {
  readonly title: string;
  readonly height: number;
  /** Drawn with its own top at 0. */
  readonly body: string;
}

export interface Scene {
  readonly record: CaseRecord;
  readonly course: Course;
  readonly scale: Scale;
}

const rowHeight = 22;
const labelHeight = 16;

export function lanes(scene: Scene): readonly Lane[] {
  return [...texts(scene), told(scene), readings(scene), pages(scene), tubes(scene)];
}

function texts({ record, scale }: Scene): Lane[] {
  const family = record.messages.filter(({ nurse }) => nurse === null);
  const wrote = spread(
    scale,
    family.filter(({ direction }) => direction === 'in'),
  );
  const said = spread(
    scale,
    family.filter(({ direction }) => direction === 'out'),
  );
  const y = rowHeight / 2;
  const textMark = ({ x, media }: { x: number; media: readonly unknown[] }) =>
    disc(x, y) + (media.length === 0 ? '' : eye(x, y));
  const out = said.map(({ x, kind, state }) =>
    [kind === 'call' ? triangle(x, y) : square(x, y), state === 'refused' ? cross(x, y) : ''].join(''),
  );
  return [
    { title: 'Family wrote', height: rowHeight, body: wrote.map(textMark).join('') },
    { title: 'Line to family', height: rowHeight, body: out.join('') },
  ];
}

function told({ course, scale }: Scene): Lane {
  const labels = inRows(
    course.told.map(({ fromMs, disposition }) => ({ x: scale.x(fromMs), text: disposition.toUpperCase() })),
  );
  const body = labels.map(({ x, text, row }) => {
    const top = row * labelHeight + 4;
    return line(x, 0, x, top + 12, 'stroke-width="2"') + words(x + 4, top + 9, text, 'font-weight="700"');
  });
  return { title: 'Family told', height: Math.max(1, rowsOf(labels)) * labelHeight + 10, body: body.join('') };
}

const phHeight = 120;

/** Over the limit is hatched; the limit itself does not pass. */
function readings({ record, course, scale }: Scene): Lane {
  const { phLimit } = record.clinical;
  const top = Math.max(9, ...course.readings.map(({ high }) => Math.ceil(high) + 1));
  const y = (ph: number) => phHeight - (ph / top) * phHeight;
  const grid = [0, 2, 4, 6, 8, 10, 12, 14].filter((ph) => ph <= top && ph !== phLimit);
  const axis = grid.map(
    (ph) =>
      line(scale.left, y(ph), scale.right, y(ph), `stroke-opacity="0.15"`) +
      words(scale.left - 6, y(ph) + 4, String(ph), `text-anchor="end" fill="${faint}"`),
  );
  const limit = [
    box(scale.left, 0, scale.right - scale.left, y(phLimit), 'url(#high)', 'stroke-opacity="0"'),
    line(scale.left, y(phLimit), scale.right, y(phLimit), 'stroke-width="1.5" stroke-dasharray="7 4"'),
    words(scale.left - 6, y(phLimit) + 4, `limit ${phLimit}`, 'text-anchor="end" font-weight="700"'),
  ];
  const points = spread(scale, course.readings).map((reading) => point(reading, y));
  return { title: 'pH read', height: phHeight + 8, body: [...axis, ...limit, ...points].join('') };
}

function point(reading: CourseReading & { readonly x: number }, y: (ph: number) => number): string {
  const { x, low, high, verdict, early } = reading;
  const mark = verdict === 'passes' ? disc(x, y(high), 5) : cross(x, y(high));
  const range = low === high ? '' : line(x, y(low), x, y(high), 'stroke-width="2"');
  const note = early ? ', not counted' : verdict === 'passes' ? ', passes' : ', not under the limit';
  return range + mark + words(x + 9, y(high) + 4, phOf(reading) + note, `class="on"`);
}

interface Climb {
  readonly name: string;
  readonly calls: readonly RecordedPage[];
  readonly untilMs: number;
  readonly taken: boolean;
}

/** A row for each person; a bar from her first call until the page was taken, by her or somebody else, or the case was closed. */
function pages({ record, course, scale }: Scene): Lane {
  const rows = [...Map.groupBy(climbsOf(record, course), ({ name }) => name)];
  const body = rows.map(([name, climbs], index) => {
    const y = index * rowHeight * 1.6 + 20;
    return [
      words(scale.left - 6, y + 4, name, 'text-anchor="end"'),
      ...climbs.map((climb) => bar(scale, climb, y)),
    ].join('');
  });
  const none = rows.length === 0 ? words(scale.left + 4, 15, 'nobody was called', `fill="${faint}"`) : '';
  return { title: 'Pages', height: Math.max(1, rows.length) * rowHeight * 1.6, body: body.join('') + none };
}

function climbsOf({ pages: all }: CaseRecord, { endMs }: Course): readonly Climb[] {
  const takes = all.flatMap(({ takenMs }) => takenMs ?? []).sort((a, b) => a - b);
  const untilOf = (page: RecordedPage) => takes.find((ms) => ms >= page.atMs) ?? endMs;
  const groups = Map.groupBy(all, (page) => `${page.person.phoneId} ${untilOf(page)}`);
  return [...groups.values()].flatMap((calls) => {
    const [first] = calls;
    if (first === undefined) return [];
    const taken = calls.some(({ takenMs }) => takenMs !== null);
    return [{ name: nameOf(first.person), calls, untilMs: untilOf(first), taken }];
  });
}

function bar(scale: Scale, { calls, untilMs, taken }: Climb, y: number): string {
  const [first] = calls;
  if (first === undefined) return '';
  const from = scale.x(first.atMs);
  const until = scale.x(untilMs);
  const minutes = Math.round((untilMs - first.atMs) / 60_000);
  const level = `${first.level}, called ${calls.length === 1 ? 'once' : `${calls.length} times`}`;
  const end = taken ? `, taken after ${minutes} min` : ', not taken by this person';
  return [
    line(from, y, until, y, `stroke-width="3"${taken ? '' : ' stroke-dasharray="2 4"'}`),
    ...calls.map(({ atMs }) => triangle(scale.x(atMs), y)),
    taken ? disc(until, y, 5) : line(until, y - 6, until, y + 6, 'stroke-width="2"'),
    words(from - 4, y - 9, level + end, 'class="on"'),
  ].join('');
}

/** Hatched: in, not to be used. White with a thick edge: may be used. Dotted: no tube in. */
function tubes({ course, scale }: Scene): Lane {
  const parts = course.tubes.flatMap((tube, index) => [gapBefore(course, index), ...spansOf(tube)]);
  const drawn = parts.flatMap((part) => (part === null ? [] : [{ ...part, x: scale.x(part.fromMs) }]));
  const labels = inRows(drawn);
  const top = rowsOf(labels) * labelHeight + 2;
  const body = labels.map(({ x, text, row, look, untilMs }) => {
    const width = Math.max(4, (untilMs === null ? scale.right : scale.x(untilMs)) - x);
    const leader = line(x + 0.5, row * labelHeight + 2, x + 0.5, top + 18, 'stroke-width="1"');
    return [shape(look, x, top, width), leader, words(x + 4, row * labelHeight + 11, text, 'class="on"')].join('');
  });
  const none = drawn.length === 0 ? words(scale.left + 4, 14, 'no tube went in', `fill="${faint}"`) : '';
  return { title: 'Tube', height: top + 26, body: body.join('') + none };
}

type Look = 'out' | 'not' | 'use';

function shape(look: Look, x: number, top: number, width: number): string {
  if (look === 'out') return line(x, top + 9, x + width, top + 9, 'stroke-width="2" stroke-dasharray="1 5"');
  return box(x, top, width, 18, look === 'not' ? 'url(#not)' : paper, `stroke-width="${look === 'use' ? 3 : 1}"`);
}

function gapBefore({ tubes: all, cameOutMs }: Course, index: number) {
  const fromMs = index === 0 ? cameOutMs : all[index - 1]?.untilMs;
  const untilMs = all[index]?.fromMs;
  if (fromMs == null || untilMs === undefined || fromMs >= untilMs) return null;
  return { fromMs, untilMs, text: 'no tube in', look: 'out' as const };
}

function spansOf({ tube, use }: TubeSpan) {
  const name = tube === 'own' ? 'own tube' : 'temporary tube';
  return use.map(({ allowed, fromMs, untilMs }) => ({
    fromMs,
    untilMs,
    text: allowed ? `${name}: may be used` : `${name} in: NOT to be used`,
    look: allowed ? ('use' as const) : ('not' as const),
  }));
}
