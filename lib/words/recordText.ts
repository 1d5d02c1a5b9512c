import type { RecordFindings, RecordRevision } from '../core/agreement/recordFindings.ts'
import { momentWords } from './day.ts'
import { moneyWords } from './money.ts'
import { recordProblemText } from './recordProblemText.ts'

/** One finding: something that agrees, something that does not, or something that is only told. */
export type RecordLine = { readonly kind: 'agrees' | 'fails' | 'told'; readonly text: string }

/** What only the install that keeps the notebook can add. */
export type RecordAbout = {
  readonly revision?: RecordRevision
  /** Whether the seal is that of the install where the record is checked. */
  readonly sealedHere?: boolean
}

/** The answer in one line. A seal that anyone could have made is no more than that: then there is something to compare. */
export function recordVerdict({ holds, problems }: RecordFindings, { sealedHere }: RecordAbout = {}): string {
  if (problems.some(({ kind }) => kind === 'final-account'))
    return 'This is a final account. It is never locked, so it can’t be checked here. Compare it with the notebook before you rely on it.'
  if (!holds) return 'This is no locked copy that holds. Do not rely on it.'
  if (sealedHere === true) return 'This locked copy holds. Nothing in it was changed since it was locked.'
  return sealedHere === false
    ? 'The seal holds, but it is not the seal of this install. Compare its fingerprint before you rely on it.'
    : 'The seal holds: nothing was changed since it was made. Compare its fingerprint with that of a copy that you trust.'
}

/** The findings in plain sentences, in the order in which a reader asks. */
export function recordLines(findings: RecordFindings, about: RecordAbout = {}): RecordLine[] {
  return [
    ...findings.problems.map((problem) => ({ kind: 'fails' as const, text: recordProblemText(problem) })),
    ...sealLines(findings, about),
    ...agreementLines(findings),
    ...signatureLines(findings),
    ...(about.revision ? [revisionLine(about.revision)] : []),
  ]
}

function sealLines({ seal, bytes }: RecordFindings, { sealedHere }: RecordAbout): RecordLine[] {
  if (!seal) return []
  const when = seal.sealedAt ? ` It says that it was made on ${momentWords(seal.sealedAt)}.` : ''
  return [
    {
      kind: 'agrees',
      text: `The seal holds, and it covers the whole file to its end, all ${bytes} bytes.${when}`,
    },
    { kind: 'told', text: `The seal’s fingerprint (SHA-256) is ${seal.certificateSha256}.` },
    ...(sealedHere === undefined
      ? []
      : [
          {
            kind: 'told' as const,
            text: sealedHere
              ? 'It is the seal of this install.'
              : 'It is not the seal that this install uses now. Another install made it, or this one at an earlier time.',
          },
        ]),
  ]
}

function agreementLines({ agreement, printedSha256, asked, problems }: RecordFindings): RecordLine[] {
  if (!agreement) return []
  const { sha256, title, names } = agreement
  const sumsFail = problems.some(({ kind }) => kind === 'sums-not-printed' || kind === 'pages-unreadable')
  return [
    ...(title === undefined ? [] : [{ kind: 'told' as const, text: `The notebook inside is “${title}”.` }]),
    printedSha256 === sha256
      ? {
          kind: 'agrees',
          text: `The notebook file inside has the hash that every page prints: ${sha256}.`,
        }
      : { kind: 'told', text: `The notebook file inside has the hash ${sha256}.` },
    ...(asked && names
      ? [
          {
            kind: sumsFail ? ('told' as const) : ('agrees' as const),
            text: `Worked out anew, ${names.a} is asked for ${moneyWords(asked.a, asked.currency)} and ${names.b} for ${moneyWords(asked.b, asked.currency)}, of ${moneyWords(asked.total, asked.currency)} in all.${sumsFail ? '' : ' The pages print the same.'}`,
          },
        ]
      : []),
  ]
}

function signatureLines({ signatures }: RecordFindings): RecordLine[] {
  return (signatures ?? []).map(({ partyName, household, signedAt }) => ({
    kind: 'told',
    text: `Inside is a signature in the name of “${partyName}”, household ${household}, of ${momentWords(signedAt)}.`,
  }))
}

function revisionLine(revision: RecordRevision): RecordLine {
  switch (revision.kind) {
    case 'newest':
      return {
        kind: 'agrees',
        text: `It is revision ${revision.number}, the newest of its notebook that has a locked copy.`,
      }
    case 'older':
      return {
        kind: 'told',
        text: `It is revision ${revision.number}. It is not the newest any more: revision ${revision.newest} came after it.`,
      }
    case 'not kept here':
      return {
        kind: 'told',
        text: 'This install does not keep this notebook, so it can’t tell whether there is a newer revision.',
      }
  }
}

/** What no check of a locked copy can show, however well it turns out. */
export const notProved: readonly string[] = [
  'It does not show who signed. The seal is made by the install, not by the people.',
  'It proves nothing against whoever runs the install: they hold the key of the seal.',
  'Anyone can make a seal with a key of their own. Compare the fingerprint with that of a copy that you trust.',
  'The time of the seal is what the clock of the install said.',
  'It says nothing about whether the agreement binds anyone. Ask a lawyer where that matters.',
]
