'use client'

import { useEffect, useEffectEvent } from 'react'

/** How often it is tried while the page is open, in milliseconds: a browser does not always say that it is online again. */
const every = 15_000

/** While something waits to be sent: tries again when the connection is back, when the page is looked at, and now and then. */
export function useSendAgain(waits: boolean, sendAgain: () => void): void {
  const attempt = useEffectEvent(sendAgain)
  useEffect(() => {
    if (!waits) return
    const again = () => attempt()
    const seen = () => {
      if (document.visibilityState === 'visible') attempt()
    }
    const timer = setInterval(again, every)
    window.addEventListener('online', again)
    document.addEventListener('visibilitychange', seen)
    return () => {
      clearInterval(timer)
      window.removeEventListener('online', again)
      document.removeEventListener('visibilitychange', seen)
    }
  }, [waits])
}
