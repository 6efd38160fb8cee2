// @ts-check
/** The pages of the case beside the nurse's phone: who is called and has not taken it, and the announcement of a new one. */

import { alarm } from './announce.js';
import { byId, make } from './dom.js';
import { clockTime } from './time.js';
import { levels, wordsFor } from './words.js';

/** @import { CaseReport, Nurse, NursePage } from './line.js' */

/**
 * @param {(number: string) => void} pick shows that nurse's phone
 */
export function createPages(pick) {
  const strip = byId('waiting', HTMLElement);
  /** @type {{ caregiver: string | null, count: number, strip: string }} */
  let shown = { caregiver: null, count: 0, strip: '' };

  return {
    /**
     * @param {string | null} caregiver whose case it is
     * @param {CaseReport | null} report
     * @param {Nurse[]} nurses
     * @param {string | null} open the nurse whose phone is shown
     * @param {string} zone
     */
    show(caregiver, report, nurses, open, zone) {
      const pages = report?.pages ?? [];
      const fresh = shown.caregiver === caregiver ? pages.slice(shown.count) : [];
      if (fresh.length > 0) alarm(fresh.map((page) => words(page, nurses, zone)).join(' '));
      const waiting = newestPerNurse(pages.filter(({ takenAt }) => takenAt === null));
      const lines = waiting.map((page) => words(page, nurses, zone));
      const key = [open, ...lines].join('\n');
      if (key !== shown.strip) strip.replaceChildren(...waiting.map((page, at) => row(page, lines[at] ?? '', open)));
      strip.hidden = waiting.length === 0;
      shown = { caregiver, count: pages.length, strip: key };
    },
  };

  /**
   * @param {NursePage} page
   * @param {string} line
   * @param {string | null} open
   */
  function row(page, line, open) {
    const item = make('p', { class: `page-${page.level}` }, make('span', {}, line));
    if (page.to === open) return item;
    const button = make('button', { type: 'button', class: 'quiet' }, 'Show this phone');
    button.addEventListener('click', () => pick(page.to));
    item.append(button);
    return item;
  }
}

/** @param {NursePage[]} pages */
const newestPerNurse = (pages) => [...new Map(pages.map((page) => [page.to, page])).values()];

/**
 * @param {NursePage} page
 * @param {Nurse[]} nurses
 * @param {string} zone
 */
const words = (page, nurses, zone) =>
  `${wordsFor(levels, page.level) ?? page.level} page to ${nameOf(page.to, nurses)} at ${clockTime(page.at, zone)}, not taken.`;

/**
 * @param {string} number
 * @param {Nurse[]} nurses
 */
export const nameOf = (number, nurses) => nurses.find((nurse) => nurse.number === number)?.name ?? number;
