import { notFound } from 'next/navigation'
import { plannedStatement } from '../../../lib/core/shares/statement.ts'
import { notebookWithoutCosts } from '../../../lib/words/summary/withoutCosts.ts'
import { frozenAccounts } from '../../notebook/server/account/frozenAccounts.ts'
import { type SheetName, sheetOf } from '../../notebook/server/sheetOf.ts'
import { paperDate, revisionSummary } from '../../notebook/server/summaryOf.ts'
import { fileForReader } from './forReader.ts'
import { openForReader } from './opening.ts'

const things = {
  permit: 'permit-sheet.pdf',
  buyer: 'buyer-sheet.pdf',
  records: 'land-records.pdf',
} as const satisfies Record<SheetName, string>

/** A sheet of the revision that stands. Those that need no costs are made from a notebook that has none. */
export async function sheetForReader(token: string, name: SheetName): Promise<Response> {
  const opening = await openForReader(token, things[name])
  const signed = opening.signed ?? notFound()
  const whole = revisionSummary(signed, opening.revisions)
  const plain = notebookWithoutCosts(signed.notebook)
  const summary = name === 'buyer' ? whole : { ...whole, notebook: plain, statement: plannedStatement(plain) }
  const pdf = await sheetOf(name, summary, await frozenAccounts(opening.link.notebookId), paperDate(signed))
  return fileForReader(opening, pdf, `-revision-${signed.revision.number}-${name}.pdf`, 'application/pdf')
}
