/** The hazard log keeps its word: its tests exist, its risks follow its table, and no safety rule is forgotten. */
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { safetyRules } from '#src/protocol/proof.ts';
import { keysOf } from '#src/protocol/samples.ts';
import { files, textOf } from './tree.ts';

const severities = ['minor', 'significant', 'considerable', 'major', 'catastrophic'] as const;
const likelihoods = ['very high', 'high', 'medium', 'low', 'very low'] as const;

const words = z.string().min(3);
const risk = z.strictObject({ severity: z.enum(severities), likelihood: z.enum(likelihoods) });
const control = z
  .strictObject({
    what: words,
    kind: z.enum(['design', 'wording', 'test', 'training', 'process']),
    rules: z.array(z.enum(keysOf(safetyRules))).default([]),
    tests: z.array(z.string().includes(' :: ')).default([]),
  })
  .refine(({ kind, tests }) => tests.length > 0 || kind === 'training' || kind === 'process', 'no test proves it');
const log = z.strictObject({
  hazards: z.array(
    z.strictObject({
      id: z.string().regex(/^H\d\d$/),
      hazard: words,
      causes: z.array(words).min(1),
      effect: words,
      harm: words,
      before: risk,
      after: risk,
      justification: words.optional(),
      controls: z.array(control).min(1),
      owner: words,
      status: z.enum(['open', 'controlled']),
    }),
  ),
});

const { hazards } = log.parse(parse(textOf('deploy/clinical-safety/hazards.yaml')));
const controls = hazards.flatMap((hazard) => hazard.controls);

/** The table as its readers see it. */
const table = textOf('deploy/clinical-safety/README.md');
function level({ severity, likelihood }: z.infer<typeof risk>): number {
  const cells = (line: string) => line.split('|').map((cell) => cell.trim());
  const row = table
    .split('\n')
    .map(cells)
    .find(([, title]) => title === likelihood);
  return Number(row?.[severities.indexOf(severity) + 2]);
}

describe('the hazard log', () => {
  it('has at least twenty hazards, each with an id of its own', () => {
    expect(hazards.length).toBeGreaterThanOrEqual(20);
    expect(new Set(hazards.map(({ id }) => id)).size).toBe(hazards.length);
  });

  it('names only tests that exist', () => {
    const known = new Set(files('tests'));
    const missing = controls
      .flatMap(({ tests }) => tests)
      .filter((named) => {
        const [file = '', title = ''] = named.split(' :: ');
        return !known.has(file) || !["'", '"', '`'].some((quote) => textOf(file).includes(quote + title + quote));
      });
    expect(missing).toEqual([]);
  });

  it('names every safety rule', () => {
    expect([...new Set(controls.flatMap(({ rules }) => rules))].sort()).toEqual([...keysOf(safetyRules)].sort());
  });

  it('leaves no risk that may not stand, and gives a reason for each that needs one', () => {
    for (const { id, before, after, justification } of hazards) {
      expect(level(before), id).toBeGreaterThanOrEqual(level(after));
      expect(level(after), id).toBeLessThanOrEqual(3);
      expect(level(after) === 3, `${id}: a risk of 3 has its reason, a lesser one needs none`).toBe(
        justification !== undefined,
      );
    }
  });

  it('counts by a table that never falls as severity or likelihood rise', () => {
    for (const [row, likelihood] of likelihoods.entries())
      for (const [column, severity] of severities.entries()) {
        const here = level({ severity, likelihood });
        const worse = severities[column + 1];
        const likelier = likelihoods[row - 1];
        if (worse) expect(level({ severity: worse, likelihood })).toBeGreaterThanOrEqual(here);
        if (likelier) expect(level({ severity, likelihood: likelier })).toBeGreaterThanOrEqual(here);
      }
    expect(level({ severity: 'catastrophic', likelihood: 'very high' })).toBe(5);
  });
});
