'use client'

import { type RefObject, useEffect, useRef } from 'react'
import type { ZoomTo } from './useZoom.ts'

/** Zooms about the point between two fingers, or under the pointer with the wheel and Ctrl (which is what a trackpad's pinch sends). */
export function usePinching(frame: RefObject<HTMLElement | null>, zoom: number, zoomTo: ZoomTo): void {
  const now = useRef(zoom)
  now.current = zoom
  useEffect(() => {
    const box = frame.current
    if (box === null) return
    let pinch: { apart: number; zoom: number } | undefined
    const inFrame = (x: number, y: number) => {
      const { left, top } = box.getBoundingClientRect()
      return { x: x - left, y: y - top }
    }
    const twoFingers = ({ touches }: TouchEvent) => {
      const [one, other] = [touches[0], touches[1]]
      if (touches.length !== 2 || !one || !other) return undefined
      return {
        apart: Math.max(1, Math.hypot(one.clientX - other.clientX, one.clientY - other.clientY)),
        middle: inFrame((one.clientX + other.clientX) / 2, (one.clientY + other.clientY) / 2),
      }
    }
    const begin = (event: TouchEvent) => {
      const fingers = twoFingers(event)
      pinch = fingers && { apart: fingers.apart, zoom: now.current }
    }
    const move = (event: TouchEvent) => {
      const fingers = twoFingers(event)
      if (fingers === undefined || pinch === undefined) return
      event.preventDefault()
      zoomTo((pinch.zoom * fingers.apart) / pinch.apart, fingers.middle)
    }
    const end = () => {
      pinch = undefined
    }
    const wheel = (event: WheelEvent) => {
      if (!event.ctrlKey) return
      event.preventDefault()
      zoomTo(now.current * Math.exp(-event.deltaY / 300), inFrame(event.clientX, event.clientY))
    }
    box.addEventListener('touchstart', begin, { passive: true })
    box.addEventListener('touchmove', move, { passive: false })
    box.addEventListener('touchend', end)
    box.addEventListener('touchcancel', end)
    box.addEventListener('wheel', wheel, { passive: false })
    return () => {
      box.removeEventListener('touchstart', begin)
      box.removeEventListener('touchmove', move)
      box.removeEventListener('touchend', end)
      box.removeEventListener('touchcancel', end)
      box.removeEventListener('wheel', wheel)
    }
  }, [frame, zoomTo])
}
