import type { ReactNode } from 'react'
import { describe, expect, test, vi } from 'vitest'
import { saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { previewProposal, sendProposal } from '../../app/notebook/server/proposalActions.ts'
import type { ProposalDraft } from '../../app/notebook/server/proposalDraft.ts'
import { acceptTheirs, declineTheirs, proposeAnew } from '../../app/notebook/server/proposalReplyActions.ts'
import { moneyText } from '../../lib/core/amounts/money.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { plannedStatement } from '../../lib/core/shares/statement.ts'
import { readPart } from '../../lib/forms/parts.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { marksOf } from '../../lib/store/marks.ts'
import { proposalsOf } from '../../lib/store/proposals.ts'
import { moneyWords } from '../../lib/words/money.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { everyTable } from './everyTable.ts'
import { aProposal, openedPart, proposalForm, proposingForm } from './givenForms.ts'
import { faultsOf, type Outcome, outcomeOf, refusalOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, documentOf, fingerprintOfItem, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()
const halves = { together: { principle: 'equal' } }
const id = () => world().notebook.id
const sent = () => ({ kind: 'redirect', to: `/notebook/${id()}/proposals` })

async function page(asks: Record<string, string> = {}, name = 'proposals'): Promise<string> {
  const show = (await everyAddress()).get(`app/notebook/[notebookId]/${name}/page.tsx#default`) as AnyFunction
  const end = await outcomeOf(() =>
    show({ params: Promise.resolve({ notebookId: id() }), searchParams: Promise.resolve(asks) }),
  )
  if (end.kind !== 'answer') throw new Error(`No page: ${end.kind}`)
  return shownMarkup(end.answer as ReactNode).replaceAll('<!-- -->', '')
}

const shareOf = async (item: string) =>
  readPart(await documentOf(id()), { part: 'item', id: item })?.share as unknown

/** Renames an item, as a household does on its page. */
const rename = (household: Household, item: string, name: string) => change(household, item, { name })

/** Changes keys of an item, as a household does on its page. */
async function change(household: Household, item: string, keys: object): Promise<void> {
  browseAs(world(), household)
  const part = { part: 'item', id: item } as const
  const { draft, base } = await openedPart(id(), part)
  expect(await saveNotebookPart(id(), part, base, { ...draft, ...keys })).toHaveProperty('saved')
}

const press = (
  action: (notebookId: string, previous: object, form: FormData) => unknown,
  form: FormData,
): Promise<Outcome> => outcomeOf(() => action(id(), {}, form))

/** What the example asks for without caps: no cap of it is marked by both. */
async function askedNow() {
  const read = readDocument(await documentOf(id()))
  const statement = read.ok ? plannedStatement({ ...read.value.notebook, caps: {} }) : read
  if (!statement.ok) throw new Error('the example can be shared')
  return statement.value.asked
}

async function send(change: (draft: ProposalDraft) => object, answers = 0): Promise<Outcome> {
  const { base, draft } = await proposingForm(id())
  return outcomeOf(() => sendProposal(id(), answers, base, { ...draft, ...change(draft) }))
}

describe('sending a proposal', () => {
  test('proposes each ticked item in a way of its own, and nothing of the plan changes', async () => {
    browseAs(world(), 'b')
    const before = await documentOf(id())
    const end = await send(({ items }) => ({
      text: ' Fairer. ',
      items: items.map((one) => ({ ...one, in: one.id === 's2' || one.id === 'g4' })),
    }))
    expect(end).toEqual(sent())
    expect(await documentOf(id())).toEqual(before)
    expect(await proposalsOf(id())).toMatchObject([
      {
        household: 'b',
        text: 'Fairer.',
        items: [
          { id: 's2', item: { share: halves } },
          { id: 'g4', item: { share: halves } },
        ],
      },
    ])
  })

  test('proposes one way for a bundle', async () => {
    browseAs(world(), 'a')
    const share = { together: { principle: 'percent', a: '60', b: '40' } }
    await send(({ items }) => ({
      manner: 'one',
      share,
      items: items.map((one) => ({ ...one, in: one.id.startsWith('s') })),
    }))
    const [made] = await proposalsOf(id())
    expect(made?.items.map((one) => [one.id, one.item.share])).toEqual(
      ['s1', 's2', 's3', 's4', 's5'].map((item) => [item, share]),
    )
  })

  test.each<[string, (draft: ProposalDraft) => object, Record<string, RegExp>]>([
    [
      'no item is ticked',
      ({ items }) => ({ items: items.map((one) => ({ ...one, in: false })) }),
      { items: /at least one item/ },
    ],
    [
      'its parts do not add to 100',
      ({ items }) => ({
        items: items.map((one) => ({
          ...one,
          share: { together: { principle: 'percent', a: '60', b: '41' } },
        })),
      }),
      { 'items[0].share.together.b': /100/ },
    ],
    [
      'the one way for all lacks its numbers',
      () => ({ manner: 'one', share: { together: { principle: 'benefit', a: '', b: '' } } }),
      { 'share.together': /./ },
    ],
    [
      'its weights would add to nothing',
      ({ items }) => ({
        items: items.map((one) => ({
          ...one,
          share: { together: { principle: 'benefit', a: '0', b: '0' } },
        })),
      }),
      { 'items[0].share.together': /./ },
    ],
    ['its words are too long', () => ({ text: 'x'.repeat(4001) }), { text: /At most 4000/ }],
  ])('is refused at its field where %s', async (_what, change, faults) => {
    browseAs(world(), 'a')
    const before = await everyTable()
    const found = faultsOf(await send(change))
    for (const [path, words] of Object.entries(faults))
      expect(Object.entries(found).some(([at, said]) => at.startsWith(path) && words.test(said))).toBe(true)
    expect(await everyTable()).toEqual(before)
  })

  test('by the saving asks where the figures for building alone come from', async () => {
    browseAs(world(), 'a')
    const saving = { principle: 'saving', aloneA: '9000', aloneB: '9000', sourceA: 'an offer of 3 May' }
    const proposing = (together: object) =>
      send(({ items }) => ({ items: items.map((one) => ({ ...one, share: { together } })) }))
    const before = await everyTable()
    expect(faultsOf(await proposing(saving))).toEqual({
      'items[0].share.together.sourceB': expect.stringMatching(/where this figure comes from/),
    })
    expect(await everyTable()).toEqual(before)
    expect(await proposing({ ...saving, sourceB: 'own reckoning' })).toEqual(sent())
  })

  test('is refused where nothing in it differs from the plan', async () => {
    browseAs(world(), 'a')
    const share = await shareOf('s1')
    const end = await send(({ items }) => ({ items: items.map((one) => ({ ...one, share })) }))
    expect(faultsOf(end)['']).toMatch(/differs from what stands/)
  })

  test('asks where an item changed after the form was opened, and sends it when told to', async () => {
    const { base, draft } = await proposingForm(id())
    await rename('b', 's1', 'By the lane')
    browseAs(world(), 'a')
    const before = await everyTable()
    const asked = await sendProposal(id(), 0, base, draft)
    if (!('conflict' in asked)) throw new Error('it is asked about')
    expect(asked.conflict.rows).toEqual([
      { label: 'By the lane: Name', theirs: 'By the lane', yours: 'Lane to the gardens' },
    ])
    expect(await everyTable()).toEqual(before)
    expect(await outcomeOf(() => sendProposal(id(), 0, asked.conflict.theirsBase, draft))).toEqual(sent())
    expect((await proposalsOf(id()))[0]?.items[0]?.item).toMatchObject({ name: 'By the lane', share: halves })
  })

  test('does not mind what changed in an item that is not in it', async () => {
    const { base, draft } = await proposingForm(id())
    await rename('b', 's2', 'Long garden')
    browseAs(world(), 'a')
    expect(await outcomeOf(() => sendProposal(id(), 0, base, draft))).toEqual(sent())
  })

  test('says before it is sent what it would ask, or why it can’t be sent', async () => {
    browseAs(world(), 'a')
    const { draft } = await proposingForm(id())
    const before = await everyTable()
    const share = { together: { principle: 'one', household: 'a' } }
    const items = draft.items.map((one) => ({ ...one, in: true, share }))
    const shown = await previewProposal(id(), 0, { ...draft, items })
    if (!('asks' in shown)) throw new Error('it can be worked out')
    const { a, b } = await askedNow()
    const whole = moneyWords(a + b, 'USD')
    const moves = `That asks no. 12 for ${moneyWords(b, 'USD')} more and no. 14 for ${moneyWords(b, 'USD')} less than now.`
    expect(shown.asks.at(-1)).toBe(
      `The whole fence, after caps: ${whole} of no. 12 and $0.00 of no. 14. ${moves}`,
    )
    expect(shown.asks.some((sentence) => sentence.startsWith('Lane to the gardens: $'))).toBe(true)
    const none = { ...draft, items: draft.items.map((one) => ({ ...one, in: false })) }
    expect(await previewProposal(id(), 0, none)).toMatchObject({ refused: [expect.stringMatching(/tick/)] })
    expect(await everyTable()).toEqual(before)
  })

  test('answers the other household’s, and nobody else’s', async () => {
    const theirs = await aProposal(id(), 'a', 's1')
    const foreign = await aProposal(world().other.id, 'a', 's1')
    browseAs(world(), 'a')
    expect(faultsOf(await send(() => ({}), theirs))['']).toMatch(/your own household’s/)
    browseAs(world(), 'b')
    expect(faultsOf(await send(() => ({}), foreign))['']).toMatch(/no such proposal/)
    const share = { together: { principle: 'percent', a: '70', b: '30' } }
    const answer = await send(({ items }) => ({ items: items.map((one) => ({ ...one, share })) }), theirs)
    expect(answer).toEqual(sent())
    expect((await proposalsOf(id())).map(({ reply }) => reply?.kind)).toEqual(['answered', undefined])
  })
})

describe('an answer to a proposal that changes more than the share', () => {
  const materials = [{ what: 'oak boards', quantity: '3', unitPrice: '40', suppliedBy: 'bought' }]

  test.each([true, false])('keeps the rest of it where that is ticked: %s', async (theirs) => {
    const answered = await aProposal(id(), 'a', 's1', { materials })
    browseAs(world(), 'b')
    const before = readPart(await documentOf(id()), { part: 'item', id: 's1' })?.materials
    await send(({ items }) => ({ items: items.map((one) => ({ ...one, theirs })) }), answered)
    const made = (await proposalsOf(id())).at(-1)
    expect(made?.items[0]?.item).toMatchObject({ share: halves, materials: theirs ? materials : before })
  })

  test('is told so in the form and on the page, with what it costs', async () => {
    const answered = await aProposal(id(), 'a', 's1', { materials })
    browseAs(world(), 'b')
    const form = await page({ answers: String(answered) }, 'proposals/new')
    expect(form).toContain('Keep what else they propose for Lane to the gardens')
    expect(form).toMatch(/oak boards proposed/)
    const html = await page()
    expect(html).toContain('What would be different:')
    expect(html).toMatch(/What is built and how much of it: asks no\. 12 for/)
    expect(html).toContain('The two cost differently.')
  })
})

describe('accepting', () => {
  test('puts the item into the plan with both marks on exactly what is there now', async () => {
    await markEverything(id())
    await aProposal(id(), 'a', 's1', { share: halves })
    browseAs(world(), 'b')
    expect(await press(acceptTheirs, await proposalForm(id(), 'a'))).toEqual(sent())
    expect(await shareOf('s1')).toEqual(halves)
    const fingerprint = await fingerprintOfItem(id(), 'item:s1')
    const marks = (await marksOf(id())).filter(({ itemKey }) => itemKey === 'item:s1')
    expect(marks.map((mark) => [mark.household, mark.fingerprint])).toEqual([
      ['a', fingerprint],
      ['b', fingerprint],
    ])
  })

  test('of one’s own, of another notebook’s, and twice is refused, and changes nothing', async () => {
    await aProposal(id(), 'a', 's1')
    const foreign = await aProposal(world().other.id, 'a', 's1')
    const form = await proposalForm(id(), 'a')
    const theirs = await proposalForm(id(), 'a', { id: String(foreign) })
    browseAs(world(), 'a')
    const before = await everyTable()
    expect(refusalOf(await press(acceptTheirs, form))).toMatch(/your own household’s/)
    expect(await everyTable()).toEqual(before)
    browseAs(world(), 'b')
    expect(refusalOf(await press(acceptTheirs, theirs))).toMatch(/no such proposal/)
    expect(await everyTable()).toEqual(before)
    await press(acceptTheirs, form)
    const accepted = await everyTable()
    expect(refusalOf(await press(acceptTheirs, form))).toMatch(/has ended/)
    expect(await everyTable()).toEqual(accepted)
  })

  test('of a share on an item whose notes and price were changed since applies the share alone, on the item as it is', async () => {
    await aProposal(id(), 'a', 's1', { share: halves })
    const { materials } = readPart(await documentOf(id()), { part: 'item', id: 's1' }) ?? {}
    const dearer = (materials as object[]).with(0, { ...(materials as object[])[0], unitPrice: '999.00' })
    await change('b', 's1', { notes: 'The hazel stays.', materials: dearer })
    browseAs(world(), 'b')

    const html = await page()
    expect(html).toContain('Proposal 1 of no. 12 was made on ')
    expect(html).toMatch(/Changed since: .*notes/)
    expect(html).not.toMatch(/999\.00 now, .* proposed/)
    expect(html).toContain('There its mark is its own to set')
    expect(await press(acceptTheirs, await proposalForm(id(), 'a'))).toEqual(sent())
    expect(readPart(await documentOf(id()), { part: 'item', id: 's1' })).toMatchObject({
      notes: 'The hazel stays.',
      materials: dearer,
      share: halves,
    })
    // no. 12 never saw that price: its mark is not set for it.
    const marks = (await marksOf(id())).filter(({ itemKey }) => itemKey === 'item:s1')
    expect(marks.map(({ household }) => household)).toEqual(['b'])
  })

  test('sets the proposer’s mark too where it has marked what was changed since', async () => {
    await aProposal(id(), 'a', 's1', { share: halves })
    await change('b', 's1', { notes: 'The hazel stays.' })
    await markEverything(id())
    browseAs(world(), 'b')
    expect(await page()).not.toContain('There its mark is its own to set')
    expect(await press(acceptTheirs, await proposalForm(id(), 'a'))).toEqual(sent())
    const fingerprint = await fingerprintOfItem(id(), 'item:s1')
    const marks = (await marksOf(id())).filter(({ itemKey }) => itemKey === 'item:s1')
    expect(marks.map((mark) => [mark.household, mark.fingerprint])).toEqual([
      ['a', fingerprint],
      ['b', fingerprint],
    ])
  })

  test('of a share where the share was changed since is refused by name; proposed anew it can be accepted', async () => {
    await aProposal(id(), 'a', 's1', { share: halves })
    await change('b', 's1', { share: { together: { principle: 'one', household: 'a' } } })
    browseAs(world(), 'b')
    const before = await everyTable()
    expect(refusalOf(await press(acceptTheirs, await proposalForm(id(), 'a')))).toMatch(
      /itself changed since: Lane to the gardens \(share\)\./,
    )
    expect(await everyTable()).toEqual(before)

    const html = await page()
    expect(html).toContain('overtaken by a later change')
    expect(html).not.toContain('Accept proposal 1')
    expect(html).toContain('so no. 12 has no figure here')
    expect(html).not.toContain('What no. 12 proposes')
    expect(html).not.toContain('Where the distance comes from')

    browseAs(world(), 'a')
    expect(await press(proposeAnew, await proposalForm(id(), 'a'))).toEqual(sent())
    expect((await proposalsOf(id())).map(({ reply }) => reply?.kind)).toEqual(['withdrawn', undefined])
    expect(await page()).toContain('What no. 12 proposes')
    browseAs(world(), 'b')
    await press(acceptTheirs, await proposalForm(id(), 'a'))
    expect(await shareOf('s1')).toEqual(halves)
  })

  test('of what would cost more than the caps allow by now is refused, and the proposal stands', async () => {
    const materials = [{ what: 'oak boards', quantity: '1', unitPrice: '5000', suppliedBy: 'bought' }]
    await aProposal(id(), 'a', 's1', { materials })
    const caps = { part: 'caps' } as const
    const { base } = await openedPart(id(), caps)
    browseAs(world(), 'b')
    const statement = await askedNow()
    const kept = { caps: { a: moneyText(statement.a, 2), b: moneyText(statement.b, 2) } }
    expect(await saveNotebookPart(id(), caps, base, kept)).toHaveProperty('saved')
    // Caps that wait for a mark stand in the way of nothing.
    await markEverything(id())
    const before = await everyTable()
    expect(refusalOf(await press(acceptTheirs, await proposalForm(id(), 'a')))).toMatch(
      /^With this the shares could not be worked out\. .*fall [0-9.]+ short/,
    )
    expect(await everyTable()).toEqual(before)
  })
})

describe('saying why not', () => {
  test('needs words, and keeps them', async () => {
    await aProposal(id(), 'a', 's1')
    browseAs(world(), 'b')
    expect(refusalOf(await press(declineTheirs, await proposalForm(id(), 'a', { text: ' ' })))).toMatch(
      /say why not/,
    )
    expect((await proposalsOf(id()))[0]?.reply).toBeUndefined()
    const form = await proposalForm(id(), 'a', { text: 'The slope is not ours.' })
    expect(await press(declineTheirs, form)).toEqual(sent())
    const html = await page()
    expect(html).toContain('Proposal 1, not accepted')
    expect(html).toContain('The slope is not ours.')
  })

  test('leaves it to be proposed anew by its own household, and explains that to nobody else', async () => {
    await aProposal(id(), 'a', 's1')
    browseAs(world(), 'b')
    await press(declineTheirs, await proposalForm(id(), 'a', { text: 'Too dear.' }))
    const [anew, meaning] = ['Propose it anew', 'Takes over what is proposed, on the items as they are now.']
    const other = await page()
    expect(other).toContain('Proposal 1, not accepted')
    expect(other).not.toContain(anew)
    expect(other).not.toContain(meaning)
    browseAs(world(), 'a')
    const own = await page()
    expect(own).toContain(anew)
    expect(own).toContain(meaning)
  })
})

describe('the page', () => {
  test('shows both households’ positions, how far apart they are, and where that comes from', async () => {
    const theirs = await aProposal(id(), 'a', 's1', {
      share: { together: { principle: 'one', household: 'a' } },
    })
    browseAs(world(), 'b')
    const alone = await page()
    expect(alone).toContain('1 proposal of no. 12 waits for your answer')
    expect(alone).toContain('Accept proposal 1')
    await send(() => ({}), theirs)
    const html = await page()
    expect(html).toContain('What no. 12 proposes')
    expect(html).toContain('What no. 14 proposes')
    expect(html).toContain('way-bar-middle')
    expect(html).toContain('answered with proposal 2')
    expect(html).toMatch(/How it is shared: asks no\. 12 for \$[0-9.]+ less and no\. 14 for \$[0-9.]+ more\./)
    expect(html).not.toContain('waits for your answer')
  })

  test('shows no older proposal as what a household holds, once its later one was not accepted', async () => {
    const percent = (a: string, b: string) => ({ share: { together: { principle: 'percent', a, b } } })
    const first = await aProposal(id(), 'b', 's1', percent('90', '10'))
    browseAs(world(), 'a')
    await send(() => ({}), first)
    browseAs(world(), 'b')
    expect(await page()).toContain('What no. 14 proposes')
    await aProposal(id(), 'b', 's1', percent('80', '20'))
    browseAs(world(), 'a')
    expect(await press(declineTheirs, await proposalForm(id(), 'b', { text: 'Too much.' }))).toEqual(sent())
    for (const household of ['a', 'b'] as const) {
      browseAs(world(), household)
      const html = await page()
      expect(html).toContain('What no. 12 proposes')
      expect(html).not.toContain('What no. 14 proposes')
      expect(html).not.toContain('id="proposal-1"')
    }
  })

  test('holds a share that was proposed before a price was changed against the plan with the new price', async () => {
    await aProposal(id(), 'a', 's1', { share: { together: { principle: 'one', household: 'a' } } })
    const { materials } = readPart(await documentOf(id()), { part: 'item', id: 's1' }) ?? {}
    await change('b', 's1', {
      materials: (materials as object[]).with(0, { ...(materials as object[])[0], unitPrice: '999.00' }),
    })
    const html = await page()
    const read = readDocument(await documentOf(id()))
    if (!read.ok) throw new Error('the notebook holds')
    const planned = { ...read.value.notebook, caps: {} }
    const share = { together: { principle: 'one', household: 'a' } } as const
    const sections = planned.sections.map((one) => (one.id === 's1' ? { ...one, share } : one))
    const would = plannedStatement({ ...planned, sections })
    if (!would.ok) throw new Error('it can be shared')
    expect(html).toContain(
      `what no. 12 proposes asks ${moneyWords(would.value.asked.a, 'USD')} of no. 12 and ${moneyWords(would.value.asked.b, 'USD')} of no. 14.`,
    )
    // All of the distance is how it is shared: the price is the same on both sides.
    expect(html).toMatch(/How it is shared: asks no\. 12 for/)
    expect(html).not.toMatch(/Prices and tax: asks/)
  })

  test('says of a tried price only the price, and of a share only the share', async () => {
    const { materials } = readPart(await documentOf(id()), { part: 'item', id: 's1' }) ?? {}
    const dearer = (materials as object[]).with(0, { ...(materials as object[])[0], unitPrice: '999.00' })
    await aProposal(id(), 'a', 's1', { materials: dearer })
    await aProposal(id(), 'a', 's2', { share: halves })
    browseAs(world(), 'b')
    const [tried, shared] = (await page()).split('id="proposal-').slice(1)
    expect(tried).toContain('Shared as it is now, it would ask:')
    expect(tried).toMatch(/Cost line 1, unit price: \$[0-9.]+ now, \$999\.00 proposed/)
    expect(shared).not.toContain('Shared as it is now')
    expect(shared).not.toContain('stay shared')
    expect(shared).not.toContain('What would be different')
  })

  test('of a share of the work alone says the work, and that the materials stay as they are', async () => {
    const share = (await shareOf('s1')) as { materials: unknown }
    await aProposal(id(), 'a', 's1', {
      share: { materials: share.materials, labour: { principle: 'one', household: 'b' } },
    })
    browseAs(world(), 'b')
    const [, card] = (await page()).split('id="proposal-1"')
    expect(card).toContain('<strong>Work.</strong>')
    expect(card).not.toContain('<strong>Materials.</strong>')
    expect(card).toContain('The materials stay shared as they are now.')
  })

  test('offers the middle of both positions as an answer', async () => {
    await aProposal(id(), 'a', 's1', { share: { together: { principle: 'percent', a: '20', b: '80' } } })
    await aProposal(id(), 'b', 's1', { share: { together: { principle: 'percent', a: '50', b: '50' } } })
    browseAs(world(), 'b')
    const [theirs] = await proposalsOf(id())
    const asks = { middle: 'yes', answers: String(theirs?.id) }
    expect(await page()).toContain(`proposals/new?middle=yes&amp;answers=${theirs?.id}`)
    const html = await page(asks, 'proposals/new')
    expect(html).toMatch(/value="(34\.9|35\.0|35)[0-9]*"/)
    expect(html).toMatch(/value="(64\.9|65\.0|65)[0-9]*"/)
  })

  test('the form of an answer begins with what the other household proposes', async () => {
    const theirs = await aProposal(id(), 'a', 's4', {
      share: { together: { principle: 'percent', a: '33', b: '67' } },
    })
    browseAs(world(), 'b')
    const html = await page({ answers: String(theirs) }, 'proposals/new')
    expect(html).toContain('Answer proposal 1 with another')
    expect(html).toContain('value="33"')
    browseAs(world(), 'a')
    await expect(page({ answers: String(theirs) }, 'proposals/new')).rejects.toThrow('not found')
  })
})
