/** What the registry knows against our dependencies: a high or critical finding fails, a registry that does not say is said loudly. */
import { execFile } from 'node:child_process';
import { z } from 'zod';

const report = z.object({
  auditReportVersion: z.number(),
  vulnerabilities: z.record(z.string(), z.object({ severity: z.string() })),
});

export type Verdict =
  | { readonly is: 'clean'; readonly lesser: number }
  | { readonly is: 'vulnerable'; readonly packages: readonly string[] }
  /** The registry has no audit endpoint, or it did not answer. */
  | { readonly is: 'not audited' };

/** Judges what `npm audit --json` printed. */
export function verdictOf(printed: string): Verdict {
  const parsed = report.safeParse(jsonOr(printed));
  if (!parsed.success) return { is: 'not audited' };
  const found = Object.entries(parsed.data.vulnerabilities);
  const grave = found.filter(([, { severity }]) => severity === 'high' || severity === 'critical');
  if (grave.length === 0) return { is: 'clean', lesser: found.length };
  return { is: 'vulnerable', packages: grave.map(([name, { severity }]) => `${name} (${severity})`) };
}

function jsonOr(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** Only what a live line installs. */
function askRegistry(): Promise<string> {
  return new Promise((resolve) => {
    execFile('npm', ['audit', '--omit=dev', '--json'], { timeout: 120_000, maxBuffer: 64 << 20 }, (_error, out) =>
      resolve(out),
    );
  });
}

if (import.meta.main) {
  const verdict = verdictOf(await askRegistry());
  if (verdict.is === 'clean') process.stdout.write(`audit: nothing high or critical, ${verdict.lesser} lesser\n`);
  if (verdict.is === 'not audited')
    process.stdout.write(
      '\n*** NOT AUDITED: the registry did not answer. Nothing is known of the dependencies. ***\n\n',
    );
  if (verdict.is === 'vulnerable') {
    process.stdout.write(`audit: ${verdict.packages.join(', ')}\n`);
    process.exitCode = 1;
  }
}
