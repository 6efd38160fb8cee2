/** The languages of the line, by the names a clinician reads, and which of them need an approval of their own. */
import type { LanguageCode } from '#machines/facts.ts';
import { keysOf } from './samples.ts';

export const languageNames: Readonly<Record<LanguageCode, string>> = { en: 'English', es: 'Spanish', fr: 'French' };
export const languageCodes = keysOf(languageNames);

/** Drafts: a live line speaks one of these only where the signature names it, and English to those families until then. */
export const draftLanguages = ['es', 'fr'] as const satisfies readonly LanguageCode[];

export function isDraft(code: LanguageCode): boolean {
  return draftLanguages.some((draft) => draft === code);
}
