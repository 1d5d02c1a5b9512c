import type { Household } from '../core/people/household.ts'
import { otherHousehold } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { putOnRecord } from './happenings.ts'
import { storedHousehold } from './storedHousehold.ts'

/** What a household said by itself: JSON text, the newest that it said. */
export type Said = { readonly content: string; readonly at: Date }

/**
 * A subject as one household may see it: what it said itself, and what the other said once both have. Until then of the
 * other is told that it spoke, and no more.
 */
export type HeldBackView = {
  readonly own?: Said
  readonly other: 'not said' | 'held back' | Said
}

type Subject = { readonly notebookId: string; readonly household: Household; readonly subject: string }

/** The one door to what was said apart: nobody is handed the other's before both have spoken. */
export async function heldBackOf(asks: Subject): Promise<HeldBackView> {
  return database().read((tables) => heldBackIn(tables, asks))
}

/** The same inside a write transaction. */
export async function heldBackIn(tables: Tables, asks: Subject): Promise<HeldBackView> {
  const { notebookId, subject, household } = asks
  const rows = await tables.heldBack.findMany({ where: { notebookId, subject }, orderBy: { id: 'desc' } })
  return viewOf(
    rows.map((row) => ({ ...row, household: storedHousehold(row.household) })),
    household,
  )
}

/** Says it, and puts on record that something was said: the subject, never what. */
export async function sayHeldBackIn(
  tables: Tables,
  said: Subject & {
    readonly content: string
    readonly at: Date
    readonly itemKey?: string
    readonly detail: { readonly subject: string; readonly round?: number }
  },
): Promise<void> {
  const { notebookId, household, subject, content, at, itemKey, detail } = said
  await tables.heldBack.create({ data: { notebookId, household, subject, content, at } })
  const where = itemKey === undefined ? {} : { itemKey }
  await putOnRecord(tables, { notebookId, household, at, kind: 'held back', detail, ...where })
}

/** Says what a household needs; saying it again leaves the newest. */
export async function sayNeedsApart(said: Omit<Subject, 'subject'> & Said): Promise<void> {
  const subject = needsSubject
  await database().write((tables) => sayHeldBackIn(tables, { ...said, subject, detail: { subject } }))
}

/** The subject of what each household needs. */
export const needsSubject = 'needs'

export type Row = { readonly household: Household; readonly content: string; readonly at: Date }

/** @param newestFirst all that both said on one subject */
export function viewOf(newestFirst: readonly Row[], household: Household): HeldBackView {
  const newest = (of: Household): Said | undefined => {
    const row = newestFirst.find((one) => one.household === of)
    return row && { content: row.content, at: row.at }
  }
  const [own, other] = [newest(household), newest(otherHousehold(household))]
  if (other === undefined) return { ...(own && { own }), other: 'not said' }
  return own === undefined ? { other: 'held back' } : { own, other }
}
