import type { InstalmentStanding } from '../core/ledger/instalmentStanding.ts'
import type { Result } from '../core/result.ts'
import type { Statement } from '../core/shares/statement.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'

/** The balance in plain sentences: bills nobody has met yet, and the one payment that evens the two. */
export function balanceSentences(statement: Statement, names: ShareNames): readonly string[] {
  const money = (minor: bigint) => moneyWords(minor, statement.currency)
  const { outstanding, transfer } = statement
  return [
    statement.total === 0n && outstanding === 0n
      ? 'Nothing is asked of anyone yet.'
      : outstanding > 0n
        ? `${money(outstanding)} of the whole has not been given by anyone yet.`
        : outstanding < 0n
          ? `Together you have given ${money(-outstanding)} more than the plan asks for.`
          : 'Together you have given what the plan asks for.',
    transfer
      ? `On what has been given so far, one payment evens the two: ${names[transfer.from]} pays ${money(transfer.amount)} to ${names[transfer.to]}.`
      : 'On what has been given so far, no payment between you is due.',
  ]
}

/**
 * Beside the balance, what the payment plan still asks for, and how both are true; undefined where nothing of it is left.
 * Money in minor units.
 */
export function planBesideBalance(
  { from, to, rest }: Pick<InstalmentStanding, 'from' | 'to' | 'rest'>,
  names: ShareNames,
): string | undefined {
  if (rest <= 0n) return undefined
  return `By the payment plan, ${names[from]} has still to pay ${moneyWords(rest, names.currency)} to ${names[to]}: the plan goes by all that is to be given until the fence stands, the balance only by what was given until today.`
}

/**
 * Which figures the books are held against, and what an unsigned draft would ask instead. `moved` where marks in the books
 * have put actual figures in the place of planned ones.
 */
export function standingOfBooks(
  signed: number | undefined,
  draft: Result<Statement> | undefined,
  names: ShareNames,
  moved = false,
): readonly string[] {
  if (signed === undefined) {
    return ['Nothing is signed yet: these are the figures of the draft, and they bind nobody.']
  }
  const held = moved
    ? `These are the figures of revision ${signed}, which all have signed, with what both have marked as bought, worked or kept in the place of what was planned.`
    : `These are the figures of revision ${signed}, as all have signed it.`
  if (draft === undefined) return [held]
  if (!draft.ok) return [held, 'The draft has been changed since; its shares can’t be worked out yet.']
  const { asked, currency } = draft.value
  const money = (minor: bigint) => moneyWords(minor, currency)
  return [
    held,
    `The draft has been changed since. It would ask ${names.a} for ${money(asked.a)} and ${names.b} for ${money(asked.b)}, but only once all have signed it.`,
  ]
}
