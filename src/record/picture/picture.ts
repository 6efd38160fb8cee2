/** A case drawn on one sheet, as SVG: what was said and told, readings against the limit, pages until taken, tube times. */
import { DateTime } from 'luxon';
import type { Course } from '../course.ts';
import { type CaseRecord, nameOf } from '../read.ts';
import { phOf } from '../timeline.ts';
import { type Lane, lanes, type Scene } from './lanes.ts';
import {
  box,
  cross,
  disc,
  escaped,
  eye,
  faint,
  fontSize,
  ink,
  line,
  paper,
  square,
  triangle,
  widthOf,
  words,
} from './marks.ts';
import { type Scale, scaleOf } from './scale.ts';

const left = 230;
const margin = 24;
const axisTop = 76;
const lanesTop = 108;
const between = 16;

export function picture(record: CaseRecord, course: Course): string {
  const scene: Scene = { record, course, scale: scaleOf(timesOf(record, course), crowdsOf(record, course), left) };
  const { scale } = scene;
  const drawn = lanes(scene);
  const width = scale.right + margin;
  const bottom = lanesTop + drawn.reduce((sum, lane) => sum + lane.height + between, 0);
  const height = bottom + 82;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${Math.ceil(width)} ${Math.ceil(height)}" role="img" aria-labelledby="title desc" font-family="Helvetica, Arial, sans-serif" font-size="${fontSize}" fill="${ink}">`,
    `<title id="title">${escaped(titleOf(record))}</title>`,
    `<desc id="desc">${escaped(description(record, course))}</desc>`,
    look,
    `<rect width="100%" height="100%" fill="${paper}"/>`,
    words(margin, 30, titleOf(record), 'font-size="16" font-weight="700"'),
    words(margin, 48, subtitleOf(record), `fill="${faint}"`),
    axis(record, scale, bottom),
    ...stacked(drawn, width),
    legend(bottom + 22),
    '</svg>\n',
  ].join('\n');
}

const look = `<defs>
<pattern id="high" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0v8" stroke="${ink}" stroke-opacity="0.18" stroke-width="1.5"/></pattern>
<pattern id="not" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="6" height="6" fill="${paper}"/><path d="M0 0v6" stroke="${ink}" stroke-width="2.4"/></pattern>
</defs>
<style>.on{paint-order:stroke;stroke:${paper};stroke-width:3px;stroke-linejoin:round}</style>`;

function titleOf({ code, id, file }: CaseRecord): string {
  return `Case ${code} (number ${id})${file?.child == null ? '' : `, ${file.child}`}`;
}

function subtitleOf({ site, openedMs }: CaseRecord): string {
  const opened = DateTime.fromMillis(openedMs, { zone: site.timeZone }).toFormat('cccc d LLLL yyyy, HH:mm');
  return `Opened ${opened}. Times are local to ${site.timeZone}. Everything about the child is as the family told it.`;
}

/** The picture in words, for who cannot see it. */
function description({ pages, messages, clinical, site }: CaseRecord, course: Course): string {
  const at = (ms: number) => DateTime.fromMillis(ms, { zone: site.timeZone }).toFormat('d LLL HH:mm');
  const untaken = pages.filter(({ takenMs }) => takenMs === null).length;
  return [
    `${messages.length} texts and calls.`,
    ...course.readings.map((one) => `${at(one.atMs)}: pH ${phOf(one)} against a limit of ${clinical.phLimit}.`),
    ...course.tubes.map(({ tube, fromMs }) => `${at(fromMs)}: ${tube} tube in.`),
    ...course.told.map(({ fromMs, disposition }) => `${at(fromMs)}: family told ${disposition}.`),
    ...pages.flatMap(({ takenMs, person }) =>
      takenMs === null ? [] : [`${at(takenMs)}: ${nameOf(person)} took the page.`],
    ),
    `${untaken} calls to a person who did not take it.`,
  ].join(' ');
}

