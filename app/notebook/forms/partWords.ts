import type { PrincipleName } from '../../../lib/core/agreement/notebook.ts'
import { principleMeaning, principleNamesFor, principleWords } from '../../../lib/words/labels.ts'
import type { Choice } from '../../ui/draft/ChoiceField.tsx'

/** What every form of a notebook needs to know about the two households and their money. */
export type FormNames = {
  readonly a: string
  readonly b: string
  readonly currency: string
  /** The rates an hour that both agreed on, as typed; empty where there is none. */
  readonly rates?: { readonly skilled: string; readonly plain: string }
}

export function householdChoices(names: FormNames): Choice[] {
  return [
    { value: 'a', label: names.a },
    { value: 'b', label: names.b },
  ]
}

/** Whose ground a height can be measured from. */
export function groundChoices(names: FormNames): Choice[] {
  return [
    ...householdChoices(names),
    { value: 'higher', label: 'whichever is higher' },
    { value: 'lower', label: 'whichever is lower' },
  ]
}

export function keeperChoices(names: FormNames): Choice[] {
  return [{ value: 'both', label: 'Both households' }, ...householdChoices(names)]
}

export function principleChoices(onGate: boolean, nested: boolean): Choice[] {
  return principleNamesFor(onGate, nested).map((principle: PrincipleName) => ({
    value: principle,
    label: principleWords[principle],
    hint: principleMeaning[principle],
  }))
}
