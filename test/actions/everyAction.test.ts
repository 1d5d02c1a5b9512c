import { beforeEach, describe, expect, test, vi } from 'vitest'
import { leave, replaceOwnLink } from '../../app/notebook/server/linkActions.ts'
import { putUpForSigning } from '../../app/notebook/server/signActions.ts'
import { type Household, otherHousehold } from '../../lib/core/people/household.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { editNotebook } from '../../lib/store/notebooks.ts'
import { filesOf, takeFileAway } from '../../lib/store/storedFiles.ts'
import { openBrowser } from './browser.ts'
import { everyTable, newRows, type Remembered } from './everyTable.ts'
import {
  accountPlace,
  confirmForm,
  drawnUp,
  itemBoughtForm,
  saidToBePaid,
  settledBooks,
} from './givenAccount.ts'
import { aBasicFence, sectionForm } from './givenBasicFence.ts'
import {
  anEntry,
  augerHire,
  boughtForm,
  leftover,
  markedBy,
  moveForm,
  thingForm,
  valuationForm,
  withBooks,
  withReceipts,
  withThing,
  withThings,
  withThingTakenOff,
} from './givenBooks.ts'
import { countsApartAt, needsForm, takeForm } from './givenCounts.ts'
import { aFileOnRecord, photoForm, putFileBackForm, takeAwayForm } from './givenFiles.ts'
import {
  aFirstSplit,
  aHeading,
  aLetterIn,
  aNewSection,
  changedFile,
  chooseForm,
  endingForm,
  formOf,
  formWithFile,
  gateRemovedFrom,
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
import { aConversion, conversionForm, putArrangements, waitingConversion } from './givenHours.ts'
import { againForm, struckByEach, takenOutByEach, undoForm } from './givenUndo.ts'
import { type Outcome, outcomeOf } from './outcome.ts'
import { type AnyFunction, everyAction, serverActionFiles } from './serverFiles.ts'
import { browseAs, markEverything, sessionCookie, strangers, type World, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

/** How a call ends for a household that was let in: where it leads, or the key of its answer. */
type End = { readonly to: string } | { readonly answers: string }

/** An action of a notebook: what a household that means well would send, and what comes of it for each of the two. */
type NotebookAction = {
  /** What has to stand before the action makes sense. */
  readonly before?: (world: World) => Promise<unknown>
  readonly sends: (notebookId: string, household: Household) => unknown[] | Promise<unknown[]>
  readonly a: End
  readonly b: End
  /** Tables in which something changes; none where both are refused, or only cookies change. */
  readonly changes: readonly string[] | Readonly<Record<Household, readonly string[]>>
  /** Whom the rows that change name, where it is not the one who asks alone. */
  readonly names?: readonly Household[]
}

const line = { part: 'line' } as const
const bothSaved = { a: { answers: 'saved' }, b: { answers: 'saved' } } as const
const bothTo = (page: string) => ({ a: { to: page }, b: { to: page } }) as const
const press = () => [{}, new FormData()]

const markedEverywhere = async ({ notebook, waiting }: World) => {
  await markEverything(notebook.id)
  await markEverything(waiting.id)
}
const putUp = async (there: World) => {
  await markedEverywhere(there)
  for (const [id, session] of [
    [there.notebook.id, there.notebook.sessions.a],
    [there.waiting.id, there.waiting.session],
  ] as const) {
    openBrowser({ [sessionCookie(id)]: session })
    await outcomeOf(() => putUpForSigning(id, {}, new FormData()))
  }
}
const linkedForReading = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting]) await readersLink(id)
}
const aFileOfEach = async ({ notebook, waiting }: World) => {
  for (const id of [notebook.id, waiting.id])
    for (const household of ['a', 'b'] as const) await aFileOnRecord(id, household)
}
const filesTakenAway = async (there: World) => {
  await aFileOfEach(there)
  for (const { id } of [there.notebook, there.waiting])
    for (const { id: file, household } of await filesOf(id))
      await takeFileAway({ notebookId: id, id: file, household, at: new Date('2027-03-03T18:00:00Z') })
}
const proposedEverywhere = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting]) await proposalsOfBoth(id)
}
const countedApart = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting]) await countsApartAt(id)
}
const withClosing = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting])
    await editNotebook({
      id,
      household: 'a',
      at: new Date('2027-10-01T10:00:00Z'),
      change: (document) => ({
        document: documentText({ ...JSON.parse(document), closing: { on: '2027-09-30' } }),
        changed: [{ itemKey: 'closing', before: undefined, after: { on: '2027-09-30' } }],
        kept: undefined,
      }),
    })
}
const withArrangements = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting]) await putArrangements(id, { tolerance: '10' })
}
const waitingConversions = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting])
    for (const household of ['a', 'b'] as const) await waitingConversion(id, household)
}
const withoutArrangements = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting]) await putArrangements(id, undefined)
}
const withBasicFence = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting]) await aBasicFence(id, 's1')
}
const paymentsOfEach = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting])
    for (const household of ['a', 'b'] as const) await saidToBePaid(id, household)
}
const settledEverywhere = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting]) await settledBooks(id)
}
const drawnUpEverywhere = async (there: World) => {
  await settledEverywhere(there)
  for (const { id } of [there.notebook, there.waiting]) await drawnUp(id)
}
const aTriedChange = {
  edits: [{ item: 's1', field: 'unitPrice', line: 0, text: '21.50' }],
  moves: { prices: '', hours: '10', rates: '' },
}
const withLetter = async ({ notebook, waiting }: World) => {
  for (const { id } of [notebook, waiting]) await aLetterIn(id)
}
const inEach =
  (change: (id: string) => Promise<void>) =>
  async ({ notebook, waiting }: World) => {
    for (const { id } of [notebook, waiting]) await change(id)
  }
