'use client'

import { createContext, type ReactNode, useContext } from 'react'

/** How a typed length is understood, in words (`6 ft 2½ in, 1.892 m`); undefined where it is not one yet. */
export type ReadLength = (typed: string) => string | undefined

const ReadLengthContext = createContext<ReadLength | undefined>(undefined)

/** Gives every `LengthField` inside it the reading that stands below the field. */
export function LengthReading({ readLength, children }: { readLength: ReadLength; children: ReactNode }) {
  return <ReadLengthContext value={readLength}>{children}</ReadLengthContext>
}

export function useReadLength(): ReadLength | undefined {
  return useContext(ReadLengthContext)
}
