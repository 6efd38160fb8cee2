/** Which language a family is written to: what it asked for, else enrolment, else what it first wrote in. */
import { type LanguageCode, languageCodes } from '#machines/facts.ts';
import type { Site } from '#machines/protocol/settings.ts';
import type { Reading } from '#src/reading/read.ts';
import type { Queryable } from '#src/store/database.ts';
import type { Family } from './line.ts';
import { rememberLanguage } from './phones.ts';

/** The languages of a site; English is always on. */
export function languagesOf(site: Site): readonly LanguageCode[] {
  return site.languages ?? languageCodes;
}

/** The language of a conversation; English where the site has switched it off. */
export function languageOf(site: Site, spoken: LanguageCode | null, file: Family | null): LanguageCode {
  const on = languagesOf(site);
  return [spoken, file?.language].find((language) => language && on.includes(language)) ?? 'en';
}

/** The phone as it is after this text: a wish in words counts at any time, what it is written in only where nothing says more. */
export async function afterReading<P extends { readonly language: LanguageCode | null }>(
  client: Queryable,
  phoneId: number,
  phone: P,
  file: Family | null,
  { wantsLanguage, writtenIn }: Reading,
): Promise<P> {
  const language = wantsLanguage ?? phone.language ?? (file === null ? writtenIn : null);
  if (language === phone.language) return phone;
  await rememberLanguage(client, phoneId, language);
  return { ...phone, language };
}
