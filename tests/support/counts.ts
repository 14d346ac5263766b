/** How many checks held and how many did not. */
export interface Counts {
  readonly passed: number;
  readonly failed: number;
}

export const nothing: Counts = { passed: 0, failed: 0 };

export const sum = (a: Counts, b: Counts): Counts => ({ passed: a.passed + b.passed, failed: a.failed + b.failed });

/** A step that reports no counts of its own: it holds or it does not. */
export const byExitCode = (code: number): Counts => (code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 });

/** A step that fails without naming a test, by crashing say, fails once; so does one that found no test to run. */
export function atLeastOneFailure(counts: Counts, code: number): Counts {
  const isUnsaid = counts.failed === 0 && (code !== 0 || counts.passed === 0);
  return isUnsaid ? { ...counts, failed: 1 } : counts;
}

/** Vitest's JSON report. A file that cannot be loaded holds no tests and fails once. */
export function ofVitest(report: {
  numPassedTests: number;
  numFailedTests: number;
  testResults: { status: string; assertionResults: { status: string }[] }[];
}): Counts {
  const unloaded = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && !assertionResults.some((test) => test.status === 'failed'),
  );
  return { passed: report.numPassedTests, failed: report.numFailedTests + unloaded.length };
}

/** Playwright's JSON report. A test that held only when repeated did not hold. */
export function ofPlaywright(report: {
  stats: { expected: number; unexpected: number; flaky: number };
  errors: unknown[];
}): Counts {
  const { expected, unexpected, flaky } = report.stats;
  return { passed: expected, failed: unexpected + flaky + report.errors.length };
}
