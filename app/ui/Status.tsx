export type StatusKind = 'agreed' | 'open' | 'changed'

/** Each standing is a bay of fence: two posts alone, two posts with rails, and a rail that no longer meets its post. */
function glyphOf(kind: StatusKind) {
  switch (kind) {
    case 'agreed':
      return <path d="M3 1.5 V14.5 M13 1.5 V14.5 M3 5 H13 M3 10.5 H13" className="status-line" />
    case 'open':
      return <path d="M3 1.5 V14.5 M13 1.5 V14.5" className="status-line" />
    case 'changed':
      return <path d="M3 1.5 V14.5 M13 1.5 V14.5 M3 5 L10 9.5" className="status-line" />
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
