/** A case between its steps: plain JSON without the protocol, and refused where it is not what was saved. */
import { describe, expect, it } from 'vitest';
import { type CaseSnapshots, openCase, stepCase, viewCase } from '#machines/case.ts';
import { protocolWith, startMs } from '#tests/dislodgement/night.ts';

const protocol = protocolWith();
const opened = openCase(protocol, null, startMs);
const stamp = { at: startMs, clinicOpen: false };
const beside = { told: {}, person: false, corrects: false };

const contextOf = (snapshot: unknown): object => (snapshot as { context: object }).context;

describe('what is kept of a case', () => {
  it('is plain JSON, and the protocol is not in it', () => {
    const { snapshots, view } = stepCase(protocol, opened, {
      machine: 'conversation',
      event: { type: 'told', ...beside, ...stamp },
    });
    expect({ ...viewCase(protocol, JSON.parse(JSON.stringify(snapshots))) }).toEqual({ ...view });
    for (const snapshot of Object.values(snapshots)) {
      expect(snapshot).toMatchObject({ status: 'active', historyValue: {}, children: {} });
      for (const name of ['protocol', 'clinical', 'site']) expect(contextOf(snapshot)).not.toHaveProperty(name);
    }
    expect(contextOf(snapshots.conversation)).toHaveProperty('facts');
    expect(contextOf(snapshots.paging)).toHaveProperty('level');
    expect(contextOf(snapshots.aftercare)).toHaveProperty('settled');
  });

  it('of a machine that had nothing to hear is what it was', () => {
    const { snapshots } = stepCase(protocol, opened, {
      machine: 'conversation',
      event: { type: 'told', ...beside, ...stamp },
    });
    expect(snapshots.aftercare).toBe(opened.aftercare);
    expect(snapshots.conversation).not.toBe(opened.conversation);
  });

  it('of a closed case is restored as closed', () => {
    const { snapshots } = stepCase(protocol, opened, {
      machine: 'conversation',
      event: { type: 'nurse.close', ...stamp },
    });
    const kept: CaseSnapshots = JSON.parse(JSON.stringify(snapshots));
    expect(kept.conversation).toMatchObject({ status: 'done' });
    expect(viewCase(protocol, kept).closed).toBe(true);
  });
});

describe('what was never saved so', () => {
  it.each([
    ['in error', { status: 'error' }],
    ['without facts', { context: null }],
    ['without a status', { status: undefined }],
  ])('%s throws', (_name, change) => {
    const broken = { ...(opened.conversation as object), ...change };
    expect(() => viewCase(protocol, { ...opened, conversation: broken })).toThrow();
  });

  it('in a state that no longer is throws', () => {
    const elsewhere = { ...(opened.conversation as object), value: 'nowhere' };
    expect(() => viewCase(protocol, { ...opened, conversation: elsewhere })).toThrow();
  });
});
