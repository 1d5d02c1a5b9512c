/**
 * The mark: two grounds of different height that meet at a post line. It is drawn from the subject itself, and the two
 * grounds carry the two households' patterns (hatch and dots), so it also reads without colour. `label` is read out.
 */
export function Mark({ size = 32, label }: { size?: number | undefined; label?: string | undefined }) {
  return (
    <>
      <svg className="mark" viewBox="0 0 32 32" width={size} height={size} aria-hidden="true">
        <path className="mark-ground-a" d="M1 13 Q8 9.5 16 12 V27 Q8 30.5 1 28 Z" />
        <path className="mark-hatch" d="M1 19.5 L8.6 11.5 M1 26 L15 11.8 M4.5 29 L15 18.3 M11 29 L15 25" />
        <path className="mark-ground-b" d="M16 20 Q24 18.5 31 21.5 V28 Q24 30.5 16 27 Z" />
        <path className="mark-dots" d="M20 23.3 h0 M24 23 h0 M28 23.8 h0 M22 26.4 h0 M26 26.6 h0" />
        <path className="mark-surface" d="M1 13 Q8 9.5 15 12 M17 20 Q24 18.5 31 21.5" />
        <path className="mark-post" d="M14 31 V4.5 Q14 2 16 2 Q18 2 18 4.5 V31 Z" />
      </svg>
      {label === undefined ? null : <span className="only-read-out">{label}</span>}
    </>
  )
}
