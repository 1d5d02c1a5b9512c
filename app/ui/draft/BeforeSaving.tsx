'use client'

import { useDraft } from './draftContext.ts'
import { getAt } from './draftPath.ts'
import { formWords } from './formWords.ts'

/** Says of what was done at a path that it does not count before it is saved, as long as it is not. */
export function BeforeSaving({ path }: { path: string }) {
  const { draft, saved } = useDraft()
  const isSaved = JSON.stringify(getAt(draft, path)) === JSON.stringify(getAt(saved, path))
  return isSaved ? null : <> {formWords.beforeSaving}</>
}
