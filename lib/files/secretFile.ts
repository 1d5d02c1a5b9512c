import { randomBytes } from 'node:crypto'
import {
  closeSync,
  fchmodSync,
  fstatSync,
  fsyncSync,
  linkSync,
  openSync,
  readFileSync,
  renameSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs'

export type SecretRead =
  | { readonly kind: 'read'; readonly text: string }
  | { readonly kind: 'missing' }
  | { readonly kind: 'unreadable'; readonly detail: string }
  /** `mode` is octal, such as "644". */
  | { readonly kind: 'open-to-others'; readonly mode: string }

/** A file of ours is a few kilobytes; whatever is larger is something else. */
const largest = 100_000

/**
 * Reads a small file that nobody but its owner may read; `open` is for one that others may read too. Windows has no such
 * modes, so they are not asked for there.
 */
export function readSecretFile(path: string, { open = false }: { readonly open?: boolean } = {}): SecretRead {
  let handle: number
  try {
    handle = openSync(/* turbopackIgnore: true */ path, 'r')
  } catch (error) {
    return codeOf(error) === 'ENOENT' ? { kind: 'missing' } : { kind: 'unreadable', detail: detailOf(error) }
  }
  try {
    const stat = fstatSync(handle)
    if (!stat.isFile()) return { kind: 'unreadable', detail: 'it is not a file' }
    if (stat.size > largest) return { kind: 'unreadable', detail: `it has ${stat.size} bytes` }
    if (!open && process.platform !== 'win32' && (stat.mode & 0o077) !== 0)
      return { kind: 'open-to-others', mode: (stat.mode & 0o777).toString(8) }
    return { kind: 'read', text: readFileSync(handle, 'utf8') }
  } catch (error) {
    return { kind: 'unreadable', detail: detailOf(error) }
  } finally {
    closeSync(handle)
  }
}

export type SecretKept =
  | { readonly kind: 'kept' }
  /** Another process was first: what it wrote stands. */
  | { readonly kind: 'taken' }
  | { readonly kind: 'failed'; readonly detail: string }

/**
 * Writes a file that did not exist, mode 0600, whole or not at all: the text goes to a file beside it and to the disk,
 * and a hard link then gives it its name, which of two processes exactly one can do.
 */
export function keepSecretFile(path: string, text: string): SecretKept {
  const draft = `${path}.${randomBytes(9).toString('hex')}.new`
  try {
    writeToDisk(draft, text)
    linkSync(/* turbopackIgnore: true */ draft, path)
    syncFolderOf(path)
    return { kind: 'kept' }
  } catch (error) {
    return codeOf(error) === 'EEXIST' ? { kind: 'taken' } : { kind: 'failed', detail: detailOf(error) }
  } finally {
    removeIfThere(draft)
  }
}

/** Puts a whole file, mode 0600, in the place of one that may be there: a reader finds the old text or the new one. */
export function replaceSecretFile(path: string, text: string): SecretKept {
  const draft = `${path}.${randomBytes(9).toString('hex')}.new`
  try {
    writeToDisk(draft, text)
    renameSync(/* turbopackIgnore: true */ draft, path)
    syncFolderOf(path)
    return { kind: 'kept' }
  } catch (error) {
    return { kind: 'failed', detail: detailOf(error) }
  } finally {
    removeIfThere(draft)
  }
}

function writeToDisk(path: string, text: string): void {
  const handle = openSync(/* turbopackIgnore: true */ path, 'wx', 0o600)
  try {
    // Whatever the umask is.
    fchmodSync(handle, 0o600)
    writeFileSync(handle, text)
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

/** A new name is on the disk only once its folder is. */
function syncFolderOf(path: string): void {
  if (process.platform === 'win32') return
  const handle = openSync(/* turbopackIgnore: true */ path.replace(/\/[^/]*$/, '') || '/', 'r')
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

function removeIfThere(path: string): void {
  try {
    unlinkSync(/* turbopackIgnore: true */ path)
  } catch {
    // Gone already, or left behind as a file of mode 0600 that nothing reads: the outcome is told either way.
  }
}

function codeOf(error: unknown): string | undefined {
  return (error as NodeJS.ErrnoException).code
}

function detailOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}
