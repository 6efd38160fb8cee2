/** Closes a test run: what failed, what was not tested for want of something, then `N passed, N failed, N skipped` alone on a line. */
import type { Reporter, SerializedError, TestCase, TestModule } from 'vitest/node';
import { missing } from './needs.ts';

export default class ClosingLine implements Reporter {
  /** What broke outside a test, a file that does not load or a hook that throws, counts as one failed. */
  onTestRunEnd(modules: readonly TestModule[], faults: readonly SerializedError[]): void {
    const tests = modules.flatMap((file) => [...file.children.allTests()]);
    const states = tests.map((test) => test.result().state);
    const broken = modules.flatMap((file) => [file, ...file.children.allSuites()]).flatMap((suite) => suite.errors());
    const passed = states.filter((state) => state === 'passed').length;
    const skipped = states.filter((state) => state === 'skipped').length;
    const failed = states.length - passed - skipped + broken.length + faults.length;
    const notTested = missing().map((need) => `NOT TESTED: ${need}\n`);
    const namesOfFailed = tests.flatMap((test) => failure(test));
    process.stdout.write(
      `${namesOfFailed.join('')}${notTested.join('')}${passed} passed, ${failed} failed, ${skipped} skipped\n`,
    );
  }
}

/** Said once more at the end: a long log is often cut at its beginning. */
function failure(test: TestCase): string[] {
  const { state, errors } = test.result();
  if (state !== 'failed') return [];
  const why = errors?.map(({ message, stacks }) => {
    const [at] = stacks ?? [];
    return `  ${message}\n${at ? `  at ${at.file}:${at.line}\n` : ''}`;
  });
  return [`FAILED: ${test.module.relativeModuleId} > ${test.fullName}\n${why?.join('') ?? ''}`];
}
