/** S11: how many texts a family sends before the length, and whether every question before it changes something. */
import type { Told } from '#machines/facts.ts';
import { answersAt } from './alphabet.ts';
import { daysAgo } from './answers.ts';
import { atTheStart, type Bystander, type Setting } from './bystander.ts';
import { hears } from './hears.ts';
import { type Move, tells } from './moves.ts';
import type { Line, Outputs, Snapshot } from './outputs.ts';
import { sees } from './sees.ts';

import { type World, walkAtMs } from './worlds.ts';

export interface Ways {
  /** Most texts before the length, over every plain way to it. */
  readonly mostTexts: number;
  readonly ways: number;
  readonly questions: number;
  readonly broken: readonly string[];
}

/** A first text that says it all: kind, when placed, when it came out, the weight, no own tube, a kit. */
export const everything: Told = {
  tubeKind: 'g',
  firstPlaced: daysAgo(500, walkAtMs),
  weight: { kg: 7 },
  cameOutAtMs: walkAtMs - 1_200_000,
  ownTube: 'no',
  kit: 'yes',
};

/** What lies ahead of a question: the most texts to the length, and a name that two futures share only if they are the same. */
interface Ahead {
  readonly most: number | null;
  readonly ways: number;
  readonly name: string;
}

/** Follows every answer of a family that answers what is asked, readably, up to the length or a rest. */
export function waysToTheLength(world: World, line: Line, first: Told): Ways {
  const { protocol, file } = world;
  const setting: Setting = { clinical: protocol.clinical, timeZone: protocol.site.timeZone };
  const broken = new Set<string>();
  let questions = 0;

  const after = (snapshot: Snapshot, b: Bystander, move: Move, texts: number): Ahead => {
    const event = { ...move.event, at: walkAtMs, clinicOpen: false };
    const step = line.step(snapshot, event);
    const seen = sees(hears(b, event, setting), event, step.outputs);
    const said = JSON.stringify(step.outputs.says.map(({ key, params }) => [key, params]));
    if (tellsLength(step.outputs)) return { most: texts, ways: 1, name: said };
    if (seen.open === null) return { most: null, ways: 0, name: said };
    // A question that only makes another one clear does not count.
    const ahead = from(step.snapshot, seen, texts + (seen.clarifying === null ? 1 : 0));
    return { ...ahead, name: `${said}${ahead.name}` };
  };

  const from = (snapshot: Snapshot, b: Bystander, texts: number): Ahead => {
    questions += 1;
    const answers = answersAt(b, protocol.clinical, walkAtMs).filter(
      (move) => (move.event.type === `answer.${b.open}` || namesChild(move)) && !refusesFile(move),
    );
    const futures = answers.filter((move) => !isNoWeight(move)).map((move) => after(snapshot, b, move, texts));
    if (b.open !== 'confirm' && new Set(futures.map(({ name }) => name)).size < 2)
      broken.add(`${b.open} is asked and changes nothing`);
    const most = Math.max(-1, ...futures.map((ahead) => ahead.most ?? -1));
    return {
      most: most < 0 ? null : most,
      ways: futures.reduce((sum, ahead) => sum + ahead.ways, 0),
      name: `{${futures.map(({ name }) => name).join()}}`,
    };
  };

  const ahead = after(line.begin(world), atTheStart(file), tells(first), 1);
  return { mostTexts: ahead.most ?? 0, ways: ahead.ways, questions, broken: [...broken] };
}

/** A family whose file is wrong, or none of whose files it is, is asked afresh, like a stranger. */
const refusesFile = ({ event }: Move): boolean =>
  event.type === 'answer.which-child' || (event.type === 'answer.confirm' && event.value === 'no');

/** Among the answers, a child is named as a fact. */
const namesChild = ({ event }: Move): boolean => event.type === 'told' && event.told.children !== undefined;

/** A weight no child has is asked again. */
const isNoWeight = ({ event }: Move): boolean =>
  event.type === 'answer.weight' && typeof event.value === 'object' && 'kg' in event.value && event.value.kg > 200;

const tellsLength = ({ says }: Outputs) => says.some(({ key }) => key === 'insertMeasure' || key === 'ownTubeSteps');
