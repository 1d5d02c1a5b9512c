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
      ? `One payment evens the two as things stand: ${names[transfer.from]} pays ${money(transfer.amount)} to ${names[transfer.to]}.`
      : 'No payment between you is needed as things stand.',
  ]
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
