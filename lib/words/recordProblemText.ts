import type { RecordProblem } from '../core/agreement/recordFindings.ts'
import { never } from '../core/assert.ts'
import type { Fault } from '../core/faults.ts'
import { faultText } from './faultText.ts'

/** Why a PDF is no locked copy that holds, in one or two plain sentences. */
export function recordProblemText(problem: RecordProblem): string {
  switch (problem.kind) {
    case 'too-large':
      return `The file has ${problem.bytes} bytes. A locked copy has at most ${problem.limit}, so it was not read.`
    case 'not-a-pdf':
      return 'This file is not a PDF.'
    case 'cut-short':
      return 'The end of the file is missing. Fetch it once more, or ask for another copy.'
    case 'encrypted':
      return 'The file is locked with a password. A locked copy never is.'
    case 'other-build':
      return `This PDF is not built as a locked copy is: ${problem.detail}. Perhaps another program has saved it anew. Use the file as it came from the notebook.`
    case 'too-deep':
      return `Lists in this file lie more than ${problem.limit} deep inside one another. Those of a locked copy never do.`
    case 'too-much':
      return `This file holds more than ${problem.limit} ${problem.what}. A locked copy holds fewer, so it was read no further.`
    case 'no-seal':
      return 'This PDF has no seal. Drafts and papers that not all have signed have none.'
    case 'several-seals':
      return `This PDF has places for ${problem.count} seals. A locked copy has one.`
    case 'added-after':
      return problem.bytes === 1
        ? 'One byte was added behind the end of what is sealed. The file was changed after it was locked.'
        : `${problem.bytes} bytes were added behind the end of what is sealed. The file was changed after it was locked.`
    case 'range-open':
      return 'The seal does not cover the whole file. Parts of it could have been changed.'
    case 'bytes-changed':
      return 'The file was changed after it was locked: its seal was made for a file that reads otherwise.'
    case 'seal-broken':
      return 'The seal was not made with the key that it names, or it was changed.'
    case 'seal-form':
      return 'The seal can’t be read, or it is of another kind than a locked copy has.'
    case 'other-certificate':
      return `The seal is not the one that was looked for. Its fingerprint is ${problem.found}, not ${problem.expected}.`
    case 'no-agreement':
      return 'There is no notebook file inside (agreement.json). A locked copy always carries one.'
    case 'final-account':
      return `The pages are those of a final account. It is signed in the notebook and not locked, so no seal shows a change. To check it, take final-account.json from the notebook or from the record pack. Its SHA-256 must be ${problem.sha256}. It must say what the paper says.`
    case 'several-agreements':
      return `There are ${problem.count} notebook files inside. A locked copy carries one.`
    case 'agreement-damaged':
      return 'The notebook file inside is damaged and can’t be taken out.'
    case 'agreement-refused':
      return `The notebook file inside does not hold: ${firstFaults(problem.faults)}`
    case 'pages-unreadable':
      return 'The text on the pages can’t be read, so it can’t be held against the notebook file inside.'
    case 'hash-not-printed':
      return `Page ${problem.page} does not print the hash of the notebook file.`
    case 'hash-differs':
      return `Page ${problem.page} prints another hash than that of the notebook file inside. Printed is ${problem.printed}. The file has ${problem.found}.`
    case 'statement-refused':
      return `The shares can’t be worked out from the notebook file inside: ${firstFaults(problem.faults)}`
    case 'sums-not-printed':
      return 'The pages don’t print the sums that come out of the notebook file inside.'
    case 'no-signatures':
      return 'There are no signatures inside (signatures.json). A locked copy always carries them.'
    case 'signatures-damaged':
      return 'The signatures inside can’t be read.'
    case 'signed-other-text':
      return 'One of the signatures inside is for another text than this one.'
    case 'parties-unsigned':
      return `There is no signature of ${problem.names.map((name) => `“${name}”`).join(', ')}.`
    default:
      return never(problem)
  }
}

/** A hostile file has thousands; three are enough to see what it is. */
function firstFaults(faults: readonly Fault[]): string {
  return faults
    .slice(0, 3)
    .map((fault) => `${fault.path}: ${faultText(fault)}`)
    .join(' ')
}
