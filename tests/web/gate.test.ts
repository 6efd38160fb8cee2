/** The gate before the practice line: who may pass beside whom. */
import { describe, expect, it } from 'vitest';
import { createGate } from '#src/web/gate.ts';

/** Work that ends when told, and says so in `log`. */
function work(name: string, log: string[]) {
  const { promise, resolve } = Promise.withResolvers<void>();
  const run = async () => {
    log.push(`${name} begins`);
    await promise;
    log.push(`${name} ends`);
  };
  return { run, end: resolve };
}

const turn = () => new Promise((resolve) => setImmediate(resolve));

describe('gate', () => {
  it('lets texts pass side by side', async () => {
    const log: string[] = [];
    const gate = createGate();
    const [one, two] = [work('one', log), work('two', log)];
    const both = [gate.together(one.run), gate.together(two.run)];
    await turn();
    expect(log).toEqual(['one begins', 'two begins']);
    one.end();
    two.end();
    await Promise.all(both);
  });

  it('lets a reset pass alone: after what came before, before what came after', async () => {
    const log: string[] = [];
    const gate = createGate();
    const [before, reset, after] = [work('before', log), work('reset', log), work('after', log)];
    const all = [gate.together(before.run), gate.alone(reset.run), gate.together(after.run)];
    await turn();
    expect(log).toEqual(['before begins']);
    before.end();
    await turn();
    expect(log).toEqual(['before begins', 'before ends', 'reset begins']);
    after.end();
    await turn();
    expect(log.at(-1)).toBe('reset begins');
    reset.end();
    await Promise.all(all);
    expect(log.slice(3)).toEqual(['reset ends', 'after begins', 'after ends']);
  });

  it('stays open after work that failed', async () => {
    const gate = createGate();
    await expect(gate.alone(() => Promise.reject(new Error('no')))).rejects.toThrow('no');
    await expect(gate.together(() => Promise.reject(new Error('nor this')))).rejects.toThrow('nor this');
    expect(await gate.alone(async () => 'open')).toBe('open');
  });
});
