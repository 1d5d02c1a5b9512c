import { type RefObject, useEffect, useRef } from 'react'

/** Gives what had the focus before it came into a box, for when the box goes away; the main part where that is gone. */
export function useFocusBack(box: RefObject<HTMLElement | null>): () => void {
  const before = useRef<Element>(undefined)
  useEffect(() => {
    const note = ({ target }: FocusEvent) => {
      if (target instanceof Element && !box.current?.contains(target)) before.current = target
    }
    document.addEventListener('focusin', note)
    return () => document.removeEventListener('focusin', note)
  }, [box])
  return () => {
    if (!box.current?.contains(document.activeElement)) return
    const back = before.current?.isConnected ? before.current : document.querySelector('main')
    if (back instanceof HTMLElement) back.focus()
  }
}
