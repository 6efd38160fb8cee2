/** HTML without a browser: a template that escapes every value but markup. */

export interface Markup {
  readonly markup: string;
}

type Part = string | number | Markup | readonly Markup[];

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** html`<p>${text}</p>`: text is escaped, markup is kept. */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return { markup: String.raw({ raw: strings }, ...parts.map(markupOf)) };
}

function markupOf(part: Part): string {
  if (typeof part === 'string' || typeof part === 'number') return escaped(String(part));
  return 'markup' in part ? part.markup : part.map(markupOf).join('');
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (character) => escapes[character] ?? character);
}

/** A name from the code as a person reads it: `tractUsableAfterDays` as "tract usable after days". */
export function spoken(name: string): string {
  const words = name.replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLowerCase();
  return words.replace(/\bph\b/g, 'pH').replace(/\bml\b/g, 'mL');
}
