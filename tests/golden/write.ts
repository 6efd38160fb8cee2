/**
 * Writes the golden snapshots of this release: `node tests/golden/write.ts`. Only for a release that no line has run yet:
 * those of older releases are never written again, since cases that began on them may still run.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { z } from 'zod';
import { places } from './places.ts';
import { take } from './snapshot.ts';

const root = new URL('../../', import.meta.url);
const { version } = z
  .object({ version: z.string() })
  .parse(JSON.parse(readFileSync(new URL('package.json', root), 'utf8')));
const folder = new URL(`tests/golden/${version}/`, root);
mkdirSync(folder, { recursive: true });
for (const place of places) writeFileSync(new URL(`${place.name}.json`, folder), `${JSON.stringify(take(place))}\n`);
process.stdout.write(`${places.length} snapshots in tests/golden/${version}; now run npm run tidy\n`);
