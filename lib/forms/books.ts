import { canonicalText } from '../core/agreement/canonicalText.ts'
import type { LineOf, Thing } from '../core/agreement/notebook.ts'
import type { Household } from '../core/people/household.ts'
import { inFormatOrder } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'
import { tidyDraft } from './tidyDraft.ts'

type Json = Record<string, unknown>
type Mark = { readonly household: Household; readonly on: string }

/** Whether what the books call a line is the line that is meant: it may have been moved since. */
export type IsMeant = (line: LineOf) => boolean

/**
 * The document with one household's mark on a line at an amount. Marks on another amount of the same line are gone: what
 * they were set on is not what the line came to.
 */
export function markBought(
  document: NotebookDocument,
  line: LineOf,
  isMeant: IsMeant,
  amount: string,
  mark: Mark,
) {
  const bought = listIn(document, 'bought')
  const same = bought.find((one) => isMeant(lineIn(one)) && one.amount === amount)
  const marked = withMark({ ...same, ...line, amount }, mark)
  return withList(document, 'bought', [...bought.filter((one) => !isMeant(lineIn(one))), marked])
}

/** The document without one household's mark on a line; a line that nobody marks any more leaves the list. */
export function unmarkBought(document: NotebookDocument, isMeant: IsMeant, household: Household) {
  const isOwn = (one: Json) => isMeant(lineIn(one)) && household in marksOf(one)
  if (!listIn(document, 'bought').some(isOwn)) return document
  const bought = listIn(document, 'bought').flatMap((one) => {
    if (!isMeant(lineIn(one))) return [one]
    const left = withoutMark(one, household)
    return Object.keys(marksOf(left)).length > 0 ? [left] : []
  })
  return withList(document, 'bought', bought)
}

/** What of a thing its marks are about: another value, or another household, is another thing to agree to. */
const markedKeys = ['kind', 'what', 'item', 'household', 'sold', 'value'] as const satisfies (keyof Thing)[]

/**
 * The document with a thing as the draft has it: at `index`, or at the end of the list where there is none. Marks never
 * come with a draft; those that are there stay only while nothing that they are about was changed.
 */
export function putThing(document: NotebookDocument, index: number | undefined, draft: Json) {
  const things = listIn(document, 'things')
  const current = index === undefined ? undefined : things[index]
  const { marks: _never, ...thing } = tidyDraft(draft, current) as Json
  const same = current !== undefined && markedKeys.every((key) => said(current[key]) === said(thing[key]))
  const kept = same && 'marks' in current ? { ...thing, marks: current.marks } : thing
  return withList(document, 'things', index === undefined ? [...things, kept] : things.with(index, kept))
}

/** Whether a thing stands there already as a draft would put it, whoever marked it since. */
export function hasThing(document: NotebookDocument, index: number | undefined, draft: Json): boolean {
  const saying = (thing: Json | undefined) => canonicalText(thingWithoutMarks(thing ?? {}))
  const wanted = saying(listIn(putThing(document, index, draft), 'things').at(index ?? -1))
  const things = listIn(document, 'things')
  return (index === undefined ? things : things.slice(index, index + 1)).some((one) => saying(one) === wanted)
}

/** Path of the thing that `putThing` puts there. */
export function thingPath(document: NotebookDocument, index: number | undefined): string {
  return `books.things[${index ?? listIn(document, 'things').length}].`
}

export function removeThing(document: NotebookDocument, index: number) {
  return withList(document, 'things', listIn(document, 'things').toSpliced(index, 1))
}

export function markThing(document: NotebookDocument, index: number, mark: Mark) {
  const things = listIn(document, 'things')
  return withList(document, 'things', things.with(index, withMark(things[index] ?? {}, mark)))
}

export function unmarkThing(document: NotebookDocument, index: number, household: Household) {
  const things = listIn(document, 'things')
  return withList(document, 'things', things.with(index, withoutMark(things[index] ?? {}, household)))
}

/** A thing as it is stored; undefined where there is none at that place. */
export function thingAt(document: NotebookDocument, index: number): Json | undefined {
  return listIn(document, 'things')[index]
}

/** What a thing is, without who marked it: what a mark is set on. */
export function thingWithoutMarks(thing: Json): Json {
  const { marks: _marks, ...rest } = thing
  return rest
}

/** An entry or a list in the books with a household's mark, dated. */
export function withMark(entry: Json, { household, on }: Mark): Json {
  return { ...entry, marks: { ...marksOf(entry), [household]: { on } } }
}

/** The same without it. */
export function withoutMark(entry: Json, household: Household): Json {
  const { [household]: _gone, ...others } = marksOf(entry)
  return { ...entry, marks: others }
}

function marksOf(entry: Json): Json {
  return isObject(entry.marks) ? entry.marks : {}
}

/** What an entry of `bought` calls its line. */
function lineIn(entry: Json): LineOf {
  const pot = entry.pot === 'labour' ? 'labour' : 'materials'
  return { item: said(entry.item), pot, what: said(entry.what), place: said(entry.place) }
}

/** A missing text and an empty one are the same. */
function said(value: unknown): string {
  return value === undefined || value === null || value === false ? '' : String(value)
}

function booksIn(document: NotebookDocument): Json {
  return isObject(document.books) ? document.books : {}
}

function listIn(document: NotebookDocument, key: 'bought' | 'things'): readonly Json[] {
  const list = booksIn(document)[key]
  return Array.isArray(list) ? list.filter(isObject) : []
}

function withList(document: NotebookDocument, key: 'bought' | 'things', list: readonly Json[]) {
  return inFormatOrder({ ...document, books: { ...booksIn(document), [key]: list } })
}
