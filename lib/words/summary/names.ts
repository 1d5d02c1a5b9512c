import type { ItemKind, Notebook } from '../../core/agreement/notebook.ts'
import type { Household } from '../../core/people/household.ts'
import { householdName, kindWords } from '../labels.ts'

/** A household's name at the start of a sentence. */
export function householdStart(notebook: Notebook, household: Household): string {
  return capitalised(householdName(notebook, household))
}

export function capitalised(text: string): string {
  const first = String.fromCodePoint(text.codePointAt(0) ?? 32)
  return text === '' ? '' : first.toLocaleUpperCase('en-US') + text.slice(first.length)
}

/** What an item is called: its kind, its place in the file counted from one, its name if it has one. */
export function itemTitle(kind: ItemKind, index: number, name: string): string {
  const number = `${kindWords[kind]} ${index + 1}`
  return name.trim() === '' ? number : `${number}: ${name.trim()}`
}

/** Joins words as a list is spoken: "a, b and c". */
export function spokenList(words: readonly string[]): string {
  const last = words.at(-1)
  if (last === undefined) return ''
  return words.length === 1 ? last : `${words.slice(0, -1).join(', ')} and ${last}`
}

/** What a person typed, as a sentence of its own: with a stop at its end. Empty where nothing was typed. */
export function typedSentence(text: string): string {
  const trimmed = text.trim()
  return trimmed === '' || /[.!?…]["”’)]?$/.test(trimmed) ? trimmed : `${trimmed}.`
}
