import { agreedItems, itemKey } from '../../lib/core/agreement/agreedItems.ts'
import { signingParties } from '../../lib/core/agreement/revision.ts'
import { daysLater } from '../../lib/core/amounts/daysLater.ts'
import { assert } from '../../lib/core/assert.ts'
import { type Household, households } from '../../lib/core/people/household.ts'
import { exampleUpTo } from '../../lib/forms/exampleNotebook.ts'
import { documentText, readPart } from '../../lib/forms/parts.ts'
import { isObject, type NotebookDocument, readNotebook } from '../../lib/forms/readNotebook.ts'
import { changesOf } from '../../lib/store/changes.ts'
import { database } from '../../lib/store/database.ts'
import { issueFirstLink } from '../../lib/store/entryKeys.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { answerFirst } from '../../lib/store/firstAnswers.ts'
import { sayNeedsApart } from '../../lib/store/heldBack.ts'
import { haveSeen } from '../../lib/store/looks.ts'
import { markIn } from '../../lib/store/marks.ts'
import { sayBesideItem } from '../../lib/store/messages.ts'
import { createNotebook, documentIn } from '../../lib/store/notebooks.ts'
import { makeProposal } from '../../lib/store/proposals.ts'
import { editOnRecord } from '../../lib/store/recordedEdits.ts'
import { freezeRevision, signRevision } from '../../lib/store/revisions.ts'
import { exampleMeets, exampleNeeds, exampleSayings, inventedSignature } from '../../lib/words/exampleText.ts'
import { householdName } from '../../lib/words/labels.ts'
import { intentSentence } from '../../lib/words/signingWords.ts'
import { frozenText } from '../notebook/server/frozenText.ts'
import { withSeen } from '../notebook/server/proposalSeen.ts'
import { changeOfStored } from '../notebook/server/savePart.ts'

/** The two links of a new example, each of which opens it for its household. */
export type TheExample = { readonly id: string; readonly links: Readonly<Record<Household, string>> }

/**
 * A copy of the example with what its invented households did in it until the day before it is opened: both said what they
 * need, and which sections meet it, all signed revision 1, no. 14 had its gate widened, which both agreed to, and about the
 * work on the slope they do not agree. All by the store's own doors, so that its history is whole.
 */
export async function tellExample(opened: Date): Promise<TheExample> {
  const today = opened.toISOString().slice(0, 10)
  const document = exampleUpTo(daysLater(today, -3))
  const on = (daysAgo: number, time: string) => new Date(`${daysLater(today, -daysAgo)}T${time}Z`)
  const { id } = await createNotebook({
    document: documentText(document),
    example: true,
    at: on(59, '17:40'),
  })
  const key = (household: Household, at: Date) => issueFirstLink({ notebookId: id, household, at })
  const [a, b] = [await key('a', on(59, '17:40')), await key('b', on(58, '18:05'))]
  await becomeNeighbours(id, on)
  await signTogether(id, on)
  await changeAfterwards(id, on)
  return { id, links: { a: a.token, b: b.token } }
}

type On = (daysAgo: number, time: string) => Date

async function becomeNeighbours(notebookId: string, on: On): Promise<void> {
  const say = { notebookId, itemKey: itemKey('g1') }
  await answerFirst({
    notebookId,
    answer: { household: 'b', answer: 'fine', text: exampleSayings.firstAnswer, at: on(58, '18:20') },
    change: (stored) => ({ document: stored, changed: [], kept: 'written' }),
  })
  for (const household of households) {
    const content = JSON.stringify(exampleNeeds[household])
    await sayNeedsApart({ notebookId, household, content, at: on(57, household === 'a' ? '19:10' : '20:30') })
  }
  await edit(notebookId, 'a', on(56, '18:20'), (document) =>
    Object.entries(exampleMeets).reduce(
      (before, [id, meets]) => withItem(before, 'sections', id, { meets }),
      document,
    ),
  )
  await sayBesideItem({
    ...say,
    household: 'b',
    kind: 'remark',
    text: exampleSayings.latch,
    at: on(50, '08:15'),
  })
  await sayBesideItem({
    ...say,
    household: 'a',
    kind: 'remark',
    text: exampleSayings.latchAnswer,
    at: on(50, '12:40'),
  })
}

