'use client'

import { useContext, useEffect, useRef, useState } from 'react'
import { DrawnField } from './DrawnField.tsx'
import { DraftContext } from './draftContext.ts'
import { useField } from './useField.ts'

type SignaturePadProps = {
  label: string
  hint?: string | undefined
} & ({ path: string; name?: undefined } | { name: string; path?: undefined })

function InDraft({ path, label, hint }: { path: string; label: string; hint?: string | undefined }) {
  const { id, text, put, errors, ready } = useField(path)
  return (
    <DrawnField id={id} label={label} hint={hint} errors={errors} ready={ready} value={text} onDrawn={put} />
  )
}

function InForm({ name, label, hint }: { name: string; label: string; hint?: string | undefined }) {
  const [drawn, setDrawn] = useState('')
  const input = useRef<HTMLInputElement>(null)
  // A form that is emptied leaves hidden inputs alone.
  useEffect(() => {
    const form = input.current?.form
    const wipe = () => setDrawn('')
    form?.addEventListener('reset', wipe)
    return () => form?.removeEventListener('reset', wipe)
  }, [])
  return (
    <>
      <input type="hidden" ref={input} name={name} value={drawn} />
      <DrawnField
        id={`drawn-${name}`}
        label={label}
        hint={hint}
        errors={[]}
        ready
        value={drawn}
        onDrawn={setDrawn}
      />
    </>
  )
}

/**
 * A drawn signature, always optional. It gives SVG path data (see `strokePath.ts`) to the draft at `path`, or to a
 * hidden input called `name` inside any other form.
 */
export function SignaturePad(props: SignaturePadProps) {
  const inDraft = useContext(DraftContext) !== null
  if (props.path !== undefined && inDraft) {
    return <InDraft path={props.path} label={props.label} hint={props.hint} />
  }
  return <InForm name={props.name ?? props.path ?? ''} label={props.label} hint={props.hint} />
}
