'use client'

import { type ReactNode, useEffect, useRef, useState } from 'react'
import { useDraft } from './draftContext.ts'
import { describedBy, FieldNotes } from './FieldFrame.tsx'
import { fieldId } from './fieldId.ts'
import { formWords } from './formWords.ts'
import { RowFold } from './RowFold.tsx'
import { RowTools } from './RowTools.tsx'
import { useField } from './useField.ts'
import { useRows } from './useRows.ts'

/**
 * A list in the draft: rows that can be added, removed (and put back, the last one first) and moved, by keyboard too.
 * `children` draws one row's fields; it is given the row's path (`materials[2]`) and its place.
 * `row` in `rowLabel` is whatever stands in the draft there.
 */
export function RowsField({
  path,
  label,
  hint,
  rowLabel,
  empty,
  addLabel,
  beginWith,
  max,
  reading,
  unfinished,
  besides,
  children,
}: {
  path: string
  label: ReactNode
  hint?: ReactNode
  rowLabel: (row: unknown, index: number) => string
  /** A new row; a function where each must have an id of its own, or takes something over from the row above it. */
  empty: object | ((above: unknown) => object)
  /** Without it rows are only moved and removed here. */
  addLabel?: string | undefined
  /** Which field of a new row is filled in first, as its path within the row; otherwise its first. */
  beginWith?: string | undefined
  max?: number | undefined
  /** How a row reads; with it the fields of a row that has a name are folded away under it. */
  reading?: ((row: unknown, index: number) => ReactNode) | undefined
  /** Whether a row still waits for something to be typed: it stands open then. One without a name always does. */
  unfinished?: ((row: unknown) => boolean) | undefined
  /** What stands below a row that is folded away, and below its fields too. */
  besides?: ((rowPath: string, index: number) => ReactNode) | undefined
  children: (rowPath: string, index: number) => ReactNode
}) {
  const { id, errors, findings, ready } = useField(path)
  const { rows, keys, removed, add, remove, undo, move } = useRows(path)
  const { form } = useDraft()
  const box = useRef<HTMLFieldSetElement>(null)
  const [said, setSaid] = useState('')
  /** What should have the focus after the next drawing: a selector inside the box. */
  const [goal, setGoal] = useState<{ selector: string } | null>(null)
  useEffect(() => {
    if (goal === null) return
    const inside = box.current?.querySelector<HTMLElement>(goal.selector)
    inside?.focus()
  }, [goal])

  const rowId = (at: number) => `${id}-row-${at}`
  const nameOf = (at: number) => formWords.rowName(rowLabel(rows[at], at).trim(), at)
  const full = max !== undefined && rows.length >= max
  // What is folded away can't have the focus: there it goes to the fold.
  const firstField = (at: number) =>
    `#${rowId(at)} .row-fields :is(:is(input, select, textarea, button):not(details:not([open]) *), .row-fold:not([open]) > summary)`

  function moved(from: number, to: number) {
    const way = to < from ? 'up' : 'down'
    const atEnd = to === 0 || to === rows.length - 1
    const back = way === 'up' ? 'down' : 'up'
    setSaid(formWords.rowMoved(nameOf(from), to + 1, rows.length))
    move(from, to)
    setGoal({ selector: `#${rowId(to)}-${atEnd ? back : way}` })
  }

  return (
    <fieldset
      className="field field-rows"
      id={id}
      ref={box}
      tabIndex={-1}
      data-wrong={errors.length > 0 ? '' : undefined}
      data-found={findings.length > 0 ? '' : undefined}
      aria-describedby={describedBy(id, {
        hint: hint !== undefined,
        errors: errors.length > 0,
        findings: findings.length > 0,
      })}
    >
      <legend className="rows-label">{label}</legend>
      <FieldNotes id={id} hint={hint} errors={errors} findings={findings} />
      {rows.length === 0 ? <p className="rows-none">{formWords.rowsNone}</p> : null}
      <ol className="rows">
        {rows.map((_, at) => (
          <li className="row" id={rowId(at)} key={keys[at]}>
            <RowTools
              id={rowId(at)}
              name={nameOf(at)}
              place={at}
              count={rows.length}
              ready={ready}
              onMove={(to) => moved(at, to)}
              onRemove={() => {
                setSaid('')
                remove(at)
                setGoal({ selector: `#${id}-undo` })
              }}
            />
            <div className="row-fields">
              {reading === undefined ? (
                children(`${path}[${at}]`, at)
              ) : (
                <RowFold
                  path={`${path}[${at}]`}
                  name={nameOf(at)}
                  reading={reading(rows[at], at)}
                  open={rowLabel(rows[at], at).trim() === '' || unfinished?.(rows[at]) === true}
                >
                  {children(`${path}[${at}]`, at)}
                </RowFold>
              )}
              {besides?.(`${path}[${at}]`, at)}
            </div>
          </li>
        ))}
      </ol>
      <p className="only-read-out" role="status">
        {said}
      </p>
      <div className="rows-foot">
        {removed === null ? null : (
          <p className="rows-removed">
            {formWords.rowRemoved(
              formWords.rowName(rowLabel(removed.row, removed.index).trim(), removed.index),
            )}{' '}
            <button
              type="button"
              id={`${id}-undo`}
              className="button button-plain"
              disabled={full}
              onClick={() => setGoal({ selector: firstField(undo()) })}
            >
              {formWords.rowUndo}
            </button>
          </p>
        )}
        {addLabel === undefined ? null : (
          <button
            type="button"
            className="button button-plain"
            disabled={!ready || full}
            onClick={() => {
              const at = rows.length
              add(typeof empty === 'function' ? empty(rows.at(-1)) : empty)
              setGoal({
                selector:
                  beginWith === undefined
                    ? firstField(at)
                    : `#${fieldId(form, `${path}[${at}].${beginWith}`)}`,
              })
            }}
          >
            {addLabel}
          </button>
        )}
        {full ? <p className="field-hint">{formWords.rowsFull(max)}</p> : null}
      </div>
    </fieldset>
  )
}
