/** An exact fraction in lowest terms with arithmetic: what the published methods here are worked in. */
export class Fraction {
  readonly over: bigint
  readonly under: bigint

  constructor(over: bigint | number, under: bigint | number = 1n) {
    let [top, bottom] = [BigInt(over), BigInt(under)]
    if (bottom === 0n) throw new Error('a fraction over nothing')
    if (bottom < 0n) [top, bottom] = [-top, -bottom]
    const shared = greatestCommonDivisor(top < 0n ? -top : top, bottom)
    this.over = top / shared
    this.under = bottom / shared
  }

  /** A decimal as it is printed: "17437.5". */
  static of(printed: string | number): Fraction {
    const text = String(printed)
    const [whole, decimals = ''] = text.split('.')
    return new Fraction(BigInt(`${whole}${decimals}`), 10n ** BigInt(decimals.length))
  }

  plus(other: Fraction): Fraction {
    return new Fraction(this.over * other.under + other.over * this.under, this.under * other.under)
  }
  minus(other: Fraction): Fraction {
    return this.plus(new Fraction(-other.over, other.under))
  }
  times(other: Fraction): Fraction {
    return new Fraction(this.over * other.over, this.under * other.under)
  }
  dividedBy(other: Fraction): Fraction {
    return new Fraction(this.over * other.under, this.under * other.over)
  }
  negated(): Fraction {
    return new Fraction(-this.over, this.under)
  }
  compare(other: Fraction): number {
    const difference = this.over * other.under - other.over * this.under
    return difference < 0n ? -1 : difference > 0n ? 1 : 0
  }
  get sign(): number {
    return this.over < 0n ? -1 : this.over > 0n ? 1 : 0
  }
  /** The whole number below or at it. */
  get floor(): bigint {
    const cut = this.over / this.under
    return this.over < 0n && cut * this.under !== this.over ? cut - 1n : cut
  }
  toString(): string {
    return this.under === 1n ? `${this.over}` : `${this.over}/${this.under}`
  }
}

export const zero = new Fraction(0)
export const one = new Fraction(1)

export function sum(fractions: readonly Fraction[]): Fraction {
  return fractions.reduce((total, fraction) => total.plus(fraction), zero)
}

export function smallerOf(left: Fraction, right: Fraction): Fraction {
  return left.compare(right) <= 0 ? left : right
}

export function largerOf(left: Fraction, right: Fraction): Fraction {
  return left.compare(right) >= 0 ? left : right
}

function greatestCommonDivisor(left: bigint, right: bigint): bigint {
  let [larger, smaller] = [left, right]
  while (smaller !== 0n) [larger, smaller] = [smaller, larger % smaller]
  return larger
}
