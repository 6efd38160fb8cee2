/** Texts and calls to a nurse: what a page holds, in which order, and what a clearance says before it is given. */
import { describe, expect, it } from 'vitest';
import { pageReasons } from '#machines/facts.ts';
import type { NurseSay } from '#src/wording/nurseSays.ts';
import { wordForNurse } from '#src/wording/word.ts';
import { longPage, nurseSays, shortPage } from './nurseSamples.ts';
import { scene } from './samples.ts';

const said = (message: NurseSay) => wordForNurse(message, scene);

describe('a page', () => {
  /** SBAR: situation, background, assessment, request (nursing practice, from memory). */
  it('runs situation, background, assessment, request', () => {
    expect(said({ key: 'page', params: shortPage })).toBe(
      'URGENT Robin (4K7): hard insertion. G tube, mature tract, first placed 12 Mar 2026, was out 45 min. ' +
        'Temporary tube in, pH 5, told: hold, nothing through it. Family +12125550101. Wants CLEAR.\nReply TAKE, PASS or MORE',
    );
  });

  it('says that it comes again', () => {
    expect(said({ key: 'page', params: { ...shortPage, again: true } })).toMatch(/^AGAIN URGENT/);
  });

  it('names two reasons and counts the rest', () => {
    const text = said({
      key: 'page',
      params: { ...shortPage, reasons: ['no-kit', 'out-too-long', 'latex', 'silence'] },
    });
    expect(text).toContain('no kit; out too long; 2 more.');
  });

  it('names the gravest reason first, whatever came first', () => {
    expect(said({ key: 'page', params: longPage })).toMatch(/^AGAIN EMERGENCY .*: DANGER SIGN;/);
    const params = { ...shortPage, reasons: ['weight-unknown', 'no-kit', 'danger-sign'] as const };
    expect(said({ key: 'page', params })).toContain(': DANGER SIGN; no kit; 1 more.');
    const named = { ...params, dangerSigns: ['limp', 'colour', 'vomit'] as const };
    expect(said({ key: 'page', params: named })).toContain(': DANGER SIGN: limp or hard to wake, blue or gray; no kit');
  });

  it('has words of its own for every reason', () => {
    const texts = pageReasons.map((reason) => said({ key: 'page', params: { ...shortPage, reasons: [reason] } }));
    expect(new Set(texts).size).toBe(pageReasons.length);
  });

  it('asks for TAKE at its end, and the call asks for the same word', () => {
    for (const message of nurseSays) {
      if (message.key === 'page') expect(said(message)).toMatch(/\nReply TAKE, PASS or MORE$/);
      if (message.key === 'pageCall') expect(said(message)).toMatch(/reply to the text with the word take\.$/);
    }
  });

  it('gives hours out in hours', () => {
    expect(said({ key: 'page', params: { ...shortPage, minutesOut: 310 } })).toContain('out 5 h 10 min');
  });
});

describe('a clearance', () => {
  it('names the child, the reading and what YES allows before it is given', () => {
    const text = said({ key: 'clearConfirm', params: { child: 'Robin', code: '4K7', tubeKind: 'g', ph: 5 } });
    expect(text).toMatch(/Robin \(4K7\).*G tube, hard insertion, pH 5 passed.*use the tube.*\nReply YES or NO\.$/);
  });

  it('is refused with its reason', () => {
    const why = (why: 'nothing-held' | 'not-hard' | 'several', codes: readonly string[] = []) =>
      said({ key: 'clearNotNow', params: { why, cases: codes.map((code) => ({ child: null, code })) } });
    expect(why('nothing-held')).toContain('no case of yours');
    expect(why('not-hard', ['4K7'])).toMatch(/\(4K7\) cannot be cleared.*Only a hard insertion/);
    expect(why('several', ['4K7', '9Q2'])).toMatch(/\(4K7\), .*\(9Q2\)/);
  });
});

describe('what a page is about', () => {
  const text = (params: Partial<typeof shortPage>) => said({ key: 'page', params: { ...shortPage, ...params } });

  it('is named: the warning sign, and what the family wrote that the line could not read', () => {
    expect(text({ reasons: ['warning-sign'], warningSigns: ['fever'] })).toContain('warning sign: fever.');
    expect(text({ reasons: ['unread'], words: 'the strips are expired' })).toContain(
      'Wrote: "the strips are expired".',
    );
    expect(text({ reasons: ['no-kit'], words: 'the strips are expired' })).not.toContain('Wrote');
  });

  it('is a hard insertion, whatever it waits for', () => {
    expect(text({ reasons: ['no-strips'] })).toContain('Temporary tube in, hard, pH');
  });

  it('is not told as a hold once it was cleared, nor as told to a family that opted out', () => {
    expect(text({ cleared: true })).toContain('cleared, being secured');
    expect(text({ optedOut: true })).toContain('OPTED OUT: phone them');
    expect(text({ optedOut: true })).not.toContain('told:');
  });
});

describe('other texts to a nurse', () => {
  it('list every case taken', () => {
    const cases = [
      { child: 'Robin', code: '4K7' },
      { child: null, code: '9Q2' },
    ];
    expect(said({ key: 'taken', params: { cases, clear: [], optedOut: [] } })).toContain(
      'Robin (4K7), Unnamed child (9Q2)',
    );
  });

  it('name the words that are possible now, and no other', () => {
    expect(said({ key: 'notSure', params: { can: ['TAKE', 'GO IN'] } })).toBe(
      'Nothing was changed. You can text now: TAKE, GO IN.',
    );
    expect(said({ key: 'notSure', params: { can: [] } })).not.toContain('CLEAR');
  });
});
