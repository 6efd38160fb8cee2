/**
 * Spares a text the patterns that cannot be found in it. A reader asks some four hundred patterns of a text, and nine in ten
 * need letters that the text has nowhere: those are told from its triples of letters, once for all of them.
 */
import { digit, neededParts } from './needed.ts';

/** What a text is sieved by: its letters, a 0 for every digit and a space for every other sign. */
const letters = `abcdefghijklmnopqrstuvwxyz${digit} `;
const digitPlace = letters.indexOf(digit);
const spacePlace = letters.indexOf(' ');
const tripleCount = letters.length ** 3;
/** Stands beside the triples for a digit anywhere. */
const anyDigit = tripleCount;

/** A letter's place in `letters`, by its code. */
const places = Uint8Array.from({ length: 128 }, (_, code) => {
  const letter = String.fromCharCode(code);
  if (/\d/.test(letter)) return digitPlace;
  return letters.includes(letter) ? letters.indexOf(letter) : spacePlace;
});

/** Calls with the number of every triple of letters that begins in a text, and for a digit. */
function forTriples(text: string, call: (triple: number) => void): void {
  let triple = 0;
  let hasDigit = false;
  for (let at = 0; at < text.length; at++) {
    const place = places[text.charCodeAt(at)] ?? spacePlace;
    hasDigit ||= place === digitPlace;
    triple = (triple * letters.length + place) % tripleCount;
    if (at >= 2) call(triple);
  }
  if (hasDigit) call(anyDigit);
}

function triplesIn(part: string): number[] {
  const triples: number[] = [];
  forTriples(part, (triple) => triples.push(triple));
  return triples;
}

const none: readonly never[] = [];

/** Texts whose patterns are remembered: the readers of one text look at it and at few pieces of it. */
const mostKept = 32;

/** The patterns of one language, and of each the triples of which a text must have one. */
class Sieve {
  /** By triple, the patterns that may be found where it is. */
  private readonly byTriple: (number[] | undefined)[] = Array.from({ length: tripleCount + 1 });
  /** A mark for each pattern that may be found in any text. */
  private readonly anywhere: Uint8Array;
  private readonly kept = new Map<string, Uint8Array>();
  private once: string | null = null;
  private last: string | null = null;
  private may: Uint8Array = new Uint8Array();

  constructor(patterns: readonly RegExp[]) {
    const needed = patterns.map(neededParts);
    this.anywhere = Uint8Array.from(needed, (parts) => (parts === null ? 1 : 0));
    const common = new Map<number, number>();
    for (const parts of needed)
      for (const triple of [...(parts ?? [])].flatMap(triplesIn)) common.set(triple, (common.get(triple) ?? 0) + 1);
    const rarest = (part: string) =>
      triplesIn(part).reduce((best, triple) => ((common.get(triple) ?? 0) < (common.get(best) ?? 0) ? triple : best));
    needed.forEach((parts, pattern) => {
      for (const triple of new Set([...(parts ?? [])].map(rarest))) {
        const before = this.byTriple[triple];
        if (before) before.push(pattern);
        else this.byTriple[triple] = [pattern];
      }
    });
  }

  /** A text asked about for the first time is not looked at yet: most pieces of a text are asked about once. */
  mayBeIn(text: string, pattern: number): boolean {
    if (text !== this.last) {
      const known = this.kept.get(text);
      if (known === undefined && text !== this.once) {
        this.once = text;
        return true;
      }
      this.may = known ?? this.look(text);
      this.last = text;
    }
    return this.may[pattern] === 1;
  }

  private look(text: string): Uint8Array {
    const may = this.anywhere.slice();
    forTriples(` ${text} `, (triple) => {
      for (const pattern of this.byTriple[triple] ?? none) may[pattern] = 1;
    });
    if (this.kept.size >= mostKept) this.kept.clear();
    this.kept.set(text, may);
    return may;
  }
}

/** Every pattern of a lexicon, however deep. */
export function patternsIn(value: unknown): RegExp[] {
  if (value instanceof RegExp) return [value];
  if (typeof value !== 'object' || value === null || value instanceof Set) return [];
  return Object.values(value).flatMap(patternsIn);
}

/** From now on the patterns of these words look at a text only where they may be found. */
export function sieve(words: object): void {
  const patterns = [...new Set(patternsIn(words))];
  let made: Sieve | null = null;
  patterns.forEach((pattern, number) => {
    const whole = new RegExp(pattern);
    const mayBeIn = (text: string) => {
      // Only once a text is read in this language.
      made ??= new Sieve(patterns);
      return made.mayBeIn(text, number);
    };
    pattern.test = (text) => mayBeIn(text) && whole.test(text);
    pattern[Symbol.search] = (text) => (mayBeIn(text) ? text.search(whole) : -1);
    pattern[Symbol.match] = (text) => (mayBeIn(text) ? text.match(whole) : null);
    pattern[Symbol.matchAll] = (text) => (mayBeIn(text) ? text.matchAll(whole) : none.values());
    pattern[Symbol.replace] = (text: string, by: never) => (mayBeIn(text) ? text.replace(whole, by) : text);
    pattern[Symbol.split] = (text, limit) => (mayBeIn(text) ? text.split(whole, limit) : [text]);
  });
}
