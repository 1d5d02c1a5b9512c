/**
 * Rows as comma-separated values (RFC 4180), the first being the headings: figures with a point, texts in quotation
 * marks. A text that a spreadsheet would take for a formula is led by an apostrophe, since somebody else may have typed
 * it.
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  const figure = /^-?[0-9]+(\.[0-9]+)?$/
  const cell = (text: string) => {
    if (text === '' || figure.test(text)) return text
    const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
    return `"${safe.replaceAll('"', '""')}"`
  }
  return rows
    .map((row) => row.map(cell).join(','))
    .join('\r\n')
    .concat('\r\n')
}
