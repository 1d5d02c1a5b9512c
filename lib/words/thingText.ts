import type { Thing, ThingState } from '../core/agreement/notebook.ts'
import { mayHaveValue, standingOfThing } from '../core/ledger/things.ts'
import { type Household, otherHousehold } from '../core/people/household.ts'
import { dayWords } from './day.ts'
import type { ShareNames } from './shareText.ts'
import { capitalised } from './summary/names.ts'

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
    : `${origin}${capitalised(names[household])} keeps it.`
}

/** Whether its value counts, or what it waits for. */
export function thingValueWords(
  thing: Thing,
  value: string,
  item: string | undefined,
  names: ShareNames,
): string {
  const { household } = thing
  if (household === '') return `Valued at ${value}. It counts once it is said who keeps it, and both mark it.`
  if (item === undefined)
    return `Valued at ${value}, but the item it belonged to was removed, so it counts as nothing. Choose another.`
  const effect = effectWords(value, item, names[household])
  if (standingOfThing(thing) === 'agreed') return `Counts: ${effect}.`
  return `Once both mark it: ${effect}.`
}

function effectWords(value: string, item: string, keeper: string): string {
  return `${value} off the materials of ${item}, and off what ${keeper} has given`
}

/** What both marked of a thing that was changed or taken off since, and until when it counts. */
export function thingAgreedWords(
  agreed: ThingState,
  value: string | undefined,
  item: string | undefined,
  names: ShareNames,
  going: boolean,
): string {
  const until = going ? 'that it is off the list' : 'it as it stands now'
  const what = agreed.what.trim() || 'a thing without a name'
  if (value === undefined || agreed.household === '' || item === undefined)
    return `Both marked “${what}” as worth nothing, and that counts until both mark ${until}.`
  const effect = effectWords(value, item, names[agreed.household])
  return `Both marked “${what}”, ${agreed.sold ? 'sold' : 'kept'} by ${names[agreed.household]}: ${effect}. That counts until both mark ${until}.`
}

/** Whose mark it waits for, seen by one household. */
export function thingStanding(thing: Thing, own: Household, names: ShareNames): string {
  const { marks, off } = thing
  const other = otherHousehold(own)
  const waiting =
    marks[own] !== undefined
      ? `waits for ${names[other]}`
      : marks[other] === undefined
        ? undefined
        : 'waits for your mark'
  switch (standingOfThing(thing)) {
    case 'agreed':
      return 'Marked by both'
    case 'changed':
      return waiting === undefined ? 'Changed since both marked it' : `Changed; ${waiting}`
    case 'going':
      return `Taken off the list by ${off === undefined ? names[other] : names[off.by]}; ${waiting ?? 'not marked yet'}`
    case 'gone':
      return 'Off the list'
    case 'open':
      return waiting === undefined ? 'Not marked yet' : `W${waiting.slice(1)}`
  }
}

export const thingPressWords = {
  takeOff: 'Take it off the list',
  /** Asked before it is taken off. */
  takeOffAsk: 'Take this off the list? It counts as nothing then. You can put it back below.',
  takeOffAgreedAsk:
    'Take this off the list? What both marked counts until the other household marks this too. You can put it back.',
  agreeTo: (value: string) => `Agree to ${value}`,
  agreeOff: 'Agree that it is off the list',
  agreeChange: 'Agree to the change',
  putBack: 'Put it back on the list',
  unmark: 'Take your mark off',
  offSummary: (count: number) =>
    count === 1 ? 'One thing that was taken off the list' : `${count} things that were taken off the list`,
  offBy: (name: string, on: string) => `${capitalised(name)} took it off on ${dayWords(on)}.`,
} as const

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
