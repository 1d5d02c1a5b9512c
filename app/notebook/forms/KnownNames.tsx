'use client'

import { createContext, type ReactNode, useContext } from 'react'
import type { HouseholdNames } from '../../../lib/words/labels.ts'

const NamesContext = createContext<HouseholdNames | undefined>(undefined)

/** Tells the forms inside what each household is called. */
export function KnownNames({ names, children }: { names: HouseholdNames; children: ReactNode }) {
  return <NamesContext value={names}>{children}</NamesContext>
}

/** What each household is called; undefined outside of a notebook. */
export function useKnownNames(): HouseholdNames | undefined {
  return useContext(NamesContext)
}
