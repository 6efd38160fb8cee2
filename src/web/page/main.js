// @ts-check
/** The practice page: two phones, the clock, and what the line knows, kept as the line has it. */

import { showCharts } from './charts.js';
import { createClock } from './clock.js';
import { byId, fill, flag } from './dom.js';
import { showKnown } from './known.js';
import * as line from './line.js';
import { createPages } from './pages.js';
import { createPhone } from './phone.js';
import { timeFrom } from './time.js';

const otherNumber = 'other';
const caregiverPick = byId('caregiver-pick', HTMLSelectElement);
const nursePick = byId('nurse-pick', HTMLSelectElement);
const other = byId('other', HTMLFormElement);

const caregiver = createPhone(byId('caregiver', HTMLElement), 'Caregiver', refresh);
const nurse = createPhone(byId('nurse', HTMLElement), 'Nurse', refresh);
const clock = createClock(refresh);
const pages = createPages((number) => {
  nursePick.value = number;
  chooseNurse();
  byId('nurse-text', HTMLTextAreaElement).focus();
});

const link = { answers: true, listening: true };

/** @type {Promise<void> | null} */
let refreshing = null;
/** @type {Promise<void> | null} */
let followUp = null;

/**
 * Fetches and shows everything again. Asked for while one runs, it runs once more after that one.
 * @returns {Promise<void>}
 */
function refresh() {
  if (refreshing) {
    followUp ??= refreshing.then(() => {
      followUp = null;
      return refresh();
    });
    return followUp;
  }
  refreshing = load().finally(() => {
    refreshing = null;
  });
  return refreshing;
}

async function load() {
  try {
    const state = await line.state();
    showPeople(state);
    showPause(state);
    const [from, to] = [caregiver.number, nurse.number];
    const [texts, report, nurseTexts] = await Promise.all([
      from ? line.texts(from) : [],
      from ? line.newestCase(from) : null,
      to ? line.texts(to) : [],
    ]);
    const stillChosen = caregiver.number === from && nurse.number === to;
    if (!stillChosen) return; // the choice asked for a refresh of its own
    caregiver.show(texts, state.zone);
    nurse.show(nurseTexts, state.zone);
    pages.show(from, report, state.nurses, to, state.zone);
    showKnown(report, state);
    clock.show(state, report);
    showCharts(report?.states ?? {});
    connection({ answers: true });
  } catch (failure) {
    if (!(failure instanceof line.LineError)) throw failure;
    connection({ answers: false });
  }
}

/** @param {line.State} state */
function showPeople({ families, nurses, protocol }) {
  fill(caregiverPick, [
    ...families.map(({ child, number }) => ({ value: number, text: `${child ?? 'No name on file'}, ${number}` })),
    { value: otherNumber, text: 'A number not on file' },
  ]);
  fill(
    nursePick,
    nurses.map(({ name, number }) => ({ value: number, text: `${name}, ${number}` })),
  );
  if (caregiverPick.value !== otherNumber) caregiver.number = caregiverPick.value;
  nurse.number = nursePick.value || null;
  other.hidden = caregiverPick.value !== otherNumber;
  byId('protocol', HTMLElement).textContent =
    protocol === 'unsigned' ? 'Protocol unsigned: no clinician has signed its numbers' : `Protocol ${protocol}`;
}

/** @param {line.State} state */
function showPause({ paused, now, zone }) {
  const shown = byId('paused', HTMLElement);
  shown.hidden = paused === null;
  const words = paused
    ? `The line is paused by ${paused.by} since ${timeFrom(paused.at, now, zone)}: it gives no advice`
    : '';
  if (shown.textContent !== words) shown.textContent = words;
}

function chooseNurse() {
  nurse.number = nursePick.value;
  void refresh();
}

/** @param {Partial<typeof link>} change */
function connection(change) {
  Object.assign(link, change);
  const words = !link.answers
    ? 'The line does not answer; what is shown may be old'
    : link.listening
      ? 'Updates by itself'
      : 'Does not update by itself just now; what you do here still refreshes it';
  const status = byId('connection', HTMLElement);
  if (status.textContent !== words) status.textContent = words;
  status.classList.toggle('lost', !link.answers || !link.listening);
}

nursePick.addEventListener('change', chooseNurse);
caregiverPick.addEventListener('change', () => {
  other.hidden = caregiverPick.value !== otherNumber;
  caregiver.number = other.hidden ? caregiverPick.value : null;
  if (!other.hidden) byId('other-number', HTMLInputElement).value = '';
  void refresh();
});
other.addEventListener('submit', (event) => {
  event.preventDefault();
  const input = byId('other-number', HTMLInputElement);
  const number = input.value.replace(/[\s().-]/g, '');
  const good = /^\+[0-9]{7,15}$/.test(number);
  byId('other-error', HTMLElement).textContent = good ? '' : 'A number is + and 7 to 15 digits.';
  flag(input, 'aria-invalid', !good);
  if (!good) return;
  input.value = number;
  caregiver.number = number;
  void refresh();
});

line.listen(refresh, (listening) => connection({ listening }));
void refresh();
