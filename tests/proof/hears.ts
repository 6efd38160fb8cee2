/** What a bystander makes of an event: the answer to the open question, and facts told beside it, on the careful side. */
import type { ConversationEvent } from '#machines/dislodgement/conversationEvent.ts';
import { type Answers, inPlaceTroubles, type Sign } from '#machines/facts.ts';
import { type Bystander, feverIsDanger, justIn, type Setting, type TubeSeen } from './bystander.ts';
import { noneOfThem } from './hearsChildren.ts';
import { hearsTold } from './hearsTold.ts';
import { hearsWeightAnswer } from './hearsWeight.ts';
import { takesBack } from './takesBack.ts';

export type Grade = 'danger' | 'warning' | 'clarify' | 'nothing';
const alwaysDanger: ReadonlySet<Sign> = new Set([
  'breathing',
  'colour',
  'limp',
  'bleeding',
  'hard-belly',
  'severe-pain',
  'vomit',
]);

/** How grave a sign is now. */
export function gradeOf(sign: Sign, b: Bystander, setting: Setting, atMs: number): Grade {
  if (alwaysDanger.has(sign)) return 'danger';
  if (sign === 'fever') return feverIsDanger(b, setting, atMs) ? 'danger' : 'warning';
  if (b.tube !== null) return 'warning';
  return sign === 'leak' ? 'nothing' : 'clarify';
}

export const withTube = (b: Bystander, tube: Partial<TubeSeen>): Bystander =>
  b.tube === null ? b : { ...b, tube: { ...b.tube, ...tube } };

/** The tube is out again: all that was known of it is void, and there is one try. */
export function tubeOut(b: Bystander): Bystander {
  if (b.tube === null && b.kind !== 'half-out' && b.inPlace === null) return b;
  // All the way out, it is the tube it was.
  const kind = b.kind === 'half-out' ? b.halfOutOf : b.kind;
  const paged = b.paged.filter((reason) => !aboutTheTube.has(reason));
  // Nobody could see it whole while it was in.
  const ownTube = b.inPlace !== null && b.ownTube === 'yes' ? null : b.ownTube;
  const out = { kind, ownTube, halfOutOf: null, inPlace: null, tube: null, cameOutAtMs: null } as const;
  return { ...b, ...out, paged, outAgain: true, triesFailed: 0 };
}

/** Pages that were for the tube that is out now. */
const aboutTheTube: ReadonlySet<string> = new Set([
  'latex',
  'no-kit',
  'not-shown',
  'will-not-go-in',
  'hard-insertion',
  'no-strips',
  'no-contents',
  'second-high',
  'unread',
  'not-secured',
  'tube-problem',
  ...inPlaceTroubles,
]);

/** The bystander after an event, before anything is said to it. */
export function hears(b: Bystander, event: ConversationEvent, setting: Setting): Bystander {
  const heard = quieted(hearsMain(b, event, setting), event);
  return 'told' in event ? hearsTold(heard, event) : heard;
}

/** Any text ends the silence; anything but an unreadable one ends the row of unreadable ones. */
function quieted(b: Bystander, event: ConversationEvent): Bystander {
  const opened = { ...b, opened: true };
  if (!('person' in event)) return opened;
  const unreadable = event.type === 'unclear' && b.open !== null;
  return { ...opened, silencePaged: false, unread: unreadable ? b.unread + 1 : 0 };
}

function hearsMain(b: Bystander, event: ConversationEvent, setting: Setting): Bystander {
  if ('value' in event) return b.danger === null ? hearsAnswer(b, event, setting) : b;
  switch (event.type) {
    case 'signs':
      return hearsSigns(b, event, setting);
    case 'outAgain':
      // In an emergency only a tube that was in counts as out; a half-out one is the hospital's.
      return b.danger !== null && b.tube === null ? b : tubeOut(b);
    case 'tubeProblem':
      return withTube(b, { stopped: true });
    case 'cannotWait':
      return { ...b, cannotWait: true };
    case 'correct':
      return takesBack(b, event.key);
    case 'notWell':
      return { ...b, warning: true };
    case 'nurse.clear':
      return b.standing === 'hold' && b.standingReason === 'hard' ? withTube(b, { cleared: true }) : b;
    case 'nurse.goIn':
      return { ...b, sentIn: true, sign: b.danger === null ? null : b.sign };
    case 'nurse.close':
      return { ...b, over: true };
    default:
      return event.type.startsWith('xstate.after.') ? hearsTimer(b, event.type.slice('xstate.after.'.length)) : b;
  }
}

function hearsTimer(b: Bystander, id: string): Bystander {
  const timers = b.timers.filter((timer) => timer !== id);
  if (!id.startsWith('recheckAfter.')) return { ...b, timers };
  const anew = { recheck: 'due', well: false, contents: false, reading: null, fed: null, looks: null } as const;
  return { ...withTube(b, anew), timers };
}

