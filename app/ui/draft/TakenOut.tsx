'use client'

import { useEffect, useRef } from 'react'
import { BeforeSaving } from './BeforeSaving.tsx'
import { formWords } from './formWords.ts'

/** Says that a part of the form was taken out, with the way back; the focus goes to it, for its own button is gone. */
export function TakenOut({
  name,
  path,
  onPutBack,
}: {
  name: string
  path: string
  onPutBack: (() => void) | undefined
}) {
  const button = useRef<HTMLButtonElement>(null)
  const offered = onPutBack !== undefined
  useEffect(() => {
    if (offered) button.current?.focus()
  }, [offered])
  if (onPutBack === undefined) return null
  return (
    <p className="rows-removed">
      {formWords.takenOut(name)}
      <BeforeSaving path={path} />{' '}
      <button type="button" ref={button} className="button button-plain" onClick={onPutBack}>
        {formWords.rowUndo}
      </button>
    </p>
  )
}
