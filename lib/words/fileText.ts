import type { FileKind, MediaType } from '../core/agreement/attachedFile.ts'
import type { FileDamage, FileRefusal, OtherFormat } from '../core/agreement/fileRefusal.ts'

/** What a file shows, to choose from. */
export const fileKindWords: Readonly<Record<FileKind, string>> = {
  before: 'Photo before the work',
  after: 'Photo after the work',
  survey: 'Survey or plan',
  permit: 'Permit letter',
  receipt: 'Receipt or bill',
  other: 'Something else',
}

/** The heading over all files of a kind. */
export const fileKindHeadings: Readonly<Record<FileKind, string>> = {
  before: 'Before the work',
  after: 'After the work',
  survey: 'Survey and plans',
  permit: 'Permit letters',
  receipt: 'Receipts and bills',
  other: 'Other files',
}

export const mediaTypeWords: Readonly<Record<MediaType, string>> = {
  'image/jpeg': 'JPEG photo',
  'image/png': 'PNG picture',
  'image/webp': 'WebP picture',
  'application/pdf': 'PDF',
}

export const takenFormats = 'JPEG, PNG, WebP or PDF'

/** A size in bytes for a reader, in steps of a thousand as shops and phones count. */
export function sizeWords(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`
  if (bytes < 999_500) return `${Math.round(bytes / 1000)} kB`
  const tenths = Math.round(bytes / 100_000)
  return `${tenths % 10 === 0 || tenths > 100 ? Math.round(tenths / 10) : tenths / 10} MB`
}

/** Why a file was not kept and what to do about it, with its name in front. */
export function fileRefusalText(name: string, refusal: FileRefusal): string {
  return `“${name}” was not added. ${refusalText(refusal)}`
}

function refusalText(refusal: FileRefusal): string {
  switch (refusal.kind) {
    case 'empty':
      return 'There is nothing in it. Choose the file again.'
    case 'too-large':
      return `${refusal.bytes === undefined ? 'It' : `It has ${sizeWords(refusal.bytes)}. A file`} can have ${sizeWords(refusal.limit)} at most. Save a smaller copy of it, or scan it at a lower setting.`
    case 'not-taken':
      return otherFormatText(refusal.format)
    case 'broken':
      return brokenText(refusal.mediaType)
    case 'too-many-pixels':
      return `The picture has more than ${Math.round(refusal.limit / 1_000_000)} million pixels. Save a smaller copy of it.`
    case 'moving-picture':
      return 'It is a moving picture. Choose a still photo.'
    case 'took-too-long':
      return 'It took too long to read. Save a smaller copy of it, and add that.'
    case 'there-already':
      return 'The same file is here already, with the same kind and item.'
    case 'too-many-files':
      return `A notebook can show ${refusal.limit} files at most. Take one away first.`
    case 'notebook-full':
      return `The files of this notebook may take up ${sizeWords(refusal.limit)} in all, those taken away too. This one no longer fits.`
    case 'disk-full':
      return 'The disk of the install is full. Nothing was lost. Ask whoever runs the install to make room, then add the file again.'
    case 'not-written':
      return 'The install could not write it to its disk. Nothing was lost. Ask whoever runs the install to look at the data folder.'
    case 'broke-off':
      return 'The connection broke off before all of it was here. Add it again.'
    case 'stopped':
      return 'It was stopped on the way. Nothing of it was kept.'
    case 'no-such-kind':
      return fileSentRefusals.noKind
    case 'no-such-item':
      return 'The item that it should belong to is not in the notebook any more. Choose another.'
    case 'caption-too-long':
      return `The caption can have ${refusal.limit} characters at most. Make it shorter.`
    case 'unreadable-form':
      return 'What came with it could not be read. Load the page again, then add it once more.'
  }
}

function otherFormatText(format: OtherFormat): string {
  switch (format) {
    case 'heic':
      return 'It is a HEIC photo, which many devices can’t show. On the phone, set the camera to “most compatible”, or share the photo as a JPEG. Then add that.'
    case 'avif':
      return 'It is an AVIF picture, which many devices can’t show. Save it as a JPEG or PNG. Then add that.'
    case 'gif':
      return 'It is a GIF picture. Save it as a PNG. Then add that.'
    case 'svg':
      return 'It is an SVG drawing, which can carry a program. Print it to a PDF, or save it as a PNG. Then add that.'
    case 'tiff':
      return 'It is a TIFF picture. Save it as a JPEG, or scan the paper as a PDF. Then add that.'
    case 'bmp':
      return 'It is a BMP picture. Save it as a PNG. Then add that.'
    case 'zip':
      return 'It is a zip or an office file. Print it to a PDF, or take out the photos that are in it. Then add those.'
    case 'text':
      return 'It is a text file. Print it to a PDF. Then add that.'
    case 'unknown':
      return `It is not a ${takenFormats}, whatever its name says. Save it as one of these. Then add that.`
  }
}

function brokenText(mediaType: MediaType): string {
  return mediaType === 'application/pdf'
    ? 'It begins as a PDF but is not one to its end: a part is missing, or something else hangs on it. Open it and print it to a new PDF. Then add that.'
    : `It begins as a ${mediaTypeWords[mediaType]} but can’t be read to its end. Open it, save a new copy as a JPEG, and add that.`
}

/** What is wrong with a file that was kept, for whoever wanted to see it. */
export function fileDamageText(damage: FileDamage): string {
  switch (damage) {
    case 'missing':
      return 'This file is on record, but it is gone from the data folder. Whoever runs the install can bring it back from a copy.'
    case 'altered':
      return 'This file was changed on the disk after it was added, so it is not shown. Whoever runs the install can bring the right one back from a copy.'
    case 'unreadable':
      return 'This file is in the data folder, but it can’t be read. Whoever runs the install can look at the disk.'
  }
}

/** Putting back what was taken away. */
export const fileBackWords = { putBack: 'Put it back' } as const

/** Why a file is not put back. */
export const fileBackRefusals = {
  notYours: 'Nothing was changed: only the household that took a file away can put it back.',
  thereAlready: 'Nothing was changed: the same file is here already.',
} as const

/** Why no file is added, where it is not the file's own fault. */
export const fileSentRefusals = {
  none: 'Choose a file first.',
  noKind: 'Choose what it shows.',
  shutOut: 'You are not let in to this notebook in this browser any more. Come in by your link again.',
} as const

/** Why a file is not taken away. */
export const fileAwayRefusals = {
  gone: 'This file is not there any more. Load the page again to see what is.',
  notYours: 'Only the household that added a file can take it away.',
} as const
