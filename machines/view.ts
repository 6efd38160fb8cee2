/** What the shell, the practice page and the nurse may know of a case, read off its machines. */
import type { CaseStates, CaseView, PublicFacts } from './case.ts';
import type { Context } from './dislodgement/context.ts';
import { inside } from './dislodgement/gates.ts';
import type { Meta } from './dislodgement/kit.ts';
import { toldSoFar } from './dislodgement/sameChild.ts';
import type { QuestionKey } from './facts.ts';
import { weightBand } from './rules/weight.ts';
import type { Running } from './running.ts';

interface WithMeta {
  getMeta(): Record<string, Meta | undefined>;
}

/** Of the states a machine is in, one at most asks. */
function metaOf(snapshot: WithMeta): Meta | undefined {
  return Object.values(snapshot.getMeta())[0];
}

/** The open question of one machine. */
export function askingOf(snapshot: WithMeta): QuestionKey | null {
  return metaOf(snapshot)?.asking ?? null;
}

/** A case is over when a nurse closed it, or when all that was to follow has, and nobody is being called. */
export function isOver(running: Running): boolean {
  if (running.conversation.status === 'done') return true;
  if (running.aftercareIsIdle) return false;
  return running.aftercare.matches('closed') && !running.paging.hasTag('calls');
}

/** The question of aftercare, where it asks one. */
export function aftercareAsks(running: Running): QuestionKey | null {
  return running.aftercareIsIdle ? null : askingOf(running.aftercare);
}

export function viewOf(running: Running): CaseView {
  const { conversation } = running;
  const { context } = conversation;
  const open = metaOf(conversation);
  const afterwards = open === undefined ? aftercareAsks(running) : null;
  return {
    asking: open?.asking ?? afterwards,
    child: childOf(context),
    clarifying: open?.clarifying ?? null,
    bareWeight: context.facts.bareWeight,
    answered: context.unclear === null && afterwards === null ? context.answered : null,
    disposition: context.disposition,
    facts: publicFacts(context),
    tubeIn: context.placed?.tube ?? null,
    inside: inside(context),
    cannotWait: context.facts.cannotWait,
    dangerSigns: context.danger?.named ?? [],
    warningSigns: context.warningSigns ?? [],
    placedAtMs: context.placed?.atMs ?? null,
    cleared: context.placed?.cleared ?? false,
    failedTries: context.failedTries,
    fedLately: context.placed?.fedLately ?? null,
    latexAllergy: context.facts.latexAllergy,
    clearable: context.outcome?.to === 'hold' && context.outcome.reason === 'hard',
    closed: isOver(running),
    get told() {
      return toldSoFar(context.facts);
    },
    // Few ask for these, and they revive every machine.
    get temporarySinceMs() {
      if (running.aftercareIsIdle) return null;
      const { tube, beganAtMs } = running.aftercare.context;
      return tube === 'temporary' ? beganAtMs : null;
    },
    get takenBy() {
      return running.paging.context.takenBy;
    },
    get states() {
      return statesOf(running);
    },
  };
}

function statesOf({ conversation, paging, aftercare }: Running): CaseStates {
  return { conversation: idsOf(conversation), paging: idsOf(paging), aftercare: idsOf(aftercare) };
}

function idsOf(snapshot: { readonly _nodes: readonly { readonly id: string }[] }): string[] {
  return snapshot._nodes.map((node) => node.id);
}

/** The facts as the public interface names them; what is not known is absent. */
function publicFacts({ facts, placed }: Context): PublicFacts {
  const { tubeKind, halfOutOf, firstPlaced, weight, cameOutAtMs } = facts;
  return {
    ...(tubeKind !== null && { tubeKind }),
    ...(halfOutOf !== null && { halfOutOf }),
    ...(firstPlaced !== null && firstPlaced !== 'unknown' && { firstPlaced }),
    ...(weight !== null && weight !== 'unknown' && 'kg' in weight && { weightKg: weight.kg }),
    ...knownBand(weight),
    ...(placed?.reading != null && { ph: placed.reading.high }),
    ...(typeof cameOutAtMs === 'number' && { cameOutAt: new Date(cameOutAtMs).toISOString() }),
    ...(placed?.how != null && { insertedHow: placed.how }),
  };
}

function knownBand(weight: Context['facts']['weight']): Pick<PublicFacts, 'weightBand'> {
  const band = weightBand(weight);
  return band === 'unknown' ? {} : { weightBand: band };
}

/** Which child it is, and `none` where it is not the only one on file. */
function childOf({ children }: Context): CaseView['child'] {
  if (children === null) return null;
  return children.is === 'none' && children.files.length > 0 ? null : children.is;
}
