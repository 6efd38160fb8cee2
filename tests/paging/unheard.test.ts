/** What was added to a climb reaches whoever takes it: their call may have been before it. */
import { describe, expect, it } from 'vitest';
import { getInitialSnapshot } from 'xstate';
import { paging } from '#machines/paging/machine.ts';
import { clinicalWith } from '#tests/machines/simulated.ts';
import { lines, page, raise } from './calls.ts';

describe('whoever takes a page', () => {
  it('is told every reason added since the climb began, each with its own level', () => {
    const line = page();
    line.send(raise('silence'));
    line.send(raise('no-strips'));
    line.send(raise('weight-unknown'));
    expect(lines(line.send({ type: 'take', nurse: 'Wren' }))).toEqual([
      '0 taken Wren',
      '0 tellNurse urgent no-strips',
      '0 tellNurse routine weight-unknown',
    ]);
    expect(line.snapshot.context.unheard).toEqual([]);
  });

  it('is told nothing that the first call said', () => {
    const line = page();
    line.send(raise('silence'));
    line.send(raise('silence'));
    expect(lines(line.send({ type: 'take', nurse: 'Wren' }))).toEqual(['0 taken Wren']);
  });

  it('is told a reason added before the climb started again in its calls, not once more', () => {
    const line = page();
    line.send(raise('silence'));
    line.send(raise('no-strips'));
    line.send(raise('warning-sign'));
    line.send(raise('no-contents'));
    expect(lines(line.send({ type: 'take', nurse: 'Wren' }))).toEqual([
      '0 taken Wren',
      '0 tellNurse urgent no-contents',
    ]);
  });
});

it('a case begins with nothing raised, on the settings of its site', () => {
  const clinical = clinicalWith({ emergencyRepeatMinutes: 4 });
  expect(getInitialSnapshot(paging, { clinical }).context).toEqual({
    clinical,
    level: 'routine',
    reasons: [],
    unheard: [],
    place: 0,
    beganAtMs: 0,
    rounds: 0,
    takenBy: null,
  });
});
