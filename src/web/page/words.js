// @ts-check
/** The line's keys in plain words, for the person who watches. A key without words is shown as it is. */

/** @import { Disposition, PageLevel, QuestionKey, TubeKind, WeightBand } from '#machines/facts.ts' */
/** @import { DueWhat, MachineName } from '#machines/effects.ts' */

/** @type {Record<QuestionKey, string>} */
export const questions = {
  unwell: 'Any danger sign now?',
  confirm: 'Are the facts on file still right?',
  who: 'Does somebody text about this child already?',
  'which-child': 'Which child is it?',
  'tube-kind': 'Which kind of tube came out?',
  'first-placed': "When was the child's first tube placed?",
  'own-tube': 'Is the own tube whole and its balloon good?',
  'own-tube-in': 'Did the own tube go back in, and how?',
  kit: 'Is the emergency kit at hand?',
  weight: "What is the child's weight?",
  'tube-in': 'Is the temporary tube in, and how did it go?',
  'came-out': 'When did it come out?',
  'after-in': 'New pain, fresh blood or a tighter belly since?',
  strips: 'Are pH strips at hand?',
  contents: 'Did stomach contents come back?',
  ph: 'What does the strip read?',
  'fed-lately': 'A feed or medicine in the last hour?',
  looks: 'Do the contents look like stomach contents?',
  secured: 'Balloon filled, tube snug and taped?',
  'first-feed': 'How did the first feed go?',
  'next-day': 'How is the child the next day?',
  arrived: 'Has the child arrived?',
  clinic: 'Was the clinic called?',
};

/** @type {Record<Disposition, { title: string, told: string }>} */
export const dispositions = {
  emergency: { title: 'Emergency', told: 'Told to call the emergency number now.' },
  'go-in': { title: 'Go in', told: 'Told to go to the emergency department now, with nothing through the tube.' },
  hold: { title: 'Hold', told: 'In or covered, nothing through it; the nurse says what comes next.' },
  recheck: { title: 'Recheck', told: 'Nothing through it; the line comes back. Not final.' },
  use: { title: 'Use', told: 'The temporary tube is in, checked and secured, and may be used.' },
  'own-tube': { title: 'Own tube', told: "The child's own tube is back, checked and secured, and may be used." },
  nurse: { title: 'Nurse', told: 'A person takes over.' },
};

/** @type {Record<TubeKind, string>} */
export const kinds = {
  g: 'G (stomach)',
  gj: 'GJ (stomach and bowel)',
  j: 'J (bowel)',
  'half-out': 'partly out',
  unknown: 'not known',
  nose: 'through the nose',
};

/** @type {Record<WeightBand, string>} */
export const bands = { 'under-3': 'under 3 kg', 3: '3 kg', 'over-3': 'over 3 kg' };

/** @type {Record<PageLevel, string>} */
export const levels = { emergency: 'Emergency', urgent: 'Urgent', routine: 'Routine' };

/** @type {Record<DueWhat, string>} */
export const dues = {
  recheck: 'Recheck',
  silence: 'Silence, then a nudge or a page',
  page: 'Page again, or the next person',
  aftercare: 'Aftercare',
};

/** @type {Record<MachineName, string>} */
export const machineNames = { conversation: 'Conversation', paging: 'Paging', aftercare: 'Aftercare' };

/**
 * A machine's own name for a state or an event, as words: `firstAgain` is "first again", `answer.ph` "answer pH".
 * @param {string} name
 */
export const spoken = (name) =>
  name
    .replace(/([A-Z])/g, ' $1')
    .replace(/[.-]/g, ' ')
    .toLowerCase()
    .replace(/\bph\b/g, 'pH');

/**
 * The same as a label, with a capital.
 * @param {string} name
 */
export const title = (name) => spoken(name).replace(/^[a-z](?!H)/, (letter) => letter.toUpperCase());

/**
 * @template {string | number} K
 * @template V
 * @param {Record<K, V>} words
 * @param {K} key
 * @returns {V | undefined} undefined for a key younger than this page
 */
export const wordsFor = (words, key) => words[key];
