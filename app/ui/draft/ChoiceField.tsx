'use client'

import type { ReactNode } from 'react'
import { describedBy, FieldFrame, FieldNotes } from './FieldFrame.tsx'
import { type FieldHold, useField } from './useField.ts'

export type Choice = { value: string; label: string; hint?: string | undefined }

type ChoiceWords = {
  path: string
  label: ReactNode
  hint?: ReactNode
  options: readonly Choice[]
  /** Names the choice of '' (not said yet); without it '' cannot be chosen. */
  optionalLabel?: string | undefined
  /** Radios whatever their number; otherwise only up to four. */
  asRadios?: boolean | undefined
  /** Told what was chosen, once it stands in the draft: to fill in what follows from it. */
  onChosen?: ((value: string) => void) | undefined
}

/** All that can be chosen, and a value that is in the draft but in no option, so that it is shown and not lost. */
function choicesOf({ options, optionalLabel }: ChoiceWords, text: string): readonly Choice[] {
  const optional = optionalLabel === undefined ? [] : [{ value: '', label: optionalLabel }]
  const known = [...optional, ...options]
  return text === '' || known.some((choice) => choice.value === text)
    ? known
    : [...known, { value: text, label: text }]
}

function Radios({ words, field }: { words: ChoiceWords; field: FieldHold }) {
  const { id, text, put, errors, findings, ready } = field
  return (
    <div
      className="field field-choice"
      role="radiogroup"
      aria-labelledby={`${id}-label`}
      aria-invalid={errors.length > 0 ? true : undefined}
      data-wrong={errors.length > 0 ? '' : undefined}
      data-found={findings.length > 0 ? '' : undefined}
      aria-describedby={describedBy(id, {
        hint: words.hint !== undefined,
        errors: errors.length > 0,
        findings: findings.length > 0,
      })}
    >
      <p className="field-label" id={`${id}-label`}>
        {words.label}
      </p>
      <FieldNotes id={id} hint={words.hint} errors={errors} findings={findings} />
      <div className="choices">
        {choicesOf(words, text).map((choice, at) => {
          const choiceId = at === 0 ? id : `${id}-choice-${at}`
          return (
            <div className="choice" key={choice.value}>
              <input
                id={choiceId}
                type="radio"
                name={id}
                value={choice.value}
                checked={text === choice.value}
                disabled={!ready}
                aria-describedby={choice.hint === undefined ? undefined : `${choiceId}-about`}
                onChange={() => put(choice.value)}
              />
              <label htmlFor={choiceId}>
                {choice.label}
                {choice.hint === undefined ? null : (
                  <span className="choice-hint" id={`${choiceId}-about`}>
                    {choice.hint}
                  </span>
                )}
              </label>
            </div>
          )
        })}
      </div>
    </div>
  )
}

function Selection({ words, field }: { words: ChoiceWords; field: FieldHold }) {
  const { id, text, put, errors, findings, ready } = field
  const choices = choicesOf(words, text)
  return (
    <FieldFrame id={id} label={words.label} hint={words.hint} errors={errors} findings={findings}>
      <select
        id={id}
        value={text}
        disabled={!ready}
        aria-invalid={errors.length > 0 ? true : undefined}
        aria-describedby={describedBy(id, {
          hint: words.hint !== undefined,
          errors: errors.length > 0,
          findings: findings.length > 0,
        })}
        onChange={(event) => put(event.target.value)}
      >
        {choices.some((choice) => choice.value === text) ? null : (
          <option value="" disabled>
            Choose one
          </option>
        )}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.hint === undefined ? choice.label : `${choice.label}: ${choice.hint}`}
          </option>
        ))}
      </select>
    </FieldFrame>
  )
}

/** One of several values: radios up to four of them, a list to open beyond that. */
export function ChoiceField(words: ChoiceWords) {
  const plain = useField(words.path)
  const field = {
    ...plain,
    put: (value: unknown) => {
      plain.put(value)
      words.onChosen?.(String(value))
    },
  }
  const count = words.options.length
  return words.asRadios === true || count <= 4 ? (
    <Radios words={words} field={field} />
  ) : (
    <Selection words={words} field={field} />
  )
}
