'use client'

import { type RefObject, useEffect } from 'react'

/** Below this many pixels a press is a press on a part, not a drag. */
const dragFrom = 5

/** Pans with the mouse held down. Fingers scroll the frame by themselves. */
export function useDragging(frame: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const box = frame.current
    if (box === null) return
    let from: { x: number; y: number; left: number; top: number } | undefined
    let dragged = false
    const down = (event: PointerEvent) => {
      dragged = false
      if (event.pointerType !== 'mouse' || event.button !== 0) return
      from = { x: event.clientX, y: event.clientY, left: box.scrollLeft, top: box.scrollTop }
    }
    const move = (event: PointerEvent) => {
      if (from === undefined) return
      const [x, y] = [event.clientX - from.x, event.clientY - from.y]
      if (!dragged && Math.hypot(x, y) < dragFrom) return
      if (!dragged) box.setPointerCapture(event.pointerId)
      dragged = true
      box.scrollLeft = from.left - x
      box.scrollTop = from.top - y
    }
    const up = () => {
      from = undefined
    }
    // The press that ends a drag opens nothing.
    const click = (event: MouseEvent) => {
      if (!dragged) return
      event.preventDefault()
      event.stopPropagation()
      dragged = false
    }
    const keepLink = (event: DragEvent) => event.preventDefault()
    box.addEventListener('pointerdown', down)
    box.addEventListener('pointermove', move)
    window.addEventListener('pointerup', up)
    box.addEventListener('pointercancel', up)
    box.addEventListener('click', click, true)
    box.addEventListener('dragstart', keepLink)
    return () => {
      box.removeEventListener('pointerdown', down)
      box.removeEventListener('pointermove', move)
      window.removeEventListener('pointerup', up)
      box.removeEventListener('pointercancel', up)
      box.removeEventListener('click', click, true)
      box.removeEventListener('dragstart', keepLink)
    }
  }, [frame])
}
