import { beforeEach, describe, expect, test, vi } from 'vitest'
import { agreeToItem } from '../../app/notebook/server/actions.ts'
import { markLineBought } from '../../app/notebook/server/boughtActions.ts'
import { sendProposal } from '../../app/notebook/server/proposalActions.ts'
import { itemsBase } from '../../app/notebook/server/proposalDraft.ts'
import { acceptTheirs, proposeAnew } from '../../app/notebook/server/proposalReplyActions.ts'
import { keepTried } from '../../app/notebook/server/tryActions.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { readPart } from '../../lib/forms/parts.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { marksOf } from '../../lib/store/marks.ts'
import { makeProposal } from '../../lib/store/proposals.ts'
import { bothMarked } from '../core/ledger/settledBooks.ts'
import { everyTable } from './everyTable.ts'
import { settledBooks } from './givenAccount.ts'
import { aProposal, formOf, markForm, proposalForm, proposingForm } from './givenForms.ts'
import { editedBy } from './givenUndo.ts'
import { type Outcome, outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, documentOf, fingerprintOfItem, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))

const world = worldForEachTest()
let id = ''
beforeEach(() => {
  id = world().notebook.id
})

const halves = { share: { together: { principle: 'equal' } } }
const thirds = { share: { together: { principle: 'percent', a: '30', b: '70' } } }
const done = () => ({ kind: 'redirect', to: `/notebook/${id}/proposals` })

const accept = (form: FormData): Promise<Outcome> => {
  browseAs(world(), 'b')
  return outcomeOf(() => acceptTheirs(id, {}, form))
}

/** Who has marked the first section exactly as it stands. */
async function markedBy(): Promise<Household[]> {
  const fingerprint = await fingerprintOfItem(id, 'item:s1')
  return (await marksOf(id))
    .filter((mark) => mark.itemKey === 'item:s1' && mark.fingerprint === fingerprint)
    .map(({ household }) => household)
}

async function agree(household: Household): Promise<void> {
  browseAs(world(), household)
  await outcomeOf(async () => agreeToItem(id, {}, await markForm(id, 'item:s1')))
}

/** The first cost line of the first section at another price. */
const priced = (household: Household, unitPrice: string) =>
  editedBy(id, household, (document) => ({
    ...document,
    sections: (document.sections as { id: string; materials: object[] }[]).map((one) =>
      one.id === 's1'
        ? { ...one, materials: one.materials.with(0, { ...one.materials[0], unitPrice }) }
        : one,
    ),
  }))

const inEuro = () =>
  editedBy(id, 'b', ({ books: _books, ...document }) => ({ ...document, currency: 'EUR', contributions: [] }))

describe('a press on a page that shows a proposal’s items as they are not any more', () => {
  test('accepts nothing: the price was raised and marked by who proposed after the page was opened', async () => {
    await aProposal(id, 'a', 's1', halves)
    const old = await proposalForm(id, 'a')
    await priced('a', '9999.00')
    await agree('a')
    const before = await everyTable()
    expect(refusalOf(await accept(old))).toMatch(/changed since you opened the page\. Nothing was changed/)
    expect(await everyTable()).toEqual(before)

    expect(await accept(await proposalForm(id, 'a'))).toEqual(done())
    expect(await markedBy()).toEqual(['a', 'b'])
  })

  test('accepts nothing in another currency', async () => {
    await aProposal(id, 'a', 's1', halves)
    const old = await proposalForm(id, 'a')
    await inEuro()
    const before = await everyTable()
    expect(refusalOf(await accept(old))).toMatch(/changed since you opened the page/)
    expect(await everyTable()).toEqual(before)
  })

  test('proposes nothing anew', async () => {
    await aProposal(id, 'a', 's1', halves)
    const old = await proposalForm(id, 'a')
    await priced('b', '9999.00')
    browseAs(world(), 'a')
    const before = await everyTable()
    expect(refusalOf(await outcomeOf(() => proposeAnew(id, {}, old)))).toMatch(/changed since you opened/)
    expect(await everyTable()).toEqual(before)

    const form = await proposalForm(id, 'a')
    expect(await outcomeOf(() => proposeAnew(id, {}, form))).toEqual(done())
    expect(await accept(await proposalForm(id, 'a'))).toEqual(done())
    expect(await markedBy()).toEqual(['a', 'b'])
  })

  test('is taken where something was changed that the proposal is not about', async () => {
    await aProposal(id, 'a', 's1', halves)
    const form = await proposalForm(id, 'a')
    await editedBy(id, 'a', (document) => ({ ...document, terms: [] }))
    expect(await accept(form)).toEqual(done())
    expect(await markedBy()).toEqual(['a', 'b'])
  })
})

