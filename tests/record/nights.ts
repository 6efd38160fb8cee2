/** Invented nights on a practice line of their own, each ending another way, for the record to be read from. */
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pino } from 'pino';
import { type App, openPractice } from '#src/app.ts';
import { dataAddress } from '#src/carrier/practice.ts';
import { recordCommand } from '#src/record/command.ts';
import { copyEmpty } from '#tests/store/empty.ts';

const silent = pino({ enabled: false });

/** A text, minutes that go by, a nurse's text, or what came with a text of the family: addresses, as a carrier gives them. */
type Move =
  | string
  | number
  | { readonly nurse: string }
  | { readonly words: string; readonly media: readonly string[] };

export interface Night {
  readonly name: string;
  readonly from: string;
  readonly moves: readonly Move[];
}

/** What the picture is must be found in no record. */
export const secret = Buffer.from('a picture that nobody sees').toString('base64');
const photo = dataAddress({ type: 'image/jpeg', base64: secret });
const voice = dataAddress({ type: 'audio/amr', base64: secret });
export const nowhere = 'https://carrier.example/gone';

const imke = (nurse: string) => ({ nurse });
const wren = '+12125550101';
const ode = '+12125550102';

const toStrip = ['no', 'yes', 'it burst', 'yes', 2, 'its in, easy', 1, 'no', 'yes', 3, 'yes'];
const stranger = ['g tube came out 5 min ago', 1, 'no', '2 years ago', 'no', 'yes', '7 kg', 4];

/** In the order of their case numbers. */
export const nights: readonly Night[] = [
  { name: 'use', from: wren, moves: ['g tube came out 10 min ago', 1, ...toStrip, '5', 2, 'done', 200, 'yes'] },
  { name: 'go-in', from: ode, moves: ['gj tube came out 20 min ago', 'no', 'yes', 'yes', 'in easy', 8, imke('take')] },
  {
    name: 'hold, cleared',
    from: '+12025550177',
    moves: [
      ...stranger,
      'had to push',
      2,
      'no',
      'yes',
      'yes',
      '5',
      7,
      imke('take'),
      3,
      imke('clear'),
      imke('yes'),
      4,
      'done',
    ],
  },
  {
    name: 'emergency',
    from: '+12025550178',
    moves: [...stranger, 'he is blue and cannot breathe', 2, imke('take'), 5, imke('wrong A04 it asked too much')],
  },
  {
    name: 'recheck',
    from: '+12025550179',
    moves: [...stranger, 'in easy', 1, 'no', 'yes', 'yes', '6.5-7', 1, 'no', 60, 'no', 'yes', '7', 30],
  },
  {
    name: 'own tube',
    from: '+12025550180',
    moves: [
      { words: 'hello', media: [photo] },
      1,
      'g tube came out 5 min ago',
      'no',
      '2 years ago',
      'yes it looks fine',
      2,
      'easy',
      'no',
      'yes',
      'yes',
      { words: '', media: [photo, nowhere] },
      1,
      { words: '4.5', media: [voice] },
      'done',
    ],
  },
];

const nurseNumber = '+12125550151';

export interface Kept {
  readonly folder: string;
  /** Runs a record command on the nights' database; what it printed. */
  record(...words: string[]): Promise<string>;
  /** The same on another folder. */
  recordIn(data: string, ...words: string[]): Promise<string>;
  remove(): Promise<void>;
}

/** Plays the nights on a line in a folder of its own, stops it, and hands the folder over. */
export async function keepNights(): Promise<Kept> {
  const root = await mkdtemp(join(tmpdir(), 'nightjar-record-'));
  await cp('seeds', join(root, 'seeds'), { recursive: true });
  const folder = join(root, 'data');
  await copyEmpty(folder);
  const app = await openPractice(
    { port: 0, databaseUrl: null, dataFolder: folder, seedsFolder: join(root, 'seeds') },
    silent,
  );
  await app.line.advance(Date.parse('2027-03-06T02:10:00-05:00'), 'begin').catch(() => undefined);
  for (const night of nights) await play(app, night);
  await app.stop();
  const recordIn = async (data: string, ...words: string[]) => {
    const printed: string[] = [];
    await recordCommand([...words, '--data', data], {}, silent, (text) => printed.push(text));
    return printed.join('\n');
  };
  return {
    folder,
    record: (...words) => recordIn(folder, ...words),
    recordIn,
    remove: () => rm(root, { recursive: true, force: true }),
  };
}

let texts = 0;

async function play({ line }: App, { from, moves }: Night): Promise<void> {
  for (const move of moves) {
    texts += 1;
    const cause = `cause ${texts}`;
    if (typeof move === 'number') await line.advance((await line.now()) + move * 60_000, cause);
    else {
      await line.hear({ ...textOf(from, move), id: `text ${texts}`, cause });
      await line.settle(cause);
    }
  }
}

function textOf(from: string, move: Exclude<Move, number>) {
  if (typeof move === 'string') return { from, body: move };
  return 'nurse' in move ? { from: nurseNumber, body: move.nurse } : { from, body: move.words, media: move.media };
}
