// @ts-check
/** One practice phone: its texts as lines of a ledger with the time in the margin, and a box to write the next one. */

import { tell } from './announce.js';
import { flag, make, within } from './dom.js';
import { LineError, press, ring, send } from './line.js';
import { clockTime, longDay } from './time.js';

/** @import { Text } from './line.js' */

/**
 * @typedef {object} Phone
 * @property {string | null} number whose phone it is now; null while none is chosen
 * @property {(texts: Text[], zone: string) => void} show
 */

/**
 * @param {HTMLElement} root the panel
 * @param {string} owner as the ledger calls who writes on this phone
 * @param {() => Promise<void>} changed called after a text went out
 * @returns {Phone}
 */
export function createPhone(root, owner, changed) {
  const thread = within(root, '.thread', HTMLElement);
  const list = within(root, '.thread ol', HTMLElement);
  const compose = within(root, 'form.compose', HTMLFormElement);
  thread.tabIndex = 0; // so that the keyboard can scroll it
  /** @type {{ number: string | null, texts: Text[] }} */
  let shown = { number: null, texts: [] };

  /** @type {Phone} */
  const phone = {
    number: null,
    show(texts, zone) {
      const goesOn = shown.number === phone.number && begins(shown.texts, texts);
      const known = goesOn ? shown.texts : [];
      const fresh = texts.slice(known.length);
      if (!goesOn || known.length === 0) list.replaceChildren();
      if (fresh.length > 0) list.append(...lines(known.at(-1), fresh, owner, zone));
      if (texts.length === 0) list.replaceChildren(make('li', { class: 'empty' }, 'No texts yet.'));
      if (!goesOn || fresh.length > 0) thread.scrollTop = thread.scrollHeight;
      if (goesOn) announce(fresh, owner);
      shown = { number: phone.number, texts };
    },
  };
  composeInto(compose, () => phone.number, changed);
  byCall(
    root,
    '.ring',
    () => phone.number,
    changed,
    async (number) => {
      const { spoken, rings } = await ring(number);
      return `You hear: ${spoken} ${whoRings(rings)}`;
    },
  );
  if (root.querySelector('.press') !== null)
    byCall(
      root,
      '.press',
      () => phone.number,
      changed,
      async (number) => `Pressed 1. ${whoRings((await press(number, '1')).rings)}`,
    );
  return phone;
}

/**
 * Whether `texts` only adds to `before`.
 * @param {Text[]} before
 * @param {Text[]} texts
 */
function begins(before, texts) {
  return before.every(({ at, body }, index) => texts[index]?.at === at && texts[index]?.body === body);
}

/**
 * @param {Text | undefined} last the line above, if any
 * @param {Text[]} fresh
 * @param {string} owner
 * @param {string} zone
 */
function lines(last, fresh, owner, zone) {
  let day = last ? longDay(last.at, zone) : '';
  return fresh.flatMap((text) => {
    const before = day;
    day = longDay(text.at, zone);
    const line = ledgerLine(text, owner, zone);
    return day === before ? [line] : [make('li', { class: 'day' }, day), line];
  });
}

/**
 * @param {Text} text
 * @param {string} owner
 * @param {string} zone
 */
function ledgerLine({ direction, body, at, kind }, owner, zone) {
  const who = direction === 'in' ? owner : kind === 'call' ? 'Line, by call' : 'Line';
  const spoken = body === '' ? make('i', {}, kind === 'call' ? 'rings the line' : 'no words') : body;
  return make(
    'li',
    { class: `text ${direction} ${kind}` },
    make('time', { datetime: at }, clockTime(at, zone)),
    make('div', {}, make('b', {}, who), make('p', {}, spoken), ...picturesIn(body)),
  );
}

/**
 * The picture a link in the text opens, while it does; a voice note, or one whose hour is over, stays a link.
 * @param {string} body
 */
