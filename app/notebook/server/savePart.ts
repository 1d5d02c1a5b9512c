import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import type { Units } from '../../../lib/core/agreement/notebook.ts'
import { type Fault, wholeFile } from '../../../lib/core/faults.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { keepPassages } from '../../../lib/forms/gatePassages.ts'
import { type Part, pathOfPart, readPart, writePart } from '../../../lib/forms/parts.ts'
import { type NotebookDocument, readNotebook } from '../../../lib/forms/readNotebook.ts'
import { missingSources } from '../../../lib/forms/savingSources.ts'
import { latestChanges } from '../../../lib/store/changes.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { editOnRecord, type RecordedEdit, type RecordingEdit } from '../../../lib/store/recordedEdits.ts'
import { shownMoment } from '../../../lib/words/day.ts'
import { differences } from '../../../lib/words/differences.ts'
import { faultTextIn, wholeFaultText } from '../../../lib/words/faultText.ts'
import { householdNames } from '../../../lib/words/labels.ts'
import { itemRefusals, pressRefusals } from '../../../lib/words/pressText.ts'
import { savingRefusals } from '../../../lib/words/savingText.ts'
import type { Fault as FieldFault, SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { closedByNumber } from './closed.ts'
import { namedElsewhere } from './elsewhere.ts'
import { isOfPart, itemChanges, renamedDecisions } from './itemChanges.ts'
import { keptBuildUps, nameFaults } from './keptBuildUps.ts'
import { letterFaultsOf } from './letterFaultsOf.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { toStore } from './toStore.ts'

/** What an edit of the document may answer before anything is stored. */
export type Edited =
  | {
      readonly next: NotebookDocument
      /** New item keys to old ones, where an edit gave an item another key. */
      readonly renamed?: ReadonlyMap<string, string>
      /** Whether a whole file takes the notebook's place, so that nothing about it is taken to be on record already. */
      readonly whole?: boolean
      /** The part whose form sent this: faults inside it are given paths of that form. */
      readonly within?: Part
      /** The same for a form that adds something which is no part yet. */
      readonly prefix?: string
      /** What goes on record besides the items that changed, once it is stored. */
      readonly record?: RecordedEdit
      /** What the form asks for beyond what the file does: paths of the form. */
      readonly wanting?: readonly FieldFault[]
    }
  | SaveAnswer

/**
 * The one way in which a page's form is saved: who asks → read the form → load → decide → save → answer. `base` is the
 * fingerprint of the part as it was when the form was opened: where it has changed since, nothing is written and both
 * versions are shown. `asks` says what a form of its own asks about before it saves.
 */
export async function savePart(
  notebookId: string,
  part: Part,
  base: string,
  draft: unknown,
  asks: (next: NotebookDocument, before: NotebookDocument) => readonly FieldFault[] = () => [],
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = readDraft.safeParse(draft)
  if (!read.success) return refusedDraft
  const answer = await edit(notebookId, household, part, base, (document) => {
    const next = keepPassages(document, writePart(document, part, read.data), part)
    const booked = Array.isArray(document.contributions) && document.contributions.length > 0
    if (booked && next.currency !== document.currency) {
      return {
        faults: [
          fieldFault({ path: 'currency', kind: 'currency-fixed', currency: String(document.currency) }, ''),
        ],
      }
    }
    const names =
      part.part === 'buildUps' ? nameFaults(keptBuildUps(next), (index) => `buildUps[${index}].name`) : []
    const asked = part.part === 'letter' ? letterFaultsOf(next) : asks(next, document)
    const renamed = part.part === 'decisions' ? renamedDecisions(document, next) : new Map()
    const sources = wantedSources(readPart(document, part), readPart(next, part))
    return { next, renamed, wanting: [...names, ...asked, ...sources] }
  })
  return withRows(answer, read.data, { notebookId, part, household })
}

/** Removes a part, an item, unless it was changed since the page was opened. */
export async function removePart(
  notebookId: string,
  part: Part,
  base: string,
  without: (document: NotebookDocument) => NotebookDocument,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const answer = await edit(notebookId, household, part, base, (document) => ({ next: without(document) }))
  return withRows(answer, {}, { notebookId, part, household })
}

async function edit(
  notebookId: string,
  household: Household,
  part: Part,
  base: string,
  change: (document: NotebookDocument) => Edited,
): Promise<SaveAnswer> {
  return editDocument(notebookId, household, (document) => {
    const current = readPart(document, part)
    if (current === undefined)
      return {
        gone: true,
        message: itemRefusals.removedTyped,
      }
    if (fingerprintOf(current) !== base)
      return { conflict: { theirs: current, theirsBase: fingerprintOf(current), rows: [] } }
    const edited = change(document)
    return 'next' in edited ? { ...edited, within: part } : edited
  })
}

/**
 * Edits the whole document in one transaction. Faults of the file refuse the edit; shares that cannot be worked out yet
 * do not, they stay open matters. Changed items lose both marks. A closed notebook refuses it, but for the books and for
 * opening it again.
 */
export async function editDocument(
  notebookId: string,
  household: Household,
  change: (document: NotebookDocument) => Edited,
  when: 'while open' | 'also while closed' = 'while open',
): Promise<SaveAnswer> {
  const closed = when === 'while open' ? await closedByNumber(notebookId) : undefined
  if (closed !== undefined) return { faults: [{ path: '', message: pressRefusals.closed(closed) }] }
  return editOnRecord({ id: notebookId, household, at: new Date(), change: changeOfStored(change) })
}

/** An edit of the document as an edit of its stored text. */
export function changeOfStored(change: (document: NotebookDocument) => Edited) {
  return (stored: string): RecordingEdit<SaveAnswer> => {
    const document = JSON.parse(stored) as NotebookDocument
    const edited = change(document)
    if (!('next' in edited)) return { refused: edited }
    const stores = toStore(edited.next)
    const part = edited.within
    const path = part ? pathOfPart(edited.next, part) : (edited.prefix ?? '')
    const ofFile = stores.ok
      ? []
      : stores.faults.map((fault) => {
          const inForm = fieldFault(fault, path, unitsOf(edited.next))
          return part === undefined ? inForm : namedElsewhere(document, inForm)
        })
    const faults = [...ofFile, ...(edited.wanting ?? [])]
    if (!stores.ok || faults.length > 0) return { refused: { faults } }
    const { text, document: next } = stores.value
    const saved = { saved: true as const, base: part ? fingerprintOf(readPart(next, part) ?? {}) : '' }
    if (text === stored) return { refused: { ...saved, note: 'Nothing had changed.' } }
    const record = edited.record && { record: edited.record }
    const changed = itemChanges(document, next, edited.renamed, edited.whole)
    return { document: text, changed, kept: saved, ...record }
  }
}

/** Figures for building alone come with their source, wherever a form enters or changes them. */
export function wantedSources(before: unknown, after: unknown): readonly FieldFault[] {
  return missingSources(before, after).map((path) => ({ path, message: savingRefusals.source }))
}

/** A fault of the file as a fault of the form: the part's own path is taken off. */
export function fieldFault(fault: Fault, prefix: string, units?: Units): FieldFault {
  if (fault.path === wholeFile) return { path: '', message: wholeFaultText(fault) }
  const path = fault.path.startsWith(prefix) ? fault.path.slice(prefix.length) : fault.path
  // The words of the file ("a", "b") are not those of the screen.
  const unchosen = fault.kind === 'needed' && fault.allowed !== undefined
  return { path, message: unchosen ? pressRefusals.unchosen : faultTextIn(fault, units) }
}

function unitsOf(document: NotebookDocument): Units {
  return document.units === 'metric' ? 'metric' : 'ft-in'
}

/** Fills in what a conflict shows: the rows that differ, and who saved the other version when. */
async function withRows(
  answer: SaveAnswer,
  draft: unknown,
  asked: { readonly notebookId: string; readonly part: Part; readonly household: Household },
): Promise<SaveAnswer> {
  const { notebookId, part, household } = asked
  if (!('conflict' in answer)) return answer
  const { theirs } = answer.conflict
  const stored = await findNotebook(notebookId)
  const read = stored ? readNotebook(stored.document) : undefined
  const names = read?.ok ? householdNames(read.value.notebook) : undefined
  const rows = differences(draft, theirs, names && { names }).map(({ label, before, after }) => ({
    label,
    yours: before,
    theirs: after,
  }))
  const changes = await latestChanges(notebookId)
  const [last] = changes
    .filter((change) => isOfPart(part, change.itemKey))
    .sort((one, other) => other.id - one.id)
  if (!last) return { conflict: { ...answer.conflict, rows } }
  const by = names?.[last.household] ?? last.household
  const own = last.household === household ? { own: true as const } : {}
  return { conflict: { ...answer.conflict, rows, by, when: shownMoment(last.at), ...own } }
}
