// @ts-check
/** What a screen reader hears: news in its turn, a new page at once (WCAG 2.2, 4.1.3 status messages). */
import { byId } from './dom.js';

/**
 * What is said within one breath is said as one, or the last would silence the others.
 * @param {string} id
 * @returns {(text: string) => void}
 */
function speaker(id) {
  const region = byId(id, HTMLElement);
  /** @type {string[]} */
  let waiting = [];
  return (text) => {
    region.textContent = ''; // so that the same words twice are heard twice
    waiting.push(text);
    if (waiting.length > 1) return;
    setTimeout(() => {
      region.textContent = waiting.join(' ');
      waiting = [];
    }, 50);
  };
}

/** Polite: heard when the reader has finished. */
export const tell = speaker('news');

/** Assertive: heard at once. */
export const alarm = speaker('alarm');
