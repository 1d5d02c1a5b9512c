import type { PlacedDictionary } from './everyDictionary.ts'
import { lookUp, type PdfFile } from './pdfFile.ts'
import { streamBytes, type UnpackedLeft } from './pdfStream.ts'
import { charactersOf, ofKind, type PdfDictionary } from './pdfValue.ts'
import { readLimits } from './readLimits.ts'

export type AttachedFile =
  | { readonly kind: 'one'; readonly bytes: Uint8Array }
  | { readonly kind: 'none' }
  | { readonly kind: 'several'; readonly count: number }
  | { readonly kind: 'damaged' }

/**
 * The one file of this name that the document carries, wherever its dictionary lies (ISO 32000-1, 7.11.4): two of a name
 * are told, since two readers may show two different ones.
 */
export function attachedFile(
  file: PdfFile,
  dictionaries: readonly PlacedDictionary[],
  name: string,
  left: UnpackedLeft,
): AttachedFile {
  const specifications = dictionaries.filter(
    ({ dictionary }) =>
      dictionary.entries.has('EF') && namesOf(file, dictionary).some((one) => one.toLowerCase() === name),
  )
  const [only, ...others] = specifications
  if (only === undefined) return { kind: 'none' }
  if (others.length > 0) return { kind: 'several', count: specifications.length }
  const embedded = ofKind(lookUp(file, only.dictionary.entries.get('EF')), 'dictionary')
  const streams = [...(embedded?.entries.values() ?? [])].map((value) => ofKind(value, 'reference')?.number)
  const [number] = streams
  if (number === undefined || streams.some((other) => other !== number)) return { kind: 'damaged' }
  const bytes = streamBytes(file, file.objects.get(number), left, readLimits.attachment)
  return bytes === undefined ? { kind: 'damaged' } : { kind: 'one', bytes }
}

/** The names that a file specification gives, for each kind of system. */
function namesOf(file: PdfFile, dictionary: PdfDictionary): string[] {
  return ['F', 'UF', 'DOS', 'Mac', 'Unix'].flatMap((key) => {
    const text = ofKind(lookUp(file, dictionary.entries.get(key)), 'text')
    return text === undefined ? [] : [charactersOf(text)]
  })
}
