import type { Thing } from '../core/agreement/notebook.ts'
import { mayHaveValue } from '../core/ledger/things.ts'
import { type Household, otherHousehold } from '../core/people/household.ts'
import { dayWords } from './day.ts'
import type { ShareNames } from './shareText.ts'

export const thingKindWords: Readonly<Record<Thing['kind'], string>> = {
  borrowed: 'Borrowed tool',
  hired: 'Hired tool',
  tool: 'Tool bought for the job',
  leftover: 'Left over',
  salvage: 'From the old fence',
}

export const thingKindHints: Readonly<Record<Thing['kind'], string>> = {
  borrowed: 'goes back to whoever lent it',
  hired: 'goes back; what the hire costs is a cost line or an entry in the book',
  tool: 'somebody keeps it afterwards, at a value',
  leftover: 'kept at a value, or sold',
  salvage: 'what it brings belongs to both',
}

export const thingRefusals = {
  kind: 'Needed: choose one of the answers.',
  what: 'Needed: what it is, such as “post auger” or “12 ft of mesh”.',
  item: 'Needed where it has a value: the section, gate or common cost whose materials the value is taken off.',
  household: 'Needed where it has a value: who keeps it, or who took the money for it.',
  afterToday: (today: string) => `This day is yet to come: today is ${dayWords(today)}.`,
} as const

/** One thing in a sentence or two: where it is from, when it is due, who has it, whether it was sold. */
export function thingWords(thing: Thing, names: ShareNames, today: string): string {
  const { kind, from, on, due, returned, household, sold } = thing
  const since = on === '' ? '' : ` on ${dayWords(on)}`
  if (!mayHaveValue(kind)) {
    const where = from.trim() === '' ? 'It is not said from whom.' : `From ${from.trim()}${since}.`
    if (returned !== '') return `${where} Brought back on ${dayWords(returned)}.`
    if (due === '') return `${where} Not brought back yet.`
    const late = due < today ? ' It is overdue.' : ''
    return `${where} Due back on ${dayWords(due)}.${late}`
  }
  const origin = from.trim() === '' ? '' : `${from.trim()}. `
  if (household === '') return `${origin}It is not said yet who keeps it.`
  return sold
    ? `${origin}Sold${since}; ${names[household]} took the money.`
    : `${origin}${names[household]} keeps it.`
}

/** Whether its value counts, or what it waits for. */
export function thingValueWords(
  thing: Thing,
  value: string,
  item: string | undefined,
  names: ShareNames,
): string {
  const { household, marks } = thing
  if (household === '') return `Valued at ${value}. It counts once it is said who keeps it, and both mark it.`
  if (item === undefined)
    return `Valued at ${value}, but the item it belonged to was removed, so it counts as nothing. Choose another.`
  const effect = `${value} off the materials of ${item}, and off what ${names[household]} has given`
  if (marks.a !== undefined && marks.b !== undefined) return `Counts: ${effect}.`
  return `Once both mark it: ${effect}.`
}

/** Whose mark its value waits for, seen by one household. */
export function thingStanding(thing: Thing, own: Household, names: ShareNames): string {
  const { marks } = thing
  const other = otherHousehold(own)
  if (marks.a !== undefined && marks.b !== undefined) return 'Marked by both'
  if (marks[own] !== undefined) return `Waits for ${names[other]}`
  return marks[other] === undefined ? 'Not marked yet' : 'Waits for your mark'
}

export const thingFieldWords = {
  save: 'Write it down',
  kind: 'What kind of thing',
  what: 'What it is',
  whatHint: 'Such as “post auger” or “12 ft of mesh”.',
  from: 'From whom, or where it comes from',
  since: 'Since',
  due: 'Due back on',
  returned: 'Brought back on',
  on: 'On',
  household: 'Who keeps it, or took the money',
  nobody: 'not said yet',
  sold: 'It was sold: the household took the money for it',
  value: 'What it is worth, or brought',
  valueHint:
    'It is taken off the item’s materials and off what this household has given, once both mark it. Don’t also enter it as money received back, or it counts twice; and where the plan has a credit line for it, enter the money for that line instead.',
  item: 'Off which item',
  itemHint: 'The section, gate or common cost that it was bought for, or stood on.',
  noItem: 'not said yet',
} as const
