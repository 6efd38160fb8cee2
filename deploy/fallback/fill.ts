/**
 * Fills the carrier's fallback answers with the numbers of a site's protocol, so that they say what the line would say:
 * `npm exec -- node deploy/fallback/fill.ts PROTOCOL.yaml FOLDER`. Refuses a placeholder that it does not know.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Site } from '#machines/protocol/settings.ts';
import { loadProtocol } from '#src/seeds.ts';

export const answers = ['text.xml', 'call.xml'] as const;

/** The answer with the site's numbers in it; for a voice digit by digit, as it reads 911 as a number of things. */
export function filled(answer: (typeof answers)[number], site: Site): string {
  const values = new Map([
    ['emergencyNumber', site.emergencyNumber],
    ['emergencyNumberSpoken', spoken(site.emergencyNumber)],
    ['clinicNumber', site.clinicNumber],
    ['clinicNumberSpoken', spoken(site.clinicNumber)],
  ]);
  const template = readFileSync(new URL(answer, import.meta.url), 'utf8');
  return template.replaceAll(/\{\{(\w+)\}\}/g, (_placeholder, name: string) => {
    const value = values.get(name);
    if (value === undefined) throw new Error(`${answer} has a placeholder that nothing fills: ${name}`);
    return value;
  });
}

function spoken(number: string): string {
  return [...number.replace('+', '')].join(' ');
}

if (import.meta.main) {
  const [protocolFile, folder] = process.argv.slice(2);
  if (protocolFile === undefined || folder === undefined) {
    throw new Error('usage: npm exec -- node deploy/fallback/fill.ts PROTOCOL.yaml FOLDER');
  }
  const { site } = loadProtocol(readFileSync(protocolFile, 'utf8'));
  mkdirSync(folder, { recursive: true });
  for (const answer of answers) writeFileSync(join(folder, answer), filled(answer, site));
  process.stdout.write(`${answers.map((answer) => join(folder, answer)).join('\n')}\n`);
}
