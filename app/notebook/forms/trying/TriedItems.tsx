'use client'

import { useMemo } from 'react'
import type { Notebook } from '../../../../lib/core/agreement/notebook.ts'
import type { Result } from '../../../../lib/core/result.ts'
import { placesOf } from '../../../../lib/core/shares/itemShares.ts'
import type { Statement } from '../../../../lib/core/shares/statement.ts'
import type { TryingWith } from '../../../../lib/core/trying/applyTried.ts'
import type { TriedEdit } from '../../../../lib/core/trying/tried.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { triedItemWords } from '../../../../lib/words/tryText.ts'
import type { FormNames } from '../partWords.ts'
import { TriedItem } from './TriedItem.tsx'

const none: readonly TriedEdit[] = []

/** Every item of the plan, each folded away with what it would ask for. */
export function TriedItems({
  plan,
  edits,
  planned,
  tried,
  using,
  names,
  onTry,
}: {
  plan: Notebook
  edits: readonly TriedEdit[]
  planned: Result<Statement>
  tried: Result<Statement>
  using: TryingWith
  names: FormNames
  onTry: (edit: TriedEdit, planned: string) => void
}) {
  const buildUps = useMemo(
    () => ({ section: [...using.sections.keys()], gate: [...using.gates.keys()], common: [] }),
    [using],
  )
  const places = useMemo(() => placesOf(plan), [plan])
  const before = useMemo(() => totalsOf(planned), [planned])
  const after = totalsOf(tried)
  return (
    <>
      {places.map(({ item, kind }) => {
        const own = edits.filter((edit) => edit.item === item.id)
        return (
          <TriedItem
            key={item.id}
            item={item}
            title={itemTitle({ kind, name: item.name, key: `item:${item.id}` })}
            figures={triedItemWords(before.get(item.id), after.get(item.id), names.currency)}
            edits={own.length === 0 ? none : own}
            names={names}
            buildUps={buildUps[kind]}
            onTry={onTry}
          />
        )
      })}
    </>
  )
}

function totalsOf(statement: Result<Statement>): ReadonlyMap<string, bigint> {
  return new Map(statement.ok ? statement.value.items.map(({ id, total }) => [id, total]) : [])
}
