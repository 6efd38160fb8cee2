/** The first text of a case: whatever it is, it leads to the first answer, and nothing it says is lost. */
import { describe, expect, it } from 'vitest';
import { freshContext } from '#machines/dislodgement/context.ts';
import { Night, protocolWith } from './night.ts';

const beside = { told: { latexAllergy: true }, person: true, corrects: true } as const;

describe('a first text', () => {
  it('that cannot be read is answered by the danger signs', () => {
    expect(new Night().unclear().said[0]).toBe('opening');
  });

  it('that corrects something is too, and what it tells and wants is heard', () => {
    for (const key of [null, 'unwell', 'ph', 'arrived'] as const) {
      const night = new Night().text({ type: 'correct', key, told: {}, person: false, corrects: true });
      expect([night.asking, night.said]).toEqual(['unwell', ['opening']]);
    }
    const night = new Night().text({ type: 'correct', key: null, ...beside });
    expect(night.said[0]).toBe('opening');
    expect(night.raised).toEqual(['person-wanted']);
    expect(night.view.latexAllergy).toBe(true);
  });

  it('a yes to the danger signs that a rehearsal asked for is a danger; a no is none', () => {
    const night = new Night().text({ type: 'answer.unwell', value: 'yes', ...beside });
    expect(night.view).toMatchObject({ disposition: 'emergency', latexAllergy: true });
    expect(night.said[0]).toBe('emergency');
    expect(night.hear('smallTalk').said).toEqual(['emergencyCalled']);
    expect(new Night().text({ type: 'answer.unwell', value: 'no', ...beside }).view.disposition).toBeNull();
  });
});

it('a case begins with nobody sent in, and with nothing that follows it', () => {
  const fresh = freshContext({ protocol: protocolWith(), file: null, openedOn: '2027-03-06' });
  expect(fresh).toMatchObject({ sentIn: 'no', aftercare: false });
});

describe('beside what is asked', () => {
  const asked = () => new Night().hear('told').answer('unwell', 'no');

  it('a family that rang is called back as one that rang, one that texts as one that wants a person', () => {
    const wanted = { told: {}, person: false, corrects: false } as const;
    expect(asked().text({ type: 'person', rang: true, ...wanted }).raised).toEqual(['rang']);
    expect(asked().text({ type: 'person', ...wanted }).raised).toEqual(['person-wanted']);
  });

  it('a correction of nothing is asked what is wrong, and the person it wants is called', () => {
    const night = asked().text({ type: 'correct', key: null, told: {}, person: true, corrects: true });
    expect(night.said).toContain('askCorrection');
    expect(night.raised).toEqual(['person-wanted']);
  });

  it('what answers a nurse goes to her by name, and the question is asked again', () => {
    const night = asked().text({ type: 'relayed', nurse: 'Ana', told: {}, person: false, corrects: false });
    expect(night.asking).toBe('tube-kind');
    expect(night.effects).toContainEqual(
      expect.objectContaining({
        say: { key: 'askTubeKind', params: {}, preface: [{ key: 'passedOn', nurse: 'Ana' }] },
      }),
    );
  });

  it('another phone that joins is told to the family by its last digits', () => {
    const night = asked().joinedBy('0162');
    expect(night.asking).toBe('tube-kind');
    expect(night.effects).toEqual([
      { type: 'say', by: 'text', say: { key: 'phoneJoined', params: { lastFour: '0162' }, preface: [] } },
    ]);
  });
});
