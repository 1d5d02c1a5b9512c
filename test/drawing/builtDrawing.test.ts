import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inMillimetres } from '../../lib/core/amounts/length.ts'
import { takeOff } from '../../lib/core/takeoff/takeOff.ts'
import { builtFence } from '../../lib/drawing/builtFence.ts'
import type { Drawing } from '../../lib/drawing/drawing.ts'
import { leastTarget } from '../../lib/drawing/drawnPart.ts'
import { itemDrawing, itemSheets } from '../../lib/drawing/itemDrawing.ts'
import { lineDrawing } from '../../lib/drawing/lineDrawing.ts'
import { postKinds, postSign } from '../../lib/drawing/postSigns.ts'
import { drawingWords } from '../../lib/words/summary/drawingWords.ts'
import { notebookWith } from '../pdf/madeSummary.ts'
import { outside, overlapping, textsOf } from './drawnBoxes.ts'
import { heronBank } from './madeFence.ts'

const { notebook } = notebookWith(heronBank)
const found = takeOff(notebook)
const words = drawingWords(notebook)
const plain = (text: string) => text.replaceAll('\u00A0', ' ')
const shownOn = (drawing: Drawing) => textsOf(drawing).map(({ text }) => plain(text))
const line = (widthUnits: number) => lineDrawing(notebook, { widthUnits, words, takeOff: found })
const item = (id: string, widthUnits: number) => {
  const drawing = itemDrawing(notebook, found, id, { widthUnits, words })
  if (drawing === undefined) throw new Error(`no drawing of ${id}`)
  return drawing
}

/** Solid uprights of the side view: posts from the ground to the top. */
const uprights = (drawing: Drawing) =>
  drawing.shapes.filter(
    (shape) =>
      shape.kind === 'polygon' &&
      shape.fill === 'ink' &&
      shape.stroke === undefined &&
      shape.points.length === 4 &&
      shape.points[0]?.y === shape.points[1]?.y,
  )
/** Dashed holes of the side view, with their width and their depth in units. */
const holes = (drawing: Drawing) =>
  drawing.shapes.flatMap((shape) => {
    if (shape.kind !== 'polygon' || shape.points.length !== 4 || shape.stroke?.dash?.join() !== '2,1.6')
      return []
    const [left, right, low] = shape.points
    return left && right && low
      ? [{ x: (left.x + right.x) / 2, wide: right.x - left.x, deep: low.y - right.y }]
      : []
  })

describe.each([248, 350, 504, 544, 576])('at %d units', (width) => {
  test.each(['the line', 's1', 's2', 's3', 'g1', 'g2'])(
    '%s has no two texts that overlap, none too small, and all inside',
    (id) => {
      const drawing = id === 'the line' ? line(width) : item(id, width)
      expect(overlapping(drawing)).toEqual([])
      expect(outside(drawing)).toEqual([])
      expect(Math.min(...textsOf(drawing).map(({ size }) => size))).toBeGreaterThanOrEqual(8.5)
      expect(shownOn(drawing).filter((text) => text.endsWith('…'))).toEqual([])
    },
  )
})

