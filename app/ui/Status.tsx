import type { StatusLook } from '../../lib/core/agreement/itemStatus.ts'

/**
 * Each standing is a bay of fence: two posts alone, two posts with one rail, with both rails, and with a rail that no longer
 * meets its post. The brackets on the drawing are made of the same rails.
 */
const glyphs: Readonly<Record<StatusLook, string>> = {
  agreed: 'M3 1.5 V14.5 M13 1.5 V14.5 M3 5 H13 M3 10.5 H13',
  one: 'M3 1.5 V14.5 M13 1.5 V14.5 M3 10.5 H13',
  open: 'M3 1.5 V14.5 M13 1.5 V14.5',
  changed: 'M3 1.5 V14.5 M13 1.5 V14.5 M3 5 L10 9.5',
}

/** The sign without its word: only beside one. */
export function StatusGlyph({ kind }: { kind: StatusLook }) {
  return (
    <svg viewBox="0 0 16 16" width={16} height={16} aria-hidden="true">
      <path d={glyphs[kind]} className="status-line" />
    </svg>
  )
}

/** Where an item stands, told by shape and word; colour only helps. */
export function Status({ kind, text }: { kind: StatusLook; text: string }) {
  return (
    <span className={`status status-${kind}`}>
      <StatusGlyph kind={kind} />
      <span>{text}</span>
    </span>
  )
}
