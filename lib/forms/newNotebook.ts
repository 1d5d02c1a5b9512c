import { openStartingChecks } from '../words/startingChecks.ts'
import { startingTerms } from '../words/startingTerms.ts'
import { inFormatOrder } from './parts.ts'
import type { NotebookDocument } from './readNotebook.ts'
import { tidyDraft } from './tidyDraft.ts'

/** A new notebook from its heading (title, currency, units, households), with the starting terms and checks. */
export function newNotebook(heading: Record<string, unknown>): NotebookDocument {
  const { title, currency, units, households } = tidyDraft(heading, { households: {} }) as Record<
    string,
    unknown
  >
  const kept = households !== null && typeof households === 'object' ? households : {}
  const given = Object.fromEntries(
    Object.entries({ title, currency, units }).filter(([, value]) => value !== undefined),
  )
  return inFormatOrder({
    format: 'mearing-notebook',
    version: 1,
    ...given,
    households: { a: {}, b: {}, ...kept },
    line: { stations: [] },
    terms: startingTerms(),
    checks: openStartingChecks(),
  })
}
