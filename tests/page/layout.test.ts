/** The map's layout and the page's times, as plain functions. */
import { describe, expect, it } from 'vitest';
import { stateMap } from '#machines/stateMap.ts';

interface Area {
  id: string;
  x: number;
  y: number;
  width: number;
  height: number;
}

// The page is plain JavaScript and checked with the browser's types, not with this project's: its shapes are told here.
const {
  layOut,
  boxOf,
}: {
  layOut(
    machine: object,
    width: number,
    measure: (text: string) => number,
  ): { frames: Area[]; boxes: Area[]; height: number };
  boxOf(id: string, nodes: readonly object[]): string | null;
} = await import(String(new URL('../../src/web/page/layout.js', import.meta.url)));
const {
  clockTime,
  timeFrom,
  wait,
}: {
  clockTime(iso: string, zone: string): string;
  timeFrom(iso: string, now: string, zone: string): string;
  wait(iso: string, now: string): string;
} = await import(String(new URL('../../src/web/page/time.js', import.meta.url)));

const { machines } = stateMap();
const measure = (text: string) => text.length * 7;
const overlap = (a: Area, b: Area) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

describe('the map', () => {
  it.each([240, 380, 640, 1300])('lies within %i px, no box on another, every state drawn once', (width) => {
    for (const machine of machines) {
      const { boxes, frames, height } = layOut(machine, width, measure);
      for (const area of [...boxes, ...frames]) {
        expect(area.x).toBeGreaterThanOrEqual(0);
        expect(area.x + area.width).toBeLessThanOrEqual(width);
        expect(area.y + area.height).toBeLessThanOrEqual(height);
      }
      const collisions = boxes.flatMap((a, at) => boxes.slice(at + 1).filter((b) => overlap(a, b)));
      expect(collisions).toEqual([]);
      expect(new Set(boxes.map(({ id }) => id)).size).toBe(boxes.length);
      for (const { id } of machine.nodes) expect(boxes.map((box) => box.id)).toContain(boxOf(id, machine.nodes));
    }
  });

  it('draws a question as one box, whatever happens within it', () => {
    const nodes = machines[0]?.nodes ?? [];
    expect(boxOf('dislodgement.placement.ph.nudged', nodes)).toBe('dislodgement.placement.ph');
    expect(boxOf('dislodgement.placement', nodes)).toBe('dislodgement.placement.which');
    expect(boxOf('gone', nodes)).toBeNull();
  });

  it('draws a machine of one state, and legs within legs', () => {
    const alone = { nodes: [{ id: 'a', parent: null, label: 'Alone', asking: null }], edges: [] };
    expect(layOut(alone, 300, measure).boxes).toHaveLength(1);
    const deep = ['root', 'root.leg', 'root.leg.part', 'root.leg.part.state'].map((id) => ({
      id,
      parent: id.includes('.') ? id.slice(0, id.lastIndexOf('.')) : null,
      label: id,
      asking: null,
    }));
    const { frames, boxes } = layOut({ nodes: deep, edges: [] }, 300, measure);
    expect(frames.map(({ id }) => id)).toEqual(['root.leg', 'root.leg.part']);
    expect(boxes.map(({ id }) => id)).toEqual(['root.leg.part.state']);
  });
});

describe('the times', () => {
  const zone = 'America/New_York';

  it('are the site zone on the 24-hour clock, also at midnight and over the change to summer time', () => {
    expect(clockTime('2027-03-06T05:00:00Z', zone)).toBe('00:00');
    // US summer time 2027 begins on 14 March at 02:00 (15 USC 260a): 06:59 UTC is 01:59, 07:00 UTC is 03:00.
    expect(clockTime('2027-03-14T06:59:00Z', zone)).toBe('01:59');
    expect(clockTime('2027-03-14T07:00:00Z', zone)).toBe('03:00');
  });

  it('name the day only where it is another one', () => {
    expect(timeFrom('2027-03-06T02:20:00-05:00', '2027-03-06T02:10:00-05:00', zone)).toBe('02:20');
    expect(timeFrom('2027-03-07T02:20:00-05:00', '2027-03-06T02:10:00-05:00', zone)).toBe('Sun 7 Mar 02:20');
  });

  it.each([
    ['2027-03-06T07:10:00Z', 'now'],
    ['2027-03-06T07:09:00Z', 'now'],
    ['2027-03-06T07:10:01Z', 'in 1 min'],
    ['2027-03-06T08:10:00Z', 'in 1 h'],
    ['2027-03-06T08:40:00Z', 'in 1 h 30 min'],
    ['2027-03-09T07:10:00Z', 'in 3 d'],
  ])('say how long until %s: %s', (iso, words) => {
    expect(wait(iso, '2027-03-06T02:10:00-05:00')).toBe(words);
  });
});