/** Both mark every item, it is put up for signing, and every party signs; then both have seen all that happened. */
async function signTogether(notebookId: string, on: On): Promise<void> {
  for (const household of households)
    await markAll(notebookId, household, on(36, household === 'a' ? '18:30' : '19:00'))
  const frozen = await freezeRevision({
    id: notebookId,
    household: 'a',
    at: on(36, '19:20'),
    build: frozenText,
  })
  assert('revision' in frozen, 'nothing stands in the way of signing the example')
  const { id: revisionId, sha256, canonicalText } = frozen.revision
  const read = readNotebook(canonicalText)
  assert(read.ok, 'only agreements that hold are frozen')
  const { notebook } = read.value
  for (const party of signingParties(notebook)) {
    const { household, partyIndex, name, capacity } = party
    const said = intentSentence(party, householdName(notebook, household))
    const outcome = await signRevision({
      notebookId,
      revisionId,
      sha256,
      household,
      partyIndex,
      partyName: name,
      capacity,
      typedName: name,
      intent: `${inventedSignature} ${said}`,
      at: on(35, household === 'a' ? '18:00' : '20:15'),
    })
    assert(outcome === 'signed', 'each party of the example signs once')
  }
  const [newest] = await changesOf(notebookId, { limit: 1, happenings: true })
  assert(newest !== undefined, 'there is a history by now')
  for (const household of households)
    await haveSeen({ notebookId, household, newest: newest.id, at: on(35, '20:15') })
}

async function changeAfterwards(notebookId: string, on: On): Promise<void> {
  await edit(notebookId, 'b', on(12, '09:25'), (document) =>
    withItem(document, 'gates', 'g3', { opening: '6 ft' }),
  )
  await markAll(notebookId, 'b', on(12, '09:30'), itemKey('g3'))
  await markAll(notebookId, 'a', on(11, '18:45'), itemKey('g3'))
  await edit(notebookId, 'a', on(6, '17:55'), (document) => {
    const { labour } = readPart(document, { part: 'item', id: 's4' }) ?? {}
    assert(Array.isArray(labour), 'there is work on the slope')
    return withItem(document, 'sections', 's4', { labour: labour.with(0, { ...labour[0], hours: '19' }) })
  })
  const half = { principle: 'equal' }
  const quarter = { principle: 'percent', a: '75', b: '25' }
  await proposeWork(notebookId, 'a', half, exampleSayings.clay, on(6, '18:10'))
  await sayBesideItem({
    notebookId,
    itemKey: itemKey('s4'),
    household: 'b',
    kind: 'objection',
    text: exampleSayings.objection,
    at: on(5, '07:50'),
  })
  await proposeWork(notebookId, 'b', quarter, exampleSayings.quarter, on(4, '20:05'))
}

/** Marks every item, or one, as it stands, in one transaction. */
async function markAll(notebookId: string, household: Household, at: Date, only?: string): Promise<void> {
  await database().write(async (tables) => {
    const items = agreedItems(JSON.parse(await documentIn(tables, notebookId)) as NotebookDocument)
    for (const { key, inputs } of items.filter((item) => only === undefined || item.key === only))
      await markIn(tables, { notebookId, household, itemKey: key, fingerprint: fingerprintOf(inputs), at })
  })
}

async function edit(
  id: string,
  household: Household,
  at: Date,
  change: (document: NotebookDocument) => NotebookDocument,
): Promise<void> {
  const answer = await editOnRecord({
    id,
    household,
    at,
    change: changeOfStored((document) => ({ next: change(document) })),
  })
  assert('saved' in answer, 'what the households of the example change holds')
}

/** Proposes another way to share the work on the slope. */
async function proposeWork(
  notebookId: string,
  household: Household,
  labour: object,
  text: string,
  at: Date,
): Promise<void> {
  const stored = await database().read((tables) => documentIn(tables, notebookId))
  const document = JSON.parse(stored) as NotebookDocument
  const item = readPart(document, { part: 'item', id: 's4' })
  assert(item !== undefined && isObject(item.share), 'the slope is shared')
  const proposed = { ...item, share: { ...item.share, labour } }
  const items = withSeen(document, [
    { id: 's4', fingerprint: fingerprintOf(item), was: item, item: proposed },
  ])
  await makeProposal({ notebookId, household, items, text, at, refusal: () => undefined })
}

function withItem(
  document: NotebookDocument,
  list: 'sections' | 'gates',
  id: string,
  keys: object,
): NotebookDocument {
  const items = document[list] as readonly Record<string, unknown>[]
  return { ...document, [list]: items.map((item) => (item.id === id ? { ...item, ...keys } : item)) }
}
