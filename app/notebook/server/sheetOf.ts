import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { printFonts } from '../../../lib/files/printFonts.ts'
import { sheetPdf } from '../../../lib/pdf/sheetPdf.ts'
import { notebookTitle } from '../../../lib/words/labels.ts'
import { buyerSheet } from '../../../lib/words/sheets/buyerSheet.ts'
import { landRecordsPage } from '../../../lib/words/sheets/landRecordsPage.ts'
import { permitSheet } from '../../../lib/words/sheets/permitSheet.ts'
import type { SummaryInput } from '../../../lib/words/summary/summaryInput.ts'

/** The sheets of one page each that are made from a revision, by the word that an address asks for them by. */
export const sheets = { permit: permitSheet, buyer: buyerSheet, records: landRecordsPage } as const
export type SheetName = keyof typeof sheets

export function isSheetName(asked: string): asked is SheetName {
  return Object.hasOwn(sheets, asked)
}

/** @param summary of a revision */
export function sheetOf(name: SheetName, summary: SummaryInput, madeAt: Date): Promise<Uint8Array> {
  const { notebook, standing } = summary
  return sheetPdf({
    title: notebookTitle(notebook),
    units: notebook.units,
    content: sheets[name](summary, takeOff(notebook)),
    standing,
    madeAt,
    fonts: printFonts(),
  })
}