function picturesIn(body) {
  return [...body.matchAll(/\/media\/[\w.-]+/g)].map(([path]) => {
    const link = make('a', { href: path, target: '_blank', rel: 'noreferrer' }, 'Open what the family sent');
    const picture = new Image();
    picture.alt = 'Picture from the family';
    picture.addEventListener('load', () => {
      link.replaceChildren(picture);
      keepEnd(link);
    });
    picture.src = path;
    return link;
  });
}

/**
 * What grew in the last line is still seen at the end of its thread.
 * @param {HTMLElement} grown
 */
function keepEnd(grown) {
  const thread = grown.closest('.thread');
  if (thread && grown.closest('li')?.nextElementSibling === null) thread.scrollTop = thread.scrollHeight;
}

/**
 * @param {Text[]} fresh
 * @param {string} owner
 */
function announce(fresh, owner) {
  const heard = fresh.filter(({ direction }) => direction === 'out');
  if (heard.length === 0) return;
  const bodies = heard.map(({ body, kind }) => (kind === 'call' ? `Call: ${body}` : body));
  tell(`${owner}'s phone: ${bodies.join(' ')}`);
}

/**
 * Wires the box: Enter sends, one text after the other. One that did not go out comes back into the box with the reason
 * beneath it, and keeps its id, so that sending it again cannot count twice.
 * @param {HTMLFormElement} form
 * @param {() => string | null} number
 * @param {() => Promise<void>} changed
 */
function composeInto(form, number, changed) {
  const box = within(form, 'textarea', HTMLTextAreaElement);
  const error = within(form, '.error', HTMLElement);
  /** @type {{ to: string, body: string, id: string } | null} */
  let failed = null;
  let earlier = Promise.resolve();

  function submit() {
    const body = box.value.trim();
    if (body === '') return complain('Write a text first.');
    const to = number();
    box.value = '';
    earlier = earlier.then(() => deliver(to, body));
  }

  /**
   * @param {string | null} chosen
   * @param {string} body
   */
  async function deliver(chosen, body) {
    if (chosen === null) await changed(); // who texts while the page opens is faster than the list of numbers
    const to = chosen ?? number();
    if (to === null) return giveBack(body, 'Choose a number first.');
    const id = failed?.to === to && failed.body === body ? failed.id : crypto.randomUUID();
    try {
      await send(to, body, id);
      failed = null;
      complain('');
      await changed();
    } catch (failure) {
      if (!(failure instanceof LineError)) throw failure;
      failed = { to, body, id };
      giveBack(body, `Not sent. ${failure.message}`);
    }
  }

  /**
   * @param {string} body
   * @param {string} why
   */
  function giveBack(body, why) {
    box.value = box.value === '' ? body : `${body}\n${box.value}`;
    complain(why);
  }

  /** @param {string} words */
  function complain(words) {
    error.textContent = words;
    flag(box, 'aria-invalid', words !== '');
  }

  form.addEventListener('submit', (event) => {
    event.preventDefault();
    submit();
  });
  box.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' || event.shiftKey || event.isComposing) return;
    event.preventDefault();
    form.requestSubmit();
  });
}

/** @param {string[]} rings */
function whoRings(rings) {
  return rings.length === 0 ? 'Nobody is rung.' : `Then it rings ${rings.join(', then ')}.`;
}

/**
 * Wires a button of a call: what comes of it is told beneath.
 * @param {HTMLElement} root
 * @param {string} button
 * @param {() => string | null} number
 * @param {() => Promise<void>} changed
 * @param {(number: string) => Promise<string>} act
 */
function byCall(root, button, number, changed, act) {
  const rang = within(root, '.rang', HTMLElement);
  within(root, button, HTMLButtonElement).addEventListener('click', async () => {
    const from = number();
    if (from === null) return;
    try {
      rang.textContent = await act(from);
      await changed();
    } catch (failure) {
      if (!(failure instanceof LineError)) throw failure;
      rang.textContent = `That failed. ${failure.message}`;
    }
  });
}
