/**
 * A test runner for Stryker that loads the machines and their quick tests anew for every mutant, in one process. Libraries stay
 * loaded, types are stripped once: a mutant costs some hundredths of a second, so that all of `machines/` can be mutated.
 */
import { globSync, readFileSync } from 'node:fs';
import { registerHooks, stripTypeScriptTypes } from 'node:module';
import { pathToFileURL } from 'node:url';
import { INSTRUMENTER_CONSTANTS, type InstrumenterContext, type StrykerOptions } from '@stryker-mutator/api/core';
import { commonTokens, declareClassPlugin, PluginKind, tokens } from '@stryker-mutator/api/plugin';
import {
  type DryRunResult,
  DryRunStatus,
  determineHitLimitReached,
  type MutantRunOptions,
  type MutantRunResult,
  type TestResult,
  type TestRunner,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { z } from 'zod';
import { takeCollected } from './collect.ts';

interface Test {
  readonly id: string;
  readonly name: string;
  readonly file: string;
  readonly run: () => unknown;
}

/** One load of the machines and their tests, with the board on which its code finds which mutant is on. */
interface Loaded {
  readonly board: InstrumenterContext;
  readonly tests: readonly Test[];
}

class MachineRunner implements TestRunner {
  static readonly inject = tokens(commonTokens.options);
  readonly #sandbox = `${pathToFileURL(process.cwd())}/`;
  readonly #stripped = new Map<string, string>();
  readonly #suite: readonly string[];
  #load = 0;
  /** The load whose mutants are switched on when it is already there. */
  #shared: Loaded | null = null;

  constructor({ suite }: StrykerOptions) {
    const files = z
      .array(z.string())
      .parse(suite)
      .flatMap((glob) => globSync(glob).sort());
    this.#suite = [...new Set(files)].map((file) => `${process.cwd()}/${file}`);
  }

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init(): Promise<void> {
    const standIn = new URL('./collect.ts', import.meta.url).href;
    const isOurs = (url: string) => url.startsWith(this.#sandbox) && !url.includes('/node_modules/');
    registerHooks({
      resolve: (specifier, context, next) => {
        if (specifier === 'vitest' && isOurs(context.parentURL ?? '')) return { url: standIn, shortCircuit: true };
        const resolved = next(specifier, context);
        if (!isOurs(resolved.url)) return resolved;
        return { ...resolved, url: `${resolved.url.replace(/\?.*$/, '')}?load=${this.#load}` };
      },
      load: (url, context, next) => {
        if (!isOurs(url) || !/\.ts\?/.test(url)) return next(url, context);
        return { format: 'module', source: this.#withoutTypes(url.replace(/\?.*$/, '')), shortCircuit: true };
      },
    });
  }

  async dryRun(): Promise<DryRunResult> {
    const { board, tests } = await this.#loaded({ mutantCoverage: { static: {}, perTest: {} } });
    const results = await run(tests, board, false);
    return {
      status: DryRunStatus.Complete,
      tests: results,
      ...(board.mutantCoverage && { mutantCoverage: board.mutantCoverage }),
    };
  }

  async mutantRun({ activeMutant, sandboxFileName, testFilter, hitLimit, mutantActivation }: MutantRunOptions) {
    const limits = hitLimit === undefined ? {} : { hitCount: 0, hitLimit };
    try {
      const { board, tests } =
        mutantActivation === 'static'
          ? this.#loading({ ...limits, activeMutant: activeMutant.id })
          : await this.#switchedOn(activeMutant.id, limits);
      const results = await run(tests, board, true, testFilter);
      // What the mutant may have left in a variable of its file would be there for the next one.
      if (this.#remembers(sandboxFileName)) this.#shared = null;
      const overrun = determineHitLimitReached(board.hitCount, hitLimit);
      return toMutantRunResult(overrun ?? { status: DryRunStatus.Complete, tests: results });
    } catch (error) {
      return notEvenLoaded(error);
    }
  }

  async #switchedOn(activeMutant: string, limits: InstrumenterContext): Promise<Loaded> {
    this.#shared ??= await this.#loaded({});
    const { board } = this.#shared;
    delete board.hitCount;
    delete board.hitLimit;
    Object.assign(board, limits, { activeMutant });
    return this.#shared;
  }

  async #loaded(board: InstrumenterContext): Promise<Loaded> {
    const tests: Test[] = [];
    for await (const test of this.#loading(board).tests) tests.push(test);
    return { board, tests };
  }

  #loading(board: InstrumenterContext): { board: InstrumenterContext; tests: AsyncIterable<Test> } {
    Object.assign(globalThis, { [INSTRUMENTER_CONSTANTS.NAMESPACE]: board });
    this.#load += 1;
    takeCollected();
    return { board, tests: this.#tests() };
  }

  /** Loads a file of tests only when those before it have been run: most mutants are caught by then. */
  async *#tests(): AsyncGenerator<Test> {
    for (const file of this.#suite) {
      await import(pathToFileURL(file).href);
      yield* takeCollected().map(({ name, run }) => ({ id: `${file}#${name}`, name, file, run }));
    }
  }

  #remembers(file: string): boolean {
    return /^let /m.test(this.#withoutTypes(pathToFileURL(file).href));
  }

  #withoutTypes(url: string): string {
    const stripped = this.#stripped.get(url) ?? stripTypeScriptTypes(readFileSync(new URL(url), 'utf8'));
    this.#stripped.set(url, stripped);
    return stripped;
  }
}

async function run(
  tests: readonly Test[] | AsyncIterable<Test>,
  board: InstrumenterContext,
  bail: boolean,
  wanted?: readonly string[],
): Promise<TestResult[]> {
  const results: TestResult[] = [];
  for await (const { id, name, file, run } of tests) {
    if (wanted?.includes(id) === false) continue;
    board.currentTestId = id;
    const startedMs = performance.now();
    const failure = await failureOf(run);
    delete board.currentTestId;
    const base = { id, name, fileName: file, timeSpentMs: performance.now() - startedMs };
    if (failure === null) results.push({ ...base, status: TestStatus.Success });
    else results.push({ ...base, status: TestStatus.Failed, failureMessage: failure });
    if (failure !== null && bail) break;
  }
  return results;
}

/** A mutant with which the machines cannot be built is caught by that. */
function notEvenLoaded(error: unknown): MutantRunResult {
  const load = {
    id: 'load',
    name: 'load',
    timeSpentMs: 0,
    status: TestStatus.Failed,
    failureMessage: String(error),
  } as const;
  return toMutantRunResult({ status: DryRunStatus.Complete, tests: [load] });
}

async function failureOf(run: () => unknown): Promise<string | null> {
  try {
    await run();
    return null;
  } catch (error) {
    return String(error);
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'machines', MachineRunner)];
