/** Writes the table afresh after a change to the machines: `node tests/dislodgement/table/write.ts`; then read what changed. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { places } from '#tests/golden/places.ts';
import { linesOf } from './lines.ts';

const folder = new URL('./places/', import.meta.url);
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
for (const place of places) writeFileSync(new URL(`${place.name}.txt`, folder), `${linesOf(place).join('\n')}\n`);
