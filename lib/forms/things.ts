import { canonicalText } from '../core/agreement/canonicalText.ts'
import type { ThingState } from '../core/agreement/notebook.ts'
import type { Household } from '../core/people/household.ts'
import {
  bothMarked,
  type Json,
  listIn,
  type Mark,
  said,
  withList,
  withMark,
  withoutMark,
} from './booksLists.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'
import { tidyDraft } from './tidyDraft.ts'

/** What of a thing its marks are about: another value, or another household, is another thing to agree to. */
const markedKeys = ['kind', 'what', 'item', 'household', 'sold', 'value'] as const satisfies Exclude<
  keyof ThingState,
  'marks'
>[]

/**
 * The document with a thing as the draft has it: at `index`, or at the end of the list where there is none. Marks never
 * come with a draft; those that are there stay only while nothing that they are about was changed. What both marked counts
 * on, beside what was changed, until both mark that too.
 */
export function putThing(document: NotebookDocument, index: number | undefined, draft: Json) {
  const things = listIn(document, 'things')
  const current = index === undefined ? undefined : things[index]
  const thing = thingAsTyped(tidyDraft(draft, current) as Json)
  const next = current === undefined ? thing : changedThing(current, thing)
  return withList(document, 'things', index === undefined ? [...things, next] : things.with(index, next))
}

function changedThing(current: Json, typed: Json): Json {
  const { marks, agreed, off } = current
  if (saysTheSame(current, typed))
    return {
      ...typed,
      ...(marks === undefined ? {} : { marks }),
      ...(agreed === undefined ? {} : { agreed }),
      ...(off === undefined ? {} : { off }),
    }
  const before = agreedOf(current)
  // Taken off, it is no more what both marked, whatever it says: that waits for both still.
  if (off !== undefined) return { ...typed, ...(before === undefined ? {} : { agreed: before }), off }
  return withAgreed(typed, before)
}

/** What both marked last of a thing, as far as the marks are about it; undefined where nothing of it counts. */
function agreedOf(thing: Json): Json | undefined {
  if (bothMarked(thing) && thing.off !== undefined) return undefined
  if (bothMarked(thing))
    return Object.fromEntries(
      [...markedKeys, 'marks'].flatMap((key) => (key in thing ? [[key, thing[key]]] : [])),
    )
  return isObject(thing.agreed) ? thing.agreed : undefined
}

/** A thing without marks of its own, beside what both marked of it; with their marks again where it says that very thing. */
function withAgreed(thing: Json, agreed: Json | undefined): Json {
  if (agreed === undefined) return thing
  return saysTheSame(thing, agreed) ? { ...thing, marks: agreed.marks } : { ...thing, agreed }
}

function saysTheSame(one: Json, other: Json): boolean {
  return markedKeys.every((key) => said(one[key]) === said(other[key]))
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

/**
 * The document with a thing taken off the list by one household: it stays there, as taken off. Where both marked it, that
 * counts until both mark this too; who takes it off has marked it.
 */
export function takeThingOff(document: NotebookDocument, index: number, { household, on }: Mark) {
  return withThing(document, index, (thing) => {
    if (thing.off !== undefined) return thing
    const agreed = agreedOf(thing)
    const off = { ...thingAsTyped(thing), off: { on, by: household } }
    return agreed === undefined ? off : { ...off, agreed, marks: { [household]: { on } } }
  })
}

/** The document with a thing on the list again: as both marked it, where that was never undone; else nobody has marked it. One that was never taken off stays as it is. */
export function putThingBack(document: NotebookDocument, index: number) {
  return withThing(document, index, (thing) =>
    thing.off === undefined
      ? thing
      : withAgreed(thingAsTyped(thing), isObject(thing.agreed) ? thing.agreed : undefined),
  )
}

/** The document with a household's mark on a thing as it stands; with the second one it counts, and nothing before it. */
export function markThing(document: NotebookDocument, index: number, mark: Mark) {
  return withThing(document, index, (thing) => {
    const marked = withMark(thing, mark)
    if (!bothMarked(marked)) return marked
    const { agreed: _before, ...counts } = marked
    return counts
  })
}

export function unmarkThing(document: NotebookDocument, index: number, household: Household) {
  return withThing(document, index, (thing) => (bothMarked(thing) ? thing : withoutMark(thing, household)))
}

/** A thing as it is stored; undefined where there is none at that place. */
export function thingAt(document: NotebookDocument, index: number): Json | undefined {
  return listIn(document, 'things')[index]
}

/** A thing without who marked it as it stands: what a mark is set on. */
export function thingWithoutMarks(thing: Json): Json {
  const { marks: _marks, ...rest } = thing
  return rest
}

/** What somebody typed of a thing: nothing of marks, and nothing of what comes of them. */
export function thingAsTyped(thing: Json): Json {
  const { marks: _marks, agreed: _agreed, off: _off, ...typed } = thing
  return typed
}

function withThing(document: NotebookDocument, index: number, change: (thing: Json) => Json) {
  const things = listIn(document, 'things')
  const thing = things[index]
  return thing === undefined ? document : withList(document, 'things', things.with(index, change(thing)))
}
