import { randomBytes } from 'node:crypto'
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import type { MediaType } from '../core/agreement/attachedFile.ts'
import type { FileDamage } from '../core/agreement/fileRefusal.ts'
import { oneAtATime } from './oneAtATime.ts'
import { smallPhoto } from './photo.ts'
import { readBytes } from './storedBytes.ts'

/**
 * The small WebP picture of a photo that is kept, made at its first asking and then taken from the disk. It is a mere
 * copy, made again where it is lost, so it may fail to be written without anybody's being told.
 */
export async function smallPicture(
  folder: string,
  photo: { readonly sha256: string; readonly mediaType: MediaType },
): Promise<{ readonly bytes: Uint8Array } | { readonly damage: FileDamage }> {
  const { sha256, mediaType } = photo
  if (mediaType === 'application/pdf' || !/^[0-9a-f]{64}$/.test(sha256)) return { damage: 'missing' }
  const home = `${folder}/small/${sha256.slice(0, 2)}`
  const path = `${home}/${sha256}.webp`
  const made = await readFile(/* turbopackIgnore: true */ path).catch(() => undefined)
  if (made !== undefined) return { bytes: made }
  return oneAtATime(async () => {
    const whole = await readBytes(folder, sha256)
    if ('damage' in whole) return whole
    const small = await smallPhoto(whole.bytes, mediaType)
    if ('refused' in small) return { damage: 'unreadable' }
    await keepSmall(folder, home, path, small.bytes)
    return small
  })
}

async function keepSmall(folder: string, home: string, path: string, bytes: Uint8Array): Promise<void> {
  // Among what is arriving, so that a draft left behind is swept with the others; its ending tells it from a file's.
  const draft = `${folder}/arriving/${randomBytes(12).toString('hex')}.webp`
  try {
    await mkdir(/* turbopackIgnore: true */ `${folder}/arriving`, { recursive: true, mode: 0o700 })
    await mkdir(/* turbopackIgnore: true */ home, { recursive: true, mode: 0o700 })
    await writeFile(/* turbopackIgnore: true */ draft, bytes, { mode: 0o600, flag: 'wx' })
    await rename(/* turbopackIgnore: true */ draft, path)
  } catch {
    await rm(/* turbopackIgnore: true */ draft, { force: true }).catch(() => undefined)
  }
}
