/** Finds lengths of time in a text: "8 weeks", "an hour or two", "2 years 3 months", with how firmly they were said. */
import { type Lexicon, onceEach } from './lexicon.ts';

export const timeUnitNames = ['second', 'minute', 'hour', 'day', 'week', 'month', 'year'] as const;
export type TimeUnit = (typeof timeUnitNames)[number];

/** How far "about 8 weeks" may be off either way (common practice, no source). */
export const roughShare = 0.2;

/** How the number was meant: as said, to the unit only, roughly, a little more, at least, or less than. */
export type Firmness = 'firm' | 'coarse' | 'rough' | 'just-over' | 'at-least' | 'less-than';

export interface Span {
  /** From the text: where it stands. */
  readonly at: number;
  readonly end: number;
  readonly low: Amount;
  readonly high: Amount;
  readonly firmness: Firmness;
}

/** Counts by unit, added up: `{year: 2, month: 3}`. */
export type Amount = Partial<Record<TimeUnit, number>>;

const forms = onceEach(({ grammar, times }) => {
  const units = Object.values(grammar.timeUnits).join('|');
  const counted = `(\\d+(?:\\.\\d+)?|${Object.keys(times.vague).join('|')})`;
  return {
    pattern: new RegExp(
      `${counted}\\+? ?(?:(?:${times.spanJoin}) ?${counted} ?)?-?(${units})\\b(?: (?:${times.spanTail}) ${counted}\\b(?! ?(?:${units}|[:/]|\\.\\d)))?`,
      'g',
    ),
    unitForms: timeUnitNames.map((unit) => ({ unit, form: new RegExp(`^(?:${grammar.timeUnits[unit]})$`) })),
  };
});

function unitOf(word: string, words: Lexicon): TimeUnit {
  const found = forms(words).unitForms.find(({ form }) => form.test(word));
  if (!found) throw new Error(`no unit of time: ${word}`);
  return found.unit;
}

function bounds(counts: readonly string[], { times }: Lexicon): readonly [number, number] {
  const all = counts.flatMap((count) => times.vague[count] ?? [Number(count)]);
  return [Math.min(...all), Math.max(...all)];
}

function firmnessAt(text: string, at: number, end: number, otherwise: Firmness, { times: words }: Lexicon): Firmness {
  const before = text.slice(Math.max(0, at - 30), at);
  const after = text.slice(end, end + 24);
  // "No more than" holds "more than".
  if (words.lessBefore.test(before)) return 'less-than';
  if (words.justOverBefore.test(before)) return 'just-over';
  if (words.atLeastBefore.test(before) || words.atLeastAfter.test(after)) return 'at-least';
  return words.roughBefore.test(before) || words.roughAfter.test(after) || words.roughAnywhere.test(text)
    ? 'rough'
    : otherwise;
}

/** Whether this unit can go on a span: "2 hours 10 minutes"; without a word between, "45 minutes an hour" is two lengths. */
function goesOn({ low }: Span, unit: TimeUnit, between: string): boolean {
  if (/[a-z]/.test(between)) return low[unit] === undefined;
  const smallest = timeUnitNames.findIndex((name) => low[name] !== undefined);
  return timeUnitNames.indexOf(unit) < smallest && Object.values(low).every(Number.isInteger);
}

/** All spans in order; parts that go on each other are one span. */
export function spansIn(text: string, words: Lexicon): Span[] {
  const spans: Span[] = [];
  for (const match of text.matchAll(forms(words).pattern)) {
    const counts = [match[1], match[2], match[4]].filter((count): count is string => count !== undefined);
    const unit = unitOf(match[3] ?? '', words);
    const [low, high] = bounds(counts, words);
    const at = match.index;
    const end = at + match[0].length;
    const last = spans.at(-1);
    const between = last ? text.slice(last.end, at) : '';
    if (last && words.times.spanAnd.test(between) && goesOn(last, unit, between)) {
      spans[spans.length - 1] = {
        ...last,
        end,
        low: { ...last.low, [unit]: low },
        high: { ...last.high, [unit]: high },
      };
      continue;
    }
    const isVague = counts.some((count) => count in words.times.vague);
    // Nobody who says "2 months ago" means the day.
    const otherwise = isVague ? 'rough' : unit === 'month' ? 'coarse' : 'firm';
    spans.push({
      at,
      end,
      low: { [unit]: low },
      high: { [unit]: high },
      firmness: firmnessAt(text, at, end, otherwise, words),
    });
  }
  return spans;
}