type Signs = Extract<ConversationEvent, { readonly type: 'signs' }>;

/** The gravest sure sign decides; only where none is grave does a doubtful one wait to be made clear. */
function hearsSigns(b: Bystander, { sure, near, at }: Signs, setting: Setting): Bystander {
  const grades = sure.map((sign) => gradeOf(sign, b, setting, at));
  if (grades.includes('danger')) return { ...b, danger: 'named', sign: null };
  if (grades.includes('warning')) return { ...b, warning: true, sign: null };
  const doubtful = [...near, ...sure].find((sign) => gradeOf(sign, b, setting, at) !== 'nothing');
  return { ...b, sign: doubtful ?? b.sign };
}

type Answer = Extract<ConversationEvent, { readonly value: unknown }>;

function hearsAnswer(b: Bystander, event: Answer, setting: Setting): Bystander {
  // An answer counts only for the question that is open.
  if (event.type !== `answer.${b.open}`) return b;
  switch (event.type) {
    case 'answer.unwell':
      return hearsUnwell(b, event.value, setting, event.at);
    case 'answer.who':
      return event.value === 'joins' ? { ...b, over: true } : b;
    case 'answer.which-child':
      return noneOfThem(b);
    case 'answer.confirm':
      return { ...b, fileOpen: false, ...(event.value === 'no' && { kind: null, tract: null, weight: null }) };
    case 'answer.tube-kind':
      return { ...b, kind: event.value, halfOutOf: null };
    case 'answer.first-placed':
      return { ...b, tract: event.value };
    case 'answer.own-tube':
      return hearsOwnTube(b, event.value);
    case 'answer.own-tube-in':
      return hearsInserted(b, 'own', event.value);
    case 'answer.tube-in':
      return hearsInserted(b, 'temporary', event.value);
    case 'answer.kit':
      return { ...b, kit: event.value };
    case 'answer.weight':
      return hearsWeightAnswer(b, event.value);
    case 'answer.came-out':
      return event.value === 'unknown' && b.clarifying !== 'last-seen' ? b : { ...b, cameOutAtMs: event.value };
    default:
      return hearsPlacement(b, event);
  }
}

/** A long inside part was a GJ all along; asked again with the own tube in, the answer is about that tube. */
function hearsOwnTube(b: Bystander, ownTube: Answers['own-tube']): Bystander {
  const next: Bystander = { ...b, ownTube, kind: ownTube === 'long-inside' ? 'gj' : b.kind };
  if (b.tube?.which !== 'own') return next;
  return withTube(next, { whole: ownTube === 'yes', holderOnly: b.tube.holderOnly || ownTube === 'burst' });
}

function hearsUnwell(b: Bystander, value: 'yes' | 'no', setting: Setting, atMs: number): Bystander {
  // Something wrong is no danger yet: the list is asked again.
  if (b.clarifying === 'trouble') return b;
  // No to one sign does not answer the list.
  if (value === 'no') return b.clarifying === 'sign' ? { ...b, sign: null } : { ...b, unwell: 'well' };
  // A yes to the list while a sign waits to be made clear names that sign.
  const named = b.sign !== null;
  if (b.clarifying === 'sign' && b.sign !== null && gradeOf(b.sign, b, setting, atMs) === 'warning')
    return { ...b, warning: true };
  return { ...b, danger: named ? 'named' : 'plain' };
}

function hearsInserted(b: Bystander, which: 'own' | 'temporary', value: Answers['tube-in']): Bystander {
  if (value === 'no') return { ...b, tube: null, triesFailed: b.triesFailed + 1 };
  if (b.tube !== null) return value === 'in' ? b : withTube(b, { how: value });
  return { ...b, tube: justIn(which, value === 'in' ? null : value, b.ownTube) };
}

function hearsPlacement(b: Bystander, event: Answer): Bystander {
  switch (event.type) {
    case 'answer.after-in':
      return event.value === 'yes' ? { ...b, warning: true } : withTube(b, { well: true });
    case 'answer.strips':
      return { ...b, strips: event.value };
    case 'answer.contents':
      return withTube(b, { contents: event.value === 'yes' });
    case 'answer.ph': {
      const { low, high } = event.value;
      return low >= 0 && low <= high && high <= 14 ? withTube(b, { reading: event.value, fed: null, looks: null }) : b;
    }
    case 'answer.fed-lately':
      return withTube(b, { fed: event.value });
    case 'answer.looks':
      return withTube(b, { looks: event.value });
    case 'answer.secured':
      return withTube(b, { secured: event.value === 'yes' });
    default:
      return b;
  }
}
