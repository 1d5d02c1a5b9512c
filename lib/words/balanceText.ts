import type { Statement } from '../core/shares/statement.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'

/** The balance in plain sentences: bills nobody has met yet, and the one payment that evens the two. */
export function balanceSentences(statement: Statement, names: ShareNames): readonly string[] {
  const money = (minor: bigint) => moneyWords(minor, statement.currency)
  const { outstanding, transfer } = statement
  return [
    outstanding > 0n
      ? `Nobody has met ${money(outstanding)} of the whole yet.`
      : outstanding < 0n
        ? `Together you have given ${money(-outstanding)} more than the plan asks for.`
        : 'Together you have given what the plan asks for.',
    transfer
      ? `One payment evens the two as things stand: ${names[transfer.from]} pays ${money(transfer.amount)} to ${names[transfer.to]}.`
      : 'No payment between you is needed as things stand.',
  ]
}
