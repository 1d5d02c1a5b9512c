import { describe, expect, test } from 'vitest'
import { chaptersOf } from '../../app/notebook/server/sign/chaptersOf.ts'
import { type SignState, signOrder } from '../../app/notebook/server/sign/signOrder.ts'
import { signedExample } from '../pdf/madePapers.ts'

describe('the page for signing', () => {
  const states: readonly SignState[] = [
    'draft with obstacles',
    'draft ready',
    'waits for us',
    'waits for them',
    'signed',
    'signed and changed',
  ]

  test.each(states)('has the agreement to read, whatever its state: %s', (state) => {
    expect(signOrder(state, true).filter((part) => part === 'agreement')).toHaveLength(1)
  })

  test('asks nobody to sign, or to freeze a text, before the text stood there', () => {
    for (const differs of [true, false]) {
      const parts = signOrder('waits for us', differs)
      expect(parts.indexOf('forms')).toBeGreaterThan(parts.indexOf('agreement'))
      expect(parts.indexOf('forms')).toBeGreaterThan(parts.indexOf('amendment'))
    }
    expect(signOrder('draft ready', true)).toEqual(['agreement', 'next'])
  })

  test('has forms only where this household has yet to sign', () => {
    expect(states.filter((state) => signOrder(state, true).includes('forms'))).toEqual(['waits for us'])
  })

  test('begins with what waits to be agreed to while that stands in the way', () => {
    expect(signOrder('draft with obstacles', true)[0]).toBe('next')
  })
})

test('every block of an agreement stands in one of its chapters, in its order, under the heading it had', () => {
  const { content } = signedExample
  const { opening, chapters } = chaptersOf(content)
  const again = [
    ...opening,
    ...chapters.flatMap(({ id, title, blocks }) => [
      { kind: 'heading', level: 1, id, text: title },
      ...blocks,
    ]),
  ]
  expect(again).toEqual(content)
  expect(chapters.length).toBeGreaterThan(10)
  expect(chapters.map(({ title }) => title)).toContain('Signatures')
})
