import type { RecordFindings } from '../core/agreement/recordFindings.ts'
import { currencyDigits } from '../core/amounts/currency.ts'
import { moneyText } from '../core/amounts/money.ts'
import { recordProblemText } from './recordProblemText.ts'

/** The findings as `npm run -s check-record -- --json FILE` prints them: money as text, times in ISO 8601, `null` for what is not known. */
export function recordFile(findings: RecordFindings) {
  const { seal, agreement, asked, signatures } = findings
  const money = (minor: bigint) => moneyText(minor, currencyDigits(asked?.currency ?? '') ?? 2)
  return {
    holds: findings.holds,
    bytes: findings.bytes,
    problems: findings.problems.map((problem) => ({ kind: problem.kind, text: recordProblemText(problem) })),
    seal: seal
      ? { certificateSha256: seal.certificateSha256, sealedAt: seal.sealedAt?.toISOString() ?? null }
      : null,
    agreement: agreement ? { sha256: agreement.sha256, title: agreement.title ?? null } : null,
    printedSha256: findings.printedSha256 ?? null,
    asked: asked
      ? { currency: asked.currency, total: money(asked.total), a: money(asked.a), b: money(asked.b) }
      : null,
    signatures:
      signatures?.map(({ household, partyName, signedAt }) => ({
        household,
        partyName,
        signedAt: signedAt.toISOString(),
      })) ?? null,
  }
}
