'use client'

import type { ReactNode } from 'react'
import { useDraft } from './draftContext.ts'
import { getAt } from './draftPath.ts'

/** Shows its children while the draft's value at the path is one of `is`. A missing value counts as ''. */
export function Shown({
  path,
  is,
  children,
}: {
  path: string
  is: readonly (string | boolean)[] | string | boolean
  children: ReactNode
}) {
  const { draft } = useDraft()
  const value = getAt(draft, path) ?? ''
  const wanted = Array.isArray(is) ? is : [is]
  return wanted.includes(value) ? children : null
}
