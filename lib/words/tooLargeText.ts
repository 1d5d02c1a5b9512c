/** A notebook file that has more bytes than are taken: known before it is sent, and again once it is there. */
export function tooLargeText(bytes: number, limit: number): string {
  return `The file has ${bytes} bytes; at most ${limit} are taken.`
}
