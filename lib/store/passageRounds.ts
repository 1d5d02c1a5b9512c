import { itemKey } from '../core/agreement/agreedItems.ts'
import type { ForBoth, Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { type HeldBackView, type Said, sayHeldBackIn, viewOf } from './heldBack.ts'
import { type Edit, editIn } from './notebooks.ts'
import { storedHousehold } from './storedHousehold.ts'

type Asks = { readonly notebookId: string; readonly household: Household; readonly gateId: string }

/** Rounds of counting the passages of a gate, as one household may see them. */
export type PassageRounds = {
  /** The round that waits for a count, from 1; `other` is never a count here. */
  readonly open: { readonly round: number; readonly own?: Said; readonly other: 'not said' | 'held back' }
  /** What both counted in the newest round that both have counted in. */
  readonly last?: ForBoth<Said>
}

export async function passageRounds(asks: Asks): Promise<PassageRounds> {
  return database().read((tables) => roundsIn(tables, asks))
}

/**
 * Keeps a household's count, and with it what the gate then says, in one transaction. The count goes into the round that
 * waits for one. `decide` is given both counts once both are there, until then the household's own alone.
 *
 * Where `decide` refuses, nothing is written.
 */
export async function countPassages<Kept>(
  count: Asks & {
    readonly content: string
    readonly at: Date
    readonly decide: (document: string, counted: { readonly a?: string; readonly b?: string }) => Edit<Kept>
  },
): Promise<Kept> {
  const { notebookId, household, gateId, content, at } = count
  const asks = { notebookId, household, gateId }
  try {
    return await database().write(async (tables) => {
      const { round } = (await roundsIn(tables, asks)).open
      await sayHeldBackIn(tables, {
        notebookId,
        household,
        subject: subjectOf(gateId, round),
        content,
        at,
        itemKey: itemKey(gateId),
        detail: { subject: 'passages', round },
      })
      const { last, open } = await roundsIn(tables, asks)
      const both = open.round > round && last ? { a: last.a.content, b: last.b.content } : undefined
      const change = (document: string) => {
        const edit = count.decide(document, both ?? { [household]: content })
        if ('refused' in edit) throw new RefusedCount(edit.refused)
        return edit
      }
      return editIn(tables, { id: notebookId, household, at, change })
    })
  } catch (thrown) {
    if (thrown instanceof RefusedCount) return thrown.kept as Kept
    throw thrown
  }
}

/** Thrown, so that the count goes as it came. */
class RefusedCount extends Error {
  readonly kept: unknown

  constructor(kept: unknown) {
    super('The count was refused.')
    this.kept = kept
  }
}

async function roundsIn(tables: Tables, { notebookId, household, gateId }: Asks): Promise<PassageRounds> {
  const rows = await tables.heldBack.findMany({
    where: { notebookId, subject: { startsWith: 'passages:' } },
    orderBy: { id: 'desc' },
  })
  const views: HeldBackView[] = []
  for (let round = 1; ; round += 1) {
    const said = rows
      .filter(({ subject }) => subject === subjectOf(gateId, round))
      .map((row) => ({ ...row, household: storedHousehold(row.household) }))
    const view = viewOf(said, household)
    if (view.own === undefined || typeof view.other === 'string') {
      const { own, other } = view
      const open = { round, ...(own && { own }), other: typeof other === 'string' ? other : 'held back' }
      return { open, ...lastOf(views.at(-1), household) } as const
    }
    views.push(view)
  }
}

function lastOf(view: HeldBackView | undefined, household: Household): { readonly last?: ForBoth<Said> } {
  if (view?.own === undefined || typeof view.other === 'string') return {}
  return { last: household === 'a' ? { a: view.own, b: view.other } : { a: view.other, b: view.own } }
}

function subjectOf(gateId: string, round: number): string {
  return `passages:${gateId}:${round}`
}
