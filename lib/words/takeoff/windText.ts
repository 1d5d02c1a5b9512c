import type { Notebook } from '../../core/agreement/notebook.ts'
import type { DepthRule } from '../../core/takeoff/depthRules.ts'
import type { WindLack } from '../../core/takeoff/siteFigures.ts'
import type { CatchesWind, WindCheck } from '../../core/takeoff/windCheck.ts'
import { lengthWords } from '../length.ts'
import { askedDepthWords, plainFigure } from './figures.ts'
import { windStepText } from './windStepText.ts'

/**
 * The look at wind and posts in words, for screens and paper alike. `check` is one of `takeOff(notebook).wind`, which has
 * one for each section with a build-up. The outcome is never shown without `windCaution`.
 */

/** What comes out, in one to three sentences. */
export function windOutcome(notebook: Notebook, check: WindCheck): string {
  const { units } = notebook
  if (check.outcome === 'cannot tell' || !check.needed || !check.depth)
    return `This look can’t tell yet. Still to be said: ${windLacks(check).join('; ')}.`
  const asked = `By this look the line posts need holes ${askedDepthWords(check.needed, check.depth, units)} deep. The shallowest is ${lengthWords(check.depth, units)} deep.`
  return check.outcome === 'shortfall'
    ? `${asked} Have the fence designed by a licensed engineer before you build it.`
    : `${asked} This look finds no shortfall. It is no approval.`
}

/** Shown with every outcome. */
export const windCaution =
  'This is a rough look at the line posts. It is no design and no approval. Local codes and a licensed engineer come first. Strips, boards and vines take far more wind than open mesh. Have the fence designed by a licensed engineer if you add them, or if this look falls short.'

/** What still has to be said, each as a few words; empty where nothing is missing. */
export function windLacks({ lacks }: Pick<WindCheck, 'lacks'>): readonly string[] {
  return [...new Set(lacks.map(({ what }) => lackWords[what]))]
}

export function lackText(what: WindLack): string {
  return lackWords[what]
}

/** How it came about, each step a sentence that can be redone with a pencil; as far as it could be reckoned. */
export function windWorkings(notebook: Notebook, { steps }: WindCheck): readonly string[] {
  return steps.map((step) => windStepText(step, notebook.units))
}

/** For boards and strips in the infill, each a sentence; empty where there are none. */
export function windCatching(check: WindCheck): readonly string[] {
  const kinds = new Map(check.catches.map((one) => [one.kind, one]))
  return [...kinds.values()].map(catchesText)
}

export function catchesText({ kind, times }: Pick<CatchesWind, 'kind' | 'times'>): string {
  const what = kind === 'board' ? 'boards' : 'strips'
  const much = times === undefined ? '1' : plainFigure(times, 1)
  return much === '1'
    ? `The ${what} take far more wind than open mesh.`
    : `With the ${what} the wind pushes ${much} times as hard as without them.`
}

/** A row of a table: what people dig without reckoning, how deep that is, and whether the holes reach it. */
export type DepthRow = { readonly rule: string; readonly depth: string; readonly reached: string }

/**
 * Common practice and frost, beside the look; the rule for chain-link fence where the infill is a mesh. Titles: "Rule",
 * "Depth", "Holes as planned".
 */
export function depthRows(notebook: Notebook, check: WindCheck): readonly DepthRow[] {
  const { frost } = notebook.line.site
  const infill = notebook.sections[check.item.index]?.buildUp?.infill ?? []
  const ofMesh = infill.some(
    ({ kind, what }) => kind === 'roll' || kind === 'strip' || /mesh|wire|link/i.test(what),
  )
  const rules = check.rules.filter(({ rule }) => rule !== 'chain link' || ofMesh)
  return rules.map(({ rule, depth, reached }) => ({
    rule:
      rule === 'frost' && frost.saidBy.trim() !== ''
        ? `Frost, as said by ${frost.saidBy.trim()}`
        : ruleWords[rule],
    depth: lengthWords(depth, notebook.units),
    reached: reached === undefined ? 'not said yet' : reached ? 'reach it' : 'do not reach it',
  }))
}

/** Shown with `depthRows`. */
export const depthRulesCaution =
  'These are rules of thumb and no design. Wind and soil often ask for far more.'

/** Whether the holes reach below the frost; empty where nothing is said of frost. */
export function frostSentence(notebook: Notebook, { rules }: WindCheck): string {
  const frost = rules.find(({ rule }) => rule === 'frost')
  if (frost === undefined || frost.reached === undefined) return ''
  const by = notebook.line.site.frost.saidBy.trim()
  return `The frost goes ${lengthWords(frost.depth, notebook.units)} deep${by === '' ? '' : `, as said by ${by}`}. ${frost.reached ? 'All holes go as deep.' : 'Some holes do not go as deep.'}`
}

export const depthRuleTitles = { rule: 'Rule', depth: 'Depth', reached: 'Holes as planned' } as const

const ruleWords: Readonly<Record<DepthRule['rule'], string>> = {
  'two feet': 'At least 2 ft for a fence of up to 6 ft (common practice)',
  'third of height': 'A third of the height (common practice)',
  'chain link': 'ASTM F567, for line posts of chain-link fence',
  frost: 'Frost',
}

const lackWords: Readonly<Record<WindLack, string>> = {
  'wind speed': 'the wind speed of the place',
  'wind unit': 'the unit of the wind speed',
  exposure: 'how open the place is to the wind',
  'soil value': 'what the soil bears sideways',
  'soil unit': 'the unit of what the soil bears',
  bays: 'where the section runs and how far apart its posts stand',
  height: 'the agreed height',
  'solid share': 'how much of the infill stops the wind',
  'post width': 'the size of the posts',
  'hole depth': 'how deep the holes are',
}
