import { describe, expect, test } from 'vitest'
import {
  markChanged,
  mergeOffered,
  offeredLines,
  type WordedLine,
} from '../../../lib/core/takeoff/offeredLines.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { quantityText } from '../../../lib/words/takeoff/quantityText.ts'
import { documentWith, halves } from '../madeNotebook.ts'
import { fence, takeOffOf } from './madeFence.ts'

const posts: WordedLine = { from: 'takeoff: posts', what: 'pipe for posts', quantity: '4', unit: 'each' }
const rails: WordedLine = { from: 'takeoff: rails', what: 'pipe for rails', quantity: '48', unit: 'ft' }
const byHand = { what: 'delivery', quantity: '1', unit: 'trip', unitPrice: '40', suppliedBy: 'bought' }

describe('offered lines', () => {
  test('name the part of the build-up that they come from, in the order of building', () => {
    expect(
      offeredLines(takeOffOf([fence('0 ft', '24 ft')])).map(({ from, quantity, unit }) => [
        from,
        quantity,
        unit,
      ]),
    ).toEqual([
      ['takeoff: posts', '4', 'each'],
      ['takeoff: rails', '48', 'ft'],
    ])
  })

  test('make cost lines that a notebook file may hold', () => {
    const offered = offeredLines(takeOffOf([fence('0 ft', '24 ft')])).map((line) => ({
      ...line,
      what: quantityText(line.name),
    }))
    const materials = mergeOffered([], offered)
    const read = readDocument(documentWith({ sections: [{ id: 's1', share: halves, materials }] }))
    expect(read.ok).toBe(true)
    expect(materials[0]).toEqual({
      what: 'posts, 2 3/8 in round, wall 0.154 in',
      quantity: '4',
      unit: 'each',
      suppliedBy: 'bought',
      from: 'takeoff: posts',
    })
  })
})

describe('merging them into an item', () => {
  test('adds what is new after what a person typed', () => {
    const merged = mergeOffered([byHand], [posts, rails])
    expect(merged[0]).toBe(byHand)
    expect(merged.slice(1)).toMatchObject([posts, rails])
  })

  test('an untouched line takes the new quantity and keeps its price and its words', () => {
    const standing = { ...posts, what: 'old pipe of ours', unitPrice: '18.50', suppliedBy: 'a' }
    expect(mergeOffered([standing], [{ ...posts, quantity: '7' }])).toEqual([{ ...standing, quantity: '7' }])
  })

  test('a line that a person changed stays as it is and marked', () => {
    const changed = { ...posts, quantity: '6', unitPrice: '18.50', suppliedBy: 'bought', changed: true }
    expect(mergeOffered([changed], [{ ...posts, quantity: '7' }])).toEqual([changed])
  })

  test('a price by another unit goes with the unit', () => {
    const standing = { ...rails, unitPrice: '2.15', suppliedBy: 'bought' }
    const [merged] = mergeOffered([standing], [{ ...rails, quantity: '14.63', unit: 'm' }])
    expect(merged).toEqual({ ...rails, quantity: '14.63', unit: 'm', suppliedBy: 'bought' })
  })

  test('what is needed no longer goes; where it is priced already it stays at zero', () => {
    const priced = { ...rails, unitPrice: '2.15', suppliedBy: 'bought' }
    expect(mergeOffered([{ ...posts, suppliedBy: 'bought' }], [])).toEqual([])
    expect(mergeOffered([priced], [])).toEqual([{ ...priced, quantity: '0' }])
  })

  test('a second line of the same part is a person’s doing and stays', () => {
    const standing = [
      { ...posts, suppliedBy: 'a' },
      { ...posts, quantity: '2', suppliedBy: 'b' },
    ]
    expect(mergeOffered(standing, [{ ...posts, quantity: '7' }])).toEqual([
      { ...standing[0], quantity: '7' },
      standing[1],
    ])
  })

  test('twice is the same as once', () => {
    const once = mergeOffered([byHand], [posts, rails])
    expect(mergeOffered(once, [posts, rails])).toEqual(once)
  })
})

describe('a change by hand', () => {
  const before = [{ ...posts, suppliedBy: 'bought' }, byHand]

  test('of the quantity marks the line', () => {
    const after = [{ ...posts, quantity: '5', suppliedBy: 'bought' }, byHand]
    expect(markChanged(before, after)[0]).toMatchObject({ quantity: '5', changed: true })
  })

  test('of the price or the words does not', () => {
    const after = [{ ...posts, what: 'ours', unitPrice: '3', suppliedBy: 'a' }, byHand]
    expect(markChanged(before, after)).toEqual(after)
  })

  test('of a line that was typed by hand needs no mark', () => {
    const after = [before[0] ?? {}, { ...byHand, quantity: '2' }]
    expect(markChanged(before, after)).toEqual(after)
  })
})
