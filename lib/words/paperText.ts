/** The heading of the paper on screen. `revision` is missing on the draft. */
export function paperTitleWords(revision: number | undefined): string {
  return revision === undefined ? 'The paper, as it stands' : `The paper of revision ${revision}`
}

export const paperViewWords =
  'Page by page as it is printed. To have it read aloud, take the PDF: it says what is a heading, a table and a figure.'

export function paperPageWords(number: number, of: number): string {
  return `Page ${number} of ${of}`
}

export function paperLargerWords(number: number): string {
  return `Show page ${number} larger`
}

export function paperSmallerWords(number: number): string {
  return `Show page ${number} whole again`
}
