/** What some tests need of the machine: named aloud where it is missing, and a failure where `NIGHTJAR_REQUIRE_ALL=1` says so. */
import { existsSync } from 'node:fs';

/** Where nothing may be missing, as before every landing, the long walks take their whole length; elsewhere a stretch of it. */
export const inFull = process.env.NIGHTJAR_REQUIRE_ALL === '1';

/** One line for each need that this machine does not meet. */
export function missing(): readonly string[] {
  const chromium = process.env.CHROMIUM ?? '/usr/bin/chromium';
  return [
    existsSync(chromium) ? [] : [`the practice page in a browser: no Chromium at ${chromium} (set CHROMIUM)`],
    process.env.TEST_DATABASE_URL ? [] : ['everything on PostgreSQL: TEST_DATABASE_URL is not set'],
    inFull ? [] : ['the long walks to their end (NIGHTJAR_REQUIRE_ALL=1): nights, deaths, worlds, random texts'],
  ].flat();
}

/** Runs before all tests. Throws where nothing may be missing and something is. */
export default function requireAll(): void {
  const gone = missing();
  if (inFull && gone.length > 0) {
    throw new Error(`NIGHTJAR_REQUIRE_ALL=1, but not tested would be:\n${gone.join('\n')}`);
  }
}
