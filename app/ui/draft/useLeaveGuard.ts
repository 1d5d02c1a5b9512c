'use client'

import { useEffect } from 'react'
import { formWords } from './formWords.ts'

/** The link that a plain press would follow in this tab to another page; null for anything else. */
function linkThatLeaves(event: MouseEvent): HTMLAnchorElement | null {
  if (event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return null
  const link = event.target instanceof Element ? event.target.closest('a') : null
  if (link === null || link.href === '' || link.hasAttribute('download')) return null
  if (link.target !== '' && link.target !== '_self') return null
  const here = window.location
  return link.origin === here.origin && link.pathname === here.pathname && link.search === here.search
    ? null
    : link
}

/** Asks `question` before the page is left while `unsaved`: by closing or reloading, and by a link inside the app. */
export function useLeaveGuard(unsaved: boolean, question: string = formWords.leave): void {
  useEffect(() => {
    if (!unsaved) return
    const onUnload = (event: BeforeUnloadEvent) => event.preventDefault()
    // The router's own links never unload the page, so they are caught before the router sees the press.
    const onPress = (event: MouseEvent) => {
      const link = linkThatLeaves(event)
      if (link === null || link.origin !== window.location.origin) return
      if (window.confirm(question)) return
      event.preventDefault()
      event.stopPropagation()
    }
    window.addEventListener('beforeunload', onUnload)
    window.addEventListener('click', onPress, true)
    return () => {
      window.removeEventListener('beforeunload', onUnload)
      window.removeEventListener('click', onPress, true)
    }
  }, [unsaved, question])
}
