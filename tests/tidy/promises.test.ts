/** The threat model and the page of failures keep their word: every part is there, and each names tests that exist. */
import { describe, expect, it } from 'vitest';
import { files, textOf } from './tree.ts';

const pages = {
  'deploy/threat-model.md': { parts: ['Who', 'What', 'How it is met', 'Proof'], least: 12 },
  'deploy/what-happens-if.md': { parts: ['Family', 'Nurse', 'Operator', 'Proof'], least: 20 },
} as const;

describe.each(Object.entries(pages))('%s', (page, { parts, least }) => {
  const sections = textOf(page)
    .split(/^#+ /m)
    .filter((section) => section.includes('- **'))
    .map((section) => ({ title: section.split('\n')[0] ?? '', section }));

  it('has every part of every section', () => {
    expect(sections.length).toBeGreaterThanOrEqual(least);
    const odd = sections.filter(({ section }) => {
      const found = [...section.matchAll(/^- \*\*([^*]+)\*\*:/gm)].map(([, part]) => part);
      return found.join() !== parts.join();
    });
    expect(odd.map(({ title }) => title)).toEqual([]);
  });

  it('names only tests that exist, and one at least for each section', () => {
    const known = new Set(files('tests'));
    const missing = sections.flatMap(({ title, section }) => {
      const named = [...section.matchAll(/^ {2}- `(tests\/[^`]+)`$/gm)].map(([, name]) => name ?? '');
      const gone = named.filter((name) => {
        const [file = '', test = ''] = name.split(' :: ');
        return !known.has(file) || !["'", '"', '`'].some((quote) => textOf(file).includes(quote + test + quote));
      });
      return named.length === 0 ? [`${title}: no test`] : gone;
    });
    expect(missing).toEqual([]);
  });
});
