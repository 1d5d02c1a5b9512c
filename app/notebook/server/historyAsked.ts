import { type HistoryGroup, historyGroups } from '../../../lib/words/happeningText.ts'

/** What of a history an address asks for. */
export type HistoryAsked = {
  /** The key of one item. */
  readonly item?: string
  readonly group?: HistoryGroup
  /** From 1. */
  readonly page: number
}

export type AddressFields = Readonly<Record<string, string | readonly string[] | undefined>>

/** Reads `?item=…&kind=…&page=…`; what is no answer of the form counts as not asked. */
export function historyAsked(fields: AddressFields): HistoryAsked {
  const one = (name: string) => {
    const value = Object.hasOwn(fields, name) ? fields[name] : undefined
    return typeof value === 'string' ? value : ''
  }
  const [item, kind, page] = [one('item'), one('kind'), one('page')]
  const group = (Object.keys(historyGroups) as HistoryGroup[]).find((name) => name === kind)
  return {
    ...(item === '' ? {} : { item }),
    ...(group === undefined ? {} : { group }),
    page: /^[1-9][0-9]{0,5}$/.test(page) ? Number(page) : 1,
  }
}

/** The address of one page of the same choice. */
export function historyAddress(here: string, asked: HistoryAsked, page: number): string {
  const fields = new URLSearchParams({
    ...(asked.item === undefined ? {} : { item: asked.item }),
    ...(asked.group === undefined ? {} : { kind: asked.group }),
    ...(page === 1 ? {} : { page: String(page) }),
  }).toString()
  return fields === '' ? here : `${here}?${fields}`
}
