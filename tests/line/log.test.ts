/** The log keeps numbers, names and texts to itself. */
import { describe, expect, it } from 'vitest';
import { NothingSaid } from '#src/errors.ts';
import { createLog } from '#src/log.ts';

function logged(write: (log: ReturnType<typeof createLog>) => void): string {
  const lines: string[] = [];
  write(createLog({ write: (line) => void lines.push(line) }));
  return lines.join('');
}

describe('a log line', () => {
  it('holds back what is a person’s, at any depth it is likely to be', () => {
    const person = { number: '+12025550150', body: 'tube out', child: 'Robin', to: '+12025550151' };
    const text = logged((log) =>
      log.info({ caseId: 7, ...person, message: person, outer: { message: person } }, 'seen'),
    );
    expect(text).toContain('"caseId":7');
    expect(text).toContain('seen');
    expect(text).not.toMatch(/\+1202|Robin|tube out/);
  });

  it('tells an error by class, code and frames, never by a message that may quote a text', () => {
    const text = logged((log) => log.error({ error: new Error('invalid: "Robin, +12025550150"') }, 'failed'));
    expect(text).toContain('"class":"Error"');
    expect(text).toContain('log.test');
    expect(text).not.toMatch(/\+1202|Robin/);
    expect(logged((log) => log.error({ error: new NothingSaid('told') }, 'failed'))).toContain('"code":"nothing-said"');
  });
});
