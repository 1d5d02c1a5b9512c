import { askedAccount } from '../../server/account/askedAccount.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'

/** The very text of a final account that was signed, whose hash its paper prints: `?number=2`, the newest without. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const { stored } = askedAccount(opened, request)
  return download(
    stored.canonicalText,
    fileName(opened.notebook.title, `-final-account-${stored.number}.json`),
    'application/json',
  )
}
