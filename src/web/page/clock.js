// @ts-check
/** The practice clock: it stands still until one of these buttons moves it. */

import { tell } from './announce.js';
import { byId, flag } from './dom.js';
import { LineError, moveClock, reset } from './line.js';
import { clockTime, longDay, timeFrom, wait } from './time.js';
import { dues, wordsFor } from './words.js';

/** @import { CaseReport, Due, State } from './line.js' */

/** @param {() => Promise<void>} changed called after the clock moved or the line was reset */
export function createClock(changed) {
  const error = byId('clock-error', HTMLElement);
  const dialog = byId('reset-ask', HTMLDialogElement);
  /** @type {Due | undefined} */
  let next;
  let busy = false;

  /** @param {() => Promise<string>} act gives the words to announce */
  async function run(act) {
    if (busy) return;
    busy = true;
    try {
      const words = await act();
      error.textContent = '';
      await changed();
      tell(words);
    } catch (failure) {
      if (!(failure instanceof LineError)) throw failure;
      error.textContent = `The clock did not move. ${failure.message}`;
    } finally {
      busy = false;
    }
  }

  /** @param {Parameters<typeof moveClock>[0]} step */
  const move = (step) =>
    run(async () => {
      const { sent } = await moveClock(step);
      return `The clock moved. ${sent.length} ${sent.length === 1 ? 'message' : 'messages'} sent.`;
    });

  /**
   * @param {string} id
   * @param {() => unknown} act
   */
  const onPress = (id, act) => byId(id, HTMLButtonElement).addEventListener('click', act);
  onPress('plus-five', () => move({ advance: 'PT5M' }));
  onPress('plus-hour', () => move({ advance: 'PT1H' }));
  onPress('next-timer', () => (next ? move({ to: next.at }) : tell('No timer is waiting.')));
  onPress('reset', () => dialog.showModal());
  dialog.addEventListener('close', () => {
    if (dialog.returnValue === 'reset') void run(() => reset().then(() => 'The practice line was reset.'));
    dialog.returnValue = '';
  });

  return {
    /**
     * @param {State} state
     * @param {CaseReport | null} report whose timers the clock can go to
     */
    show({ now, zone }, report) {
      next = report?.due.toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at))[0];
      const time = byId('now', HTMLTimeElement);
      time.dateTime = now;
      time.textContent = `${longDay(now, zone)}, ${clockTime(now, zone)}`;
      byId('zone', HTMLElement).textContent = zone.replace('_', ' ');
      flag(byId('next-timer', HTMLElement), 'aria-disabled', !next);
      byId('next-due', HTMLElement).textContent = next
        ? `Next: ${wordsFor(dues, next.what) ?? next.what}, ${timeFrom(next.at, now, zone)} (${wait(next.at, now)})`
        : 'No timer is waiting';
    },
  };
}
