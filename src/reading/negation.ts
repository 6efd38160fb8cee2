/** Tells whether a "not" or "no" answers the question or negates something else: "no kit" does, "it won't give" does not. */
import type { Lexicon } from './lexicon.ts';
import { wordsOf } from './spell.ts';

/** What a text says no to: the question itself, something else that was not understood, or nothing. */
export type Denial = 'question' | 'other' | null;

/** The words that a negation reaches, up to where another statement begins. */
function reach(words: readonly string[], { negation: { ends } }: Lexicon): readonly string[] {
  const end = words.findIndex((word) => ends.has(word));
  return end === -1 ? words : words.slice(0, end);
}

/** Words that say nothing by themselves are passed over; what is left must be a matter of the question. */
function isOfQuestion(words: readonly string[], matter: RegExp, { negation, yesNo }: Lexicon): boolean {
  const first = words.find((word) => !negation.light.has(word) && word.search(yesNo.filler) === -1);
  return first === undefined || matter.test(first);
}

function denialInClause(clause: string, no: RegExp, matter: RegExp, lexicon: Lexicon): Denial {
  const { attached, opens, asks, bare, afterVerb } = lexicon.negation;
  for (const match of clause.matchAll(no)) {
    const word = wordsOf(match[0]).at(-1) ?? '';
    if (!attached.has(word)) return 'question';
    const [said = ''] = clause.slice(match.index + match[0].length).split('|', 1);
    const after = wordsOf(said);
    if (bare.has(word) && opens.has(after[0] ?? '')) return 'question';
    // "Not what I meant."
    if (asks.has(after[0] ?? '')) return 'other';
    const verb = afterVerb.has(word) ? wordsOf(clause.slice(0, match.index)).slice(-2).reverse() : [];
    const [reached, before] = [reach(after, lexicon), reach(verb, lexicon)];
    const isOther = !isOfQuestion(reached, matter, lexicon) || !isOfQuestion(before, matter, lexicon);
    return isOther ? 'other' : 'question';
  }
  return null;
}

/** The denial of a whole text, cut into its clauses: one that answers the question weighs more than any other. */
export function denialIn(clauses: readonly string[], no: RegExp, matter: RegExp, lexicon: Lexicon): Denial {
  const denials = clauses.map((clause) => denialInClause(clause, no, matter, lexicon));
  return denials.includes('question') ? 'question' : denials.includes('other') ? 'other' : null;
}
