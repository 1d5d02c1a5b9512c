import { describe, expect, test } from 'vitest'
import type { CostLine } from '../../../lib/core/agreement/notebook.ts'
import { apartFromTakeOff } from '../../../lib/core/takeoff/apartFromTakeOff.ts'
import type { OfferedLine } from '../../../lib/core/takeoff/offeredLines.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { typedBesideTakeOff } from '../../../lib/core/takeoff/typedBesideTakeOff.ts'
import { exampleDocument } from '../../../lib/forms/exampleNotebook.ts'
import { documentText } from '../../../lib/forms/parts.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import { apartText, typedByHandWords } from '../../../lib/words/takeoff/apartText.ts'

function exampleRead() {
  const read = readNotebook(documentText(exampleDocument()))
  if (!read.ok) throw new Error('the example holds')
  return read.value.notebook
}

function line(from: string, quantity: string, more: Partial<CostLine> = {}): CostLine {
  return {
    what: 'pipe for posts',
    quantity,
    unit: 'each',
    unitPrice: '',
    taxPercent: '0',
    suppliedBy: 'bought',
    credit: false,
    from,
    changed: false,
    ...more,
  }
}

function offer(part: string, quantity: string, unit = 'each'): OfferedLine {
  return {
    item: { list: 'sections', index: 0 },
    from: `takeoff: ${part}`,
    name: { kind: 'ties', what: part },
    quantity,
    unit,
  }
}

const sentences = (...asked: Parameters<typeof apartFromTakeOff>) =>
  apartFromTakeOff(...asked).map((one) => apartText(one, 'ft-in'))

test('why typed cost lines and the take-off differ is said of every item that has both, and of no other', () => {
  const notebook = exampleRead()
  const typed = typedBesideTakeOff(notebook, takeOff(notebook))
  expect(typed.map(({ list, index }) => notebook[list][index]?.id)).toEqual(['s1', 's2', 'g1', 'g2'])
  const following = {
    ...notebook,
    sections: notebook.sections.map((section) => ({ ...section, materials: [line('takeoff: posts', '4')] })),
    gates: notebook.gates.map((gate) => ({ ...gate, materials: [] })),
  }
  expect(typedBesideTakeOff(following, takeOff(following))).toEqual([])
  expect(typedByHandWords(['Lane', 'Mower gate'])).toMatch(
    /^These cost lines were typed by hand: Lane and Mower gate\. They are what is priced and shared\./,
  )
  expect(typedByHandWords('this part')).toMatch(/^The cost lines of this part were typed by hand\. They are/)
})

describe('cost lines and the take-off', () => {
  test('that say the same have not come apart, however the figure is written', () => {
    expect(apartFromTakeOff([line('takeoff: posts', '4.0')], [offer('posts', '4')])).toEqual([])
  })

  test('of an item that nothing was taken over for are never held against one another', () => {
    expect(apartFromTakeOff([line('', '9')], [offer('posts', '4')])).toEqual([])
  })

  test('come apart when a dimension was changed since', () => {
    expect(sentences([line('takeoff: posts', '4')], [offer('posts', '5')])).toEqual([
      'pipe for posts: 4 each here, 5 each in the take-off.',
    ])
  })

  test('come apart by hand, and the sentence says that the line stays', () => {
    expect(sentences([line('takeoff: posts', '6', { changed: true })], [offer('posts', '4')])).toEqual([
      'pipe for posts: 6 each here, 4 each in the take-off. It was changed by hand and stays as it is.',
    ])
  })

  test('come apart when a gate takes over the posts that the section counted', () => {
    expect(
      sentences([line('takeoff: posts', '4'), line('takeoff: gatePosts', '2')], [offer('posts', '4')]),
    ).toEqual(['pipe for posts: 2 each here, nothing of it in the take-off any more.'])
  })

  test('that were set to zero because the take-off dropped them have not come apart', () => {
    expect(
      apartFromTakeOff([line('takeoff: posts', '4'), line('takeoff: ties', '0')], [offer('posts', '4')]),
    ).toEqual([])
  })

  test('come apart where the take-off has something new', () => {
    expect(sentences([line('takeoff: posts', '4')], [offer('posts', '4'), offer('wire ties', '30')])).toEqual(
      ['wire ties: 30 each in the take-off, on no cost line yet.'],
    )
  })

  test('are told in the units that are shown too, where those are others', () => {
    const [length] = apartFromTakeOff(
      [line('takeoff: rails', '80.5', { unit: 'ft' })],
      [offer('rails', '82', 'ft')],
    )
    // 80.5 × 0.3048 = 24.5364 and 82 × 0.3048 = 24.9936.
    expect(length && apartText(length, 'metric')).toBe(
      'pipe for posts: 80.5 ft (24.536 m) here, 82 ft (24.994 m) in the take-off.',
    )
    const [volume] = apartFromTakeOff(
      [line('takeoff: gravel', '56.633693', { unit: 'L' })],
      [offer('gravel', '1.4', 'cu ft')],
    )
    expect(volume && apartText(volume, 'ft-in')).toBe(
      'pipe for posts: 56.633693 L (2 cu ft) here, 1.4 cu ft in the take-off.',
    )
  })

  test('come apart where the unit is another', () => {
    expect(sentences([line('takeoff: rails', '48')], [offer('rails', '48', 'ft')])).toHaveLength(1)
  })
})
