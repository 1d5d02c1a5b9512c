import { Readable } from 'node:stream'
import { ZipFile } from 'yazl'

/** One file of a pack. */
export type PackEntry = {
  /** Where it stands in the pack, such as `files/before/01-old-fence.jpg`. */
  readonly name: string
  /** What its date says in the pack. */
  readonly at: Date
  /** Its bytes, asked for only when it is its turn, so that one file at a time is held. */
  readonly bytes: () => Promise<Uint8Array>
  /** Photos and PDFs are packed tight already. */
  readonly packedAlready?: boolean
}

const allowedName = /^[a-z0-9][a-z0-9.-]*(\/[a-z0-9][a-z0-9.-]*)*$/

/**
 * A zip of these files in this order, as it is being made. An entry whose bytes can't be had ends it with an error, so
 * that a pack cut short can't be taken for a whole one.
 *
 * @throws Error where a name is no plain path within the pack, or stands twice
 */
export function recordPack(entries: readonly PackEntry[]): ReadableStream<Uint8Array> {
  const names = entries.map(({ name }) => name)
  const odd = names.find((name, index) => !allowedName.test(name) || names.indexOf(name) !== index)
  if (odd !== undefined) throw new Error(`No name for a file in a pack, or one that stands twice: ${odd}`)
  const zip = new ZipFile()
  // Made in yazl as a PassThrough; its types promise less.
  const output = zip.outputStream as Readable
  zip.on('error', (error) => output.destroy(error as Error))
  for (const { name, at, bytes, packedAlready } of entries) {
    const options = { mtime: at, mode: 0o100644, compress: packedAlready !== true }
    zip.addReadStreamLazy(name, options, (answer) => {
      bytes().then(
        (read) => answer(null, Readable.from([Buffer.from(read)])),
        (error: unknown) => output.destroy(error instanceof Error ? error : new Error(String(error))),
      )
    })
  }
  zip.end()
  return Readable.toWeb(output) as ReadableStream<Uint8Array>
}
