import type { ReactNode } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import { boundFigures } from '../../app/ui/bound/boundFigures.ts'
import { parseLength } from '../../lib/core/amounts/length.ts'

describe('a figure as it is shown', () => {
  test.each([
    ['37 ft 10 9/16 in', '37·ft·10·9/16·in'],
    ['pipe, 2 3/8 in round', 'pipe, 2·3/8·in round'],
    ['1 ¾ in of it', '1·¾·in of it'],
    ['= 5 ft 10 1/4 in = 1.784 m', '= 5·ft·10·1/4·in = 1.784·m'],
    ['120 sq ft of land', '120·sq·ft of land'],
    ['18.7 % of it', '18.7·% of it'],
    ['101.58 h are the share', '101.58·h are the share'],
    ['at most 16 hours count', 'at most 16·hours count'],
    ['0.385 USD each', '0.385·USD each'],
    ['a wind of 115 mph', 'a wind of 115·mph'],
    ['at most 2 MB', 'at most 2·MB'],
    ['on 12 May 2027, or in May 2028', 'on 12·May·2027, or in May·2028'],
    ['asked of no. 12 for 30 ft', 'asked of no.·12 for 30·ft'],
    ['No. 14 answered', 'No.·14 answered'],
    ['2 in by 4 in', '2·in by 4·in'],
  ])('is not torn at the end of a line: %s', (text, bound) => {
    expect(boundFigures(text)).toBe(bound.replaceAll('·', '\u00A0'))
  })

  test('leaves words that only look like a figure or a unit as they are', () => {
    const text = 'It is no. Then 4 inner rails, 3 more, 2 months and 5 marches; they may come in May.'
    expect(boundFigures(text)).toBe(text)
  })

  test('is still the same length where somebody copies it into a field', () => {
    for (const length of ['5 ft 10 1/4 in', '1 ¾ in', '1.784 m'])
      expect(parseLength(boundFigures(length))).toEqual(parseLength(length))
    expect(boundFigures('5 ft 10 1/4 in')).toContain('\u00A0')
  })
})

describe('an element on a page', () => {
  const shown = (node: ReactNode) => renderToStaticMarkup(node).replaceAll('\u00A0', '·')

  test('has its figures bound, however many pieces its text comes in', () => {
    const [hours, ceiling] = ['14.50', 16]
    expect(
      shown(
        <p>
          {hours} h of {ceiling} h, <b>30</b> ft {null}for no. {12}
        </p>,
      ),
    ).toBe('<p>14.50·h of 16·h, <b>30</b>·ft for no.·12</p>')
    expect(shown(<>18.7 %</>)).toBe('18.7·%')
  })

  test('keeps to the letter what is typed, and what a program reads', () => {
    expect(
      shown(
        <>
          <textarea defaultValue="30 ft" />
          <select>
            <option>30 ft</option>
          </select>
          <input defaultValue="30 ft" placeholder="6 ft" />
          <pre>30 ft</pre>
        </>,
      ),
    ).not.toContain('·')
  })
})
