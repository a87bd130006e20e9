/** What a Vitest JSON report counts. A file that broke down before its first test counts as one that failed. */
export function tallyOfVitest(report) {
  const broken = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  );
  return { passed: report.numPassedTests, failed: report.numFailedTests + broken.length };
}

/** What a Playwright JSON report counts. A flaky test has failed; so has a run that breaks down with an error of its own. */
export function tallyOfPlaywright(report) {
  const { expected, unexpected, flaky } = report.stats;
  return { passed: expected, failed: unexpected + flaky + report.errors.length };
}

/** The sum of several tallies. */
export function count(tallies) {
  return tallies.reduce(
    (sum, one) => ({ passed: sum.passed + one.passed, failed: sum.failed + one.failed }),
    {
      passed: 0,
      failed: 0,
    },
  );
}
