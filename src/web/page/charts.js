// @ts-check
/** The state map: every machine drawn once from its states and transitions, and the current state lit and named. */

import { byId, draw, make } from './dom.js';
import { boxOf, join, layOut, withParents } from './layout.js';
import { LineError, machines } from './line.js';
import { machineNames, spoken, title, wordsFor } from './words.js';

/** @import { Box, Frame, Layout } from './layout.js' */
/** @import { CaseReport, Machine, MapEdge } from './line.js' */

const fontOfMap = '500 12.5px system-ui, sans-serif';

/** @typedef {{ machine: Machine, name: string, holder: HTMLElement, ways: HTMLElement }} Chart */

/** @type {Chart[]} */
let charts = [];
/** @type {CaseReport['states']} */
let lit = {};
let drawn = '';

/** @param {CaseReport['states']} states the active states of each machine; none where no case is */
export function showCharts(states) {
  lit = states;
  paint();
}

const place = byId('charts', HTMLElement);
place.tabIndex = 0; // so that the keyboard can scroll it
new ResizeObserver(paint).observe(place);

void begin();

async function begin() {
  try {
    charts = (await machines()).map(chart);
    place.replaceChildren(...charts.map(({ holder }) => holder));
    paint();
  } catch (failure) {
    if (!(failure instanceof LineError)) throw failure;
    byId('map-error', HTMLElement).textContent = `The map could not be drawn. ${failure.message}`;
  }
}

/**
 * @param {Machine} machine
 * @returns {Chart}
 */
function chart(machine) {
  const ways = make('ul', {});
  const name = wordsFor(machineNames, machine.name) ?? machine.name;
  const details = make('details', {}, make('summary', {}, 'Ways on from here'), ways);
  const holder = make('div', { class: 'chart' }, make('h3', {}, name), details, draw('svg', {}));
  return { machine, name, holder, ways };
}

/** Draws afresh, only when the width or the current state changed. */
function paint() {
  const width = Math.floor(place.clientWidth);
  const key = `${width} ${charts.length} ${JSON.stringify(lit)}`;
  if (width === 0 || key === drawn) return;
  drawn = key;
  const measure = ruler();
  const here = charts.flatMap((each) => {
    const names = paintOne(each, lit[each.machine.name] ?? [], width, measure);
    return [make('dt', {}, each.name), make('dd', {}, names)];
  });
  byId('here', HTMLElement).replaceChildren(...here);
  const first = place.querySelector('.lit');
  if (first && place.scrollHeight > place.clientHeight) toMiddle(first);
}

/**
 * Scrolls the map, never the page, until the box is in its middle.
 * @param {Element} box
 */
function toMiddle(box) {
  const [area, whole] = [box.getBoundingClientRect(), place.getBoundingClientRect()];
  const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
  const top = place.scrollTop + area.top - whole.top - (place.clientHeight - area.height) / 2;
  place.scrollTo({ top, behavior: calm ? 'instant' : 'smooth' });
}

function ruler() {
  const canvas = document.createElement('canvas').getContext('2d');
  if (!canvas) throw new Error('this browser has no canvas to measure text with');
  canvas.font = fontOfMap;
  return (/** @type {string} */ text) => canvas.measureText(text).width;
}

/**
 * @param {Chart} chart
 * @param {string[]} active
 * @param {number} width
 * @param {(text: string) => number} measure
 * @returns {string} where the machine stands, in words
 */