const gateRemoved = inEach(gateRemovedFrom)
const receiptsOfEach = inEach(withReceipts)
const aThingOfEach = inEach((id) => withThing(id))
// What both have marked is taken back by neither alone, so each has a mark of its own that waits.
const aThingMarkedByEach = inEach((id) =>
  withThings(id, { ...leftover, marks: markedBy('a') }, { ...leftover, marks: markedBy('b') }),
)
const aThingTakenOff = inEach((id) => withThingTakenOff(id))
const boughtByEach = inEach(async (id) => {
  await withReceipts(id)
  const bought = [
    { ...augerHire, amount: '120.00', marks: markedBy('a') },
    { ...augerHire, amount: '60.00', marks: markedBy('b') },
  ]
  await withBooks(id, (document) => ({ ...document, books: { bought } }))
})
const valuedByEach = inEach(async (id) => {
  await withReceipts(id)
  await withBooks(id, (document) => ({
    ...document,
    contributions: (document.contributions as { valuation?: object }[]).flatMap((entry) => {
      const markedAs = (note: string, household: Household) => ({
        ...entry,
        note,
        valuation: { ...entry.valuation, marks: markedBy(household) },
      })
      return entry.valuation ? [markedAs('pipe of a', 'a'), markedAs('pipe of b', 'b')] : [entry]
    }),
  }))
})
const signer = { a: 'Marnie Oakshott', b: 'Ines Vandermolen' }

