'use client'

import { useRef } from 'react'
import { ceilingHint, giftHint, rateHint } from '../../../lib/words/hoursText.ts'
import { type Choice, ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { setAt, textAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import type { FormNames } from './partWords.ts'

/** A task that hours can be entered for, as the form is given it. */
export type TaskChoice = {
  readonly item: string
  readonly task: string
  readonly rate: { readonly a: string; readonly b: string }
  readonly gift: { readonly a: boolean; readonly b: boolean }
  /** Hours; missing where the task has no ceiling. */
  readonly ceiling?: { readonly hours: string; readonly counted: string }
}

/** Hours worked: on which item, on which of its tasks, how many, at what rate, and whose those beyond a ceiling are. */
export function HoursFields({
  names,
  items,
  tasks,
}: {
  names: FormNames
  items: readonly Choice[]
  tasks: readonly TaskChoice[]
}) {
  const { draft, change } = useDraft()
  const here = tasks.filter((one) => one.item === textAt(draft, 'for'))
  const chosen = here.find((one) => one.task === textAt(draft, 'task'))
  const household = textAt(draft, 'household') === 'b' ? 'b' : 'a'
  const plain = names.rates?.plain ?? ''
  const rateOf = (item: string, task: string) =>
    tasks.find((one) => one.item === item && one.task === task)?.rate[household] ?? plain
  // A rate that was filled in follows what is chosen; one that somebody typed stays.
  const filledIn = useRef('')
  const fillIn = (item: string, task: string) => {
    const typed = textAt(draft, 'rate')
    if (typed !== '' && typed !== filledIn.current) return
    const rate = rateOf(item, task)
    filledIn.current = rate
    change((old) => setAt(old, 'rate', rate))
  }
  return (
    <>
      <ChoiceField
        path="for"
        label="For"
        optionalLabel="the whole fence"
        options={items}
        onChosen={(item) => {
          change((old) => setAt(old, 'task', ''))
          fillIn(item, '')
        }}
      />
      {here.length === 0 ? null : (
        <ChoiceField
          path="task"
          label="Task"
          optionalLabel="none of these"
          options={here.map(({ task }) => ({ value: task, label: task }))}
          onChosen={(task) => fillIn(textAt(draft, 'for'), task)}
        />
      )}
      <FieldLine>
        <FigureField path="hours" label="Hours" suffix="h" />
        <FigureField
          path="rate"
          label="Rate an hour"
          suffix={names.currency}
          hint={
            chosen?.gift[household]
              ? giftHint
              : rateHint(names.rates, names.currency, chosen && { rate: chosen.rate[household] })
          }
        />
      </FieldLine>
      {chosen?.ceiling === undefined || chosen.gift[household] ? null : (
        <TickField
          path="ownIsOurs"
          label="The hours beyond the ceiling are ours"
          hint={ceilingHint(chosen.ceiling)}
        />
      )}
    </>
  )
}
