/**
 * Every JSON file of `worked-by-hand` is one case: a notebook, how a layman redoes its take-off with a pencil, and what
 * must come out. The expected figures were worked by hand from the notebook format (`lib/forms/notebook-format.md`), not
 * taken from the program. Lengths are compared exactly, however they are written.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { lengthOf, type Millimetres } from '../../../lib/core/amounts/length.ts'
import { asNumber } from '../../../lib/core/takeoff/exact.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { cutPlansFile } from '../../../lib/cutting/cutPlansFile.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { takeOffFile } from '../../../lib/words/takeoff/takeOffFile.ts'

/** What is expected; whatever a case does not name is not looked at. */
type Expected = {
  /** Every post: its kind and where it stands. */
  readonly posts?: readonly (readonly [kind: string, at: string])[]
  /** Length of the piece of every post. */
  readonly postPieces?: readonly string[]
  readonly standsOn?: readonly string[]
  readonly holeCrossesLine?: readonly string[]
  /** By item and part, all lengths with their counts. */
  readonly pieces?: Readonly<Record<string, Readonly<Record<string, number>>>>
  /** By item and part: quantity and unit. */
  readonly quantities?: Readonly<Record<string, string>>
  /** Parts that must not be there. */
  readonly absent?: readonly string[]
  readonly weights?: Readonly<Record<string, string>>
  readonly cutPlans?: readonly { bought: string; lengths: number; leastBought: string }[]
  readonly gates?: Readonly<Record<string, Readonly<Partial<Record<'width' | 'height' | 'brace', string>>>>>
  readonly land?: { readonly a: string; readonly b: string }
  /** Where, and the height from the ground of a and of b; a place that is named twice counts once. */
  readonly heights?: readonly (readonly [at: string, a: string, b: string])[]
  /** All of them: path and kind. */
  readonly findings?: readonly (readonly [path: string, kind: string])[]
}

type Worked = {
  readonly case: string
  readonly workedByHand: readonly string[]
  readonly given: NotebookDocument
  readonly expected: Expected
}

const folder = join(import.meta.dirname, 'worked-by-hand')
const names = readdirSync(folder).sort()

/** A length as it is printed for machines: millimetres to the sixth digit. */
const millimetres = (typed: string) => rounded(lengthOf(typed))
const rounded = (length: Millimetres) => Math.round(asNumber(length) * 1e6) / 1e6

test('the folder holds at least twelve worked examples, each with its workings', () => {
  expect(names.length).toBeGreaterThanOrEqual(12)
  for (const name of names) {
    const { case: what, workedByHand } = caseIn(name)
    expect(what, name).toMatch(/\S/)
    expect(workedByHand.length, name).toBeGreaterThan(0)
  }
})

describe.each(names)('%s', (name) => {
  const { case: what, given, expected } = caseIn(name)

  test(what, async () => {
    const read = readDocument(given)
    if (!read.ok) throw new Error(JSON.stringify(read.faults))
    const { notebook } = read.value
    const worked = takeOff(notebook)
    const file = takeOffFile(notebook, worked)
    const plans = expected.cutPlans ? await cutPlansFile(notebook, worked) : []
    const seen = new Set<string>()
    const found: Record<keyof Expected, () => unknown> = {
      posts: () => file.posts.map(({ kind, at }) => [kind, at.millimetres]),
      postPieces: () => file.posts.map(({ piece }) => piece?.millimetres),
      standsOn: () => file.posts.map(({ standsOn }) => standsOn),
      holeCrossesLine: () => file.posts.map(({ holeCrossesLine }) => holeCrossesLine),
      pieces: () =>
        only(expected.pieces, (key) =>
          file.pieces
            .filter(({ item, part }) => `${item} ${part}` === key)
            .map(({ length, count }) => [length.millimetres, count])
            .sort(byFirst),
        ),
      quantities: () =>
        only(expected.quantities, (key) => {
          const one = file.quantities.find(({ item, part }) => `${item} ${part}` === key)
          return one && `${one.quantity} ${one.unit}`
        }),
      absent: () =>
        file.quantities
          .map(({ item, part }) => `${item} ${part}`)
          .filter((key) => expected.absent?.includes(key)),
      weights: () =>
        only(
          expected.weights,
          (key) => file.quantities.find(({ item, part }) => `${item} ${part}` === key)?.weight,
        ),
      cutPlans: () =>
        plans.map(({ bought, lengths, leastBought }) => ({
          bought: bought.millimetres,
          lengths: lengths.reduce((sum, { times }) => sum + times, 0),
          leastBought,
        })),
      gates: () =>
        only(expected.gates, (id) => {
          const gate = file.gates.find(({ item }) => item === id)
          return only(
            expected.gates?.[id],
            (key) => (key === 'brace' ? gate?.brace?.length : gate?.[key as 'width' | 'height'])?.millimetres,
          )
        }),
      land: () => file.setbacks.landOnTheOtherSide,
      heights: () =>
        file.heights
          .map(({ at, a, b }) => [at.millimetres, a.millimetres, b.millimetres])
          .filter((height) => !seen.has(String(height)) && seen.add(String(height))),
      findings: () => file.findings.map(({ path, kind }) => [path, kind]),
    }
    const keys = Object.keys(expected) as (keyof Expected)[]
    expect(keys.length).toBeGreaterThan(0)
    for (const key of keys) expect(found[key](), key).toEqual(wanted(expected)[key])
  })
})

/** The expected figures with their lengths in millimetres. */
function wanted(expected: Expected): Record<keyof Expected, unknown> {
  return {
    ...(expected as Required<Expected>),
    absent: [],
    posts: expected.posts?.map(([kind, at]) => [kind, millimetres(at)]),
    postPieces: expected.postPieces?.map(millimetres),
    pieces: only(expected.pieces, (key) =>
      Object.entries(expected.pieces?.[key] ?? {})
        .map(([length, count]) => [millimetres(length), count])
        .sort(byFirst),
    ),
    cutPlans: expected.cutPlans?.map((plan) => ({ ...plan, bought: millimetres(plan.bought) })),
    gates: only(expected.gates, (id) =>
      only(expected.gates?.[id], (key) =>
        millimetres(expected.gates?.[id]?.[key as 'width' | 'height' | 'brace'] ?? ''),
      ),
    ),
    heights: expected.heights?.map((height) => height.map(millimetres)),
  }
}

/** The keys that a case names, each with what `value` finds for it. */
function only(named: object | undefined, value: (key: string) => unknown): Record<string, unknown> {
  return Object.fromEntries(Object.keys(named ?? {}).map((key) => [key, value(key)]))
}

function byFirst([left]: readonly number[], [right]: readonly number[]): number {
  return (left ?? 0) - (right ?? 0)
}

function caseIn(name: string): Worked {
  return JSON.parse(readFileSync(join(folder, name), 'utf8')) as Worked
}
