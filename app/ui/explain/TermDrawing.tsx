import { type ReactNode, useId } from 'react'
import { type Term, termWords } from '../../../lib/words/termWords.ts'
import { HouseholdPattern } from '../HouseholdPattern.tsx'

/** A small drawing of a term, in the ink of the page. */
export function TermDrawing({ term }: { term: Term }) {
  const id = useId()
  return (
    <svg className="term-drawing" viewBox="0 0 220 112" role="img" aria-label={termWords[term].drawing}>
      <defs>
        <HouseholdPattern id={`${id}a`} household="a" />
        <HouseholdPattern id={`${id}b`} household="b" />
        <pattern
          id={`${id}earth`}
          width={7}
          height={7}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-45)"
        >
          <path className="term-thin" d="M0 0 V7" />
        </pattern>
      </defs>
      {drawings[term](id)}
    </svg>
  )
}

const fill = (id: string, what: 'a' | 'b' | 'earth') => `url(#${id}${what})`

const drawings: Readonly<Record<Term, (id: string) => ReactNode>> = {
  station: () => (
    <>
      <path className="term-line" d="M14 60 H210" />
      <path className="term-ink" d="M20 48 V72 M96 52 V68 M176 52 V68" />
      <Words at={[14, 40]}>start</Words>
      <Measure from={[20, 88]} to={[96, 88]} words="24 ft" />
      <Words at={[76, 40]}>station</Words>
    </>
  ),
  setback: (id) => (
    <>
      <rect x="10" y="6" width="110" height="84" fill={fill(id, 'a')} />
      <rect x="120" y="6" width="90" height="84" fill={fill(id, 'b')} />
      <path className="term-line" d="M120 2 V94" />
      <rect className="term-plate" x="60" y="36" width="60" height="26" />
      <path className="term-ink" d="M60 4 V92" />
      <path className="term-solid" d="M54 14 h12 v12 h-12 z M54 70 h12 v12 h-12 z" />
      <Measure from={[60, 54]} to={[120, 54]} words="" />
      <Words at={[68, 48]}>setback</Words>
      <Words at={[44, 108]}>fence</Words>
      <Words at={[110, 108]}>line</Words>
    </>
  ),
  grade: (id) => (
    <>
      <path fill={fill(id, 'earth')} d="M6 82 C60 78 90 50 214 36 V108 H6 Z" />
      <path className="term-ink" d="M6 82 C60 78 90 50 214 36" />
      <path className="term-dash" d="M6 82 H214" />
      <Measure from={[160, 82]} to={[160, 42]} words="" />
      <rect className="term-plate" x="108" y="60" width="46" height="18" />
      <Words at={[113, 74]}>grade</Words>
      <Words at={[10, 70]}>level</Words>
    </>
  ),
  bay: () => (
    <>
      <path className="term-thin" d="M0 84 H220" />
      <path className="term-solid" d="M26 22 h8 v74 h-8 z M106 22 h8 v74 h-8 z M186 22 h8 v74 h-8 z" />
      <path className="term-ink" d="M30 32 H190 M30 64 H190" />
      <path className="term-dash" d="M30 4 V22 M110 4 V22" />
      <Measure from={[30, 12]} to={[110, 12]} words="" />
      <Words at={[116, 16]}>one bay</Words>
    </>
  ),
  deduction: () => (
    <>
      <path className="term-ink" d="M84 108 V50 C92 62 116 62 124 50 V108" />
      <circle className="term-ink" cx="104" cy="38" r="20" />
      <path className="term-dash" d="M104 18 H176 M124 50 H176" />
      <Measure from={[164, 18]} to={[164, 50]} words="" />
      <Words at={[142, 68]}>deduction</Words>
      <Words at={[16, 34]}>rail</Words>
      <path className="term-thin" d="M40 32 L84 36 M44 86 L84 86" />
      <Words at={[16, 90]}>post</Words>
    </>
  ),
  footing: (id) => (
    <>
      <path fill={fill(id, 'earth')} d="M6 40 H78 V106 H142 V40 H214 V110 H6 Z" />
      <path className="term-ink" d="M6 40 H78 V104 H142 V40 H214" />
      <path className="term-thin" d="M78 92 H142 M84 98 h3 M94 96 h3 M104 99 h3 M114 96 h3 M126 98 h3" />
      <path className="term-solid" d="M104 4 h12 v88 h-12 z" />
      <path className="term-dash" d="M130 66 H168" />
      <rect className="term-plate" x="160" y="56" width="54" height="20" />
      <Words at={[165, 70]}>footing</Words>
    </>
  ),
  opening: () => (
    <>
      <path className="term-thin" d="M0 88 H220" />
      <path className="term-solid" d="M38 16 h12 v84 h-12 z M170 16 h12 v84 h-12 z" />
      <path className="term-ink" d="M57 30 H163 V80 H57 Z M57 80 L163 30" />
      <Measure from={[50, 20]} to={[170, 20]} words="" />
      <Words at={[72, 12]}>clear opening</Words>
    </>
  ),
  rake: (id) => (
    <>
      <path fill={fill(id, 'earth')} d="M4 100 L100 68 V110 H4 Z M116 100 L214 68 V110 H116 Z" />
      <path className="term-ink" d="M4 100 L100 68 M116 100 L214 68" />
      <path className="term-ink" d="M12 98 V48 M54 84 V34 M96 70 V20 M12 50 L96 22 M12 82 L96 54" />
      <path
        className="term-ink"
        d="M124 98 V36 M166 84 V22 M208 70 V22 M124 36 H166 M124 80 H166 M166 22 H208 M166 66 H208"
      />
      <Words at={[8, 14]}>raked</Words>
      <Words at={[116, 14]}>stepped</Words>
    </>
  ),
  kerf: () => (
    <>
      <path className="term-ink" d="M8 34 H104 V66 H8 Z M118 34 H212 V66 H118 Z" />
      <path className="term-dash" d="M104 12 V34 M118 12 V34" />
      <Measure from={[84, 20]} to={[104, 20]} words="" />
      <Measure from={[138, 20]} to={[118, 20]} words="" />
      <Words at={[144, 24]}>kerf</Words>
      <Words at={[32, 90]}>piece</Words>
      <Words at={[146, 90]}>piece</Words>
    </>
  ),
}

type Point = readonly [number, number]

function Words({ at, children }: { at: Point; children: string }) {
  return (
    <text className="term-words" x={at[0]} y={at[1]}>
      {children}
    </text>
  )
}

/** A dimension: a line with a short stroke across each end, as on the drawings of the line. */
function Measure({ from, to, words }: { from: Point; to: Point; words: string }) {
  const level = from[1] === to[1]
  const end = ([x, y]: Point) => (level ? `M${x} ${y - 5} V${y + 5}` : `M${x - 5} ${y} H${x + 5}`)
  return (
    <>
      <path className="term-measure" d={`M${from.join(' ')} L${to.join(' ')} ${end(from)} ${end(to)}`} />
      {words === '' ? null : <Words at={[(from[0] + to[0]) / 2 - 14, from[1] + 16]}>{words}</Words>}
    </>
  )
}
