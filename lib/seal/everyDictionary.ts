import type { PdfFile } from './pdfFile.ts'
import type { PdfDictionary, PdfValue } from './pdfValue.ts'

/** A dictionary, and the number of the object that it is or lies in. */
export type PlacedDictionary = { readonly dictionary: PdfDictionary; readonly object: number }

/** Every dictionary of a file, wherever it lies. References are not followed, so it comes to an end. */
export function everyDictionary(file: PdfFile): PlacedDictionary[] {
  const found: PlacedDictionary[] = []
  for (const [object, { value }] of file.objects) {
    const open: PdfValue[] = [value]
    for (let here = open.pop(); here !== undefined; here = open.pop()) {
      if (here === null || typeof here !== 'object') continue
      if (here.kind === 'list') for (const item of here.items) open.push(item)
      if (here.kind !== 'dictionary') continue
      found.push({ dictionary: here, object })
      for (const item of here.entries.values()) open.push(item)
    }
  }
  return found
}
