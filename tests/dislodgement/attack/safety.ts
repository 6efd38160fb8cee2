/**
 * The safety rules once more, as checks of one step: what the family was told and who was called, against what it has
 * told. Written without the machines' own rules. Sources of the numbers: the settings' own, restated here as values.
 */
import type { Effect } from '#machines/effects.ts';
import type { PageReason, QuestionKey } from '#machines/facts.ts';
import type { Say, SayKey } from '#machines/says.ts';
import type { Night } from '../night.ts';
import type { Happening } from './alphabet.ts';
import { dangers, type Ledger, type Read } from './ledger.ts';

/** What the rules look at of a night, simulated or told by a line's own record. */
export type NightSeen = Pick<Night, 'nowMs' | 'view' | 'timers' | 'all' | 'saidEver'>;

/** One step of a walk. `before` is what the line asked and said last before it. */
export interface Step {
  readonly happening: Happening;
  readonly asked: QuestionKey | null;
  readonly clarified: boolean;
  readonly night: NightSeen;
  readonly ledger: Ledger;
  readonly effects: readonly Effect[];
}

/** True where the rule holds. */
type Rule = (step: Step) => boolean;

const minuteMs = 60_000;
const dayMs = 86_400_000;
const tractUsableAfterDays = 56;
const noInsertionUnderDays = 14;
const phLimit = 6;
const phAfterFeed = 7;
const stripStep = 0.5;
const stripTop = 9;
const recheckMinutes = 60;

/** Writes the site's day as `yyyy-mm-dd`. */
const calendar = new Intl.DateTimeFormat('en-CA', { timeZone: 'America/New_York' });

const permission: readonly SayKey[] = ['use', 'useStill'];
const balloon: readonly SayKey[] = ['secureSteps', 'secureAgain'];
const temporaryIn: readonly SayKey[] = ['insertLayOut', 'insertMeasure', 'insertPutIn', 'secondTry'];
const ownIn: readonly SayKey[] = ['ownTubeSteps', 'ownTubeAsHolderSteps'];

const says = (step: Step): Say[] => step.effects.flatMap((effect) => (effect.type === 'say' ? [effect.say] : []));
const saysAny = (step: Step, keys: readonly SayKey[]) => says(step).some(({ key }) => keys.includes(key));
const calls = (effects: readonly Effect[]) =>
  effects.flatMap((effect) => (effect.type === 'callNurse' ? [effect] : []));

/** Whole days since the latest day the first tube may have been placed; null where nobody knows. */
function tractDays({ night, ledger }: Step): number | null {
  const { firstPlaced } = ledger;
  if (firstPlaced === null || firstPlaced === 'unknown') return null;
  const today = calendar.format(night.nowMs);
  return (Date.parse(today) - Date.parse(firstPlaced.latest)) / dayMs;
}

function tractUsable(step: Step): boolean {
  const days = tractDays(step);
  return days !== null && days > tractUsableAfterDays;
}

/** The step of the strip at or above the upper end. */
const stepUp = ({ high }: Read) => Math.ceil(high / stripStep - 1e-9) * stripStep;
const low = (read: Read) => stepUp(read) < Math.min(phLimit, stripTop);

/** Good, or good enough after a feed; after a high one the next is an hour later and good; two high ones never allow. */
function readingsAllow({ readings, fed, looks, hard }: Ledger): boolean {
  const last = readings.at(-1);
  if (last === undefined) return false;
  const high = readings.filter((read) => !low(read));
  const [first] = high;
  if (first === undefined) return true;
  if (high.length === 1 && first === last) return stepUp(last) <= phAfterFeed && fed && looks && !hard;
  return high.length === 1 && low(last) && last.atMs - first.atMs >= recheckMinutes * minuteMs;
}

const warningPages: ReadonlySet<PageReason> = new Set(['warning-sign', 'not-well-after', 'danger-sign']);

/** Every reason a nurse was called for, or told of once she had it. */
function reasonsTold(effects: readonly Effect[]): PageReason[] {
  const told = effects.flatMap((effect) => (effect.type === 'tellNurse' ? [effect.reason] : []));
  return [...calls(effects).flatMap(({ reasons }) => reasons), ...told];
}

/** A climb at the highest level is under way: a further reason is added to what it says from then on. */
function climbsAtEmergency({ all, view }: NightSeen): boolean {
  const climbs = view.states.paging.some((id) => id.startsWith('paging.climbing'));
  return climbs && calls(all).at(-1)?.level === 'emergency';
}

const isText = ({ happening }: Step) => happening.type === 'text';

function heardDanger({ happening, asked, clarified }: Step): boolean {
  if (happening.type !== 'text') return false;
  const { event } = happening;
  if (event.type === 'signs') return event.sure.some((sign) => dangers.has(sign));
  return asked === 'unwell' && !clarified && event.type === 'answer.unwell' && event.value === 'yes';
}

