/** A regular expression as a tree of what it reads: letters, rows, alternatives and repetitions. */

/** `letters` has a bit for each letter of `alphabet`; `nothing` is a look-around, or an anchor: an `edge` where a word ends. */
export type Node =
  | { readonly is: 'letters'; readonly letters: bigint }
  | { readonly is: 'nothing'; readonly around?: Node; readonly edge?: boolean }
  | { readonly is: 'row' | 'either'; readonly nodes: readonly Node[] }
  | { readonly is: 'repeat'; readonly node: Node; readonly least: number; readonly most: number };

/** What a plain text can hold, with one letter for every other. */
export const alphabet = [...'abcdefghijklmnopqrstuvwxyz0123456789_ .,;:!?/+<>=%#~-|\n\u00e9'];
const lettersThat = (holds: (letter: string) => boolean): bigint =>
  alphabet.reduce((set, letter, at) => (holds(letter) ? set | (1n << BigInt(at)) : set), 0n);

/** What was read before: patterns use the same letters and classes again and again. */
const known = new Map<string, Node>();

/** One letter or class, read by the engine itself. */
function lettersOf(source: string): Node {
  const before = known.get(source);
  if (before) return before;
  const one = new RegExp(`^(?:${source})$`, 'u');
  const node: Node = { is: 'letters', letters: lettersThat((letter) => one.test(letter)) };
  known.set(source, node);
  return node;
}

/** Reads a pattern from left to right. */
class Reader {
  private at = 0;
  private readonly source: string;

  constructor(source: string) {
    this.source = source;
  }

  either(): Node {
    const nodes = [this.row()];
    while (this.takes('|')) nodes.push(this.row());
    return nodes.length === 1 ? (nodes[0] ?? { is: 'nothing' }) : { is: 'either', nodes };
  }

  private takes(text: string): boolean {
    if (!this.source.startsWith(text, this.at)) return false;
    this.at += text.length;
    return true;
  }

  /** What a sticky pattern finds here. */
  private match(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.source)?.[0];
    this.at += found?.length ?? 0;
    return found;
  }

  private row(): Node {
    const nodes: Node[] = [];
    while (this.at < this.source.length && !'|)'.includes(this.source[this.at] ?? '')) nodes.push(this.repeated());
    return { is: 'row', nodes };
  }

  private repeated(): Node {
    const node = this.atom();
    const quantifier = this.match(quantifiers);
    if (quantifier === undefined) return node;
    const [least = 0, most = least] = bounds(quantifier);
    return { is: 'repeat', node, least, most };
  }

  private atom(): Node {
    const plain = this.match(plainLetter);
    if (plain !== undefined) return lettersOf(plain);
    const around = lookArounds.find((opening) => this.takes(opening));
    if (around || this.match(groups)) {
      const inner = this.either();
      if (!this.takes(')')) throw new Error(`no end of a group in ${this.source}`);
      return around ? { is: 'nothing', around: inner } : inner;
    }
    if (this.match(edges)) return { is: 'nothing', edge: true };
    if (this.takes('\\B')) return { is: 'nothing' };
    // What was read before, whatever it was.
    if (this.match(backReference)) return { is: 'letters', letters: lettersThat(() => true) };
    const letter = this.match(letters) ?? '';
    // Signs that only this flag wants escaped are escaped, and the others not.
    return lettersOf(
      /^\\[^a-zA-Z0-9]$|^[^\\[.]$/.test(letter) ? escaped(letter.slice(-1)) : letter.replace(/\\(?=[#:,;!%~<>=])/g, ''),
    );
  }
}

const plainLetter = /[a-z0-9 ]/y;
const quantifiers = /(?:[*+?]|\{\d+(?:,\d*)?\})\??/y;
const lookArounds = ['(?=', '(?!', '(?<=', '(?<!'];
const groups = /\((?:\?:|\?<\w+>)?/y;
const edges = /\\b|[\^$]/y;
const backReference = /\\[1-9]/y;
const letters = /(?:\[(?:\\.(?:\{\w+\})?|[^\]\\])*\]|\\p\{\w+\}|\\u\{?[\dA-Fa-f]{4,6}\}?|\\.|[^\\])/suy;

function escaped(letter: string): string {
  return /[\^$\\.*+?()[\]{}|/]/.test(letter) ? `\\${letter}` : letter;
}

function bounds(quantifier: string): readonly number[] {
  if (quantifier.startsWith('*')) return [0, Number.POSITIVE_INFINITY];
  if (quantifier.startsWith('+')) return [1, Number.POSITIVE_INFINITY];
  if (quantifier.startsWith('?')) return [0, 1];
  const [least = '0', most] = quantifier.replace(/[{}?]/g, '').split(',');
  return [Number(least), most === undefined ? Number(least) : most === '' ? Number.POSITIVE_INFINITY : Number(most)];
}

/** The tree of a pattern's source. */
export function parsePattern(source: string): Node {
  return new Reader(source).either();
}

/** A node and all within it, those of a look-around too. */
export function nodesIn(node: Node): Node[] {
  const inner =
    'nodes' in node ? node.nodes : 'node' in node ? [node.node] : 'around' in node && node.around ? [node.around] : [];
  return [node, ...inner.flatMap(nodesIn)];
}
