/** Runs tests in turn, each under a time limit, and reports each by a line. */
import { revert, type Tests } from './session.ts';

const limit = 60_000;

export async function runAll(tests: Tests): Promise<void> {
  let failures = 0;
  for (const [name, test] of Object.entries(tests)) {
    try {
      await Promise.race([test(), tooLong()]);
      report(`passed ${name}`);
    } catch (error) {
      failures += 1;
      report(`failed ${name}: ${error instanceof Error ? error.message : String(error)}`);
    }
    await revert();
  }
  report('finished');
  if (failures > 0) throw new Error(`${failures} tests failed`);
}

function tooLong(): Promise<never> {
  return new Promise((_, reject) =>
    setTimeout(() => reject(new Error(`it took longer than ${limit / 1000} s`)), limit),
  );
}

function report(line: string): void {
  // The console of the extension host is all that reaches the page, and from there the runner.
  // eslint-disable-next-line no-console
  console.log(`[test] ${line}`);
}
