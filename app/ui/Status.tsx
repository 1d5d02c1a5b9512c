export type StatusKind = 'agreed' | 'open' | 'changed'

/** Each standing has a shape of its own: a closed ring with a tie, a gap in the ring, a ring struck through. */
function glyphOf(kind: StatusKind) {
  switch (kind) {
    case 'agreed':
      return (
        <>
          <circle cx={8} cy={8} r={6.5} className="status-filled" />
          <path d="M4.8 8.3 L7.2 10.6 L11.2 5.6" className="status-cut" />
        </>
      )
    case 'open':
      return <path d="M8 1.5 A6.5 6.5 0 1 0 14.5 8" className="status-line" />
    case 'changed':
      return (
        <>
          <path d="M8 1.2 L14.8 8 L8 14.8 L1.2 8 Z" className="status-line" />
          <path d="M8 1.2 L14.8 8 L8 14.8 Z" className="status-filled" />
        </>
      )
  }
}

/** Where an item stands, told by shape and word; colour only helps. */
export function Status({ kind, text }: { kind: StatusKind; text: string }) {
  return (
    <span className={`status status-${kind}`}>
      <svg viewBox="0 0 16 16" width={16} height={16} aria-hidden="true">
        {glyphOf(kind)}
      </svg>
      <span>{text}</span>
    </span>
  )
}
