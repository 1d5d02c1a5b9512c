/**
 * Today for whoever writes in the books, as an ISO 8601 day: the later of the install's own calendar day and that in UTC,
 * so that nobody east of Greenwich is told that its today is yet to come.
 */
export function today(now = new Date()): string {
  const two = (figure: number) => String(figure).padStart(2, '0')
  const here = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
  const inUtc = now.toISOString().slice(0, 10)
  return here > inUtc ? here : inUtc
}
