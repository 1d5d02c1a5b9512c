import { sharedUses } from '../../../lib/core/shares/passages.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import {
  isCountedNowhere,
  itemAtFault,
  othersMeanwhileWords,
  shareFaultText,
} from '../../../lib/words/shareFaultText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import type { Opened } from './opened.ts'

/** Why the shares can't be worked out yet, each once, with the place where it is mended; none where they can. */
export function shareFaults({
  notebook,
  notebookId,
  shared,
  statement,
}: Pick<Opened, 'notebook' | 'notebookId' | 'shared' | 'statement'>): readonly {
  readonly text: string
  readonly href: string
}[] {
  const faults = shared.faults.length > 0 ? shared.faults : statement.ok ? [] : statement.faults
  const home = `/notebook/${notebookId}`
  const told = new Map(
    faults.map((fault) => {
      const item = itemAtFault(notebook, fault)
      const page = item && `${home}/item/${encodeURIComponent(item.id)}`
      const place = page === undefined ? `${home}/shares#caps` : page
      return [
        shareFaultText(notebook, fault),
        page !== undefined && isCountedNowhere(fault) ? `${page}#passages` : place,
      ] as const
    }),
  )
  return [...told].map(([text, href]) => ({ text, href }))
}

/** What the items that can be shared ask for while others can't; undefined where there is nothing to tell. */
export function askedMeanwhile({
  notebook,
  shared,
}: Pick<Opened, 'notebook' | 'shared'>): string | undefined {
  if (shared.faults.length === 0 || shared.items.length === 0) return undefined
  const sum = (household: 'a' | 'b') => shared.items.reduce((total, item) => total + item[household], 0n)
  const names = shareNames(notebook)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  return othersMeanwhileWords({ a: money(sum('a')), b: money(sum('b')), nameA: names.a, nameB: names.b })
}

/** Names of the gates whose share by use is halves for now, since no count of their passages is settled. */
export function gatesByHalves({ notebook, shared }: Pick<Opened, 'notebook' | 'shared'>): readonly string[] {
  return notebook.gates
    .filter((gate) => sharedUses(gate)?.apart === true)
    .filter((gate) => {
      const pots = shared.items.find(({ id }) => id === gate.id)?.pots
      const all =
        pots === undefined ? [] : pots.form === 'together' ? [pots.together] : [pots.materials, pots.labour]
      return all.some(({ parts }) =>
        parts.some(({ principle, pot }) => principle.principle === 'use' && pot > 0n),
      )
    })
    .map((gate) => gate.name.trim() || gate.id)
}
