/**
 * The mark: two grounds of different height that meet at a post line. It is drawn from the subject itself, and the two
 * grounds carry the two households' patterns (hatch and dots), so it also reads without colour. `label` is read out.
 */
export function Mark({ size = 32, label }: { size?: number | undefined; label?: string | undefined }) {
  return (
    <>
      <svg className="mark" viewBox="0 0 32 32" width={size} height={size} aria-hidden="true">
        <path className="mark-ground-a" d="M1 12.5 Q7 10.5 13 12.5 V29 H1 Z" />
        <path className="mark-hatch" d="M1.5 18 L7.5 12 M1.5 24 L13 12.5 M2.5 29 L13 18.5 M8.5 29 L13 24.5" />
        <path className="mark-ground-b" d="M19 20.5 Q25 19.5 31 21 V29 H19 Z" />
        <path className="mark-dots" d="M21.8 23.3 h0 M25.4 23.3 h0 M29 23.6 h0 M23.6 26.6 h0 M27.2 26.6 h0" />
        <path className="mark-post" d="M14.2 31 V5.5 Q14.2 2.5 16 2.5 Q17.8 2.5 17.8 5.5 V31 Z" />
      </svg>
      {label === undefined ? null : <span className="only-read-out">{label}</span>}
    </>
  )
}
