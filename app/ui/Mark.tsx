/**
 * The mark: two grounds of different height that meet at a post line. It is drawn from the subject itself, and the two
 * grounds carry the two households' patterns (hatch and dots), so it also reads without colour. `label` is read out.
 */
export function Mark({ size = 32, label }: { size?: number | undefined; label?: string | undefined }) {
  return (
    <>
      <svg className="mark" viewBox="0 0 32 32" width={size} height={size} aria-hidden="true">
        <path className="mark-ground-a" d="M1 15 Q8 13 15 15 V29 H1 Z" />
        <path
          className="mark-hatch"
          d="M1.6 21.4 L8.4 14.6 M2 27 L13.8 15.2 M6 29 L15 20 M11.4 29 L15 25.4"
        />
        <path className="mark-ground-b" d="M17 21 Q24 20 31 21.5 V29 H17 Z" />
        <path className="mark-dots" d="M20.4 24 h0 M24.2 24 h0 M28 24 h0 M22.3 27 h0 M26.1 27 h0" />
        <path className="mark-post" d="M16 3 V31 M10.5 6.5 H21.5 M10.5 11 H21.5" />
      </svg>
      {label === undefined ? null : <span className="only-read-out">{label}</span>}
    </>
  )
}
