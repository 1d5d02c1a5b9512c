import { minorUnits, moneyText } from '../../../lib/core/amounts/money.ts'
import { isNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { getAt, setAt, textAt } from '../../ui/draft/draftPath.ts'
import { fieldId } from '../../ui/draft/fieldId.ts'

/** What the payment plan falls short by, as the form is given it. */
export type MoreInstalment = {
  /** Money as the file writes it, and in words. */
  readonly amount: string
  readonly words: string
  /** Digits after the point of the notebook's currency. */
  readonly digits: number
}

/** The field at which the amount is offered: the form of what is agreed begins its ids with `field`. */
export const moreAnchor = fieldId('field', 'arrangements.instalments.more')

/** A draft with one more instalment of that amount, whose day is still to be said, and its total that much higher. */
export function withMoreInstalment(
  draft: unknown,
  path: string,
  { amount, digits }: MoreInstalment,
): unknown {
  const parts = getAt(draft, `${path}.parts`)
  const total = textAt(draft, `${path}.total`)
  const added = setAt(draft, `${path}.parts`, [...(Array.isArray(parts) ? parts : []), { on: '', amount }])
  if (!isNumber(total, digits)) return added
  return setAt(
    added,
    `${path}.total`,
    moneyText(minorUnits(total, digits) + minorUnits(amount, digits), digits),
  )
}

/** Whether the last instalment of a draft is that amount already. */
export function hasMoreInstalment(draft: unknown, path: string, { amount }: MoreInstalment): boolean {
  const parts = getAt(draft, `${path}.parts`)
  return Array.isArray(parts) && textAt(parts.at(-1), 'amount') === amount
}
