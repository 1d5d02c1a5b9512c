import { z } from 'zod'
import type { Asker } from '../../../lib/access/whoAsks.ts'
import { agreedItems, itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { fileKinds, fileLimits } from '../../../lib/core/agreement/attachedFile.ts'
import type { FileRefusal } from '../../../lib/core/agreement/fileRefusal.ts'
import { shownName } from '../../../lib/files/fileNames.ts'
import { keepable } from '../../../lib/files/keepable.ts'
import { oneAtATime } from '../../../lib/files/oneAtATime.ts'
import { keepBytes } from '../../../lib/files/storedBytes.ts'
import { sha256Hex } from '../../../lib/store/sha256.ts'
import { filesOf, recordFile, type StoredFile } from '../../../lib/store/storedFiles.ts'
import { filesFolder } from './filesFolder.ts'
import { openNotebook } from './opened.ts'

/** What comes with a file: any of it may be anything. */
export type SentAbout = Readonly<Record<'name' | 'kind' | 'caption' | 'item', unknown>>
export type Added = { readonly name: string; readonly refused?: FileRefusal }

const stopped: FileRefusal = { kind: 'stopped' }

const aboutSchema = z.object({
  name: z.string(),
  kind: z.string(),
  caption: z.string().transform(oneLine),
  item: z.string(),
})

/**
 * Adds one file to a notebook, for the household that was let in: on disk first, then on record. Where it is refused,
 * nothing is on record. `stop` is heeded until the file is written; from then on it is added.
 */
export async function addFile(
  asker: Asker,
  about: SentAbout,
  bytes: Uint8Array,
  stop?: AbortSignal,
): Promise<Added> {
  const name = shownName(typeof about.name === 'string' ? about.name : '')
  const read = aboutSchema.safeParse(about)
  if (!read.success) return { name, refused: { kind: 'unreadable-form' } }
  const { caption, item } = read.data
  const kind = fileKinds.find((one) => one === read.data.kind)
  if (kind === undefined) return { name, refused: { kind: 'no-such-kind' } }
  if ([...caption].length > fileLimits.caption)
    return { name, refused: { kind: 'caption-too-long', limit: fileLimits.caption } }
  const key = item === '' ? undefined : itemKey(item)
  if (key !== undefined && !(await isItem(asker.notebookId, key)))
    return { name, refused: { kind: 'no-such-item' } }

  const refused = await oneAtATime(async (): Promise<FileRefusal | undefined> => {
    // It may have waited long for its turn.
    if (stop?.aborted) return stopped
    const there = await filesOf(asker.notebookId, true)
    const full = noRoom(there)
    if (full) return full
    const kept = await keepable(bytes)
    if ('refused' in kept) return kept.refused
    const tooMuch = noRoom(there, kept.bytes)
    if (tooMuch) return tooMuch
    if (stop?.aborted) return stopped
    const written = await keepBytes(await filesFolder(), kept.bytes)
    if (written.kind !== 'kept') return { kind: written.kind }
    const { sha256 } = written
    const same = (file: StoredFile) => file.sha256 === sha256 && file.kind === kind && file.itemKey === key
    if (there.some((file) => file.removedAt === undefined && same(file))) return { kind: 'there-already' }
    await recordFile({
      notebookId: asker.notebookId,
      household: asker.household,
      sha256,
      name,
      mediaType: kept.mediaType,
      size: kept.bytes.length,
      kind,
      caption,
      ...(key === undefined ? {} : { itemKey: key }),
      at: new Date(),
    })
    return undefined
  })
  return refused === undefined ? { name } : { name, refused }
}

/** Only sections, gates and common costs have files of their own. */
async function isItem(notebookId: string, key: string): Promise<boolean> {
  const { document } = await openNotebook(notebookId)
  return agreedItems(document).some((item) => item.key === key)
}

function noRoom(there: readonly StoredFile[], more?: Uint8Array): FileRefusal | undefined {
  if (there.filter((file) => file.removedAt === undefined).length >= fileLimits.files)
    return { kind: 'too-many-files', limit: fileLimits.files }
  // The same bytes lie on disk once.
  const sizes = new Map(there.map((file) => [file.sha256, file.size]))
  if (more) sizes.set(sha256Hex(more), more.length)
  const bytes = [...sizes.values()].reduce((sum, size) => sum + size, 0)
  return bytes > fileLimits.bytesInAll ? { kind: 'notebook-full', limit: fileLimits.bytesInAll } : undefined
}

/** One line of whole characters, without those that hide or turn the direction of reading. */
function oneLine(text: string): string {
  return text
    .toWellFormed()
    .normalize('NFC')
    .replace(/\s+/g, ' ')
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '')
    .trim()
}