describe('accepting sets no mark of who proposed', () => {
  test('in a currency that it never saw', async () => {
    await markEverything(id)
    await aProposal(id, 'a', 's1', halves)
    await inEuro()
    expect(await accept(await proposalForm(id, 'a'))).toEqual(done())
    expect(await markedBy()).toEqual(['b'])
  })

  test('in a currency that came after it opened the form it sent', async () => {
    const { base, draft } = await proposingForm(id)
    await inEuro()
    browseAs(world(), 'a')
    expect(await outcomeOf(() => sendProposal(id, 0, base, draft))).toEqual(done())
    expect(await accept(await proposalForm(id, 'a'))).toEqual(done())
    expect(await markedBy()).toEqual(['b'])
  })

  test('for a plan tried on a page with other figures; for one tried on these it does', async () => {
    const tried = {
      edits: [{ item: 's1', field: 'unitPrice', line: 0, text: '21.50' }],
      moves: { prices: '', hours: '', rates: '' },
    }
    const base = itemsBase(await documentOf(id))
    await priced('b', '20.00')
    browseAs(world(), 'a')
    expect(await keepTried(id, base, tried, '')).toHaveProperty('made')
    await accept(await proposalForm(id, 'a'))
    expect(await markedBy()).toEqual(['b'])

    await priced('b', '20.00')
    browseAs(world(), 'a')
    expect(await keepTried(id, itemsBase(await documentOf(id)), tried, '')).toHaveProperty('made')
    await accept(await proposalForm(id, 'a'))
    expect(await markedBy()).toEqual(['a', 'b'])
  })

  test('where it is not on record what it saw', async () => {
    const was = readPart(await documentOf(id), { part: 'item', id: 's1' }) ?? {}
    const items = [{ id: 's1', fingerprint: fingerprintOf(was), was, item: { ...was, ...halves } }]
    const at = new Date('2027-05-01T18:00:00Z')
    await makeProposal({ notebookId: id, household: 'a', items, text: '', at, refusal: () => undefined })
    expect(await accept(await proposalForm(id, 'a'))).toEqual(done())
    expect(await markedBy()).toEqual(['b'])
  })
})

describe('accepting sets both marks', () => {
  test('where something was changed meanwhile that the proposal is not about', async () => {
    const { base, draft } = await proposingForm(id)
    await editedBy(id, 'b', (document) => ({
      ...document,
      gates: (document.gates as { id: string }[]).map((one) =>
        one.id === 'g4' ? { ...one, name: 'Low' } : one,
      ),
    }))
    browseAs(world(), 'a')
    expect(await outcomeOf(() => sendProposal(id, 0, base, draft))).toEqual(done())
    expect(await accept(await proposalForm(id, 'a'))).toEqual(done())
    expect(await markedBy()).toEqual(['a', 'b'])
  })
})

const wire = { item: 's1', pot: 'materials', what: 'wire', place: '1' }
const costing = (amount: string, marks: object) => ({
  contributions: [
    {
      household: 'a',
      kind: 'cash',
      amount,
      date: '2027-05-03',
      for: 's1',
      lines: [{ ...wire, amount }],
    },
  ],
  books: { bought: [{ ...wire, amount, marks }] },
})
const bMarksWire = async (amount: string) => {
  browseAs(world(), 'b')
  const form = formOf({ line: JSON.stringify(wire), amount })
  expect(await outcomeOf(() => markLineBought(id, {}, form))).toMatchObject({ kind: 'redirect' })
}

// Planned 300.00 with 10 percent of tolerance: 130.01 for the wire is a cent beyond.
describe('accepting a proposal for an item that came out beyond the tolerance', () => {
  test('sets no mark of who proposed before the other household marked that cost', async () => {
    await settledBooks(id, costing('130.01', { a: bothMarked.a }))
    await aProposal(id, 'a', 's1', thirds)
    await bMarksWire('130.01')
    expect(await markedBy()).toEqual([])
    expect(await accept(await proposalForm(id, 'a'))).toEqual(done())
    expect(await markedBy()).toEqual(['b'])
  })

  test('sets both where who proposed has marked the item at that cost since', async () => {
    await settledBooks(id, costing('130.01', { a: bothMarked.a }))
    await aProposal(id, 'a', 's1', thirds)
    await bMarksWire('130.01')
    await agree('a')
    expect(await accept(await proposalForm(id, 'a'))).toEqual(done())
    expect(await markedBy()).toEqual(['a', 'b'])
  })

  test('sets no mark of who proposed where the smaller plan makes a later cost one beyond the tolerance', async () => {
    await settledBooks(id, costing('129.00', { a: bothMarked.a }))
    const was = readPart(await documentOf(id), { part: 'item', id: 's1' }) ?? {}
    const [first, ...others] = was.materials as { quantity: string; unitPrice: string }[]
    const materials = [{ ...first, unitPrice: '0.01' }, ...others]
    await aProposal(id, 'a', 's1', { materials })
    await bMarksWire('129.00')
    expect(await markedBy()).toEqual(['a', 'b'])
    expect(await accept(await proposalForm(id, 'a'))).toEqual(done())
    expect(await markedBy()).toEqual(['b'])
  })
})
