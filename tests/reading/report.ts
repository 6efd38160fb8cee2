/**
 * Prints how well the reader does on the blind corpora: a table a corpus, then every miss. `npm run reading es` prints
 * one; `unseen`, `fresh`, `es-unseen` and `fr-unseen` are the texts that no reader was mended by; `speed` how long slow
 * texts take.
 */
import { languageCodes } from '#machines/facts.ts';
import { unseenCorpora } from './corpus/entries.ts';
import { missLine, runCorpus, tableOf } from './corpus/table.ts';
import { speedTable } from './speed.ts';

const corpora: readonly string[] = [...languageCodes, ...unseenCorpora];
/** The English ones go by a shorter word. */
const shorter: Readonly<Record<string, string>> = { unseen: 'en-unseen', fresh: 'en-fresh' };
if (process.argv.includes('speed')) {
  console.info(speedTable());
  process.exit();
}
const asked = process.argv.slice(2).map((word) => shorter[word] ?? word);
const wanted = corpora.filter((name) => asked.length === 0 || asked.includes(name));
const tables = wanted.map(runCorpus);
const misses = tables.flat().flatMap(({ wrong, notExact }) => [...wrong, ...notExact]);
console.info([...tables.map(tableOf), ...misses.map(missLine)].join('\n'));
