/** One value of DER (ITU-T X.690): its tag, its content, and both together with the length between them. */
export type Der = { readonly tag: number; readonly content: Uint8Array; readonly whole: Uint8Array }

export const derTags = {
  integer: 0x02,
  bits: 0x03,
  octets: 0x04,
  nothing: 0x05,
  identifier: 0x06,
  utcTime: 0x17,
  generalizedTime: 0x18,
  sequence: 0x30,
  set: 0x31,
  zero: 0xa0,
  one: 0xa1,
} as const

/**
 * The value that begins the bytes, and what follows it. `undefined` where there is none: a length that is not stated, or
 * in more digits than it needs, is none.
 */
export function firstDer(bytes: Uint8Array): { value: Der; rest: Uint8Array } | undefined {
  const [tag, short] = bytes
  if (tag === undefined || short === undefined || (tag & 0x1f) === 0x1f) return undefined
  const digits = short < 0x80 ? 0 : short & 0x7f
  if (short === 0x80 || digits > 3 || bytes.length < 2 + digits) return undefined
  const length =
    digits === 0 ? short : bytes.subarray(2, 2 + digits).reduce((sum, byte) => sum * 256 + byte, 0)
  if (digits > 0 && length < (digits === 1 ? 0x80 : 256 ** (digits - 1))) return undefined
  const end = 2 + digits + length
  if (end > bytes.length) return undefined
  return {
    value: { tag, content: bytes.subarray(2 + digits, end), whole: bytes.subarray(0, end) },
    rest: bytes.subarray(end),
  }
}

/** The values inside a value of this tag, which they have to fill. */
export function insideDer(der: Der | undefined, tag: number): Der[] | undefined {
  if (der?.tag !== tag) return undefined
  const values: Der[] = []
  for (let rest = der.content; rest.length > 0; ) {
    const first = firstDer(rest)
    if (first === undefined) return undefined
    values.push(first.value)
    rest = first.rest
  }
  return values
}

/** Whether two values are the same bytes. */
export function sameDer(one: Der | undefined, other: Der | undefined): boolean {
  return one !== undefined && other !== undefined && Buffer.compare(one.whole, other.whole) === 0
}

/** An object identifier with dots: "1.2.840.113549.1.7.2". */
export function identifierText(der: Der | undefined): string | undefined {
  if (der?.tag !== derTags.identifier || der.content.length === 0 || der.content.length > 32) return undefined
  const parts: number[] = []
  let part = 0
  for (const byte of der.content) {
    // A part has one spelling only: without zeros in front.
    if (part === 0 && byte === 0x80) return undefined
    part = part * 128 + (byte & 0x7f)
    if (byte >= 0x80) continue
    parts.push(part)
    part = 0
  }
  const [head = 0, ...others] = parts
  const first = Math.min(2, Math.floor(head / 40))
  return [first, head - 40 * first, ...others].join('.')
}

/** UTCTime or GeneralizedTime in UTC, to the second (RFC 5652, 11.3: years 1950 to 2049 in two digits). */
export function timeOf(der: Der | undefined): Date | undefined {
  if (der?.tag !== derTags.utcTime && der?.tag !== derTags.generalizedTime) return undefined
  const text = Buffer.from(der.content).toString('latin1')
  const digits = der.tag === derTags.utcTime ? `${Number(text.slice(0, 2)) < 50 ? '20' : '19'}${text}` : text
  const parts = /^([0-9]{4})([0-9]{2})([0-9]{2})([0-9]{2})([0-9]{2})([0-9]{2})Z$/.exec(digits)
  if (!parts) return undefined
  const [, year, month, day, hour, minute, second] = parts
  const time = new Date(`${year}-${month}-${day}T${hour}:${minute}:${second}Z`)
  return Number.isNaN(time.getTime()) ? undefined : time
}
