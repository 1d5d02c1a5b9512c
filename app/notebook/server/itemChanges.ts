import { changedItems, itemKey, onlyCameCheaper } from '../../../lib/core/agreement/agreedItems.ts'
import { canonicalText } from '../../../lib/core/agreement/canonicalText.ts'
import { type Part, readPart } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { ItemChange } from '../../../lib/store/notebooks.ts'
import { wholeFileChanges } from './wholeFileChanges.ts'

/**
 * What an edit did, for the record: to the items that both households mark, and to what nobody marks, the heading, the
 * checks, the dates, the build-ups and pieces that a household keeps and, where it was not merely kept up, the book.
 * `renamed` leads from new item keys to old ones. Of a `whole` file any difference of the books goes on record.
 */
export function itemChanges(
  before: NotebookDocument,
  after: NotebookDocument,
  renamed: ReadonlyMap<string, string> = new Map(),
  whole = false,
): ItemChange[] {
  const changes = changedItems(before, after)
  const oldKeys = new Set(renamed.values())
  const ofItems = changes
    .filter((change) => !oldKeys.has(change.itemKey))
    .map((change) => {
      const previousKey = renamed.get(change.itemKey)
      const previous =
        previousKey === undefined ? change.before : changes.find((one) => one.itemKey === previousKey)?.before
      return {
        itemKey: change.itemKey,
        ...(previousKey ? { previousKey } : {}),
        before: previous,
        after: change.after,
        ...(onlyCameCheaper(change)
          ? { marksStay: { before: fingerprintOf(change.before), after: fingerprintOf(change.after) } }
          : {}),
      }
    })
  const beside = whole ? wholeFileChanges(before, after) : rewrittenBook(before, after)
  return [...ofItems, ...unmarkedChanges(before, after), ...beside]
}

function unmarkedChanges(before: NotebookDocument, after: NotebookDocument): ItemChange[] {
  const [was, is] = [unmarked(before), unmarked(after)]
  return (['heading', 'checks', 'dates', 'buildUps', 'inventory', 'letter'] as const)
    .filter((key) => canonicalText(was[key]) !== canonicalText(is[key]))
    .map((key) => ({ itemKey: key, before: was[key], after: is[key] }))
}

function unmarked(document: NotebookDocument) {
  const { households: _markedAsParties, ...heading } = readPart(document, { part: 'heading' }) ?? {}
  return {
    heading,
    checks: document.checks ?? [],
    dates: document.dates ?? [],
    buildUps: document.buildUps ?? [],
    inventory: document.inventory ?? [],
    letter: document.letter ?? {},
  }
}

/**
 * The book is its own record as long as entries are only added, confirmed and taken back. An
 * item that is removed leaves entries without a name for what they were for: that goes on record.
 */
function rewrittenBook(before: NotebookDocument, after: NotebookDocument): ItemChange[] {
  const [was, is] = [bookOf(before), bookOf(after)]
  const keptUp = was.every((entry, index) => {
    const now = is[index]
    if (now === undefined) return false
    const { struck: _takenBack, ...rest } = now
    if (canonicalText('struck' in entry ? now : rest) === canonicalText(entry)) return true
    return isConfirmed(entry, now)
  })
  return keptUp ? [] : [{ itemKey: 'contributions', before: was, after: is }]
}

/** A payment that waited and was confirmed is the same entry: that it was goes on record by itself. */
function isConfirmed(before: Readonly<Record<string, unknown>>, after: Readonly<Record<string, unknown>>) {
  const { waits, ...said } = before
  const { confirmed, ...rest } = after
  return waits === true && confirmed !== undefined && canonicalText(rest) === canonicalText(said)
}

function bookOf(document: NotebookDocument): readonly Readonly<Record<string, unknown>>[] {
  return (document.contributions ?? []) as readonly Readonly<Record<string, unknown>>[]
}

/** Whether an item of the record belongs to a part, so that its last change is the part's. */
export function isOfPart(part: Part, key: string): boolean {
  switch (part.part) {
    case 'item':
      return key === itemKey(part.id)
    case 'heading':
      return key === 'heading' || key === 'parties'
    case 'decisions':
      return key.startsWith('decision:')
    default:
      return key === part.part
  }
}

/** Decisions have no ids: one that stands at the same place with other words is taken to be the same one, reworded. */
export function renamedDecisions(
  before: NotebookDocument,
  after: NotebookDocument,
): ReadonlyMap<string, string> {
  const changes = changedItems(before, after)
  const gone = changes.filter((change) => change.after === undefined)
  const come = changes.filter((change) => change.before === undefined)
  const place = (document: NotebookDocument, data: unknown) =>
    (Array.isArray(document.decisions) ? document.decisions : []).findIndex(
      (one) => JSON.stringify(one) === JSON.stringify(data),
    )
  return new Map(
    come.flatMap((one) => {
      const was = gone.find((other) => place(before, other.before) === place(after, one.after))
      return was ? [[one.itemKey, was.itemKey] as const] : []
    }),
  )
}
