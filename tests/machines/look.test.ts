/** A case that was looked at before its step: the look still shows it as it stood, the step moves on from it. */
import { describe, expect, it } from 'vitest';
import { openCase, stepCase, viewCase } from '#machines/case.ts';
import { placeholderProtocol as protocol } from '#machines/protocol/placeholder.ts';

const atMs = Date.parse('2027-03-06T02:10:00-05:00');
const text = { at: atMs, clinicOpen: false, told: {}, person: false, corrects: false } as const;

describe('a look before a step', () => {
  const opened = openCase(protocol, null, atMs);
  const { snapshots } = stepCase(protocol, opened, {
    machine: 'conversation',
    event: { ...text, type: 'signs', sure: ['breathing'], near: [] },
  });
  const take = { machine: 'paging', event: { at: atMs, clinicOpen: false, type: 'take', nurse: 'Ada' } } as const;

  it('changes nothing of the step', () => {
    const unseen = stepCase(protocol, structuredClone(snapshots), take);
    viewCase(protocol, snapshots);
    const seen = stepCase(protocol, snapshots, take);
    expect(JSON.stringify(seen.snapshots)).toBe(JSON.stringify(unseen.snapshots));
    expect(seen.effects).toEqual(unseen.effects);
  });

  it('goes on showing the case as it stood', () => {
    const before = viewCase(protocol, snapshots);
    const after = stepCase(protocol, snapshots, take).view;
    expect([before.takenBy, after.takenBy]).toEqual([null, 'Ada']);
    expect(before.states.paging).not.toEqual(after.states.paging);
  });

  it('is by the protocol it is given', () => {
    const stricter = { ...protocol, site: { ...protocol.site, emergencyNumber: '112' } };
    viewCase(protocol, snapshots);
    const said = JSON.stringify(stepCase(stricter, snapshots, take).snapshots);
    expect(said).toBe(JSON.stringify(stepCase(stricter, structuredClone(snapshots), take).snapshots));
  });
});
