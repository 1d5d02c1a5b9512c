import { beforeEach, describe, expect, test, vi } from 'vitest'
import { putUpForSigning } from '../../app/notebook/server/signActions.ts'
import { wholeParts } from '../../lib/forms/parts.ts'
import { readNotebook } from '../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../lib/store/notebooks.ts'
import { everyTable } from './everyTable.ts'
import { accountOnRecord, accountPlace, confirmForm, itemBoughtForm, saidToBePaid } from './givenAccount.ts'
import { sectionForm } from './givenBasicFence.ts'
import {
  anEntry,
  boughtForm,
  markedBy,
  moveForm,
  thingForm,
  valuationForm,
  withReceipts,
  withThingTakenOff,
} from './givenBooks.ts'
import { countsApartAt, needsForm, takeForm } from './givenCounts.ts'
import { aFileOnRecord, photoForm, putFileBackForm, takeAwayForm } from './givenFiles.ts'
import {
  aFirstSplit,
  aHeading,
  aNewSection,
  chooseForm,
  endingForm,
  formOf,
  formWithFile,
  markForm,
  openedPart,
  proposalForm,
  proposalsOfBoth,
  proposingForm,
  readersLink,
  seenForm,
  signingPlace,
  takeBackForm,
  tomorrow,
} from './givenForms.ts'
import { aConversion, conversionForm, waitingConversion } from './givenHours.ts'
import { againForm, struckByEach, takenOutByEach, undoForm } from './givenUndo.ts'
import { outcomeOf } from './outcome.ts'
import { type AnyFunction, everyAction } from './serverFiles.ts'
import { browseAs, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

const id22 = 'AAAAAAAAAAAAAAAAAAAAAA'

function nested(levels: number): unknown {
  let value: unknown = 'x'
  for (let level = 0; level < levels; level += 1) value = level % 2 === 0 ? [value] : { materials: value }
  return value
}

function loop(): unknown {
  const value: Record<string, unknown> = { name: 'round and round' }
  value.materials = [value]
  return value
}

/** A few objects that, written out, would fill the memory: each holds the one below it twice. */
function doubled(levels: number): unknown {
  let value: unknown = {}
  for (let level = 0; level < levels; level += 1) value = { materials: [value, value] }
  return value
}

/** What a browser that means no good can send in the place of any argument: all that React's reply format can carry. */
const hostileValues: Readonly<Record<string, () => unknown>> = {
  nothing: () => undefined,
  null: () => null,
  'a number': () => 7,
  'no number': () => Number.NaN,
  'a number below zero': () => -1,
  'an endless number': () => Number.POSITIVE_INFINITY,
  'a big integer': () => 10n ** 40n,
  yes: () => true,
  'an empty text': () => '',
  'a text of 3 MB': () => 'x'.repeat(3_000_000),
  'a path': () => '../../etc/passwd',
  'a name that every object has': () => 'constructor',
  'a prototype’s name': () => '__proto__',
  'a zero byte': () => '\u0000',
  'half a character': () => '\ud800',
  'a list': () => [],
  'a list that reads as an id': () => [id22],
  'a list that reads as a token': () => ['x'.repeat(43)],
  'an object': () => ({}),
  'an object without a prototype': () => Object.create(null),
  'an object that brings a prototype': () =>
    JSON.parse('{"__proto__":{"household":"b","part":"line","intent":true}}'),
  'an object that cannot be text': () => ({ toString: 1, valueOf: 1 }),
  'lists 70 deep': () => nested(70),
  'an object 3,000 deep': () => ({ materials: nested(3_000) }),
  'an object 100,000 deep': () => ({ materials: nested(100_000) }),
  'an object that holds itself': loop,
  'an object that shares its parts': () => doubled(25),
  'a day that is none': () => new Date(Number.NaN),
  'a map': () => new Map([['household', 'b']]),
  'a set': () => new Set(['a']),
  'a symbol': () => Symbol.for('react.element'),
  bytes: () => new Uint8Array(8),
  'a file': () => new File(['{}'], 'x.json'),
  'an empty form': () => new FormData(),
  'a form with a prototype’s name': () => formOf({ ['__proto__']: 'x', constructor: 'y' }),
}

/**
 * For each action: arguments that would succeed, from the first one on, and the places of those that it reads. What it
 * does not read may be anything; what it reads may not.
 */
type Reading = {
  readonly sends: (notebookId: string) => unknown[] | Promise<unknown[]>
  readonly reads: readonly number[]
}

const item = { part: 'item', id: 's1' } as const
const press = (id: string) => [id, {}, new FormData()]

const readings: Readonly<Record<string, Reading>> = {
  'app/notebook/server/actions.ts#saveNotebookPart': {
    sends: async (id) => {
      const { draft, base } = await openedPart(id, item)
      return [id, item, base, { ...draft, name: 'Another name' }]
    },
    reads: [0, 1, 2, 3],
  },
  'app/notebook/server/actions.ts#addNotebookItem': {
    sends: (id) => [id, 'section', 'new', aNewSection],
    reads: [0, 1, 3],
  },
  'app/notebook/server/firstSplitActions.ts#keepFirstSplit': {
    sends: (id) => [id, 'new', aFirstSplit],
    reads: [0, 2],
  },
  'app/notebook/server/actions.ts#removeNotebookItem': {
    sends: async (id) => [id, 'g4', (await openedPart(id, { part: 'item', id: 'g4' })).base],
    reads: [0, 1, 2],
  },
  'app/notebook/server/putBackActions.ts#putItemBack': {
    sends: (id) => [id, {}, formOf({ id: 'g4' })],
    reads: [0, 2],
  },
  'app/notebook/server/undoActions.ts#undoEdit': {
    sends: async (id) => [id, {}, await undoForm(id, 'a')],
    reads: [0, 2],
  },
  'app/notebook/server/entryAgainActions.ts#enterAgain': {
    sends: async (id) => [id, {}, await againForm(id, 'a')],
    reads: [0, 2],
  },
  'app/notebook/server/unitsActions.ts#showLengthsIn': {
    sends: (id) => [id, {}, formOf({ units: 'metric' })],
    reads: [0, 2],
  },
  'app/notebook/server/actions.ts#moveNotebookItem': {
    sends: (id) => [id, {}, formOf({ id: 's1', way: 'down' })],
    reads: [0, 2],
  },
  'app/notebook/server/actions.ts#agreeToItem': {
    sends: async (id) => [id, {}, await markForm(id, 'line')],
    reads: [0, 2],
  },
  'app/notebook/server/actions.ts#takeAgreementBack': {
    sends: async (id) => [id, {}, await markForm(id, 'line')],
    reads: [0, 2],
  },
  // Begun already in the notebook of this world, so that it only leads there.
  'app/notebook/server/arrangementActions.ts#beginArrangements': { sends: press, reads: [0] },
  'app/notebook/server/arrangementActions.ts#saveArrangements': {
    sends: async (id) => {
      const { base } = await openedPart(id, { part: 'arrangements' })
      return [id, base, { arrangements: { tolerance: '12.5' } }]
    },
    reads: [0, 1, 2],
  },
  'app/notebook/server/arrangementActions.ts#removeArrangements': {
    sends: async (id) => [id, (await openedPart(id, { part: 'arrangements' })).base],
    reads: [0, 1],
  },
  'app/notebook/server/bookActions.ts#enterContribution': {
    sends: (id) => [id, 'new', anEntry()],
    reads: [0, 2],
  },
  'app/notebook/server/bookActions.ts#takeEntryBack': {
    sends: async (id) => [id, {}, await takeBackForm(id, 0)],
    reads: [0, 2],
  },
  'app/notebook/server/transferActions.ts#confirmTransfer': {
    sends: async (id) => [id, {}, await confirmForm(id, 'a')],
    reads: [0, 2],
  },
  'app/notebook/server/account/accountActions.ts#drawUpAccount': { sends: press, reads: [0] },
  'app/notebook/server/account/accountActions.ts#signAccount': {
    sends: async (id) => [
      id,
      await accountPlace(id),
      'new',
      { typedName: 'Marnie Oakshott', intent: true, drawing: '' },
    ],
    reads: [0, 1, 3],
  },
  'app/notebook/server/boughtActions.ts#markLineBought': {
    sends: (id) => [id, {}, boughtForm()],
    reads: [0, 2],
  },
  'app/notebook/server/itemBoughtActions.ts#markItemBought': {
    sends: async (id) => [id, {}, await itemBoughtForm(id, 'a')],
    reads: [0, 2],
  },
  'app/notebook/server/boughtActions.ts#takeLineMarkBack': {
    sends: (id) => [id, {}, boughtForm()],
    reads: [0, 2],
  },
  'app/notebook/server/entryActions.ts#moveEntryLine': {
    sends: async (id) => [id, {}, await moveForm(id, 'a')],
    reads: [0, 2],
  },
  'app/notebook/server/entryActions.ts#markValuation': {
    sends: async (id) => [id, {}, await valuationForm(id)],
    reads: [0, 2],
  },
  'app/notebook/server/entryActions.ts#takeValuationBack': {
    sends: async (id) => [id, {}, await valuationForm(id)],
    reads: [0, 2],
  },
  'app/notebook/server/thingMarkActions.ts#markThingValue': {
    sends: async (id) => [id, {}, await thingForm(id)],
    reads: [0, 2],
  },
  'app/notebook/server/thingMarkActions.ts#takeThingMarkBack': {
    sends: async (id) => [id, {}, await thingForm(id)],
    reads: [0, 2],
  },
  'app/notebook/server/thingMarkActions.ts#takeThingAway': {
    sends: async (id) => [id, {}, await thingForm(id)],
    reads: [0, 2],
  },
  'app/notebook/server/thingMarkActions.ts#putThingOnListAgain': {
    sends: async (id) => [id, {}, await thingForm(id, 1)],
    reads: [0, 2],
  },
  'app/notebook/server/thingActions.ts#saveThing': {
    sends: async (id) => {
      const fingerprint = (await thingForm(id)).get('fingerprint')
      return [id, 0, fingerprint, { kind: 'leftover', what: 'mesh, 10 ft', item: 's2' }]
    },
    reads: [0, 1, 2, 3],
  },
  'app/notebook/server/closingActions.ts#openAgain': { sends: press, reads: [0] },
  'app/notebook/server/conversionActions.ts#askConversion': {
    sends: (id) => [id, 'new', aConversion],
    reads: [0, 2],
  },
  'app/notebook/server/conversionActions.ts#agreeToConversion': {
    sends: async (id) => [id, {}, await conversionForm(id, 'b')],
    reads: [0, 2],
  },
  'app/notebook/server/conversionActions.ts#withdrawConversion': {
    sends: async (id) => [id, {}, await conversionForm(id, 'a')],
    reads: [0, 2],
  },
  'app/notebook/server/sideBySideActions.ts#chooseWay': {
    sends: async (id) => [id, {}, await chooseForm(id, 's1', 'one-b')],
    reads: [0, 2],
  },
  'app/notebook/server/lookActions.ts#haveSeenChanges': {
    sends: async (id) => [id, {}, await seenForm(id)],
    reads: [0, 2],
  },
  'app/notebook/server/tryActions.ts#keepTried': {
    sends: (id) => [
      id,
      '',
      {
        edits: [{ item: 's1', field: 'unitPrice', line: 0, text: '21.50' }],
        moves: { prices: '', hours: '', rates: '' },
      },
      'Pipe got dearer.',
    ],
    reads: [0, 2],
  },
  'app/notebook/server/takeOffActions.ts#offerQuantities': {
    sends: (id) => [id, {}, formOf({ id: 's1' })],
    reads: [0, 2],
  },
  'app/notebook/server/buildUpActions.ts#keepBuildUp': {
    sends: (id) => [id, 's1', 'new', { name: 'Our pipe and mesh' }],
    reads: [0, 1, 3],
  },
  'app/notebook/server/proposalActions.ts#sendProposal': {
    sends: async (id) => {
      const { base, draft } = await proposingForm(id)
      return [id, 0, base, draft]
    },
    reads: [0, 1, 3],
  },
  'app/notebook/server/proposalActions.ts#previewProposal': {
    sends: async (id) => [id, 0, (await proposingForm(id)).draft],
    reads: [0, 1, 2],
  },
  'app/notebook/server/proposalReplyActions.ts#acceptTheirs': {
    sends: async (id) => [id, {}, await proposalForm(id, 'b')],
    reads: [0, 2],
  },
  'app/notebook/server/proposalReplyActions.ts#declineTheirs': {
    sends: async (id) => [id, {}, await proposalForm(id, 'b', { text: 'No.' })],
    reads: [0, 2],
  },
  'app/notebook/server/proposalReplyActions.ts#withdrawOwn': {
    sends: async (id) => [id, {}, await proposalForm(id, 'a')],
    reads: [0, 2],
  },
  'app/notebook/server/proposalReplyActions.ts#proposeAnew': {
    sends: async (id) => [id, {}, await proposalForm(id, 'b')],
    reads: [0, 2],
  },
  'app/notebook/server/basicFenceActions.ts#holdAgainstBasicFence': {
    sends: async (id) => [id, {}, await sectionForm(id, 's1', { pots: 'apart', above: 'a' })],
    reads: [0, 2],
  },
  'app/notebook/server/basicFenceActions.ts#offerBasicQuantities': {
    sends: async (id) => [id, {}, await sectionForm(id, 's1')],
    reads: [0, 2],
  },
  'app/notebook/server/basicFenceActions.ts#removeBasicFence': {
    sends: async (id) => [id, {}, await sectionForm(id, 's1')],
    reads: [0, 2],
  },
  'app/notebook/server/fileActions.ts#replaceByFile': {
    sends: (id) => [id, {}, formWithFile('{}')],
    reads: [0, 2],
  },
  'app/notebook/server/storedFileActions.ts#addFiles': {
    sends: async (id) => [id, {}, await photoForm()],
    reads: [0, 2],
  },
  'app/notebook/server/storedFileActions.ts#takeAwayFile': {
    sends: async (id) => [id, {}, await takeAwayForm(id, 'a')],
    reads: [0, 2],
  },
  'app/notebook/server/storedFileActions.ts#putFileBack': {
    sends: async (id) => [id, {}, await putFileBackForm(id, 'a')],
    reads: [0, 2],
  },
  'app/notebook/server/firstAnswerActions.ts#giveFirstAnswer': {
    sends: (id) => {
      browseAs(world(), 'b')
      return [id, {}, formOf({ answer: 'not now', until: tomorrow() })]
    },
    reads: [0, 2],
  },
  'app/notebook/server/letterActions.ts#inviteByLetter': { sends: (id) => [id], reads: [0] },
  'app/notebook/server/linkActions.ts#invite': { sends: (id) => [id], reads: [0] },
  'app/notebook/server/linkActions.ts#forgetNewLink': { sends: press, reads: [0] },
  'app/notebook/server/linkActions.ts#replaceOwnLink': { sends: press, reads: [0] },
  'app/notebook/server/linkActions.ts#leave': { sends: press, reads: [0] },
  'app/notebook/server/linkActions.ts#seeAsOther': { sends: press, reads: [0] },
  'app/notebook/server/messageActions.ts#sayAboutItem': {
    sends: (id) => [id, 'line', 'new', { kind: 'remark', text: 'Hm.', answers: '' }],
    reads: [0, 1, 3],
  },
  'app/notebook/server/needsActions.ts#sayNeeds': {
    sends: (id) => [id, 'new', needsForm()],
    reads: [0, 2],
  },
  'app/notebook/server/passageActions.ts#countThePassages': {
    sends: (id) => [id, 'g3', 'new', { a: '5', b: '9' }],
    reads: [0, 1, 3],
  },
  'app/notebook/server/passageActions.ts#takeCount': {
    sends: async (id) => [id, {}, await takeForm(id, 'a')],
    reads: [0, 2],
  },
  'app/notebook/server/readerActions.ts#makeReadersLink': {
    sends: (id) => [id, 'new', { label: 'the bank', content: 'costs', through: tomorrow() }],
    reads: [0, 2],
  },
  'app/notebook/server/readerActions.ts#endReadersLink': {
    sends: async (id) => [id, {}, await endingForm(id)],
    reads: [0, 2],
  },
  'app/notebook/server/signActions.ts#putUpForSigning': { sends: press, reads: [0] },
  'app/notebook/server/signActions.ts#signForParty': {
    sends: async (id) => [
      id,
      await signingPlace(id),
      'new',
      { typedName: 'Marnie Oakshott', intent: true, drawing: '' },
    ],
    reads: [0, 1, 3],
  },
  'app/check/actions.ts#checkThisRecord': { sends: () => [{}, new FormData()], reads: [1] },
  'app/start/actions.ts#startNotebook': { sends: () => ['new', aHeading], reads: [1] },
  'app/start/actions.ts#startFromFile': { sends: () => [{}, formWithFile('{}')], reads: [1] },
  // Whatever it is sent, it opens a copy of the example.
  'app/start/actions.ts#openExample': { sends: () => [{}, new FormData()], reads: [] },
  'app/open/actions.ts#followLink': {
    sends: () => [{}, formOf({ link: `http://localhost:3000/open/${world().notebook.links.b}` })],
    reads: [1],
  },
  'app/open/[token]/actions.ts#openByLink': {
    sends: () => [world().notebook.links.b, {}, new FormData()],
    reads: [0],
  },
  'app/open/[token]/actions.ts#claim': {
    sends: () => [world().waiting.invitation, {}, new FormData()],
    reads: [0],
  },
}

beforeEach(async () => {
  const { notebook } = world()
  browseAs(world(), 'a')
  await countsApartAt(notebook.id)
  await markEverything(notebook.id)
  await outcomeOf(() => putUpForSigning(notebook.id, {}, new FormData()))
  await readersLink(notebook.id)
  await aFileOnRecord(notebook.id, 'a')
  await proposalsOfBoth(notebook.id)
  for (const household of ['a', 'b'] as const) await waitingConversion(notebook.id, household)
  await saidToBePaid(notebook.id, 'b')
  await accountOnRecord(notebook.id)
  await withReceipts(notebook.id)
  await withThingTakenOff(notebook.id, markedBy('a'))
  await struckByEach(notebook.id)
  await takenOutByEach(notebook.id)
})

async function action(name: string): Promise<AnyFunction> {
  return (await everyAction()).get(name) as AnyFunction
}

test('every action is here', async () => {
  expect(Object.keys(readings).sort()).toEqual([...(await everyAction()).keys()].sort())
})

describe.each(Object.entries(readings))('%s', (name, { sends, reads }) => {
  test.each(reads)('survives anything in the place of argument %i, and changes nothing', async (place) => {
    const { notebook } = world()
    const before = await everyTable()
    // Nothing they lead to may change, so they stay right to the end.
    const values = await sends(notebook.id)
    const called = await action(name)
    for (const [what, make] of Object.entries(hostileValues)) {
      const end = await outcomeOf(() => called(...values.with(place, make()))).catch((thrown) => ({
        kind: 'broke',
        thrown: String(thrown),
      }))
      expect([what, end.kind]).toEqual([what, expect.stringMatching(/^(answer|not found)$/)])
    }
    expect(await everyTable()).toEqual(before)
  })

  test('survives having nothing sent at all', async () => {
    const before = await everyTable()
    const end = await outcomeOf(async () => (await action(name))())
    expect(['not found', 'answer', 'redirect']).toContain(end.kind)
    if (!name.endsWith('#openExample')) expect(await everyTable()).toEqual(before)
  })
})

test('the example is opened for the first household, whatever is sent for a household', async () => {
  const openExample = await action('app/start/actions.ts#openExample')
  for (const [what, make] of Object.entries(hostileValues)) {
    expect([what, await outcomeOf(() => openExample({}, make()))]).toMatchObject([what, { kind: 'redirect' }])
  }
  const { Session: sessions = [], Notebook: notebooks = [] } = await everyTable()
  const opened = notebooks.slice(-Object.keys(hostileValues).length)
  const letIn = sessions.filter(({ notebookId }) => opened.some(({ id }) => id === notebookId))
  expect(letIn.map(({ household }) => household)).toEqual(opened.map(() => 'a'))
})

const oddFields: Readonly<Record<string, (form: FormData, field: string) => void>> = {
  missing: (form, field) => form.delete(field),
  empty: (form, field) => form.set(field, ''),
  'a file': (form, field) => form.set(field, new File(['x'], 'x')),
  '3 MB long': (form, field) => form.set(field, 'x'.repeat(3_000_000)),
  'a prototype’s name': (form, field) => form.set(field, '__proto__'),
  'a path': (form, field) => form.set(field, '../../s1'),
  'with half a character': (form, field) => form.set(field, '\ud800'),
  'a fraction': (form, field) => form.set(field, '0.5'),
  'an endless number': (form, field) => form.set(field, '1e999'),
}

describe.each([
  ['app/notebook/server/putBackActions.ts#putItemBack', () => formOf({ id: 'g4' }), ['id']],
  ['app/notebook/server/undoActions.ts#undoEdit', (id: string) => undoForm(id, 'a'), ['edit']],
  [
    'app/notebook/server/entryAgainActions.ts#enterAgain',
    (id: string) => againForm(id, 'a'),
    ['index', 'fingerprint'],
  ],
  ['app/notebook/server/unitsActions.ts#showLengthsIn', () => formOf({ units: 'metric' }), ['units']],
  ['app/notebook/server/actions.ts#moveNotebookItem', () => formOf({ id: 's1', way: 'down' }), ['id', 'way']],
  [
    'app/notebook/server/actions.ts#agreeToItem',
    (id: string) => markForm(id, 'line'),
    ['itemKey', 'fingerprint'],
  ],
  [
    'app/notebook/server/actions.ts#takeAgreementBack',
    (id: string) => markForm(id, 'line'),
    ['itemKey', 'fingerprint'],
  ],
  [
    'app/notebook/server/bookActions.ts#takeEntryBack',
    (id: string) => takeBackForm(id, 1),
    ['index', 'fingerprint'],
  ],
  [
    'app/notebook/server/transferActions.ts#confirmTransfer',
    (id: string) => confirmForm(id, 'a'),
    ['index', 'fingerprint'],
  ],
  ['app/notebook/server/boughtActions.ts#markLineBought', () => boughtForm(), ['line', 'amount']],
  [
    'app/notebook/server/itemBoughtActions.ts#markItemBought',
    (id: string) => itemBoughtForm(id, 'a'),
    ['item', 'fingerprint'],
  ],
  ['app/notebook/server/boughtActions.ts#takeLineMarkBack', () => boughtForm(), ['line']],
  [
    'app/notebook/server/entryActions.ts#moveEntryLine',
    (id: string) => moveForm(id, 'a'),
    ['index', 'line', 'fingerprint'],
  ],
  ['app/notebook/server/entryActions.ts#markValuation', valuationForm, ['index', 'fingerprint']],
  [
    'app/notebook/server/thingMarkActions.ts#markThingValue',
    (id: string) => thingForm(id),
    ['index', 'fingerprint'],
  ],
  [
    'app/notebook/server/thingMarkActions.ts#takeThingAway',
    (id: string) => thingForm(id),
    ['index', 'fingerprint'],
  ],
  [
    'app/notebook/server/thingMarkActions.ts#putThingOnListAgain',
    (id: string) => thingForm(id, 1),
    ['index', 'fingerprint'],
  ],
  [
    'app/notebook/server/conversionActions.ts#agreeToConversion',
    (id: string) => conversionForm(id, 'b'),
    ['index', 'fingerprint'],
  ],
  [
    'app/notebook/server/conversionActions.ts#withdrawConversion',
    (id: string) => conversionForm(id, 'a'),
    ['index', 'fingerprint'],
  ],
  [
    'app/notebook/server/sideBySideActions.ts#chooseWay',
    (id: string) => chooseForm(id, 's1', 'one-b'),
    ['id', 'way', 'fingerprint'],
  ],
  [
    'app/notebook/server/firstAnswerActions.ts#giveFirstAnswer',
    () => {
      browseAs(world(), 'b')
      return formOf({ answer: 'a question', text: 'Who mends it?', about: 'item:s1' })
    },
    ['answer', 'about'],
  ],
  [
    'app/notebook/server/firstAnswerActions.ts#giveFirstAnswer',
    () => {
      browseAs(world(), 'b')
      return formOf({ answer: 'not now', until: tomorrow() })
    },
    ['until'],
  ],
  [
    'app/notebook/server/proposalReplyActions.ts#acceptTheirs',
    (id: string) => proposalForm(id, 'b'),
    ['id', 'shown'],
  ],
  [
    'app/notebook/server/proposalReplyActions.ts#declineTheirs',
    (id: string) => proposalForm(id, 'b', { text: 'No.' }),
    ['id'],
  ],
  ['app/notebook/server/proposalReplyActions.ts#withdrawOwn', (id: string) => proposalForm(id, 'a'), ['id']],
  [
    'app/notebook/server/proposalReplyActions.ts#proposeAnew',
    (id: string) => proposalForm(id, 'b'),
    ['id', 'shown'],
  ],
  [
    'app/notebook/server/passageActions.ts#takeCount',
    (id: string) => takeForm(id, 'b'),
    ['id', 'count', 'fingerprint'],
  ],
  ['app/notebook/server/storedFileActions.ts#addFiles', photoForm, ['file', 'kind']],
  ['app/notebook/server/storedFileActions.ts#takeAwayFile', (id: string) => takeAwayForm(id, 'a'), ['id']],
] as const)('%s', (name, makeForm, fields) => {
  test.each(fields)('changes nothing when %s is not what its form holds', async (field) => {
    const { notebook } = world()
    const before = await everyTable()
    for (const [what, spoil] of Object.entries(oddFields)) {
      const form = await makeForm(notebook.id)
      spoil(form, field)
      // An item that is not there is no fault of the press: there is nothing to move, or to take a mark off.
      const end = await outcomeOf(async () => (await action(name))(notebook.id, {}, form))
      expect([what, end.kind]).toEqual([what, expect.stringMatching(/^(answer|redirect)$/)])
      expect([what, await everyTable()]).toEqual([what, before])
    }
  })
})

describe('a text that no file can carry', () => {
  test.each<[string, unknown]>([
    ['half a character', 'x\ud800y'],
    ['half a character in a key', { 'x\udc00': 'y' }],
    ['lists that are deeper than any notebook', nested(70)],
  ])('is refused in every form, so that the notebook can still be read: %s', async (_what, odd) => {
    const { notebook } = world()
    const before = await everyTable()
    const actions = await everyAction()
    const save = actions.get('app/notebook/server/actions.ts#saveNotebookPart') as AnyFunction
    for (const part of wholeParts) {
      const { draft, base } = await openedPart(notebook.id, { part })
      for (const [key, value] of Object.entries(draft)) {
        const spoilt = Array.isArray(value)
          ? [...value, { what: odd, text: odd, extra: odd }]
          : typeof value === 'object'
            ? { ...value, extra: odd }
            : odd
        const end = await outcomeOf(() => save(notebook.id, { part }, base, { ...draft, [key]: spoilt }))
        expect([part, key, end]).toEqual([
          part,
          key,
          { kind: 'answer', answer: { faults: expect.anything() } },
        ])
      }
    }
    const { draft, base } = await openedPart(notebook.id, item)
    const add = actions.get('app/notebook/server/actions.ts#addNotebookItem') as AnyFunction
    const enter = actions.get('app/notebook/server/bookActions.ts#enterContribution') as AnyFunction
    const start = actions.get('app/start/actions.ts#startNotebook') as AnyFunction
    const given = anEntry({ note: odd, extra: odd })
    for (const call of [
      () => save(notebook.id, item, base, { ...draft, notes: odd, extra: odd }),
      () => add(notebook.id, 'section', 'new', { ...aNewSection, notes: odd, extra: odd }),
      () => enter(notebook.id, 'new', given),
      () =>
        start('new', {
          ...aHeading,
          households: { a: { ...aHeading.households.a, extra: odd }, b: aHeading.households.b },
        }),
    ]) {
      expect(await outcomeOf(call)).toEqual({ kind: 'answer', answer: { faults: expect.anything() } })
    }
    expect(await everyTable()).toEqual(before)
    expect(readNotebook((await findNotebook(notebook.id))?.document ?? '').ok).toBe(true)
  })
})

test('a household that says to go anywhere else than its notebook is led to its notebook', async () => {
  const { notebook, other } = world()
  const home = `/notebook/${notebook.id}`
  const agree = await action('app/notebook/server/actions.ts#agreeToItem')
  for (const back of [
    'https://elsewhere.example/',
    '//elsewhere.example',
    `/notebook/${other.id}`,
    `${home}x`,
    `${home}/../${other.id}`,
    `${home}#/../${other.id}`,
    `${home}/line\r\nSet-Cookie: x=y`,
    `${home}/Ł`,
    `${home}/${'x'.repeat(10_000)}`,
    'javascript:alert(1)',
    '',
  ]) {
    const form = await markForm(notebook.id, 'line')
    form.set('back', back)
    expect([back, await outcomeOf(() => agree(notebook.id, {}, form))]).toEqual([
      back,
      { kind: 'redirect', to: home },
    ])
  }
  for (const back of [home, `${home}#look-gate-2`, `${home}/item/s%2F1`, `${home}/terms#decisions`]) {
    const form = await markForm(notebook.id, 'line')
    form.set('back', back)
    expect(await outcomeOf(() => agree(notebook.id, {}, form))).toEqual({ kind: 'redirect', to: back })
  }
})
