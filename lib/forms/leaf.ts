import { z } from 'zod'
import { isCalendarDay } from '../core/amounts/calendarDay.ts'
import { parseLength } from '../core/amounts/length.ts'
import { isNumber } from '../core/amounts/typedNumber.ts'
import type { FaultFacts, ValueKind } from '../core/faults.ts'
import { percentInRange } from '../core/shares/percent.ts'

/** A zod issue that carries one of our faults: the facts travel beside the issue, the sentence is made elsewhere. */
export function faultIssue(facts: FaultFacts, path: (string | number)[] = []) {
  return { code: 'custom' as const, message: facts.kind, params: { facts }, path, input: undefined }
}

type Missing = 'needed' | 'may be missing'

/**
 * A text leaf: zod holds that it is a text, the core says what the text may be. A missing key that may be missing reads
 * as ''. zod's own message carries the kind of value, for the sentence that is made elsewhere.
 */
function typed(what: ValueKind, check: (text: string) => FaultFacts | undefined, empty: Missing) {
  return z.string({ error: what }).check((payload) => {
    const facts: FaultFacts | undefined =
      payload.value !== '' ? check(payload.value) : empty === 'needed' ? { kind: 'needed', what } : undefined
    if (facts) payload.issues.push({ ...faultIssue(facts), input: payload.value })
  })
}

type TextLeaf = ReturnType<typeof typed>

/** A default turns a missing key into '' before any check. Either way a text comes out, so one type serves both. */
function orMissing(leaf: TextLeaf, missing: Missing): z.ZodDefault<TextLeaf> {
  return missing === 'needed' ? (leaf as unknown as z.ZodDefault<TextLeaf>) : leaf.default('')
}

/** A found value for a message, short. */
export function shown(found: unknown): string {
  const text = typeof found === 'string' ? found : (JSON.stringify(found) ?? String(found))
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}

export const text = z.string({ error: 'text' satisfies ValueKind }).default('')
export const neededText = typed('text', () => undefined, 'needed')

export function number(missing: Missing, fractionDigits = 6, empty: Missing = 'needed') {
  return orMissing(
    typed('number', (found) => numberFault(found, fractionDigits), empty),
    missing,
  )
}

function numberFault(found: string, fractionDigits: number): FaultFacts | undefined {
  return isNumber(found, fractionDigits)
    ? undefined
    : { kind: 'number-form', found: shown(found), fractionDigits }
}

export function money(currency: string, digits: number, missing: Missing, empty: Missing = 'needed') {
  const check = (found: string): FaultFacts | undefined => {
    if (isNumber(found, digits)) return undefined
    return isNumber(found, 1000)
      ? { kind: 'money-digits', found: shown(found), currency, digits }
      : numberFault(found, digits)
  }
  return orMissing(typed('money', check, empty), missing)
}

function percentFault(found: string): FaultFacts | undefined {
  if (!isNumber(found, 4)) return { kind: 'number-form', found: shown(found), fractionDigits: 4 }
  return percentInRange(found) ? undefined : { kind: 'percent-range', found }
}

export const neededPercent = typed('percent', percentFault, 'needed')

/** A percentage that may be left open. */
export function percent(missing: Missing) {
  return orMissing(typed('percent', percentFault, missing), missing)
}

/** Missing is 0, and reads as '0'. */
export const taxPercent = typed('percent', percentFault, 'needed').default('0')

export function length(missing: Missing, mayBeNegative = false) {
  const check = (found: string): FaultFacts | undefined => {
    const size = parseLength(found)
    if (size === undefined) return { kind: 'length-form', found: shown(found), mayBeNegative }
    return size.over < 0n && !mayBeNegative ? { kind: 'length-negative', found } : undefined
  }
  return orMissing(typed('length', check, missing), missing)
}

export function date(mayBeEmpty: boolean) {
  const missing = mayBeEmpty ? 'may be missing' : 'needed'
  const check = (found: string): FaultFacts | undefined =>
    isCalendarDay(found) ? undefined : { kind: 'date-form', found: shown(found), mayBeEmpty }
  return orMissing(typed('date', check, missing), missing)
}

/** One of a fixed set; needed. */
export function neededChoice<const Choice extends string>(allowed: readonly Choice[]) {
  return z.enum(allowed)
}

/** One of a fixed set; missing and '' are "not said yet". */
export function choice<const Choice extends string>(allowed: readonly Choice[]) {
  return z.enum([...allowed, '']).default('' as never)
}

export function yesOrNo(missing: boolean) {
  return z.boolean({ error: 'yes-or-no' satisfies ValueKind }).default(missing)
}
