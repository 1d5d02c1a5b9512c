import type { FileDamage } from '../../../lib/core/agreement/fileRefusal.ts'
import { sizeOnDisk } from '../../../lib/files/storedBytes.ts'
import type { StoredFile } from '../../../lib/store/storedFiles.ts'
import { filesFolder } from './filesFolder.ts'

/**
 * What is wrong on disk with any of these files, by their ids, as far as a list can tell: gone, or of another size. Their
 * bytes are hashed when they are asked for.
 */
export async function damagesOf(files: readonly StoredFile[]): Promise<ReadonlyMap<string, FileDamage>> {
  const folder = await filesFolder()
  const found = new Map<string, FileDamage>()
  for (const file of files) {
    const size = await sizeOnDisk(folder, file.sha256)
    if (size === undefined) found.set(file.id, 'missing')
    else if (size !== file.size) found.set(file.id, 'altered')
  }
  return found
}
