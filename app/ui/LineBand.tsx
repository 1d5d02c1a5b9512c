import { HouseholdPattern } from './HouseholdPattern.tsx'

/** Where the fence runs, in the units of the picture; between two pieces stands a gate. */
const pieces = [
  'M28 50 L172 50',
  'M212 50 L300 42 L336 42',
  'M368 42 L452 58 L470 58',
  'M508 58 L612 58',
] as const
const posts = [76, 124, 256, 300, 410, 568] as const
const gatePosts = [172, 212, 336, 368, 470, 508] as const

/** How far down the fence stands at a post. */
const heightAt = new Map([
  [76, 50],
  [124, 50],
  [172, 50],
  [212, 50],
  [256, 46],
  [300, 42],
  [336, 42],
  [368, 42],
  [410, 49.5],
  [452, 58],
  [470, 58],
  [508, 58],
  [568, 58],
])

/**
 * The subject at a glance, seen from above as in a notebook's own drawing: two grounds, the line between them, a fence that
 * leaves it a little, and three gates, of which the last serves both. It says nothing that the page does not say in words.
 */
export function LineBand() {
  return (
    <svg className="line-band" viewBox="0 0 640 108" aria-hidden="true">
      <defs>
        <HouseholdPattern id="band-a" household="a" />
        <HouseholdPattern id="band-b" household="b" />
      </defs>
      <rect className="band-land-a" width={640} height={54} />
      <rect className="band-land-b" y={54} width={640} height={54} />
      <rect fill="url(#band-a)" width={640} height={12} />
      <rect fill="url(#band-b)" y={96} width={640} height={12} />
      <path className="band-boundary" d="M0 54 H640" />
      <path className="band-swing" d="M172 50 V10 A40 40 0 0 1 212 50" />
      <path className="band-swing" d="M368 42 V74 A32 32 0 0 1 336 42" />
      <path
        className="band-swing"
        d="M470 58 V20 M470 58 V96 M470 20 A38 38 0 0 1 508 58 A38 38 0 0 1 470 96"
      />
      {pieces.map((piece) => (
        <path key={piece} className="band-fence" d={piece} />
      ))}
      {posts.map((x) => (
        <circle key={x} className="band-post" cx={x} cy={heightAt.get(x)} r={2.6} />
      ))}
      {gatePosts.map((x) => (
        <rect key={x} className="band-post" x={x - 4} y={(heightAt.get(x) ?? 0) - 4} width={8} height={8} />
      ))}
      <rect className="band-post" x={22} y={44} width={12} height={12} />
      <rect className="band-post" x={606} y={52} width={12} height={12} />
    </svg>
  )
}
