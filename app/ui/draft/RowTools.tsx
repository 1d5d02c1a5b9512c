'use client'

import { formWords } from './formWords.ts'

/** The name of one row and the buttons that move or remove it. Each button's name says which row it means. */
export function RowTools({
  id,
  name,
  place,
  count,
  ready,
  onMove,
  onRemove,
}: {
  id: string
  name: string
  place: number
  count: number
  ready: boolean
  onMove: (to: number) => void
  onRemove: () => void
}) {
  return (
    <div className="row-tools">
      <p className="row-name">
        {/* A row without a name is called by its place already. */}
        {name === formWords.rowName('', place) ? null : (
          <span className="row-place figure">{place + 1} </span>
        )}
        {name}
      </p>
      <button
        type="button"
        id={`${id}-up`}
        className="row-tool"
        aria-label={formWords.rowUp(name)}
        disabled={!ready || place === 0}
        onClick={() => onMove(place - 1)}
      >
        <svg viewBox="0 0 16 16" width={16} height={16} aria-hidden="true">
          <path d="M8 14 V3 M3.5 7.5 L8 3 L12.5 7.5" />
        </svg>
      </button>
      <button
        type="button"
        id={`${id}-down`}
        className="row-tool"
        aria-label={formWords.rowDown(name)}
        disabled={!ready || place === count - 1}
        onClick={() => onMove(place + 1)}
      >
        <svg viewBox="0 0 16 16" width={16} height={16} aria-hidden="true">
          <path d="M8 2 V13 M3.5 8.5 L8 13 L12.5 8.5" />
        </svg>
      </button>
      <button
        type="button"
        className="row-tool row-tool-remove"
        aria-label={formWords.rowRemove(name)}
        disabled={!ready}
        onClick={onRemove}
      >
        Remove
      </button>
    </div>
  )
}
