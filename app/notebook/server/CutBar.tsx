/** A length as it is cut, to scale: the pieces side by side, what is over hatched. Its words stand in the table's row. */
export function CutBar({ pieces, whole }: { pieces: readonly number[]; whole: number }) {
  const longest = Math.max(whole, 1)
  let from = 0
  const bars = pieces.map((piece, index) => {
    const bar = { key: `${index} ${piece}`, x: (from / longest) * 300, width: (piece / longest) * 300 }
    from += piece
    return bar
  })
  const end = (from / longest) * 300
  return (
    <svg className="cut-bar" viewBox="0 0 300 10" preserveAspectRatio="none" aria-hidden="true">
      <rect x={0} y={0.5} width={300} height={9} className="cut-bar-over" />
      {bars.map(({ key, x, width }) => (
        <rect key={key} x={x} y={0.5} width={width} height={9} className="cut-bar-piece" />
      ))}
      <line x1={end} y1={0} x2={end} y2={10} className="cut-bar-end" />
    </svg>
  )
}
