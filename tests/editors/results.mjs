/** Counts what the editors report, one line a test, so that a suite that says nothing counts as failed. */

export function createResults() {
  let passed = 0;
  let failed = 0;
  const add = (suite, line) => {
    const [, verdict, what] = /^(passed|failed) (.*)$/s.exec(line) ?? [];
    if (verdict === undefined) return;
    if (verdict === 'passed') passed += 1;
    else failed += 1;
    console.log(`${suite}: ${verdict} ${what}`);
  };
  return {
    add,
    /** Runs a suite that hands each report line to its argument; whatever it throws, or silence, is a failure. */
    async run(suite, test) {
      const before = passed + failed;
      try {
        await test((line) => add(suite, line));
        if (passed + failed === before) add(suite, 'failed: it ended without a single report');
      } catch (error) {
        add(suite, `failed to run to its end: ${error instanceof Error ? error.message : String(error)}`);
      }
    },
    summary: () => ({ failed, line: `${passed} passed, ${failed} failed` }),
  };
}
