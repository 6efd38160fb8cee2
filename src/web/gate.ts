/** The gate before the practice line: texts pass side by side, a reset or a move of the clock passes alone. */

export interface Gate {
  /** Runs beside other texts, never beside a reset or a move of the clock. */
  together<T>(work: () => Promise<T>): Promise<T>;
  /** Runs when nothing else does; in the order asked. */
  alone<T>(work: () => Promise<T>): Promise<T>;
}

/** A gate of this process. Who comes first passes first, so neither kind can starve the other. */
export function createGate(): Gate {
  let lastAlone: Promise<unknown> = Promise.resolve();
  let since: Promise<unknown>[] = [];
  const settled = (work: Promise<unknown>) =>
    work.then(
      () => undefined,
      () => undefined,
    );
  return {
    together(work) {
      const running = lastAlone.then(work);
      since.push(settled(running));
      return running;
    },
    alone(work) {
      const running = Promise.all([lastAlone, ...since]).then(work);
      lastAlone = settled(running);
      since = [];
      return running;
    },
  };
}
