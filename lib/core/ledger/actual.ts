import type { Contribution, Notebook, SpentOn } from '../agreement/notebook.ts'
import { lesser, type Minor, minorUnits } from '../amounts/money.ts'
import type { ForBoth } from '../people/household.ts'
import { contributionAmount } from './contributed.ts'
import { lineFinder, type PlannedLine, plannedLines } from './findLine.ts'

/** What entries of the book came to on one line of the plan, in minor units. */
export type Actual = {
  /**
   * Spent less what came back; on a credit line what came back less what was spent, since that line is taken off. May be
   * below zero, and then nobody can mark it as bought.
   */
  readonly amount: Minor
  /** The same, of each household. */
  readonly by: ForBoth<Minor>
  /** Places in the book of the entries that it is made of. */
  readonly entries: readonly number[]
}

/** A part of an entry that was for a line which is no longer in the plan. */
export type GoneLine = {
  readonly entry: number
  readonly line: number
  readonly was: SpentOn
  readonly amount: Minor
}

export type Actuals = {
  /** By the line's path; a line that no entry names has none. */
  readonly byPath: ReadonlyMap<string, Actual>
  readonly gone: readonly GoneLine[]
}

export const nothingSpent: Actual = { amount: 0n, by: { a: 0n, b: 0n }, entries: [] }

/**
 * What every line actually came to: `lines` of cash and goods in kind, less those of refunds; for labour lines also the
 * hours that were entered for the task. Entries that were taken back count as nothing, and where an entry counts for
 * less than its amount (see `valuedAmount`), its lines share what counts in their order.
 */
export function actualsOf(notebook: Notebook, digits: number, find = lineFinder(notebook)): Actuals {
  const byPath = new Map<string, Actual>()
  const gone: GoneLine[] = []
  const taskOf = taskFinder(notebook)
  notebook.contributions.forEach((entry, index) => {
    if (entry.struck !== undefined) return
    if (entry.kind === 'hours') {
      const line = entry.task === '' ? undefined : taskOf(entry)
      if (line !== undefined) add(byPath, line, index, entry, contributionAmount(entry, digits))
      return
    }
    for (const { place, spent, amount } of countedLines(entry, digits)) {
      const line = find(spent)
      if (line === undefined) gone.push({ entry: index, line: place, was: spent, amount })
      else add(byPath, line, index, entry, amount)
    }
  })
  return { byPath, gone }
}

/** The lines of an entry with what counts of each. A transfer between the households was spent on nothing. */
export function countedLines(
  entry: Contribution,
  digits: number,
): readonly { readonly place: number; readonly spent: SpentOn; readonly amount: Minor }[] {
  if (entry.kind === 'hours' || entry.kind === 'transfer') return []
  let left = contributionAmount(entry, digits)
  return entry.lines.map((spent, place) => {
    const amount = lesser(minorUnits(spent.amount, digits), left)
    left -= amount
    return { place, spent, amount }
  })
}

function add(
  byPath: Map<string, Actual>,
  line: PlannedLine,
  index: number,
  entry: Contribution,
  amount: Minor,
): void {
  const before = byPath.get(line.path) ?? nothingSpent
  const credit = line.pot === 'materials' && line.line.credit
  const signed = (entry.kind === 'refund') === credit ? amount : -amount
  byPath.set(line.path, {
    amount: before.amount + signed,
    by: { ...before.by, [entry.household]: before.by[entry.household] + signed },
    entries: before.entries.at(-1) === index ? before.entries : [...before.entries, index],
  })
}

/**
 * The labour line on which hours were worked: of the item that the entry is for, the line with the entry's task that the
 * household itself does, else the first with that task.
 */
function taskFinder(notebook: Notebook): (entry: Contribution) => PlannedLine | undefined {
  let byTask: Map<string, PlannedLine[]> | undefined
  const key = (item: string, task: string) => JSON.stringify([item, task.trim()])
  return ({ for: item, task, household }) => {
    byTask ??= tasksOf(notebook, key)
    const lines = byTask.get(key(item, task)) ?? []
    return lines.find((line) => line.pot === 'labour' && line.line.by === household) ?? lines[0]
  }
}

function tasksOf(
  notebook: Notebook,
  key: (item: string, task: string) => string,
): Map<string, PlannedLine[]> {
  const byTask = new Map<string, PlannedLine[]>()
  for (const line of plannedLines(notebook)) {
    if (line.pot !== 'labour') continue
    const name = key(line.itemId, line.what)
    const others = byTask.get(name)
    if (others === undefined) byTask.set(name, [line])
    else others.push(line)
  }
  return byTask
}
