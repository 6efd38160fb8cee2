/** A "not" answers a question only where it stands for itself or negates what was asked (common sense, no source). */
import { describe, expect, it } from 'vitest';
import type { LanguageCode, QuestionKey } from '#machines/facts.ts';
import { read } from '#src/reading/read.ts';
import { open } from './open.ts';

type Case = readonly [LanguageCode, QuestionKey, string];

function answered(language: LanguageCode, asking: QuestionKey, text: string): unknown {
  const { event } = read(text, { ...open, language, asking });
  return event.type === `answer.${asking}` && 'value' in event ? event.value : null;
}

const ofQuestion: readonly Case[] = [
  ['en', 'kit', 'no kit here'],
  ['en', 'kit', "we don't have one"],
  ['en', 'kit', 'no we left it at her dads'],
  ['en', 'strips', 'no maam'],
  ['en', 'contents', "it won't pull anything back"],
  ['en', 'arrived', 'no car'],
  ['es', 'kit', 'no lo tengo'],
  ['es', 'strips', 'no nos dieron tiras'],
  ['es', 'kit', 'no mi mama lo tiene'],
  ['fr', 'kit', "on n'a pas la trousse"],
  ['fr', 'strips', "j'en trouve pas"],
  ['fr', 'kit', 'non'],
];

const ofSomethingElse: readonly Case[] = [
  ['en', 'kit', "I don't do texting good"],
  ['en', 'kit', "that's not what I meant to put"],
  ['en', 'kit', 'no time for this'],
  ['en', 'contents', "it's not empty"],
  ['en', 'strips', 'no signal in here'],
  ['en', 'own-tube', "he won't give it to me"],
  ['en', 'contents', "the syringe don't fit this tube"],
  ['es', 'kit', 'no agarra la llamada'],
  ['es', 'strips', 'no prende la luz'],
  ['fr', 'kit', 'il veut pas lâcher le doudou'],
  ['fr', 'strips', 'elle me regarde pas'],
];

describe('a negation', () => {
  it.each(ofQuestion)('%s, %s: "%s" is a no', (...said) => expect(answered(...said)).toBe('no'));

  it.each(ofSomethingElse)('%s, %s: "%s" answers nothing', (...said) => expect(answered(...said)).toBeNull());

  it('of an idiom or of a fault leaves the yes beside it', () => {
    expect(answered('en', 'kit', 'no need to panic, i have it')).toBe('yes');
    expect(answered('en', 'own-tube', "got it, it doesn't look torn, balloon is good")).toBe('yes');
  });

  it('that is not understood leaves no yes beside it', () => {
    expect(answered('en', 'kit', 'yes but it wont undo')).toBeNull();
    expect(answered('fr', 'secured', 'oui mais la colle prend pas')).toBeNull();
  });
});
