import type { Notebook } from '../../core/agreement/notebook.ts'
import { whereNamed } from '../../core/boundary/opensToward.ts'
import { households } from '../../core/people/household.ts'
import { householdName } from '../labels.ts'

/** What was typed, with "household a" or a bare house number said as everywhere else: by the household's name. */
export function householdsNamed(notebook: Pick<Notebook, 'households'>, typed: string): string {
  return households.reduce((text, household) => {
    const place = whereNamed(notebook, household, text)
    return place === undefined
      ? text
      : `${text.slice(0, place.from)}${householdName(notebook, household)}${text.slice(place.to)}`
  }, typed)
}
