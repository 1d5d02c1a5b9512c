'use client'

import { type RefObject, useEffect } from 'react'
import { fieldNamed, goTo } from './goTo.ts'

/** Leads to the field that the page's address names after its `#`, once the form can be filled in and whenever that changes. */
export function useAddressedField(
  form: RefObject<HTMLFormElement | null>,
  prefix: string,
  ready: boolean,
): void {
  useEffect(() => {
    if (!ready) return
    const follow = () => {
      const id = window.location.hash.slice(1)
      if (form.current === null || !id.startsWith(`${prefix}-`)) return
      const field = fieldNamed(form.current, id)
      if (field !== undefined) goTo(field)
    }
    follow()
    window.addEventListener('hashchange', follow)
    return () => window.removeEventListener('hashchange', follow)
  }, [form, prefix, ready])
}
