import type { Notebook } from '../../core/agreement/notebook.ts'
import type { Millimetres } from '../../core/amounts/length.ts'
import type { Ratio } from '../../core/amounts/ratio.ts'
import type { Finding } from '../../core/takeoff/finding.ts'
import type { GateTakeOff } from '../../core/takeoff/gateQuantities.ts'
import type { HeightSeen, LimitHeld } from '../../core/takeoff/heightsSeen.ts'
import { offCentre } from '../../core/takeoff/measuredPosts.ts'
import type { ItemAt } from '../../core/takeoff/postLayout.ts'
import type { Quantity } from '../../core/takeoff/quantity.ts'
import type { ShopWork } from '../../core/takeoff/shopWork.ts'
import type { TakeOff } from '../../core/takeoff/takeOff.ts'
import type { WindCheck } from '../../core/takeoff/windCheck.ts'
import { lengthWords } from '../length.ts'
import {
  areaWords,
  forceWords,
  millimetresFigure,
  momentWords,
  percentWords,
  weightWords,
} from './figures.ts'
import { findingText } from './findingText.ts'
import { limitSentence } from './heightText.ts'
import { jointSentences } from './jointText.ts'
import { memberText, quantityText } from './quantityText.ts'
import { stepText } from './stepText.ts'
import { depthRows, lackText, windCatching, windCaution, windOutcome, windWorkings } from './windText.ts'

/** A length for machines and for people: millimetres to the sixth digit, and words in the notebook's units. */
export type LengthFigure = { readonly millimetres: number; readonly text: string }

/** What `npm run -s takeoff -- FILE` prints, besides the cut plans. Plain data. */
export function takeOffFile(notebook: Notebook, takeOff: TakeOff) {
  const figures = figuresFor(notebook)
  const { long, idOf } = figures
  return {
    units: notebook.units,
    posts: takeOff.posts.map((built, index) => {
      const { post, size, piece } = built
      const setback = takeOff.setbacks.posts[index]
      return {
        post: index + 1,
        item: idOf(post.item),
        kind: post.kind,
        what: memberText(size.member, 'post'),
        at: long(post.at),
        ...(post.measured
          ? { planned: long(post.planned), offCentre: long(offCentre(post)), why: post.measured.why }
          : {}),
        hole: long(size.hole),
        depth: long(piece.depth),
        ...(size.bracing === '' ? {} : { bracing: size.bracing }),
        piece: piece.length ? long(piece.length) : null,
        setback: setback?.setback ? long(setback.setback) : null,
        standsOn: setback?.standsOn ?? 'cannot tell',
        holeCrossesLine: setback?.crosses ?? 'cannot tell',
      }
    }),
    pieces: takeOff.cutJobs.flatMap(({ member, pieces }) =>
      pieces.map(({ item, part, length, count }) => ({
        item: idOf(item),
        part,
        what: memberText(member, part),
        length: long(length),
        count,
      })),
    ),
    quantities: takeOff.quantities.map((quantity) => quantityFile(quantity, figures)),
    weights: {
      total: weightWords(takeOff.weights.kilograms, notebook.units),
      reclaimed: weightWords(takeOff.weights.reclaimedKilograms, notebook.units),
      reclaimedShare: percentWords(takeOff.weights.reclaimedShare),
      withoutWeight: takeOff.weights.unknown,
    },
    gates: takeOff.gates.map((gate) => gateFile(gate, figures)),
    work: takeOff.sections.map(({ work }) => workFile(work, figures)),
    setbacks: {
      landOnTheOtherSide: {
        a: areaWords(takeOff.setbacks.strips.a, notebook.units),
        b: areaWords(takeOff.setbacks.strips.b, notebook.units),
      },
    },
    heights: takeOff.heights.map((seen) => heightFile(seen, figures)),
    limits: takeOff.limits.map((held) => limitFile(held, figures)),
    wind: takeOff.wind.map((check) => windFile(check, figures)),
    findings: takeOff.findings.map((finding) => findingFile(notebook, finding, figures)),
  }
}

type Figures = {
  readonly notebook: Notebook
  readonly long: (length: Millimetres) => LengthFigure
  readonly idOf: (item: ItemAt) => string
}

export function figuresFor(notebook: Notebook): Figures {
  return {
    notebook,
    long: (length) => ({ millimetres: millimetresFigure(length), text: lengthWords(length, notebook.units) }),
    idOf: ({ list, index }) => notebook[list][index]?.id ?? '',
  }
}

