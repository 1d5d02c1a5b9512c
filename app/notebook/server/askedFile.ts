import { notFound } from 'next/navigation'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { findFile, type StoredFile } from '../../../lib/store/storedFiles.ts'

/** The file that an address asks for, for a household of its notebook; "not found" for everyone and everything else. */
export async function askedFile(asked: {
  readonly notebookId: string
  readonly fileId: string
}): Promise<StoredFile> {
  const { notebookId } = await requireHousehold(asked.notebookId)
  // As the database names its files: RFC 9562.
  if (!/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(asked.fileId)) notFound()
  return (await findFile(notebookId, asked.fileId)) ?? notFound()
}
