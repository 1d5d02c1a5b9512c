import { describe, expect, test } from 'vitest'
import { joined } from '../../app/ui/joined.ts'

describe('a figure as it is shown', () => {
  test.each([
    ['37 ft 10 9/16 in', '37·ft·10·9/16·in'],
    ['pipe, 2 3/8 in round', 'pipe, 2·3/8·in round'],
    ['18.7 % of it', '18.7·% of it'],
    ['asked of no. 12 for 30 ft', 'asked of no.·12 for 30·ft'],
    ['No. 14 answered', 'No.·14 answered'],
    ['2 in by 4 in', '2·in by 4·in'],
  ])('is not torn at the end of a line: %s', (text, bound) => {
    expect(joined(text)).toBe(bound.replaceAll('·', '\u00A0'))
  })

  test('leaves what is no plain text, and words that only look like one, as they are', () => {
    expect(joined(12)).toBe(12)
    expect(joined('It is no. Then 4 inner rails, 3 more.')).toBe('It is no. Then 4 inner rails, 3 more.')
  })
})
