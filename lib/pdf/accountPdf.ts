import type { Units } from '../core/agreement/notebook.ts'
import type { FinalAccount } from '../core/ledger/finalAccount.ts'
import { accountBlocks, accountSignatureBlocks, type ShownSignature } from '../words/account/accountBlocks.ts'
import { accountPaperWords } from '../words/account/accountPaperWords.ts'
import type { PrintFonts } from './pdfInput.ts'
import { sheetPdf } from './sheetPdf.ts'

export type AccountPaper = {
  readonly account: FinalAccount
  readonly number: number
  readonly sha256: string
  readonly frozenAt: Date
  readonly signatures: readonly ShownSignature[]
  readonly signedByAll: boolean
  readonly units: Units
  readonly fonts: PrintFonts
  readonly madeAt?: Date
}

/** A final account on paper: on one page where it fits. Same input, same bytes. */
export function accountPdf(paper: AccountPaper): Promise<Uint8Array> {
  const { account, number, sha256, frozenAt, signatures, signedByAll, units, fonts, madeAt } = paper
  const words = accountPaperWords(number, frozenAt, signedByAll)
  const title = account.title.trim() || words.title
  return sheetPdf({
    title,
    units,
    content: [
      { kind: 'title', text: words.title, standing: `${title}. ${words.since}` },
      ...accountBlocks(account),
      { kind: 'heading', level: 1, id: 'signatures', text: 'Signatures' },
      { kind: 'paragraph', text: words.signing },
      ...accountSignatureBlocks(account, sha256, signatures),
    ],
    standing: { kind: signedByAll ? 'signed' : 'up for signing', number, sha256, frozenAt },
    furniture: words,
    fonts,
    ...(madeAt === undefined ? {} : { madeAt }),
  })
}
