import { accountPaper } from '../../server/account/accountPaper.ts'
import { askedAccount } from '../../server/account/askedAccount.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'

/** A final account as a paper, with its signatures: `?number=2`, the newest without. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const frozen = askedAccount(opened, request)
  const pdf = await accountPaper(frozen, opened.asAgreed.units)
  return download(
    pdf,
    fileName(opened.notebook.title, `-final-account-${frozen.stored.number}.pdf`),
    'application/pdf',
  )
}
