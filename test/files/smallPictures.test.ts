import { existsSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { smallPicture } from '../../lib/files/smallPictures.ts'
import { keepBytes } from '../../lib/files/storedBytes.ts'
import { madeJpeg, madePdf } from './madePictures.ts'

let folder = ''
beforeEach(() => {
  folder = join(mkdtempSync(join(tmpdir(), 'mearing-small-')), 'files')
})
afterEach(() => rmSync(join(folder, '..'), { recursive: true, force: true }))

async function kept(bytes: Uint8Array) {
  const written = await keepBytes(folder, bytes)
  if (written.kind !== 'kept') throw new Error(written.kind)
  const { sha256 } = written
  return {
    sha256,
    whole: join(folder, sha256.slice(0, 2), sha256),
    small: join(folder, 'small', sha256.slice(0, 2), `${sha256}.webp`),
  }
}

test('a small picture is made once, and again where it is lost', async () => {
  const { sha256, small } = await kept(await madeJpeg(900, 600))
  const photo = { sha256, mediaType: 'image/jpeg' } as const
  const [first] = await Promise.all([smallPicture(folder, photo), smallPicture(folder, photo)])
  if (!('bytes' in first)) throw new Error(first.damage)
  expect(await sharp(first.bytes).metadata()).toMatchObject({ format: 'webp', width: 480, height: 320 })
  const made = statSync(small).mtimeMs
  await smallPicture(folder, photo)
  expect(statSync(small).mtimeMs).toBe(made)
  rmSync(small)
  expect(await smallPicture(folder, photo)).toEqual({ bytes: Buffer.from(first.bytes) })
  expect(existsSync(small)).toBe(true)
})

test('no small picture is made of what was altered, is gone, is no picture or has no hash', async () => {
  const { sha256, whole } = await kept(await madeJpeg())
  const photo = { sha256, mediaType: 'image/jpeg' } as const
  writeFileSync(whole, await madeJpeg(10, 10))
  expect(await smallPicture(folder, photo)).toEqual({ damage: 'altered' })
  rmSync(whole)
  expect(await smallPicture(folder, photo)).toEqual({ damage: 'missing' })
  const paper = await kept(madePdf())
  const { sha256: ofPaper } = paper
  expect(await smallPicture(folder, { sha256: ofPaper, mediaType: 'application/pdf' })).toEqual({
    damage: 'missing',
  })
  expect(await smallPicture(folder, { ...photo, sha256: '../../x' })).toEqual({ damage: 'missing' })
})

test('where it can’t be written it is given out all the same', async () => {
  const { sha256 } = await kept(await madeJpeg())
  writeFileSync(join(folder, 'small'), 'a file where the folder should be')
  const made = await smallPicture(folder, { sha256, mediaType: 'image/jpeg' })
  if (!('bytes' in made)) throw new Error(made.damage)
  expect((await sharp(made.bytes).metadata()).format).toBe('webp')
})
