import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { printFonts } from '../../../lib/files/printFonts.ts'
import { sheetPdf } from '../../../lib/pdf/sheetPdf.ts'
import { notebookTitle } from '../../../lib/words/labels.ts'
import type { AccountOnSheet } from '../../../lib/words/sheets/buyerMoney.ts'
import { buyerSheet } from '../../../lib/words/sheets/buyerSheet.ts'
import { landRecordsPage } from '../../../lib/words/sheets/landRecordsPage.ts'
import { permitSheet } from '../../../lib/words/sheets/permitSheet.ts'
import type { SummaryInput } from '../../../lib/words/summary/summaryInput.ts'
import type { FrozenAccount } from './account/frozenAccounts.ts'

/** The sheets of one page each that are made from a revision, by the word that an address asks for them by. */
export const sheets = { permit: permitSheet, buyer: buyerSheet, records: landRecordsPage } as const
export type SheetName = keyof typeof sheets

export function isSheetName(asked: string): asked is SheetName {
  return Object.hasOwn(sheets, asked)
}

/**
 * @param summary of a revision
 * @param accounts every final account of its notebook, newest first
 */
export function sheetOf(
  name: SheetName,
  summary: SummaryInput,
  accounts: readonly FrozenAccount[],
  madeAt: Date,
): Promise<Uint8Array> {
  const { notebook, standing } = summary
  return sheetPdf({
    title: notebookTitle(notebook),
    units: notebook.units,
    content: sheets[name](summary, takeOff(notebook), accountOnSheet(accounts)),
    standing,
    madeAt,
    fonts: printFonts(),
  })
}

function accountOnSheet([newest]: readonly FrozenAccount[]): AccountOnSheet | undefined {
  if (newest === undefined) return undefined
  const { stored, signatures, stillToSign } = newest
  if (stillToSign.length > 0) return { number: stored.number }
  const last = Math.max(...signatures.map(({ signedAt }) => signedAt.getTime()))
  return { number: stored.number, signedOn: new Date(last) }
}
