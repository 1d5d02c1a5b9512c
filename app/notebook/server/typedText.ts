/**
 * What somebody typed, without blanks around it and without control characters but tabs and line ends; '' for whatever
 * is no text.
 */
export function typedText(value: unknown): string {
  if (typeof value !== 'string') return ''
  return value
    .replace(/\r\n?/g, '\n')
    .replace(/(?![\t\n])\p{Cc}/gu, '')
    .trim()
}
