/** The night the demo plays: two invented families at once, one nurse asleep and one awake, and the morning after. */

/** Saturday, ten past two in the morning, clinic shut. */
export const nightBegins = '2027-03-06T02:10:00-05:00';

/** At a time of day, a text from somebody's phone. A child's name in angle brackets in a text is the code of its case. */
export interface Move {
  readonly at: string;
  /** A child for its parent's phone, or a nurse's first name, or the day team; null while only time goes by. */
  readonly from: string | null;
  readonly body: string;
  /** Pressed in the last call to this phone, in place of a text. */
  readonly digit?: '1';
}

export interface Scene {
  readonly title: string;
  readonly moves: readonly Move[];
}

const says = (from: string, at: string, body: string): Move => ({ at, from, body });
const presses = (from: string, at: string): Move => ({ at, from, body: '', digit: '1' });
const until = (at: string): Move => ({ at, from: null, body: '' });

export const night: readonly Scene[] = [
  {
    title: 'Two families at once: Wren has a G tube, Ode a combination tube. The first nurse sleeps on',
    moves: [
      says('Wren', '02:10', 'omg wrens g tube just came out 10 min ago what do i do'),
      says('Ode', '02:11', 'Odes gj tube came out about 20 minutes ago'),
      says('Wren', '02:11', 'no shes ok just upset'),
      says('Ode', '02:12', 'no'),
      says('Ode', '02:13', 'yes'),
      says('Wren', '02:13', 'yes thats right'),
      says('Wren', '02:14', 'the balloon popped'),
      says('Ode', '02:15', 'yes got the kit here'),
      says('Wren', '02:16', 'yes we have the kit'),
      says('Ode', '02:22', 'slid in fine'),
      says('Tariq', '02:24', 'take'),
    ],
  },
  {
    title: "Wren's temporary tube goes in, but not easily, and reads too high: once more in an hour",
    moves: [
      says('Wren', '02:26', 'its in but i had to push'),
      says('Wren', '02:27', 'no none of that'),
      says('Wren', '02:28', 'yes'),
      says('Wren', '02:30', 'got some cloudy stuff'),
      says('Wren', '02:31', 'looks like 6.5'),
      says('Ode', '03:29', 'yes we are here'),
      says('Wren', '03:33', 'no shes asleep'),
      says('Wren', '03:35', 'yep got some'),
      says('Wren', '03:36', '5.0 now'),
    ],
  },
  {
    title: 'The second reading is good, but only a nurse may clear a tube that was hard to get in',
    moves: [
      says('Tariq', '03:47', 'take <Wren>'),
      says('Tariq', '03:48', 'more <Wren>'),
      says('Tariq', '03:49', 'ask <Wren> how did she take the pushing, any pain now?'),
      says('Wren', '03:51', 'she cried a bit, calm now, belly soft'),
      says('Tariq', '03:52', 'call <Wren>'),
      presses('Tariq', '03:53'),
      says('Tariq', '03:59', 'clear <Wren>'),
      says('Tariq', '04:00', 'yes'),
      says('Wren', '04:07', 'all done, taped'),
    ],
  },
  {
    title: 'The morning: the first feed, and the handover to the day team',
    moves: [
      says('Wren', '07:20', 'yes she took it all, no trouble'),
      until('07:30'),
      says('the day team', '07:36', 'got it'),
    ],
  },
];