/** Every rule by its name; S1 to S9 are the proof's. */
export const rules: Readonly<Record<string, Rule>> = {
  'S1 kind known as G': (step) => !saysAny(step, permission) || (step.ledger.kind === 'g' && !step.ledger.halfOut),
  'S1 tract known and old enough': (step) => !saysAny(step, permission) || tractUsable(step),
  'S1 no danger, no warning, danger signs answered': (step) => {
    const { warning, dangerNamed, dangerSaid, unwell } = step.ledger;
    return !saysAny(step, permission) || (!warning && !dangerNamed && !dangerSaid && unwell === 'no');
  },
  'S1 a tube is in and the child was asked about': (step) =>
    !saysAny(step, permission) || (step.ledger.tube !== null && step.ledger.askedAfterIn),
  'S1 a reading that passed': (step) => !saysAny(step, permission) || readingsAllow(step.ledger),
  'S1 secured': (step) => !saysAny(step, permission) || step.ledger.secured,
  'S1 hard only with a clearance': (step) => !saysAny(step, permission) || !step.ledger.hard || step.ledger.cleared,
  'S1 a burst tube is never used': (step) =>
    !saysAny(step, [...permission, ...balloon]) || step.ledger.tube !== 'own' || step.ledger.ownTube !== 'burst',
  'S1 no problem while filling or flushing': (step) => !saysAny(step, permission) || !step.ledger.problem,
  'S9 who was sent in by a nurse is never allowed a tube, nor water for its balloon': (step) =>
    !step.ledger.sentIn || !saysAny(step, [...permission, ...balloon]),
  'S9 whom a nurse sends in goes in': ({ happening, ledger, night }) =>
    happening.type !== 'sendIn' ||
    !ledger.sentIn ||
    night.view.disposition === 'go-in' ||
    night.view.disposition === 'emergency',
  'S2 too young, J, half out: nothing goes in': (step) => {
    const days = tractDays(step);
    const young = days !== null && days < noInsertionUnderDays;
    const { kind, halfOut } = step.ledger;
    return !saysAny(step, [...temporaryIn, ...ownIn]) || !(young || kind === 'j' || halfOut);
  },
  'S2 latex: no length without a tube known to be free of it': (step) => {
    const { latex, kit, kitKnowsLatex } = step.ledger;
    return !saysAny(step, temporaryIn) || !latex || (kit === 'yes' && kitKnowsLatex);
  },
  'S2 not shown how: nothing goes in': (step) =>
    !saysAny(step, [...temporaryIn, 'ownTubeAsHolderSteps']) || step.ledger.kit !== 'not-shown',
  'S2 only a G tube goes back': (step) => !saysAny(step, ownIn) || (step.ledger.kind === 'g' && tractUsable(step)),
  'S3 no strips, no balloon': (step) => !saysAny(step, balloon) || step.ledger.strips,
  'S4 a danger sign is answered by the emergency first': (step) =>
    !heardDanger(step) || says(step)[0]?.key === 'emergency',
  'S4 a doubtful danger sign is asked about at once': (step) => {
    const { happening, night } = step;
    if (happening.type !== 'text' || happening.event.type !== 'signs') return true;
    if (!happening.event.near.some((sign) => dangers.has(sign))) return true;
    const first = says(step)[0]?.key;
    const grave = night.view.disposition === 'emergency';
    return grave || first === 'clarifySign' || first === 'opening' || first === 'openingTubeIn';
  },
  'S4 a danger sign calls a nurse at emergency level': (step) =>
    !heardDanger(step) ||
    calls(step.effects).some(({ level, reasons }) => level === 'emergency' && reasons.includes('danger-sign')),
  'S4 a warning has a page at emergency level': (step) =>
    !step.ledger.warning ||
    !isText(step) ||
    reasonsTold(step.night.all).some((reason) => warningPages.has(reason)) ||
    climbsAtEmergency(step.night),
  'S5 balloon water only where the tube may be used': (step) => {
    const { kind, warning, dangerNamed, dangerSaid, unwell } = step.ledger;
    const never = kind !== 'g' || warning || dangerNamed || dangerSaid || unwell !== 'no' || !tractUsable(step);
    return !saysAny(step, balloon) || (!never && readingsAllow(step.ledger));
  },
  'S5 a length only from the table, and once the weight is settled': (step) =>
    says(step).every(
      (say) =>
        (say.key !== 'insertMeasure' && say.key !== 'secondTry') ||
        (step.ledger.weightSettled && ['3-4', '4-4', '4-6'].includes(`${say.params.lowCm}-${say.params.highCm}`)),
    ),
  'S6 going in, holding and a person have a page': (step) => {
    const { disposition } = step.night.view;
    if (disposition !== 'go-in' && disposition !== 'hold' && disposition !== 'nurse') return true;
    const called = calls(step.night.all);
    return called.some(({ level }) => level !== 'routine') || (step.ledger.sentIn && called.length > 0);
  },
  'S6 a recheck has exactly one timer': (step) => {
    const { disposition, asking, closed } = step.night.view;
    if (disposition !== 'recheck' || asking !== null || closed) return true;
    return step.night.timers.filter(({ event }) => event.startsWith('xstate.after.recheckAfter.')).length === 1;
  },
  'S6 a tube in use is followed': (step) => {
    const { disposition, asking, closed } = step.night.view;
    if ((disposition !== 'use' && disposition !== 'own-tube') || asking !== null || closed) return true;
    const over = step.night.view.states.aftercare.includes('aftercare.closed');
    return over || step.night.timers.some(({ machine }) => machine === 'aftercare');
  },
  'S7 something is always due': (step) => step.night.view.closed || step.night.timers.length > 0,
  'S9 stop calls a nurse': ({ happening, night }) =>
    happening.type !== 'text' ||
    happening.event.type !== 'stop' ||
    night.view.states.paging.some((id) => id.startsWith('paging.climbing') || id === 'paging.taken.asked'),
  'every text is answered': (step) => !isText(step) || says(step).length > 0,
  'a lesson comes before the question how it went': ({ night }) => {
    const { asking, tubeIn } = night.view;
    if (tubeIn !== null) return true;
    if (asking === 'tube-in') return night.saidEver.some((key) => temporaryIn.includes(key));
    return asking !== 'own-tube-in' || night.saidEver.some((key) => ownIn.includes(key));
  },
};
