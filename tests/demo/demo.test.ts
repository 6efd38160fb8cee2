/** The demo: the night it prints holds what it promises, in this order, and every text in it came from the real line. */
import { beforeAll, expect, it } from 'vitest';
import { demo } from '#src/demo/demo.ts';

let transcript = '';

beforeAll(async () => {
  const lines: string[] = [];
  await demo((text) => lines.push(text));
  transcript = lines.join('\n').replaceAll(/\s+/g, ' ');
});

/** Where each stands in the transcript, looked for after the one before it. */
function places(parts: readonly string[]): readonly number[] {
  let from = 0;
  return parts.map((part) => {
    const place = transcript.indexOf(part, from);
    from = Math.max(from, place);
    return place;
  });
}

it.each([
  [
    'two families at once, each in its own case',
    ["Wren's parent > omg", "Ode's parent > Odes gj", "Wren's parent > no shes ok", "Ode's parent > no"],
  ],
  [
    'a first nurse who does not answer, and a second who takes it',
    ['Nurse Imke < URGENT Ode', 'call to Nurse Imke <', 'Nurse Tariq < URGENT Ode', 'Nurse Tariq has your case now'],
  ],
  ['a second reading an hour later', ['DECIDES recheck', 'The wait is over', '5.0 now', 'DECIDES hold']],
  [
    'a combination tube that goes in',
    ["Ode's parent > slid in fine", 'DECIDES go-in', "Ode's parent > yes we are here"],
  ],
  [
    'a question that is passed on, and its answer',
    [
      'Nurse Tariq > ask',
      'Nurse Tariq writes: how did she take',
      "Wren's parent > she cried",
      'family: "she cried a bit',
    ],
  ],
  [
    'a call put through',
    [
      'Nurse Tariq > call',
      'Nurse Tariq will ring you soon',
      'Press 1 to be put through',
      "presses 1; the line rings Wren's parent",
    ],
  ],
  [
    'a hard insertion cleared by text',
    ['DECIDES hold', 'Nurse Tariq > clear', 'Nurse Tariq > yes', 'Cleared.', 'Wren: asks secured', 'DECIDES use'],
  ],
  ['a handover at half past seven', ['07:30 The day team < HANDOVER', 'The day team > got it', 'handover is yours']],
])('shows %s', (_, parts) => {
  expect(places(parts)).not.toContain(-1);
});
