/** The family's own call rang somebody and she pressed the key: noted as a page to her, before she takes it. Nothing else changes. */
import { describe, expect, it } from 'vitest';
import { lines, page, raise } from './calls.ts';

const reasons = { emergency: 'warning-sign', urgent: 'no-strips', routine: 'weight-unknown' } as const;
const levels = ['emergency', 'urgent', 'routine'] as const;
/** On the way up, and once everybody was called. */
const minutes = [0, 4, 12, 300];
const rung = (place: 0 | 1 | 2) => ({ type: 'rung', place }) as const;
const climbing = (level: (typeof levels)[number], minute: number) => {
  const line = page();
  line.send(raise(reasons[level]));
  line.advance(minute);
  return line;
};

describe.each(levels)('whoever a family’s call rang, at level %s', (level) => {
  it.each(minutes)('is noted as called at minute %i, whatever her place, with no text and no call', (minute) => {
    for (const place of [0, 1, 2] as const) {
      const line = climbing(level, minute);
      expect(lines(line.send(rung(place)))).toEqual([`${minute} ${level} ${place}  ${reasons[level]}`]);
      expect(line.snapshot.context.takenBy).toBeNull();
    }
  });

  it.each(minutes)('has not taken it by that at minute %i: the climb goes on as if nobody had been rung', (minute) => {
    const [line, other] = [climbing(level, minute), climbing(level, minute)];
    line.send(rung(2));
    expect(line.due).toEqual(other.due);
    expect(line.snapshot.value).toEqual(other.snapshot.value);
    const after = lines(other.advance(120));
    expect(after.length).toBeGreaterThan(2);
    expect(lines(line.advance(120))).toEqual(after);
  });

  it('stops it by taking it, from her own place', () => {
    const line = climbing(level, 4);
    line.send(rung(2));
    expect(lines(line.send({ type: 'take', nurse: 'Wren', from: 2 }))).toEqual(['4 taken Wren']);
    expect(line.snapshot.context).toMatchObject({ takenBy: 'Wren', place: 2 });
    expect(line.due).toEqual([]);
  });

  it('is nothing where no page is open: before one, once it was taken, after the close', () => {
    const line = page();
    expect(line.send(rung(0))).toEqual([]);
    line.send(raise(reasons[level]));
    line.send({ type: 'take', nurse: 'Wren' });
    expect(line.send(rung(1))).toEqual([]);
    expect(line.snapshot.context.takenBy).toBe('Wren');
    line.send({ type: 'page.close' });
    expect(line.send(rung(0))).toEqual([]);
  });
});

it('has the reasons that came since as well, and whoever takes it is told of them', () => {
  const line = climbing('urgent', 2);
  line.send(raise('weight-unknown'));
  expect(lines(line.send(rung(1)))).toEqual(['2 urgent 1  no-strips,weight-unknown']);
  expect(lines(line.send({ type: 'take', nurse: 'Wren' }))).toEqual([
    '2 taken Wren',
    '2 tellNurse routine weight-unknown',
  ]);
});
