/** Work that must follow other work: one queue for each name, nothing kept once it is empty. */

export interface Queues {
  /** Runs after everything queued under this name before it. */
  inOrder<T>(name: string, work: () => Promise<T>): Promise<T>;
  /** Runs unless such work waits or runs already; then it is that work's promise. */
  once(name: string, work: () => Promise<void>): Promise<void>;
  /** Resolves when nothing waits or runs any more. */
  empty(): Promise<void>;
}

export function createQueues(): Queues {
  const tails = new Map<string, Promise<unknown>>();
  const running = new Map<string, Promise<void>>();

  const inOrder = <T>(name: string, work: () => Promise<T>): Promise<T> => {
    const before = tails.get(name) ?? Promise.resolve();
    const mine = before.then(work, work);
    const tail = mine
      .catch(() => undefined)
      .then(() => {
        if (tails.get(name) === tail) tails.delete(name);
      });
    tails.set(name, tail);
    return mine;
  };

  return {
    inOrder,
    once: (name, work) => {
      const current = running.get(name);
      if (current !== undefined) return current;
      const mine = work().finally(() => running.delete(name));
      running.set(name, mine);
      return mine;
    },
    empty: async () => {
      while (tails.size > 0 || running.size > 0) await Promise.allSettled([...tails.values(), ...running.values()]);
    },
  };
}
