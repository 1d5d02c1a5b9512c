import type { Fault } from './faults.ts'

/** A value, or the faults a person can mend. What the program got wrong throws instead. */
export type Result<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly faults: readonly Fault[] }

export function held<Value>(value: Value): Result<Value> {
  return { ok: true, value }
}

export function refused<Value = never>(...faults: readonly Fault[]): Result<Value> {
  return { ok: false, faults }
}

/** The same for a list of any length: a hostile file has more faults than a call can have arguments. */
export function refusedAll<Value = never>(faults: readonly Fault[]): Result<Value> {
  return { ok: false, faults }
}
