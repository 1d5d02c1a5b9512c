'use client'

import { currencyDigits } from '../../../lib/core/amounts/currency.ts'
import { minorUnits } from '../../../lib/core/amounts/money.ts'
import { isNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { linesLeftWords } from '../../../lib/words/entryFieldWords.ts'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { getAt, listAt, textAt } from '../../ui/draft/draftPath.ts'

/** Says, while the rows are typed, how much of the amount is on no line yet, or by how much they are too much. */
export function LinesLeft({ currency }: { currency: string }) {
  const { draft } = useDraft()
  const digits = currencyDigits(currency) ?? 2
  const amounts = listAt(draft, 'lines').map((row) => textAt(row, 'amount'))
  const whole = textAt(draft, 'amount')
  if (amounts.length === 0 || ![whole, ...amounts].every((one) => isNumber(one, digits))) return null
  const onLines = amounts.reduce((sum, one) => sum + minorUnits(one, digits), 0n)
  const item = getAt(draft, 'for')
  return (
    <p className="field-hint" role="status">
      {linesLeftWords(minorUnits(whole, digits) - onLines, currency, item !== undefined && item !== '')}
    </p>
  )
}
