/**
 * A PDF of objects as they are given, numbered from 1, object 1 being the root: one table, nothing between the objects
 * (ISO 32000-1, 7.5). For files that no library would write.
 */
export function builtPdf(objects: readonly (string | Buffer)[], trailer = ''): Buffer {
  const parts: Buffer[] = [Buffer.from('%PDF-1.7\n%\x81\x81\x81\x81\n\n', 'latin1')]
  let length = parts[0]?.length ?? 0
  const add = (part: Buffer) => {
    parts.push(part)
    length += part.length
  }
  const places = objects.map((object, index) => {
    const place = length
    add(Buffer.from(`${index + 1} 0 obj\n`))
    add(typeof object === 'string' ? Buffer.from(object, 'latin1') : object)
    add(Buffer.from('\nendobj\n\n'))
    return place
  })
  const table = length
  const entries = places.map((place) => `${String(place).padStart(10, '0')} 00000 n \n`)
  add(Buffer.from(`xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${entries.join('')}\n`))
  add(Buffer.from(`trailer\n<< /Size ${objects.length + 1} /Root 1 0 R ${trailer} >>\n\n`))
  add(Buffer.from(`startxref\n${table}\n%%EOF`))
  return Buffer.concat(parts)
}

/** A stream with this dictionary; its length is added. */
export function stream(dictionary: string, bytes: Uint8Array): Buffer {
  return Buffer.concat([
    Buffer.from(`<< ${dictionary} /Length ${bytes.length} >>\nstream\n`),
    bytes,
    Buffer.from('\nendstream'),
  ])
}
