import { sweepDrafts } from '../../../lib/files/storedBytes.ts'
import { dataFolder } from '../../../lib/store/dataFolder.ts'

// On globalThis, because a server built by Next holds this file several times over.
const shared = globalThis as { mearingSweptFolders?: Map<string, Promise<unknown>> }

/**
 * Where this install keeps its files. At the first use in a process it is rid of what an earlier process, killed in the
 * middle of writing, has left there.
 */
export async function filesFolder(): Promise<string> {
  const folder = `${dataFolder()}/files`
  shared.mearingSweptFolders ??= new Map()
  let swept = shared.mearingSweptFolders.get(folder)
  if (swept === undefined) {
    swept = sweepDrafts(folder, new Date(Date.now() - process.uptime() * 1000))
    shared.mearingSweptFolders.set(folder, swept)
  }
  await swept
  return folder
}
