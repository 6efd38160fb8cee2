/** One step of a machine that has no children, without an actor: XState's own `transition` makes and starts a new one for each. */
import { type AnyActorScope, createActor, createMachine } from 'xstate';

const inert = createActor(createMachine({}));
const nothing = () => {};

/** XState asks for the scope a machine's children would live in; these machines have none, so it does nothing. */
export const childless: AnyActorScope = {
  self: inert,
  id: inert.id,
  sessionId: inert.sessionId,
  system: inert.system,
  logger: nothing,
  defer: nothing,
  emit: nothing,
  stopChild: nothing,
  actionExecutor: nothing,
};

/** An action the machine asked for, in order, as XState hands it out. */
export interface AskedFor {
  readonly type: string;
  readonly params: unknown;
}

/** What a machine is to who moves it. */
interface Moved<S, E> {
  transition(snapshot: S, event: E, scope: AnyActorScope): S;
}

/** The next snapshot and the actions of the step. A machine that ends in error gives a snapshot that says so. */
export function stepped<S, E>(machine: Moved<S, E>, snapshot: S, event: E): readonly [S, readonly AskedFor[]] {
  const asked: AskedFor[] = [];
  const actionExecutor: AnyActorScope['actionExecutor'] = ({ type, params }) => {
    asked.push({ type, params });
  };
  return [machine.transition(snapshot, event, { ...childless, actionExecutor }), asked];
}
