import { Readable } from 'node:stream'
import { ZipFile } from 'yazl'
import { assert } from '../core/assert.ts'

/** One file of a pack. */
export type PackEntry = {
  /** Where it stands in the pack, such as `files/before/01-old-fence.jpg`. */
  readonly name: string
  /** What its date says in the pack. */
  readonly at: Date
  /** How many bytes it has. */
  readonly size: number
  /** Its bytes, asked for only when it is its turn, so that one file at a time is held. */
  readonly bytes: () => Promise<Uint8Array>
}

/** A zip that is being made, and how many bytes it will have. */
export type Pack = { readonly stream: ReadableStream<Uint8Array>; readonly size: number }

const allowedName = /^[a-z0-9][a-z0-9.-]*(\/[a-z0-9][a-z0-9.-]*)*$/

/**
 * A zip of these files in this order, as it is being made. Nothing in it is squeezed (photos and PDFs are tight already), so
 * that its size is known before its first byte. An entry whose bytes can't be had, or are not as many as was said, ends it
 * with an error, so that a pack cut short can't be taken for a whole one. Whoever cancels the stream ends the reading of
 * what has not been its turn.
 *
 * @throws Error where a name is no plain path within the pack, or stands twice
 */
export function recordPack(entries: readonly PackEntry[]): Pack {
  const names = entries.map(({ name }) => name)
  const odd = names.find((name, index) => !allowedName.test(name) || names.indexOf(name) !== index)
  if (odd !== undefined) throw new Error(`No name for a file in a pack, or one that stands twice: ${odd}`)
  const zip = new ZipFile()
  // Made in yazl as a PassThrough; its types promise less.
  const output = zip.outputStream as Readable
  zip.on('error', (error) => output.destroy(error as Error))
  for (const { name, at, bytes, size } of entries) {
    const options = { mtime: at, mode: 0o100644, compress: false, size }
    zip.addReadStreamLazy(name, options, (answer) => {
      bytes().then(
        (read) => answer(null, Readable.from([Buffer.from(read)])),
        (error: unknown) => output.destroy(error instanceof Error ? error : new Error(String(error))),
      )
    })
  }
  let size: number | undefined
  // Called at once, since every size is known; its types do not say with what.
  const sized = (total?: number) => {
    size = total
  }
  zip.end({ forceZip64Format: false, comment: '' }, sized)
  assert(size !== undefined && size > 0, 'a zip whose every part has a size has one itself')
  return { stream: Readable.toWeb(output) as ReadableStream<Uint8Array>, size }
}
