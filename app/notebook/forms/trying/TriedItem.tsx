'use client'

import { memo, useId, useState } from 'react'
import type { CommonCost, Gate, Section } from '../../../../lib/core/agreement/notebook.ts'
import { currencyDigits } from '../../../../lib/core/amounts/currency.ts'
import { spreadOf } from '../../../../lib/core/shares/itemShares.ts'
import { followsHeight } from '../../../../lib/core/trying/movedLines.ts'
import { sameInput, type TriedEdit } from '../../../../lib/core/trying/tried.ts'
import { shareAmounts, sharePots } from '../../../../lib/core/trying/triedShare.ts'
import { shareAmountName, sharePotWords, tryWords } from '../../../../lib/words/tryText.ts'
import { FieldLine } from '../../../ui/draft/FieldLine.tsx'
import type { FormNames } from '../partWords.ts'
import { TriedField } from './TriedField.tsx'

export type TriedItemProps = {
  item: Section | Gate | CommonCost
  title: string
  /** What it would ask of both, in words: "$913.19, as planned". */
  figures: string
  /** The edits of this item: the same list as long as nothing of it was tried anew. */
  edits: readonly TriedEdit[]
  names: FormNames
  /** Names of the build-ups that can be tried; empty for a common cost. */
  buildUps: readonly string[]
  onTry: (edit: TriedEdit, planned: string) => void
}

/** One item's inputs, folded away until somebody looks. Drawn anew only where something of it changed. */
export const TriedItem = memo(function TriedItem(props: TriedItemProps) {
  const [unfolded, setUnfolded] = useState(false)
  const { title, figures, edits } = props
  return (
    <details
      className="fold"
      open={unfolded}
      data-tried={edits.length > 0 ? '' : undefined}
      onToggle={(event) => setUnfolded(event.currentTarget.open)}
    >
      <summary>
        <span className="fold-label">{title}</span>
        <span className="fold-about figure">{figures}</span>
      </summary>
      {unfolded ? <ItemFields {...props} /> : null}
    </details>
  )
})

function ItemFields({ item, edits, names, buildUps, onTry }: TriedItemProps) {
  const { currency } = names
  const tried = (input: TriedEdit): TriedEdit => edits.find((one) => sameInput(one, input)) ?? input
  const dimension = (field: 'height' | 'from' | 'to' | 'opening', label: string, planned: string) => (
    <TriedField
      label={label}
      edit={tried({ item: item.id, field, text: planned })}
      planned={planned}
      onTry={onTry}
    />
  )
  const line = (
    field: 'quantity' | 'unitPrice' | 'hours' | 'rate',
    at: number,
    label: string,
    planned: string,
    suffix: string,
  ) => (
    <TriedField
      label={label}
      suffix={suffix}
      edit={tried({ item: item.id, field, line: at, text: planned })}
      planned={planned}
      onTry={onTry}
    />
  )
  return (
    <div className="fold-fields">
      {'from' in item ? (
        <FieldLine>
          {dimension('from', 'From', item.from)}
          {dimension('to', 'To', item.to)}
          {dimension('height', 'Height', item.height.agreed)}
        </FieldLine>
      ) : null}
      {'height' in item && edits.some(({ field }) => field === 'height') && !followsHeight(item.materials) ? (
        <p className="field-finding" role="status">
          {tryWords.heightMovesNothing}
        </p>
      ) : null}
      {'opening' in item ? dimension('opening', 'Clear opening', item.opening) : null}
      {'buildUp' in item || buildUps.length > 0 ? (
        <BuildUpChoice
          edit={tried({ item: item.id, field: 'buildUp', text: plannedBuildUp(item) })}
          planned={plannedBuildUp(item)}
          names={buildUps}
          onTry={onTry}
        />
      ) : null}
      {'from' in item || 'opening' in item ? <p className="field-hint">{tryWords.follows}</p> : null}
      {item.materials.map((cost, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines have no names of their own, and their order never changes here
        <fieldset className="try-line" key={`m${at}`}>
          <legend>{cost.what || `Cost line ${at + 1}`}</legend>
          <FieldLine>
            {line('quantity', at, 'Quantity', cost.quantity, cost.unit)}
            {line('unitPrice', at, 'Unit price', cost.unitPrice, currency)}
          </FieldLine>
        </fieldset>
      ))}
      {item.labour.map((task, at) =>
        task.counts ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: as above
          <fieldset className="try-line" key={`l${at}`}>
            <legend>{task.task || `Task ${at + 1}`}</legend>
            <FieldLine>
              {line('hours', at, 'Hours', task.hours, 'h')}
              {line('rate', at, 'Rate an hour', task.rate, currency)}
            </FieldLine>
          </fieldset>
        ) : null,
      )}
      <ShareAmounts item={item} tried={tried} names={names} onTry={onTry} />
    </div>
  )
}

/** The amounts that the item's share is worked out from: the basic fence, named upgrades, building alone. */
function ShareAmounts({
  item,
  tried,
  names,
  onTry,
}: Pick<TriedItemProps, 'item' | 'names' | 'onTry'> & { tried: (input: TriedEdit) => TriedEdit }) {
  // What is laid on the sections and gates is not shared by a way of its own.
  const amounts = spreadOf(item) === undefined ? shareAmounts(item.share) : []
  return sharePots
    .filter((pot) => amounts.some((one) => one.pot === pot))
    .map((pot) => (
      <fieldset className="try-line" key={pot}>
        <legend>{sharePotWords[pot]}</legend>
        <FieldLine>
          {amounts
            .filter((one) => one.pot === pot)
            .map((one) => {
              const { field, line, text } = one
              return (
                <TriedField
                  key={`${field} ${line}`}
                  label={shareAmountName(one, names)}
                  suffix={names.currency}
                  digits={currencyDigits(names.currency) ?? 0}
                  edit={tried({ item: item.id, field, pot, line, text })}
                  planned={text}
                  onTry={onTry}
                />
              )
            })}
        </FieldLine>
      </fieldset>
    ))
}

function plannedBuildUp(item: TriedItemProps['item']): string {
  return 'buildUp' in item ? (item.buildUp?.name ?? '') : ''
}

/** Another build-up, and with it another infill, by its name. */
function BuildUpChoice({
  edit,
  planned,
  names,
  onTry,
}: {
  edit: TriedEdit
  planned: string
  names: readonly string[]
  onTry: TriedItemProps['onTry']
}) {
  const id = useId()
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        Build-up and infill
      </label>
      <select
        id={id}
        value={edit.text}
        onChange={(event) => onTry({ item: edit.item, field: 'buildUp', text: event.target.value }, planned)}
      >
        <option value={planned}>{planned === '' ? 'as planned' : `${planned} (planned)`}</option>
        {names
          .filter((name) => name !== planned)
          .map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
      </select>
    </div>
  )
}
