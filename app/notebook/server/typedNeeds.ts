import { type Need, needKindOf, needWeights } from '../../../lib/core/agreement/needs.ts'
import { needKinds } from '../../../lib/core/agreement/notebook.ts'
import { isObject } from '../../../lib/forms/readNotebook.ts'
import {
  longestNeedNote,
  longestOwnNeed,
  mostOwnNeeds,
  needFaults,
  needText,
} from '../../../lib/words/needText.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { typedText } from './typedText.ts'

type Typed = { readonly needs: readonly Need[]; readonly faults: readonly Fault[] }

/** The form in which a household says what it needs: the six kinds by name, and rows in its own words. */
export function typedNeeds(draft: Record<string, unknown>): Typed {
  const kinds = isObject(draft.kinds) ? draft.kinds : {}
  const six = needKinds.map((kind) => typedKind(kind, isObject(kinds[kind]) ? kinds[kind] : {}))
  const rows = Array.isArray(draft.own) ? draft.own : []
  const own = rows
    .slice(0, mostOwnNeeds)
    .map((row, at) => typedOwn(isObject(row) ? row : {}, at, rows.slice(0, at)))
  const needs = [...six, ...own].flatMap((one) => one.needs)
  const faults = [...six, ...own].flatMap((one) => one.faults)
  if (rows.length > mostOwnNeeds) return { needs, faults: [...faults, fault('own', needFaults.tooMany)] }
  const said = needs.length > 0 || faults.length > 0
  return { needs, faults: said ? faults : [fault('own', needFaults.nothing)] }
}

/** What a household said, as its form shows it again. */
export function needsDraft(needs: readonly Need[]): object {
  const kinds = needKinds.map((kind) => {
    const said = needs.find(({ need }) => need === kind)
    return [kind, { weight: said?.weight ?? '', words: said?.words ?? '' }]
  })
  const own = needs.filter(({ need }) => needKindOf(need) === undefined)
  return {
    kinds: Object.fromEntries(kinds),
    own: own.map(({ need, weight }) => ({ words: need, weight })),
  }
}

function typedKind(kind: string, typed: Record<string, unknown>): Typed {
  const [weight, words] = [weightOf(typed.weight), typedText(typed.words)]
  const at = `kinds.${kind}`
  if (words.length > longestNeedNote) return wrong(fault(`${at}.words`, needFaults.noteTooLong(words.length)))
  if (weight === undefined) return words === '' ? nothing : wrong(fault(`${at}.weight`, needFaults.unmeant))
  return { needs: [{ need: kind, weight, words }], faults: [] }
}

function typedOwn(typed: Record<string, unknown>, at: number, above: readonly unknown[]): Typed {
  const [weight, need] = [weightOf(typed.weight), typedText(typed.words)]
  const place = `own[${at}]`
  const known = needKinds.some((kind) => sameWords(kind, need) || sameWords(needText(kind), need))
  const twice = above.some((row) => isObject(row) && sameWords(typedText(row.words), need))
  const faults = [
    ...(need === '' ? [fault(`${place}.words`, needFaults.words)] : []),
    ...(need.length > longestOwnNeed
      ? [fault(`${place}.words`, needFaults.ownTooLong(need.length))]
      : known
        ? [fault(`${place}.words`, needFaults.ofTheSix)]
        : need !== '' && twice
          ? [fault(`${place}.words`, needFaults.twice)]
          : []),
    ...(weight === undefined ? [fault(`${place}.weight`, needFaults.weight)] : []),
  ]
  return weight === undefined || faults.length > 0
    ? { needs: [], faults }
    : { needs: [{ need, weight, words: '' }], faults }
}

const nothing: Typed = { needs: [], faults: [] }

function wrong(fault: Fault): Typed {
  return { needs: [], faults: [fault] }
}

function fault(path: string, message: string): Fault {
  return { path, message }
}

function weightOf(value: unknown) {
  return needWeights.find((weight) => weight === value)
}

function sameWords(one: string, other: string): boolean {
  return one.toLocaleLowerCase('en-US') === other.toLocaleLowerCase('en-US')
}
