/** What a bystander makes of what the line does: which question is open, what stands, who was called, what is timed. */
import type { ConversationEvent } from '#machines/dislodgement/conversationEvent.ts';
import type { Disposition, QuestionKey } from '#machines/facts.ts';
import type { Say, SayKey } from '#machines/says.ts';
import type { Bystander } from './bystander.ts';
import { givesUp } from './givesUp.ts';
import type { Outputs } from './outputs.ts';

/** The question each message asks. */
const asks: Partial<Record<SayKey, QuestionKey>> = {
  opening: 'unwell',
  openingTubeIn: 'unwell',
  askUnwell: 'unwell',
  clarifySign: 'unwell',
  askTrouble: 'unwell',
  askWho: 'who',
  askWhichChild: 'which-child',
  confirmFile: 'confirm',
  askTubeKind: 'tube-kind',
  askTubeKindByLook: 'tube-kind',
  askFirstPlaced: 'first-placed',
  askOwnTube: 'own-tube',
  askOwnTubeIn: 'own-tube',
  ownTubeSteps: 'own-tube-in',
  ownTubeAsHolderSteps: 'own-tube-in',
  askKit: 'kit',
  askWeight: 'weight',
  askWeightUnit: 'weight',
  askWeightAgain: 'weight',
  insertPutIn: 'tube-in',
  secondTry: 'tube-in',
  askTubeIn: 'tube-in',
  askCameOut: 'came-out',
  askLastSeenIn: 'came-out',
  askAfterIn: 'after-in',
  askStrips: 'strips',
  askContents: 'contents',
  askPh: 'ph',
  askFedLately: 'fed-lately',
  askLooks: 'looks',
  secureSteps: 'secured',
  secureAgain: 'secured',
};

/** Where the case stands once a message was read. */
const stands: Partial<Record<SayKey, Disposition>> = {
  emergency: 'emergency',
  emergencyStill: 'emergency',
  emergencyCalled: 'emergency',
  goIn: 'go-in',
  goInStill: 'go-in',
  hold: 'hold',
  holdStill: 'hold',
  leaveInStill: 'hold',
  nurse: 'nurse',
  nurseStill: 'nurse',
  recheckWait: 'recheck',
  recheckStill: 'recheck',
};

/** The bystander once it is said that an answer was given up on, before anything else is. */
export function seesGivenUp(heard: Bystander, event: ConversationEvent, { says }: Outputs): Bystander {
  const given = 'person' in event && says.some(({ preface }) => preface.some(({ key }) => key === 'goesToNurse'));
  return given ? { ...givesUp(heard), unread: 0 } : heard;
}

/** The bystander after a step. */
export function sees(heard: Bystander, event: ConversationEvent, outputs: Outputs): Bystander {
  const said = outputs.says.reduce(reads, heard);
  const paged = withAll(said.paged, outputs.pages);
  return {
    ...said,
    paged,
    silencePaged: said.silencePaged || (outputs.pages.includes('silence') && event.type.startsWith('xstate.after.')),
    aftercare: outputs.aftercare === null ? said.aftercare : outputs.aftercare === 'ended' ? null : outputs.aftercare,
    timers: timersAfter(said.timers, outputs),
    unread: said.open === heard.open ? said.unread : 0,
  };
}

function withAll(known: readonly string[], more: readonly string[]): readonly string[] {
  return more.every((one) => known.includes(one)) ? known : [...new Set([...known, ...more])].sort();
}

function timersAfter(running: readonly string[], { timers }: Outputs): readonly string[] {
  if (timers.length === 0) return running;
  const next = new Set(running);
  for (const { id, start } of timers) {
    if (start === null) next.delete(shortId(id));
    else next.add(shortId(id));
  }
  return [...next].sort();
}

/** `xstate.after.quiet.dislodgement.x` without what all ids share. */
export const shortId = (id: string): string => id.replace(/^xstate\.after\./, '');

function reads(b: Bystander, say: Say): Bystander {
  if (say.key === 'closedByNurse') return { ...b, over: true, open: null };
  if (say.key === 'use' || say.key === 'useStill') {
    return rests(b, say.params.tube === 'own' ? 'own-tube' : 'use', null);
  }
  const disposition = stands[say.key];
  if (disposition !== undefined) return rests(b, disposition, reasonOf(say));
  const open = say.key === 'askHowIn' ? howQuestion(b) : asks[say.key];
  return open === undefined ? b : asked(b, open, say);
}

function reasonOf(say: Say): string | null {
  return say.key === 'goIn' || say.key === 'hold' ? say.params.reason : null;
}

/** A message that only says "still" keeps the reason of the last one that gave any. */
function rests(b: Bystander, standing: Disposition, reason: string | null): Bystander {
  const standingReason = reason ?? b.standingReason;
  const waiting = standing === 'recheck';
  const heldHard = standing === 'hold' && standingReason === 'hard';
  const tube =
    b.tube === null
      ? null
      : { ...b.tube, ...(waiting && { recheck: 'waiting' as const }), ...(heldHard && { heldHard }) };
  return { ...b, tube, standing, standingReason, open: null, clarifying: null, sign: null };
}

function howQuestion({ tube }: Bystander): QuestionKey {
  return tube?.which === 'temporary' ? 'tube-in' : 'own-tube-in';
}

function asked(b: Bystander, open: QuestionKey, say: Say): Bystander {
  const sign = say.key === 'clarifySign' ? say.params.sign : b.sign;
  // A question about one sign, or whether anything is wrong, leaves standing what stood.
  const standing = say.key === 'clarifySign' || say.key === 'askTrouble' ? b.standing : null;
  const signsSent = b.signsSent || say.key === 'opening' || say.key === 'openingTubeIn' || say.key === 'askUnwell';
  return { ...shown(b, say), open, sign, clarifying: clarifyingOf(b, say), standing, signsSent };
}

/** What is read back from the file is what a yes confirms. */
function shown(b: Bystander, say: Say): Bystander {
  if (say.key !== 'confirmFile') return b;
  const { tubeKind: kind, firstPlaced: tract, weight } = say.params;
  return { ...b, kind, tract, weight };
}

function clarifyingOf(b: Bystander, say: Say): Bystander['clarifying'] {
  if (say.key === 'clarifySign') return 'sign';
  if (say.key === 'askTrouble') return 'trouble';
  if (say.key === 'askWeightUnit') return 'unit';
  if (say.key === 'askWeightAgain') return 'doubt';
  if (say.key === 'askLastSeenIn') return 'last-seen';
  return say.key === 'askHowIn' && b.tube !== null ? 'how' : null;
}
