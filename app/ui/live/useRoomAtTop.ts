import { type RefObject, useEffect } from 'react'

/**
 * While a notice stands at the top of the window: tells the page how much of it is covered (`--told-height`), and moves
 * what has the focus out from under it when it comes up or grows.
 */
export function useRoomAtTop(box: RefObject<HTMLElement | null>, shown: boolean): void {
  useEffect(() => {
    const notice = box.current
    if (notice === null || !shown) return
    const page = document.documentElement
    const watch = new ResizeObserver(() => {
      page.style.setProperty('--told-height', `${notice.offsetHeight}px`)
      const active = document.activeElement
      if (!active?.matches('main *') || notice.contains(active)) return
      const [covered, place] = [notice.getBoundingClientRect(), active.getBoundingClientRect()]
      if (place.top < covered.bottom && place.bottom > covered.top)
        active.scrollIntoView({ block: 'nearest' })
    })
    watch.observe(notice)
    return () => {
      watch.disconnect()
      page.style.removeProperty('--told-height')
    }
  }, [box, shown])
}
