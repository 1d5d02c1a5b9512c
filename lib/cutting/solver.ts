import loadHighs, { type Highs, type ModelData } from 'highs'

let loading: Promise<Highs> | undefined

/** The solver, loaded once for the process. One that failed is thrown away: its memory can't be trusted any more. */
export function solver(): Promise<Highs> {
  loading ??= loadHighs()
  return loading
}

export function forgetSolver(): void {
  loading = undefined
}

export type Row = { readonly lower: number; readonly upper: number }

/** A variable of zero or more: its cost, the most it may be, and its coefficients by row. */
export type Column = {
  readonly cost: number
  readonly upper: number
  readonly entries: readonly { readonly row: number; readonly value: number }[]
}

export type Integers = {
  /** `none`: proven that there is no solution. `stopped`: the limit came first, with or without a solution. */
  readonly outcome: 'optimal' | 'none' | 'stopped'
  readonly values?: readonly number[]
}

export type Limits = {
  /** Absolute difference to the optimum that does not matter. */
  readonly tolerance: number
  /** Nodes of the search: a count, so that every machine stops at the same place. */
  readonly nodes: number
}

/** Only a guard against the unforeseen; the count of nodes comes first. */
const secondsAtMost = 20

/** Least cost in whole numbers. Single-threaded and without a clock unless it runs for very long: always the same answer. */
export function solveIntegers(
  highs: Highs,
  rows: readonly Row[],
  columns: readonly Column[],
  limits: Limits,
): Integers {
  const { optimal, infeasible, unboundedOrInfeasible } = highs.constants.modelStatus
  return highs.withModel(modelData(highs, rows, columns, true), (model): Integers => {
    model.options.set({
      output_flag: false,
      mip_rel_gap: 0,
      mip_abs_gap: limits.tolerance,
      mip_max_nodes: limits.nodes,
      time_limit: secondsAtMost,
    })
    model.run()
    const status = model.getModelStatus()
    if (status === infeasible || status === unboundedOrInfeasible) return { outcome: 'none' }
    const outcome = status === optimal ? 'optimal' : 'stopped'
    const feasible = model.info.get('primal_solution_status') === highs.constants.solutionStatus.feasible
    if (!feasible) return { outcome: 'stopped' }
    return { outcome, values: Array.from(model.getSolution().colValue, Math.round) }
  })
}

/** The same model in the solver's own form, in whole numbers or in any. */
export function modelData(
  highs: Highs,
  rows: readonly Row[],
  columns: readonly Column[],
  whole: boolean,
): ModelData {
  const starts = [0]
  const indices: number[] = []
  const values: number[] = []
  for (const { entries } of columns) {
    for (const { row, value } of entries) {
      indices.push(row)
      values.push(value)
    }
    starts.push(indices.length)
  }
  const { integer, continuous } = highs.constants.variableType
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(() => 0),
    colUpper: columns.map(({ upper }) => upper),
    rowLower: rows.map(({ lower }) => lower),
    rowUpper: rows.map(({ upper }) => upper),
    integrality: columns.map(() => (whole ? integer : continuous)),
    matrix: { format: 'csc', numCols: columns.length, numRows: rows.length, starts, indices, values },
  }
}
