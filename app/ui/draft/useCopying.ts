'use client'

import { type RefObject, useState } from 'react'
import { formWords } from './formWords.ts'

/**
 * Copies a text that stands in a field. The field is marked first, so that where the browser gives no clipboard (plain
 * http) it can be copied by hand; `said` says which of the two it came to, and is empty before the first press.
 */
export function useCopying(
  field: RefObject<HTMLInputElement | HTMLTextAreaElement | null>,
  value: string,
): { readonly copy: () => Promise<void>; readonly said: string } {
  const [said, setSaid] = useState('')
  async function copy() {
    field.current?.focus()
    field.current?.select()
    try {
      await navigator.clipboard.writeText(value)
      setSaid(formWords.copied)
    } catch {
      setSaid(formWords.copySelf)
    }
  }
  return { copy, said }
}
