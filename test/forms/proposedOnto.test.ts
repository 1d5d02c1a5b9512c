import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { proposedKeys, proposedOnto } from '../../lib/forms/proposedOnto.ts'

const halves = { together: { principle: 'equal' } }
const parts = { together: { principle: 'percent', a: '60', b: '40' } }
const [posts, mesh] = [
  { what: 'posts', quantity: '8', unitPrice: '20.00' },
  { what: 'mesh', quantity: '60', unitPrice: '5.10' },
]
const was = {
  id: 's1',
  from: '0 ft',
  to: '60 ft',
  height: { agreed: '5 ft', measuredFrom: 'higher' },
  notes: '',
  materials: [posts, mesh],
  labour: [{ task: 'dig', hours: '12', rate: '20', by: 'a' }],
  share: halves,
}
const changed = (keys: object) => ({ ...was, ...keys })

describe('what is proposed, on an item that was changed since', () => {
  test('a way to share goes onto notes, prices and hours as they are now, and changes none of them', () => {
    const now = changed({
      notes: 'The hazel stays.',
      materials: [{ ...posts, unitPrice: '24.00' }, mesh],
      labour: [{ task: 'dig', hours: '19', rate: '20', by: 'a' }],
    })
    expect(proposedOnto(was, changed({ share: parts }), now)).toEqual({
      kind: 'fits',
      item: { ...now, share: parts },
    })
  })

  test('a way to share is refused where another one was chosen since, and taken where it is the same', () => {
    const alone = { together: { principle: 'one', household: 'a' } }
    expect(proposedOnto(was, changed({ share: parts }), changed({ share: alone }))).toEqual({
      kind: 'touched',
      keys: ['share'],
    })
    expect(proposedOnto(was, changed({ share: parts }), changed({ share: parts }))).toMatchObject({
      kind: 'fits',
    })
  })

  test('a way to share does not go onto a common cost that was laid on the others since', () => {
    const now = changed({ spread: 'length' })
    expect(proposedOnto(was, changed({ share: parts }), now)).toEqual({ kind: 'touched', keys: ['spread'] })
  })

  test('a price goes onto other lines as they are now, and not onto its own line', () => {
    const dearer = changed({ materials: [posts, { ...mesh, unitPrice: '6.00' }] })
    const other = changed({ materials: [{ ...posts, quantity: '9' }, mesh] })
    expect(proposedOnto(was, dearer, other)).toMatchObject({
      kind: 'fits',
      item: {
        materials: [
          { what: 'posts', quantity: '9' },
          { what: 'mesh', unitPrice: '6.00' },
        ],
      },
    })
    const own = changed({ materials: [posts, { ...mesh, quantity: '70' }] })
    expect(proposedOnto(was, dearer, own)).toEqual({ kind: 'touched', keys: ['materials'] })
  })

  test('another height does not go onto another length: its quantities were worked out for the old one', () => {
    const higher = changed({ height: { agreed: '6 ft', measuredFrom: 'higher' } })
    expect(proposedOnto(was, higher, changed({ to: '80 ft' }))).toEqual({ kind: 'touched', keys: ['to'] })
    expect(proposedOnto(was, higher, changed({ notes: 'painted' }))).toMatchObject({ kind: 'fits' })
  })

  test('only what differs from what the item was is proposed', () => {
    expect(proposedKeys(was, changed({ share: parts }))).toEqual(['share'])
    expect(proposedKeys(was, { ...was, spread: '' })).toEqual([])
  })

  const item = fc.record({
    name: fc.constantFrom('bank', 'lane'),
    to: fc.constantFrom('60 ft', '80 ft'),
    height: fc.record({ agreed: fc.constantFrom('5 ft', '6 ft') }),
    notes: fc.constantFrom('', 'oak'),
    materials: fc.array(
      fc.record({ what: fc.constantFrom('posts', 'mesh'), quantity: fc.constantFrom('1', '2') }),
      { maxLength: 4 },
    ),
    share: fc.constantFrom(halves, parts),
  })

  test('nothing that was not proposed is other than it is now, whatever was changed', () => {
    fc.assert(
      fc.property(item, item, item, (then, proposed, now) => {
        const onto = proposedOnto(then, proposed, now)
        if (onto.kind === 'touched') return
        const untouched = Object.keys(then).filter((key) => !proposedKeys(then, proposed).includes(key))
        const only = (from: object) =>
          untouched.map((key) => [key, (from as Record<string, unknown>)[key] ?? ''])
        expect(only(onto.item)).toEqual(only(now))
      }),
    )
  })

  test('on an item that is as it was it is the whole proposal', () => {
    fc.assert(
      fc.property(item, item, (then, proposed) => {
        expect(proposedOnto(then, proposed, then)).toEqual({ kind: 'fits', item: proposed })
      }),
    )
  })
})
