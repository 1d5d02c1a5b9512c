import { isObject, type NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { type HouseholdNames, householdNames } from '../../../lib/words/labels.ts'
import { typedText } from './typedText.ts'

/** What each household is called in a notebook as it is stored. */
export function namesIn({ households }: NotebookDocument): HouseholdNames {
  const entry = (which: 'a' | 'b') => {
    const one = isObject(households) ? households[which] : undefined
    return { name: isObject(one) ? typedText(one.name) : '' }
  }
  return householdNames({ households: { a: entry('a'), b: entry('b') } })
}
