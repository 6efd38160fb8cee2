/** What is mutated, area by area, and the quick tests that every mutant of it has to get past. The walks are left out: too slow. */

export interface Area {
  readonly name: string;
  /** Globs of the code. */
  readonly code: readonly string[];
  /** Globs of the tests in their order: the quickest to catch a mutant first, the table only for what they let live. */
  readonly suite: readonly string[];
  /** The least share of its mutants that has to be killed, in percent. */
  readonly leastScore: number;
}

const names = 'tests/machines/names.test.ts';
const aftercare = 'tests/aftercare/*.test.ts';
const night = [
  names,
  'tests/dislodgement/*.test.ts',
  'tests/dislodgement/attack/{bounds,doubt}.test.ts',
  'tests/dislodgement/table/*.test.ts',
];

/** The first is what `npm run mutate` runs by default. */
export const areas: readonly Area[] = [
  { name: 'rules', code: ['machines/rules/*.ts'], suite: ['tests/rules/*.test.ts'], leastScore: 100 },
  {
    name: 'protocol',
    code: ['machines/protocol/*.ts'],
    suite: ['tests/protocol/{load,siteWords}.test.ts'],
    leastScore: 95,
  },
  {
    name: 'paging',
    code: ['machines/paging/*.ts'],
    suite: [names, 'tests/paging/!(anySettings).test.ts'],
    leastScore: 95,
  },
  { name: 'aftercare', code: ['machines/aftercare/*.ts'], suite: [names, aftercare, ...night], leastScore: 95 },
  { name: 'dislodgement', code: ['machines/dislodgement/*.ts'], suite: night, leastScore: 95 },
  { name: 'case', code: ['machines/*.ts'], suite: ['tests/machines/*.test.ts', ...night, aftercare], leastScore: 95 },
];
