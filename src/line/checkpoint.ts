/** Checkpoints: the named places before and after every step of the way of one event. In life nothing happens at them. */

/** In the order they are passed; saving a step and queueing what it says are one statement, so nothing lies between. */
export const checkpoints = [
  'text received',
  'phone locked',
  'case locked',
  'step taken',
  'page reached',
  'step saved',
  'turn committed',
  'alarm armed',
  'safe message begun',
  'safe message saved',
  'timers found',
  'timer locked',
  'timer fired',
  'nurse locked',
  'page taken',
  'outbox asked',
  'message claimed',
  'message handed over',
  'carrier answered',
  'message marked',
  'unsure claimed',
  'unsure looked up',
  'unsure marked',
  'media claimed',
  'media fetched',
  'media settled',
  'callback received',
  'callback noted',
] as const;
export type CheckpointName = (typeof checkpoints)[number];

/** Called as the line passes; a test ends the process here. */
export type Checkpoint = (name: CheckpointName) => void;

export const noCheckpoint: Checkpoint = () => undefined;
