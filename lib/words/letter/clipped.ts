/** What somebody typed, on one line and no longer than a name in a letter of one page may be. */
export function clipped(text: string, most = 60): string {
  const line = text.replace(/\s+/g, ' ').trim()
  const characters = [...line]
  return characters.length > most
    ? `${characters
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`
    : line
}
