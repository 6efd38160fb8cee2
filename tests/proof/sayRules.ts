/** The rules over single messages: permission, balloon water, the length, and what may be said in an emergency. */
import type { Say, SayKey } from '#machines/says.ts';
import { bandOf, nothingGoesIn, oneTryOnly, tractClass } from './bystander.ts';
import { hardlyFits } from './hearsWeight.ts';
import { missingForUse, restricted } from './mayUse.ts';
import type { Holds, Seen } from './verdict.ts';

/** In an emergency nothing else is said that could keep a family from the telephone. */
const inEmergency: ReadonlySet<SayKey> = new Set([
  'emergency',
  'emergencyStill',
  'emergencyCalled',
  'stopped',
  'help',
  'pageBegan',
  'pageTaken',
  'pagePassed',
  'pageUnanswered',
  'phoneJoined',
  'closedByNurse',
]);

const putsIn: ReadonlySet<SayKey> = new Set([
  'insertLayOut',
  'insertMeasure',
  'insertPutIn',
  'secondTry',
  'ownTubeSteps',
  'ownTubeAsHolderSteps',
]);

const lengths = {
  'under-3': [3, 4],
  '3': [4, 4],
  'over-3': [4, 6],
  unknown: [4, 4],
} as const;

export function sayRules(seen: Seen, holds: Holds): void {
  for (const say of seen.outputs.says) {
    permission(say, seen, holds);
    intoTheStoma(say, seen, holds);
    theLength(say, seen, holds);
    theFile(say, seen, holds);
    if (seen.heard.danger !== null) holds('S4', inEmergency.has(say.key), `${say.key} is said in an emergency`);
  }
}

/** S1, S2 and S5: to use a tube, or water for its balloon. */
function permission(say: Say, { after, event, setting }: Seen, holds: Holds): void {
  const uses = say.key === 'use' || say.key === 'useStill';
  const waters = say.key === 'secureSteps' || say.key === 'secureAgain';
  if (!uses && !waters) return;
  const missing = missingForUse(after, setting, event.at);
  holds(uses ? 'S1' : 'S5', missing === null, `${say.key} is said though ${missing}`);
  const why = restricted(after, setting, event.at);
  holds('S2', why === null, `${say.key} is said though the ${why} forbids it`);
  if (uses) {
    holds('S1', after.tube?.secured === true, `${say.key} is said before the tube was secured`);
    holds('S1', say.params.tube === after.tube?.which, `${say.key} speaks of another tube than the one that is in`);
    holds('S3', after.tube?.stopped === false, `${say.key} is said of a tube that was stopped`);
  }
  if (waters) {
    const most = Math.min(5, setting.clinical.balloonMostMl);
    holds('S5', say.params.balloonMostMl <= most, `${say.key} names more balloon water than ${most} mL`);
  }
}

/** S2 and S8: nothing is put in where nothing may be, or more often than it may. */
function intoTheStoma(say: Say, { before, heard: b, event, outputs, setting }: Seen, holds: Holds): void {
  if (!putsIn.has(say.key)) return;
  const { at } = event;
  const told = `${say.key} is said though`;
  holds('S2', !nothingGoesIn(b, setting, at), `${told} the tract is too young`);
  holds('S2', b.kind !== null && !b.fileOpen, `${told} the kind is not known`);
  holds('S2', b.children.length === 0 || b.which !== null, `${told} nobody knows which child it is`);
  holds('S2', b.kind !== 'j' && b.kind !== 'half-out' && b.kind !== 'nose', `${told} the kind is ${b.kind}`);
  holds('S2', b.inPlace === null, `${told} the tube never came out`);
  holds('S2', b.tract !== null, `${told} nobody asked for the tract`);
  holds('S2', b.signsSent, `${told} nobody asked for danger signs`);
  if (tractClass(b, setting, at) === 'nearly') {
    const paged = before.paged.includes('tract-nearly-too-young') || outputs.pages.includes('tract-nearly-too-young');
    holds('S2', paged, `${told} nobody was paged for a tract nearly too young`);
  }
  const allowed = oneTryOnly(b, setting, at) ? 1 : setting.clinical.insertionTries;
  holds('S8', b.triesFailed < allowed, `${told} ${b.triesFailed} tries failed of ${allowed}`);
  if (say.key === 'insertPutIn' || say.key === 'ownTubeSteps') {
    holds('S8', say.params.oneTry || b.triesFailed + 1 < allowed, `${told} it does not say that this is the last try`);
  }
  if (say.key === 'ownTubeSteps') {
    holds('S2', restricted(b, setting, at) === null, `${told} it may never be used`);
    holds('S1', b.ownTube === 'yes', `${told} the own tube is not known to be whole`);
  }
}

/** S5 and S2: the length only from the table, only once the weight is settled, only with a kit that may be used. */
function theLength(say: Say, { heard: b, event, setting }: Seen, holds: Holds): void {
  if (say.key !== 'insertMeasure' && say.key !== 'secondTry') return;
  const settled = b.weight !== null && b.bareWeight === null;
  holds('S5', settled, `${say.key} tells a length before the weight is settled`);
  const doubted = hardlyFits(b, setting, event.at) && !b.weightToldAgain;
  holds('S5', !doubted, `${say.key} tells a length for a weight that hardly fits the age and was told once`);
  const [low, high] = lengths[b.weight === null ? 'unknown' : bandOf(b.weight)];
  const { lowCm, highCm } = say.params;
  holds('S5', lowCm === low && highCm === high, `${say.key} tells ${lowCm}-${highCm} cm, not ${low}-${high} cm`);
  holds('S2', b.kit === 'yes', `${say.key} tells a length though the kit is ${b.kit ?? 'not asked for'}`);
}

/** S2: of several children the file of the one that was named is read back, with what was told beside it. */
function theFile(say: Say, { heard: b }: Seen, holds: Holds): void {
  if (say.key !== 'confirmFile' || b.children.length === 0) return;
  const { tubeKind, firstPlaced, weight } = say.params;
  const tract = b.tract === 'unknown' ? null : b.tract;
  const right = JSON.stringify([b.kind, tract, b.weight]) === JSON.stringify([tubeKind, firstPlaced, weight]);
  holds('S2', right && typeof b.which === 'number', "confirmFile reads back another child's file");
}
