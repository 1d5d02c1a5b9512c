import { describe, expect, test } from 'vitest'
import { meansWords, plannedHoursWords } from '../../lib/words/meansText.ts'

const names = { currency: 'USD', a: 'no. 12', b: 'no. 14' }

describe('what a household is asked for', () => {
  test.each([
    ['partly met in kind', 375000n, 93875n, 'of it $2,811.25 in money, and $938.75 in goods and own work'],
    ['met in money alone', 375000n, 0n, 'all of it in money'],
    ['met in kind alone', 375000n, 375000n, 'all of it in goods and own work'],
    [
      'met by more than was asked',
      375000n,
      400000n,
      'goods and own work come to $4,000.00, so $250.00 comes back in money',
    ],
  ])('%s says how', (_, asked, promised, how) => {
    expect(meansWords({ asked, promised, inMoney: asked - promised }, 'USD')).toBe(
      `asked for $3,750.00: ${how}`,
    )
  })

  test('where it is nothing, is nothing', () => {
    expect(meansWords({ asked: 0n, promised: 0n, inMoney: 0n }, 'USD')).toBe('asked for $0.00')
  })
})

describe('planned hours', () => {
  test('are told as the share of each and as what each does, with the household named', () => {
    const hours = { all: 3000n, share: { a: 1500n, b: 1500n }, does: { a: 0n, b: 2000n }, hired: 1000n }
    expect(plannedHoursWords(hours, names)).toBe(
      'Of 30.00 h of planned work, 15.00 h are the share of no. 12, which does 0.00 h itself; 15.00 h are the share of no. 14, which does 20.00 h itself. 10.00 h are hired.',
    )
  })

  test('are not spoken of where no work is planned', () => {
    const none = { a: 0n, b: 0n }
    expect(plannedHoursWords({ all: 0n, share: none, does: none, hired: 0n }, names)).toBeUndefined()
  })
})
