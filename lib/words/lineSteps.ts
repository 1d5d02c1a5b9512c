import type { CostLine, LabourLine } from '../core/agreement/notebook.ts'
import { currencyDigits } from '../core/amounts/currency.ts'
import {
  costLineAmount,
  exactCostLine,
  exactLabour,
  labourAmount,
  signedCostAmount,
} from '../core/amounts/lineAmount.ts'
import type { Minor } from '../core/amounts/money.ts'
import type { Ratio } from '../core/amounts/ratio.ts'
import { decimalWords } from './exactWords.ts'
import { moneyWords, typedMoneyWords } from './money.ts'

/** The steps of an item's materials: each line as it was typed, its amount, and the sum that is to be shared. */
export function materialSteps(lines: readonly CostLine[], total: Minor, currency: string): string[] {
  const digits = currencyDigits(currency) ?? 2
  const steps = lines.map((line) => {
    const name = line.what.trim() || 'A line without a name'
    if (line.unitPrice === '') return `${name}: not priced yet, so it counts as nothing.`
    const tax = line.taxPercent === '0' ? '' : `, and ${line.taxPercent} percent tax on top`
    const sum = `${line.quantity} × ${typedMoneyWords(line.unitPrice, currency)}${tax}`
    const amount = costLineAmount(line, digits)
    const credit = line.credit ? ' It is a credit, so it is taken off.' : ''
    return `${name}: ${sum} ${amountWords(exactCostLine(line), amount, digits, currency)}.${credit}`
  })
  const amounts = lines.map((line) => signedCostAmount(line, digits))
  return [...steps, totalStep('Materials', amounts, total, currency)]
}

/** The steps of an item's labour; gifts are named and left out of the sum. */
export function labourSteps(lines: readonly LabourLine[], total: Minor, currency: string): string[] {
  const digits = currencyDigits(currency) ?? 2
  const steps = lines.map((line) => {
    const name = line.task.trim() || 'A task without a name'
    if (!line.counts) return `${name}: ${counted(line.hours)} given freely, in no sum.`
    if (line.rate === '')
      return `${name}: ${counted(line.hours)} without a rate yet, so this counts as nothing.`
    const amount = labourAmount(line, digits)
    return `${name}: ${counted(line.hours)} × ${typedMoneyWords(line.rate, currency)} ${amountWords(exactLabour(line), amount, digits, currency)}.`
  })
  const amounts = lines.filter((line) => line.counts).map((line) => labourAmount(line, digits))
  return [...steps, totalStep('Work', amounts, total, currency)]
}

function counted(hours: string): string {
  return `${hours} ${hours === '1' ? 'hour' : 'hours'}`
}

/** "= $259.00", or the exact figure and what it is rounded to. */
function amountWords(exact: Ratio, amount: Minor, digits: number, currency: string): string {
  const whole = exact.over * 10n ** BigInt(digits) === amount * exact.under
  const money = moneyWords(amount, currency)
  return whole ? `= ${money}` : `= ${decimalWords(exact)}, rounded to ${money}`
}

/** Longer sums are easier to do down the list than along one line. */
const longestSum = 8

function totalStep(pot: string, amounts: readonly Minor[], total: Minor, currency: string): string {
  const money = (minor: Minor) => moneyWords(minor, currency)
  const [first] = amounts
  if (first === undefined) return `${pot}: no line that costs money, so ${money(total)}.`
  if (amounts.length === 1) return `${pot} in all: ${money(total)}.`
  if (amounts.length > longestSum)
    return `${pot} in all: the ${amounts.length} amounts above, credits taken off, come to ${money(total)}.`
  const rest = amounts
    .slice(1)
    .map((amount) => (amount < 0n ? ` − ${money(-amount)}` : ` + ${money(amount)}`))
  return `${pot} in all: ${money(first)}${rest.join('')} = ${money(total)}.`
}
