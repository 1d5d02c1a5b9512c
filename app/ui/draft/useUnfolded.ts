'use client'

import { useState } from 'react'
import { useDraft } from './draftContext.ts'
import { isWithin } from './rowFaults.ts'

/**
 * Whether a fold over the fields at these paths of the draft is open. It opens by itself where something in it has to be
 * looked at, and with each further thing; whoever folds it away again is left alone.
 */
export function useUnfolded(
  paths: readonly string[],
  open: boolean,
): readonly [unfolded: boolean, setUnfolded: (unfolded: boolean) => void] {
  const { faults, findings } = useDraft()
  const wanted = [...faults, ...findings].filter(({ path }) =>
    paths.some((one) => isWithin(path, one)),
  ).length
  const [unfolded, setUnfolded] = useState(open || wanted > 0)
  const [seen, setSeen] = useState(wanted)
  if (wanted !== seen) {
    setSeen(wanted)
    if (wanted > seen) setUnfolded(true)
  }
  return [unfolded, setUnfolded]
}
