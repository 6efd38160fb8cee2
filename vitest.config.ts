/** How the tests run: as Node runs them, every one with an assertion, closed by a line that counts them. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/needs.ts'],
    reporters: ['default', './tests/closingLine.ts'],
    // All cores: the tests that take long wait for processes of their own.
    maxWorkers: '100%',
    // Modules hold no state that a test changes, and what a worker has loaded and opened serves its next file.
    isolate: false,
    // What a library will take away is a fault today.
    execArgv: ['--throw-deprecation'],
    experimental: { viteModuleRunner: false },
    expect: { requireAssertions: true },
    // Only against a test that hangs: on a busy machine the random nights take minutes.
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
});
