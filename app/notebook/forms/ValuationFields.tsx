'use client'

import { currencyDigits } from '../../../lib/core/amounts/currency.ts'
import { minorUnits } from '../../../lib/core/amounts/money.ts'
import { isNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { twoValues } from '../../../lib/core/ledger/valuation.ts'
import { entryFieldWords, valuationSentence } from '../../../lib/words/entryFieldWords.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { textAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { Fold } from '../../ui/draft/Fold.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { FormNames } from './partWords.ts'

/** What reclaimed stock is worth: by a paper, or by weight at a yard's price, the lower of the two. */
export function ValuationFields({ names }: { names: FormNames }) {
  const words = entryFieldWords.valuation
  return (
    <Fold label={words.label} about={words.about} paths={['valuation']}>
      <p>{words.rule}</p>
      <FigureField
        path="valuation.documented"
        label={words.documented}
        hint={words.documentedHint}
        suffix={names.currency}
      />
      <FieldLine>
        <FigureField path="valuation.weight" label={words.weight} />
        <ChoiceField
          path="valuation.unit"
          label={words.unit}
          options={[
            { value: 'lb', label: 'lb' },
            { value: 'kg', label: 'kg' },
          ]}
        />
        <FigureField path="valuation.yardPrice" label={words.yardPrice} suffix={names.currency} />
      </FieldLine>
      <TextField path="valuation.saidBy" label={words.saidBy} hint={words.saidByHint} />
      <ValueSaid currency={names.currency} />
    </Fold>
  )
}

/** The two values and the one that counts, while they are typed. */
function ValueSaid({ currency }: { currency: string }) {
  const { draft } = useDraft()
  const digits = currencyDigits(currency) ?? 2
  const [documented, weight, yardPrice, amount] = [
    textAt(draft, 'valuation.documented'),
    textAt(draft, 'valuation.weight'),
    textAt(draft, 'valuation.yardPrice'),
    textAt(draft, 'amount'),
  ]
  const holds =
    (documented === '' || isNumber(documented, digits)) &&
    [weight, yardPrice].every((one) => one === '' || isNumber(one, 6))
  if (!holds) return null
  const values = twoValues({ documented, weight, unit: '', yardPrice, saidBy: '', marks: {} }, digits)
  const typed = isNumber(amount, digits) ? minorUnits(amount, digits) : undefined
  const said = valuationSentence(values, typed, currency)
  return said === '' ? null : (
    <p className="field-hint" role="status">
      {said}
    </p>
  )
}
