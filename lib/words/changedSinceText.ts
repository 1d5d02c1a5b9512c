/** The heading over what the other household did. */
export function changedSinceWords(other: string): string {
  return `What ${other} did since you last looked`
}

/** What is not listed any more; `atLeast` where the rest was not counted to its end. */
export function moreChangesWords(count: number, atLeast: boolean): string {
  return `And ${atLeast ? 'at least ' : ''}${count} more.`
}
