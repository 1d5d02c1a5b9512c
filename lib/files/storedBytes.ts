import { createHash, randomBytes } from 'node:crypto'
import { type FileHandle, mkdir, open, readdir, readFile, rename, rm, stat, statfs } from 'node:fs/promises'
import type { FileDamage } from '../core/agreement/fileRefusal.ts'

/** Where files are kept: `<first two digits>/<SHA-256>` for what is whole, `arriving` for what is being written. */
const arriving = 'arriving'

/** What stays free for the database and all else, in bytes. */
const kept = 64_000_000

export type BytesKept =
  | { readonly kind: 'kept'; readonly sha256: string }
  | { readonly kind: 'disk-full' }
  | { readonly kind: 'not-written'; readonly detail: string }

/** How bytes get onto the disk; a test puts a disk that fails in its place. */
export type Disk = {
  readonly write: (file: FileHandle, bytes: Uint8Array) => Promise<void>
  /** Bytes that this program may still write in a folder. */
  readonly free: (folder: string) => Promise<number>
}

export const theDisk: Disk = {
  write: (file, bytes) => file.writeFile(bytes),
  free: async (folder) => {
    const { bavail, bsize } = await statfs(folder)
    return bavail * bsize
  },
}

/**
 * Keeps bytes under their SHA-256, whole or not at all: they are written to a file of their own and to the disk, and only
 * then given their name. When it answers `kept`, they are on disk and stay there through a power cut. What was kept
 * before is not written again, unless it was altered meanwhile.
 *
 * @param folder of all files of the install; it is made where it is missing
 */
export async function keepBytes(folder: string, bytes: Uint8Array, disk = theDisk): Promise<BytesKept> {
  const sha256 = hashOf(bytes)
  const draft = `${folder}/${arriving}/${randomBytes(12).toString('hex')}`
  try {
    const made = await mkdir(/* turbopackIgnore: true */ `${folder}/${arriving}`, {
      recursive: true,
      mode: 0o700,
    })
    if (made !== undefined) await syncFolder(`${folder}/..`)
    if ('bytes' in (await readBytes(folder, sha256))) return { kind: 'kept', sha256 }
    if ((await disk.free(folder)) < bytes.length + kept) return { kind: 'disk-full' }
    const file = await open(/* turbopackIgnore: true */ draft, 'wx', 0o600)
    try {
      await disk.write(file, bytes)
      await file.sync()
    } finally {
      await file.close()
    }
    await nameFor(folder, draft, sha256)
    return { kind: 'kept', sha256 }
  } catch (error) {
    await rm(/* turbopackIgnore: true */ draft, { force: true }).catch(() => undefined)
    const code = codeOf(error)
    if (code === 'ENOSPC' || code === 'EDQUOT') return { kind: 'disk-full' }
    return { kind: 'not-written', detail: error instanceof Error ? error.message : String(error) }
  }
}

/** A new name, and a new folder, are on the disk only once the folders that they stand in are. */
async function nameFor(folder: string, draft: string, sha256: string): Promise<void> {
  const home = `${folder}/${sha256.slice(0, 2)}`
  const isNew =
    (await mkdir(/* turbopackIgnore: true */ home, { recursive: true, mode: 0o700 })) !== undefined
  await rename(/* turbopackIgnore: true */ draft, pathOf(folder, sha256))
  await syncFolder(home)
  if (isNew) await syncFolder(folder)
}

export type BytesRead = { readonly bytes: Uint8Array } | { readonly damage: FileDamage }

/** The bytes that were kept under a hash. They are hashed again: an altered file on disk is never given out for the kept one. */
export async function readBytes(folder: string, sha256: string): Promise<BytesRead> {
  if (!/^[0-9a-f]{64}$/.test(sha256)) return { damage: 'missing' }
  try {
    const bytes = await readFile(/* turbopackIgnore: true */ pathOf(folder, sha256))
    return hashOf(bytes) === sha256 ? { bytes } : { damage: 'altered' }
  } catch (error) {
    return { damage: codeOf(error) === 'ENOENT' ? 'missing' : 'unreadable' }
  }
}

/** How many bytes lie under a hash, without reading them; undefined where there are none. */
export async function sizeOnDisk(folder: string, sha256: string): Promise<number | undefined> {
  const about = await stat(/* turbopackIgnore: true */ pathOf(folder, sha256)).catch(() => undefined)
  return about?.isFile() ? about.size : undefined
}

/** Removes what a process that was killed in the middle has left: drafts from before a moment. Says how many. */
export async function sweepDrafts(folder: string, before: Date): Promise<number> {
  let swept = 0
  const names = await readdir(/* turbopackIgnore: true */ `${folder}/${arriving}`).catch(() => [])
  for (const name of names) {
    const path = `${folder}/${arriving}/${name}`
    const about = await stat(/* turbopackIgnore: true */ path).catch(() => undefined)
    if (about === undefined || !about.isFile() || about.mtime >= before) continue
    await rm(/* turbopackIgnore: true */ path, { force: true }).catch(() => undefined)
    swept += 1
  }
  return swept
}

function pathOf(folder: string, sha256: string): string {
  return `${folder}/${sha256.slice(0, 2)}/${sha256}`
}

async function syncFolder(path: string): Promise<void> {
  // Windows can't open a folder.
  if (process.platform === 'win32') return
  const folder = await open(/* turbopackIgnore: true */ path, 'r')
  try {
    await folder.sync()
  } finally {
    await folder.close()
  }
}

function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex')
}

function codeOf(error: unknown): string | undefined {
  return (error as NodeJS.ErrnoException).code
}
