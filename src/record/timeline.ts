/** A case as a timeline in plain text, to paste into a chart: local times, who said what, and what was decided. */
import { DateTime } from 'luxon';
import { namesOf } from '#src/families/children.ts';
import { digest } from '#src/line/record.ts';
import { dispositionNames, reasonNames } from '#src/wording/en/nurseNames.ts';
import type { Course, CourseReading, NurseAct } from './course.ts';
import { mediaWords } from './media.ts';
import { type CaseRecord, nameOf, type RecordedMessage, type RecordedPage } from './read.ts';

interface Entry {
  readonly atMs: number;
  /** Its place among what happened in the same moment: the id of a message, or just before the first one its event sent. */
  readonly order: number;
  readonly who: string;
  readonly text: string;
}

const lineWidth = 100;
const whoWidth = 16;
const timeWidth = 7;

/** `fault` is what `verify` found, null where the record is whole. Quotes the family: keep it as their chart is kept. */
export function timeline(record: CaseRecord, course: Course, fault: string | null): string {
  const entries = [...textEntries(record), ...pageEntries(record), ...courseEntries(record, course)];
  const { timeZone } = record.site;
  let day = '';
  const lines = entries
    .sort((a, b) => a.atMs - b.atMs || a.order - b.order)
    .flatMap((entry) => {
      const at = DateTime.fromMillis(entry.atMs, { zone: timeZone });
      const heading = at.toFormat('cccc d LLLL yyyy');
      const opening = heading === day ? [] : ['', `${heading} (${at.offsetNameShort})`];
      day = heading;
      return [...opening, ...entryLines(at.toFormat('HH:mm'), entry)];
    });
  return [...head(record, fault), ...lines, '', ...foot(record, fault)].join('\n');
}

function head(record: CaseRecord, fault: string | null): string[] {
  const { site, file, closedMs, parkedMs, rehearsal } = record;
  const at = (ms: number) => DateTime.fromMillis(ms, { zone: site.timeZone }).toFormat('d LLL yyyy HH:mm');
  const ended = closedMs === null ? 'still open' : `closed ${at(closedMs)}`;
  const born = file?.born == null ? '' : `, born ${file.born}`;
  return [
    ...(fault === null ? [] : [`THIS RECORD IS NOT AS THE LINE WROTE IT: ${fault}`, '']),
    ...(rehearsal ? ['PRACTICE: nothing here happened. It does not belong in a chart.', ''] : []),
    `Text-message line, case ${record.code} (number ${record.id})`,
    `Child: ${file?.child ?? (namesOf(file).join(' or ') || 'name not filed')}${born}. Family's phone: ${record.number}`,
    `Opened ${at(record.openedMs)}, ${ended}. Times are local to ${site.timeZone}.`,
    ...(parkedMs === null ? [] : [`The line failed in this case at ${at(parkedMs)}: from then on a person had it.`]),
    'What the family told was not seen by a clinician. The line asks and computes; the nurse decides.',
  ];
}

/** The last hash, kept in the chart, proves later that no event was changed or taken out since. */
function foot({ events, lastHash, protocolId }: CaseRecord, fault: string | null): string[] {
  const whole = fault === null ? 'checked and whole' : 'NOT WHOLE';
  return [
    `${events.length} events, ${whole}. Last hash ${lastHash?.toString('hex') ?? 'none'}`,
    `Site's protocol, by its content: ${protocolId}`,
  ];
}

/** A call that goes on after the first one repeats what that said: its page line is enough. */
function textEntries({ messages, pages, events }: CaseRecord): Entry[] {
  const saidBy = (page: RecordedPage) => events.find(({ number }) => number === page.event)?.body.said;
  const repeats = ({ direction, nurse, atMs, body }: RecordedMessage) =>
    direction === 'out' &&
    nurse !== null &&
    pages.some(
      (page) =>
        page.atMs === atMs &&
        page.person.phoneId === nurse.phoneId &&
        (saidBy(page)?.includes(digest(body)) ?? page.event === null),
    ) &&
    pages.some((page) => page.atMs < atMs && page.person.phoneId === nurse.phoneId);
  return messages
    .filter((message) => !repeats(message))
    .map(({ id, atMs, body, ...message }) => ({
      atMs,
      order: id,
      who: from(message),
      text: fateOf(message) + contentOf({ body, ...message }),
    }));
}

type Way = Pick<RecordedMessage, 'direction' | 'kind'>;

const isRing = ({ direction, kind }: Way) => direction === 'in' && kind === 'call';

function from({ direction, kind, nurse }: Pick<RecordedMessage, 'direction' | 'kind' | 'nurse'>): string {
  const other = nurse === null ? 'family' : 'nurse';
  const way = kind === 'call' ? ' (call)' : '';
  if (isRing({ direction, kind })) return `${other} rang`;
  return direction === 'in' ? `${other} wrote` : `to ${other}${way}`;
}

function contentOf({ body, media, ...way }: Way & Pick<RecordedMessage, 'body' | 'media'>): string {
  if (isRing(way)) return 'a telephone call to the line';
  const words = body === '' && media.length > 0 ? [] : [`"${body}"`];
  return [...words, ...media.map((one) => `[${mediaWords(one)}]`)].join(' ');
}

/** Only what did not go well: the rest was sent. */
function fateOf({ direction, state, nurse }: Pick<RecordedMessage, 'direction' | 'state' | 'nurse'>): string {
  const name = nurse === null ? '' : `${nameOf(nurse)}: `;
  const fates: Partial<Record<RecordedMessage['state'], string>> = {
    refused: '[NOT DELIVERED] ',
    unknown: '[delivery unknown] ',
    waiting: '[not sent yet] ',
  };
  return name + (direction === 'in' ? '' : (fates[state] ?? ''));
}