describe('the posts of the drawing', () => {
  test('are those of the take-off, at their places, each down to the bottom of its hole', () => {
    const drawing = line(600)
    const { millimetresPerUnit, heightsDrawnHigher } = drawing.scale
    expect(uprights(drawing)).toHaveLength(found.posts.length)
    const drawn = holes(drawing)
    expect(drawn).toHaveLength(found.posts.length)
    for (const [index, { post, piece }] of found.posts.entries()) {
      const hole = drawn[index]
      expect(((hole?.x ?? 0) - 10) * millimetresPerUnit).toBeCloseTo(inMillimetres(post.at), 4)
      expect(((hole?.deep ?? 0) * millimetresPerUnit) / heightsDrawnHigher).toBeCloseTo(
        inMillimetres(piece.depth),
        4,
      )
    }
  })

  test('stand where they were measured, in a hole as deep as was measured', () => {
    const third = found.posts[2]
    expect(third && inMillimetres(third.post.at)).toBe(4900)
    expect(shownOn(item('s1', 600))).toContain('0.6 m')
  })

  test('are none in a section without a build-up but the one that it shares with its neighbour', () => {
    const drawing = item('s3', 600)
    expect(uprights(drawing)).toHaveLength(1)
    const posts = drawing.parts.filter(({ of }) => of.kind === 'post')
    expect(posts.map(({ name }) => plain(name).split(',')[0])).toEqual(['Post 11 of Section 2: Field'])
    const alone = notebookWith({ ...heronBank, sections: [heronBank.sections[2]], gates: [] }).notebook
    const bare = itemDrawing(alone, takeOff(alone), 's3', { widthUnits: 600, words: drawingWords(alone) })
    expect(bare && [uprights(bare), holes(bare)]).toEqual([[], []])
  })

  test('have a sign for each kind that is a form of its own', () => {
    const forms = postKinds.map((kind) =>
      postSign(kind, { x: 0, y: 0 })
        .map((shape) =>
          shape.kind === 'polygon'
            ? `${shape.points.length} ${shape.fill} ${shape.points[0]?.x}`
            : `${shape.kind} ${'fill' in shape ? shape.fill : ''}`,
        )
        .join(),
    )
    expect(new Set(forms).size).toBe(postKinds.length)
  })

  test('have each kind that is there in the key, in words', () => {
    const shown = shownOn(line(600))
    for (const kind of [
      'line post',
      'end post',
      'corner post',
      'gate post',
      'brace post',
      'hole',
      'bay with a brace',
    ])
      expect(shown).toContain(kind)
    expect(shownOn(item('s1', 600))).not.toContain('brace post')
  })

  test('are drawn but for the line posts where they would run into one another, and that is said', () => {
    const long = notebookWith({
      ...heronBank,
      line: { stations: [{ at: '0 m' }, { at: '2000 m' }] },
      sections: [{ ...heronBank.sections[0], to: '2000 m', measured: [] }],
      gates: [],
    }).notebook
    const drawing = lineDrawing(long, { widthUnits: 320, words: drawingWords(long) })
    expect(uprights(drawing)).toHaveLength(2)
    expect(shownOn(drawing).join(' ')).toMatch(/\d+ line posts stand too close to draw here/)
  })
})

