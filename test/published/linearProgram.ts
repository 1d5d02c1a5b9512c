import { type Fraction, one, zero } from './fraction.ts'

/** A sum of coefficient × variable that may not exceed `most`. */
export type Limit = { readonly coefficients: readonly Fraction[]; readonly most: Fraction }

/**
 * The largest value of `goal` over variables of zero or more under the limits, exactly: the simplex method in two phases
 * with the rule of the smallest index (R. G. Bland, 1977), which cannot go round in circles. Small programs only.
 */
export function maximise(
  goal: readonly Fraction[],
  limits: readonly Limit[],
): { readonly value: Fraction; readonly variables: readonly Fraction[] } {
  const size = goal.length
  const program = new Dictionary(size, limits)
  program.makeFeasible()
  program.optimise([...goal, zero])
  const variables = goal.map((_, index) => program.valueOf(index))
  const value = goal.reduce(
    (total, coefficient, index) => total.plus(coefficient.times(variables[index] ?? zero)),
    zero,
  )
  return { value, variables }
}

/** Each basic variable written by the others: basic = constant + Σ coefficient × other. */
class Dictionary {
  /** Column 0 to size − 1 are the variables, the one after them is the helper of phase one. */
  private readonly others: number[]
  private readonly basics: number[]
  private readonly rows: { constant: Fraction; coefficients: Fraction[] }[]
  private readonly helper: number

  constructor(size: number, limits: readonly Limit[]) {
    this.helper = size
    this.others = Array.from({ length: size + 1 }, (_, index) => index)
    this.basics = limits.map((_, index) => size + 1 + index)
    this.rows = limits.map(({ coefficients, most }) => ({
      constant: most,
      coefficients: [...coefficients.map((coefficient) => coefficient.negated()), one],
    }))
  }

  makeFeasible(): void {
    const lowest = this.rows.reduce(
      (least, row, index) => (row.constant.compare(this.row(least).constant) < 0 ? index : least),
      0,
    )
    if (this.row(lowest).constant.sign < 0) {
      this.pivot(lowest, this.others.indexOf(this.helper))
      this.optimise(this.others.map((_, index) => (index === this.helper ? one.negated() : zero)))
      if (this.valueOf(this.helper).sign !== 0) throw new Error('the limits exclude one another')
    }
    const place = this.basics.indexOf(this.helper)
    if (place >= 0) {
      const column = this.row(place).coefficients.findIndex((coefficient) => coefficient.sign !== 0)
      this.pivot(place, column)
    }
    // From here on the helper stays at zero.
    const column = this.others.indexOf(this.helper)
    for (const row of this.rows) row.coefficients[column] = zero
  }

  /** `goal` has one coefficient for each original variable and the helper. */
  optimise(goal: readonly Fraction[]): void {
    for (;;) {
      const gains = this.others.map((_, column) => this.gain(goal, column))
      const entering = this.smallestIndex(gains.map((gain, column) => (gain.sign > 0 ? column : -1)))
      if (entering === undefined) return
      const leaving = this.leavingRow(entering)
      if (leaving === undefined) throw new Error('the goal has no largest value')
      this.pivot(leaving, entering)
    }
  }

  valueOf(variable: number): Fraction {
    const place = this.basics.indexOf(variable)
    return place < 0 ? zero : this.row(place).constant
  }

  private gain(goal: readonly Fraction[], column: number): Fraction {
    return this.basics.reduce(
      (total, basic, index) =>
        total.plus((goal[basic] ?? zero).times(this.row(index).coefficients[column] ?? zero)),
      this.others[column] === this.helper && goal[this.helper] === undefined
        ? zero
        : (goal[this.others[column] ?? -1] ?? zero),
    )
  }

  private smallestIndex(columns: readonly number[]): number | undefined {
    return columns
      .filter((column) => column >= 0)
      .sort((left, right) => (this.others[left] ?? 0) - (this.others[right] ?? 0))[0]
  }

  private leavingRow(column: number): number | undefined {
    let leaving: { index: number; limit: Fraction } | undefined
    this.rows.forEach((row, index) => {
      const coefficient = row.coefficients[column] ?? zero
      if (coefficient.sign >= 0) return
      const limit = row.constant.dividedBy(coefficient.negated())
      const order = leaving === undefined ? -1 : limit.compare(leaving.limit)
      const before = order === 0 && (this.basics[index] ?? 0) < (this.basics[leaving?.index ?? 0] ?? 0)
      if (order < 0 || before) leaving = { index, limit }
    })
    return leaving?.index
  }

  private pivot(index: number, column: number): void {
    const row = this.row(index)
    const factor = row.coefficients[column] ?? zero
    const [basic, other] = [this.basics[index] ?? 0, this.others[column] ?? 0]
    // basic = constant + … + factor × other, so other = (basic − constant − …) / factor.
    const solved = {
      constant: row.constant.negated().dividedBy(factor),
      coefficients: row.coefficients.map((coefficient, place) =>
        place === column ? one.dividedBy(factor) : coefficient.negated().dividedBy(factor),
      ),
    }
    this.rows.forEach((before, place) => {
      if (place === index) return
      const times = before.coefficients[column] ?? zero
      this.rows[place] = {
        constant: before.constant.plus(times.times(solved.constant)),
        coefficients: before.coefficients.map((coefficient, at) => {
          const through = times.times(solved.coefficients[at] ?? zero)
          return at === column ? through : coefficient.plus(through)
        }),
      }
    })
    this.rows[index] = solved
    this.basics[index] = other
    this.others[column] = basic
  }

  private row(index: number): { constant: Fraction; coefficients: Fraction[] } {
    const row = this.rows[index]
    if (row === undefined) throw new Error('a row of the program')
    return row
  }
}
