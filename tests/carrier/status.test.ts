/** The carrier's status words, by its published API enumerations for messages (seen) and calls (from memory). */
import { describe, expect, it } from 'vitest';
import { fateOfStatus } from '#src/carrier/status.ts';

describe('a status word', () => {
  it.each([
    ['accepted', 'accepted'],
    ['scheduled', 'accepted'],
    ['queued', 'accepted'],
    ['sending', 'accepted'],
    ['sent', 'accepted'],
    ['delivered', 'delivered'],
    ['read', 'delivered'],
    ['undelivered', 'refused'],
    ['failed', 'refused'],
    ['canceled', 'refused'],
    ['completed', 'delivered'],
    ['busy', 'refused'],
    ['no-answer', 'refused'],
  ])('%s means %s', (status, fate) => {
    expect(fateOfStatus(status)).toBe(fate);
  });

  it.each([undefined, '', 'received', 'toString'])('%j changes nothing', (status) => {
    expect(fateOfStatus(status)).toBeNull();
  });
});
