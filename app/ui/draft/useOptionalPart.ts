'use client'

import { useState } from 'react'
import { useDraft } from './draftContext.ts'
import { getAt, removeAt, setAt } from './draftPath.ts'

/** A part of a draft that is there only once somebody says so: it can be begun, taken out, and put back as it was. */
export function useOptionalPart(path: string) {
  const { draft, change, ready } = useDraft()
  const [taken, setTaken] = useState<{ readonly part: unknown } | null>(null)
  const part = getAt(draft, path)
  // It came back by another way, such as another version that was loaded.
  if (part !== undefined && taken !== null) setTaken(null)
  const put = (value: unknown) => change((old) => setAt(old, path, value))
  return {
    isThere: part !== undefined,
    ready,
    begin: (first: unknown) => put(first),
    takeOut: () => {
      setTaken({ part })
      change((old) => removeAt(old, path))
    },
    /** Only where it was taken out here. */
    putBack: taken === null ? undefined : () => put(taken.part),
  }
}
