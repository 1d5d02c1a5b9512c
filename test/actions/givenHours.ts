import { editDocument } from '../../app/notebook/server/savePart.ts'

/** Puts arrangements into a notebook, or takes them out, whatever stood there. Both marks come off them. */
export async function putArrangements(notebookId: string, arrangements: object | undefined): Promise<void> {
  await putInDocument(notebookId, (document) => {
    const { arrangements: _was, ...rest } = document
    return arrangements === undefined ? rest : { ...rest, arrangements }
  })
}

/** Changes the document as household a would. */
export async function putInDocument(
  notebookId: string,
  change: (document: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>,
): Promise<void> {
  const answer = await editDocument(notebookId, 'a', (document) => ({ next: change(document) }))
  if (!('saved' in answer)) throw new Error(`not put in: ${JSON.stringify(answer)}`)
}
