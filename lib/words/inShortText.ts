import type { Notebook } from '../core/agreement/notebook.ts'
import { minorUnits } from '../core/amounts/money.ts'
import { households } from '../core/people/household.ts'
import { digitsOf } from '../core/shares/statement.ts'
import { householdName } from './labels.ts'
import { moneyWords } from './money.ts'
import { spokenList, typedSentence } from './summary/names.ts'

export const inShortLabel = 'On these conditions'

/** In the place of the sums; what stands in the way is named among what is still open. */
export const sharesWait = 'What each household is asked for can’t be worked out yet.'

/** Before a revision is put up: the heading of what stands in the place of its standing. */
export const inShortOfDraft = 'What is to be signed, in short'

/** One condition in a line; `more` is what it counts, to be read where somebody wants to. */
export type Condition = { readonly text: string; readonly more?: readonly string[] }

/**
 * The conditions of an agreement in a line each, beside its sums: what stands, the caps, what is agreed about money and hours, on
 * what there are terms, and what nobody has answered yet. The whole of it is in the agreement below.
 */
export function conditionLines(notebook: Notebook): Condition[] {
  const { sections, gates, terms, decisions, arrangements, checks, closing } = notebook
  const open = checks.filter((check) => !check.done).length
  return [
    `The fence: ${spokenList([count(sections.length, 'section', 'sections'), count(gates.length, 'gate', 'gates')])}.`,
    capLine(notebook),
    arrangements === undefined ? '' : arrangementLine(arrangements),
    terms.length === 0
      ? 'No terms are written down.'
      : {
          text: `${count(terms.length, 'term', 'terms')} in words`,
          more: terms.map(({ topic, text }) => topic.trim() || shortened(text)),
        },
    decisions.length === 0 ? '' : `${count(decisions.length, 'decision', 'decisions')} written down.`,
    closing === undefined ? '' : 'How the fence came out, and who keeps it up.',
    open === 0 ? '' : `${count(open, 'question', 'questions')} under “Ask first” without an answer yet.`,
  ].flatMap((line) => (typeof line !== 'string' ? [line] : line === '' ? [] : [{ text: line }]))
}

function capLine(notebook: Notebook): string {
  const caps = households.flatMap((household) => {
    const cap = notebook.caps[household]
    if (cap === undefined) return []
    const most = moneyWords(minorUnits(cap, digitsOf(notebook)), notebook.currency)
    return [`${householdName(notebook, household)} is asked for at most ${most}`]
  })
  return caps.length === 0 ? 'No cap on what a household can be asked for.' : `Caps: ${caps.join(', ')}.`
}

function arrangementLine({ rates, tolerance, instalments }: NonNullable<Notebook['arrangements']>): string {
  const rated = [rates.skilled, rates.plain].filter((rate) => rate !== undefined && rate.rate !== '').length
  const parts = [
    rated === 0 ? '' : count(rated, 'agreed rate for an hour of work', 'agreed rates for an hour of work'),
    tolerance === '' ? '' : `a tolerance of ${tolerance} percent`,
    instalments === undefined ? '' : count(instalments.parts.length, 'instalment', 'instalments'),
  ].filter((part) => part !== '')
  return parts.length === 0 ? '' : `Money and hours: ${spokenList(parts)}.`
}

function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`
}

/** A term without a topic is told by its beginning. */
function shortened(text: string): string {
  const whole = typedSentence(text).replace(/\.$/, '')
  return whole.length > 40 ? `${whole.slice(0, 39).trimEnd()}…` : whole
}
