/** The carrier's own words, which are never an answer: STOP and its kin, START, HELP. */
import { languageCodes } from '#machines/facts.ts';
import { clean } from './clean.ts';
import { lexicons } from './lexicon.ts';

/** Which of them a text is, in any language; null where it says anything else. */
export function carrierKeyword(raw: string): 'stop' | 'help' | 'start' | null {
  const whole = clean(raw, lexicons.en.grammar.marks)
    .replace(/[.!,?]/g, '')
    .trim();
  const is = (set: 'stopWords' | 'startWords' | 'helpWords') =>
    languageCodes.some((code) => lexicons[code].wishes[set].has(whole));
  if (is('stopWords')) return 'stop';
  if (is('startWords')) return 'start';
  return is('helpWords') ? 'help' : null;
}
