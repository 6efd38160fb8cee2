/** A tube in use whose balloon was never filled: nothing holds it, so it is a problem of the tube. All texts invented. */
import { describe, expect, it } from 'vitest';
import type { LanguageCode } from '#machines/facts.ts';
import { eventOf } from './open.ts';

const empty: readonly (readonly [LanguageCode, string])[] = [
  ['en', 'i never put water in the balloon'],
  ['en', 'balloon is still empty'],
  ['en', 'you said leave the balloon empty'],
  ['es', 'nunca le puse agua al globo'],
  ['es', 'el globo esta vacio'],
  ['es', 'el globo lo dejé vacío como dijo'],
  ['fr', 'le ballon? vous aviez dit de le laisser vide'],
  ['fr', "le ballon je l'ai pas rempli"],
];
const full: readonly (readonly [LanguageCode, string])[] = [
  ['en', 'the balloon is not empty'],
  ['en', 'i filled the balloon'],
  ['es', 'el globo no esta vacio'],
  ['es', 'ya llene el globo'],
  ['fr', "le ballon n'est pas vide"],
  ['fr', 'le ballon est bien gonflé'],
];

describe('the balloon of a tube in use', () => {
  it.each(empty)('%s: "%s" was never filled', (language, text) => {
    for (const asking of [null, 'first-feed', 'next-day'] as const)
      expect(eventOf(text, { language, asking, tubeIn: true, inUse: true }).type).toBe('tubeProblem');
  });

  it.each(empty)('%s: "%s" is as it should be before it is secured', (language, text) => {
    expect(eventOf(text, { language, tubeIn: true }).type).not.toBe('tubeProblem');
  });

  it.each(full)('%s: "%s" is no problem', (language, text) => {
    expect(eventOf(text, { language, tubeIn: true, inUse: true }).type).not.toBe('tubeProblem');
  });
});