describe('the dimensions', () => {
  /** "1.864 m" and "3 × 2 m" as metres; a clear opening besides. */
  const metres = (text: string) => {
    const match = /^(?:(\d+) × )?(\d+(?:\.\d+)?) m( clear)?$/.exec(text)
    return match ? Number(match[1] ?? 1) * Number(match[2]) : undefined
  }
  const figuresBetween = (drawing: Drawing, above: string) => {
    // The row of bays and openings stands between the stations and the section's own length.
    const rows = textsOf(drawing).map((shape) => ({ ...shape, text: plain(shape.text) }))
    const whole = rows.find(({ text }) => text === above)
    const clear = rows.find(({ text }) => / clear$/.test(text))
    if (whole === undefined) throw new Error(`no ${above}`)
    return rows
      .filter(({ at, anchor }) => anchor === 'middle' && at.y < whole.at.y && at.y > whole.at.y - 40)
      .filter(
        ({ text, ink }) =>
          metres(text) !== undefined && ink === 'ink' && (clear === undefined || text !== ''),
      )
  }

  test('of bays, openings and half posts add up to the section', () => {
    const sheets = itemSheets(notebook, found, 's2', { widthUnits: 900, words })
    const [sheet] = sheets
    if (sheet === undefined) throw new Error('no sheet')
    const figures = figuresBetween(sheet, '20 m')
    const sum = figures.reduce((total, { text }) => total + (metres(text) ?? 0), 0)
    // Half a post of 60.3 mm stands on each side of the opening. Figures are to the millimetre, so each may be half of one off.
    expect(Math.abs(sum + 0.0603 - 20)).toBeLessThanOrEqual(0.0005 * figures.length)
    expect(figures.length).toBeGreaterThanOrEqual(10)
  })

  test('of the sections and of the whole line stand under the plan', () => {
    const shown = shownOn(line(600))
    expect(shown.filter((text) => text === '20 m')).toHaveLength(2)
    expect(shown).toContain('8 m')
    expect(shown.filter((text) => text === '48 m').length).toBeGreaterThanOrEqual(2)
  })

  test('of alike bays become one where each would be too narrow for its figure', () => {
    const many = notebookWith({
      ...heronBank,
      line: { stations: [{ at: '0 m' }, { at: '200 m' }] },
      sections: [{ ...heronBank.sections[0], to: '200 m', measured: [] }],
      gates: [],
    }).notebook
    const drawing = itemDrawing(many, takeOff(many), 's1', { widthUnits: 320, words: drawingWords(many) })
    if (drawing === undefined) throw new Error('no drawing')
    const gathered = shownOn(drawing).flatMap((text) => {
      const match = /^(\d+) × 2\.381 m$/.exec(text)
      return match ? [Number(match[1])] : []
    })
    // 200 m in bays of at most 2.4 m are 84.
    expect(gathered.reduce((sum, count) => sum + count, 0)).toBe(84)
  })

  test('end in oblique ticks, and the lines are thin', () => {
    const drawing = line(600)
    const ticks = drawing.shapes.filter(
      (shape) =>
        shape.kind === 'polyline' &&
        shape.stroke.width === 0.9 &&
        (shape.points[1]?.y ?? 0) - (shape.points[0]?.y ?? 0) === -5 &&
        (shape.points[1]?.x ?? 0) - (shape.points[0]?.x ?? 0) === 5,
    )
    // Ends of three sections and of the whole line.
    expect(ticks).toHaveLength(6)
  })
})

describe('from above', () => {
  test('the stated error is a band about the line, as much wider than to scale as the setbacks are', () => {
    const drawing = line(600)
    const { millimetresPerUnit, setbacksDrawnWider } = drawing.scale
    const edges = drawing.shapes.filter(
      (shape) =>
        shape.kind === 'polyline' &&
        shape.stroke.dash?.join() === '4,2.5' &&
        shape.points[0]?.x === 10 &&
        (shape.points[1]?.x ?? 0) > 500,
    )
    const [upper, lower] = edges.map((shape) => (shape.kind === 'polyline' ? (shape.points[0]?.y ?? 0) : 0))
    expect((((lower ?? 0) - (upper ?? 0)) * millimetresPerUnit) / setbacksDrawnWider).toBeCloseTo(100, 6)
    expect(shownOn(drawing)).toContain('the line may lie 5 cm to either side')
  })

  test('a line that turns stands once more as it runs, both ways to scale', () => {
    const shown = shownOn(line(600))
    expect(shown).toContain('With its turns, to scale')
    expect(shown).toEqual(expect.arrayContaining(['35° at 14 m', '60° at 27 m']))
    const straight = notebookWith({
      ...heronBank,
      line: {
        ...heronBank.line,
        stations: heronBank.line.stations.map(({ angle: _, ...station }) => station),
      },
    }).notebook
    const flat = lineDrawing(straight, { widthUnits: 600, words })
    expect(shownOn(flat)).not.toContain('With its turns, to scale')
  })

  test('holes are circles where both directions are to one scale, and as much stretched as is said elsewhere', () => {
    const sheet = itemSheets(notebook, found, 's2', { widthUnits: 900, words })[0]
    const post = builtFence(found).posts.find(({ at }) => at === 22500)
    if (sheet === undefined || post === undefined) throw new Error('no sheet or no post')
    const { millimetresPerUnit, setbacksDrawnWider } = sheet.scale
    const oval = sheet.shapes.find((shape) => shape.kind === 'polygon' && shape.points.length === 32)
    if (oval?.kind !== 'polygon') throw new Error('no hole')
    const spread = (of: (point: { x: number; y: number }) => number) =>
      Math.max(...oval.points.map(of)) - Math.min(...oval.points.map(of))
    expect(spread(({ x }) => x) * millimetresPerUnit).toBeCloseTo(250, 6)
    expect((spread(({ y }) => y) * millimetresPerUnit) / setbacksDrawnWider).toBeCloseTo(250, 6)
  })

  test('both leaves of a double gate swing, each half as wide as the opening', () => {
    const sheet = itemSheets(notebook, found, 'g1', { widthUnits: 600, words })[0]
    const arcs = (sheet?.shapes ?? []).filter((shape) => shape.kind === 'arc')
    expect(arcs).toHaveLength(4)
    for (const arc of arcs) expect(arc.radius * (sheet?.scale.millimetresPerUnit ?? 0)).toBeCloseTo(1500, 6)
  })
})