/** Every time that something is drawn at. */
function timesOf(record: CaseRecord, course: Course): readonly number[] {
  return [
    record.openedMs,
    course.endMs,
    ...(course.cameOutMs === null ? [] : [course.cameOutMs]),
    ...record.messages.filter(({ nurse }) => nurse === null).map(({ atMs }) => atMs),
    ...record.pages.flatMap(({ atMs, takenMs }) => (takenMs === null ? [atMs] : [atMs, takenMs])),
    ...[...course.readings].map(({ atMs }) => atMs),
    ...course.told.map(({ fromMs }) => fromMs),
    ...course.tubes.flatMap(({ use }) => use.map(({ fromMs }) => fromMs)),
  ];
}

/** Rows in which marks of one moment stand side by side. */
function crowdsOf({ messages }: CaseRecord, { readings }: Course): readonly (readonly number[])[] {
  const family = messages.filter(({ nurse }) => nurse === null);
  return [
    family.filter(({ direction }) => direction === 'in').map(({ atMs }) => atMs),
    family.filter(({ direction }) => direction === 'out').map(({ atMs }) => atMs),
    readings.map(({ atMs }) => atMs),
  ];
}

/** Hours along the top, the day where it changes, a break where quiet time is cut short. */
function axis({ site }: CaseRecord, { left: from, right, moments, cuts }: Scale, bottom: number): string {
  let free = Number.NEGATIVE_INFINITY;
  let day = '';
  const ticks = moments.map(({ ms, x }) => {
    const at = DateTime.fromMillis(ms, { zone: site.timeZone });
    const today = at.toFormat('d LLL');
    const label = today === day ? at.toFormat('HH:mm') : at.toFormat('d LLL HH:mm');
    const fits = x >= free;
    if (fits) {
      free = x + widthOf(label) + 8;
      day = today;
    }
    return (
      line(x, axisTop, x, axisTop + (fits ? 8 : 4)) +
      line(x, axisTop, x, bottom, 'stroke-opacity="0.1"') +
      (fits ? words(x - 2, axisTop - 6, label) : '')
    );
  });
  const breaks = cuts.map(({ x, minutes }) => {
    const length = minutes < 90 ? `${Math.round(minutes)} min` : `${Math.round(minutes / 60)} h`;
    return `<path d="M${x - 5} ${axisTop + 6}l4 -12m2 12l4 -12" stroke="${ink}"/>${words(x, axisTop + 20, `${length} quiet`, `text-anchor="middle" fill="${faint}" font-size="10"`)}`;
  });
  return [line(from, axisTop, right, axisTop), ...ticks, ...breaks].join('\n');
}

function stacked(drawn: readonly Lane[], width: number): string[] {
  let top = lanesTop;
  return drawn.map((lane) => {
    const group = [
      `<g transform="translate(0 ${top})">`,
      line(margin, -between / 2, width - margin, -between / 2, 'stroke-opacity="0.25"'),
      words(margin, 14, lane.title, 'font-weight="700" font-size="12"'),
      lane.body,
      '</g>',
    ].join('\n');
    top += lane.height + between;
    return group;
  });
}

const legendRow = 20;

/** Two rows, so that the narrowest sheet holds them. */
function legend(top: number): string {
  const rows: readonly (readonly [string, (x: number, y: number) => string])[][] = [
    [
      ['family’s text; reading that passes; page taken', disc],
      ['family’s text with a picture or voice note', (x, y) => disc(x, y) + eye(x, y)],
      ['line’s text', square],
      ['call', triangle],
    ],
    [
      ['reading not under the limit; text not delivered', cross],
      ['tube in, not to be used', (x, y) => box(x - 6, y - 6, 12, 12, 'url(#not)')],
      ['tube may be used', (x, y) => box(x - 6, y - 6, 12, 12, paper, 'stroke-width="3"')],
    ],
  ];
  const drawn = rows.flatMap((row, index) => {
    const y = top + index * legendRow;
    let x = margin + 6;
    return row.map(([text, mark]) => {
      const part = mark(x, y - 4) + words(x + 12, y, text);
      x += widthOf(text) + 34;
      return part;
    });
  });
  const cut = words(
    margin,
    top + rows.length * legendRow + 2,
    'Quiet time is cut short where the axis is broken.',
    `fill="${faint}"`,
  );
  return drawn.join('') + cut;
}
