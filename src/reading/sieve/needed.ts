/** Works out of a pattern which letters every text holds that it can be found in. */
import { alphabet, type Node, parsePattern } from './patternTree.ts';

type Parts = readonly string[];

/** What a node can be, word for word, where that is little; and parts of which a text holds one wherever it is found. */
interface Known {
  readonly ways: Parts | null;
  readonly needed: Parts | null;
}

/** A row longer than this in ways to read it is cut: a piece of it says enough. */
const mostWays = 24;
const mostLettersOfClass = 6;
/** Fewer letters tell too little to be looked for, but for a digit. */
const fewestLetters = 3;
/** Stands for every digit. */
export const digit = '0';

/** Where a word begins or ends, while a row is put together. */
const edge = '|';
const nothing: Parts = [''];
const edges: Parts = [edge];

function knownOf(node: Node): Known {
  switch (node.is) {
    case 'nothing':
      return { ways: node.edge ? edges : nothing, needed: null };
    case 'letters':
      return { ways: lettersIn(node.letters), needed: null };
    case 'repeat':
      return repeated(knownOf(node.node), node.least, node.most);
    case 'row':
      return inRow(node.nodes.map(knownOf));
    case 'either':
      return oneOf(node.nodes.map(knownOf));
  }
}

/** What was worked out before: few classes are used again and again. */
const classes = new Map<bigint, Parts | null>();

function lettersIn(letters: bigint): Parts | null {
  const before = classes.get(letters);
  if (before !== undefined) return before;
  const all = alphabet.filter((_, at) => (letters & (1n << BigInt(at))) !== 0n);
  const ways = [...new Set(all.map((letter) => (/[a-z]/.test(letter) ? letter : /\d/.test(letter) ? digit : ' ')))];
  const few = ways.length === 0 || ways.length > mostLettersOfClass ? null : ways;
  classes.set(letters, few);
  return few;
}

function repeated({ ways, needed }: Known, least: number, most: number): Known {
  if (most !== 1) return { ways: null, needed: least === 0 ? null : (needed ?? longEnough(ways)) };
  if (least === 1 || ways === null) return { ways, needed: least === 1 ? needed : null };
  return { ways: ['', ...ways], needed: null };
}

function oneOf(all: readonly Known[]): Known {
  const ways: string[] = [];
  const needed: string[] = [];
  let isFew = true;
  let isNamed = true;
  for (const one of all) {
    if (one.ways === null) isFew = false;
    else if (isFew) ways.push(...one.ways);
    const parts = one.needed ?? longEnough(one.ways);
    if (parts === null) isNamed = false;
    else if (isNamed) needed.push(...parts);
  }
  return { ways: isFew && ways.length <= mostWays ? ways : null, needed: isNamed ? needed : null };
}

function joined(all: Parts, ways: Parts): Parts {
  if (ways === nothing) return all;
  return all.flatMap((before) => ways.map((way) => before + way));
}

/** A row needs what any one of its nodes needs, or a run of them together. */
function inRow(all: readonly Known[]): Known {
  let needed: Parts | null = null;
  let run = nothing;
  let isWhole = true;
  const offer = (parts: Parts | null) => {
    if (parts && (needed === null || parts.length < needed.length)) needed = parts;
  };
  for (const { ways, needed: ofNode } of all) {
    offer(ofNode);
    if (ways && run.length * ways.length <= mostWays) {
      run = joined(run, ways);
      continue;
    }
    offer(longEnough(run));
    run = ways ?? nothing;
    isWhole = false;
  }
  if (isWhole) return { ways: run, needed };
  offer(longEnough(run));
  return { ways: null, needed };
}

/** An edge beside a sign that is no letter is that sign; by itself it is one. */
function withoutEdges(way: string): string {
  return way.includes(edge) ? way.replace(/[ |]*\|[ |]*/g, (signs) => signs.replaceAll(edge, '') || ' ') : way;
}

function longEnough(ways: Parts | null): Parts | null {
  if (ways === null) return null;
  const parts = ways.map(withoutEdges);
  return parts.every((part) => part.length >= fewestLetters || part.includes(digit)) ? parts : null;
}

/**
 * Parts, each of at least three letters or with a digit, of which every text holds one in which the pattern is found; null
 * where none can be named. Every digit is a 0; any other sign is a space, and so are the beginning and the end of a text.
 */
export function neededParts({ source, flags }: RegExp): ReadonlySet<string> | null {
  // A plain text has no capitals.
  if (flags.includes('i') || /(?<!\\)[A-Z]/.test(source)) return null;
  const { ways, needed } = knownOf({ is: 'row', nodes: [parsePattern(source)] });
  const parts = needed ?? longEnough(ways);
  return parts && new Set(parts);
}