describe('from the side', () => {
  test('a height limit is a dashed line at its height, and the key tells who said so', () => {
    const drawing = line(600)
    const limits = drawing.shapes.filter(
      (shape) =>
        shape.kind === 'polyline' && shape.stroke.dash?.join() === '7,3.5' && shape.points.length > 1,
    )
    // One over the lower ground, two over each household's own, and the sign in the key.
    expect(limits).toHaveLength(4)
    const shown = shownOn(drawing).join(' ')
    expect(shown).toContain(
      'Limit 1: 2 m over the lower ground, from 0 m to 20 m. Said by permit desk of Oldmere on 3 February 2027',
    )
    expect(shown).toContain(
      'Limit 2: 1.5 m over each household’s own ground, from 30 m to the end. Said by nobody named',
    )
  })

  test('both grounds are drawn, told apart by dashes as well as by colour', () => {
    const grounds = line(600).shapes.filter(
      (shape) => shape.kind === 'polyline' && shape.stroke.width === 1.6 && shape.points.length > 2,
    )
    expect(
      grounds.map(
        (shape) => shape.kind === 'polyline' && [shape.stroke.ink, shape.stroke.dash === undefined],
      ),
    ).toEqual([
      ['a', true],
      ['b', false],
    ])
  })
})

describe('the names of parts', () => {
  test('are there for every section, gate, station and post, and each is told once', () => {
    const { parts } = line(248)
    expect(parts.map(({ of }) => `${of.kind} ${of.index}`)).toEqual([
      'section 0',
      'section 1',
      'section 2',
      'gate 0',
      'gate 1',
      ...found.posts.map((_, index) => `post ${index}`),
      'station 0',
      'station 1',
      'station 2',
      'station 3',
    ])
    expect(parts.every(({ name }) => name.length > 8)).toBe(true)
    const third = parts.find(({ of }) => of.kind === 'post' && of.index === 2)
    expect(plain(third?.name ?? '')).toBe(
      'Post 3 of Section 1: Lane side, line post at 4.9 m, hole 0.25 m wide and 0.6 m deep, it can’t be told whether it reaches across the line, measured on site',
    )
  })

  test('have boxes that a finger hits, inside the drawing and, among their own kind, beside one another', () => {
    for (const drawing of [line(248), line(600), item('s1', 248), item('g1', 248)]) {
      for (const { boxes } of drawing.parts)
        for (const { x, y, width, height } of boxes) {
          expect(width >= leastTarget && height >= leastTarget).toBe(true)
          expect(x >= 0 && y >= 0 && x + width <= drawing.width + 0.01 && y + height <= drawing.height).toBe(
            true,
          )
        }
    }
  })
})

