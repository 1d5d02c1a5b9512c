import { beforeEach, describe, expect, test, vi } from 'vitest'
import { keepTried } from '../../app/notebook/server/tryActions.ts'
import { proposedKeys } from '../../lib/forms/proposedOnto.ts'
import { proposalsOf } from '../../lib/store/proposals.ts'
import { everyTable } from './everyTable.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()
beforeEach(() => browseAs(world(), 'b'))

const asPlanned = { prices: '', hours: '', rates: '' }

describe('a tried change that is kept as a proposal', () => {
  test('proposes the items that it changes, worked out here and not in the browser', async () => {
    const { id } = world().notebook
    const edits = [{ item: 's1', field: 'unitPrice', line: 0, text: '21.50' }]
    expect(await keepTried(id, '', { edits, moves: asPlanned, total: '0.01' }, ' Pipe got dearer. ')).toEqual(
      {
        made: `/notebook/${id}/proposals`,
      },
    )
    const [proposal] = await proposalsOf(id)
    expect(proposal).toMatchObject({ household: 'b', text: 'Pipe got dearer.' })
    expect(proposal?.items.map(({ id }) => id)).toEqual(['s1'])
    const lines = proposal?.items[0]?.item.materials as { unitPrice: string }[]
    expect(lines[0]?.unitPrice).toBe('21.50')
    // Nothing else of the item is other than it stands: a draft of defaults would be another item.
    expect(Object.keys(lines[0] ?? {})).toEqual(['what', 'quantity', 'unit', 'unitPrice', 'suppliedBy'])
  })

  test('of an amount that a share is held against proposes that amount alone', async () => {
    const { id } = world().notebook
    const edits = [{ item: 'g4', field: 'basic', pot: 'materials', line: 0, text: '120.00' }]
    expect(await keepTried(id, '', { edits, moves: asPlanned }, '')).toHaveProperty('made')
    const [item] = (await proposalsOf(id))[0]?.items ?? []
    expect(item?.id).toBe('g4')
    expect(item && proposedKeys(item.was ?? {}, item.item)).toEqual(['share'])
    expect(item?.item.share).toMatchObject({ materials: { principle: 'difference', basic: '120.00' } })
  })

  test.each([
    ['nothing tried', { edits: [], moves: asPlanned }],
    ['what does not hold', { edits: [{ item: 's1', field: 'height', text: 'high' }], moves: asPlanned }],
    [
      'an item that is not there',
      { edits: [{ item: 's99', field: 'height', text: '6 ft' }], moves: asPlanned },
    ],
    ['no change at all', 'a tried change'],
  ])('of %s is refused, and nothing changes', async (_what, sent) => {
    const before = await everyTable()
    expect(await keepTried(world().notebook.id, '', sent, '')).toMatchObject({
      refused: expect.stringMatching(/./),
    })
    expect(await everyTable()).toEqual(before)
  })
})
