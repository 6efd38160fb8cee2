/** The alarm port: it wakes the line when something is due. Our own rows are the truth, so an alarm may be late or lost. */

/** The cause of whatever a live line does because it was due: what somebody is waiting for goes out before it. */
export const alarmCause = 'alarm';

export interface Alarm {
  /** `wake` may be called at any time, also for nothing. */
  start(wake: () => void): Promise<void>;
  /** Something is due at this time (epoch ms). Called after the commit. */
  arm(dueMs: number): void;
  stop(): Promise<void>;
}

/** A practice line wakes itself: its clock moves only when it is told to. */
export const noAlarm: Alarm = {
  start: async () => undefined,
  arm: () => undefined,
  stop: async () => undefined,
};
