import { describe, expect, test } from 'vitest'
import { obstaclesToSigning } from '../../../lib/core/agreement/readiness.ts'
import { unknownKeys } from '../../../lib/forms/readNotebook.ts'
import { documentWith, halves, notebookWith, sectionOf } from '../madeNotebook.ts'

const party = { name: 'Ada Fernhill', capacity: 'owner' }
const households = { a: { name: 'no. 12', parties: [party] }, b: { name: 'no. 14', parties: [party] } }
const ready = { households, sections: [{ id: 's1', share: halves }] }

function obstacles(parts: Record<string, unknown>, markedBy = (_item: unknown, _household: string) => true) {
  const document = documentWith(parts)
  return obstaclesToSigning(document, notebookWith(parts), unknownKeys(document), markedBy)
}

describe('nothing stands in the way', () => {
  test('of a notebook with a section, a party each and every mark', () => {
    expect(obstacles(ready)).toEqual([])
  })

  test('of one with a gate alone', () => {
    expect(obstacles({ households, gates: [{ id: 'g1', share: halves }] })).toEqual([])
  })
})

describe('what stands in the way is', () => {
  test('an item that a household has not marked, with who is missing', () => {
    const found = obstacles(
      ready,
      (item, household) => household === 'a' || (item as { key: string }).key !== 'line',
    )
    expect(found).toMatchObject([{ kind: 'not agreed', item: { key: 'line' }, missing: ['b'] }])
  })

  test('every item where nobody has marked any', () => {
    const found = obstacles(ready, () => false)
    expect(found).toHaveLength(5)
    expect(found[0]).toMatchObject({ missing: ['a', 'b'] })
  })

  test('a notebook with nothing to build', () => {
    expect(obstacles({ households, common: [{ id: 'c1', share: halves }] })).toEqual([
      { kind: 'nothing to build' },
    ])
  })

  test('a household without a party', () => {
    expect(obstacles({ ...ready, households: { ...households, b: {} } })).toEqual([
      { kind: 'no party', household: 'b' },
    ])
  })

  test('a party without a name, or with blanks for one', () => {
    for (const name of ['', '  ']) {
      const parties = [party, { ...party, name }]
      expect(obstacles({ ...ready, households: { ...households, a: { parties } } })).toEqual([
        { kind: 'party unnamed', household: 'a', partyIndex: 1 },
      ])
    }
  })

  test('a party that does not say as what it signs', () => {
    const parties = [{ name: 'Ada Fernhill' }]
    expect(obstacles({ ...ready, households: { ...households, b: { parties } } })).toEqual([
      { kind: 'party without capacity', household: 'b', partyIndex: 0 },
    ])
  })

  test('a key that the program does not know', () => {
    expect(obstacles({ ...ready, colour: 'grey' })).toEqual([{ kind: 'unknown key', path: 'colour' }])
  })

  test('shares that cannot be worked out', () => {
    const nobody = { principle: 'benefit', a: '0', b: '0' }
    expect(obstacles({ ...ready, sections: [sectionOf('1', nobody)] })).toMatchObject([
      { kind: 'fault', fault: { kind: 'weights-zero' } },
    ])
  })

  test('caps that fall short', () => {
    const parts = { ...ready, sections: [sectionOf('5', { principle: 'equal' })], caps: { a: '1', b: '1' } }
    expect(obstacles(parts)).toMatchObject([{ kind: 'fault', fault: { kind: 'caps-short', short: '3.00' } }])
  })
})