const ofNotebooks: Readonly<Record<string, NotebookAction>> = {
  'app/notebook/server/actions.ts#saveNotebookPart': {
    sends: async (id) => {
      const { draft, base } = await openedPart<{ line: object }>(id, line)
      return [line, base, { line: { ...draft.line, start: 'iron pin, found' } }]
    },
    ...bothSaved,
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/actions.ts#addNotebookItem': {
    sends: () => ['section', 'new', aNewSection],
    ...bothTo('/item/s6'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/firstSplitActions.ts#keepFirstSplit': {
    sends: () => ['new', aFirstSplit],
    ...bothTo(''),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/actions.ts#removeNotebookItem': {
    sends: async (id) => ['g4', (await openedPart(id, { part: 'item', id: 'g4' })).base],
    ...bothTo(''),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/putBackActions.ts#putItemBack': {
    before: gateRemoved,
    sends: () => [{}, formOf({ id: 'g4' })],
    ...bothTo('/item/g4'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/undoActions.ts#undoEdit': {
    before: inEach(takenOutByEach),
    sends: async (id, household) => [{}, await undoForm(id, household)],
    ...bothTo('/changes'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/entryAgainActions.ts#enterAgain': {
    before: inEach(struckByEach),
    sends: async (id, household) => [{}, await againForm(id, household)],
    ...bothTo('/money'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/unitsActions.ts#showLengthsIn': {
    sends: () => [{}, formOf({ units: 'metric' })],
    a: { answers: 'done' },
    b: { answers: 'done' },
    changes: [],
  },
  'app/notebook/server/actions.ts#moveNotebookItem': {
    sends: () => [{}, formOf({ id: 's1', way: 'down' })],
    ...bothTo(''),
    changes: ['Notebook'],
  },
  'app/notebook/server/actions.ts#agreeToItem': {
    sends: async (id) => [{}, await markForm(id, 'line')],
    ...bothTo('/line'),
    changes: ['Change', 'Mark'],
  },
  'app/notebook/server/actions.ts#takeAgreementBack': {
    before: markedEverywhere,
    sends: async (id) => [{}, await markForm(id, 'line')],
    ...bothTo('/line'),
    changes: ['Change', 'Mark'],
  },
  'app/notebook/server/arrangementActions.ts#beginArrangements': {
    before: withoutArrangements,
    sends: press,
    ...bothTo('/arrangements'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/arrangementActions.ts#saveArrangements': {
    sends: async (id) => {
      const { base } = await openedPart(id, { part: 'arrangements' })
      return [base, { arrangements: { tolerance: '12.5' } }]
    },
    ...bothSaved,
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/arrangementActions.ts#removeArrangements': {
    before: withArrangements,
    sends: async (id) => [(await openedPart(id, { part: 'arrangements' })).base],
    ...bothTo('/arrangements'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/bookActions.ts#enterContribution': {
    sends: (_id, household) => ['new', anEntry({ household })],
    ...bothTo('/money'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/bookActions.ts#takeEntryBack': {
    // Each household takes back an entry that it wrote: the first of a, the fourth of b.
    sends: async (id, household) => [{}, await takeBackForm(id, household === 'a' ? 0 : 3)],
    ...bothTo('/money'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/transferActions.ts#confirmTransfer': {
    before: paymentsOfEach,
    sends: async (id, household) => [{}, await confirmForm(id, household)],
    ...bothTo('/money'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/account/accountActions.ts#drawUpAccount': {
    before: settledEverywhere,
    sends: press,
    ...bothTo('/final-account'),
    changes: ['Change', 'FinalAccount'],
  },
  'app/notebook/server/account/accountActions.ts#signAccount': {
    before: drawnUpEverywhere,
    sends: async (id, household) => [
      await accountPlace(id),
      'new',
      { typedName: signer[household], intent: true, drawing: '' },
    ],
    ...bothTo('/final-account'),
    changes: ['AccountSignature', 'Change'],
  },
  'app/notebook/server/boughtActions.ts#markLineBought': {
    before: receiptsOfEach,
    sends: () => [{}, boughtForm()],
    ...bothTo('/books'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/itemBoughtActions.ts#markItemBought': {
    before: receiptsOfEach,
    sends: async (id, household) => [{}, await itemBoughtForm(id, household)],
    ...bothTo('/books#item-c1'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/boughtActions.ts#takeLineMarkBack': {
    before: boughtByEach,
    sends: () => [{}, boughtForm()],
    ...bothTo('/books'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/entryActions.ts#moveEntryLine': {
    before: receiptsOfEach,
    sends: async (id, household) => [{}, await moveForm(id, household)],
    ...bothTo('/books'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/entryActions.ts#markValuation': {
    before: receiptsOfEach,
    sends: async (id) => [{}, await valuationForm(id)],
    ...bothTo('/books'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/entryActions.ts#takeValuationBack': {
    before: valuedByEach,
    sends: async (id, household) => [{}, await valuationForm(id, `pipe of ${household}`)],
    ...bothTo('/books'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/thingActions.ts#saveThing': {
    sends: () => [undefined, 'new', { kind: 'borrowed', what: 'post auger', from: 'the farm' }],
    ...bothTo('/books#things'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/thingMarkActions.ts#markThingValue': {
    before: aThingOfEach,
    sends: async (id) => [{}, await thingForm(id)],
    ...bothTo('/books#things'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/thingMarkActions.ts#takeThingMarkBack': {
    before: aThingMarkedByEach,
    sends: async (id, household) => [{}, await thingForm(id, household === 'a' ? 0 : 1)],
    ...bothTo('/books#things'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/thingMarkActions.ts#takeThingAway': {
    before: aThingOfEach,
    sends: async (id) => [{}, await thingForm(id)],
    ...bothTo('/books#things'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/thingMarkActions.ts#putThingOnListAgain': {
    before: aThingTakenOff,
    sends: async (id) => [{}, await thingForm(id, 1)],
    ...bothTo('/books#things'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/closingActions.ts#openAgain': {
    before: withClosing,
    sends: press,
    ...bothTo('/closing'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/conversionActions.ts#askConversion': {
    sends: () => ['new', aConversion],
    ...bothTo('/work'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/conversionActions.ts#agreeToConversion': {
    before: waitingConversions,
    sends: async (id, household) => [{}, await conversionForm(id, otherHousehold(household))],
    ...bothTo('/work'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/conversionActions.ts#withdrawConversion': {
    before: waitingConversions,
    sends: async (id, household) => [{}, await conversionForm(id, household)],
    ...bothTo('/work'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/sideBySideActions.ts#chooseWay': {
    sends: async (id) => [{}, await chooseForm(id, 's1', 'one-b')],
    ...bothTo('/side-by-side/s1'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/tryActions.ts#keepTried': {
    sends: () => ['', aTriedChange, 'Pipe got dearer.'],
    a: { answers: 'made' },
    b: { answers: 'made' },
    changes: ['Change', 'Proposal'],
  },
  'app/notebook/server/proposalActions.ts#sendProposal': {
    sends: async (id) => {
      const { base, draft } = await proposingForm(id)
      return [0, base, draft]
    },
    ...bothTo('/proposals'),
    changes: ['Change', 'Proposal'],
  },
  'app/notebook/server/proposalActions.ts#previewProposal': {
    sends: async (id) => [0, (await proposingForm(id)).draft],
    a: { answers: 'asks' },
    b: { answers: 'asks' },
    changes: [],
  },
  'app/notebook/server/proposalReplyActions.ts#acceptTheirs': {
    before: proposedEverywhere,
    sends: async (id, household) => [{}, await proposalForm(id, household === 'a' ? 'b' : 'a')],
    ...bothTo('/proposals'),
    changes: ['Change', 'Mark', 'Notebook', 'ProposalReply'],
    // The mark of whoever proposed it is set as well.
    names: ['a', 'b'],
  },
  'app/notebook/server/proposalReplyActions.ts#declineTheirs': {
    before: proposedEverywhere,
    sends: async (id, household) => [
      {},
      await proposalForm(id, household === 'a' ? 'b' : 'a', { text: 'Too much for the slope.' }),
    ],
    ...bothTo('/proposals'),
    changes: ['Change', 'ProposalReply'],
  },
  'app/notebook/server/proposalReplyActions.ts#withdrawOwn': {
    before: proposedEverywhere,
    sends: async (id, household) => [{}, await proposalForm(id, household)],
    ...bothTo('/proposals'),
    changes: ['Change', 'ProposalReply'],
  },
  'app/notebook/server/proposalReplyActions.ts#proposeAnew': {
    before: proposedEverywhere,
    sends: async (id, household) => [{}, await proposalForm(id, household === 'a' ? 'b' : 'a')],
    ...bothTo('/proposals'),
    changes: ['Change', 'Proposal', 'ProposalReply'],
  },
  'app/notebook/server/takeOffActions.ts#offerQuantities': {
    sends: () => [{}, formOf({ id: 's1' })],
    ...bothTo('/item/s1?added=7&renewed=0#field-materials-taken'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/buildUpActions.ts#keepBuildUp': {
    sends: () => ['s1', 'new', { name: 'Our pipe and mesh' }],
    ...bothSaved,
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/basicFenceActions.ts#holdAgainstBasicFence': {
    before: withBasicFence,
    sends: async (id) => [{}, await sectionForm(id, 's1', { pots: 'apart', above: 'a' })],
    ...bothTo('/item/s1'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/basicFenceActions.ts#offerBasicQuantities': {
    before: withBasicFence,
    sends: async (id) => [{}, await sectionForm(id, 's1')],
    ...bothTo('/basic-fence/s1'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/basicFenceActions.ts#removeBasicFence': {
    before: withBasicFence,
    sends: async (id) => [{}, await sectionForm(id, 's1')],
    ...bothTo('/item/s1'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/fileActions.ts#replaceByFile': {
    sends: () => [{}, formWithFile(changedFile())],
    ...bothTo('/record'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/storedFileActions.ts#addFiles': {
    sends: async () => [{}, await photoForm()],
    ...bothTo('/files'),
    changes: ['Change', 'StoredFile'],
  },
  'app/notebook/server/storedFileActions.ts#takeAwayFile': {
    before: aFileOfEach,
    // Each household takes away a file that it added.
    sends: async (id, household) => [{}, await takeAwayForm(id, household)],
    ...bothTo('/files'),
    changes: ['Change', 'StoredFile'],
  },
  'app/notebook/server/storedFileActions.ts#putFileBack': {
    before: filesTakenAway,
    sends: async (id, household) => [{}, await putFileBackForm(id, household)],
    ...bothTo('/files'),
    changes: ['Change', 'StoredFile'],
  },
  'app/notebook/server/linkActions.ts#invite': {
    sends: () => [],
    a: { answers: 'refused' },
    b: { answers: 'refused' },
    changes: [],
  },
  'app/notebook/server/firstAnswerActions.ts#giveFirstAnswer': {
    sends: () => [{}, formOf({ answer: 'a question', text: 'Who mends it?', about: 'item:s1' })],
    // Only whoever was invited answers.
    a: { answers: 'refused' },
    b: { to: '/answer' },
    changes: { a: [], b: ['Change', 'FirstAnswer', 'Message'] },
  },
  'app/notebook/server/letterActions.ts#inviteByLetter': {
    before: withLetter,
    sends: () => [],
    // Both are in already: nobody is left to invite.
    a: { answers: 'refused' },
    b: { answers: 'refused' },
    changes: [],
  },
  'app/notebook/server/linkActions.ts#forgetNewLink': {
    sends: press,
    a: { to: '' },
    b: { to: '/welcome' },
    changes: [],
  },
  'app/notebook/server/linkActions.ts#replaceOwnLink': {
    sends: press,
    ...bothTo('/links'),
    changes: ['Change', 'EntryKey', 'Session'],
  },
  'app/notebook/server/linkActions.ts#leave': {
    sends: press,
    a: { to: '/' },
    b: { to: '/' },
    changes: ['Session'],
  },
  'app/notebook/server/linkActions.ts#seeAsOther': {
    sends: press,
    a: { answers: 'refused' },
    b: { answers: 'refused' },
    changes: [],
  },
  'app/notebook/server/lookActions.ts#haveSeenChanges': {
    before: aFileOfEach,
    sends: async (id) => [{}, await seenForm(id)],
    ...bothTo(''),
    changes: ['Look'],
  },
  'app/notebook/server/messageActions.ts#sayAboutItem': {
    sends: () => ['line', 'new', { kind: 'objection', text: 'Too near the hazel.', answers: '' }],
    ...bothSaved,
    changes: ['Change', 'Message'],
  },
  'app/notebook/server/needsActions.ts#sayNeeds': {
    sends: () => ['new', needsForm()],
    ...bothSaved,
    changes: ['Change', 'HeldBack'],
  },
  'app/notebook/server/passageActions.ts#countThePassages': {
    sends: () => ['g3', 'new', { a: '5', b: '9' }],
    ...bothSaved,
    changes: ['Change', 'HeldBack'],
  },
  'app/notebook/server/passageActions.ts#takeCount': {
    before: countedApart,
    sends: async (id) => [{}, await takeForm(id, 'a')],
    ...bothTo('/item/g3'),
    changes: ['Change', 'Notebook'],
  },
  'app/notebook/server/readerActions.ts#makeReadersLink': {
    sends: () => ['new', { label: 'the permit office', content: 'costs', through: tomorrow() }],
    a: { answers: 'address' },
    b: { answers: 'address' },
    changes: ['Change', 'ReaderLink'],
  },
  'app/notebook/server/readerActions.ts#endReadersLink': {
    before: linkedForReading,
    sends: async (id) => [{}, await endingForm(id)],
    ...bothTo('/readers'),
    changes: ['Change', 'ReaderLink'],
  },
  'app/notebook/server/signActions.ts#putUpForSigning': {
    before: markedEverywhere,
    sends: press,
    ...bothTo('/sign'),
    changes: ['Change', 'Revision'],
  },
  'app/notebook/server/signActions.ts#signForParty': {
    before: putUp,
    sends: async (id, household) => [
      await signingPlace(id),
      'new',
      { typedName: signer[household], intent: true, drawing: '' },
    ],
    ...bothTo('/sign'),
    changes: ['Change', 'Signature'],
  },
}

/** Open to everyone: they make a notebook of the caller's own. `tells`: what the example has happened in it besides. */
const makingNotebooks: Readonly<
  Record<
    string,
    {
      sends: () => unknown[]
      page: string
      household: Household
      links: readonly Household[]
      tells: readonly string[]
    }
  >
> = {
  'app/start/actions.ts#startNotebook': {
    sends: () => ['new', aHeading],
    page: '/links',
    household: 'a',
    links: ['a'],
    tells: [],
  },
  'app/start/actions.ts#startFromFile': {
    sends: () => [{}, formWithFile(changedFile())],
    page: '/links',
    household: 'a',
    links: ['a'],
    tells: [],
  },
  'app/start/actions.ts#openExample': {
    sends: () => [{}, formOf({ household: 'b' })],
    page: '',
    household: 'b',
    links: ['a', 'b'],
    tells: ['FirstAnswer', 'HeldBack', 'Look', 'Mark', 'Message', 'Proposal', 'Revision', 'Signature'],
  },
}

/** Open to everyone, and about no notebook: what anyone gets for an answer. */
const aboutNoNotebook: Readonly<Record<string, { sends: () => unknown[]; answers: string }>> = {
  'app/check/actions.ts#checkThisRecord': {
    sends: () => [undefined, formOf({ record: new File(['%PDF-1.7'], 'copy.pdf') })],
    answers: 'verdict',
  },
  'app/open/actions.ts#followLink': {
    sends: () => [{}, formOf({ link: `http://localhost:3000/open/${'x'.repeat(43)}` })],
    answers: 'refused',
  },
}

/** What each token that was ever handed out does in the action that opens it; every other is "not found". */
type Opening = Readonly<
  Record<
    string,
    | { readonly to: keyof World; readonly page: string; readonly household: Household }
    | 'refused'
    | 'not found'
  >
>
const byToken: Readonly<Record<string, Opening>> = {
  'app/open/[token]/actions.ts#openByLink': {
    'the link of a': { to: 'notebook', page: '', household: 'a' },
    'the link of b': { to: 'notebook', page: '', household: 'b' },
    'a link that was replaced': 'not found',
    'an unclaimed invitation': 'not found',
    'a used invitation': 'not found',
    'an invitation that a later one ended': 'not found',
    'a session': 'not found',
    'a made-up token': 'not found',
    'a notebook’s id': 'not found',
  },
  'app/open/[token]/actions.ts#claim': {
    'the link of a': 'not found',
    'the link of b': 'not found',
    'a link that was replaced': 'not found',
    'an unclaimed invitation': { to: 'waiting', page: '/links', household: 'b' },
    'a used invitation': 'refused',
    'an invitation that a later one ended': 'not found',
    'a session': 'not found',
    'a made-up token': 'not found',
    'a notebook’s id': 'not found',
  },
}

function tokensOf({ notebook, waiting, replaced }: World): Readonly<Record<string, string>> {
  return {
    'the link of a': notebook.links.a,
    'the link of b': notebook.links.b,
    'a link that was replaced': replaced.link,
    'an unclaimed invitation': waiting.invitation,
    'a used invitation': notebook.usedInvitation,
    'an invitation that a later one ended': notebook.revokedInvitation,
    'a session': notebook.sessions.a,
    'a made-up token': 'x'.repeat(43),
    'a notebook’s id': notebook.id,
  }
}

let actions: Map<string, AnyFunction>
beforeEach(async () => {
  actions = await everyAction()
})

function action(name: string): AnyFunction {
  const found = actions.get(name)
  if (found === undefined) throw new Error(`There is no action ${name}.`)
  return found
}

describe('the table of actions', () => {
  test('names every function that a browser can call, and no other', () => {
    const named = [ofNotebooks, makingNotebooks, aboutNoNotebook, byToken].flatMap(Object.keys)
    expect([...actions.keys()].sort()).toEqual([...named].sort())
    expect([...actions.values()].every((value) => typeof value === 'function')).toBe(true)
  })

  test('is whole, since no function is made callable anywhere but in files that are so from their top', () => {
    expect(serverActionFiles().length).toBeGreaterThan(0)
    expect(serverActionFiles().filter((file) => !file.whole)).toEqual([])
  })
})

const rows = Object.entries(ofNotebooks)

describe.each(rows)('%s', (name, row) => {
  test('is "not found" for every stranger and every unknown notebook, all alike, and nothing is so much as touched', async () => {
    await row.before?.(world())
    const before = await everyTable({ withDoor: true })
    const ends: Outcome[] = []
    for (const { who, asks } of strangers) {
      const id = asks(world())
      const known = [world().notebook.id, world().waiting.id].includes(id) ? id : world().notebook.id
      const sends = await row.sends(known, 'a')
      const end = await outcomeOf(() => action(name)(id, ...sends))
      expect([who, end.kind]).toEqual([who, 'not found'])
      ends.push(end)
    }
    expect(ends.filter((end) => JSON.stringify(end) !== JSON.stringify(ends[0]))).toEqual([])
    expect(await everyTable({ withDoor: true })).toEqual(before)
  })

  test.each(['a', 'b'] as const)(
    'does for household %s what it is for, in that household’s name',
    async (household) => {
      await row.before?.(world())
      const { id } = world().notebook
      browseAs(world(), household)
      const before = await everyTable()
      const sends = await row.sends(id, household)
      const end = await outcomeOf(() => action(name)(id, ...sends))
      const after = await everyTable()

      const expected = row[household]
      if ('to' in expected) {
        expect(end).toEqual({
          kind: 'redirect',
          to: expected.to === '/' ? '/' : `/notebook/${id}${expected.to}`,
        })
      } else {
        expect(end).toEqual({
          kind: 'answer',
          answer: expect.objectContaining({ [expected.answers]: expect.anything() }),
        })
      }
      const changes = 'a' in row.changes ? row.changes[household] : row.changes
      expect(changedTables(before, after)).toEqual(changes)
      const named = row.names ?? (changes.some((table) => table !== 'Notebook') ? [household] : [])
      expect(householdsNamed(before, after)).toEqual(named)
      expect(rowsOfOthers(after, id)).toEqual(rowsOfOthers(before, id))
    },
  )
})

test('a household that left, or replaced its link, is a stranger in the browser it did it in', async () => {
  const { notebook } = world()
  browseAs(world(), 'b')
  await outcomeOf(() => leave(notebook.id, {}, new FormData()))
  openBrowser({ [sessionCookie(notebook.id)]: notebook.sessions.b })
  expect((await outcomeOf(() => leave(notebook.id, {}, new FormData()))).kind).toBe('not found')

  browseAs(world(), 'a')
  await outcomeOf(() => replaceOwnLink(notebook.id, {}, new FormData()))
  openBrowser({ [sessionCookie(notebook.id)]: notebook.sessions.a })
  expect((await outcomeOf(() => replaceOwnLink(notebook.id, {}, new FormData()))).kind).toBe('not found')
})

describe.each(Object.entries(makingNotebooks))('%s', (name, { sends, page, household, links, tells }) => {
  test('makes a notebook of its own for anyone, and touches no other', async () => {
    for (const { who, asks } of strangers) {
      asks(world())
      const before = await everyTable()
      const end = await outcomeOf(() => action(name)(...sends()))
      const after = await everyTable()
      const [added, ...more] = newRows(before, after, 'Notebook')
      expect([who, more]).toEqual([who, []])
      const id = String(added?.id)
      expect(end).toEqual({ kind: 'redirect', to: `/notebook/${id}${page}` })
      expect(rowsOfOthers(after, id)).toEqual(before)
      expect(newRows(before, after, 'EntryKey')).toMatchObject(
        links.map((one) => ({ notebookId: id, household: one, kind: 'link' })),
      )
      expect(newRows(before, after, 'Session')).toMatchObject([{ notebookId: id, household }])
      expect(changedTables(before, after)).toEqual(
        ['Change', 'EntryKey', 'Notebook', 'Session', ...tells].sort(),
      )
    }
  })
})

test.each(Object.entries(aboutNoNotebook))(
  '%s answers anyone the same, and touches nothing',
  async (name, row) => {
    const answers = new Set<string>()
    for (const { asks } of strangers) {
      asks(world())
      const before = await everyTable({ withDoor: true })
      const end = await outcomeOf(() => action(name)(...row.sends()))
      expect(end).toEqual({
        kind: 'answer',
        answer: expect.objectContaining({ [row.answers]: expect.anything() }),
      })
      answers.add(JSON.stringify(end))
      expect(await everyTable({ withDoor: true })).toEqual(before)
    }
    expect(answers.size).toBe(1)
  },
)

describe.each(Object.entries(byToken))('%s', (name, opening) => {
  test('has a row for every token that was ever handed out', () => {
    expect(Object.keys(opening)).toEqual(Object.keys(tokensOf(world())))
  })

  test.each(Object.entries(opening))('with %s', async (which, expected) => {
    const token = tokensOf(world())[which] ?? ''
    // Whoever has the token: what else the browser holds makes no difference.
    for (const asks of [strangers[0]?.asks, (there: World) => browseAs(there, 'a')]) {
      asks?.(world())
      const before = await everyTable()
      const end = await outcomeOf(() => action(name)(token, {}, new FormData()))
      const after = await everyTable()
      if (typeof expected === 'object') {
        const { id } = world()[expected.to] as { id: string }
        expect(end).toEqual({ kind: 'redirect', to: `/notebook/${id}${expected.page}` })
        expect(newRows(before, after, 'Session')).toMatchObject([
          { notebookId: id, household: expected.household },
        ])
        expect(rowsOfOthers(after, id)).toEqual(rowsOfOthers(before, id))
        // An invitation works once; a link goes on working.
        if (name.endsWith('#claim')) break
      } else {
        expect(after).toEqual(before)
        expect(end.kind).toBe(expected === 'refused' ? 'answer' : 'not found')
        const unknown = await outcomeOf(() => action(name)('y'.repeat(43), {}, new FormData()))
        if (expected === 'not found') expect(JSON.stringify(end)).toBe(JSON.stringify(unknown))
        else expect(end).toMatchObject({ answer: { refused: expect.stringContaining('used already') } })
      }
    }
  })
})

function changedTables(before: Remembered, after: Remembered): string[] {
  return Object.keys(after).filter((table) => JSON.stringify(before[table]) !== JSON.stringify(after[table]))
}

/** The households that new, altered and removed rows name, each once. */
function householdsNamed(before: Remembered, after: Remembered): unknown[] {
  const touched = Object.keys(after).flatMap((table) => [
    ...newRows(before, after, table),
    ...newRows(after, before, table),
  ])
  return [
    ...new Set(touched.flatMap((row) => [row.household, row.frozenBy].filter((one) => one !== undefined))),
  ].sort()
}

/** Everything that belongs to other notebooks than this one. */
function rowsOfOthers(remembered: Remembered, notebookId: string): Remembered {
  const signed = new Set(
    (remembered.Revision ?? []).filter((row) => row.notebookId === notebookId).map((row) => row.id),
  )
  const settled = new Set(
    (remembered.FinalAccount ?? []).filter((row) => row.notebookId === notebookId).map((row) => row.id),
  )
  const proposed = new Set(
    (remembered.Proposal ?? []).filter((row) => row.notebookId === notebookId).map((row) => row.id),
  )
  return Object.fromEntries(
    Object.entries(remembered).map(([table, tableRows]) => [
      table,
      tableRows.filter(
        (row) =>
          row.notebookId !== notebookId &&
          row.id !== notebookId &&
          !signed.has(row.revisionId) &&
          !settled.has(row.accountId) &&
          !proposed.has(row.proposalId),
      ),
    ]),
  )
}
