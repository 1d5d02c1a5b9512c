'use client'

import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react'
import { useDragging } from './useDragging.ts'
import { usePinching } from './usePinching.ts'
import { useZoom } from './useZoom.ts'

/**
 * A window on a drawing: it zooms and pans inside its own frame, by buttons, keys, wheel, mouse and fingers. Without
 * script the drawing stands there as it is and can be scrolled. Nothing moves by itself.
 */
export function DrawingFrame({ label, children }: { label: string; children: ReactNode }) {
  const frame = useRef<HTMLElement>(null)
  const sheet = useRef<HTMLDivElement>(null)
  const { zoom, zoomTo, zoomBy, fit, fullWidth, least, most } = useZoom(frame, sheet)
  const [ready, setReady] = useState(false)
  useEffect(() => setReady(true), [])
  useDragging(frame)
  usePinching(frame, zoom, zoomTo)

  function byKey(event: KeyboardEvent) {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    const moves: Readonly<Record<string, () => void>> = {
      '+': () => zoomBy(1.25),
      '=': () => zoomBy(1.25),
      '-': () => zoomBy(0.8),
      '0': fit,
    }
    const move = moves[event.key]
    if (move === undefined) return
    event.preventDefault()
    move()
  }

  return (
    <div className="drawing-window">
      <fieldset className="drawing-tools" aria-label={`Zoom: ${label}`}>
        {ready ? (
          <>
            <button
              type="button"
              className="drawing-tool"
              onClick={() => zoomBy(1.25)}
              disabled={zoom >= most}
            >
              Zoom in
            </button>
            <button
              type="button"
              className="drawing-tool"
              onClick={() => zoomBy(0.8)}
              disabled={zoom <= least}
            >
              Zoom out
            </button>
            <button type="button" className="drawing-tool" onClick={fit}>
              Show all
            </button>
            <button type="button" className="drawing-tool" onClick={fullWidth}>
              Full width
            </button>
            <output className="drawing-zoom">{Math.round(zoom * 100)} %</output>
          </>
        ) : null}
      </fieldset>
      <section
        ref={frame}
        className="drawing-frame"
        aria-label={label}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable, so that the arrow keys move it
        tabIndex={0}
        onKeyDown={byKey}
      >
        <div ref={sheet} className="drawing-sheet">
          {children}
        </div>
      </section>
    </div>
  )
}
