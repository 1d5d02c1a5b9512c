// Counts what a run of the test program found, from its JSON report. Whatever is not a passed test is a failed one: a test
// that was skipped, a file that did not load or holds no test, a run without a test, an error outside of any test.

/**
 * @typedef {{ passed: number, failed: number, complaints: string[] }} Count complaints: what failed, one text each: a long
 *   output is often kept only in its last part
 * @typedef {{ status: string, fullName?: string, failureMessages?: string[] }} ReportedTest
 * @typedef {{ name: string, status: string, assertionResults: ReportedTest[] }} ReportedFile
 * @typedef {{ testResults: ReportedFile[] }} Report
 */

/** Characters of a failed test's message that are said again at the end. */
const longestReason = 1500

/**
 * @param {string} run what the run is called in a complaint
 * @param {Report | undefined} report undefined where the run left none
 * @param {boolean} succeeded whether the run itself ended well
 * @returns {Count}
 */
export function countTests(run, report, succeeded) {
  if (report === undefined)
    return { passed: 0, failed: 1, complaints: [`${run}: the run ended without a report.`] }
  const tests = report.testResults.flatMap((file) => file.assertionResults)
  const passed = tests.filter((test) => test.status === 'passed').length
  const unrun = tests.filter((test) => test.status !== 'passed' && test.status !== 'failed')
  const brokenFiles = report.testResults.filter(
    (file) =>
      file.assertionResults.length === 0 ||
      (file.status === 'failed' && !file.assertionResults.some(isBroken)),
  )
  const failedTests = report.testResults.flatMap((file) =>
    file.assertionResults.filter(({ status }) => status === 'failed').map((test) => failedTest(file, test)),
  )
  const unseen = [
    ...unrun.map((test) => `${run}: not run, which counts as failed: ${test.fullName ?? 'a test'}`),
    ...brokenFiles.map((file) => `${run}: this file could not be run whole: ${file.name}`),
  ]
  if (tests.length === 0 && brokenFiles.length === 0) unseen.push(`${run}: no test was found.`)
  const complaints = [...failedTests.map((text) => `${run}: failed: ${text}`), ...unseen]
  const failed = complaints.length
  if (failed === 0 && !succeeded) {
    return { passed, failed: 1, complaints: [`${run}: an error happened outside of any test.`] }
  }
  return { passed, failed, complaints }
}

/**
 * @param {ReportedFile} file
 * @param {ReportedTest} test
 */
function failedTest(file, test) {
  const why = (test.failureMessages?.[0] ?? '').slice(0, longestReason)
  return `${test.fullName ?? 'a test'} (${file.name})${why === '' ? '' : `\n  ${why.replaceAll('\n', '\n  ')}`}`
}

/** @param {ReportedTest} test */
function isBroken(test) {
  return test.status !== 'passed'
}

/**
 * @param {Count[]} counts
 * @returns {Count}
 */
export function totalCount(counts) {
  return {
    passed: counts.reduce((sum, count) => sum + count.passed, 0),
    failed: counts.reduce((sum, count) => sum + count.failed, 0),
    complaints: counts.flatMap((count) => count.complaints),
  }
}
