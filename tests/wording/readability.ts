/** How easily a text is read, by the formula published for its language, and what counts as easy enough: grade six. */
import type { Site } from '#machines/protocol/settings.ts';
import type { LanguageCode } from '#src/wording/catalogue.ts';
import { easyFrom, frenchEase } from './frenchEase.ts';
import { grade } from './grade.ts';
import { perspicuityOf, quiteEasyFrom } from './perspicuity.ts';

export interface Readability {
  readonly name: string;
  readonly of: (text: string) => number;
  readonly easy: (score: number) => boolean;
}

/** The sixth grade: AMA, Health literacy manual. */
const highestGrade = 6;

const english: Readability = {
  name: 'grade',
  of: grade,
  easy: (score) => score <= highestGrade,
};

const spanish: Readability = {
  name: 'INFLESZ',
  of: perspicuityOf,
  easy: (score) => score >= quiteEasyFrom,
};

const french: Readability = {
  name: 'Kandel-Moles',
  of: frenchEase,
  easy: (score) => score >= easyFrom,
};

export const readability: Readonly<Record<LanguageCode, Readability>> = { en: english, es: spanish, fr: french };

/** Our own words alone: the site's name and every telephone number, which others choose, count as one short word each. */
export function ownWords(text: string, site: Site): string {
  return [site.hospital, /\+\d{7,15}/g, site.emergencyNumber].reduce<string>(
    (rest, fact) => rest.replaceAll(fact, 'Hill'),
    text,
  );
}