function pageEntries(record: CaseRecord): Entry[] {
  const { pages } = record;
  const called = pages.map((page, index): Entry => {
    const again = pages.slice(0, index).some(({ person }) => person.phoneId === page.person.phoneId) ? ', again' : '';
    const text = `${page.level}${again}, to ${nameOf(page.person)}: ${whyPaged(page)}`;
    return { atMs: page.atMs, order: orderOf(record, page.event) + 0.25, who: 'page', text }; // after what it is about
  });
  const takes = [...Map.groupBy(pages, ({ takenMs }) => takenMs)];
  const taken = takes.flatMap(([atMs, [first]]): Entry[] => {
    if (atMs === null || first === undefined) return [];
    const minutes = Math.round((atMs - first.atMs) / 60_000);
    const text = `${nameOf(first.person)} took it, ${minutes} min after the first call to this person`;
    return [{ atMs, order: orderOf(record, takeAt(record, atMs)), who: 'page taken', text }];
  });
  return [...called, ...taken];
}

function takeAt({ events }: CaseRecord, takenMs: number): number | null {
  return events.find(({ atMs, body }) => atMs === takenMs && body.event?.type === 'take')?.number ?? null;
}

/** After the text that an event heard, before what it had said. */
function orderOf({ events, messages }: CaseRecord, number: number | null): number {
  const event = events.find((one) => one.number === number);
  const [first] = event?.body.said ?? [];
  const earlier = events.filter((one) => one.number < (number ?? 0) && one.atMs === event?.atMs);
  const sent = earlier.flatMap(({ body }) => body.said).filter((said) => said === first).length;
  const same = messages.filter(
    ({ direction, atMs, body }) => direction === 'out' && atMs === event?.atMs && digest(body) === first,
  );
  return (same[sent]?.id ?? Number.POSITIVE_INFINITY) - 0.5;
}

function whyPaged({ reasons }: RecordedPage): string {
  return reasons.length === 0 ? 'fault of the line' : reasons.map((reason) => reasonNames[reason]).join(', ');
}

function courseEntries(record: CaseRecord, course: Course): Entry[] {
  const { cameOutMs } = course;
  const entry = (atMs: number, event: number, who: string, text: string): Entry => ({
    ...{ atMs, who, text },
    order: orderOf(record, event),
  });
  const ends = (atMs: number, who: string, text: string, order: number): Entry => ({ atMs, who, text, order });
  return [
    ...(cameOutMs === null ? [] : [ends(cameOutMs, 'tube', 'came out, or was last seen in (as told)', 0)]),
    ...course.weights.map(({ atMs, event, kg }) => entry(atMs, event, 'weight', `${kg} kg, as told`)),
    ...course.readings.map((reading) =>
      entry(reading.atMs, reading.event, 'reading', readingWords(reading, record.clinical.phLimit)),
    ),
    ...course.tubes.flatMap(({ tube, how, fromMs, untilMs, event }) => [
      entry(fromMs, event, 'tube', `${tubeNames[tube]} in${how === null ? '' : `, ${howNames[how]}`} (as told)`),
      ...(untilMs === null ? [] : [ends(untilMs, 'tube', `${tubeNames[tube]} out (as told)`, 0)]),
    ]),
    ...course.told.map(({ fromMs, event, disposition }) =>
      entry(fromMs, event, 'STANDS AT', `${disposition.toUpperCase()}: ${dispositionNames[disposition]}`),
    ),
    ...course.nurse.map((act) => entry(act.atMs, act.event, 'NURSE', actWords(act))),
    ...(record.closedMs === null
      ? []
      : [ends(record.closedMs, 'closed', 'the case was closed', Number.POSITIVE_INFINITY)]),
  ];
}

export const tubeNames = { own: "child's own tube", temporary: 'temporary tube' } as const;
const howNames = { easy: 'went in easily', hard: 'had to be pushed' } as const;

const verdictNames: Readonly<Record<CourseReading['verdict'], string>> = {
  passes: 'passes',
  'after-feed-only': 'NOT UNDER THE LIMIT',
  high: 'NOT UNDER THE LIMIT',
  'no-reading': 'no reading',
};

/** Such as "pH 5, under the limit of 6: passes". */
export function readingWords(reading: CourseReading, limit: number): string {
  const noted = reading.early ? ' (sent while waiting: noted, not counted)' : '';
  const again = reading.corrects ? ' (said to correct an earlier one)' : '';
  return `pH ${phOf(reading)}, limit under ${limit}: ${verdictNames[reading.verdict]}${noted}${again}`;
}

export function phOf({ low, high }: { readonly low: number; readonly high: number }): string {
  return low === high ? String(high) : `${low} to ${high}`;
}

/** What a nurse decided, in plain words. */
export function actWords({ what, words }: NurseAct): string {
  const names: Readonly<Record<NurseAct['what'], string>> = {
    clear: 'cleared the tube that was hard to get in',
    pass: 'passed the page on to the next person',
    goIn: 'sent the child in to the emergency department',
    corrects: 'corrected a fact',
    close: 'closed the case',
    reports: 'REPORTED THAT THE LINE WAS WRONG',
  };
  return words === null ? names[what] : `${names[what]}: "${words}"`;
}

function entryLines(time: string, { who, text }: Entry): string[] {
  const indent = ' '.repeat(timeWidth + whoWidth);
  const wrapped = text.split('\n').flatMap((line) => wrap(line, lineWidth - indent.length));
  return wrapped.map((line, index) =>
    index === 0 ? `${time.padEnd(timeWidth)}${who.padEnd(whoWidth)}${line}` : `${indent}${line}`,
  );
}

function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