function quantityFile(quantity: Quantity, { notebook, idOf }: Figures) {
  return {
    item: idOf(quantity.item),
    part: quantity.part,
    what: quantityText(quantity.name),
    quantity: quantity.quantity,
    unit: quantity.unit,
    weight: quantity.kilograms === undefined ? null : weightWords(quantity.kilograms, notebook.units),
    reclaimed: quantity.reclaimed,
    workings: quantity.workings.map((step) => stepText(step, notebook.units)),
  }
}

function gateFile({ item, leaf, frame }: GateTakeOff, { notebook, long, idOf }: Figures) {
  const { units } = notebook
  return {
    item: idOf(item),
    opening: long(leaf.opening),
    leaves: leaf.leaves,
    width: leaf.width ? long(leaf.width) : null,
    height: leaf.height ? long(leaf.height) : null,
    brace: frame?.brace ? { kind: frame.brace.kind, length: long(frame.brace.length) } : null,
    leafWeight: frame?.kilograms === undefined ? null : weightWords(frame.kilograms, units),
    hingePull: frame?.pull
      ? {
          moment: momentWords(frame.pull.newtonMetres, units),
          atEachHinge:
            frame.pull.newtonsAtHinge === undefined ? null : forceWords(frame.pull.newtonsAtHinge, units),
        }
      : null,
    header: leaf.header ? { clear: long(leaf.header.clear), length: long(leaf.header.length) } : null,
    swings: leaf.swings.map(({ toward, rise, over }) => ({
      toward,
      groundRises: long(rise),
      overLandOf: over ?? 'cannot tell',
    })),
  }
}

function workFile(work: ShopWork, { notebook, long, idOf }: Figures) {
  const { heat, places } = work
  return {
    item: idOf(work.item),
    joints: work.joints,
    saddles: work.saddles,
    splices: work.splices,
    weldLength: long(work.weldLength),
    paintedArea: areaWords(work.paintedArea, notebook.units),
    caps: work.caps,
    weepHoles: work.weepHoles,
    heat: heat
      ? {
          run: long(heat.run),
          fahrenheitRange: heat.fahrenheitRange,
          movement: long(heat.movement),
          slipJoints: heat.slipJoints ?? null,
        }
      : null,
    slipJoints: places.slips.map(({ from, to, posts, withoutPost }) => ({
      from: long(from),
      to: long(to),
      posts: posts.map((post) => post + 1),
      withoutPost,
    })),
    splicesAt: places.splices.map(({ at, rails, between }) => ({
      at: long(at),
      rails,
      between: between.map((post) => post + 1),
    })),
    mitres: places.mitres.map(({ post, turn, cutDegrees, longer, ends }) => ({
      post: post + 1,
      turn,
      cutDegrees,
      longer: long(longer),
      ends,
    })),
    joining: jointSentences(notebook, work),
  }
}

function heightFile(seen: HeightSeen, { long }: Figures) {
  const [[place, index] = ['', 0]] = Object.entries(seen.place)
  return { at: long(seen.at), [place]: index + 1, a: long(seen.a), b: long(seen.b) }
}

function limitFile(held: LimitHeld, { notebook, long }: Figures) {
  const { index, from, limit, at, height, over } = held
  return {
    limit: index + 1,
    allowed: long(limit),
    measuredFrom: from,
    saidBy: notebook.line.limits[index]?.saidBy ?? '',
    on: notebook.line.limits[index]?.on ?? '',
    highest: long(height),
    at: long(at),
    over,
    text: limitSentence(notebook, held),
  }
}

function windFile(check: WindCheck, { notebook, long, idOf }: Figures) {
  return {
    item: idOf(check.item),
    outcome: check.outcome,
    text: windOutcome(notebook, check),
    caution: windCaution,
    depth: check.depth ? long(check.depth) : null,
    needed: check.needed ? long(check.needed) : null,
    missing: check.lacks.map(({ path, what }) => ({ path, text: lackText(what) })),
    workings: windWorkings(notebook, check),
    catches: windCatching(check),
    rules: depthRows(notebook, check),
  }
}

function findingFile(notebook: Notebook, finding: Finding, { long }: Figures) {
  const numbers = Object.entries(finding).flatMap(([key, value]) =>
    isLength(value) ? [[key, long(value)]] : [],
  )
  return {
    path: finding.path,
    kind: finding.kind,
    text: findingText(notebook, finding),
    numbers: Object.fromEntries(numbers) as Record<string, LengthFigure>,
  }
}

function isLength(value: unknown): value is Ratio {
  return value !== null && typeof value === 'object' && 'over' in value && 'under' in value
}
