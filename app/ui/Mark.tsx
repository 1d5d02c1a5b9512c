/**
 * The mark: two grounds of different height that meet at a post line. It is drawn from the subject itself, and the two
 * grounds carry the two households' patterns (hatch and dots), so it also reads without colour.
 */
export function Mark({ size = 32, label }: { size?: number | undefined; label?: string | undefined }) {
  return (
    <svg
      className="mark"
      viewBox="0 0 32 32"
      width={size}
      height={size}
      {...(label === undefined ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}
    >
      <path className="mark-ground-a" d="M1 15 Q8 13 15 15 V29 H1 Z" />
      <path className="mark-hatch" d="M1.6 21.4 L8.4 14.6 M2 27 L13.8 15.2 M6 29 L15 20 M11.4 29 L15 25.4" />
      <path className="mark-ground-b" d="M17 21 Q24 20 31 21.5 V29 H17 Z" />
      <g className="mark-dots">
        <circle cx="20.4" cy="24" r="1" />
        <circle cx="24.2" cy="24" r="1" />
        <circle cx="28" cy="24" r="1" />
        <circle cx="22.3" cy="27" r="1" />
        <circle cx="26.1" cy="27" r="1" />
      </g>
      <path className="mark-post" d="M16 3 V31" />
      <path className="mark-rails" d="M10.5 6.5 H21.5 M10.5 11 H21.5" />
    </svg>
  )
}
