'use client'

import Link from 'next/link'
import { isOfOther } from '../../../lib/core/ledger/entryRules.ts'
import { entryFieldWords, refundOrPaid } from '../../../lib/words/entryFieldWords.ts'
import { type Choice, ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { getAt, textAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { Fold } from '../../ui/draft/Fold.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import { LinesLeft } from './LinesLeft.tsx'
import type { FormNames } from './partWords.ts'
import { ValuationFields } from './ValuationFields.tsx'

/** What the form of an entry can choose from, and what its day is held against. */
export type EntryBooks = {
  /** Lines of the plan, each by the value that names it, with the item that it is of. */
  readonly lines: readonly (Choice & { readonly item: string })[]
  /** Photos and papers of receipts that are with the notebook. */
  readonly receipts: readonly Choice[]
  readonly filesPage: string
  /** ISO 8601 day on which the notebook was started. */
  readonly startedOn: string
}

/** Where money or goods went: the shop, the lines of the plan, the receipt, and how goods in kind were valued. */
export function SpentFields({ names, books }: { names: FormNames; books: EntryBooks }) {
  const { draft } = useDraft()
  const kind = String(getAt(draft, 'kind') ?? '')
  const words = refundOrPaid(kind)
  const item = textAt(draft, 'for')
  // One that was chosen before the item was stays to be seen: the server says what is wrong with it.
  const linesFor = (chosen: string) =>
    books.lines.filter((line) => !isOfOther(item, line) || line.value === chosen)
  return (
    <Shown path="kind" is={['cash', 'material', 'refund']}>
      <TextField path="shop" label={words.shop} />
      <Shown path="kind" is="material">
        <ValuationFields names={names} />
      </Shown>
      <Fold
        label={words.lines}
        about={entryFieldWords.linesAbout}
        paths={['lines', 'file']}
        open={Array.isArray(getAt(draft, 'lines')) && (getAt(draft, 'lines') as unknown[]).length > 0}
      >
        <RowsField
          path="lines"
          label={words.lines}
          hint={entryFieldWords.linesHint}
          rowLabel={(row) => labelOf(books.lines, row)}
          empty={{ line: '', quantity: '', amount: '' }}
          addLabel={entryFieldWords.addLine}
        >
          {(row) => (
            <>
              <ChoiceField
                path={`${row}.line`}
                label={entryFieldWords.line}
                options={linesFor(textAt(draft, `${row}.line`))}
              />
              <FieldLine>
                <FigureField path={`${row}.amount`} label={entryFieldWords.amount} suffix={names.currency} />
                <FigureField path={`${row}.quantity`} label={entryFieldWords.quantity} />
              </FieldLine>
            </>
          )}
        </RowsField>
        <LinesLeft currency={names.currency} />
        <ChoiceField
          path="file"
          label={entryFieldWords.receipt}
          options={books.receipts}
          optionalLabel={entryFieldWords.noReceipt}
        />
        <p className="field-hint">
          {entryFieldWords.addReceipt}{' '}
          <Link href={books.filesPage} target="_blank">
            {entryFieldWords.filesPage}
          </Link>
          .
        </p>
      </Fold>
    </Shown>
  )
}

/** The tick that an early day needs; nothing while the day is not before the notebook. */
export function EarlyDayTick({ startedOn }: { startedOn: string }) {
  const date = getAt(useDraft().draft, 'date')
  const early = typeof date === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(date) && date < startedOn
  return early ? <TickField path="earlierIsMeant" label={entryFieldWords.earlierIsMeant} /> : null
}

function labelOf(lines: readonly Choice[], row: unknown): string {
  const chosen = getAt(row, 'line')
  return lines.find(({ value }) => value === chosen)?.label ?? ''
}
