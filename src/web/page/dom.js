// @ts-check
/** Small helpers to find and make elements. */

/**
 * The element with this id. Throws if the page lacks it or it is of another kind: a mistake in the page itself.
 * @template {Element} E
 * @param {string} id
 * @param {new () => E} kind
 * @returns {E}
 */
export function byId(id, kind) {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${kind.name} "${id}"`);
}

/**
 * The first match under `root`, under the same rule.
 * @template {Element} E
 * @param {Element} root
 * @param {string} selector
 * @param {new () => E} kind
 * @returns {E}
 */
export function within(root, selector, kind) {
  const found = root.querySelector(selector);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${kind.name} at "${selector}"`);
}

/**
 * @param {string} tag
 * @param {Record<string, string>} attributes
 * @param {...(Node | string)} children
 */
export function make(tag, attributes, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}

/**
 * @param {string} tag
 * @param {Record<string, string | number>} attributes
 * @param {...(Node | string)} children
 */
export function draw(tag, attributes, ...children) {
  const element = document.createElementNS('http://www.w3.org/2000/svg', tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  element.append(...children);
  return element;
}

/**
 * Fills a select and keeps what was chosen, if it is still there.
 * @param {HTMLSelectElement} select
 * @param {{ value: string, text: string }[]} options
 */
export function fill(select, options) {
  const same =
    select.options.length === options.length &&
    options.every(({ value, text }, at) => select.options[at]?.value === value && select.options[at]?.text === text);
  if (same) return;
  const chosen = select.value;
  select.replaceChildren(...options.map(({ value, text }) => new Option(text, value)));
  if (options.some(({ value }) => value === chosen)) select.value = chosen;
}

/**
 * Sets an ARIA state to "true" or takes it away.
 * @param {Element} element
 * @param {'aria-invalid' | 'aria-disabled'} name
 * @param {boolean} on
 */
export function flag(element, name, on) {
  if (on) element.setAttribute(name, 'true');
  else element.removeAttribute(name);
}
