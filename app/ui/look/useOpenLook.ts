'use client'

import { type RefObject, useEffect, useState } from 'react'

/** The id of the look that the address names; undefined where it names none. */
function lookInAddress(): string | undefined {
  const name = window.location.hash.slice(1)
  return /^look-[a-z]+-[0-9]+$/.test(name) ? name : undefined
}

function isPlainPress(event: MouseEvent): boolean {
  return event.button === 0 && !(event.ctrlKey || event.metaKey || event.shiftKey || event.altKey)
}

/**
 * Which look is open. The first one opened adds one entry to the browser's history and the next ones take its place, so that
 * one step back closes. The router is told of each, so that what it fetches anew leaves the address alone.
 */
export function useOpenLook(around: RefObject<HTMLElement | null>): string | undefined {
  const [open, setOpen] = useState<string>()

  useEffect(() => {
    const box = around.current
    if (box === null) return
    let now = lookInAddress()
    let pressed: HTMLElement | undefined
    let ownEntry = false
    setOpen(now)

    const show = (next: string | undefined) => {
      const before = now
      now = next
      setOpen(next)
      if (next !== undefined || before === undefined) return
      ownEntry = false
      const opener =
        pressed?.isConnected === true
          ? pressed
          : [...box.querySelectorAll<HTMLElement>(`a[href="#${before}"]`)].find((link) => link.offsetParent)
      pressed = undefined
      // After the look is gone, so that the page is as high as it stays.
      requestAnimationFrame(() => opener?.focus())
    }
    const close = () => {
      if (now === undefined) return
      if (ownEntry) window.history.back()
      else {
        window.history.replaceState(null, '', window.location.pathname + window.location.search)
        show(undefined)
      }
    }
    const click = (event: MouseEvent) => {
      const link = event.target instanceof Element ? event.target.closest('a') : null
      if (link === null || event.defaultPrevented || !isPlainPress(event)) return
      if (link.dataset.closeLook !== undefined) {
        event.preventDefault()
        close()
        return
      }
      const name = link.getAttribute('href') ?? ''
      if (!name.startsWith('#look-')) return
      event.preventDefault()
      pressed = link
      if (now === name.slice(1)) document.getElementById(now)?.focus()
      if (now === undefined) {
        window.history.pushState(null, '', name)
        ownEntry = true
      } else window.history.replaceState(null, '', name)
      show(name.slice(1))
    }
    const key = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented || now === undefined) return
      event.preventDefault()
      close()
    }
    const moved = () => {
      // An address that was typed over the page's own: the router has no entry for it, and would take it away again.
      if (window.history.state === null) window.history.replaceState(null, '', window.location.href)
      show(lookInAddress())
    }
    box.addEventListener('click', click)
    box.addEventListener('keydown', key)
    window.addEventListener('popstate', moved)
    return () => {
      box.removeEventListener('click', click)
      box.removeEventListener('keydown', key)
      window.removeEventListener('popstate', moved)
    }
  }, [around])

  return open
}
