import { addFile } from '../../app/notebook/server/storedFileAdding.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { filesOf, recordFile, type StoredFile } from '../../lib/store/storedFiles.ts'
import { madeJpeg } from '../files/madePictures.ts'
import { formOf } from './givenForms.ts'

let photo: Promise<Uint8Array<ArrayBuffer>> | undefined

/** A small JPEG, made once. */
export function aPhoto(): Promise<Uint8Array<ArrayBuffer>> {
  photo ??= madeJpeg()
  return photo
}

/** The form that adds a photo, as it is sent without script. */
export async function photoForm(): Promise<FormData> {
  const file = new File([await aPhoto()], 'gate post.jpg', { type: 'image/jpeg' })
  return formOf({ file, kind: 'before', caption: 'The gate, from the lane', item: 's1' })
}

/** Adds a photo for household a, on disk and on record; gives its id. */
export async function anAddedPhoto(notebookId: string): Promise<string> {
  const about = { name: 'gate post.jpg', kind: 'before', caption: '', item: '' }
  await addFile({ notebookId, household: 'a' }, about, await aPhoto())
  return (await newestFile(notebookId)).id
}

export async function newestFile(notebookId: string): Promise<StoredFile> {
  const file = (await filesOf(notebookId)).at(-1)
  if (file === undefined) throw new Error('There is no file.')
  return file
}

/** Puts a file on record whose bytes are nowhere: taking it away needs none. */
export async function aFileOnRecord(notebookId: string, household: Household): Promise<void> {
  await recordFile({
    notebookId,
    household,
    sha256: sha256Hex(household),
    name: `of ${household}.jpg`,
    mediaType: 'image/jpeg',
    size: 1,
    kind: 'other',
    caption: '',
    at: new Date('2027-03-02T18:00:00Z'),
  })
}

/** The form that takes away a file that a household added. */
export async function takeAwayForm(notebookId: string, household: Household): Promise<FormData> {
  const file = (await filesOf(notebookId)).find((one) => one.household === household)
  return formOf({ id: file?.id ?? '' })
}

/** The form that puts back the file that a household took away. */
export async function putFileBackForm(notebookId: string, household: Household): Promise<FormData> {
  const file = (await filesOf(notebookId, true)).find((one) => one.removedBy === household)
  return formOf({ id: file?.id ?? '' })
}

type Upload = {
  readonly about?: Readonly<Record<string, unknown>>
  readonly headers?: Readonly<Record<string, string | undefined>>
}

/** The address that a request in these tests is sent to, and the origin of its pages. */
export const ownHost = 'mearing.example:3000'

/** A file as the page sends it: the bytes as the body, what is about it in a header. */
export function uploadRequest(notebookId: string, body: BodyInit, { about, headers }: Upload = {}): Request {
  const told = { name: 'gate post.jpg', kind: 'before', caption: '', item: '', ...about }
  const all = {
    host: ownHost,
    origin: `http://${ownHost}`,
    'x-mearing-file': encodeURIComponent(JSON.stringify(told)),
    ...headers,
  }
  const given = Object.entries(all).filter((header): header is [string, string] => header[1] !== undefined)
  return new Request(`http://${ownHost}/notebook/${encodeURIComponent(notebookId)}/files/upload`, {
    method: 'POST',
    body,
    headers: given,
    duplex: 'half',
  } as RequestInit)
}
