/** Another child than the only one on file: nothing of the file counts, and a nurse hears of it. */
import { describe, expect, it } from 'vitest';
import { fileOfCase } from '#src/families/children.ts';
import { Night, wren } from './night.ts';

const another = { told: { notOnFile: true } } as const;

describe('another child than the one on file', () => {
  it('at the facts on file: they are forgotten and asked afresh, under no name', () => {
    const night = new Night(wren).hear('told').answer('unwell', 'no').answer('confirm', 'no', another);
    expect(night.asking).toBe('tube-kind');
    expect(night.view.child).toBe('none');
    expect(night.raised).toContain('which-child');
    expect(night.view.facts).not.toHaveProperty('firstPlaced');
  });

  it('in the first text: its file is never offered, and what is told of it counts', () => {
    const night = new Night(wren).tell({ notOnFile: true, tubeKind: 'gj' }).answer('unwell', 'no');
    expect(night.asking).toBe('first-placed');
    expect(night.view.facts).toMatchObject({ tubeKind: 'gj' });
  });

  it('with a tube in by the wrong file, holds it for a nurse', () => {
    const night = new Night(wren).hear('told').answer('unwell', 'no').answer('confirm', 'yes');
    night.answer('own-tube', 'no').answer('kit', 'yes').answer('tube-in', 'easy').tell({ notOnFile: true });
    night.answer('tube-kind', 'g').answer('first-placed', { earliest: '2024-01-01', latest: '2024-01-01' });
    expect(night.view.disposition).toBe('hold');
  });

  it('a case of it has no name', () => {
    const family = { ...wren, language: 'en' } as const;
    expect(fileOfCase(family, 'none').child).toBeNull();
    expect(fileOfCase(family, null).child).toBe('Wren');
  });
});
