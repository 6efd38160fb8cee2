/** The few shapes the picture is made of, as SVG. Black on white: a shape and its words tell everything, colour nothing. */

export const ink = '#111';
export const paper = '#fff';
export const faint = '#767676';

/** Text in SVG; what families and nurses wrote may hold anything. */
export function escaped(text: string): string {
  const names: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
  return text.replaceAll(/[&<>"]/g, (sign) => names[sign] ?? sign);
}

export const fontSize = 11;
/** Wide enough for most sans-serif faces. */
const glyphWidth = 6.1;

export function widthOf(text: string): number {
  return text.length * glyphWidth;
}

export function words(x: number, y: number, text: string, more = ''): string {
  return `<text x="${round(x)}" y="${round(y)}" ${more}>${escaped(text)}</text>`;
}

export function line(x1: number, y1: number, x2: number, y2: number, more = ''): string {
  return `<line x1="${round(x1)}" y1="${round(y1)}" x2="${round(x2)}" y2="${round(y2)}" stroke="${ink}" ${more}/>`;
}

export function box(x: number, y: number, width: number, height: number, fill: string, more = ''): string {
  return `<rect x="${round(x)}" y="${round(y)}" width="${round(Math.max(1, width))}" height="${height}" fill="${fill}" stroke="${ink}" ${more}/>`;
}

/** The family's texts, a reading that passes, a page taken. */
export function disc(x: number, y: number, radius = 4): string {
  return `<circle cx="${round(x)}" cy="${round(y)}" r="${radius}" fill="${ink}"/>`;
}

/** Inside a disc: a picture or voice note came with the text. */
export function eye(x: number, y: number): string {
  return `<circle cx="${round(x)}" cy="${round(y)}" r="1.8" fill="${paper}"/>`;
}

/** The line's texts. */
export function square(x: number, y: number): string {
  return box(x - 3.5, y - 3.5, 7, 7, paper);
}

/** A call. */
export function triangle(x: number, y: number): string {
  return `<path d="M${round(x - 5)} ${y + 4}h10l-5 -9z" fill="${paper}" stroke="${ink}"/>`;
}

/** A reading that does not pass, a message that did not arrive. */
export function cross(x: number, y: number): string {
  return `<path d="M${round(x - 4.5)} ${round(y - 4.5)}l9 9m0 -9l-9 9" stroke="${ink}" stroke-width="2.2" fill="none"/>`;
}

export interface Label {
  readonly x: number;
  readonly text: string;
}

/** Labels in as many rows as it takes for none to stand on another; each has the row it came to. */
export function inRows<T extends Label>(labels: readonly T[]): readonly (T & { readonly row: number })[] {
  const ends: number[] = [];
  return labels.map((label) => {
    const free = ends.findIndex((end) => end <= label.x);
    const row = free === -1 ? ends.length : free;
    ends[row] = label.x + widthOf(label.text) + 10;
    return { ...label, row };
  });
}

export function rowsOf(labels: readonly { readonly row: number }[]): number {
  return Math.max(0, ...labels.map(({ row }) => row + 1));
}

export function round(value: number): number {
  return Math.round(value * 10) / 10;
}
