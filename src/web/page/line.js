// @ts-check
/** The page's side of the practice line's HTTP interface. */

/** @import { Disposition, PageLevel, QuestionKey } from '#machines/facts.ts' */
/** @import { DueWhat, MachineName } from '#machines/effects.ts' */
/** @import { PublicFacts } from '#machines/case.ts' */

/** @typedef {{ direction: 'in' | 'out', body: string, at: string, kind: 'text' | 'call' }} Text */
/** @typedef {{ to: string, level: PageLevel, at: string, takenAt: string | null }} NursePage */
/** @typedef {{ what: DueWhat, at: string }} Due */
/**
 * @typedef {{
 *   id: string, asking: QuestionKey | null, disposition: Disposition | null, facts: PublicFacts,
 *   pages: NursePage[], due: Due[], states: Partial<Record<MachineName, string[]>>,
 * }} CaseReport
 */
/** @typedef {{ name: string, number: string }} Nurse */
/** @typedef {{ number: string, child: string | null }} Family */
/** @typedef {{ at: string, by: string, why: string | null }} Pause who stopped the advice */
/** @typedef {{ now: string, zone: string, families: Family[], nurses: Nurse[], protocol: string, paused: Pause | null }} State */
/** @typedef {{ id: string, parent: string | null, label: string, asking: string | null }} MapNode */
/** @typedef {{ from: string, to: string, label: string }} MapEdge */
/** @typedef {{ name: MachineName, nodes: MapNode[], edges: MapEdge[] }} Machine */
/** @typedef {{ to: string, body: string, at: string, kind: 'text' | 'call' }} Sent */

/** What the line refused, or that it did not answer at all; the message is for the person at the page. */
export class LineError extends Error {
  /**
   * @param {string} code
   * @param {string} message
   */
  constructor(code, message) {
    super(message);
    this.code = code;
  }
}

/**
 * @param {'GET' | 'POST'} method
 * @param {string} path
 * @param {unknown} [body]
 * @returns {Promise<any>}
 */
async function ask(method, path, body) {
  const request = body === undefined ? { method } : { method, headers: json, body: JSON.stringify(body) };
  const answer = await fetch(path, request).catch(() => {
    throw new LineError('no-answer', 'The line did not answer.');
  });
  const data = await answer.json().catch(() => null);
  if (answer.ok) return data;
  const { code = String(answer.status), message = `The line answered ${answer.status}.` } = data?.error ?? {};
  throw new LineError(code, message);
}

const json = { 'content-type': 'application/json' };

/** @param {string} number */
const phone = (number) => `/practice/phones/${encodeURIComponent(number)}`;

/** @returns {Promise<State>} */
export const state = () => ask('GET', '/practice/state');

/** @returns {Promise<Machine[]>} every machine of a case, the same for all cases */
export const machines = async () => (await ask('GET', '/practice/map')).machines;

/**
 * @param {string} number
 * @returns {Promise<Text[]>}
 */
export const texts = async (number) => (await ask('GET', `${phone(number)}/texts`)).texts;

/**
 * @param {string} number
 * @returns {Promise<CaseReport | null>}
 */
export const newestCase = async (number) => (await ask('GET', `${phone(number)}/case`)).case;

/**
 * @param {string} number
 * @param {string} body
 * @param {string} id the same for a repeat of the same text, so that it counts once
 * @returns {Promise<{ sent: Sent[] }>}
 */
export const send = (number, body, id) => ask('POST', `${phone(number)}/texts`, { body, id });

/**
 * @param {string} number
 * @returns {Promise<{ sent: Sent[], spoken: string, rings: string[] }>} what the caller hears, and who is rung, in this order
 */
export const ring = (number) => ask('POST', `${phone(number)}/calls`, {});

/**
 * @param {string} number
 * @param {string} digit pressed in the newest call to this phone
 * @returns {Promise<{ sent: Sent[], rings: string[] }>} who is rung then
 */
export const press = (number, digit) => ask('POST', `${phone(number)}/keys`, { digit });

/**
 * @param {{ advance: string } | { to: string }} step an ISO 8601 duration, or a time with offset
 * @returns {Promise<{ now: string, sent: Sent[] }>}
 */
export const moveClock = (step) => ask('POST', '/practice/clock', step);

/** Practice data back to the seeds, the clock to the present. */
export const reset = () => ask('POST', '/practice/reset', { now: new Date().toISOString() });

/**
 * Calls `changed` each time something changed on the line, `reached` as the connection comes and goes.
 * @param {() => void} changed
 * @param {(live: boolean) => void} reached
 */
export function listen(changed, reached) {
  const source = new EventSource('/practice/events');
  source.addEventListener('message', changed);
  source.addEventListener('open', () => {
    reached(true);
    changed(); // what happened while nobody listened
  });
  source.addEventListener('error', () => reached(false));
}
