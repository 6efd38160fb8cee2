/** Whether a value read is one the corpus accepts. */
import type { Answers, QuestionKey, Told } from '#machines/facts.ts';
import type { ToldExpected, Value } from './entries.ts';

type Read = Answers[QuestionKey] | true;

/** Pounds are converted exactly; this only forgives the last bits of a sum of pounds and ounces. */
const sameKgWithin = 1e-6;

/** True where `read` is the accepted value, or within what a looser form accepts; `true` accepts whatever was told. */
export function matches(accepted: Value | readonly number[] | true, read: Read | readonly number[]): boolean {
  if (accepted === true) return true;
  if (isList(accepted) || isList(read)) return String(accepted) === String(read);
  if (typeof accepted === 'string') return matchesWord(accepted, read);
  if ('notBefore' in accepted) {
    return typeof read === 'number' && read >= Date.parse(accepted.notBefore) && read <= Date.parse(accepted.notAfter);
  }
  if (typeof read !== 'object') return false;
  if ('atLeastLatest' in accepted) {
    if (!('latest' in read)) return false;
    const inTime = accepted.latestAtMost === undefined || read.latest <= accepted.latestAtMost;
    return read.latest >= accepted.atLeastLatest && inTime;
  }
  if ('latest' in accepted) {
    return 'latest' in read && read.latest === accepted.latest && read.earliest === accepted.earliest;
  }
  if ('kg' in accepted) return 'kg' in read && Math.abs(read.kg - accepted.kg) < sameKgWithin;
  if ('bare' in accepted) return 'bare' in read && read.bare === accepted.bare;
  if ('unit' in accepted) return 'unit' in read && read.unit === accepted.unit;
  if (!('high' in read)) return false;
  if ('highAtLeast' in accepted) return read.high >= accepted.highAtLeast;
  return read.high === accepted.high && (accepted.low === undefined || read.low === accepted.low);
}

function isList(value: unknown): value is readonly number[] {
  return Array.isArray(value);
}

function matchesWord(accepted: string, read: Read): boolean {
  return typeof read === 'number' ? read === Date.parse(accepted) : read === accepted;
}

const factOfKey: Partial<Record<QuestionKey, readonly (keyof Told)[]>> = {
  'which-child': ['children'],
  'tube-kind': ['tubeKind'],
  'first-placed': ['firstPlaced'],
  'own-tube': ['ownTube'],
  'own-tube-in': ['insertedHow'],
  kit: ['kit'],
  weight: ['weight'],
  'tube-in': ['insertedHow'],
  'came-out': ['cameOutAtMs'],
  strips: ['strips'],
  ph: ['ph'],
};

/** The facts that the answer to a question is, as `told` names them. */
export function factsOf(asking: QuestionKey | null): readonly (keyof Told)[] {
  return asking === null ? [] : (factOfKey[asking] ?? []);
}

/** The facts misread or made up, and those missed, beside the answer; a birth is not judged. */
export function compareTold(
  must: ToldExpected,
  may: ToldExpected,
  told: Told,
  asking: QuestionKey | null,
): { wrong: string[]; missed: string[] } {
  const own: readonly string[] = factsOf(asking);
  const accepted = new Map<string, Value | readonly number[] | true>();
  for (const [name, value] of [...Object.entries(may), ...Object.entries(must)]) {
    if (value !== undefined) accepted.set(factName(name), value);
  }
  const wrong = Object.entries(told)
    .filter(([name, read]) => {
      const value = accepted.get(name);
      if (value !== undefined) return !matches(value, read);
      return name !== 'born' && !own.includes(name);
    })
    .map(([name]) => name);
  const missed = Object.keys(must)
    .map(factName)
    .filter((name) => !(name in told));
  return { wrong, missed };
}

function factName(name: string): string {
  return name === 'cameOutAt' ? 'cameOutAtMs' : name;
}
