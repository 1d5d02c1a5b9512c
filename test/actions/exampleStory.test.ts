import { expect, test, vi } from 'vitest'
import { closedByNumber } from '../../app/notebook/server/closed.ts'
import { needsOf } from '../../app/notebook/server/needsOf.ts'
import { standingsOf } from '../../app/notebook/server/opened.ts'
import { proposalRefusal } from '../../app/notebook/server/proposedPlan.ts'
import { draftDiffers, frozenRevisions } from '../../app/notebook/server/standingRevision.ts'
import { tellExample } from '../../app/start/exampleStory.ts'
import { needsMet } from '../../lib/core/agreement/needs.ts'
import { moneyText } from '../../lib/core/amounts/money.ts'
import { households } from '../../lib/core/people/household.ts'
import { basicFenceSums } from '../../lib/core/shares/basicFence.ts'
import { plannedStatement } from '../../lib/core/shares/statement.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { newestFirstAnswer } from '../../lib/store/firstAnswers.ts'
import { heldBackOf, needsSubject } from '../../lib/store/heldBack.ts'
import { headOf, historyOf, leadsThrough } from '../../lib/store/historyChain.ts'
import { messagesOf } from '../../lib/store/messages.ts'
import { findNotebook } from '../../lib/store/notebooks.ts'
import { proposalsOf } from '../../lib/store/proposals.ts'
import { inventedSignature } from '../../lib/words/exampleText.ts'
import { documentOf, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
worldForEachTest()

const opened = new Date('2031-08-20T10:00:00Z')

async function told() {
  const { id } = await tellExample(opened)
  const read = readDocument(await documentOf(id))
  if (!read.ok) throw new Error('The example does not hold.')
  return { id, ...read.value }
}

test('the example has five sections, four gates, a slope, setbacks and what both households gave', async () => {
  const { notebook } = await told()
  expect([notebook.sections.length, notebook.gates.length]).toEqual([5, 4])
  expect(new Set(notebook.line.stations.map(({ gradeFence }) => gradeFence)).size).toBeGreaterThan(4)
  expect(notebook.line.stations.every(({ setback }) => setback !== undefined)).toBe(true)
  expect(new Set(notebook.contributions.map(({ household }) => household))).toEqual(new Set(['a', 'b']))
})

test('the basic fence that a section of the example pays the difference to is described, and comes to just that', async () => {
  const { notebook } = await told()
  const described = notebook.sections.filter(({ basicFence }) => basicFence !== undefined)
  expect(described.length).toBeGreaterThan(0)
  for (const { basicFence, share } of described) {
    const sums = basicFenceSums(basicFence ?? { materials: [], labour: [] }, 2)
    const held = 'materials' in share && share.materials.principle === 'difference' && share.materials.basic
    expect(held).toBe(moneyText(sums.materials, 2))
  }
})

test('revision 1 of the example is signed by all three, each signature marked as invented', async () => {
  const { id, notebook } = await told()
  const [first, ...more] = await frozenRevisions(id, notebook)
  expect(more).toEqual([])
  expect(first?.stillToSign).toEqual([])
  expect(first?.signatures.map(({ household, typedName }) => [household, typedName])).toEqual([
    ['a', 'Marnie Oakshott'],
    ['a', 'Tobias Oakshott'],
    ['b', 'Ines Vandermolen'],
  ])
  for (const { intent } of first?.signatures ?? []) expect(intent.startsWith(inventedSignature)).toBe(true)
})

test('an amendment to the example is open: one item agreed by both, one by nobody', async () => {
  const { id, document, notebook } = await told()
  const [first] = await frozenRevisions(id, notebook)
  expect(first && draftDiffers({ document }, first)).toBe(true)
  const standings = await standingsOf(id, document)
  const open = standings.filter(({ markedAt }) => !markedAt.a || !markedAt.b)
  expect(open.map(({ item }) => item.name)).toEqual(['The slope'])
  const changed = standings.filter(({ lastChange }) => lastChange !== undefined && lastChange.before !== null)
  // The three sections of which it was said, before the signing, which needs they meet.
  const meeting = ['Lane to the gardens', 'Behind the sheds', 'Orchard end']
  expect(changed.map(({ item }) => item.name).filter((name) => !meeting.includes(name))).toEqual([
    'The slope',
    'Mower gate',
  ])
  expect(changed).toHaveLength(5)
  expect(await closedByNumber(id)).toBeUndefined()
})

test('what a household of the example must have is met by a section that all have signed; that it costs little stays open', async () => {
  const { id, notebook } = await told()
  const needs = await needsOf(id, 'a')
  if (needs.both === undefined) throw new Error('Both have said what they need.')
  const { both } = needs
  const open = households.flatMap((household) =>
    needsMet(notebook.sections, household, both[household]).filter(({ sections }) => sections.length === 0),
  )
  expect(open).toMatchObject([{ need: 'low-cost', weight: 'like' }])
})

test('the households of the example disagree: an objection without an answer, and two proposals that either could accept', async () => {
  const { id, document } = await told()
  const said = await messagesOf(id, 'item:s4')
  expect(said.map(({ kind, household }) => [kind, household])).toEqual([['objection', 'b']])
  const proposals = await proposalsOf(id)
  expect(proposals.map(({ household, reply }) => [household, reply])).toEqual([
    ['a', undefined],
    ['b', undefined],
  ])
  const asked = proposals.map(({ items }) => {
    expect(proposalRefusal(document, items, {})).toBeUndefined()
    const [one] = items
    const sections = document.sections as readonly { id: string }[]
    const read = readDocument({
      ...document,
      sections: sections.map((section) => (section.id === one?.id ? one.item : section)),
    })
    const statement = read.ok ? plannedStatement(read.value.notebook) : undefined
    return statement?.ok ? statement.value.beforeCaps.a : undefined
  })
  expect(asked[0]).toBeDefined()
  expect(asked[0]).not.toBe(asked[1])
})

test('both households of the example said what they need, and the second gave its first answer', async () => {
  const { id } = await told()
  const needs = await heldBackOf({ notebookId: id, household: 'a', subject: needsSubject })
  expect(needs.own).toBeDefined()
  expect(needs.other).toMatchObject({ content: expect.stringContaining('sheep') })
  expect(await newestFirstAnswer(id)).toMatchObject({ household: 'b', answer: 'fine' })
})

test('all that happened in the example lies before the day on which it is opened, in order, and its chain leads through', async () => {
  const { id, notebook } = await told()
  const history = await historyOf(id)
  const moments = history.map(({ at }) => at.getTime())
  expect(moments).toEqual([...moments].sort((one, other) => one - other))
  expect(moments.at(-1)).toBeLessThan(opened.getTime())
  expect(leadsThrough(history, headOf(history))).toBe(true)
  const started = (await findNotebook(id))?.createdAt.toISOString().slice(0, 10) ?? ''
  for (const { date } of notebook.contributions) expect(date > started && date < '2031-08-20').toBe(true)
})
