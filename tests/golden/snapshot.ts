/** One golden snapshot: a case as a release saved it, and what must still happen when it goes on. */
import { z } from 'zod';
import type { CaseSignal } from '#machines/case.ts';
import { type Played, Replay, type Waiting } from '#src/protocol/replay.ts';
import { protocolWith, startMs } from '#tests/dislodgement/night.ts';
import { type Place, signalOf } from './places.ts';

const minuteMs = 60_000;

const outcome = z.strictObject({
  asking: z.string().nullable(),
  disposition: z.string().nullable(),
  said: z.array(z.string()),
  called: z.array(z.string()),
  /** What waits then, and how many minutes on. */
  waiting: z.array(z.string()),
});
export type Outcome = z.infer<typeof outcome>;

export const goldenShape = z.strictObject({
  nowMs: z.number(),
  snapshots: z.strictObject({ conversation: z.unknown(), paging: z.unknown(), aftercare: z.unknown() }),
  waiting: z.array(z.custom<Waiting>((value) => z.looseObject({ dueMs: z.number() }).safeParse(value).success)),
  answer: z.custom<CaseSignal>((value) => z.looseObject({ machine: z.string() }).safeParse(value).success),
  /** Null where no timer waits. */
  next: z.strictObject({ byAnswer: outcome, byTimer: outcome.nullable() }),
});
export type Golden = z.infer<typeof goldenShape>;

/** Plays a case to its place, saves it as the line does, and notes what happens next. */
export function take({ file, moves, answer }: Place): Golden {
  let nowMs = startMs;
  const replay = Replay.opened(protocolWith(), file, nowMs);
  for (const move of moves) {
    if ('waitMinutes' in move) {
      nowMs += move.waitMinutes * minuteMs;
      replay.waitUntil(nowMs);
    } else replay.hear(signalOf(move, nowMs));
  }
  const saved = { nowMs, snapshots: replay.snapshots, waiting: [...replay.waiting], answer: signalOf(answer, nowMs) };
  return { ...saved, next: goOn(saved) };
}

/** What happens to a saved case: by its answer, and by its next timer. */
export function goOn({ snapshots, waiting, answer }: Omit<Golden, 'next'>): Golden['next'] {
  const restored = () => new Replay(protocolWith(), JSON.parse(JSON.stringify(snapshots)), waiting);
  const answered = restored();
  const late = restored();
  const [soonest] = late.waiting;
  return {
    byAnswer: outcomeOf(answered, answered.hear(answer)),
    byTimer: soonest === undefined ? null : outcomeOf(late, late.fire(soonest)),
  };
}

function outcomeOf(replay: Replay, { atMs, effects, disposition }: Played): Outcome {
  return {
    asking: replay.view.asking,
    disposition,
    said: effects.flatMap((effect) => (effect.type === 'say' ? [effect.say.key] : [])),
    called: effects.flatMap((effect) =>
      effect.type === 'callNurse' ? [`${effect.level} ${effect.place} ${effect.reasons.join(' ')}`] : [],
    ),
    waiting: replay.waiting.map(({ machine, what, dueMs }) => `${machine} ${what} in ${(dueMs - atMs) / minuteMs} min`),
  };
}
