/** The handover's sheet and text: nothing left out, the pressing first, nothing to be run by a browser. */
import { describe, expect, it } from 'vitest';
import { dispositions } from '#machines/facts.ts';
import { reviewOf } from '#src/families/review.ts';
import { textOf } from '#src/handover/give.ts';
import { hasNews, severityOf } from '#src/handover/handover.ts';
import { handoverSheet } from '#src/handover/sheet.ts';
import { wordForNurse } from '#src/wording/word.ts';
import { protocol } from '#tests/line/fakes.ts';
import { handover, view } from './samples.ts';

const { site } = protocol;
const sheet = handoverSheet(handover, site);
const plain = sheet
  .slice(sheet.indexOf('<body>'))
  .replace(/<[^>]+>/g, ' ')
  .replace(/\s+/g, ' ');

describe('the sheet', () => {
  it('has the five elements of the handover, the pressing cases first', () => {
    // I-PASS: Starmer et al., NEJM 2014; 371: 1803 (from memory).
    const inOrder = [
      'Needs somebody now',
      'Summary',
      'To do',
      'Watch for, and then',
      'To be watched',
      'Settled for now',
      'Said back by',
    ];
    const places = inOrder.map((words) => plain.indexOf(words));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
  });

  it('has every tube with its days, every clearance, gap and file', () => {
    expect(plain).toContain('Lark (A00) +12125550104 OVERDUE by 1 closed; the line asks no more');
    expect(plain).toContain('Unnamed child (A04) +12125550101 30 open');
    expect(plain).toContain('Wren (A01) +12125550101 not in use yet open');
    expect(plain).toContain('Unnamed child (A04) Sat 6 Mar 04:30');
    expect(plain).toContain('Second Sat 6 Mar 17:30 Sat 6 Mar 19:30');
    expect(plain).toContain('Siskin +12125550103 weight under 3 kg, older than a week');
  });

  it('says what is to be done in each case', () => {
    expect(plain).toContain('Clear it or send in: a hard insertion whose reading passed');
    expect(plain).toContain('emergency page unanswered since Sat 6 Mar 06:30, calls so far: 4');
    expect(plain).toContain('Second reading due: Sat 6 Mar 08:00, by the line');
    expect(plain).toContain('cannot wait: her heart medicine at 9; 2 of our texts may not have reached them');
  });

  it('keeps what people wrote from being markup, and loads nothing', () => {
    expect(sheet).toContain('Linnet &amp; &quot;Co&quot; &lt;b&gt;');
    expect(sheet).not.toMatch(/<script|<img|<link|url\(|@import/);
  });
});

describe('the text', () => {
  it('counts everything and names the pressing', () => {
    const body = wordForNurse({ key: 'handover', params: textOf(handover) }, { site, nowMs: handover.atMs });
    expect(body).toBe(
      'HANDOVER Sat 07:30: 4 open cases, 1 PAGE UNANSWERED, 1 ROTA GAP in 24 h, 1 recheck due, 3 temporary tubes in (one overdue), ' +
        '1 cleared. Wren (A01): hold, nothing through it. Linnet & "Co" <b> (A02): LINE FAULT, unanswered. Finch (A03): wait, retest.' +
        '\nThe sheet has the rest. Reply GOT IT',
    );
  });

  it('is worth sending for anything but a file that wants a look', () => {
    const none = { ...handover, cases: [], tubes: [], gaps: [], clearances: [] };
    expect(hasNews(none)).toBe(false);
    for (const key of ['cases', 'tubes', 'gaps', 'clearances'] as const)
      expect(hasNews({ ...none, [key]: handover[key] }), key).toBe(true);
  });
});

describe('how pressing a case is', () => {
  it('is the most pressing where anything is in doubt', () => {
    expect(severityOf(null, null)).toBe('now');
    const unanswered = { level: 'routine', sinceMs: 0, calls: 1 } as const;
    expect(severityOf({ ...view, disposition: 'use' }, unanswered)).toBe('now');
    const each = dispositions.map((disposition) => severityOf({ ...view, disposition }, null));
    expect(each).toEqual(['now', 'now', 'now', 'watch', 'settled', 'settled', 'now']);
    expect(severityOf({ ...view, disposition: null }, null)).toBe('watch');
  });
});

describe('a file that wants a look', () => {
  const file = {
    child: 'Siskin',
    born: '2027-02-01',
    tubeKind: 'g',
    firstPlaced: '2027-02-10',
    weightKg: 2.9,
    weighedOn: '2027-03-01',
  } as const;
  const why = (change: Partial<typeof file> | Record<string, unknown>) =>
    reviewOf({ ...file, ...change }, Date.parse('2027-03-06T12:00:00Z'));

  it.each([
    [[], {}],
    [['weight under 3 kg, older than a week'], { weighedOn: '2027-02-26' }],
    [['weight under 3 kg, older than a week'], { weighedOn: null }],
    [[], { weightKg: 3, weighedOn: '2020-01-01' }],
    [
      ['kind of tube not on file', 'first placement not on file', 'weight not on file'],
      { tubeKind: 'unknown', firstPlaced: null, weightKg: null },
    ],
  ])('%j', (expected, change) => {
    expect(why(change)).toEqual(expected);
  });
});
