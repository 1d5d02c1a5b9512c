'use client'

import { moreInstalmentWords } from '../../../lib/words/arrangementText.ts'
import { dayWords } from '../../../lib/words/day.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { DateField } from '../../ui/draft/DateField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { textAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { fieldId } from '../../ui/draft/fieldId.ts'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TakenOut } from '../../ui/draft/TakenOut.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import { useOptionalPart } from '../../ui/draft/useOptionalPart.ts'
import { hasMoreInstalment, type MoreInstalment, withMoreInstalment } from './moreInstalment.ts'
import { type FormNames, householdChoices } from './partWords.ts'

const path = 'arrangements.instalments'

/** A payment plan: shown only once somebody says that there is one. */
export function InstalmentFields({
  names,
  planned,
  more,
}: {
  names: FormNames
  planned: { readonly a: string; readonly b: string } | undefined
  /** What the signed plan falls short by, to be added with one press. */
  more?: MoreInstalment | undefined
}) {
  const { draft, change, form } = useDraft()
  const { isThere, ready, begin, takeOut, putBack } = useOptionalPart(path)
  if (!isThere) {
    const first = { from: '', total: '', parts: [{ on: '', amount: '' }] }
    return (
      <div className="field">
        <button type="button" className="button button-plain" disabled={!ready} onClick={() => begin(first)}>
          One household pays in instalments
        </button>
        <TakenOut name="Instalments" path={path} onPutBack={putBack} />
      </div>
    )
  }
  const from = textAt(draft, `${path}.from`)
  const brings = from === 'a' || from === 'b' ? planned?.[from] : undefined
  return (
    <fieldset className="field special-post">
      <legend className="field-label">Instalments</legend>
      <ChoiceField path={`${path}.from`} label="Paid by" options={householdChoices(names)} />
      <FigureField
        path={`${path}.total`}
        label="In all"
        hint={brings === undefined ? undefined : `As planned it brings ${brings} in money.`}
        suffix={names.currency}
      />
      <TickField
        path="totalIsMeant"
        label="The total is meant, also where the plan asks for another amount"
      />
      <RowsField
        path={`${path}.parts`}
        label="Parts"
        hint="In the order of their days. They have to add to exactly the total."
        rowLabel={(row) => dayWords(textAt(row, 'on'))}
        empty={{ on: '', amount: '' }}
        addLabel="Add an instalment"
      >
        {(row) => (
          <FieldLine>
            <DateField path={`${row}.on`} label="Due on" />
            <FigureField path={`${row}.amount`} label="Amount" suffix={names.currency} />
          </FieldLine>
        )}
      </RowsField>
      {more === undefined || hasMoreInstalment(draft, path, more) ? null : (
        <div className="field">
          <p className="field-hint">{moreInstalmentWords.short(more.words)}</p>
          <button
            type="button"
            id={fieldId(form, `${path}.more`)}
            className="button button-plain"
            disabled={!ready}
            onClick={() => change((old) => withMoreInstalment(old, path, more))}
          >
            {moreInstalmentWords.add(more.words)}
          </button>
        </div>
      )}
      <div className="button-row">
        <button type="button" className="button button-plain" disabled={!ready} onClick={takeOut}>
          No instalments
        </button>
      </div>
    </fieldset>
  )
}
