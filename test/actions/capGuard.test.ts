import { beforeEach, describe, expect, test, vi } from 'vitest'
import { enterContribution } from '../../app/notebook/server/bookActions.ts'
import { everyTable } from './everyTable.ts'
import { settledBooks } from './givenAccount.ts'
import { putInDocument } from './givenHours.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))

const world = worldForEachTest()
let id = ''
beforeEach(async () => {
  id = world().notebook.id
  // Planned 300.00 and 20.00, by halves: 160.00 of each. Nothing is bought yet.
  await settledBooks(id, { caps: { b: '165.00' }, contributions: [], books: {} })
  browseAs(world(), 'a')
})

const purchase = (amount: string, more: object = {}) => ({
  household: 'a',
  kind: 'cash',
  amount,
  date: new Date().toISOString().slice(0, 10),
  earlierIsMeant: true,
  for: 's1',
  ...more,
})
const enter = (entry: object) => outcomeOf(() => enterContribution(id, 'new', entry))

describe('a purchase on an item of which a household with a cap bears a part', () => {
  test('is taken up to the cap', async () => {
    // 310.00 instead of 300.00 asks 165.00 of b, to the last cent.
    expect(await enter(purchase('310.00'))).toMatchObject({ kind: 'redirect' })
  })

  test('is refused beyond it, with the figures, and nothing is kept', async () => {
    const before = await everyTable()
    expect(await enter(purchase('330.00'))).toMatchObject({
      answer: {
        faults: [
          {
            path: 'amount',
            message:
              'With this the cap of No. 14, $165.00, would be reached: $10.00 would lie above it. Buying on Along the gardens pauses until you two agree: spend less, raise the cap, or put the new price into the plan and both mark it.',
          },
        ],
      },
    })
    expect(await everyTable()).toEqual(before)
  })

  test('is counted line by line where it is for more than one item', async () => {
    const lines = [
      { line: JSON.stringify({ item: 's1', pot: 'materials', what: 'wire', place: '1' }), amount: '300.00' },
      { line: JSON.stringify({ item: 'g1', pot: 'materials', what: 'hinge', place: '1' }), amount: '50.00' },
    ]
    const end = await enter(purchase('350.00', { for: '', lines }))
    expect(end).toMatchObject({ answer: { faults: [{ path: 'amount' }] } })
    expect(JSON.stringify(end)).toContain('Buying on Garden gate pauses')
  })

  test('is held against the cap as a whole, where no item alone would reach it', async () => {
    const [wire, hinge] = [
      { line: JSON.stringify({ item: 's1', pot: 'materials', what: 'wire', place: '1' }), amount: '308.00' },
      { line: JSON.stringify({ item: 'g1', pot: 'materials', what: 'hinge', place: '1' }), amount: '28.00' },
    ]
    const end = await enter(purchase('336.00', { for: '', lines: [wire, hinge] }))
    expect(JSON.stringify(end)).toContain('$3.00 would lie above it')
    expect(await enter(purchase('308.00', { for: '', lines: [wire] }))).toMatchObject({ kind: 'redirect' })
  })

  test('is taken once the cap was raised and both have marked that', async () => {
    await putInDocument(id, (document) => ({ ...document, caps: { b: '200.00' } }))
    expect(await enter(purchase('330.00'))).toMatchObject({ answer: { faults: [{ path: 'amount' }] } })
    await markEverything(id, ['b'])
    expect(await enter(purchase('330.00'))).toMatchObject({ answer: { faults: [{ path: 'amount' }] } })
    await markEverything(id)
    expect(await enter(purchase('330.00'))).toMatchObject({ kind: 'redirect' })
  })

  test('money back, goods in kind, hours and payments between the two are always taken', async () => {
    for (const entry of [
      purchase('900.00', { kind: 'refund' }),
      purchase('900.00', { kind: 'material' }),
      purchase('900.00', { kind: 'transfer', means: 'in cash' }),
    ])
      expect(await enter(entry)).toMatchObject({ kind: 'redirect' })
  })
})