function paintOne({ machine, name, holder, ways }, active, width, measure) {
  const { nodes, edges } = machine;
  const leaves = active.filter((id) => !nodes.some((node) => node.parent === id && active.includes(node.id)));
  const current = new Set(leaves.map((id) => boxOf(id, nodes)).filter((id) => id !== null));
  const names = leaves.map((id) => pathOf(id, machine)).join(' and ') || 'not begun';
  const out = leaves.flatMap((id) => waysFrom(id, machine));
  ways.replaceChildren(
    ...[...Map.groupBy(out, ({ to }) => to)].map(([to, edges]) =>
      make('li', {}, make('b', {}, pathOf(to, machine)), `: ${edges.map(({ label }) => spoken(label)).join(', ')}`),
    ),
  );
  holder.classList.toggle('idle', out.length === 0);

  const layout = layOut(machine, width, measure);
  const label = `${name}: ${nodes.length} states in ${layout.frames.length} parts. Now ${names}.`;
  const svg = draw(
    'svg',
    { role: 'img', 'aria-label': label, width, height: layout.height, viewBox: `0 0 ${width} ${layout.height}` },
    draw('defs', {}, arrow(machine.name)),
    ...layout.frames.map(frame),
    ...joins(machine, layout, edges, current),
    ...layout.frames.map(frameName),
    ...layout.boxes.map((box) => state(box, current)),
  );
  holder.querySelector('svg')?.replaceWith(svg);
  return names;
}

/**
 * Its own ways first, then those of all it lies in.
 * @param {string} id
 * @param {Machine} machine
 */
const waysFrom = (id, { nodes, edges }) =>
  withParents(id, nodes).flatMap((node) => edges.filter(({ from }) => from === node.id));

/**
 * `Placement, Read the strip`: without the machine's own name, which stands above.
 * @param {string} id
 * @param {Machine} machine
 */
function pathOf(id, { nodes }) {
  const path = withParents(id, nodes).map((node) => title(node.label));
  return (path.length > 1 ? path.slice(0, -1) : path).toReversed().join(', ');
}

/** @param {string} name */
function arrow(name) {
  const shape = draw('path', { d: 'M0 0L8 4L0 8z', class: 'arrowhead' });
  const attributes = { id: `arrow-${name}`, viewBox: '0 0 8 8', refX: 8, refY: 4, markerWidth: 9, markerHeight: 9 };
  return draw('marker', { ...attributes, markerUnits: 'userSpaceOnUse', orient: 'auto' }, shape);
}

/** @param {Frame} frame */
const frame = ({ x, y, width, height }) => draw('rect', { x, y, width, height, rx: 4, class: 'frame' });

/**
 * Above the lines, so that none crosses it out.
 * @param {Frame} frame
 */
const frameName = ({ label, x, y }) => draw('text', { x: x + 12, y: y + 18, class: 'frame-name' }, label);

/**
 * Faint lines inside each leg; from the current state every way on, across legs too.
 * @param {Machine} machine
 * @param {Layout} layout
 * @param {MapEdge[]} edges
 * @param {Set<string>} current
 */
function joins({ name, nodes }, { boxes }, edges, current) {
  /** @type {Map<string, SVGElement>} */
  const lines = new Map();
  for (const edge of edges) {
    const [a, b] = [boxOf(edge.from, nodes), boxOf(edge.to, nodes)];
    const [from, to] = [boxes.find(({ id }) => id === a), boxes.find(({ id }) => id === b)];
    const fromOneState = withParents(edge.from, nodes).some(({ id }) => id === a);
    if (!from || !to || from === to || !fromOneState) continue;
    const ahead = current.has(from.id);
    const sameLeg = nodes.find(({ id }) => id === a)?.parent === nodes.find(({ id }) => id === b)?.parent;
    if (!ahead && !sameLeg) continue;
    const attributes = { d: join(from, to), class: ahead ? 'way ahead' : 'way' };
    lines.set(`${a} ${b}`, draw('path', ahead ? { ...attributes, 'marker-end': `url(#arrow-${name})` } : attributes));
  }
  return [...lines.values()].toSorted((x, y) => Number(x.classList.length) - Number(y.classList.length));
}

/**
 * @param {Box} box
 * @param {Set<string>} current
 */
function state({ id, lines, asking, x, y, width, height }, current) {
  const here = current.has(id);
  const name = lines.map((line, at) => draw('tspan', { x: x + 9, y: y + 6 + 12 + at * 16 }, line));
  return draw(
    'g',
    { class: `state${asking ? ' asks' : ''}${here ? ' lit' : ''}`, 'data-state': id },
    draw('rect', { x, y, width, height, rx: asking ? 3 : height / 2 }),
    draw('text', {}, ...name),
  );
}
