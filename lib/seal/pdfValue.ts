/** A value of a PDF file (ISO 32000-1, 7.3). Numbers, yes and no, and nothing are those of the language. */
export type PdfValue = number | boolean | null | PdfName | PdfText | PdfReference | PdfList | PdfDictionary

export type PdfName = { readonly kind: 'name'; readonly name: string }
/** A text in either spelling, with the places in the file where it begins and ends, brackets included. */
export type PdfText = {
  readonly kind: 'text'
  readonly bytes: Uint8Array
  readonly hexadecimal: boolean
  readonly from: number
  readonly to: number
}
export type PdfReference = { readonly kind: 'reference'; readonly number: number }
export type PdfList = { readonly kind: 'list'; readonly items: readonly PdfValue[] }
export type PdfDictionary = { readonly kind: 'dictionary'; readonly entries: ReadonlyMap<string, PdfValue> }

export type PdfKind = Exclude<PdfValue, number | boolean | null>['kind']

/** The value if it is of that kind. */
export function ofKind<Kind extends PdfKind>(
  value: PdfValue | undefined,
  kind: Kind,
): Extract<PdfValue, { kind: Kind }> | undefined {
  return value !== null && typeof value === 'object' && value.kind === kind
    ? (value as Extract<PdfValue, { kind: Kind }>)
    : undefined
}

/** The name under a key of a dictionary. */
export function nameAt(dictionary: PdfDictionary, key: string): string | undefined {
  return ofKind(dictionary.entries.get(key), 'name')?.name
}

/** A text as characters: UTF-16 where it begins with the mark of that, else byte by byte (ISO 32000-1, 7.9.2.2). */
export function charactersOf({ bytes }: PdfText): string {
  const utf16 = bytes[0] === 0xfe && bytes[1] === 0xff
  return utf16
    ? new TextDecoder('utf-16be').decode(bytes.subarray(2))
    : Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1')
}
