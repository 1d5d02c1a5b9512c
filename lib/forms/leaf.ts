import { z } from 'zod'
import { isCalendarDay } from '../core/amounts/calendarDay.ts'
import { isNumber } from '../core/amounts/typedNumber.ts'
import { parseLength } from '../core/amounts/length.ts'
import { percentInRange } from '../core/shares/percent.ts'
import type { FaultFacts, ValueKind } from '../core/faults.ts'

/** A zod issue that carries one of our faults: the facts travel beside the issue, the sentence is made elsewhere. */
export function faultIssue(facts: FaultFacts, path: (string | number)[] = []) {
  return { code: 'custom' as const, message: facts.kind, params: { facts }, path, input: undefined }
}

/**
 * A leaf of the file: reads one value or reports one fault. zod walks lists and objects; what a value may be is said by
 * the core.
 */
function leaf<Value>(read: (found: unknown, report: (facts: FaultFacts) => void) => Value | undefined) {
  return z.unknown().optional().transform((found, context) => {
    const facts: FaultFacts[] = []
    const value = read(found, (fact) => facts.push(fact))
    for (const fact of facts) context.issues.push(faultIssue(fact))
    return facts.length > 0 ? z.NEVER : (value as Value)
  })
}

type Leaf<Value> = ReturnType<typeof leaf<Value>>

type Missing = 'needed' | 'may be missing'

/** A string leaf with a default of '' where it may be missing, and a check of what was typed. */
function typed(what: ValueKind, missing: Missing, check: (text: string) => FaultFacts | undefined, empty = missing) {
  return leaf<string>((found, report) => {
    if (found === undefined) {
      if (missing === 'needed') report({ kind: 'needed', what })
      return ''
    }
    if (typeof found !== 'string') {
      report({ kind: 'not-a', what, found: shown(found) })
      return ''
    }
    if (found === '') {
      if (empty === 'needed') report({ kind: 'needed', what })
      return ''
    }
    const fault = check(found)
    if (fault) report(fault)
    return found
  })
}

/** A found value for a message, short. */
export function shown(found: unknown): string {
  const text = typeof found === 'string' ? found : (JSON.stringify(found) ?? String(found))
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}

export const text = typed('text', 'may be missing', () => undefined)
export const neededText = typed('text', 'needed', () => undefined)

export function number(missing: Missing, fractionDigits = 6, empty: Missing = 'needed') {
  return typed('number', missing, (found) => numberFault(found, fractionDigits), empty)
}

function numberFault(found: string, fractionDigits: number): FaultFacts | undefined {
  return isNumber(found, fractionDigits) ? undefined : { kind: 'number-form', found, fractionDigits }
}

export function money(currency: string, digits: number, missing: Missing) {
  const check = (found: string): FaultFacts | undefined => {
    if (isNumber(found, digits)) return undefined
    return isNumber(found, 1000) ? { kind: 'money-digits', found, currency, digits } : numberFault(found, digits)
  }
  return typed('money', missing, check, 'needed')
}

function percentFault(found: string): FaultFacts | undefined {
  if (!isNumber(found, 4)) return { kind: 'number-form', found, fractionDigits: 4 }
  return percentInRange(found) ? undefined : { kind: 'percent-range', found }
}

export const neededPercent = typed('percent', 'needed', percentFault)

/** Missing is 0, and reads as '0'. */
export const taxPercent = leaf<string>((found, report) => {
  if (found === undefined) return '0'
  if (typeof found !== 'string') report({ kind: 'not-a', what: 'percent', found: shown(found) })
  else {
    const fault = percentFault(found)
    if (fault) report(fault)
    return found
  }
  return '0'
})

export function length(missing: Missing, mayBeNegative = false) {
  return typed('length', missing, (found) => {
    const size = parseLength(found)
    if (size === undefined) return { kind: 'length-form', found, mayBeNegative }
    return size.over < 0n && !mayBeNegative ? { kind: 'length-negative', found } : undefined
  })
}

export function date(mayBeEmpty: boolean) {
  const missing = mayBeEmpty ? 'may be missing' : 'needed'
  return typed('date', missing, (found) =>
    isCalendarDay(found) ? undefined : { kind: 'date-form', found, mayBeEmpty },
  )
}

/** One of a fixed set; where it may be missing, '' is "not said yet". */
export function choice<const Choice extends string>(allowed: readonly Choice[], missing: 'needed'): Leaf<Choice>
export function choice<const Choice extends string>(allowed: readonly Choice[], missing: Missing): Leaf<Choice | ''>
export function choice<const Choice extends string>(allowed: readonly Choice[], missing: Missing): Leaf<Choice | ''> {
  return leaf<Choice | ''>((found, report) => {
    const chosen = allowed.find((one) => one === found)
    if (chosen !== undefined) return chosen
    const empty = found === undefined || found === ''
    if (empty && missing === 'needed') report({ kind: 'needed', what: 'choice', allowed })
    else if (!empty) report({ kind: 'not-one-of', found: shown(found), allowed })
    return ''
  })
}

export function yesOrNo(missing: boolean) {
  return leaf<boolean>((found, report) => {
    if (found === undefined) return missing
    if (typeof found === 'boolean') return found
    report({ kind: 'not-a', what: 'yes-or-no', found: shown(found) })
    return missing
  })
}