describe('whatever a build-up says', () => {
  const length = fc.oneof(
    fc.constant(''),
    fc
      .tuple(fc.integer({ min: 0, max: 99999 }), fc.constantFrom('mm', 'ft', 'in', 'm'))
      .map(([size, unit]) => `${size} ${unit}`),
  )
  const near = fc.oneof(
    length,
    fc.integer({ min: 0, max: 60 }).map((size) => `${size} m`),
  )
  const side = fc.constantFrom('', 'a', 'b')
  const special = fc.record({
    outside: length,
    hole: length,
    depth: length,
    brace: fc.record({ span: near }),
  })
  const made = fc.record({
    units: fc.constantFrom('ft-in', 'metric'),
    line: fc.record({
      error: length,
      limits: fc.array(
        fc.record({
          from: near,
          to: near,
          limit: length,
          measuredFrom: fc.constantFrom('', 'a', 'b', 'higher', 'lower'),
        }),
        { maxLength: 3 },
      ),
      stations: fc.array(
        fc.record({
          at: near,
          setback: fc.record({ side, distance: length }),
          gradeA: length,
          gradeB: length,
          angle: fc.record({ degrees: fc.constantFrom('', '0', '12.5', '90', '179', '270'), toward: side }),
        }),
        { maxLength: 5 },
      ),
    }),
    sections: fc.array(
      fc.record({
        from: near,
        to: near,
        height: fc.record({ agreed: length, measuredFrom: fc.constantFrom('', 'a', 'b', 'higher', 'lower') }),
        buildUp: fc.record({
          slope: fc.constantFrom('', 'raked', 'stepped'),
          // No spacing under half a metre: a line of a hundred kilometres would have more posts than a test has time for.
          posts: fc.record({
            outside: length,
            spacing: fc.constantFrom('', '700 m', '3000 m', '900 m'),
            hole: length,
            depth: length,
          }),
          endPosts: special,
          gatePosts: special,
          cornerPosts: special,
          rails: fc.record({ count: fc.constantFrom('', '2'), outside: length }),
        }),
        measured: fc.array(fc.record({ post: fc.constantFrom('1', '2', '9'), at: near, depth: length }), {
          maxLength: 2,
        }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    gates: fc.array(
      fc.record({
        at: near,
        opening: near,
        opens: fc.constantFrom('', 'both ways', 'toward household a'),
        buildUp: fc.record({
          leaves: fc.constantFrom('', '1', '2', '5'),
          leafHeight: length,
          clearances: fc.record({ hinge: length, ground: length }),
          header: fc.record({ clear: length, outside: length }),
        }),
      }),
      { maxLength: 4 },
    ),
  })

  test('no drawing of it throws, leaves its box or has two texts on one another', () => {
    let drawn = 0
    fc.assert(
      fc.property(made, fc.constantFrom(200, 320, 504), (more, width) => {
        const read = notebookWith({
          ...more,
          sections: more.sections.map((one, index) => ({
            ...one,
            id: `s${index}`,
            share: { together: { principle: 'equal' } },
          })),
          gates: more.gates.map((one, index) => ({
            ...one,
            id: `g${index}`,
            share: { together: { principle: 'equal' } },
          })),
        }).notebook
        const texts = drawingWords(read)
        const worked = takeOff(read)
        const drawings = [
          lineDrawing(read, { widthUnits: width, words: texts, takeOff: worked }),
          ...['s0', 's1', 's2', 's3', 'g0', 'g1', 'g2', 'g3'].flatMap(
            (id) => itemDrawing(read, worked, id, { widthUnits: width, words: texts }) ?? [],
          ),
        ]
        drawn += drawings.filter(({ parts }) => parts.some(({ of }) => of.kind === 'post')).length
        for (const drawing of drawings) {
          expect(Number.isFinite(drawing.height)).toBe(true)
          expect(outside(drawing)).toEqual([])
          expect(overlapping(drawing)).toEqual([])
        }
      }),
      { numRuns: 100, seed: 20271125 },
    )
    // The property is of drawings with posts, not of empty ones.
    expect(drawn).toBeGreaterThan(100)
  })
})
