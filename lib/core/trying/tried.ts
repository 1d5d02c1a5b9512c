import type { Notebook } from '../agreement/notebook.ts'
import { parseLength } from '../amounts/length.ts'
import { isNumber } from '../amounts/typedNumber.ts'
import { type SharePlace, shareAmounts } from './triedShare.ts'

/**
 * A change that is tried: typed texts in place of the plan's, and percentages that move many of them together. It lies
 * beside the plan and touches nothing in it.
 */
export type Tried = {
  readonly edits: readonly TriedEdit[]
  readonly moves: TriedMoves
}

export const lineFields = ['quantity', 'unitPrice', 'hours', 'rate'] as const
export const dimensionFields = ['height', 'from', 'to', 'opening'] as const
export type LineField = (typeof lineFields)[number]
export type DimensionField = (typeof dimensionFields)[number]

/** One input of one item, as it is tried. */
export type TriedEdit =
  | { readonly item: string; readonly field: DimensionField; readonly text: string }
  /** `line` is the place in the item's `materials` (`quantity`, `unitPrice`) or `labour` (`hours`, `rate`), from 0. */
  | { readonly item: string; readonly field: LineField; readonly line: number; readonly text: string }
  /** An amount of the item's share; `line` says which of its upgrades. */
  | (SharePlace & { readonly item: string; readonly text: string })
  /** `text` is the name of a ready or kept build-up; its infill comes with it. */
  | { readonly item: string; readonly field: 'buildUp'; readonly text: string }

/**
 * Percent by which all prices, hours and rates are moved that were not typed anew: "20" is a fifth more, "-10" a tenth
 * less, empty is as planned.
 */
export type TriedMoves = { readonly prices: string; readonly hours: string; readonly rates: string }
export const moveKinds = ['prices', 'hours', 'rates'] as const

export const nothingTried: Tried = { edits: [], moves: { prices: '', hours: '', rates: '' } }

/**
 * Whether a text can be tried at a field: what does not hold is left as planned until it does.
 *
 * @param digits of the currency, after the point
 */
export function triedTextHolds(field: TriedEdit['field'], text: string, digits: number): boolean {
  switch (field) {
    case 'basic':
    case 'upgrade':
    case 'aloneA':
    case 'aloneB':
      return isNumber(text, digits)
    case 'quantity':
    case 'hours':
      return isNumber(text, 6)
    case 'unitPrice':
    case 'rate':
      return text === '' || isNumber(text, 6)
    case 'buildUp':
      return text !== ''
    default: {
      const length = parseLength(text)
      return length !== undefined && length.over >= 0n
    }
  }
}

/** Whether a text is a percentage to move by: at most four digits after the point, and nothing falls below zero. */
export function moveHolds(text: string): boolean {
  const size = text.startsWith('-') ? text.slice(1) : text
  if (!isNumber(size, 4)) return false
  return !text.startsWith('-') || Number(size) <= 100
}

/** Whether anything is tried at all. */
export function isTried({ edits, moves }: Tried): boolean {
  return edits.length > 0 || moveKinds.some((kind) => moves[kind] !== '')
}

/** The same input: two edits of it can't stand side by side. */
export function sameInput(left: TriedEdit, right: TriedEdit): boolean {
  const line = (edit: TriedEdit) => ('line' in edit ? edit.line : -1)
  const pot = (edit: TriedEdit) => ('pot' in edit ? edit.pot : '')
  return (
    left.item === right.item &&
    left.field === right.field &&
    line(left) === line(right) &&
    pot(left) === pot(right)
  )
}

/**
 * The edits with one more, in place of an earlier one of the same input. A text that says what the plan says takes the
 * edit away.
 */
export function withEdit(
  edits: readonly TriedEdit[],
  edit: TriedEdit,
  planned: string,
): readonly TriedEdit[] {
  const others = edits.filter((one) => !sameInput(one, edit))
  return edit.text === planned ? others : [...others, edit]
}

/** An input's text in the plan; undefined where the plan has no such input. */
export function plannedText(notebook: Notebook, edit: Omit<TriedEdit, 'text'>): string | undefined {
  const all = [...notebook.sections, ...notebook.gates, ...notebook.common]
  const item = all.find(({ id }) => id === edit.item)
  if (item === undefined) return undefined
  switch (edit.field) {
    case 'quantity':
    case 'unitPrice':
      return 'line' in edit ? item.materials[edit.line as number]?.[edit.field] : undefined
    case 'hours':
    case 'rate':
      return 'line' in edit ? item.labour[edit.line as number]?.[edit.field] : undefined
    case 'basic':
    case 'upgrade':
    case 'aloneA':
    case 'aloneB': {
      const { pot, line, field } = edit as Partial<SharePlace>
      return shareAmounts(item.share).find(
        (one) => one.pot === pot && one.line === line && one.field === field,
      )?.text
    }
    case 'height':
      return 'height' in item ? item.height.agreed : undefined
    case 'from':
    case 'to':
      return 'from' in item ? item[edit.field] : undefined
    case 'opening':
      return 'opening' in item ? item.opening : undefined
    case 'buildUp':
      return 'buildUp' in item ? (item.buildUp?.name ?? '') : ''
  }
}
