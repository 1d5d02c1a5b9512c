import type { Gate } from '../../../lib/core/agreement/notebook.ts'
import { isSaid, sameCount } from '../../../lib/core/shares/passages.ts'
import { readCount } from '../../../lib/forms/saidApart.ts'
import type { PassageRounds } from '../../../lib/store/passageRounds.ts'
import type { CountStanding } from '../../../lib/words/passageText.ts'

/** How a gate's passages stand, and how a count that stands came about. */
export function countStanding({ uses, passages }: Gate, { last }: PassageRounds): CountStanding {
  if (passages?.a !== undefined && passages.b !== undefined) return { kind: 'apart' }
  if (passages !== undefined) return { kind: 'counting' }
  if (!isSaid(uses)) return { kind: 'none' }
  if (last === undefined) return { kind: 'settled', uses, how: 'as typed' }
  const [a, b] = [readCount(last.a.content), readCount(last.b.content)]
  const [ofA, ofB] = [sameCount(a, uses), sameCount(b, uses)]
  return { kind: 'settled', uses, how: ofA && ofB ? 'alike' : ofA ? 'a' : ofB ? 'b' : 'as typed' }
}
