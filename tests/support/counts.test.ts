import { describe, expect, it } from 'vitest';
import { atLeastOneFailure, byExitCode, ofPlaywright, ofVitest, sum } from './counts.ts';

describe('the counts of a step', () => {
  it('follow the exit code where there are no tests', () => {
    expect([byExitCode(0), byExitCode(2)]).toEqual([
      { passed: 1, failed: 0 },
      { passed: 0, failed: 1 },
    ]);
  });

  it('hold a failure when the step ended badly and no test did', () => {
    expect(atLeastOneFailure({ passed: 7, failed: 0 }, 1)).toEqual({ passed: 7, failed: 1 });
    expect(atLeastOneFailure({ passed: 7, failed: 2 }, 1)).toEqual({ passed: 7, failed: 2 });
    expect(atLeastOneFailure({ passed: 7, failed: 0 }, 0)).toEqual({ passed: 7, failed: 0 });
  });

  it('hold a failure when the step found no test, however well it ended', () => {
    expect(atLeastOneFailure({ passed: 0, failed: 0 }, 0)).toEqual({ passed: 0, failed: 1 });
    expect(atLeastOneFailure({ passed: 0, failed: 3 }, 0)).toEqual({ passed: 0, failed: 3 });
  });

  it('count a test file that cannot be loaded as one failure', () => {
    const testResults = [
      { status: 'failed', assertionResults: [] },
      { status: 'failed', assertionResults: [{ status: 'failed' }, { status: 'passed' }] },
      { status: 'passed', assertionResults: [{ status: 'passed' }] },
    ];
    expect(ofVitest({ numPassedTests: 2, numFailedTests: 1, testResults })).toEqual({ passed: 2, failed: 2 });
  });

  it('count a browser test that held only when repeated, and an error outside any test, as failures', () => {
    const report = { stats: { expected: 5, unexpected: 1, flaky: 1 }, errors: [{}] };
    expect(ofPlaywright(report)).toEqual({ passed: 5, failed: 3 });
  });

  it('add up', () => {
    expect(sum({ passed: 1, failed: 2 }, { passed: 3, failed: 4 })).toEqual({ passed: 4, failed: 6 });
  });
});
