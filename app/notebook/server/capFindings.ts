import { applyCaps } from '../../../lib/core/shares/caps.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { capsFallShort } from '../../../lib/words/shareFaultText.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import type { Opened } from './opened.ts'

/**
 * What there is to look at about the caps as they stand in the draft, whoever has marked them: that they leave a part of
 * the total to nobody. At the second field, since it takes both. Nothing while the total is not known.
 */
export function capFindings({ notebook, shared }: Pick<Opened, 'notebook' | 'shared'>): readonly Fault[] {
  if (shared.faults.length > 0) return []
  const sum = (household: 'a' | 'b') => shared.items.reduce((total, item) => total + item[household], 0n)
  const digits = digitsOf(notebook)
  const capped = applyCaps({ a: sum('a'), b: sum('b') }, notebook.caps, digits)
  if (capped.ok) return []
  return capped.faults.flatMap((fault) =>
    fault.kind === 'caps-short' ? [{ path: 'caps.b', message: capsFallShort(notebook, fault) }] : [],
  )
}
