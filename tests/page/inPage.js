// @ts-check
/** What the tests ask inside the browser: computed styles, and what each text is written in and stands on. */

/**
 * @param {string} selector
 * @param {'stroke' | 'borderTopColor' | 'backgroundColor' | 'outlineStyle'} property
 */
const styles = (selector, property) =>
  [...document.querySelectorAll(selector)].map((each) => getComputedStyle(each)[property]);

/** Every visible text of the page with its colour and the colour it stands on. */
const texts = () =>
  [...document.querySelectorAll('body *')]
    .filter((each) => [...each.childNodes].some((child) => child.nodeType === 3 && child.textContent?.trim()))
    .filter((each) => each.checkVisibility() && !each.matches('option, .heard, script, title'))
    .map((each) => ({
      words: each.textContent?.trim().slice(0, 40),
      ink: getComputedStyle(each)[each.closest('svg') ? 'fill' : 'color'],
      ground: ground(each),
    }));

/** @param {Element} element */
function ground(element) {
  const box = element.closest('.state')?.querySelector('rect');
  if (box) return getComputedStyle(box).fill;
  /** @type {Element | null} */
  let under = element;
  while (under && getComputedStyle(under).backgroundColor === 'rgba(0, 0, 0, 0)') under = under.parentElement;
  return under ? getComputedStyle(under).backgroundColor : 'none';
}

/**
 * The pictures of a phone: what they are called, how wide they were sent, and whether their end is in sight of the thread.
 * @param {string} phone
 */
const pictures = (phone) =>
  [...document.querySelectorAll(`${phone} .thread`)].flatMap((thread) =>
    [...thread.querySelectorAll('img')].map((image) => ({
      words: image.alt,
      width: image.naturalWidth,
      inSight: image.getBoundingClientRect().bottom <= thread.getBoundingClientRect().bottom,
    })),
  );

Object.assign(globalThis, { inPage: { styles, texts, pictures } });
