import fc from 'fast-check'
import { expect, test } from 'vitest'
import { principleNames } from '../../lib/core/agreement/notebook.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { randomNotebook, readMade } from './randomNotebook.ts'

const statements = fc.sample(randomNotebook, { numRuns: 400, seed: 12 }).map((document) => {
  const statement = statementOf(readMade(document))
  if (!statement.ok) throw new Error(JSON.stringify(statement.faults))
  return statement.value
})
const pots = statements
  .flatMap(({ items }) => items)
  .flatMap((item) =>
    item.pots.form === 'together' ? [item.pots.together] : [item.pots.materials, item.pots.labour],
  )
  .filter(({ total }) => total > 0n)

test('random notebooks meet every principle with something to share', () => {
  const met = new Set(pots.map(({ principle }) => principle.principle))
  expect([...met].sort()).toEqual([...principleNames].sort())
})

test('random notebooks meet every reason for an odd unit', () => {
  const reasons = new Set(pots.flatMap(({ parts }) => parts).flatMap(({ odd }) => (odd ? [odd.because] : [])))
  expect([...reasons].sort()).toEqual(['asked for less so far', 'first on a full tie', 'larger remainder'])
})

test('random notebooks meet both forms of a share, caps that move, and payments both ways', () => {
  const forms = new Set(statements.flatMap(({ items }) => items).map(({ pots }) => pots.form))
  expect(forms.size).toBe(2)
  expect(new Set(statements.map(({ asked }) => asked.moved?.from)).size).toBe(3)
  expect(new Set(statements.map(({ transfer }) => transfer?.from)).size).toBe(3)
})
