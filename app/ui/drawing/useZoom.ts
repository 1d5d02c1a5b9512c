'use client'

import { type RefObject, useCallback, useState } from 'react'

const most = 8
const leastEver = 0.2

/** A point of the frame, in pixels from its top left corner, that stays where it is while the drawing grows or shrinks. */
export type Anchor = { readonly x: number; readonly y: number }
export type ZoomTo = (goal: number, anchor?: Anchor) => void

/** How large the sheet is drawn: 1 is as it came, with text of a size to read. */
export function useZoom(frame: RefObject<HTMLElement | null>, sheet: RefObject<HTMLDivElement | null>) {
  const [zoom, setZoom] = useState(1)
  const [least, setLeast] = useState(leastEver)

  const zoomTo: ZoomTo = useCallback(
    (goal, anchor) => {
      const [box, paper] = [frame.current, sheet.current]
      if (box === null || paper === null) return
      const before = zoomOf(paper)
      const smallest = Math.min(1, zoomToShowAll(box, paper), zoomToWidth(box, paper))
      let next = Math.min(most, Math.max(smallest, goal))
      // A step that would pass the size to read stops there.
      if ((before < 1 && next > 1) || (before > 1 && next < 1)) next = 1
      // The frame keeps its height while the drawing in it grows.
      if (before <= 1 && next > 1) box.style.setProperty('--frame-height', `${box.offsetHeight}px`)
      if (next <= 1) box.style.removeProperty('--frame-height')
      const { x, y } = anchor ?? { x: box.clientWidth / 2, y: box.clientHeight / 2 }
      const [left, top] = [(box.scrollLeft + x) / before, (box.scrollTop + y) / before]
      paper.style.setProperty('--zoom', String(next))
      box.scrollLeft = left * next - x
      box.scrollTop = top * next - y
      setLeast(smallest)
      setZoom(next)
    },
    [frame, sheet],
  )

  const from = (of: (box: HTMLElement, paper: HTMLElement) => number) => () => {
    const [box, paper] = [frame.current, sheet.current]
    if (box === null || paper === null) return
    // Through the size to read, which no single step passes.
    if (zoomOf(paper) !== 1) zoomTo(1)
    zoomTo(of(box, paper), { x: 0, y: 0 })
  }

  return {
    zoom,
    least,
    most,
    zoomTo,
    zoomBy: (times: number) => zoomTo((sheet.current ? zoomOf(sheet.current) : 1) * times),
    fit: from(zoomToShowAll),
    fullWidth: from(zoomToWidth),
  }
}

function zoomOf(paper: HTMLElement): number {
  return Number(paper.style.getPropertyValue('--zoom') || '1')
}

/** At which the sheet is as wide as its frame inside, so that nothing is left to scroll sideways. */
function zoomToWidth(box: HTMLElement, paper: HTMLElement): number {
  const { paddingLeft, paddingRight } = getComputedStyle(box)
  const room = box.clientWidth - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight)
  return Math.max(leastEver, (zoomOf(paper) * room) / Math.max(1, paper.offsetWidth))
}

/** At which all of it stands in the frame and on the screen. */
function zoomToShowAll(box: HTMLElement, paper: HTMLElement): number {
  const high = (zoomOf(paper) * window.innerHeight * 0.85) / Math.max(1, paper.offsetHeight)
  return Math.max(leastEver, Math.min(zoomToWidth(box, paper), high))
}
