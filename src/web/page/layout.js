// @ts-check
/**
 * Lays a machine out as a map: each leg a labelled frame, each state a box in it, in the order the machine was written.
 * Pure: it knows widths and lines, not the page.
 */

import { title } from './words.js';

/** @import { Machine, MapNode } from './line.js' */

/** @typedef {{ x: number, y: number, width: number, height: number }} Area */
/** @typedef {Area & { id: string, lines: string[], asking: boolean }} Box */
/** @typedef {Area & { id: string, label: string }} Frame */
/** @typedef {{ frames: Frame[], boxes: Box[], height: number }} Layout */
/** @typedef {(text: string) => number} Measure width of a text in the map's type, in pixels */

const size = {
  line: 16,
  boxPadX: 9,
  boxPadY: 6,
  boxMost: 170,
  gapX: 16,
  gapY: 14,
  frameTitle: 26,
  framePad: 12,
  frameGap: 14,
  frameLeast: 250,
};

/**
 * A question is one box, whatever happens within it (its nudge, its second try).
 * @param {MapNode} node
 * @param {MapNode[]} nodes
 */
const isBox = (node, nodes) => node.asking !== null || !nodes.some(({ parent }) => parent === node.id);

/**
 * The box a state is drawn as: itself, or the question it belongs to; for a leg, its first box. Null if there is none.
 * @param {string} id
 * @param {MapNode[]} nodes
 * @returns {string | null}
 */
export function boxOf(id, nodes) {
  const asked = withParents(id, nodes).findLast((node) => isBox(node, nodes));
  if (asked) return asked.id;
  const first = nodes.find(({ parent }) => parent === id);
  return first ? boxOf(first.id, nodes) : null;
}

/**
 * The state and what it lies in, from the inside out.
 * @param {string} id
 * @param {MapNode[]} nodes
 * @returns {MapNode[]}
 */
export function withParents(id, nodes) {
  const node = nodes.find((each) => each.id === id);
  if (!node) return [];
  return node.parent === null ? [node] : [node, ...withParents(node.parent, nodes)];
}

/**
 * @param {Machine} machine
 * @param {number} width in pixels
 * @param {Measure} measure
 * @returns {Layout}
 */
export function layOut({ nodes }, width, measure) {
  const top = nodes.filter(({ parent }) => parent === null);
  const root = top.length === 1 ? top[0] : undefined;
  const legs = root && !isBox(root, nodes) ? nodes.filter(({ parent }) => parent === root.id) : top;
  /** @type {Layout} */
  const layout = { frames: [], boxes: [], height: 0 };
  layout.height = place(legs, { x: 1, y: 1, width: width - 2 }, nodes, measure, layout) + 2;
  return layout;
}

/**
 * Places boxes as words in lines, then the frames beneath in as many columns as fit. Returns the height used.
 * @param {MapNode[]} siblings
 * @param {{ x: number, y: number, width: number }} at
 * @param {MapNode[]} nodes
 * @param {Measure} measure
 * @param {Layout} layout filled on the way
 * @returns {number}
 */
function place(siblings, at, nodes, measure, layout) {
  const boxes = siblings.filter((node) => isBox(node, nodes));
  const frames = siblings.filter((node) => !isBox(node, nodes));
  const flowed = flow(boxes, at, measure, layout);
  const from = at.y + (flowed > 0 && frames.length > 0 ? flowed + size.frameGap : flowed);
  const count = Math.max(1, Math.floor((at.width + size.frameGap) / (size.frameLeast + size.frameGap)));
  const columns = Array.from({ length: Math.min(count, frames.length) }, () => from);
  const width = (at.width - size.frameGap * (columns.length - 1)) / columns.length;
  for (const node of frames) {
    const column = columns.indexOf(Math.min(...columns));
    const y = columns[column] ?? from;
    const area = { x: at.x + column * (width + size.frameGap), y, width };
    columns[column] = y + frame(node, area, nodes, measure, layout) + size.frameGap;
  }
  return columns.length === 0 ? flowed : Math.max(...columns) - size.frameGap - at.y;
}

/**
 * @param {MapNode} node
 * @param {{ x: number, y: number, width: number }} at
 * @param {MapNode[]} nodes
 * @param {Measure} measure
 * @param {Layout} layout
 */
function frame(node, { x, y, width }, nodes, measure, layout) {
  const own = { id: node.id, label: title(node.label), x, y, width, height: 0 };
  layout.frames.push(own); // before its children, so that it is painted beneath them
  const inside = { x: x + size.framePad, y: y + size.frameTitle, width: width - 2 * size.framePad };
  const children = nodes.filter(({ parent }) => parent === node.id);
  own.height = size.frameTitle + place(children, inside, nodes, measure, layout) + size.framePad;
  return own.height;
}

/**
 * @param {MapNode[]} nodes
 * @param {{ x: number, y: number, width: number }} at
 * @param {Measure} measure
 * @param {Layout} layout
 * @returns {number} height used
 */
function flow(nodes, at, measure, layout) {
  let [x, y, tallest] = [at.x, at.y, 0];
  for (const node of nodes) {
    const most = Math.min(size.boxMost, at.width) - 2 * size.boxPadX;
    const lines = wrap(title(node.label), most, measure);
    const width = Math.max(...lines.map(measure)) + 2 * size.boxPadX;
    const height = lines.length * size.line + 2 * size.boxPadY;
    if (x > at.x && x + width > at.x + at.width) {
      [x, y, tallest] = [at.x, y + tallest + size.gapY, 0];
    }
    layout.boxes.push({ id: node.id, lines, asking: node.asking !== null, x, y, width, height });
    x += width + size.gapX;
    tallest = Math.max(tallest, height);
  }
  return y + tallest - at.y;
}

/**
 * @param {string} label
 * @param {number} most
 * @param {Measure} measure
 */
function wrap(label, most, measure) {
  /** @type {string[]} */
  const lines = [];
  for (const word of label.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && measure(`${last} ${word}`) <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/**
 * The line from one box to another: straight to the next one in a row, round the side to one far above or below, else a curve.
 * @param {Area} from
 * @param {Area} to
 */
export function join(from, to) {
  const sameRow = from.y === to.y;
  if (sameRow && to.x > from.x && to.x - (from.x + from.width) <= size.gapX + 1) {
    const y = from.y + Math.min(from.height, to.height) / 2;
    return `M${from.x + from.width} ${y}H${to.x}`;
  }
  const [x1, x2] = [from.x + from.width / 2, to.x + to.width / 2];
  if (sameRow) return `M${x1} ${from.y}C${x1} ${from.y - 18} ${x2} ${to.y - 18} ${x2} ${to.y}`;
  const farBelowEachOther = Math.abs(x1 - x2) < 140 && Math.abs(to.y - from.y) > 90;
  if (farBelowEachOther) {
    const [start, end] = [from.y + from.height / 2, to.y + to.height / 2];
    const left = Math.min(from.x, to.x) - size.framePad - 2; // round the side, not behind every box between
    return `M${from.x} ${start}C${left} ${start} ${left} ${end} ${to.x} ${end}`;
  }
  const down = to.y > from.y;
  const [y1, y2] = down ? [from.y + from.height, to.y] : [from.y, to.y + to.height];
  const bend = Math.max(14, Math.abs(y2 - y1) / 2) * (down ? 1 : -1);
  return `M${x1} ${y1}C${x1} ${y1 + bend} ${x2} ${y2 - bend} ${x2} ${y2}`;
}
