/** The one boundary between the machines' actions and the rest: every action of a step is parsed here. */
import { z } from 'zod';
import { pageLevels, pageReasons } from './facts.ts';
import type { Say } from './says.ts';

const reason = z.enum(pageReasons);
const level = z.enum(pageLevels);
const by = z.enum(['text', 'call']);

const sayShape = z.object({
  key: z.string(),
  params: z.looseObject({}),
  preface: z.array(z.looseObject({ key: z.string() })),
});
/** Its words are typed where they are written and where they are worded; here only that it is one. */
const say = z.custom<Say>((value) => sayShape.safeParse(value).success);

const afterEvent = z.templateLiteral(['xstate.after.', z.string()]);

const outward = z.discriminatedUnion('type', [
  z.object({ type: z.literal('say'), params: z.object({ say, by }) }),
  z.object({ type: z.literal('page'), params: z.object({ reason }) }),
  z.object({
    type: z.literal('callNurse'),
    params: z.object({ place: z.int().min(0).max(2), level, reasons: z.array(reason), by: z.array(by) }),
  }),
  z.object({ type: z.literal('tellNurse'), params: z.object({ level, reason }) }),
  z.object({ type: z.literal('taken'), params: z.object({ nurse: z.string() }) }),
  z.object({ type: z.literal('began'), params: z.object({ mostMinutes: z.number() }) }),
  z.object({ type: z.literal('passed'), params: z.object({ nurse: z.string() }) }),
  z.object({ type: z.literal('unanswered') }),
  z.object({ type: z.literal('notWell') }),
  z.object({
    type: z.literal('beginAftercare'),
    params: z.object({ after: z.enum(['use', 'own-tube', 'go-in']), sinceMs: z.number() }),
  }),
  z.object({ type: z.literal('endAftercare') }),
  z.object({ type: z.literal('closeCase') }),
  z.object({
    type: z.literal('xstate.raise'),
    params: z.object({ event: z.object({ type: afterEvent }), id: z.string(), delay: z.number().min(0) }),
  }),
  z.object({ type: z.literal('xstate.cancel'), params: z.object({ sendId: z.string() }) }),
]);

/** `inside` is an action that only changed what the machine remembers. */
export type Action = z.infer<typeof outward> | { readonly type: 'inside' };

const outwardTypes = new Set(outward.options.map((option) => option.shape.type.value as string));

/** Parses one action of a step. An action that leaves the machine and is not well formed is a defect, and throws. */
export function parseAction(action: { readonly type: string; readonly params: unknown }): Action {
  const { type, params } = action;
  if (!outwardTypes.has(type) || isImmediateRaise(type, params)) return { type: 'inside' };
  // Aftercare says a Say by itself; it is always a text.
  if (type === 'say' && lacks(params, 'by')) return outward.parse({ type, params: { say: params, by: 'text' } });
  return outward.parse({ type, params });
}

/** XState lists what it raises at once and has already heard. */
function isImmediateRaise(type: string, params: unknown): boolean {
  return type === 'xstate.raise' && lacks(params, 'delay');
}

/** Whether a field is not there, told without a schema, which would take all of it apart at many times the cost. */
function lacks(params: unknown, name: string): boolean {
  return Reflect.get(Object(params), name) === undefined;
}
