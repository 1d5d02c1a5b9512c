'use client'

import { useEffect, useRef, useState } from 'react'
import Pad from 'signature_pad'
import { describedBy, FieldNotes } from './FieldFrame.tsx'
import { formWords } from './formWords.ts'
import { strokeBox, strokePathOf, strokesOf } from './strokePath.ts'

const pen = { minWidth: 1.4, maxWidth: 1.4, dotSize: 1.8, penColor: '#1f2430' } as const

/** Draws the saved strokes on the pad again, at the size the canvas has now. */
function redraw(pad: Pad, path: string, scale: number) {
  const groups = (strokesOf(path) ?? []).map((stroke) => ({
    ...pen,
    velocityFilterWeight: 0.7,
    compositeOperation: 'source-over' as const,
    points: stroke.map((point) => ({ x: point.x * scale, y: point.y * scale, pressure: 0.5, time: 0 })),
  }))
  pad.fromData(groups, { clear: true })
}

/** The surface that is drawn on. It is light in both colour schemes, as the pen is dark on every print of it. */
export function DrawnField({
  id,
  label,
  hint = formWords.padHint,
  errors,
  ready,
  value,
  onDrawn,
}: {
  id: string
  label: string
  hint?: string | undefined
  errors: readonly string[]
  ready: boolean
  value: string
  onDrawn: (path: string) => void
}) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const padRef = useRef<Pad | null>(null)
  const [wiped, setWiped] = useState('')
  // Drawn anew, or brought back: then there is nothing to bring back.
  if (value !== '' && wiped !== '') setWiped('')
  const shown = useRef(value)
  const wanted = useRef(value)
  const report = useRef(onDrawn)
  useEffect(() => {
    report.current = onDrawn
    wanted.current = value
  }, [onDrawn, value])

  useEffect(() => {
    const surface = canvas.current
    if (surface === null) return
    const pad = new Pad(surface, { ...pen, backgroundColor: 'rgba(0,0,0,0)' })
    padRef.current = pad
    const scaleOf = () => surface.clientWidth / strokeBox.width
    const fit = () => {
      const sharpness = Math.max(1, window.devicePixelRatio)
      surface.width = surface.clientWidth * sharpness
      surface.height = surface.clientHeight * sharpness
      surface.getContext('2d')?.scale(sharpness, sharpness)
      redraw(pad, wanted.current, scaleOf())
    }
    const onEnd = () => {
      const scale = scaleOf()
      const path = strokePathOf(
        pad
          .toData()
          .map((group) => group.points.map((point) => ({ x: point.x / scale, y: point.y / scale }))),
      )
      shown.current = path
      wanted.current = path
      report.current(path)
    }
    const sizes = new ResizeObserver(fit)
    sizes.observe(surface)
    pad.addEventListener('endStroke', onEnd)
    return () => {
      sizes.disconnect()
      pad.removeEventListener('endStroke', onEnd)
      pad.off()
    }
  }, [])

  // Another version was loaded, or the drawing wiped away: the pad follows the value.
  useEffect(() => {
    const pad = padRef.current
    const surface = canvas.current
    if (pad === null || surface === null || shown.current === value) return
    shown.current = value
    redraw(pad, value, surface.clientWidth / strokeBox.width)
  }, [value])

  return (
    <div className="field drawn-field" data-wrong={errors.length > 0 ? '' : undefined}>
      <p className="field-label" id={`${id}-label`}>
        {label}
      </p>
      <FieldNotes id={id} hint={hint} errors={errors} />
      <canvas ref={canvas} className="drawn-surface" role="img" aria-labelledby={`${id}-label`} />
      <div className="button-row">
        <button
          type="button"
          id={id}
          className="button button-plain"
          disabled={!ready || value === ''}
          aria-describedby={describedBy(id, { hint: true, errors: errors.length > 0 })}
          onClick={() => {
            setWiped(value)
            onDrawn('')
          }}
        >
          {formWords.padClear}
        </button>
        {wiped === '' || value !== '' ? null : (
          <button type="button" className="button button-plain" onClick={() => onDrawn(wiped)}>
            {formWords.padBack}
          </button>
        )}
        <p className="drawn-standing" role="status">
          {value === '' ? formWords.padEmpty : formWords.padDrawn}
        </p>
      </div>
    </div>
  )
}
