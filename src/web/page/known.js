// @ts-check
/** What the line knows of the case shown: what was told last, the open question, facts, pages and next timers. */

import { byId, make } from './dom.js';
import { nameOf } from './pages.js';
import { calendarDay, timeFrom, wait } from './time.js';
import { bands, dispositions, dues, kinds, levels, questions, wordsFor } from './words.js';

/** @import { PublicFacts } from '#machines/case.ts' */
/** @import { CaseReport, State } from './line.js' */

const place = byId('case', HTMLElement);
place.tabIndex = 0; // so that the keyboard can scroll it

/**
 * @param {CaseReport | null} report
 * @param {State} state
 */
export function showKnown(report, { now, zone, nurses }) {
  const at = (/** @type {string} */ iso) => timeFrom(iso, now, zone);
  const parts = report
    ? [
        told(report),
        section('Facts', facts(report.facts, at)),
        section('Pages', pages(report, nurses, at)),
        section('Next timers', timers(report, now, at)),
      ]
    : [make('p', { class: 'empty' }, 'No case yet. A first text about a tube opens one.')];
  place.replaceChildren(...parts);
}

/**
 * @param {string} title
 * @param {Node} content
 */
const section = (title, content) => make('div', { class: 'part' }, make('h3', {}, title), content);

/** @param {string} words */
const none = (words) => make('p', { class: 'empty' }, words);

/** @param {CaseReport} report */
function told({ asking, disposition }) {
  const words = disposition && (wordsFor(dispositions, disposition) ?? { title: disposition, told: '' });
  const question = asking && (wordsFor(questions, asking) ?? asking);
  return make(
    'dl',
    { class: 'told' },
    make('dt', {}, 'Told'),
    words
      ? make('dd', { class: `told-${disposition}` }, make('b', {}, words.title), ` ${words.told}`)
      : make('dd', {}, 'Nothing final yet'),
    make('dt', {}, 'Open question'),
    question ? make('dd', {}, question, ' ', make('code', {}, asking)) : make('dd', {}, 'None'),
  );
}

/**
 * @param {PublicFacts} facts
 * @param {(iso: string) => string} at
 */
function facts({ tubeKind, firstPlaced, weightKg, weightBand, ph, cameOutAt, insertedHow }, at) {
  /** @type {[string, string | undefined][]} */
  const rows = [
    ['Tube', tubeKind && (wordsFor(kinds, tubeKind) ?? tubeKind)],
    ['First tube', firstPlaced && range(firstPlaced)],
    ['Weight', weightKg === undefined ? weightBand && wordsFor(bands, weightBand) : `${weightKg} kg`],
    ['Came out', cameOutAt && at(cameOutAt)],
    ['Went in', insertedHow && { easy: 'easily', hard: 'hard to get in' }[insertedHow]],
    ['pH as read', ph === undefined ? undefined : ph.toFixed(1)],
  ];
  return make('dl', {}, ...rows.flatMap(([name, value]) => pair(name, value ?? '')));
}

/**
 * @param {string} name
 * @param {string} value
 */
const pair = (name, value) => [
  make('dt', {}, name),
  value ? make('dd', {}, value) : make('dd', { class: 'empty' }, 'not told'),
];

/** @param {{ readonly earliest: string | null, readonly latest: string }} dates */
function range({ earliest, latest }) {
  if (earliest === null) return `${calendarDay(latest)} or before`;
  if (earliest === latest) return calendarDay(latest);
  return `${calendarDay(earliest)} to ${calendarDay(latest)}`;
}

/**
 * @param {CaseReport} report
 * @param {State['nurses']} nurses
 * @param {(iso: string) => string} at
 */
function pages({ pages }, nurses, at) {
  if (pages.length === 0) return none('Nobody paged.');
  const rows = pages.map(({ to, level, at: paged, takenAt }) =>
    make(
      'li',
      { class: `page-${level}` },
      make('span', { class: 'when' }, at(paged)),
      make('span', {}, `${wordsFor(levels, level) ?? level}: ${nameOf(to, nurses)}`),
      make('span', { class: takenAt ? '' : 'open' }, takenAt ? `taken ${at(takenAt)}` : 'not taken'),
    ),
  );
  return make('ul', { class: 'rows' }, ...rows);
}

/**
 * @param {CaseReport} report
 * @param {string} now
 * @param {(iso: string) => string} at
 */
function timers({ due }, now, at) {
  if (due.length === 0) return none('None waiting.');
  const rows = due.map(({ what, at: dueAt }) =>
    make(
      'li',
      {},
      make('span', { class: 'when' }, at(dueAt)),
      make('span', {}, wordsFor(dues, what) ?? what),
      make('span', {}, wait(dueAt, now)),
    ),
  );
  return make('ul', { class: 'rows' }, ...rows);
}
