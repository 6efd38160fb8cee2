/** The audit of the dependencies, on what npm prints: its report (version 2) and its error, as npm 11 wrote them. */
import { describe, expect, it } from 'vitest';
import { verdictOf } from './audit.ts';

const printed = (...severities: string[]) =>
  JSON.stringify({
    auditReportVersion: 2,
    vulnerabilities: Object.fromEntries(severities.map((severity, place) => [`package-${place}`, { severity }])),
    metadata: {},
  });

describe('an audit', () => {
  it('fails on a high or critical finding, and names the package', () => {
    expect(verdictOf(printed('low', 'high', 'critical'))).toEqual({
      is: 'vulnerable',
      packages: ['package-1 (high)', 'package-2 (critical)'],
    });
  });

  it('passes on lesser ones', () => {
    expect(verdictOf(printed('low', 'moderate'))).toEqual({ is: 'clean', lesser: 2 });
    expect(verdictOf(printed())).toEqual({ is: 'clean', lesser: 0 });
  });

  it.each([
    '',
    'not json',
    '{"message":"405 Method Not Allowed","method":"POST","statusCode":405,"error":{"summary":""}}',
  ])('that was never made is said to be none', (text) => {
    expect(verdictOf(text)).toEqual({ is: 'not audited' });
  });
});
