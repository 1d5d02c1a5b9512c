'use client'

import { createContext, type ReactNode, useContext } from 'react'

const OwnerContext = createContext<string | undefined>(undefined)

/** Lets what is typed in the forms inside wait in the browser until it is saved. `owner` says whose it is. */
export function KeptDrafts({ owner, children }: { owner: string; children: ReactNode }) {
  return <OwnerContext value={owner}>{children}</OwnerContext>
}

/** Whose drafts are kept here; undefined where none are. */
export function useDraftOwner(): string | undefined {
  return useContext(OwnerContext)
}
