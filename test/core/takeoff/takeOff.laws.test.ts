import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readyBuildUps } from '../../../lib/core/takeoff/readyBuildUps.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { stepText } from '../../../lib/words/takeoff/stepText.ts'
import { takeOffFile } from '../../../lib/words/takeoff/takeOffFile.ts'
import { fence, gateAt, notebookOf } from './madeFence.ts'

/** Stretches and heights in sixteenths of an inch, written in inches or, exactly the same, in millimetres. */
type Written = (sixteenths: number) => string
const inInches: Written = (sixteenths) => `${sixteenths < 0 ? '-' : ''}${Math.abs(sixteenths)}/16 in`
// 1/16 in is 1.5875 mm by definition.
const inMillimetres: Written = (sixteenths) => {
  const tenThousandths = Math.abs(sixteenths) * 15_875
  const fraction = String(tenThousandths % 10_000).padStart(4, '0')
  return `${sixteenths < 0 ? '-' : ''}${Math.floor(tenThousandths / 10_000)}.${fraction} mm`
}

type Draft = {
  readonly sections: readonly {
    readonly length: number
    readonly height: number
    readonly ready: number
    readonly stepped: boolean
  }[]
  readonly grades: readonly { readonly a: number; readonly b: number; readonly setback: number }[]
  readonly gate: number
}

const drafts: fc.Arbitrary<Draft> = fc.record({
  sections: fc.array(
    fc.record({
      length: fc.integer({ min: 2000, max: 12_000 }),
      height: fc.integer({ min: 600, max: 1400 }),
      ready: fc.integer({ min: 0, max: 3 }),
      stepped: fc.boolean(),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  grades: fc.array(
    fc.record({
      a: fc.integer({ min: -300, max: 300 }),
      b: fc.integer({ min: -300, max: 300 }),
      setback: fc.integer({ min: -200, max: 200 }),
    }),
    { minLength: 2, maxLength: 4 },
  ),
  gate: fc.integer({ min: 900, max: 1100 }),
})

function notebookFrom({ sections, grades, gate }: Draft, written: Written, swapped = false) {
  let at = 0
  const list = sections.map(({ length, height, ready, stepped }, index) => {
    const section = fence(written(at), written(at + length), {
      id: `s${index}`,
      height: { agreed: written(height), measuredFrom: 'higher' },
      buildUp: { ...readyBuildUps[ready]?.section, slope: stepped ? 'stepped' : 'raked' },
    })
    at += length
    return section
  })
  const [a, b] = swapped ? ['b', 'a'] : ['a', 'b']
  const stations = grades.map((grade, index) => ({
    at: written(Math.floor((at * index) / (grades.length - 1))),
    gradeA: written(swapped ? grade.b : grade.a),
    gradeB: written(swapped ? grade.a : grade.b),
    setback: { side: grade.setback < 0 ? b : a, distance: written(Math.abs(grade.setback)) },
  }))
  const gates = [
    gateAt(written(gate), written(700), {
      id: 'g',
      opens: 'toward household a',
      buildUp: readyBuildUps[0]?.gate,
    }),
  ]
  return notebookOf(list, { line: { stations, error: '1 in' }, gates })
}

test('the same lengths in inches or in metres take off the same, to the last figure', () => {
  fc.assert(
    fc.property(drafts, (draft) => {
      const [one, other] = [inInches, inMillimetres].map((written) => {
        const notebook = notebookFrom(draft, written)
        return JSON.stringify(takeOffFile(notebook, takeOff(notebook)))
      })
      expect(one).toBe(other)
    }),
    { numRuns: 25 },
  )
})

test('with the households swapped, all setbacks and heights are swapped and no quantity changes', () => {
  fc.assert(
    fc.property(drafts, (draft) => {
      const [one, other] = [false, true].map((swapped) => {
        const notebook = notebookFrom(draft, inInches, swapped)
        return takeOffFile(notebook, takeOff(notebook))
      })
      expect(other?.setbacks.landOnTheOtherSide).toEqual({
        a: one?.setbacks.landOnTheOtherSide.b,
        b: one?.setbacks.landOnTheOtherSide.a,
      })
      expect(other?.heights.map(({ a, b }) => [b, a])).toEqual(one?.heights.map(({ a, b }) => [a, b]))
      expect(other?.quantities).toEqual(one?.quantities)
      expect(other?.posts.map(({ holeCrossesLine }) => holeCrossesLine)).toEqual(
        one?.posts.map(({ holeCrossesLine }) => holeCrossesLine),
      )
    }),
    { numRuns: 25 },
  )
})

test('every quantity is a number of the file format with its workings in words', () => {
  fc.assert(
    fc.property(drafts, (draft) => {
      const notebook = notebookFrom(draft, inInches)
      for (const { quantity, workings, part, name } of takeOff(notebook).quantities) {
        expect(quantity, part).toMatch(/^(0|[1-9][0-9]*)(\.[0-9]{1,3})?$/)
        if (name.kind !== 'latch') expect(workings.length, part).toBeGreaterThan(0)
        for (const step of workings) {
          for (const units of ['ft-in', 'metric'] as const)
            expect(stepText(step, units)).toMatch(/^(?!.*(undefined|NaN|\[object)).+\.$/)
        }
      }
    }),
    { numRuns: 25 },
  )
})
