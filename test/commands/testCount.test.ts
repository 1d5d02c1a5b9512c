import { describe, expect, test } from 'vitest'
import { countTests, totalCount } from '../../lib/commands/testCount.mjs'

const passed = { status: 'passed', fullName: 'the odd cent goes somewhere' }
const failed = { status: 'failed', fullName: 'the odd cent goes nowhere' }
const file = (status: string, ...assertionResults: { status: string; fullName: string }[]) => ({
  name: 'split.test.ts',
  status,
  assertionResults,
})

describe('the count of a test run', () => {
  test('is what its report says', () => {
    const report = { testResults: [file('passed', passed, passed), file('failed', passed, failed)] }

    expect(countTests('tests', report, false)).toMatchObject({ passed: 3, failed: 1 })
  })

  test('names every failed test at the end, with its file and why', () => {
    const why = { ...failed, failureMessages: ['expected 1 to be 2\nat line 3'] }
    const report = { testResults: [file('failed', passed, why, failed)] }

    expect(countTests('tests', report, false).complaints).toEqual([
      'tests: failed: the odd cent goes nowhere (split.test.ts)\n  expected 1 to be 2\n  at line 3',
      'tests: failed: the odd cent goes nowhere (split.test.ts)',
    ])
  })

  test.each(['skipped', 'pending', 'todo'])('counts a test that is %s as failed and names it', (status) => {
    const report = { testResults: [file('passed', passed, { status, fullName: 'left for later' })] }
    const count = countTests('tests', report, true)

    expect(count).toMatchObject({ passed: 1, failed: 1 })
    expect(count.complaints[0]).toContain('left for later')
  })

  test('counts a file that did not load as failed', () => {
    const report = { testResults: [file('passed', passed), file('failed')] }

    expect(countTests('tests', report, false)).toMatchObject({ passed: 1, failed: 1 })
  })

  test('counts a file whose tests passed but whose clearing up failed as failed', () => {
    expect(countTests('tests', { testResults: [file('failed', passed)] }, false)).toMatchObject({
      passed: 1,
      failed: 1,
    })
  })

  test('counts a run without any test as failed, even where it ended well', () => {
    expect(countTests('tests', { testResults: [] }, true)).toMatchObject({ passed: 0, failed: 1 })
  })

  test('counts a run without a report as failed', () => {
    expect(countTests('tests', undefined, true)).toMatchObject({ passed: 0, failed: 1 })
  })

  test('counts an error outside of any test as failed', () => {
    expect(countTests('tests', { testResults: [file('passed', passed)] }, false)).toMatchObject({
      passed: 1,
      failed: 1,
    })
  })

  test('adds up over several runs', () => {
    const one = { passed: 3, failed: 1, complaints: ['a'] }
    const other = { passed: 2, failed: 0, complaints: [] }

    expect(totalCount([one, other])).toEqual({ passed: 5, failed: 1, complaints: ['a'] })
  })
})
