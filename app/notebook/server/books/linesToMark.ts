import type { LineOf } from '../../../../lib/core/agreement/notebook.ts'
import { moneyText } from '../../../../lib/core/amounts/money.ts'
import { lineName } from '../../../../lib/core/ledger/findLine.ts'
import { mayMark } from '../../../../lib/core/ledger/lineMarks.ts'
import type { ItemStanding } from '../../../../lib/core/ledger/plannedAgainstActual.ts'
import type { Household } from '../../../../lib/core/people/household.ts'

/** A line with what it came to, as a mark has it. */
export type LineToMark = LineOf & { readonly amount: string; readonly path: string }

/**
 * The lines of an item that a household can mark in one press: something was entered for each, and the household has not
 * marked it at what it came to. A line with no entry is marked as not needed by itself, so that none is passed over.
 */
export function linesToMark(item: ItemStanding, household: Household, digits: number): readonly LineToMark[] {
  return item.lines
    .filter(({ entries, marks, markable }) => entries.length > 0 && mayMark(marks, markable, household))
    .map(({ line, markable }) => ({
      ...lineName(line),
      amount: moneyText(markable, digits),
      path: line.path,
    }))
}
